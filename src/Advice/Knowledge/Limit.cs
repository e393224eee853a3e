namespace Advice.Knowledge;

/// <summary>When a measured value is no longer good.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Check">Id of the measured check.</param>
/// <param name="Minimum">Smallest good value, in <paramref name="Unit"/>.</param>
/// <param name="Maximum">Largest good value.</param>
/// <param name="Unit">Unit of the rule's own text, in which values are compared.</param>
/// <param name="Jurisdiction">Whose law it is; null = trade advice.</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Position">Where it applies; null = everywhere.</param>
/// <param name="Deficiency">Class when it is passed.</param>
/// <param name="Text">The limit in words.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Limit(
    string Id, string Check, double? Minimum, double? Maximum, string Unit, string? Jurisdiction, VehicleCondition When,
    string? Position, Deficiency Deficiency, Text Text, Source Source);
