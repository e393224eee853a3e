namespace Advice.Due;

/// <summary>A kind of use that shortens an interval.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
public sealed record VehicleUse(string Id, string Name);
