namespace Advice.Arithmetic;

/// <summary>A word of a closed list.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What it says.</param>
/// <param name="Words">The words.</param>
public sealed record WordInput(string Name, string What, params IReadOnlyList<string> Words) : Input(Name, What);
