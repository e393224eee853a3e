namespace Advice.Documents.Requests;

/// <summary>What can be done where the vehicle is.</summary>
public sealed record WorkshopDescription
{
    /// <summary>Whether there is a vehicle lift.</summary>
    public bool? Lift { get; init; }

    /// <summary>Time that there is, min, 1 … 1,440.</summary>
    public int? Minutes { get; init; }

    /// <summary>owner or technician.</summary>
    public string? Audience { get; init; }
}
