namespace AdviceService.Catalogues;

/// <summary>An entry of the catalogue that was found.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name in the trade's terms.</param>
/// <param name="Plain">Its name in plain words.</param>
public sealed record FoundEntry(string Kind, string Id, string Name, string Plain);
