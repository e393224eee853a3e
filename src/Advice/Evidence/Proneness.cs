using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Vehicles;

namespace Advice.Evidence;

/// <summary>Whether something that makes faults more or less likely applies to a case. Nothing is assumed: it applies only to what is known.</summary>
public static class Proneness
{
    /// <summary>Whether the rule applies.</summary>
    public static bool Applies(ProneRule rule, Case @case) =>
        rule.When.Test(@case.Vehicle) == Truth.Yes && (rule.Service is null || Served(rule.Service, @case) == Truth.Yes);

    /// <summary>Whether the service history says so; unknown where it says nothing of the item.</summary>
    public static Truth Served(ServiceTest test, Case @case)
    {
        if (!@case.Services.TryGetValue(test.Item, out var done))
            return Truth.Unknown;
        double? years = done.On is { } on ? MeanYear.Between(on, @case.AsOf) : null;
        return test.Test(years, @case.Vehicle.Number(Vehicle.OdometerKm) - done.OdometerKm);
    }
}
