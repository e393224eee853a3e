using System.Text;
using System.Text.RegularExpressions;
using Advice.Rules.RuleSets;
using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>Rule sets made at random, as an author would write them.</summary>
internal static partial class RandomRules
{
    private static readonly Gen<string> Vehicle = Gen.Frequency(
        (4, Gen.Const("")),
        (1, SmallWorld.OneOf("drive: [front]", "drive: [rear, all]", "roof: true", "ageYears: {atLeast: 8}", "odometerKm: {below: 90000}", "drive: [front, rear], roof: false")
            .Select(tests => $", vehicle: {{{tests}}}")));

    private static readonly Gen<string> Occasions = Gen.Frequency((2, Gen.Const("")), (1, SmallWorld.Occasion.Select(id => $", occasions: [{id}]")));

    /// <summary>A sign with what may stand beside it. A rule must not exclude its own symptom.</summary>
    private static readonly Gen<string> Symptom = Gen.Select(SmallWorld.Symptom, Occasions, SmallWorld.Sometimes(SmallWorld.Symptom), (id, occasions, without) =>
        $"symptom: {id}{occasions}{(without is null || without == id ? "" : $", without: [{without}]")}");

    private static readonly Gen<string> Sign = Gen.Frequency((4, Symptom), (1, SmallWorld.Code.Select(id => $"code: {id}")));

    private static readonly Gen<string> Shows = Gen.Select(SmallWorld.Fault, Sign, SmallWorld.OneOf("rarely", "sometimes", "often", "usually"), Vehicle,
        (fault, sign, often, vehicle) => $"fault: {fault}, {sign}, often: {often}, because: Why., source: judgement{vehicle}");

    private static readonly Gen<string> Prone = Gen.Select(
        SmallWorld.Fault, SmallWorld.OneOf("vehicle: {drive: [rear]}", "vehicle: {ageYears: {atLeast: 6}}", "service: {item: oil, olderThanYears: 3}",
            "service: {item: oil, withinKm: 20000}", "vehicle: {roof: true}, service: {item: oil, olderThanKm: 50000}"),
        (fault, condition) => $"faults: [{fault}], {condition}, odds: 2, because: Why., source: judgement");

    private static readonly Gen<string> Fits = Gen.Select(SmallWorld.Fault, SmallWorld.OneOf("drive: [rear, all]", "roof: true", "ageYears: {below: 10}"),
        (fault, tests) => $"faults: [{fault}], vehicle: {{{tests}}}, onlyIf: it is so, because: Why.");

    /// <summary>Only from a lower to a higher sign, so that nothing implies itself.</summary>
    private static readonly Gen<string> Implies = Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3], Occasions, Gen.Int[0, 4], Vehicle, (from, further, occasions, kind, vehicle) =>
        $"{(kind == 0 ? "code: P0001" : $"symptom: s{from}{occasions}")}, implies: s{Math.Min(4, from + further)}, because: Why.{vehicle}");

    private static readonly Gen<string> Trigger = Gen.OneOf(
        Symptom, Gen.Select(SmallWorld.Symptom, SmallWorld.Symptom, Occasions, (a, b, occasions) => a == b ? $"symptom: {a}" : $"symptoms: [{a}, {b}]{occasions}"),
        Gen.Select(SmallWorld.Fault, SmallWorld.OneOf("0.1", "0.5"), (fault, least) => $"fault: {fault}, probability: {least}"));

    private static readonly Gen<string> Warns = Gen.Select(
        Gen.OneOf(Trigger, SmallWorld.OneOf("checks: [k1]", "checks: [k1, k2]")), SmallWorld.OneOf("c1", "c2"), Vehicle,
        (trigger, caution, vehicle) => $"{trigger}, caution: {caution}, because: Why.{vehicle}");

    private static readonly Gen<string> Driving = Gen.Select(Trigger, SmallWorld.OneOf("soon", "stop"), Vehicle,
        (trigger, advice, vehicle) => $"{trigger}, advice: {advice}, because: Why.{vehicle}");

    private static readonly Gen<string> Normal = Gen.Select(Symptom, Vehicle, (symptom, vehicle) => $"{symptom}, share: 0.5, text: It is normal., source: judgement{vehicle}");

    public static Gen<RuleBook> Any { get; } = Gen.Select(
        Gen.Select(Shows.List[3, 12], Prone.List[0, 5], Fits.List[0, 2], Implies.List[0, 4]), Gen.Select(Warns.List[0, 4], Driving.List[0, 4], Normal.List[0, 3]),
        (first, second) => Load(("shows", first.Item1), ("prone", first.Item2), ("fits", first.Item3), ("implies", first.Item4), ("warns", second.Item1), ("driving", second.Item2), ("normal", second.Item3)));

    private static RuleBook Load(params (string Kind, List<string> Rules)[] kinds)
    {
        var text = new StringBuilder(SmallWorld.Vocabulary).Append('\n');
        foreach (var (kind, rules) in kinds.Where(kind => kind.Rules.Count > 0))
        {
            text.Append(kind).Append(":\n");
            if (kind == "shows")
                AppendOneForEachFault(text);
            foreach (var (i, rule) in rules.DistinctBy(rule => HowOften().Replace(rule, "")).Index())
                text.Append("  - {id: ").Append(kind).Append('-').Append(i).Append(", ").Append(rule).Append("}\n");
        }

        var folder = Directory.CreateTempSubdirectory("rules-");
        File.WriteAllText(Path.Combine(folder.FullName, "all.yaml"), text.ToString());
        try
        {
            return RuleSetLoader.Load(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The loader wants every fault to be shown by something.</summary>
    private static void AppendOneForEachFault(StringBuilder text)
    {
        for (var fault = 1; fault <= 5; fault++)
            text.Append($"  - {{id: base-{fault}, fault: f{fault}, symptom: s4, occasions: [turning], often: nearly always, because: Why., source: judgement, vehicle: {{ageYears: {{atLeast: 1}}}}}}\n");
    }

    /// <summary>Two rules that differ in this alone say the same, which the loader refuses.</summary>
    [GeneratedRegex("often: [a-z]+, ")]
    private static partial Regex HowOften();
}
