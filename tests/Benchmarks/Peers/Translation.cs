using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Benchmarks.Peers;

/// <summary>All rules of a set as flat rules.</summary>
internal static class Translation
{
    public static IEnumerable<FlatRule> Of(Catalogue known)
    {
        foreach (var rule in known.Rules.Values.OrderBy(rule => rule.Id, StringComparer.Ordinal))
        {
            switch (rule)
            {
                case ShowsRule shows:
                    yield return new(rule.Id, [
                        Seen("seen", shows.Sign, shows.Occasions, known), .. Without(shows.Without), .. NotRuledOut(shows.When), .. Exists(shows.Fault, known)]);
                    break;
                case ImpliesRule implies:
                    yield return new(rule.Id, [Seen("there", implies.Sign, implies.Occasions, known), .. Without(implies.Without), .. Likely(implies.When)]);
                    break;
                case NormalRule normal:
                    yield return new(rule.Id, [
                        Seen("told", Sign.Symptom(normal.Symptom), normal.Occasions, known), .. Without(normal.Without), .. Likely(normal.When)]);
                    break;
                case ProneRule prone:
                    foreach (var fault in prone.Faults)
                        yield return new($"{rule.Id}:{fault}", [[new("in", "linked", [fault])], .. Met(prone.When), .. Served(prone.Service)]);
                    break;
                case WarnsRule warns:
                    yield return new(rule.Id, [
                        .. Triggers(warns.Symptoms, warns.Occasions, warns.Fault, warns.Probability, known), .. Without(warns.Without), .. Likely(warns.When),
                        .. warns.Checks.Count > 0 ? [[new Literal("in", "advised", warns.Checks)]] : Array.Empty<Literal[]>()]);
                    break;
                case DrivingRule driving:
                    yield return new(rule.Id, [
                        .. Triggers(driving.Symptoms, driving.Occasions, driving.Fault, driving.Probability, known), .. Without(driving.Without), .. Likely(driving.When)]);
                    break;
            }
        }

        foreach (var check in known.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal))
        {
            foreach (var (value, fault) in check.Abnormal.SelectMany(one => check.Detects
                .Where(detects => detects.Value is null || detects.Value == one.Id).Select(detects => (one.Id, detects.Fault))).Distinct())
                yield return new($"{check.Id}={value}:{fault}", [Seen("seen", Sign.Outcome(check.Id, value), [], known), .. Exists(fault, known)]);
        }
    }

    /// <summary>Without occasions the sign alone; else one of them, or that none was stated, unless the rule asks for events alone.</summary>
    private static Literal[] Seen(string set, Sign sign, IReadOnlyList<string> occasions, Catalogue known)
    {
        var stated = occasions.Select(one => $"{sign}@{one}");
        return [new("in", set, occasions.Count == 0 ? [$"{sign}"] : occasions.All(one => known.Occasions[one].IsEvent) ? [.. stated] : [$"{sign}@", .. stated])];
    }

    private static IEnumerable<Literal[]> Triggers(IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions, string? fault, double probability, Catalogue known)
    {
        foreach (var (i, symptom) in symptoms.Index())
            yield return Seen("there", Sign.Symptom(symptom), i == 0 ? occasions : [], known);
        if (fault is not null)
            yield return [new("atLeast", $"suspected:{fault}", [], probability)];
    }

    private static IEnumerable<Literal[]> Without(IReadOnlyList<string> symptoms) =>
        symptoms.Count == 0 ? [] : [[new("notIn", "told", [.. symptoms.Select(one => $"{Sign.Symptom(one)}")])]];

    private static IEnumerable<Literal[]> Exists(string fault, Catalogue known) => known.FitsByFault[fault].SelectMany(fits => NotRuledOut(fits.When));

    private static IEnumerable<Literal[]> NotRuledOut(VehicleCondition when) => when.Tests.SelectMany(test => Passes(test, unknownToo: true));

    private static IEnumerable<Literal[]> Met(VehicleCondition when) => when.Tests.SelectMany(test => Passes(test, unknownToo: false));

    /// <summary>No test fails, and what is unknown leaves a share of at least one half: of each set of tests that would leave less, one is known.</summary>
    private static IEnumerable<Literal[]> Likely(VehicleCondition when)
    {
        foreach (var clause in NotRuledOut(when))
            yield return clause;
        for (var set = 1; set < 1 << when.Tests.Count; set++)
        {
            var unknown = when.Tests.Where((_, i) => (set & (1 << i)) != 0).ToList();
            if (unknown.Aggregate(1.0, (share, test) => share * test.Share) < 0.5)
                yield return [.. unknown.Select(Known)];
        }
    }

    private static Literal Known(FactTest test) => test.Fact.Kind == FactKind.Number
        ? new("atLeast", test.Fact.Id, [], FlatRequest.LeastKnown) : new("notIn", $"unknown", [test.Fact.Id]);

    private static IEnumerable<Literal[]> Passes(FactTest test, bool unknownToo)
    {
        if (test.Fact.Kind != FactKind.Number)
        {
            yield return [new("word", test.Fact.Id, unknownToo ? [.. test.Words, "?"] : test.Words)];
            yield break;
        }

        Literal[] unknown = unknownToo ? [new("below", test.Fact.Id, [], FlatRequest.LeastKnown)] : [];
        if (test.AtLeast is { } least)
            yield return [new("atLeast", test.Fact.Id, [], least), .. unknown];
        if (test.Below is { } below)
            yield return [new("below", test.Fact.Id, [], below)];
        if (test.Below is not null && !unknownToo)
            yield return [new("atLeast", test.Fact.Id, [], FlatRequest.LeastKnown)];
    }

    private static IEnumerable<Literal[]> Served(ServiceTest? test)
    {
        if (test is null)
            yield break;
        var (years, km) = ($"years:{test.Item}", $"km:{test.Item}");
        Literal[] old =
        [
            .. test.OlderThanYears is { } olderYears ? [new Literal("above", years, [], olderYears)] : Array.Empty<Literal>(),
            .. test.OlderThanKm is { } olderKm ? [new Literal("above", km, [], olderKm)] : Array.Empty<Literal>(),
        ];
        if (old.Length > 0)
            yield return old;
        if (test.WithinYears is { } withinYears)
            yield return [new("atMost", years, [], withinYears)];
        if (test.WithinKm is { } withinKm)
            yield return [new("atMost", km, [], withinKm)];
    }
}
