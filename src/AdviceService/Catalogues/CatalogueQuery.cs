namespace AdviceService.Catalogues;

/// <summary>What is looked for in the catalogue.</summary>
public sealed record CatalogueQuery
{
    /// <summary>Words, of which an entry should have many; at most 200 characters.</summary>
    public required string Words { get; init; }

    /// <summary>The kind of entry; without it all kinds.</summary>
    public string? Kind { get; init; }

    /// <summary>The most entries, 1 … 50; without it 10.</summary>
    public int? Limit { get; init; }
}
