using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Evidence;

/// <summary>Whether something that makes faults more or less likely applies to a case. Nothing is assumed: it applies only to what is known.</summary>
public static class Proneness
{
    private const double DaysPerYear = 365.25;

    /// <summary>Whether the rule applies.</summary>
    public static bool Applies(ProneRule rule, Case @case) =>
        rule.When.Test(@case.Vehicle) == Truth.Yes && (rule.Service is null || Served(rule.Service, @case) == Truth.Yes);

    private static Truth Served(ServiceTest test, Case @case)
    {
        if (!@case.Services.TryGetValue(test.Item, out var done))
            return Truth.Unknown;
        double? years = done.On is { } on ? (@case.AsOf.DayNumber - on.DayNumber) / DaysPerYear : null;
        return test.Test(years, @case.Vehicle.Number(Vehicle.OdometerKm) - done.OdometerKm);
    }
}
