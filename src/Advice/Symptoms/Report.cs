namespace Advice.Symptoms;

/// <summary>One symptom as the driver reports it.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Occasions">Ids of the occasions that were stated; empty = not stated.</param>
/// <param name="Position">The position that was stated.</param>
/// <param name="Present">Whether it is noticed; false = expressly not.</param>
/// <param name="Words">The words of the complaint that it was read from, if any.</param>
/// <param name="Confidence">How sure that reading is, 0 … 1; 1 for what was given as data.</param>
public sealed record Report(
    string Symptom, IReadOnlyList<string> Occasions, string? Position, bool Present, string? Words = null, double Confidence = 1);
