using System.Text.RegularExpressions;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>Binds the words of the sentences that answers need.</summary>
internal sealed partial class WordingBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] Members = ["id", "text", "plain", "source"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Wordings.Bind(id, Wording(id, new EntryReader(node, "wording", Members, problems)));
    }

    private Wording? Wording(string id, EntryReader reader)
    {
        sources.Optional(reader);
        var text = reader.TextPair("text");
        if (id.Length > 0 && !Sentences.All.ContainsKey(id))
            reader.Refuse(ErrorCode.UnknownId, "id", $"no answer has a sentence '{id}'", NearestWord.To(id, Sentences.All.Keys));
        if (!Sentences.All.TryGetValue(id, out var sentence))
            return null;
        var isSound = Fits(sentence, text.Trade, "text", reader) & Fits(sentence, text.Plain, reader.Has("plain") ? "plain" : "text", reader);
        return isSound ? new Wording(sentence, text) : null;
    }

    private static bool Fits(Sentence sentence, string text, string member, EntryReader reader)
    {
        var strange = Slot().Matches(text).Select(match => match.Value).FirstOrDefault(slot => !sentence.Slots.Contains(slot.Trim('{', '}')));
        if (strange is not null)
            reader.Refuse(ErrorCode.UnknownWord, member, $"'{strange}' is nothing that '{sentence.Id}' can name; {(sentence.Slots.Count == 0 ? "it names nothing" : $"it can name {string.Join(", ", sentence.Slots.Select(slot => $"{{{slot}}}"))}")}");
        return strange is null;
    }

    /// <summary>What stands in braces, or a brace alone.</summary>
    [GeneratedRegex(@"\{[^{}]*\}|[{}]")]
    private static partial Regex Slot();
}
