namespace Advice.Symptoms;

/// <summary>
/// How much a complaint speaks of each system. Who writes a page about the brakes hardly has a fault of the tyres: the odds of the faults of a
/// system that is spoken of less than another are lowered, never those of another raised, so that words alone make nothing probable.
/// </summary>
public sealed class SystemsNamed
{
    /// <summary>Nothing was named; every factor is 1.</summary>
    public static readonly SystemsNamed None = new(new Dictionary<string, double>());

    /// <summary>What is said more often tells no more.</summary>
    private const double Most = 8;

    /// <summary>How steeply the odds fall with less mention.</summary>
    private static readonly double Steepness = double.Parse(Environment.GetEnvironmentVariable("STEEP") ?? "3");

    private readonly Dictionary<string, double> weights;
    private readonly double most;

    private SystemsNamed(Dictionary<string, double> weights)
    {
        this.weights = weights;
        most = weights.Values.DefaultIfEmpty().Max();
    }

    /// <summary>The systems that are named at least half as much as the one that is named most, that one first.</summary>
    public IReadOnlyList<string> Foremost =>
        [.. weights.Where(w => w.Value >= 1 && 2 * w.Value >= most).OrderByDescending(w => w.Value).ThenBy(w => w.Key, StringComparer.Ordinal).Select(w => w.Key)];

    /// <summary>From the mentions of a text.</summary>
    public static SystemsNamed Of(IEnumerable<SystemMention> mentions) => new(mentions.GroupBy(m => m.System, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => Math.Min(Most, g.Sum(m => m.Weight)), StringComparer.Ordinal));

    /// <summary>Factor on the odds of the faults of a system, at most 1.</summary>
    public double Factor(string system) => Math.Pow((1 + weights.GetValueOrDefault(system)) / (1 + most), Steepness);
}
