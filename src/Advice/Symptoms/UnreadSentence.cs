namespace Advice.Symptoms;

/// <summary>A sentence in which nothing was recognised.</summary>
/// <param name="Text">As written.</param>
/// <param name="Start">Place of its first character in the text.</param>
/// <param name="End">Place after its last one.</param>
public sealed record UnreadSentence(string Text, int Start, int End)
{
    /// <summary>What it may mean, the surest first, at most three. Found when first asked for: few answers show it.</summary>
    public IReadOnlyList<Guess> Guesses => Unsure?.Value ?? [];

    /// <summary>Finds the guesses.</summary>
    internal Lazy<IReadOnlyList<Guess>>? Unsure { get; init; }
}
