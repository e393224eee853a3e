using Advice.Documents.Requests;
using Advice.Knowledge;
using CsCheck;

namespace Advice.Rules.Tests.Laws;

/// <summary>Requests over the words of the repository's rules.</summary>
internal static class RandomRequests
{
    private static readonly Catalogue Known = RepositoryRules.Book.Catalogue;

    public static Gen<string> Symptom { get; } = OneOf(Known.Symptoms.Keys);

    private static readonly Gen<SymptomReport> Report = Gen.Select(
        Symptom, OneOf(Known.Occasions.Keys).List[0, 2], OneOf(Known.Positions.Keys).Select(id => (string?)id).Or(null), Gen.Int[0, 4],
        (symptom, occasions, position, denied) => new SymptomReport { Symptom = symptom, Occasions = occasions, Position = position, Present = denied > 0 });

    public static Gen<VehicleDescription> Vehicle { get; } = Gen.Select(
        Word("driveline"), Word("fuel"), Word("transmission"), Gen.Int[1995, 2025].Select(year => (int?)year).Or(null),
        (driveline, fuel, transmission, year) => new VehicleDescription { Driveline = driveline, Fuel = fuel, Transmission = transmission, ModelYear = year });

    /// <summary>A value of the scale, or one that is plausible.</summary>
    private static readonly Gen<FindingReport> Finding = Gen.Select(OneOf(Known.Checks.Keys), Gen.Double[0, 0.999], (id, at) => Known.Checks[id].Measure is { } measure
        ? new FindingReport { Check = id, Value = measure.PlausibleMinimum + (at * (measure.PlausibleMaximum - measure.PlausibleMinimum)), Unit = measure.Unit }
        : new FindingReport { Check = id, Observation = Known.Checks[id].Observations[(int)(at * Known.Checks[id].Observations.Count)].Id });

    private static readonly Gen<ServiceReport> Service = Gen.Select(OneOf(Known.Services.Keys), Gen.Int[0, 4000], (item, days) =>
        new ServiceReport { Item = item, On = new DateOnly(2026, 3, 1).AddDays(-days) });

    public static Gen<AdviceRequest> Any { get; } = Gen.Select(
        Vehicle, Report.List[1, 5], OneOf(Known.Codes.Keys).List[0, 2], Finding.List[0, 2], Service.List[0, 3],
        (vehicle, symptoms, codes, findings, services) => new AdviceRequest
        {
            AsOf = new DateOnly(2026, 3, 1),
            Vehicle = vehicle,
            Symptoms = symptoms,
            TroubleCodes = codes,
            Findings = findings,
            Services = services,
            Limit = 50,
        });

    private static Gen<string?> Word(string fact) => OneOf(Known.Facts[fact].Values.Keys).Select(word => (string?)word).Or(null);

    private static Gen<string> OneOf(IEnumerable<string> ids)
    {
        var all = ids.Order(StringComparer.Ordinal).ToArray();
        return Gen.Int[0, all.Length - 1].Select(i => all[i]);
    }

    /// <summary>Nothing in one of three.</summary>
    private static Gen<T?> Or<T>(this Gen<T?> some, T? nothing) => Gen.Frequency((2, some), (1, Gen.Const(nothing)));
}
