namespace Advice.Knowledge;

/// <summary>A system of the vehicle, such as the brakes.</summary>
public sealed record VehicleSystem(string Id, Text Name);
