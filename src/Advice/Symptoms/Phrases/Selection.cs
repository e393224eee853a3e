namespace Advice.Symptoms.Phrases;

/// <summary>Chooses among overlapping phrases: the one that tells more wins, and no word is used twice.</summary>
internal static class Selection
{
    /// <summary>The chosen phrases in the order of the text, idioms that say nothing left out; their words are marked as used.</summary>
    /// <param name="found">All phrases found.</param>
    /// <param name="used">Whether a word is used, by its place in the text.</param>
    /// <param name="subject">Where given, a phrase may share the subject of another one.</param>
    public static List<PhraseMatch> Take(IEnumerable<PhraseMatch> found, bool[] used, SharedSubject? subject = null)
    {
        var chosen = new List<PhraseMatch>();
        var ranked = found.OrderByDescending(m => m.Weight * m.Confidence).ThenBy(m => m.First.Index)
            .ThenBy(m => m.Last.Index).ThenBy(m => m.Meaning, StringComparer.Ordinal);
        foreach (var match in ranked)
        {
            if (match.Taken.Any(w => used[w.Index]) && subject?.Joins(match, chosen, used) != true)
                continue;
            foreach (var word in match.Words)
                used[word.Index] = true;
            if (match.Meaning.Length > 0)
                chosen.Add(match);
        }

        chosen.Sort((a, b) => a.First.Index.CompareTo(b.First.Index));
        return chosen;
    }
}
