namespace Advice.Vehicles;

/// <summary>What is known of one vehicle, by the ids of the vehicle facts. What is absent is unknown.</summary>
/// <param name="Words">Word facts, and truths as "true" or "false".</param>
/// <param name="Numbers">Number facts, in the unit that the fact's id names.</param>
public sealed record Vehicle(IReadOnlyDictionary<string, string> Words, IReadOnlyDictionary<string, double> Numbers)
{
    /// <summary>Id of the age, years.</summary>
    public const string AgeYears = "ageYears";

    /// <summary>Id of the distance, km.</summary>
    public const string OdometerKm = "odometerKm";

    /// <summary>Id of how it is used.</summary>
    public const string Duty = "duty";

    /// <summary>The word of hard use.</summary>
    public const string Severe = "severe";

    /// <summary>A vehicle of which nothing is known.</summary>
    public static Vehicle Unknown { get; } = new(new Dictionary<string, string>(), new Dictionary<string, double>());

    /// <summary>Day of the first registration, if known.</summary>
    public DateOnly? FirstRegistration { get; init; }

    /// <summary>What makes its use severe, as far as it was said.</summary>
    public IReadOnlyList<string> SevereUse { get; init; } = [];

    /// <summary>The word of a fact, if known.</summary>
    public string? Word(string fact) => Words.GetValueOrDefault(fact);

    /// <summary>The number of a fact, if known.</summary>
    public double? Number(string fact) => Numbers.TryGetValue(fact, out var number) ? number : null;
}
