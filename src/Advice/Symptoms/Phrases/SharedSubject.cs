using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>
/// Tells whether a second thing is said of a subject that is named once, "the brake pedal is soft and sinks", or the same of a second subject, "the horn
/// and the wipers don't work".
/// </summary>
/// <param name="words">The words of the text.</param>
internal sealed class SharedSubject(IReadOnlyList<Word> words)
{
    /// <summary>Whether a phrase shares the beginning or the end of another one and has, beyond "and" or "or", words of its own.</summary>
    /// <param name="second">The phrase.</param>
    /// <param name="chosen">The phrases that are read already.</param>
    /// <param name="used">The words that these have used, by place.</param>
    public bool Joins(PhraseMatch second, IReadOnlyList<PhraseMatch> chosen, bool[] used) =>
        SharesBeginning(second, chosen, used) || SharesEnd(second, chosen, used);

    private bool SharesBeginning(PhraseMatch second, IReadOnlyList<PhraseMatch> chosen, bool[] used)
    {
        var subject = second.Words.TakeWhile(w => used[w.Index]).ToList();
        var own = second.Words.Skip(subject.Count).ToList();
        return subject.Count > 0 && own.Count > 0 && !own.Exists(w => used[w.Index])
            && chosen.Any(first => first.Meaning != second.Meaning && Precedes(first, subject, own[0]));
    }

    private bool SharesEnd(PhraseMatch second, IReadOnlyList<PhraseMatch> chosen, bool[] used)
    {
        var own = second.Words.TakeWhile(w => !used[w.Index]).ToList();
        var end = second.Words.Skip(own.Count).ToList();
        return own.Count > 0 && end.Count > 0 && chosen.Any(first => first.Meaning != second.Meaning
            && first.Words.Count > end.Count && first.Words.TakeLast(end.Count).SequenceEqual(end)
            && first.First.Sentence == own[0].Sentence
            && Between(Math.Min(own[^1].Index, first.First.Index), Math.Max(own[0].Index, first.First.Index)).ToList() is var between
            && between.Exists(IsJoining) && between.TrueForAll(w => w.Kind == WordKind.Filler || IsJoining(w)));
    }

    private bool Precedes(PhraseMatch first, List<Word> subject, Word own) =>
        first.Last.Index < own.Index && first.Last.Clause == own.Clause && first.Words.Count > subject.Count
        && first.Words.Take(subject.Count).SequenceEqual(subject)
        && Between(first.Last.Index, own.Index).Any(IsJoining);

    private IEnumerable<Word> Between(int from, int to) => words.Take(to).Skip(from + 1);

    private static bool IsJoining(Word word) => word.Surface is "and" or "or" or "nor";
}
