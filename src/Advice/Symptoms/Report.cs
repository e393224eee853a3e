using Advice.Symptoms.Onsets;

namespace Advice.Symptoms;

/// <summary>One symptom as the driver reports it.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Occasions">Ids of the occasions that were stated; empty = not stated.</param>
/// <param name="Position">The position that was stated.</param>
/// <param name="Present">Whether it is noticed; false = expressly not.</param>
/// <param name="Words">The words of the complaint that it was read from, if any.</param>
/// <param name="Confidence">How sure that reading is, 0 … 1; 1 for what was given as data.</param>
public sealed record Report(
    string Symptom, IReadOnlyList<string> Occasions, string? Position, bool Present, string? Words = null, double Confidence = 1)
{
    /// <summary>Place of the first of the words in the complaint.</summary>
    public int? Start { get; init; }

    /// <summary>Place after the last of them.</summary>
    public int? End { get; init; }

    /// <summary>What else the words may mean, the surest first; empty where they are clear. Found when first asked for: few answers show it.</summary>
    public IReadOnlyList<Guess> Alternatives => Rivals?.Value ?? [];

    /// <summary>Since when.</summary>
    public Onset? Since { get; init; }

    /// <summary>Whether it comes and goes; null = not said.</summary>
    public bool? Intermittent { get; init; }

    /// <summary>Finds the alternatives.</summary>
    internal Lazy<IReadOnlyList<Guess>>? Rivals { get; init; }
}
