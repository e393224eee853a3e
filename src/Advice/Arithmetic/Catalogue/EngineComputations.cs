using Advice.Arithmetic.Cylinders;
using Advice.Arithmetic.Diagnostics;
using Advice.Arithmetic.Mixtures;
using Advice.Arithmetic.OxygenSensors;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Mixture, oxygen sensor, cylinders, trouble codes.</summary>
internal static class EngineComputations
{
    private static readonly PointsInput Trace = new("trace", "voltage of the sensor before the catalyst, engine warm and held at a raised idle",
        new("seconds", "time", null, 0, 3600), new("volts", "voltage", null, -0.5, 1.5), 20, 20_000, Ascending: true);

    private static readonly NumberInput Cell = new("temperature", "temperature of the cell", "degC", 300, 1000);
    private static readonly NumberInput Pressure = new("oxygen", "partial pressure of oxygen in the exhaust, atm", null, 1e-30, 1) { Optional = true };
    private static readonly NumberInput Voltage = new("voltage", "voltage of the cell", "V", -0.2, 1.5) { Optional = true };
    private static readonly NumberInput Co = new("carbonMonoxide", "carbon monoxide by volume", "percent", 0, 15);
    private static readonly NumberInput Co2 = new("carbonDioxide", "carbon dioxide by volume", "percent", 1, 20);
    private static readonly NumberInput Hc = new("hydrocarbonsPpm", "hydrocarbons as hexane, ppm", null, 0, 20_000);
    private static readonly NumberInput O2 = new("oxygen", "oxygen by volume", "percent", 0, 21);
    private static readonly WordInput Kind = new("fuel", "the fuel", [.. Fuel.All.Select(fuel => fuel.Name)]);
    private static readonly NumberInput Lambda = new("lambda", "air given over air needed", null, 0.3, 5) { Optional = true };
    private static readonly NumberInput Ratio = new("airFuelRatio", "kg of air for each kg of fuel", null, 1, 100) { Optional = true };
    private static readonly NumberInput Short1 = Trim("shortTermBank1", "short-term trim of bank 1 at idle", optional: false);
    private static readonly NumberInput Long1 = Trim("longTermBank1", "long-term trim of bank 1 at idle", optional: false);
    private static readonly NumberInput Short2 = Trim("shortTermBank2", "the same of bank 2", optional: true);
    private static readonly NumberInput Long2 = Trim("longTermBank2", "the same of bank 2", optional: true);
    private static readonly NumberInput Cruise1 = Trim("totalAtCruiseBank1", "short plus long term of bank 1 at a steady cruise", optional: true);
    private static readonly NumberInput Cruise2 = Trim("totalAtCruiseBank2", "the same of bank 2", optional: true);
    private static readonly NumberInput Byte = new("value", "the byte, 0 … 255", null, 0, 255);
    private static readonly NumberInput Byte1 = new("first", "the first byte, 0 … 255", null, 0, 255);
    private static readonly NumberInput Byte2 = new("second", "the second byte, 0 … 255", null, 0, 255);
    private static readonly SeriesInput Pressures = new("pressures", "compression pressure of each cylinder, in order", "kPa", 0, 7000, 2, 16);
    private static readonly SeriesInput Losses = new("losses", "leak-down of each cylinder, in order", "percent", 0, 100, 1, 16);

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("oxygen-sensor-trace", "What the voltage of a switching oxygen sensor says", "lean below 0.3 V, rich above 0.6 V; crossing 0.2 s and less, 0.5 switches for each second and more",
            [From.CommonPractice, From.Estimate("0.2 s, and 60 s until the first activity")], [Trace], Sensor)
        { Verdicts = ["switching", "lazy", "narrow", "late", "stuck-lean", "stuck-rich", "inactive"] },
        new("oxygen-cell", "Voltage of an oxygen cell and the oxygen in the exhaust", "E = R T ln 10 / (4 F) · log₁₀(0.2095 / p)", [From.Restated("Nernst equation", "four electrons")],
            [Cell, Pressure, Voltage], Nernst),
        new("exhaust-lambda", "Lambda from four exhaust gases", "balance of Brettschneider; H/C 1.7261, O/C 0.0176, hexane factor 6",
            [From.Restated("Brettschneider, Bosch Technische Berichte 6 (1979)", "p. 177", "some take a hexane factor of 12")], [Co, Co2, Hc, O2],
            given => Outcome.Of(Result.Of("lambda", ExhaustLambda.Of(given[Co], given[Co2], given[Hc], given[O2])))
                .Note(given[O2] > 2, Sentences.MuchOxygen)),
        new("air-fuel-ratio", "Air-fuel ratio and lambda", "λ = ratio / stoichiometric ratio; stoichiometric by mass balance, 23.14 % oxygen in air",
            [From.CommonPractice, From.Estimate("gasoline 14.7 by convention, blends by mass with densities 0.745 and 0.789")], [Kind, Lambda, Ratio], Air),
        new("fuel-trims", "Fuel trims of both banks", "short + long term; suspect beyond ±10 %", [From.CommonPractice], [Short1, Long1, Short2, Long2, Cruise1, Cruise2], Trims)
        {
            Verdicts =
            [
                "within", "lean", "rich", "lean-both-banks", "rich-both-banks", "lean-bank-1", "lean-bank-2", "rich-bank-1", "rich-bank-2",
                "lean-at-idle", "rich-at-idle", "lean-under-load", "rich-under-load", "mixed",
            ],
        },
        new("fuel-trim-byte", "Fuel trim from a raw byte", "(A − 128) · 100 / 128", [From.Restated("SAE J1979, ISO 15031-5", "parameters 06 … 09")], [Byte],
            given => Whole(given, Byte) ?? Outcome.Of(Result.Of("trim", FuelTrim.OfByte((int)given[Byte]), "percent"))),
        new("trouble-code-bytes", "Trouble code from its two bytes", "two bits letter, two bits digit, three hexadecimal digits", [From.Restated("SAE J2012, J1979")], [Byte1, Byte2],
            given => Whole(given, Byte1) ?? Whole(given, Byte2) ?? Outcome.Of(Result.Of("code", TroubleCodeBytes.Code((int)given[Byte1], (int)given[Byte2]) ?? "none"))),
        new("compression", "Compression pressures against each other", "lowest at least 75 % of the highest, or 70 % and 100 psi",
            [From.Primary("TM 5-4210-230-14&P-1", "Addendum 2", "75 %"), From.Restated("service text of an engine maker", null, "70 % and 690 kPa")], [Pressures], Compressed)
        { Verdicts = ["even", "doubtful", "low-overall", "uneven", "uneven-neighbours"] },
        new("leak-down", "Leak-down of the cylinders", "to 10 % sound, to 20 % worn, beyond leaking; 10 points between cylinders uneven", [From.CommonPractice], [Losses],
            given => Outcome.Of(
                Result.Of("most", given[Losses].Max(), "percent"), Result.Of("spread", given[Losses].Max() - given[Losses].Min(), "percent"),
                Result.Of("worstCylinder", given[Losses].ToList().IndexOf(given[Losses].Max()) + 1)).As(LeakDown.Of(given[Losses])))
        { Verdicts = ["sound", "worn", "uneven", "leaking"] },
    ];

    private static NumberInput Trim(string name, string what, bool optional) => new(name, what, "percent", -100, 100) { Optional = optional };

    private static Outcome? Whole(Given given, NumberInput input) =>
        given[input] == Math.Floor(given[input]) ? null : Outcome.Refuse(input, "Must be a whole number.");

    private static Outcome Sensor(Given given)
    {
        var trace = SensorTrace.Of(given[Trace]);
        List<Result> results =
        [
            Result.Of("mean", trace.Mean, "V"), Result.Of("lowest", trace.Lowest, "V"), Result.Of("highest", trace.Highest, "V"), Result.Of("swing", trace.Swing, "V"),
            Result.Of("switches", trace.Switches), Result.Of("switchesPerSecond", trace.SwitchesPerSecond),
        ];
        if (trace.Crossing is { } crossing)
            results.Add(Result.Of("crossing", crossing, "s"));
        if (trace.FirstActive is { } active)
            results.Add(Result.Of("firstActive", active, "s"));
        return Outcome.Of(results).As(trace.Verdict)
            .Note(trace.Seconds < 10, Sentences.LongerTrace)
            .Note(trace.Verdict is "inactive" or "late", Sentences.ColdCell);
    }

    private static Outcome Nernst(Given given)
    {
        if (given.Has(Pressure) == given.Has(Voltage))
            return Outcome.Refuse(Pressure, "Give either the oxygen or the voltage.");
        var (degC, slope) = (given[Cell], Result.Of("perDecade", NernstCell.MillivoltsPerDecade(given[Cell]), "mV"));
        return given.Maybe(Pressure) is { } pressure
            ? Outcome.Of(Result.Of("voltage", NernstCell.Millivolts(degC, pressure), "mV"), slope)
            : Outcome.Of(Result.Of("oxygen", NernstCell.Exhaust(degC, 1000 * given[Voltage]), "atm"), slope);
    }

    private static Outcome Air(Given given)
    {
        var needed = Fuel.All.First(fuel => fuel.Name == given[Kind]).Stoichiometric;
        if (given.Has(Lambda) && given.Has(Ratio))
            return Outcome.Refuse(Ratio, "Give lambda or the ratio, not both.");
        var lambda = given.Maybe(Lambda) ?? (given.Maybe(Ratio) / needed);
        return lambda is { } known
            ? Outcome.Of(Result.Of("stoichiometric", needed), Result.Of("lambda", known), Result.Of("airFuelRatio", known * needed))
            : Outcome.Of(Result.Of("stoichiometric", needed));
    }

    private static Outcome Trims(Given given)
    {
        if (given.Has(Short2) != given.Has(Long2))
            return Outcome.Refuse(given.Has(Short2) ? Short2 : Long2, "Bank 2 needs both its short and its long term.");
        if (given.Has(Cruise2) && !given.Has(Cruise1))
            return Outcome.Refuse(Cruise2, "Goes with that of bank 1.");
        List<double> idle = [given[Short1] + given[Long1]];
        if (given.Has(Short2))
            idle.Add(given[Short2] + given[Long2]);
        List<double> cruise = [.. new[] { given.Maybe(Cruise1), given.Maybe(Cruise2) }.OfType<double>()];
        return Outcome.Of([.. idle.Select((total, bank) => Result.Of($"totalBank{bank + 1}", total, "percent"))]).As(FuelTrim.Pattern(idle, cruise));
    }

    private static Outcome Compressed(Given given)
    {
        var pressures = given[Pressures];
        if (pressures.Max() <= 0)
            return Outcome.Refuse(Pressures, "At least one cylinder must have compression.");
        return Outcome.Of(
            Result.Of("lowestOfHighest", Compression.LowestPercent(pressures), "percent"),
            Result.Of("leastByStricterRule", Compression.LeastByStricterRule(pressures.Max()), "kPa"),
            Result.Of("leastByMilderRule", Compression.LeastByMilderRule(pressures.Max()), "kPa"),
            Result.Of("belowAverage", 100 * (1 - (pressures.Min() / pressures.Average())), "percent"),
            Result.Of("lowCylinders", Compression.Low(pressures) is { Count: > 0 } low ? string.Join(", ", low) : "none"))
            .As(Compression.Of(pressures))
            .Note(true, Sentences.CompressionMakers);
    }
}
