using Advice.Symptoms.Denials;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Resemblances;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>
/// Takes away what phrases say by chance: the words of a phrase stand in sentences that say something else. What may forbid driving gives way only to
/// what may forbid it too.
/// </summary>
/// <param name="words">The words of the text.</param>
/// <param name="used">Whether a word is used, by its place in the text.</param>
/// <param name="known">What is known whatever the text.</param>
internal sealed class ChanceFinds(IReadOnlyList<Word> words, bool[] used, ReadingKnowledge known)
{
    /// <summary>Weighs what was found against what the words resemble.</summary>
    /// <param name="found">What was found in them, changed in place.</param>
    /// <param name="content">The words that count.</param>
    /// <param name="resemblance">What they resemble as a whole.</param>
    public void Reconsider(List<PhraseMatch> found, List<Word> content, Lazy<Resemblance> resemblance)
    {
        var denial = new Denial(words, used);
        var first = found.ToList();
        var whole = new Lazy<string?>(() => resemblance.Value.Of(1) is [var surest] ? surest.Symptom : null);
        foreach (var match in first.FindAll(f => !denial.Governs(f) && !denial.IsFeared(f)))
        {
            // What other phrases say is left out, and the clauses in which they say it: a sentence may tell of several things.
            var own = content.FindAll(w => match.Words.Contains(w) || !first.Exists(f => f != match && (f.Words.Contains(w) || (f.IsIn(w.Clause) && !match.IsIn(w.Clause)))));
            // A phrase that is all that is said was written for just that.
            if (own.TrueForAll(w => match.Words.Contains(w) || Resemblance.SaysNothing(w)))
                continue;
            var judged = own.Count == content.Count ? resemblance.Value : known.Opinion.Value.On(own);
            var better = judged.Instead(match);
            // What is said already is said by other words; and words beside a sign that the sentence as a whole tells of belong to that sign.
            if (better is not null && (found.Exists(f => f.Meaning == better.Meaning) || first.Exists(f => f != match && f.Meaning == whole.Value)))
                continue;
            if (known.Grave.Contains(match.Meaning) ? better is not null && known.Grave.Contains(better.Meaning) : better is not null || judged.IsNothing(match))
                Replace(match, better, found, denial);
        }

        found.RemoveAll(f => found.Exists(longer => longer.IsLearned && f.IsWithin(longer)));
        found.Sort((a, b) => a.First.Index.CompareTo(b.First.Index));
    }

    /// <summary>Takes back what was found and frees its words.</summary>
    public void Remove(PhraseMatch match, List<PhraseMatch> found)
    {
        found.Remove(match);
        foreach (var word in match.Words.Where(w => !found.Exists(f => f.Words.Contains(w))))
            used[word.Index] = false;
    }

    /// <summary>Puts what is said in the place of what a phrase says, unless it is denied there.</summary>
    private void Replace(PhraseMatch match, PhraseMatch? better, List<PhraseMatch> found, Denial denial)
    {
        var before = used.ToArray();
        Remove(match, found);
        if (better is null)
            return;
        // Its other words stay free for occasions and positions.
        foreach (var word in better.Words.Where(w => Negation.Is(w) || match.Words.Contains(w)))
            used[word.Index] = true;
        if (denial.Governs(better) || denial.IsFeared(better))
        {
            before.CopyTo(used, 0);
            found.Add(match);
        }
        else
        {
            found.Add(better);
        }
    }
}
