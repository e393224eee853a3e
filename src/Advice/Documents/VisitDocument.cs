namespace Advice.Documents;

/// <summary>One visit to an area.</summary>
/// <param name="Area">Id of the area.</param>
/// <param name="SetUp">Ids of the set-ups to arrange first.</param>
/// <param name="Checks">Ids of the checks.</param>
/// <param name="Minutes">Time with those set-ups, min.</param>
public sealed record VisitDocument(string Area, IReadOnlyList<string> SetUp, IReadOnlyList<string> Checks, int Minutes);
