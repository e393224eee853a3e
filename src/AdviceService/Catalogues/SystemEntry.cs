namespace AdviceService.Catalogues;

/// <summary>A system of the vehicle.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Plain">Its name for an owner.</param>
public sealed record SystemEntry(string Id, string Name, string Plain);
