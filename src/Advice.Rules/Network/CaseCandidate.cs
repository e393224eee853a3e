using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>A row that the case as a whole may bring into play.</summary>
internal sealed class CaseCandidate(CaseRow row, Inquiry inquiry)
{
    public CaseRow Row => row;

    public bool Holds { get; } = row.Holds(inquiry);
}
