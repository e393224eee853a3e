namespace Advice.Knowledge;

/// <summary>What a fault does if it is left alone.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Harm">Harm relative to a nuisance (1); only ratios matter.</param>
public sealed record Consequence(string Id, string Name, double Harm);
