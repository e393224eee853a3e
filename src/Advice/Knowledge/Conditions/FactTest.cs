using Advice.Vehicles;

namespace Advice.Knowledge.Conditions;

/// <summary>One test on a vehicle fact: a word among some, a truth value, or a number in a half-open range.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Words">Accepted words ("true" or "false" for truths); empty for numbers.</param>
/// <param name="AtLeast">Smallest accepted number.</param>
/// <param name="Below">First number no longer accepted.</param>
public sealed record FactTest(VehicleFact Fact, IReadOnlyList<string> Words, double? AtLeast, double? Below)
{
    /// <summary>Share of all vehicles that pass, for when the fact is not stated; 1/2 for numbers.</summary>
    public double Share { get; } = Fact.Kind == FactKind.Number ? 0.5 : Words.Sum(word => Fact.Shares.GetValueOrDefault(word));

    /// <summary>Probability that the vehicle passes: 1 or 0 where the fact is known.</summary>
    public double ShareOn(Vehicle vehicle) => Test(vehicle) switch { Truth.Yes => 1, Truth.No => 0, _ => Share };

    /// <summary>Whether every vehicle that passes the other test passes this one.</summary>
    public bool FollowsFrom(FactTest other) => Fact.Id == other.Fact.Id
        && (Fact.Kind == FactKind.Number
            ? (AtLeast is null || other.AtLeast >= AtLeast) && (Below is null || other.Below <= Below)
            : other.Words.All(Words.Contains));

    /// <summary>Whether the vehicle passes.</summary>
    public Truth Test(Vehicle vehicle)
    {
        if (Fact.Kind == FactKind.Number)
            return vehicle.Number(Fact.Id) is not { } number ? Truth.Unknown
                : (AtLeast is null || number >= AtLeast) && (Below is null || number < Below) ? Truth.Yes : Truth.No;
        return vehicle.Word(Fact.Id) is not { } word ? Truth.Unknown : Words.Contains(word) ? Truth.Yes : Truth.No;
    }
}
