namespace AdviceService.Catalogues;

/// <summary>What was found in the catalogue.</summary>
/// <param name="Entries">Entries, best first.</param>
public sealed record CatalogueSearchResult(IReadOnlyList<FoundEntry> Entries);
