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

    /// <summary>A vehicle of which nothing is known.</summary>
    public static Vehicle Unknown { get; } = new(new Dictionary<string, string>(), new Dictionary<string, double>());

    /// <summary>The word of a fact, if known.</summary>
    public string? Word(string fact) => Words.GetValueOrDefault(fact);

    /// <summary>The number of a fact, if known.</summary>
    public double? Number(string fact) => Numbers.TryGetValue(fact, out var number) ? number : null;
}
