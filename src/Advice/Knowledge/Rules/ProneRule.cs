using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>Something makes faults more or less likely on this vehicle.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Faults">Ids of the faults.</param>
/// <param name="Service">What the service history must say, if anything.</param>
/// <param name="Odds">Factor on the odds.</param>
/// <param name="When">Vehicles that it applies to.</param>
/// <param name="Because">The mechanism.</param>
/// <param name="Source">Its source.</param>
public sealed record ProneRule(
    string Id, IReadOnlyList<string> Faults, ServiceTest? Service, double Odds, VehicleCondition When, Text Because, Source? Source)
    : Rule(Id, When, Because, Source);
