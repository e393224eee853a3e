using CsCheck;

namespace Advice.Rules.Tests.Oracles;

/// <summary>A few words of every kind, for rule sets made at random.</summary>
internal static class SmallWorld
{
    private static readonly string[] Symptoms = ["s1", "s2", "s3", "s4"];
    private static readonly string[] Faults = ["f1", "f2", "f3", "f4", "f5"];

    public static Gen<string> Symptom { get; } = Gen.OneOf(Symptoms);

    public static Gen<string> Fault { get; } = Gen.OneOf(Faults);

    public static Gen<string> Code { get; } = Gen.OneOf("P0001", "P0002");

    public static Gen<string> Occasion { get; } = Gen.OneOf("braking", "braking-hard", "braking-hard-downhill", "turning");

    public static Gen<string> Position { get; } = Gen.OneOf("front-left", "front-right", "rear-left", "front", "rear", "left");

    /// <summary>The words. Each fault is found by a check, as the loader demands.</summary>
    public static string Vocabulary { get; } =
        $$"""
        systems: [{id: brakes, name: brakes}]
        areas: [{id: wheels, name: wheels}]
        occasions:
          - {id: braking, name: braking, phrases: [when braking]}
          - {id: braking-hard, within: braking, name: braking hard, phrases: [when braking hard]}
          - {id: braking-hard-downhill, within: braking-hard, name: braking hard downhill, phrases: [when braking hard downhill]}
          - {id: turning, name: turning, phrases: [when turning]}
        positions:
          - {id: front-left, parts: [front-left], phrases: [front left]}
          - {id: front-right, parts: [front-right], phrases: [front right]}
          - {id: rear-left, parts: [rear-left], phrases: [rear left]}
          - {id: rear-right, parts: [rear-right], phrases: [rear right]}
          - {id: front, parts: [front-left, front-right], phrases: [in front]}
          - {id: rear, parts: [rear-left, rear-right], phrases: [in the rear]}
          - {id: left, parts: [front-left, rear-left], phrases: [on the left]}
        ageing:
          - {id: steady, name: steady, source: judgement}
          - {id: wear, name: wear, odometerKm: [[0, 0.2], [100000, 1], [200000, 3]], source: judgement}
        consequences: [{id: nuisance, name: nuisance, harm: 1, source: judgement}]
        sources: [{id: judgement, grade: judgement}]
        facts:
          - {id: drive, name: the drive, values: {front: front, rear: rear, all: all}, shares: {front: 0.6, rear: 0.3, all: 0.1}, source: judgement}
          - {id: roof, name: a roof, truth: true, shares: {"true": 0.4, "false": 0.6}, source: judgement}
          - {id: ageYears, name: the age, number: true}
          - {id: odometerKm, name: the distance, number: true}
        cautions: [{id: c1, text: First caution., source: judgement}, {id: c2, text: Second caution., source: judgement}]
        symptoms:
        {{Lines(Symptoms, id => $"{{id: {id}, name: {id}, specificity: {(id == "s1" ? "vague" : "ordinary")}, ask: 'Is it {id}?', phrases: [noise {id}]}}")}}
        codes: [{id: P0001, meaning: first, system: brakes}, {id: P0002, meaning: second, system: brakes}]
        faults:
        {{Lines(Faults, id => $"{{id: {id}, name: {id}, system: brakes{Places(id)}, prior: 0.05, ageing: {(id is "f2" or "f4" ? "wear" : "steady")}, consequence: nuisance, deficiency: minor, source: judgement}}")}}
        services:
          - {id: oil, name: oil, system: brakes, because: It ages., intervals: [{years: 1, source: judgement}]}
          - {id: fluid, name: fluid, system: brakes, because: It ages., intervals: [{years: 1, source: judgement}]}
        checks:
          - {id: k1, title: Look., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Look.], falseAlarm: 0.05, cautions: [],
             places: [front-left, front-right, rear-left, rear-right],
             observations: [{id: sound, normal: true, text: sound}, {id: worn, text: worn}, {id: torn, text: torn}],
             detects: [{fault: f1, surely: 0.5, value: worn}, {fault: f1, surely: 0.2, value: torn}, {fault: f2, surely: 0.6}, {fault: f3, surely: 0.7, value: torn}]}
          - {id: k2, title: Measure., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Measure.], falseAlarm: 0.03, cautions: [],
             measures: {unit: mm, plausible: [0, 30]}, detects: [{fault: f4, surely: 0.8}, {fault: f5, surely: 0.9}]}
        """;

    /// <summary>Something in half of the cases.</summary>
    public static Gen<string?> Sometimes(Gen<string> some) => Gen.Select(Gen.Bool, some, (there, one) => there ? one : null);

    private static string Places(string fault) => fault switch
    {
        "f1" => ", places: [front-left, front-right, rear-left, rear-right]",
        "f2" => ", places: [front, rear]",
        _ => "",
    };

    private static string Lines(IEnumerable<string> ids, Func<string, string> entry) => string.Join('\n', ids.Select(id => $"  - {entry(id)}"));
}
