using System.Collections.Frozen;
using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Probability of a sign without any listed fault.</summary>
internal static class Leaks
{
    /// <summary>Smallest leak: nothing is ever certain proof.</summary>
    public const double Least = 1e-4;

    /// <summary>Largest leak: every sign says something.</summary>
    public const double Most = 0.05;

    /// <summary>The leak of every symptom and code: share/(1 − share) · (1 − Π(1 − p·q)) over the faults at base rates, so that the
    /// stated share of all reports stays unexplained whatever the scale of the base rates.</summary>
    public static FrozenDictionary<Sign, double> Of(
        IEnumerable<Symptom> symptoms, IEnumerable<TroubleCode> codes, IReadOnlyDictionary<string, Fault> faults, ILookup<Sign, ShowsRule> shows)
    {
        var leaks = new Dictionary<Sign, double>();
        foreach (var symptom in symptoms)
            leaks[Sign.Symptom(symptom.Id)] = Leak(symptom.UnexplainedShare, shows[Sign.Symptom(symptom.Id)], faults);
        foreach (var code in codes)
            leaks[Sign.Code(code.Id)] = Leak(TroubleCode.UnexplainedShare, shows[Sign.Code(code.Id)], faults);
        return leaks.ToFrozenDictionary();
    }

    private static double Leak(double share, IEnumerable<ShowsRule> shows, IReadOnlyDictionary<string, Fault> faults)
    {
        var silent = shows.GroupBy(rule => rule.Fault)
            .Aggregate(1.0, (product, rules) => product * (1 - (faults[rules.Key].Prior * rules.Max(rule => rule.Often))));
        return Math.Clamp(share / (1 - share) * (1 - silent), Least, Most);
    }
}
