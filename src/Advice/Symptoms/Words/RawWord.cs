namespace Advice.Symptoms.Words;

/// <summary>A word as it stands in the text.</summary>
/// <remarks>No value type: library code for lists of those cannot be compiled beforehand.</remarks>
/// <param name="Text">In lower case, without apostrophes.</param>
/// <param name="Start">Its place in the text.</param>
/// <param name="End">The place after its last character.</param>
/// <param name="Sentence">Number of its sentence.</param>
/// <param name="Clause">Number of its clause, counted through the text.</param>
internal sealed record RawWord(string Text, int Start, int End, int Sentence, int Clause);
