using Advice.Knowledge.Signs;
using Advice.Symptoms;

namespace Advice.Tests.Symptoms;

/// <summary>A vocabulary small enough to see why a text is read as it is.</summary>
internal static class SmallVocabulary
{
    public static ComplaintReader Reader { get; } = new(Symptoms(), Occasions(), Positions());

    /// <summary>A reading in one line: "steering-shake @braking+high-speed #front; not squeal".</summary>
    public static string Summary(this ComplaintReading reading) => string.Join("; ", reading.Reports.Select(r =>
        (r.Present ? "" : "not ") + r.Symptom
        + (r.Occasions.Count == 0 ? "" : " @" + string.Join('+', r.Occasions))
        + (r.Position is null ? "" : " #" + r.Position)));

    private static IEnumerable<Symptom> Symptoms()
    {
        (string Id, string Phrases)[] symptoms =
        [
            ("squeal", "squeal, screech"),
            ("grinding", "grind, grinding noise"),
            ("clunk", "clunk, thud"),
            ("rattle", "rattle, vibrating noise"),
            ("vibration", "vibration, vibrates, shakes"),
            ("steering-shake", "steering wheel shakes, steering wheel vibrates"),
            ("brake-pulsation", "shakes when braking, pedal pulsates"),
            ("soft-pedal", "soft brake pedal, spongy brakes"),
            ("hard-pedal", "brake pedal is hard"),
            ("pedal-sinks", "brake pedal goes to the floor"),
            ("brakes-fail", "no brakes, brakes do not work"),
            ("brake-lamp", "brake light on dash"),
            ("parking-brake-weak", "parking brake does not hold"),
            ("overheating", "overheats"),
            ("steam", "steam from hood"),
            ("no-heat", "no heat, heater blows cold"),
            ("no-start", "will not start, turns over but does not start"),
            ("hard-start", "hard to start"),
            ("stalling", "stalls, engine dies, stop running"),
            ("loss-of-power", "no power, loss of power"),
            ("engine-lamp", "check engine light"),
            ("engine-lamp-flashing", "check engine light flashing"),
            ("fuel-smell", "smell of gas, gas odor"),
            ("wipers-fail", "wipers do not work, wipers stuck"),
            ("windscreen-crack", "cracked windshield, crack in the windshield"),
            ("tyre-loses-air", "flat tire, tire loses air"),
            ("gear-slip", "transmission slips"),
            ("bonnet-unlatched", "hood will not stay shut"),
        ];
        return symptoms.Select(s => new Symptom(s.Id, new(s.Id, s.Id), 0.1, "", s.Phrases.Split(", ")));
    }

    private static IEnumerable<Occasion> Occasions()
    {
        (string Id, string? Within, string Phrases)[] occasions =
        [
            ("after-service", null, "since <done>, after <done>"),
            ("starting", null, "when starting, when i start"),
            ("cold-start", "starting", "cold start, in the morning"),
            ("engine-warm", null, "when warm, when hot"),
            ("idling", null, "at idle, at a red light"),
            ("braking", null, "braking, when braking, i brake, apply the brakes"),
            ("braking-hard", "braking", "i brake hard, hard braking"),
            ("braking-lightly", "braking", "brake gently"),
            ("high-speed", null, "highway, motorway"),
            ("turning", null, "when turning, i turn"),
            ("turning-left", "turning", "i turn left, turning left"),
            ("over-bumps", null, "bump, bumps"),
            ("full-lock", null, "parking"),
            ("parked", null, "parked"),
            ("selecting-gear", null, "shift into drive, from reverse into drive"),
        ];
        return occasions.Select(o => new Occasion(o.Id, o.Within, o.Id, o.Phrases.Split(", "), IsEvent: o.Id == "after-service"));
    }

    private static IEnumerable<Position> Positions()
    {
        (string Id, string Phrases)[] positions =
        [
            ("front-left", "front left, left front"),
            ("front", "front, front end"),
            ("rear", "rear, in the back"),
        ];
        return positions.Select(p => new Position(p.Id, [p.Id], p.Phrases.Split(", ")));
    }
}
