using System.Text;
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

    public static Gen<RuleBook> Any { get; } = Gen.Select(
        Gen.Select(Shows.List[3, 12], Prone.List[0, 5], Fits.List[0, 2], Implies.List[0, 4]), Gen.Select(Warns.List[0, 4], Driving.List[0, 4], Normal.List[0, 3]),
        (first, second) => Load(("shows", first.Item1), ("prone", first.Item2), ("fits", first.Item3), ("implies", first.Item4), ("warns", second.Item1), ("driving", second.Item2), ("normal", second.Item3)))
        .Where(rules => rules is not null).Select(rules => rules!);

    private static RuleBook? Load(params (string Kind, List<string> Rules)[] kinds)
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
        catch (RuleSetException broken) when (broken.Errors.All(error => Contradiction().IsMatch(error.ToString())))
        {
            return null;
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
            text.Append($"  - {{id: base-{fault}, fault: f{fault}, symptom: s4, occasions: [turning], often: rarely, because: Why., source: judgement, vehicle: {{ageYears: {{atLeast: 19}}}}}}\n");
    }

    /// <summary>What single rules made at random cannot avoid: that they contradict each other, which the loader refuses.</summary>
    [GeneratedRegex("no vehicle|never applies|keep one")]
    private static partial Regex Contradiction();

    /// <summary>Two rules that differ in this alone say the same, which the loader refuses.</summary>
    [GeneratedRegex("often: [a-z ]+, ")]
    private static partial Regex HowOften();
}
