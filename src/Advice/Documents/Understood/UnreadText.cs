namespace Advice.Documents.Understood;

/// <summary>A sentence in which nothing was recognised.</summary>
/// <param name="Words">The sentence.</param>
/// <param name="Start">Place of its first character in the text, in UTF-16 units from 0.</param>
/// <param name="End">Place after its last one.</param>
/// <param name="Guesses">What it may mean: too unsure to count, good enough for a question.</param>
public sealed record UnreadText(string Words, int Start, int End, IReadOnlyList<SymptomGuess> Guesses);
