using System.Collections.Frozen;
using Advice.Symptoms.Denials;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>Tells which clauses of a sentence may tell something of their own, though nothing was understood of them.</summary>
/// <param name="words">The words of the text.</param>
/// <param name="used">Whether a word is used, by its place in the text.</param>
internal sealed class LeftClauses(IReadOnlyList<Word> words, bool[] used)
{
    /// <summary>A clause with fewer words says nothing of its own beside others.</summary>
    private const int LeastAlone = 3;

    /// <summary>Words that join another main clause; what follows a comma alone tells of its own only where it tells of something noticed.</summary>
    private static readonly FrozenSet<string> Joining = WordSet.Of("and but so plus also then");

    /// <summary>Words that open a clause about the time, the cause or the occasion of another one.</summary>
    private static readonly FrozenSet<string> Depending = WordSet.Of("when whenever while if because cause since until till unless after before during as though although once which that who where like with without at in on from under over around");

    /// <summary>Whether a clause of which nothing was understood may tell something of its own.</summary>
    public bool StandsAlone(IGrouping<int, Word> clause)
    {
        var (opening, first) = (clause.Key == words.First(w => w.Sentence == clause.First().Sentence).Clause, words.First(w => w.Clause == clause.Key).Surface);
        return (opening || Joining.Contains(first) || Noticing.Is(clause)) && clause.Count() >= LeastAlone && clause.Count(w => !used[w.Index]) > 1 && !Noticing.IsAbsence(clause)
            && !Depending.Contains(first) && !Depending.Contains(clause.First().Surface) && !Denies(clause.First().Sentence);
    }

    /// <summary>"No smoke anywhere, steam or puddles": what a sentence denies may go on in its next clause.</summary>
    private bool Denies(int sentence) => words.Any(w => w.Sentence == sentence && !used[w.Index] && Noticing.IsAbsence([w]));
}
