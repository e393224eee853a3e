using System.Text.RegularExpressions;
using Advice.Rules.RuleSets;
using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>Rule sets made at random, as an author would write them.</summary>
internal static partial class RandomRules
{
    /// <summary>Signs that may imply the later ones, so that nothing implies itself.</summary>
    private static readonly string[] Ranked = ["P0001", "s1", "s2", "P0002", "s3", "s4"];

    private static readonly Gen<string> Faults = SmallWorld.Fault.List[1, 2].Select(faults => string.Join(", ", faults.Distinct()));

    private static readonly Gen<string> Sign = Gen.Frequency((4, RandomConditions.Symptom), (1, SmallWorld.Code.Select(id => $"code: {id}")));

    private static readonly Gen<string> Shows = Gen.Select(
        SmallWorld.Fault, Sign, Gen.OneOf("rarely", "sometimes", "often", "usually", "nearly always"), RandomConditions.PerhapsVehicle,
        (fault, sign, often, vehicle) => $"fault: {fault}, {sign}, often: {often}, because: Why., source: judgement{vehicle}");

    private static readonly Gen<string> Prone = Gen.Select(
        Faults,
        Gen.OneOf(RandomConditions.Vehicle, RandomConditions.Service, Gen.Select(RandomConditions.Vehicle, RandomConditions.Service, (vehicle, service) => $"{vehicle}, {service}")),
        Gen.OneOf("0.5", "2", "5"),
        (faults, condition, odds) => $"faults: [{faults}], {condition}, odds: {odds}, because: Why., source: judgement");

    private static readonly Gen<string> Fits = Gen.Select(Faults, RandomConditions.Vehicle, Gen.Bool, (faults, vehicle, check) =>
        $"faults: [{faults}], {(check ? "checks: [k1], " : "")}{vehicle}, onlyIf: it is so, because: Why.");

    private static readonly Gen<string> Implies = Gen.Int[0, Ranked.Length - 2].SelectMany(from => Gen.Select(
        Gen.Int[from + 1, Ranked.Length - 1], RandomConditions.Beside(Ranked[from]), RandomConditions.PerhapsVehicle,
        (to, beside, vehicle) =>
            $"{(Ranked[from].StartsWith('P') ? $"code: {Ranked[from]}" : $"symptom: {Ranked[from]}{beside}")}, implies: {Ranked[to]}, because: Why.{vehicle}"));

    private static readonly Gen<string> Both = Gen.Select(SmallWorld.Symptom, SmallWorld.Symptom).Where(both => both.Item1 != both.Item2)
        .SelectMany(both => RandomConditions.Beside(both.Item1, both.Item2).Select(beside => $"symptoms: [{both.Item1}, {both.Item2}]{beside}"));

    private static readonly Gen<string> Trigger = Gen.OneOf(
        RandomConditions.Symptom, Both,
        Gen.Select(SmallWorld.Fault, Gen.OneOf("0.1", "0.5"), (fault, least) => $"fault: {fault}, probability: {least}"));

    private static readonly Gen<string> Warns = Gen.Select(
        Gen.Frequency((2, Trigger), (1, Gen.OneOf("check: k1", "checks: [k2]", "checks: [k1, k2]"))), Gen.OneOf("c1", "c2"), RandomConditions.PerhapsVehicle,
        (trigger, caution, vehicle) => $"{trigger}, caution: {caution}, because: Why.{vehicle}");

    private static readonly Gen<string> Driving = Gen.Select(
        Trigger, Gen.OneOf("normal", "soon", "workshopOnly", "stop"), RandomConditions.PerhapsVehicle,
        (trigger, advice, vehicle) => $"{trigger}, advice: {advice}, because: Why.{vehicle}");

    private static readonly Gen<string> Normal = Gen.Select(RandomConditions.Symptom, RandomConditions.PerhapsVehicle, Gen.OneOf("0.3", "0.9"), (symptom, vehicle, share) =>
        $"{symptom}, share: {share}, text: It is normal., source: judgement{vehicle}");

    /// <summary>The loader wants every fault to be shown by something.</summary>
    private static readonly string[] ShownAtLeast =
        [.. Enumerable.Range(1, 5).Select(fault => $"fault: f{fault}, symptom: s4, occasions: [turning], without: [s1, s2, s3], often: rarely, because: Why., source: judgement")];

    public static Gen<RuleBook> Any { get; } = Gen.Select(
        Gen.Select(Shows.List[3, 12], Prone.List[0, 5], Fits.List[0, 2], Implies.List[0, 4]), Gen.Select(Warns.List[0, 4], Driving.List[0, 4], Normal.List[0, 3]),
        (first, second) => Load(
        [
            .. Of("shows", [.. ShownAtLeast, .. first.Item1]), .. Of("prone", first.Item2), .. Of("fits", first.Item3), .. Of("implies", first.Item4),
            .. Of("warns", second.Item1), .. Of("driving", second.Item2), .. Of("normal", second.Item3),
        ]));

    private static IEnumerable<(string Kind, string Rule)> Of(string kind, IEnumerable<string> rules) =>
        rules.DistinctBy(rule => HowOften().Replace(rule, "")).Select(rule => (kind, rule));

    /// <summary>Rules made at random contradict each other at times, which the loader refuses: those that it names are dropped.</summary>
    private static RuleBook Load(List<(string Kind, string Rule)> rules)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            for (; ; )
            {
                var (lines, atLine) = Lines(rules);
                File.WriteAllLines(Path.Combine(folder.FullName, "all.yaml"), lines);
                try
                {
                    return RuleSetLoader.Load(folder.FullName);
                }
                catch (RuleSetException broken) when (broken.Errors.All(error => Contradiction().IsMatch(error.Message)))
                {
                    // Where fits rules leave no vehicle, the loader names the fault or the check itself.
                    if (broken.Errors.All(error => atLine.ContainsKey(error.Line)))
                        rules.RemoveAll(rule => broken.Errors.Any(error => atLine[error.Line] == rule));
                    else
                        rules.RemoveAt(rules.FindLastIndex(rule => rule.Kind == "fits"));
                }
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (List<string> Lines, Dictionary<int, (string Kind, string Rule)> AtLine) Lines(List<(string Kind, string Rule)> rules)
    {
        var lines = SmallWorld.Vocabulary.Split('\n').ToList();
        var atLine = new Dictionary<int, (string Kind, string Rule)>();
        foreach (var kind in rules.GroupBy(rule => rule.Kind))
        {
            lines.Add($"{kind.Key}:");
            foreach (var rule in kind)
            {
                lines.Add($"  - {{id: {rule.Kind}-{lines.Count}, {rule.Rule}}}");
                atLine.Add(lines.Count, rule);
            }
        }

        return (lines, atLine);
    }

    [GeneratedRegex("no vehicle|never applies|keep one|nothing shows")]
    private static partial Regex Contradiction();

    /// <summary>Two rules that differ in this alone say the same, which the loader refuses.</summary>
    [GeneratedRegex("often: [a-z ]+, ")]
    private static partial Regex HowOften();
}
