using System.Collections.Frozen;
using Advice.Knowledge.Words;
using Advice.Symptoms.Words;

namespace Advice.Intake;

/// <summary>Tells whether a text speaks of more than one vehicle: "my truck squeals and my wife's car overheats". They are told apart by whose they
/// are, and by what they are where one owner names two.</summary>
internal sealed class SeveralVehicles(IReadOnlyList<Topic> topics)
{
    /// <summary>So many words stand between owner and vehicle: "my wife's old red car".</summary>
    private const int MostBetween = 3;

    private static readonly FrozenSet<string> Contractions =
        "its thats whats theres heres wheres hows hes shes whos lets".Split(' ').ToFrozenSet(StringComparer.Ordinal);

    private readonly ILookup<string, TopicKind> _kinds = topics.SelectMany(topic => topic.Words, (topic, word) => (word, topic.Kind)).ToLookup(one => one.word, one => one.Kind);

    /// <summary>Whether it does.</summary>
    public bool AreIn(string text)
    {
        var words = WordSplitter.Split(text);
        var named = words.Index().Where(one => Is(one.Item, TopicKind.AnyKind) || Is(one.Item, TopicKind.Kind))
            .Select(one => (Owner: OwnerBefore(one.Index, words), Kind: Is(one.Item, TopicKind.Kind) ? one.Item.Text : null)).Where(one => one.Owner.Length > 0).Distinct().ToList();
        return named.Select(one => one.Owner).Distinct().Skip(1).Any() || named.Select(one => one.Kind).OfType<string>().Skip(1).Any();
    }

    private string OwnerBefore(int vehicle, List<RawWord> words) => string.Join(' ', words.Take(vehicle).TakeLast(MostBetween + 1)
        .Where(word => word.Clause == words[vehicle].Clause && (Is(word, TopicKind.Owner) || IsPossessive(word))).Select(word => word.Text));

    /// <summary>Whether an apostrophe was left out of it.</summary>
    private static bool IsPossessive(RawWord word) => word.Text[^1] == 's' && word.End - word.Start > word.Text.Length && !Contractions.Contains(word.Text);

    private bool Is(RawWord word, TopicKind kind) => _kinds[word.Text].Contains(kind);
}
