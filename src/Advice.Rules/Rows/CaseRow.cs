namespace Advice.Rules.Rows;

/// <summary>Knowledge that applies to a case as a whole.</summary>
internal abstract class CaseRow
{
    /// <summary>Whether it applies to that case.</summary>
    public abstract bool Holds(Inquiry inquiry);
}
