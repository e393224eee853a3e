using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>Rows of one kind that hold for the case as a whole.</summary>
internal sealed class CaseRows<TRow>(IReadOnlyList<TRow> rows)
    where TRow : CaseRow
{
    public IReadOnlyList<TRow> Rows => rows;
}
