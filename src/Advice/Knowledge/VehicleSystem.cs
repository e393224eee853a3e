using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>A system of the vehicle, such as the brakes.</summary>
public sealed record VehicleSystem(string Id, Text Name)
{
    /// <summary>Words that name it or a part of it and hardly anything else.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Words that often, but not always, have to do with it.</summary>
    public IReadOnlyList<string> Hints { get; init; } = [];

    /// <summary>Id of the symptom that says no more than that something is wrong with it, if there is one.</summary>
    public string? Trouble { get; init; }
}
