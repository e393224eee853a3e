namespace Advice.Documents.Requests;

/// <summary>What the vehicle is fitted with, as far as the caller knows.</summary>
public sealed record EquipmentDescription
{
    /// <summary>A limited-slip differential.</summary>
    public bool? LimitedSlip { get; init; }

    /// <summary>Anti-lock brakes.</summary>
    public bool? AntilockBrakes { get; init; }

    /// <summary>Air springs or another self-levelling suspension.</summary>
    public bool? AirSuspension { get; init; }

    /// <summary>Air conditioning.</summary>
    public bool? AirConditioning { get; init; }

    /// <summary>A sunroof.</summary>
    public bool? Sunroof { get; init; }

    /// <summary>Starting with a button instead of a key.</summary>
    public bool? KeylessStart { get; init; }

    /// <summary>Stopping the engine at halts.</summary>
    public bool? StartStop { get; init; }

    /// <summary>Whether winter tyres are on.</summary>
    public bool? WinterTyres { get; init; }
}
