using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Rules;

/// <summary>Where one sign is seen the other is certain.</summary>
public sealed record ImpliesRule(
    string Id, Sign Sign, Sign Implied, IReadOnlyList<string> Occasions, IReadOnlyList<string> Without, VehicleCondition When,
    Text Because, Source? Source) : Rule(Id, When, Because, Source);
