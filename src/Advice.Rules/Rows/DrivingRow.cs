using Advice.Knowledge.Rules;

namespace Advice.Rules.Rows;

/// <summary>Whether it may be driven.</summary>
internal sealed class DrivingRow(DrivingRule rule) : CaseRow
{
    /// <summary>The rule.</summary>
    public DrivingRule Rule => rule;

    /// <inheritdoc/>
    public override bool Holds(Inquiry inquiry) =>
        inquiry.SeesAll(rule.Symptoms, rule.Occasions) && inquiry.Suspects(rule.Fault, rule.Probability)
        && !inquiry.ReportsAny(rule.Without) && rule.When.IsLikely(inquiry.Case.Vehicle);
}
