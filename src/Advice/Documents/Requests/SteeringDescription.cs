namespace Advice.Documents.Requests;

/// <summary>The steering as far as the caller knows it.</summary>
public sealed record SteeringDescription
{
    /// <summary>Diameter of the steering wheel, in, mm or cm.</summary>
    public Quantity? WheelDiameter { get; init; }

    /// <summary>manual, power, hydraulic or electric.</summary>
    public string? Assist { get; init; }
}
