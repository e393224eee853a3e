using Advice.Knowledge.Rules;

namespace Advice.Rules.Rows;

/// <summary>The case calls for a caution.</summary>
internal sealed class CautionRow(WarnsRule rule) : CaseRow
{
    /// <summary>The rule.</summary>
    public WarnsRule Rule => rule;

    /// <inheritdoc/>
    public override bool Holds(Inquiry inquiry) =>
        inquiry.SeesAll(rule.Symptoms, rule.Occasions) && inquiry.Suspects(rule.Fault, rule.Probability) && inquiry.AdvisesAny(rule.Checks)
        && !inquiry.ReportsAny(rule.Without) && rule.When.IsLikely(inquiry.Case.Vehicle);
}
