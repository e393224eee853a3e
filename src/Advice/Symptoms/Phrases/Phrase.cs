using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>One way to say something.</summary>
/// <param name="Meaning">Id of what it says; empty for an idiom that says nothing here.</param>
/// <param name="Terms">Its terms in order; a class such as "&lt;noise&gt;" stands for any of its words.</param>
/// <param name="Exact">The word itself, where only this form of it counts.</param>
internal sealed record Phrase(string Meaning, string[] Terms, string? Exact)
{
    /// <summary>Whether its words may be neither left out nor moved: "not" and "off" turn a meaning round.</summary>
    public bool IsFixed { get; } = Terms.Any(IsTurning);

    /// <summary>Whether a term turns a meaning round.</summary>
    public static bool IsTurning(string term) => term is "not" or "no" or "only" or "nothing" or "hardly" or "on" or "off" or "out" or "up" or "down" or "over" or "when";

    /// <summary>Whether it says something of a part by a class of words.</summary>
    public bool HasClass { get; } = Terms.Any(WordClasses.IsClass);

    /// <summary>Whether it says that something fails.</summary>
    public bool HasFailure { get; } = Terms.Contains("fail");
}
