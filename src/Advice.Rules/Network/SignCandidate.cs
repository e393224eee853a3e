using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>A row that a sign of the case may bring into play. A class, not a record: two equal candidates are two facts.</summary>
internal sealed class SignCandidate(SignRow row, Seen seen, Inquiry inquiry)
{
    public SignRow Row => row;

    public Seen Seen => seen;

    public Inquiry Inquiry => inquiry;

    public bool Holds { get; } = row.Holds(seen, inquiry);
}
