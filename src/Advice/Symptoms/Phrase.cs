namespace Advice.Symptoms;

/// <summary>One way to say something.</summary>
/// <param name="Meaning">Id of what it says; empty for an idiom that says nothing here.</param>
/// <param name="Terms">Its terms in order.</param>
/// <param name="Exact">The word itself, where only this form of it counts.</param>
internal sealed record Phrase(string Meaning, string[] Terms, string? Exact)
{
    /// <summary>Whether it says that something is absent or fails to happen: such words are never left out or moved.</summary>
    public bool IsNegative { get; } = Terms.Any(t => t is "not" or "no");
}
