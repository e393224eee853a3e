namespace Advice.Documents.Understood;

/// <summary>One symptom that a text states or denies.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Name">Its name.</param>
/// <param name="Occasions">When.</param>
/// <param name="Position">Where.</param>
/// <param name="Present">Whether it is noticed; false = denied.</param>
/// <param name="Since">Since when, in the words of the text.</param>
/// <param name="SinceOn">The day that these words mean, about; null where they do not tell.</param>
/// <param name="Intermittent">Whether it comes and goes; null = not said.</param>
/// <param name="Words">The words that it was read from; null = given as data.</param>
/// <param name="Start">Place of the first of them in the text, in UTF-16 units from 0.</param>
/// <param name="End">Place after the last of them.</param>
/// <param name="Confidence">How sure that reading is, 0 … 1.</param>
/// <param name="Alternatives">What else the words may mean, where they are not clear.</param>
public sealed record IntakeSymptom(
    string Symptom, string Name, IReadOnlyList<string> Occasions, string? Position, bool Present, string? Since, DateOnly? SinceOn,
    bool? Intermittent, string? Words, int? Start, int? End, double Confidence, IReadOnlyList<SymptomGuess> Alternatives);
