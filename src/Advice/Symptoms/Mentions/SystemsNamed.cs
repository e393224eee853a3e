namespace Advice.Symptoms.Mentions;

/// <summary>
/// How much a complaint speaks of each system. Who writes a page about the brakes hardly has a fault of the tyres: the odds of the faults of a
/// system that is spoken of less than another are lowered, never those of another raised, so that words alone make nothing probable.
/// </summary>
public sealed class SystemsNamed
{
    /// <summary>Nothing was named; every factor is 1.</summary>
    public static readonly SystemsNamed None = new(new Dictionary<string, double>());

    /// <summary>What is said more often tells no more.</summary>
    private const double Enough = 8;

    /// <summary>What is said less than this is no mention: one word that names it, or two hints.</summary>
    private const double Least = 0.7;

    /// <summary>Factor on the odds for each mention that a system has less than the one that is named most.</summary>
    private const double ForEachLess = 0.25;

    /// <summary>Further mentions less tell no more.</summary>
    private const double MostLess = 4;

    private readonly Dictionary<string, double> weights;

    private SystemsNamed(Dictionary<string, double> weights)
    {
        this.weights = weights;
        Most = weights.Values.DefaultIfEmpty().Max();
    }

    /// <summary>How much the system that is named most is named.</summary>
    public double Most { get; }

    /// <summary>The systems that are named at least half as much as the one that is named most, that one first.</summary>
    public IReadOnlyList<string> Foremost =>
        [.. weights.Where(w => w.Value >= Least && 2 * w.Value >= Most).OrderByDescending(w => w.Value).ThenBy(w => w.Key, StringComparer.Ordinal).Select(w => w.Key)];

    /// <summary>From the mentions of a text.</summary>
    public static SystemsNamed Of(IEnumerable<SystemMention> mentions) => new(mentions.GroupBy(m => m.System, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => Math.Min(Enough, g.Sum(m => m.Weight)), StringComparer.Ordinal));

    /// <summary>How much a system is named.</summary>
    public double Weight(string system) => weights.GetValueOrDefault(system);

    /// <summary>Factor on the odds of the faults of a system, at most 1.</summary>
    public double Factor(string system) => Math.Pow(ForEachLess, Math.Min(MostLess, Most - Weight(system)));
}
