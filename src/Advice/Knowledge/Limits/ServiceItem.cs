using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Limits;

/// <summary>Work that is due by distance and time.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="System">Id of the system.</param>
/// <param name="Because">Why it matters.</param>
/// <param name="Intervals">How often; none = when it is worn, so that it is never due and only its history counts.</param>
/// <param name="NeverLate">Vehicles on which it is overdue as soon as it is due, and without a record counts from new; null = none.</param>
public sealed record ServiceItem(
    string Id, Text Name, string System, Text Because, IReadOnlyList<Interval> Intervals, VehicleCondition? NeverLate = null)
{
    /// <summary>How people name it or the part that it renews.</summary>
    public IReadOnlyList<string> Phrases { get; init; } = [];
}
