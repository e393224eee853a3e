using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>Whether it may be driven, by symptoms that are all reported or by a suspected fault.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Symptoms">Symptoms, all of which must be reported; empty = none is asked for.</param>
/// <param name="Fault">A fault that must be suspected.</param>
/// <param name="Probability">The least probability of that fault.</param>
/// <param name="Advice">The advice.</param>
/// <param name="Occasions">When; empty = at any time.</param>
/// <param name="Without">Symptoms whose report rules it out.</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Because">Why.</param>
/// <param name="Source">Its source.</param>
public sealed record DrivingRule(
    string Id, IReadOnlyList<string> Symptoms, string? Fault, double Probability, DrivingAdvice Advice,
    IReadOnlyList<string> Occasions, IReadOnlyList<string> Without, VehicleCondition When, Text Because, Source? Source)
    : Rule(Id, When, Because, Source);
