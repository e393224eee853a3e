using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Rules.Rows;

/// <summary>What makes a fault more or less likely on this vehicle. Nothing is assumed: it applies only to what is known.</summary>
internal sealed class FactorRow(ProneRule rule, string fault) : CaseRow
{
    private const double DaysPerYear = 365.25;

    /// <summary>The factor.</summary>
    public OddsFactor Factor { get; } = new(fault, rule);

    /// <inheritdoc/>
    public override bool Holds(Inquiry inquiry) =>
        rule.When.Test(inquiry.Case.Vehicle) == Truth.Yes && (rule.Service is null || Served(rule.Service, inquiry.Case) == Truth.Yes);

    private static Truth Served(ServiceTest test, Case @case)
    {
        if (!@case.Services.TryGetValue(test.Item, out var done))
            return Truth.Unknown;
        double? years = done.On is { } on ? (@case.AsOf.DayNumber - on.DayNumber) / DaysPerYear : null;
        return test.Test(years, @case.Vehicle.Number(Vehicles.Vehicle.OdometerKm) - done.OdometerKm);
    }
}
