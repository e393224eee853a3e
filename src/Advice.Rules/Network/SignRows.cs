using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>What a sign of the case brings into play: the rows of one kind that hold for it. One fact for all of them, because a fact
/// costs a session more than a row does. A class, not a record: equal facts would be one fact.</summary>
internal sealed class SignRows<TRow>(Seen seen, IReadOnlyList<TRow> rows)
    where TRow : SignRow
{
    public Seen Seen => seen;

    public IReadOnlyList<TRow> Rows => rows;
}
