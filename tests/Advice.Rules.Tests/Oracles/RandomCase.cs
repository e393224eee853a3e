using Advice.Findings;
using Advice.Symptoms;
using Advice.Vehicles;
using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>A case over the words of <see cref="SmallWorld"/>, with what is later suspected and advised.</summary>
internal sealed record RandomCase(Case Case, IReadOnlyDictionary<string, double> Suspected, IReadOnlyList<string> Advised)
{
    private static readonly Gen<Report> Report = Gen.Select(
        SmallWorld.Symptom, SmallWorld.Occasion.List[0, 2], SmallWorld.Sometimes(SmallWorld.Position), Gen.Int[0, 3],
        (symptom, occasions, position, denied) => new Report(symptom, [.. occasions.Distinct().Order(StringComparer.Ordinal)], position, denied > 0));

    private static readonly Gen<Outcome> Outcome = Gen.Select(
        Gen.OneOf(Gen.Const(("k1", (string?)null)), Gen.Const(("k1", (string?)"worn")), Gen.Const(("k1", (string?)"torn")), Gen.Const(("k2", (string?)null)), Gen.Const(("k2", (string?)"beyond-limit"))),
        SmallWorld.Sometimes(SmallWorld.Position),
        (outcome, position) => new Outcome(outcome.Item1, position, outcome.Item2));

    private static readonly Gen<Vehicle> Vehicle = Gen.Select(
        SmallWorld.Sometimes(SmallWorld.OneOf("front", "rear", "all")), SmallWorld.Sometimes(SmallWorld.OneOf("true", "false")), Gen.Int[-5, 20], Gen.Int[-50_000, 200_000],
        (drive, roof, age, km) =>
        {
            var words = new[] { ("drive", drive), ("roof", roof) }.Where(word => word.Item2 is not null).ToDictionary(word => word.Item1, word => word.Item2!);
            var numbers = new[] { ("ageYears", (double)age), ("odometerKm", km) }.Where(number => number.Item2 >= 0).ToDictionary(number => number.Item1, number => number.Item2);
            return new Vehicle(words, numbers);
        });

    private static readonly Gen<Dictionary<string, ServiceDone>> Services = Gen.Select(Gen.Int[0, 2], Gen.Int[0, 10], Gen.Int[0, 100_000], (given, years, km) =>
        given == 0 ? [] : new Dictionary<string, ServiceDone> { ["oil"] = new(given == 1 ? new DateOnly(2026 - years, 1, 1) : null, km) });

    public static Gen<RandomCase> Any { get; } = Gen.Select(
        Gen.Select(Report.List[0, 4], SmallWorld.Code.List[0, 2], Outcome.List[0, 2]), Vehicle, Services,
        Gen.Select(SmallWorld.Fault, Gen.Double[0, 1]).List[0, 3], SmallWorld.OneOf("k1", "k2").List[0, 2],
        (signs, vehicle, services, suspected, advised) => new RandomCase(
            new Case
            {
                AsOf = new DateOnly(2026, 3, 1),
                Vehicle = vehicle,
                Reports = [.. signs.Item1.DistinctBy(report => (report.Symptom, string.Join('+', report.Occasions), report.Position, report.Present))],
                Codes = [.. signs.Item2.Distinct()],
                Outcomes = signs.Item3,
                Services = services,
            },
            suspected.GroupBy(one => one.Item1).ToDictionary(group => group.Key, group => group.Max(one => one.Item2)),
            [.. advised.Distinct()]));
}
