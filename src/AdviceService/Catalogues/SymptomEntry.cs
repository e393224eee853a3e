namespace AdviceService.Catalogues;

/// <summary>Something that a driver notices.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Plain">Its name for an owner.</param>
/// <param name="Ask">The question that asks for it, answerable with yes or no.</param>
/// <param name="Phrases">How people say it.</param>
public sealed record SymptomEntry(string Id, string Name, string Plain, string Ask, IReadOnlyList<string> Phrases);
