using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>Conditions of rules made at random, as an author would write them.</summary>
internal static class RandomConditions
{
    private static readonly Gen<string> Test = Gen.Frequency(
        (3, Gen.OneOf("drive: [front]", "drive: [rear]", "drive: [all]", "drive: [front, rear]", "drive: [rear, all]")),
        (2, Gen.OneOf("roof: true", "roof: false")),
        (2, Range("ageYears", 0, 10, 1)),
        (2, Range("odometerKm", 0, 10, 20_000)));

    /// <summary>One test or two on different facts.</summary>
    public static Gen<string> Vehicle { get; } = Test.List[1, 2].Select(tests => $"vehicle: {{{string.Join(", ", tests.DistinctBy(Name))}}}");

    /// <summary>A condition on the vehicle with the comma before it; none for most rules.</summary>
    public static Gen<string> PerhapsVehicle { get; } = Gen.Frequency((3, Gen.Const("")), (1, Vehicle.Select(vehicle => $", {vehicle}")));

    public static Gen<string> Service { get; } = Gen.Select(
        Gen.OneOf("oil", "fluid"),
        Gen.Select(Gen.OneOf("olderThanYears", "withinYears"), Gen.Int[0, 6]).Select(years => $"{years.Item1}: {years.Item2}"),
        Gen.Select(Gen.OneOf("olderThanKm", "withinKm"), Gen.Int[0, 6]).Select(km => $"{km.Item1}: {km.Item2 * 20_000}"),
        Gen.Int[0, 3],
        (item, years, km, both) => $"service: {{item: {item}, {(both == 0 ? $"{years}, {km}" : both == 1 ? km : years)}}}");

    /// <summary>A symptom with what may stand beside it. A rule must not exclude a symptom that it asks for.</summary>
    public static Gen<string> Symptom { get; } = SmallWorld.Symptom.SelectMany(id => Beside(id).Select(beside => $"symptom: {id}{beside}"));

    /// <summary>Occasions and exceptions.</summary>
    public static Gen<string> Beside(params string[] own) => Gen.Select(
        SmallWorld.Occasion.List[0, 2], Gen.Int[0, 2], SmallWorld.Symptom.List[0, 2], Gen.Int[0, 1],
        (occasions, some, without, others) =>
            $"{Listed("occasions", some == 0 ? [] : occasions)}{Listed("without", others == 0 ? [] : without.Where(symptom => !own.Contains(symptom)))}");

    private static string Listed(string member, IEnumerable<string> ids)
    {
        var distinct = ids.Distinct().Order(StringComparer.Ordinal).ToList();
        return distinct.Count == 0 ? "" : $", {member}: [{string.Join(", ", distinct)}]";
    }

    private static Gen<string> Range(string fact, int least, int most, int unit) => Gen.Select(
        Gen.Int[least, most], Gen.Int[1, most], Gen.Int[0, 2],
        (from, width, kind) => kind switch
        {
            0 => $"{fact}: {{atLeast: {from * unit}}}",
            1 => $"{fact}: {{below: {(from + 1) * unit}}}",
            _ => $"{fact}: {{atLeast: {from * unit}, below: {(from + width) * unit}}}",
        });

    private static string Name(string test) => test[..test.IndexOf(':', StringComparison.Ordinal)];
}
