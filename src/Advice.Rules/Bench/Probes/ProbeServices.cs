using Advice.Knowledge.Limits;
using Advice.Vehicles;

namespace Advice.Rules.Bench.Probes;

/// <summary>Service histories of no more than one service.</summary>
internal static class ProbeServices
{
    private const double LongRunKm = 300_000;
    private const double LongAgoYears = 40;

    /// <summary>The case with the service as the test asks for it.</summary>
    public static Case Meeting(Case @case, ServiceTest test) => Done(
        @case, test.Item, Between(test.OlderThanYears, test.WithinYears), Between(test.OlderThanKm, test.WithinKm));

    /// <summary>The case with the service just done, and done long ago.</summary>
    public static IEnumerable<Case> Changed(Case @case, ServiceTest test) =>
        [Done(@case, test.Item, 0, 0), Done(@case, test.Item, LongAgoYears, LongRunKm)];

    private static double? Between(double? older, double? within) => older is not null && within is not null ? (older + within) / 2
        : older is not null ? older * 1.5 : within / 2;

    private static Case Done(Case @case, string item, double? years, double? km)
    {
        var odometer = @case.Vehicle.Number(Vehicle.OdometerKm) ?? LongRunKm;
        var numbers = new Dictionary<string, double>(@case.Vehicle.Numbers) { [Vehicle.OdometerKm] = odometer };
        DateOnly? on = years is null ? null : @case.AsOf.AddDays(-(int)(years * MeanYear.Days));
        return @case with
        {
            Vehicle = @case.Vehicle with { Numbers = numbers },
            Services = new Dictionary<string, ServiceDone> { [item] = new(on, km is null ? null : Math.Max(0, odometer - km.Value)) },
        };
    }
}
