using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Symptoms;
using Advice.Vehicles;
using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>Cases at random over the words of the repository's rules.</summary>
internal static class RepositoryCase
{
    private static readonly Catalogue Known = RepositoryRules.Book.Catalogue;

    private static readonly Gen<Report> Report = Gen.Select(
        One(Known.Symptoms.Keys), One(Known.Occasions.Keys).List[0, 2], SmallWorld.Sometimes(One(Known.Positions.Keys)), Gen.Int[0, 3],
        (symptom, occasions, position, denied) => new Report(symptom, [.. occasions.Distinct().Order(StringComparer.Ordinal)], position, denied > 0));

    private static readonly Gen<Outcome> Outcome = Gen.Select(One(Known.Checks.Keys), Gen.Int[0, 5], SmallWorld.Sometimes(One(Known.Positions.Keys)), (id, value, position) =>
        new Outcome(id, position, Known.Checks[id].Abnormal.Select(one => one.Id).Append(null).ElementAtOrDefault(value)));

    private static readonly VehicleFact[] Facts = [.. Known.Facts.Values.OrderBy(fact => fact.Id, StringComparer.Ordinal)];

    /// <summary>Half of the facts are not known.</summary>
    private static readonly Gen<Vehicle> Vehicle = Gen.Double[-1, 1].Array[Facts.Length].Select(values => Describe(Facts.Zip(values).Where(fact => fact.Second >= 0)));

    private static readonly Gen<(string, ServiceDone)> Service = Gen.Select(One(Known.Services.Keys), Gen.Int[0, 3000], Gen.Int[0, 200], (item, days, km) =>
        (item, new ServiceDone(days % 4 == 0 ? null : new DateOnly(2026, 3, 1).AddDays(-days), km % 4 == 0 ? null : km * 1000)));

    public static Gen<RandomCase> Any { get; } = Gen.Select(
        Gen.Select(Report.List[0, 5], One(Known.Codes.Keys).List[0, 2], Outcome.List[0, 2]), Vehicle, Service.List[0, 8],
        Gen.Select(One(Known.Faults.Keys), Gen.Double[0, 1]).List[0, 20], One(Known.Checks.Keys).List[0, 20],
        (signs, vehicle, services, suspected, advised) => new RandomCase(
            new Case
            {
                AsOf = new DateOnly(2026, 3, 1),
                Vehicle = vehicle,
                Reports = signs.Item1,
                Codes = [.. signs.Item2.Distinct()],
                Outcomes = signs.Item3,
                Services = services.DistinctBy(one => one.Item1).ToDictionary(one => one.Item1, one => one.Item2),
            },
            suspected.DistinctBy(one => one.Item1).ToDictionary(one => one.Item1, one => one.Item2),
            [.. advised.Distinct()]));

    private static Vehicle Describe(IEnumerable<(VehicleFact Fact, double Value)> facts)
    {
        var (words, numbers) = (new Dictionary<string, string>(), new Dictionary<string, double>());
        foreach (var (fact, value) in facts)
        {
            if (fact.Kind == FactKind.Number)
                numbers.Add(fact.Id, Math.Round(value * (fact.Id == "odometerKm" ? 300_000 : 25)));
            else
                words.Add(fact.Id, fact.Values.Keys.Order(StringComparer.Ordinal).ElementAt((int)(value * 0.999 * fact.Values.Count)));
        }

        return new Vehicle(words, numbers);
    }

    private static Gen<string> One(IEnumerable<string> ids) => Gen.OneOf(ids.Order(StringComparer.Ordinal).ToArray());
}
