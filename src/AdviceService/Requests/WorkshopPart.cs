using Advice.Documents.Requests;

namespace AdviceService.Requests;

/// <summary>Reads what can be done where the vehicle is.</summary>
internal static class WorkshopPart
{
    internal const int MinutesOfADay = 1440;
    internal static readonly string[] Audiences = ["owner", "technician"];

    /// <summary>Reads it.</summary>
    public static WorkshopDescription Read(ObjectReader workshop) => new()
    {
        Lift = workshop.Take("lift")?.Truth(),
        Minutes = workshop.Take("minutes")?.Integer(1, MinutesOfADay),
        Audience = workshop.Take("audience")?.OneOf(Audiences),
    };
}
