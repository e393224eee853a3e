using Advice.Knowledge;

namespace Advice.Rules.Rows;

/// <summary>Knowledge that applies to one sign of a case.</summary>
internal abstract class SignRow
{
    /// <summary>Whether it applies to that sign of that case.</summary>
    public abstract bool Holds(Seen seen, Inquiry inquiry);

    /// <summary>Whether what is said of these vehicles may be said of this one although not all is known.</summary>
    protected internal static bool Likely(VehicleCondition when, Inquiry inquiry) =>
        when.Test(inquiry.Case.Vehicle) switch
        {
            Truth.Yes => true,
            Truth.No => false,
            _ => when.Share(inquiry.Case.Vehicle) >= 0.5,
        };
}
