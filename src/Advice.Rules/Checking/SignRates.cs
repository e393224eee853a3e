using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Checking;

/// <summary>How often signs are seen at base rates.</summary>
internal static class SignRates
{
    /// <summary>Smallest leak: nothing is ever certain proof.</summary>
    public const double LeastLeak = 1e-4;

    /// <summary>Largest leak: every sign says something.</summary>
    public const double MostLeak = 0.05;

    /// <summary>Share of vehicles in which listed faults show the sign, 1 − Π(1 − p·q), by symptom and code.</summary>
    public static FrozenDictionary<Sign, double> Shown(
        IEnumerable<Symptom> symptoms, IEnumerable<TroubleCode> codes, IReadOnlyDictionary<string, Fault> faults, ILookup<Sign, ShowsRule> shows) =>
        symptoms.Select(symptom => Sign.Symptom(symptom.Id)).Concat(codes.Select(code => Sign.Code(code.Id)))
            .ToFrozenDictionary(sign => sign, sign => Shown(shows[sign], faults));

    /// <summary>The leak of every symptom and code: share/(1 − share) of what listed faults show, so that the stated share of all
    /// reports stays unexplained whatever the scale of the base rates.</summary>
    public static FrozenDictionary<Sign, double> Leaks(IReadOnlyDictionary<Sign, double> shown, Func<Sign, double> unexplainedShare) =>
        shown.ToFrozenDictionary(
            one => one.Key,
            one => Math.Clamp(unexplainedShare(one.Key) / (1 - unexplainedShare(one.Key)) * one.Value, LeastLeak, MostLeak));

    private static double Shown(IEnumerable<ShowsRule> shows, IReadOnlyDictionary<string, Fault> faults) =>
        1 - shows.GroupBy(rule => rule.Fault)
            .Aggregate(1.0, (silent, rules) => silent * (1 - (faults[rules.Key].Prior * rules.Max(rule => rule.Often))));
}
