using Advice.Documents;
using Advice.Symptoms;

namespace Advice.Intake;

/// <summary>Service history from the words of a complaint; what is given as data counts more.</summary>
internal static class HistoryReading
{
    /// <summary>The services of the request and those of which the complaint says when they were done, or that they never were.</summary>
    /// <param name="given">The services of the request, by item.</param>
    /// <param name="heard">What the complaint says.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="asOf">The day of the case.</param>
    public static IReadOnlyDictionary<string, ServiceDone> Of(
        Dictionary<string, ServiceDone> given, IEnumerable<ServiceMention> heard, VehicleDescription vehicle, DateOnly asOf)
    {
        foreach (var mention in heard)
        {
            if (mention.Item is not { } item || given.ContainsKey(item))
                continue;
            if (mention is { Done: true, DaysAgo: { } days })
                given[item] = new ServiceDone(asOf.AddDays(-days), null);
            else if (!mention.Done && vehicle.ModelYear is { } year && year <= asOf.Year)
                given[item] = new ServiceDone(new DateOnly(year, 1, 1), 0);
        }

        return given;
    }
}
