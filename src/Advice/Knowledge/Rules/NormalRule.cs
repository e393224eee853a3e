using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>What is noticed but is no fault.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Occasions">When; empty = at any time.</param>
/// <param name="Without">Symptoms whose report rules it out.</param>
/// <param name="Share">Share of such reports that are just this, [0, 1).</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Because">The explanation.</param>
/// <param name="Source">Its source.</param>
public sealed record NormalRule(
    string Id, string Symptom, IReadOnlyList<string> Occasions, IReadOnlyList<string> Without, double Share,
    VehicleCondition When, Text Because, Source? Source) : Rule(Id, When, Because, Source);
