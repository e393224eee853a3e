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
        Gen.OneOf<(string Check, string? Value)>(("k1", null), ("k1", "worn"), ("k1", "torn"), ("k2", null), ("k2", "beyond-limit")),
        SmallWorld.Sometimes(SmallWorld.Position),
        (outcome, position) => new Outcome(outcome.Check, position, outcome.Value));

    /// <summary>Numbers that often meet the bounds of <see cref="RandomConditions"/> exactly.</summary>
    private static readonly Gen<Vehicle> Vehicle = Gen.Select(
        SmallWorld.Sometimes(Gen.OneOf("front", "rear", "all")), SmallWorld.Sometimes(Gen.OneOf("true", "false")), Gen.Int[-5, 20], Gen.Int[-3, 12],
        (drive, roof, age, km) =>
        {
            var words = new[] { ("drive", drive), ("roof", roof) }.Where(word => word.Item2 is not null).ToDictionary(word => word.Item1, word => word.Item2!);
            var numbers = new[] { ("ageYears", (double)age), ("odometerKm", km * 20_000) }.Where(number => number.Item2 >= 0).ToDictionary(number => number.Item1, number => number.Item2);
            return new Vehicle(words, numbers);
        });

    private static readonly Gen<ServiceDone> Service = Gen.Select(Gen.Int[-2, 8], Gen.Int[-2, 8], (years, km) =>
        new ServiceDone(years < 0 ? null : new DateOnly(2026 - years, 3, 1), km < 0 ? null : km * 20_000));

    private static readonly Gen<Dictionary<string, ServiceDone>> Services = Gen.Select(Gen.OneOf("oil", "fluid"), Service).List[0, 2]
        .Select(done => done.DistinctBy(one => one.Item1).ToDictionary(one => one.Item1, one => one.Item2));

    public static Gen<RandomCase> Any { get; } = Gen.Select(
        Gen.Select(Report.List[0, 4], SmallWorld.Code.List[0, 2], Outcome.List[0, 2]), Vehicle, Services,
        Gen.Select(SmallWorld.Fault, Gen.OneOf(Gen.OneOf(0.1, 0.5), Gen.Double[0, 1])).List[0, 3], Gen.OneOf("k1", "k2").List[0, 2],
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

    /// <summary>The same case with its signs named in another order.</summary>
    public RandomCase Reversed() => this with
    {
        Case = Case with { Reports = [.. Case.Reports.Reverse()], Codes = [.. Case.Codes.Reverse()], Outcomes = [.. Case.Outcomes.Reverse()] },
        Suspected = Suspected.Reverse().ToDictionary(),
        Advised = [.. Advised.Reverse()],
    };
}
