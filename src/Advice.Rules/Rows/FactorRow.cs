using Advice.Evidence;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Rows;

/// <summary>What makes a fault more or less likely on this vehicle.</summary>
internal sealed class FactorRow(ProneRule rule, string fault) : CaseRow
{
    /// <summary>The factor.</summary>
    public OddsFactor Factor { get; } = new(fault, rule);

    /// <inheritdoc/>
    public override bool Holds(Inquiry inquiry) => Proneness.Applies(rule, inquiry.Case);
}
