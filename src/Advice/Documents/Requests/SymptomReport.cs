namespace Advice.Documents.Requests;

/// <summary>One symptom, as data.</summary>
public sealed record SymptomReport
{
    /// <summary>Id of the symptom.</summary>
    public required string Symptom { get; init; }

    /// <summary>Ids of the occasions on which it is noticed.</summary>
    public IReadOnlyList<string> Occasions { get; init; } = [];

    /// <summary>Where.</summary>
    public string? Position { get; init; }

    /// <summary>Whether it is noticed; false = expressly not.</summary>
    public bool Present { get; init; } = true;
}
