using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>A piece of conditional knowledge.</summary>
/// <param name="Id">Unique among all rules.</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Because">Its reason; empty where it needs none.</param>
/// <param name="Source">Its source, where it states a value.</param>
public abstract record Rule(string Id, VehicleCondition When, Text Because, Source? Source);
