namespace Advice.Symptoms;

/// <summary>A sentence in which nothing was recognised.</summary>
/// <param name="Text">As written.</param>
/// <param name="Start">Place of its first character in the text.</param>
/// <param name="End">Place after its last one.</param>
/// <param name="Guesses">What it may mean, the surest first, at most three.</param>
public sealed record UnreadSentence(string Text, int Start, int End, IReadOnlyList<Guess> Guesses);
