using Advice.Arithmetic.Batteries;
using Advice.Findings;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Battery, starting and charging.</summary>
internal static class BatteryComputations
{
    private static readonly Source Table = From.Restated("BCI table of state of charge", note: "published ladders differ by up to 0.1 V");
    private static readonly NumberInput Voltage = new("voltage", "voltage between the posts, at rest for some hours", "V", 10, 14.5);
    private static readonly NumberInput Temperature = new("temperature", "temperature of the battery; left out = 26.7 degC, that of the table", "degC", -40, 60) { Optional = true };
    private static readonly NumberInput Gravity = new("gravity", "specific gravity as read", null, 1.0, 1.35);
    private static readonly NumberInput ReadAt = new("temperature", "temperature of the electrolyte", "degC", -40, 60);
    private static readonly SeriesInput Cells = new("cells", "specific gravity of each cell, at one temperature", null, 1.0, 1.35, 2, 6);
    private static readonly NumberInput Loaded = new("voltage", "voltage at the end of the load", "V", 0, 14.5);
    private static readonly NumberInput Cranking = new("voltage", "lowest steady voltage between the posts while the starter turns", "V", 0, 14.5);
    private static readonly NumberInput LoadedAt = new("temperature", "temperature of the battery", "degC", -17.8, 60);
    private static readonly NumberInput CrankedAt = new("temperature", "temperature of the battery; left out = 21 degC", "degC", -17.8, 60) { Optional = true };
    private static readonly NumberInput Running = new("voltage", "voltage between the posts, engine at about 2000 rpm", "V", 8, 20);
    private static readonly WordInput Circuit = new("circuit", "which way the current goes", "cranking", "ground", "charging");
    private static readonly NumberInput Drop = new("drop", "voltage across the cable or connection while the current flows", "V", 0, 14.5);
    private static readonly NumberInput Current = new("current", "the current", "A", 0.1, 2000) { Optional = true };

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("battery-state-of-charge", "State of charge of a flooded 12 V battery from its voltage at rest",
            "V₂₇ = V + 6 · 0.0002 · (26.7 − t); table 11.89 … 12.65 V = 0 … 100 %, straight lines between the rows",
            [Table, From.Memory("handbooks of lead-acid batteries", null, "coefficient of 0.2 mV/K for each cell")],
            [Voltage, Temperature], given => Charge(given[Voltage], given.Maybe(Temperature)))
        { Verdicts = ["charged", "recharge", "discharged"], Corrects = ["voltageAtReference"] },
        new("battery-specific-gravity", "State of charge from the specific gravity of the electrolyte",
            "gravity at 80 °F = reading + 0.004 · (t − 80 °F) / 10 °F; table 1.120 … 1.265 = 0 … 100 %",
            [Table, From.Primary("TM 5-4210-230-14&P-1", "correction for temperature")],
            [Gravity, ReadAt], given => Hydrometer(given[Gravity], given[ReadAt]))
        { Verdicts = ["charged", "recharge", "discharged"], Corrects = ["gravityAt80DegF"] },
        new("battery-cells", "Spread of specific gravity between the cells of a charged battery", "highest − lowest; four manuals bound it at 0.010, 0.020, 0.025 and 0.050",
            [From.Primary("TM 9-6140-200-14", "4-7", "0.025"), From.Primary("TM 55-2210-224-12", null, "0.020"), From.Primary("TM 5-3740-214-14", null, "0.050")],
            [Cells], given => Spread(given[Cells]))
        { Verdicts = ["even", "doubtful", "weak-cell"] },
        new("battery-load-test", "Voltage under a load of half the cold-cranking amperes, after 15 s", "table by temperature: 9.6 V at 70 °F … 8.5 V at 0 °F",
            [From.Restated("BCI load-test table", null, "battery at least 75 % charged")],
            [Loaded, LoadedAt], given => Load(given[Loaded], given[LoadedAt]))
        { Verdicts = ["holds", "drops"] },
        new("cranking-voltage", "Voltage while the starter turns", "the table of the load test, taken over by the trade for the starter",
            [From.CommonPractice, From.Restated("BCI load-test table")],
            [Cranking, CrankedAt], given => Load(given[Cranking], given.Maybe(CrankedAt) ?? 21.2))
        { Verdicts = ["holds", "drops"], Corrects = ["voltageAt70DegF"] },
        new("charging-voltage", "Charging voltage of a 12 V system", "13.8 … 14.8 V is usual; below 13.2 V too low; below 12.7 V nothing charges",
            [From.Restated("training sheet on charging systems")],
            [Running], given => Outcome.Of(Result.Of("least", 13.8, "V"), Result.Of("most", 14.8, "V")).As(Charging.Of(given[Running]))
                .Note(true, Sentences.ChargingVaries))
        { Verdicts = ["usual", "low", "high", "too-low", "none"] },
        new("voltage-drop", "Voltage lost across a cable or connection", "R = U / I, P = U · I; at most 0.5 V over the cranking circuit, 0.2 V over a ground, 0.5 V from alternator to battery",
            [From.CommonPractice],
            [Circuit, Drop, Current], Lost)
        { Verdicts = ["good", "high"] },
    ];

    private static Outcome Charge(double volts, double? degC)
    {
        var corrected = OpenCircuit.AtReference(volts, degC ?? OpenCircuit.ReferenceDegC);
        var (charge, (least, most)) = (OpenCircuit.ChargePercent(corrected), OpenCircuit.ChargeRangePercent(corrected));
        return Outcome.Of(
            Result.Of("stateOfCharge", charge, "percent"), Result.Of("leastByOtherTables", least, "percent"), Result.Of("mostByOtherTables", most, "percent"),
            Result.Of("voltageAtReference", corrected, "V"), Result.Of("freezesAt", UnitConversion.Convert(OpenCircuit.FreezesAtDegF(charge), "degF", "degC")!.Value, "degC"))
            .As(Charged(charge))
            .Note(corrected > 12.8, Sentences.SurfaceCharge)
            .Note(degC is null, Sentences.TemperatureTaken);
    }

    private static Outcome Hydrometer(double reading, double degC)
    {
        var gravity = SpecificGravity.At80DegF(reading, UnitConversion.Convert(degC, "degC", "degF")!.Value);
        var charge = SpecificGravity.ChargePercent(gravity);
        return Outcome.Of(Result.Of("gravityAt80DegF", gravity), Result.Of("stateOfCharge", charge, "percent")).As(Charged(charge));
    }

    private static string Charged(double percent) => percent >= 75 ? "charged" : percent >= 25 ? "recharge" : "discharged";

    private static Outcome Spread(IReadOnlyList<double> cells)
    {
        var spread = Math.Round(cells.Max() - cells.Min(), 6);
        return Outcome.Of(Result.Of("spread", spread), Result.Of("lowestCell", cells.ToList().IndexOf(cells.Min()) + 1))
            .As(spread <= 0.010 ? "even" : spread <= 0.050 ? "doubtful" : "weak-cell");
    }

    private static Outcome Load(double volts, double degC)
    {
        var least = LoadTest.LeastVolts(UnitConversion.Convert(degC, "degC", "degF")!.Value);
        return Outcome.Of(Result.Of("least", least, "V"), Result.Of("margin", volts - least, "V"), Result.Of("voltageAt70DegF", volts - least + LoadTest.LeastVolts(70), "V")).As(volts >= least ? "holds" : "drops")
            .Note(true, Sentences.ChargedBatteryOnly);
    }

    private static Outcome Lost(Given given)
    {
        var (drop, most) = (given[Drop], VoltageDrop.MostVolts[given[Circuit]]);
        var outcome = Outcome.Of(Result.Of("most", most, "V"), Result.Of("margin", most - drop, "V")).As(drop <= most ? "good" : "high");
        return given.Maybe(Current) is not { } current ? outcome : outcome with
        {
            Results = [.. outcome.Results, Result.Of("resistance", VoltageDrop.MilliOhms(drop, current), "mOhm"), Result.Of("heat", VoltageDrop.Watts(drop, current), "W")],
        };
    }
}
