namespace Advice.Knowledge;

/// <summary>Where one sign is seen the other is certain.</summary>
public sealed record ImpliesRule(
    string Id, Sign Sign, Sign Implied, IReadOnlyList<string> Occasions, IReadOnlyList<string> Without, VehicleCondition When,
    Text Because, Source? Source) : Rule(Id, When, Because, Source);
