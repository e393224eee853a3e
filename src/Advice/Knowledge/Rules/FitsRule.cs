using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>Faults, checks and service items that exist only on some vehicles.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Faults">Ids of the faults.</param>
/// <param name="Checks">Ids of the checks.</param>
/// <param name="Services">Ids of the service items.</param>
/// <param name="OnlyIf">Completes "Only if …" while the fact is unknown.</param>
/// <param name="When">The vehicles that have them.</param>
/// <param name="Because">Why the others have not.</param>
/// <param name="Source">Its source.</param>
public sealed record FitsRule(
    string Id, IReadOnlyList<string> Faults, IReadOnlyList<string> Checks, IReadOnlyList<string> Services, string OnlyIf,
    VehicleCondition When, Text Because, Source? Source) : Rule(Id, When, Because, Source);
