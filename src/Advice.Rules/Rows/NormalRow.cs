using Advice.Knowledge.Rules;

namespace Advice.Rules.Rows;

/// <summary>What is noticed but is no fault. It answers a report, so what merely follows from one does not bring it up.</summary>
internal sealed class NormalRow(NormalRule rule) : SignRow
{
    /// <summary>The rule.</summary>
    public NormalRule Rule => rule;

    /// <inheritdoc/>
    public override bool Holds(Seen seen, Inquiry inquiry) =>
        seen is { Reported: true, Sign.Present: true } && seen.Concerns(rule.Occasions, inquiry.Catalogue)
        && !inquiry.ReportsAny(rule.Without) && rule.When.IsLikely(inquiry.Case.Vehicle);
}
