using Advice.Knowledge;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Bench.Sensitivity;

/// <summary>One way in which the estimates of a rule set could be other than they are.</summary>
/// <param name="Name">What varies, in words.</param>
/// <param name="Often">The frequency of a link.</param>
/// <param name="Prior">The base rate of a fault.</param>
public sealed record Variation(string Name, Func<ShowsRule, double> Often, Func<Fault, double> Prior)
{
    private const double LargestPrior = 0.5;
    private const double SmallestPrior = 1e-5;

    private static readonly (string Word, double Share)[] Words =
        [("rarely", 0.05), ("sometimes", 0.2), ("often", 0.5), ("usually", 0.8), ("nearly always", 0.95)];

    /// <summary>Each word by one notch up and down in all its links, the others left alone; all base rates of one consequence doubled and halved.</summary>
    public static IEnumerable<Variation> OneAtATime(Catalogue catalogue)
    {
        foreach (var (word, share) in Words)
        {
            foreach (var notch in new[] { 1, -1 }.Where(notch => Moved(share, notch) != share))
                yield return new($"all '{word}' one notch {(notch > 0 ? "up" : "down")}", rule => rule.Often == share ? Moved(share, notch) : rule.Often, fault => fault.Prior);
        }

        foreach (var consequence in catalogue.Faults.Values.Select(fault => fault.Consequence.Id).Distinct().Order(StringComparer.Ordinal))
        {
            foreach (var factor in new[] { 2, 0.5 })
            {
                yield return new(
                    FormattableString.Invariant($"base rates of '{consequence}' × {factor}"), rule => rule.Often,
                    fault => fault.Consequence.Id == consequence ? Scaled(fault.Prior, factor) : fault.Prior);
            }
        }
    }

    /// <summary>Every link moves down, stays or moves up by a notch and every base rate is halved, kept or doubled, each by itself and with
    /// equal chance.</summary>
    /// <param name="catalogue">The rule set.</param>
    /// <param name="seed">Fixes what is drawn.</param>
    public static Variation AtRandom(Catalogue catalogue, int seed)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var draws = new Random(seed);
        var often = catalogue.Rules.Values.OfType<ShowsRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal)
            .ToDictionary(rule => rule.Id, rule => Moved(rule.Often, draws.Next(-1, 2)));
        var priors = catalogue.Faults.Values.OrderBy(fault => fault.Id, StringComparer.Ordinal)
            .ToDictionary(fault => fault.Id, fault => Scaled(fault.Prior, Math.Pow(2, draws.Next(-1, 2))));
        return new($"all at random, draw {seed}", rule => often[rule.Id], fault => priors[fault.Id]);
    }

    /// <summary>One rule or fault alone; none where the id names neither a link nor a fault.</summary>
    public static IEnumerable<Variation> Of(string id, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        if (catalogue.Rules.GetValueOrDefault(id) is ShowsRule link)
        {
            foreach (var notch in new[] { 1, -1 }.Where(notch => Moved(link.Often, notch) != link.Often))
            {
                var moved = Moved(link.Often, notch);
                yield return new($"{Wording.Often(link.Often)} → {Wording.Often(moved)}", rule => rule.Id == id ? moved : rule.Often, fault => fault.Prior);
            }
        }

        if (catalogue.Faults.GetValueOrDefault(id) is { } own)
        {
            foreach (var prior in new[] { Scaled(own.Prior, 2), Scaled(own.Prior, 0.5) })
                yield return new(FormattableString.Invariant($"base rate {own.Prior} → {prior}"), rule => rule.Often, fault => fault.Id == id ? prior : fault.Prior);
        }
    }

    private static double Moved(double share, int notches)
    {
        var at = Array.FindIndex(Words, word => word.Share == share);
        return at < 0 ? share : Words[Math.Clamp(at + notches, 0, Words.Length - 1)].Share;
    }

    private static double Scaled(double prior, double factor) => Math.Clamp(prior * factor, SmallestPrior, LargestPrior);
}
