using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>A fault shows itself by a symptom or trouble code.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Sign">What it shows.</param>
/// <param name="Occasions">When; empty = at any time.</param>
/// <param name="Without">Symptoms whose report rules it out.</param>
/// <param name="Often">Probability that the sign is noticed given the fault.</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Because">The mechanism.</param>
/// <param name="Source">Its source.</param>
public sealed record ShowsRule(
    string Id, string Fault, Sign Sign, IReadOnlyList<string> Occasions, IReadOnlyList<string> Without, double Often,
    VehicleCondition When, Text Because, Source? Source) : Rule(Id, When, Because, Source);
