using Advice.Documents.Requests;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads services that were done.</summary>
/// <param name="catalogue">The rule set.</param>
/// <param name="asOf">The day asked for; nothing was done after it.</param>
internal sealed class ServicePart(Catalogue catalogue, DateOnly asOf)
{
    /// <summary>Reads one service.</summary>
    public ServiceReport Read(ObjectReader service) => new()
    {
        Item = service.Required("item")?.Entry(catalogue.Services, "service item")?.Id ?? "",
        On = service.Take("on")?.Date(AdvicePart.Earliest, asOf),
        Odometer = service.Take("odometer")?.Object(QuantityPart.Odometer.Read),
        Interval = service.Take("interval")?.Object(IntervalPart.Read),
    };
}
