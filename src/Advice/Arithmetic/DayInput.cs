namespace Advice.Arithmetic;

/// <summary>A day. Left out, it is the day of the service clock.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What day it is.</param>
public sealed record DayInput(string Name, string What) : Input(Name, What)
{
    /// <summary>Whether the clock cannot stand in for it.</summary>
    public bool Past { get; init; }

    /// <inheritdoc/>
    public override bool IsRequired => Past && !Optional;
}
