using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench.Conditions;

/// <summary>A rule as the conjunction of its conditions.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Kind">Its kind, as rule files name it.</param>
/// <param name="Conditions">Its conditions.</param>
/// <param name="Least">The least probability of all conditions together at which it fires.</param>
internal sealed record ConditionalRule(Rule Rule, string Kind, IReadOnlyList<RuleCondition> Conditions, double Least)
{
    private const double Possible = double.Epsilon;
    private const double Likely = 0.5;
    private const double Certain = 1;

    private static readonly List<string> Kinds = ["shows", "prone", "fits", "implies", "warns", "driving", "normal"];

    /// <summary>All rules of a set, by kind in the order of the rule format, then id.</summary>
    public static IEnumerable<ConditionalRule> All(Catalogue catalogue) => catalogue.Rules.Values.Select(rule => Of(rule, catalogue))
        .OrderBy(rule => Kinds.IndexOf(rule.Kind)).ThenBy(rule => rule.Rule.Id, StringComparer.Ordinal);

    /// <summary>The rule in its conditions.</summary>
    public static ConditionalRule Of(Rule rule, Catalogue catalogue) => rule switch
    {
        ShowsRule shows => new(rule, "shows", [.. Sign(shows.Sign, shows.Occasions), .. Without(shows.Without), .. Vehicle(rule), .. Exists(shows, catalogue)], Possible),
        ProneRule prone => new(rule, "prone", [new("fault", sight => Standing.Of(prone.Faults.Any(sight.Links))), .. Service(prone.Service), .. Vehicle(rule)], Certain),
        FitsRule fits => new(rule, "fits", [new("in play", sight => Standing.Of(IsInPlay(fits, sight, catalogue)), Own: false), .. Vehicle(rule)], Possible),
        ImpliesRule implies => new(rule, "implies", [.. Sign(implies.Sign, implies.Occasions), .. Without(implies.Without), .. Vehicle(rule)], Likely),
        WarnsRule warns => new(
            rule, "warns",
            [.. Symptoms(warns.Symptoms, warns.Occasions), .. Suspected(warns.Fault, warns.Probability), .. Advised(warns.Checks), .. Without(warns.Without), .. Vehicle(rule)], Likely),
        DrivingRule driving => new(
            rule, "driving",
            [.. Symptoms(driving.Symptoms, driving.Occasions), .. Suspected(driving.Fault, driving.Probability), .. Without(driving.Without), .. Vehicle(rule)], Likely),
        NormalRule normal => new(rule, "normal", [.. Reported(normal), .. Without(normal.Without), .. Vehicle(rule)], Likely),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule.GetType().Name, null),
    };

    private static IEnumerable<RuleCondition> Sign(Sign sign, IReadOnlyList<string> occasions)
    {
        yield return new($"{(sign.Kind == SignKind.Code ? "code" : "symptom")} {sign.Id}", sight => Standing.Of(sight.Sees(sign)));
        if (occasions.Count > 0)
            yield return new(Occasions(occasions), sight => sight.On(sign, occasions));
    }

    private static IEnumerable<RuleCondition> Reported(NormalRule normal)
    {
        var sign = Knowledge.Signs.Sign.Symptom(normal.Symptom);
        yield return new($"symptom {normal.Symptom}", sight => Standing.Of(sight.Reports(normal.Symptom)));
        if (normal.Occasions.Count > 0)
            yield return new(Occasions(normal.Occasions), sight => sight.On(sign, normal.Occasions, reported: true));
    }

    private static IEnumerable<RuleCondition> Symptoms(IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions) =>
        symptoms.SelectMany((symptom, i) => Sign(Knowledge.Signs.Sign.Symptom(symptom), i == 0 ? occasions : []));

    private static IEnumerable<RuleCondition> Without(IReadOnlyList<string> symptoms) =>
        symptoms.Select(symptom => new RuleCondition($"without {symptom}", sight => Standing.Of(!sight.Reports(symptom))));

    private static IEnumerable<RuleCondition> Suspected(string? fault, double probability)
    {
        if (fault is not null)
            yield return new($"fault {fault} from {Wording.Number(probability)}", sight => Standing.Of(sight.Suspects(fault, probability)));
    }

    private static IEnumerable<RuleCondition> Advised(IReadOnlyList<string> checks)
    {
        if (checks.Count > 0)
            yield return new("check", sight => Standing.Of(checks.Any(sight.Advises)));
    }

    private static IEnumerable<RuleCondition> Service(ServiceTest? test)
    {
        if (test is not null)
            yield return new($"service {test.Item}", sight => Of(Proneness.Served(test, sight.Case), 0.5));
    }

    private static IEnumerable<RuleCondition> Vehicle(Rule rule) =>
        rule.When.Tests.Select(test => new RuleCondition($"vehicle {test.Fact.Id}", sight => Of(test.Test(sight.Case.Vehicle), test.Share)));

    private static IEnumerable<RuleCondition> Exists(ShowsRule shows, Catalogue catalogue) => catalogue.FitsByFault[shows.Fault]
        .Select(fits => new RuleCondition(fits.Id, sight => Standing.Of(fits.When.Test(sight.Case.Vehicle) != Truth.No), Own: false));

    private static bool IsInPlay(FitsRule fits, CaseSight sight, Catalogue catalogue) =>
        fits.Services.Count > 0 || fits.Faults.Any(sight.SpeaksFor) || fits.Checks.Any(check => catalogue.Checks[check].Detects.Any(detects => sight.SpeaksFor(detects.Fault)));

    private static Standing Of(Truth truth, double share) => truth switch
    {
        Truth.Yes => Standing.Holds,
        Truth.No => Standing.Fails,
        _ => new Standing(Truth.Unknown, share),
    };

    private static string Occasions(IReadOnlyList<string> occasions) => $"occasions {string.Join(", ", occasions)}";
}
