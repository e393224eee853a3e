using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Limits;

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
/// <param name="AcrossAxle">Where it limits not the value but how far left and right on one axle differ: how they are compared.</param>
/// <param name="Times">A number of the vehicle by which both bounds are multiplied; where it is not known the limit does not apply.</param>
/// <param name="Means">The outcome of another check that passing it amounts to.</param>
public sealed record Limit(
    string Id, string Check, double? Minimum, double? Maximum, string Unit, string? Jurisdiction, VehicleCondition When,
    string? Position, Deficiency Deficiency, Text Text, Source Source,
    AxleComparison? AcrossAxle = null, string? Times = null, Sign? Means = null);
