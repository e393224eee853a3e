using System.Collections.Frozen;
using Advice.Knowledge;

namespace Advice.Symptoms;

/// <summary>
/// Tells which sentences are about something else than the trouble of a vehicle: a text that names other things and no part of driving, or another machine first,
/// questions that ask for knowledge, prices or texts, thanks, and other languages. A dog whines and a boiler leaks in the words that cars have.
/// </summary>
internal sealed class Subject(IReadOnlyList<Topic> topics)
{
    /// <summary>So many small words of other languages make a sentence one of them, unless English has as many in it.</summary>
    private const int LeastForeign = 2;

    private readonly ILookup<TopicKind, FrozenSet<string>> words = topics.ToLookup(topic => topic.Kind, topic => topic.Words.ToFrozenSet(StringComparer.Ordinal));

    /// <summary>Whether a text has a word of driving.</summary>
    public bool IsDriving(IEnumerable<RawWord> text) => text.Any(word => Says(TopicKind.Vehicle, word.Text));

    /// <summary>Numbers of the sentences that are about something else.</summary>
    /// <param name="text">The words of the text.</param>
    /// <param name="troubled">Numbers of the sentences that say that something is wrong.</param>
    /// <param name="isTold">Whether a word belongs to what is noticed, as the dog in "smells like a wet dog"; asked only where it decides.</param>
    /// <param name="isClear">Whether a complaint stands there that nothing else can mean; asked only where it decides.</param>
    public IReadOnlySet<int> Elsewhere(IReadOnlyList<RawWord> text, IReadOnlySet<int> troubled, Func<RawWord, bool> isTold, Func<bool> isClear)
    {
        var sentences = text.GroupBy(word => word.Sentence).Select(sentence => sentence.ToList()).ToList();
        var driving = IsDriving(text);
        var elsewhere = (!driving && sentences.Exists(sentence => Names(TopicKind.Other, sentence, isTold)) && !isClear())
            || IsOfMachine(text, isTold);
        return sentences
            .Where(sentence => elsewhere || IsForeign(sentence)
                || (!troubled.Contains(sentence[0].Sentence) && (AsksInGeneral(sentence) || (!driving && sentence.Exists(word => Says(TopicKind.Courtesy, word.Text))))))
            .Select(sentence => sentence[0].Sentence).ToHashSet();
    }

    /// <summary>Whether another machine is named before anything of a vehicle, and no vehicle anywhere: "my bicycle brakes squeal", not "no brakes, I nearly hit a bicycle".</summary>
    private bool IsOfMachine(IReadOnlyList<RawWord> text, Func<RawWord, bool> isTold) =>
        !text.Any(word => Says(TopicKind.Kind, word.Text) || Says(TopicKind.AnyKind, word.Text))
        && Names(TopicKind.Machine, [.. text.TakeWhile(word => !Says(TopicKind.Vehicle, word.Text))], isTold);

    /// <summary>Whether it names another thing, not only to compare: "like a dog in pain".</summary>
    private bool Names(TopicKind other, List<RawWord> sentence, Func<RawWord, bool> isTold)
    {
        var comparing = -1;
        foreach (var word in sentence)
        {
            if (Says(TopicKind.Comparison, word.Text))
                comparing = word.Clause;
            else if (Says(other, word.Text) && word.Clause != comparing && !isTold(word))
                return true;
        }

        return false;
    }

    private bool AsksInGeneral(List<RawWord> sentence) =>
        (Says(TopicKind.Question, sentence[0].Text) || (sentence.Count > 1 && Says(TopicKind.Question, $"{sentence[0].Text} {sentence[1].Text}")))
        && !sentence.Exists(word => Says(TopicKind.Own, word.Text));

    private bool IsForeign(List<RawWord> sentence)
    {
        var foreign = sentence.Count(word => Says(TopicKind.Foreign, word.Text));
        return foreign >= LeastForeign && foreign > sentence.Count(word => Says(TopicKind.English, word.Text));
    }

    private bool Says(TopicKind kind, string word) => words[kind].Any(some => some.Contains(word));
}
