namespace Advice.Documents.Requests;

/// <summary>The engine as far as the caller knows it.</summary>
public sealed record EngineDescription
{
    /// <summary>belt, chain or gear.</summary>
    public string? TimingDrive { get; init; }

    /// <summary>Whether the valves meet the pistons if the timing drive fails.</summary>
    public bool? Interference { get; init; }

    /// <summary>Number of cylinders, 1 … 16.</summary>
    public int? Cylinders { get; init; }

    /// <summary>coilOnPlug, coilPack, distributor or compression.</summary>
    public string? Ignition { get; init; }

    /// <summary>Whether it has a turbocharger or supercharger.</summary>
    public bool? ForcedInduction { get; init; }

    /// <summary>Whether fuel is injected into the cylinders.</summary>
    public bool? DirectInjection { get; init; }
}
