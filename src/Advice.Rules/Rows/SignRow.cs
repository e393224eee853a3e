namespace Advice.Rules.Rows;

/// <summary>Knowledge that applies to one sign of a case.</summary>
internal abstract class SignRow
{
    /// <summary>Whether it applies to that sign of that case.</summary>
    public abstract bool Holds(Seen seen, Inquiry inquiry);
}
