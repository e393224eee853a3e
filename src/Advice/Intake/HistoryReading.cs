using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Knowledge.Limits;
using Advice.Symptoms.Mentions;

namespace Advice.Intake;

/// <summary>Service history from the words of a complaint; what is given as data counts more.</summary>
internal static class HistoryReading
{
    /// <summary>The services of the request and those of which the complaint says when they were done, or that they never were.</summary>
    /// <param name="given">The services of the request, by item.</param>
    /// <param name="heard">What the complaint says.</param>
    /// <param name="items">All service items.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="asOf">The day of the case.</param>
    public static IReadOnlyDictionary<string, ServiceDone> Of(
        Dictionary<string, ServiceDone> given, IReadOnlyList<ServiceMention> heard, IEnumerable<ServiceItem> items, VehicleDescription vehicle, DateOnly asOf)
    {
        var odometerKm = UnitConversion.Convert(vehicle.Odometer, "km");
        foreach (var mention in heard)
        {
            if (mention.Item is { } item && Done(mention, odometerKm, vehicle, asOf) is { IsDated: true } done)
                given.TryAdd(item, done);
        }

        // "Never serviced" names no item: it is said of all that is due by an interval, unless the words before told otherwise of one.
        if (heard.FirstOrDefault(mention => mention is { Item: null, System: null, Done: false }) is { } never && Done(never, odometerKm, vehicle, asOf) is { IsDated: true } first)
        {
            foreach (var item in items.Where(item => item.Intervals.Any(one => one.Jurisdiction is null)))
                given.TryAdd(item.Id, first);
        }

        return given;
    }

    private static ServiceDone? Done(ServiceMention mention, double? odometerKm, VehicleDescription vehicle, DateOnly asOf)
    {
        if (!mention.Done)
            return vehicle.ModelYear is { } year && year <= asOf.Year ? new ServiceDone(new DateOnly(year, 1, 1), 0) : null;
        var thenKm = odometerKm - mention.KmAgo;
        return new ServiceDone(mention.DaysAgo is { } days ? asOf.AddDays(-days) : null, thenKm >= 0 ? thenKm : null);
    }
}
