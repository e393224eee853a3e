namespace Advice.Documents.Requests;

/// <summary>How often the maker asks for a service: whichever of the two comes first.</summary>
public sealed record SuppliedInterval
{
    /// <summary>The distance, km or mi.</summary>
    public Quantity? Distance { get; init; }

    /// <summary>The time, years.</summary>
    public double? Years { get; init; }
}
