using Advice.Symptoms.Phrases;

namespace Advice.Symptoms;

/// <summary>Tells which statements an occasion or position belongs to.</summary>
/// <param name="circumstances">The occasions and positions of the sentence.</param>
internal sealed class Attachment(IReadOnlyList<PhraseMatch> circumstances)
{
    /// <summary>Those of its own clause that stand before it, else after it; else those of the clause beside it.</summary>
    /// <param name="statements">The statements of the sentence, in order.</param>
    /// <param name="circumstance">The occasion or position.</param>
    /// <param name="ahead">Whether it looks into the next clause first, as one that opens with "when" does, otherwise into the one before.</param>
    public IReadOnlyList<Statement> Beside(IReadOnlyList<Statement> statements, PhraseMatch circumstance, bool ahead)
    {
        var clause = circumstance.First.Clause;
        var own = statements.Where(s => s.IsIn(clause)).ToList();
        var before = own.Where(s => s.Match.First.Index < circumstance.First.Index).ToList();
        if (before.Count > 0)
            return [.. before.Where(s => !IsParted(s, before[^1]))];
        if (own.Count > 0)
            return [.. own.Where(s => !IsParted(own[0], s))];
        int[] next = ahead ? [clause + 1, clause - 1] : [clause - 1, clause + 1];
        return next.Select(c => statements.Where(s => s.IsIn(c)).ToList()).FirstOrDefault(s => s.Count > 0, []);
    }

    /// <summary>Whether an occasion stands between two statements: "squeals when braking and rattles" has two minds.</summary>
    private bool IsParted(Statement first, Statement second) => circumstances.Any(c =>
        first.Match.First.Index < c.First.Index && c.First.Index < second.Match.First.Index);
}
