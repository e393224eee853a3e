using System.Collections.Frozen;
using Advice.Knowledge.Words;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Mentions;

/// <summary>
/// Tells which sentences are about something else than the trouble of a vehicle: a text that names other things and no part of driving, or another machine first,
/// questions that ask for knowledge, prices or texts, thanks, and other languages. A dog whines and a boiler leaks in the words that cars have.
/// </summary>
internal sealed class Subject(IReadOnlyList<Topic> topics)
{
    /// <summary>So many small words of other languages make a sentence one of them, unless English has as many in it.</summary>
    private const int LeastForeign = 2;

    private readonly FrozenDictionary<TopicKind, ILookup<string, string[]>> terms = topics.GroupBy(topic => topic.Kind).ToFrozenDictionary(
        kind => kind.Key, kind => kind.SelectMany(topic => topic.Words).Select(words => words.Split(' ')).ToLookup(term => term[0], StringComparer.Ordinal));

    /// <summary>Whether a text has a word of driving.</summary>
    public bool IsDriving(IReadOnlyList<RawWord> text) => Says(TopicKind.Vehicle, text);

    /// <summary>Numbers of the sentences that are about something else.</summary>
    /// <param name="text">The words of the text.</param>
    /// <param name="troubled">Numbers of the sentences that say that something is wrong.</param>
    /// <param name="isTold">Whether a word belongs to what is noticed, as the dog in "smells like a wet dog"; asked only where it decides.</param>
    /// <param name="isClear">Whether a complaint stands there that nothing else can mean; asked only where it decides.</param>
    public IReadOnlySet<int> Elsewhere(IReadOnlyList<RawWord> text, IReadOnlySet<int> troubled, Func<RawWord, bool> isTold, Func<bool> isClear)
    {
        var sentences = text.GroupBy(word => word.Sentence).Select(sentence => sentence.ToList()).ToList();
        var driving = IsDriving(text);
        var elsewhere = (!driving && sentences.Exists(sentence => Names(TopicKind.Other, sentence, sentence.Count, isTold)) && !isClear())
            || IsOfMachine(text, isTold);
        return sentences
            .Where(sentence => elsewhere || IsForeign(sentence)
                || (!troubled.Contains(sentence[0].Sentence) && (AsksInGeneral(sentence) || (!driving && Says(TopicKind.Courtesy, sentence)))))
            .Select(sentence => sentence[0].Sentence).ToHashSet();
    }

    /// <summary>
    /// Whether another machine is named before anything of a vehicle, and no vehicle anywhere: "my bicycle brakes squeal", not "no brakes, I nearly hit a bicycle".
    /// What has several words may begin with that of a vehicle: "engine of growth".
    /// </summary>
    private bool IsOfMachine(IReadOnlyList<RawWord> text, Func<RawWord, bool> isTold) =>
        !Says(TopicKind.Kind, text) && !Says(TopicKind.AnyKind, text)
        && Enumerable.Range(0, text.Count).FirstOrDefault(at => Says(TopicKind.Vehicle, text, at), text.Count) is var vehicle
        && Names(TopicKind.Machine, text, vehicle + 1, isTold);

    /// <summary>Whether it names another thing among its first words, not only to compare: "like a dog in pain".</summary>
    private bool Names(TopicKind other, IReadOnlyList<RawWord> text, int first, Func<RawWord, bool> isTold)
    {
        var comparing = -1;
        for (var at = 0; at < Math.Min(first, text.Count); at++)
        {
            if (Says(TopicKind.Comparison, text, at))
                comparing = text[at].Clause;
            else if (text[at].Clause != comparing && Terms(other, text, at).Any(term => term.Length > 1 || !isTold(text[at])))
                return true;
        }

        return false;
    }

    private bool AsksInGeneral(List<RawWord> sentence) => Says(TopicKind.Question, sentence, 0) && !Says(TopicKind.Own, sentence);

    private bool IsForeign(List<RawWord> sentence)
    {
        var foreign = Count(TopicKind.Foreign, sentence);
        return foreign >= LeastForeign && foreign > Count(TopicKind.English, sentence);
    }

    private int Count(TopicKind kind, List<RawWord> text) => Enumerable.Range(0, text.Count).Count(at => Says(kind, text, at));

    private bool Says(TopicKind kind, IReadOnlyList<RawWord> text) => Enumerable.Range(0, text.Count).Any(at => Says(kind, text, at));

    private bool Says(TopicKind kind, IReadOnlyList<RawWord> text, int at) => Terms(kind, text, at).Any();

    /// <summary>The words or words in a row of that kind that begin there, within a sentence.</summary>
    private IEnumerable<string[]> Terms(TopicKind kind, IReadOnlyList<RawWord> text, int at) =>
        terms.TryGetValue(kind, out var some)
            ? some[text[at].Text].Where(term => at + term.Length <= text.Count
                && term.Index().All(one => text[at + one.Index].Text == one.Item && text[at + one.Index].Sentence == text[at].Sentence))
            : [];
}
