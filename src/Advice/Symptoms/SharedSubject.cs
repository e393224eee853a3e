namespace Advice.Symptoms;

/// <summary>Tells whether a second thing is said of a subject that is named once: "the brake pedal is soft and sinks".</summary>
/// <param name="words">The words of the text.</param>
internal sealed class SharedSubject(IReadOnlyList<Word> words)
{
    /// <summary>Whether a phrase begins with the subject of another one and goes on, after "and" or "or", with words of its own.</summary>
    /// <param name="second">The phrase.</param>
    /// <param name="chosen">The phrases that are read already.</param>
    /// <param name="used">The words that these have used, by place.</param>
    public bool Joins(PhraseMatch second, IEnumerable<PhraseMatch> chosen, bool[] used)
    {
        var subject = second.Words.TakeWhile(w => used[w.Index]).ToList();
        var own = second.Words.Skip(subject.Count).ToList();
        return subject.Count > 0 && own.Count > 0 && !own.Exists(w => used[w.Index])
            && chosen.Any(first => first.Meaning != second.Meaning && Precedes(first, subject, own[0]));
    }

    private bool Precedes(PhraseMatch first, List<Word> subject, Word own) =>
        first.Last.Index < own.Index && first.Last.Clause == own.Clause && first.Words.Count > subject.Count
        && first.Words.Take(subject.Count).SequenceEqual(subject)
        && Enumerable.Range(first.Last.Index + 1, own.Index - first.Last.Index - 1).Any(i => words[i].Surface is "and" or "or");
}
