using AdviceService.Catalogues;

namespace AdviceService.Requests;

/// <summary>Reads what is looked for in the catalogue.</summary>
internal static class CatalogueQueryPart
{
    internal const int LongestWords = 200;
    internal const int MostEntries = 50;

    /// <summary>Reads it.</summary>
    public static CatalogueQuery Read(ObjectReader query) => new()
    {
        Words = query.Required("words")?.Text(LongestWords) ?? "",
        Kind = query.Take("kind")?.OneOf(CatalogueSearch.Kinds),
        Limit = query.Take("limit")?.Integer(1, MostEntries),
    };
}
