namespace Advice.Symptoms;

/// <summary>What a text says of a symptom that was not read from it: to ask for that is no news to whoever wrote it.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Words">The words of the text.</param>
/// <param name="IsSaid">Whether the words say so, or that it is not so, surely enough to ask no more; else the question is about these words.</param>
public sealed record Inkling(string Symptom, string Words, bool IsSaid);
