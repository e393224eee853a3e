namespace Advice.Knowledge.Checks;

/// <summary>A place where a person stands or lies to work.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Order">Its place on the walk around the vehicle, from 0.</param>
public sealed record Area(string Id, string Name, int Order);
