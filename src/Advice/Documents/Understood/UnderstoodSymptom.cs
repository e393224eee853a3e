namespace Advice.Documents.Understood;

/// <summary>One symptom as understood.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Name">Its name.</param>
/// <param name="Occasions">When.</param>
/// <param name="Position">Where.</param>
/// <param name="Present">Whether it is noticed.</param>
/// <param name="Words">The words that it was read from.</param>
/// <param name="Confidence">How sure that reading is, 0 … 1.</param>
public sealed record UnderstoodSymptom(
    string Symptom, string Name, IReadOnlyList<string> Occasions, string? Position, bool Present, string? Words, double Confidence);
