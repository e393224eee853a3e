namespace Advice.Symptoms.Onsets;

/// <summary>Since when something is noticed, or when something was done.</summary>
/// <param name="Words">As written.</param>
/// <param name="Start">Place of the first character in the text.</param>
/// <param name="End">Place after the last one.</param>
/// <param name="Sentence">Number of the sentence.</param>
/// <param name="Clause">Number of the clause.</param>
/// <param name="DaysAgo">How many days before the day of the case, where the words tell.</param>
public sealed record Onset(string Words, int Start, int End, int Sentence, int Clause, int? DaysAgo);
