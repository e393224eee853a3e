using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>What can hurt people or ruin the vehicle, and how to avoid it.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">Its text.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="When">The vehicles that carry this danger; it is given unless a vehicle is known not to be one of them.</param>
public sealed record Caution(string Id, Text Text, Source Source, VehicleCondition When);
