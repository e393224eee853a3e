using Advice.Arithmetic.Oils;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Engine oil and viscosity.</summary>
internal static class OilComputations
{
    private static readonly Source J300 = From.Restated("SAE J300", "Table 1", "SAE 12 from memory");
    private static readonly NumberInput At100 = new("viscosityAt100", "kinematic viscosity at 100 degC", "mm2/s", 2, 100);
    private static readonly NumberInput At40 = new("viscosityAt40", "kinematic viscosity at 40 degC", "mm2/s", 2, 5000);
    private static readonly NumberInput Y = new("viscosityAt100", "kinematic viscosity at 100 degC; the index is not defined below 2", "mm2/s", ViscosityIndex.LeastAt100, 500);
    private static readonly NumberInput Sheared = new("highShearViscosity", "viscosity at 150 degC and high shear", "mPa.s", 0.5, 10) { Optional = true };
    private static readonly NumberInput Degrees = new("degC", "temperature of the test", null, -45, 0);
    private static readonly NumberInput Value = new("mPas", "viscosity, mPa.s", null, 100, 1_000_000);
    private static readonly PointsInput Cranking = new("cranking", "cold-cranking tests (D5293)", Degrees, Value, 1, 10, Ascending: false) { Optional = true };
    private static readonly PointsInput Pumping = new("pumping", "pumping tests without yield stress (D4684)", Degrees, Value, 1, 10, Ascending: false) { Optional = true };
    private static readonly WordInput Edition = new("edition", "edition of SAE J300; left out = 2013, which holds to 2024", HotClass.Editions) { Optional = true };
    private static readonly NumberInput Lowest = new("lowest", "coldest start", "degC", -50, 50);
    private static readonly NumberInput Highest = new("highest", "hottest day", "degC", -50, 60);
    private static readonly TextInput Grade = new("grade", "a grade to judge", OilGrade.Form(), "5W-30") { Optional = true };
    private static readonly TextInput InSump = new("inSump", "the grade in the sump", OilGrade.Form(), "10W-40");
    private static readonly TextInput Named = new("named", "the grade that the maker names", OilGrade.Form(), "5W-30");
    private static readonly NumberInput T = new("degC", "temperature", null, -70, 370);
    private static readonly NumberInput V = new("mm2s", "kinematic viscosity, mm2/s", null, Walther.LeastViscosity, 20_000_000);
    private static readonly PointsInput Measured = new("measured", "two measured viscosities", T, V, 2, 2, Ascending: true);
    private static readonly NumberInput Wanted = new("temperature", "temperature asked for", "degC", -70, 370);
    private static readonly NumberInput Radius = new("radius", "radius of the ball", "mm", 0.1, 20);
    private static readonly NumberInput Ball = new("ballDensity", "density of the ball", "kg/m3", 500, 25_000);
    private static readonly NumberInput Fluid = new("oilDensity", "density of the oil", "kg/m3", 500, 2000);
    private static readonly NumberInput Speed = new("speed", "steady speed of the ball", "m/s", 0.00001, 1);

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("oil-grade", "SAE grade of an engine oil from measurements", "lowest W row whose two cold tests are passed; thickest hot row whose bounds are met", [J300],
            [At100, Sheared, Cranking, Pumping, Edition], Classify),
        new("oil-for-weather", "Which oil grades suit a range of weather", "the engine turns at the temperature of the W row's cranking test; a 30 to 40 degC",
            [J300, From.CommonPractice], [Lowest, Highest, Grade], Weather)
        { Verdicts = ["suits", "does-not-suit"] },
        new("oil-comparison", "The grade in the sump against the one that the maker names", "the numbers of SAE J300 compared, the hot part first", [J300],
            [InSump, Named], Compare)
        { Verdicts = ["named", "easier-in-cold", "stiffer-in-cold", "thicker-when-hot", "thinner-when-hot"] },
        new("viscosity-at-temperature", "Viscosity at a temperature from two measured ones", "log log(v + 0.7) = A − B log T, T in kelvin, v of 2 mm2/s and more",
            [From.Restated("ASTM D341")], [Measured, Wanted], AtTemperature),
        new("viscosity-index", "Viscosity index", "U ≥ H: 100 (L − U) / (L − H); U < H: 100 + (10^N − 1) / 0.00715, N = log(H / U) / log Y",
            [From.Restated("ASTM D2270, ISO 2909"), From.Memory("ASTM D2270", "equations for L and H", "within 0.1 % of the printed table")], [At40, Y], Index),
        new("falling-ball-viscosity", "Viscosity from a ball that sinks", "η = 2/9 r² g (ρ ball − ρ oil) / v", [From.Restated("Stokes' law", null, "slow sinking, far from walls")],
            [Radius, Ball, Fluid, Speed], Sinking),
    ];

    private static Outcome Classify(Given given)
    {
        var grade = OilClassification.Grade(
            given[At100], given.Maybe(Sheared), given.Maybe(Cranking), given.Maybe(Pumping), given.Maybe(Edition) ?? HotClass.Editions[^1]);
        return Outcome.Of(Result.Of("grade", grade.ToString()))
            .Note(!given.Has(Sheared) && grade.Hot is not null, Sentences.OilHighShear)
            .Note(grade.Cold is null, Sentences.OilColdPart)
            .Note(grade.Hot is null, Sentences.OilHotPart);
    }

    private static Outcome Weather(Given given)
    {
        var (lowest, highest) = (given[Lowest], given[Highest]);
        if (lowest > highest)
            return Outcome.Refuse(Lowest, "Must not be above the highest.");
        var fits = Outcome.Of(Result.Of("coldParts", string.Join(", ", OilForAmbient.ColdNumbers(lowest).Select(number => $"{number}W")) is { Length: > 0 } all ? all : "none"))
            .Note(true, Sentences.OilOfTheMaker);
        if (given.Maybe(Grade) is not { } text)
            return fits;
        return OilGrade.Read(text) is { } grade ? fits.As(OilForAmbient.Suits(grade, lowest, highest) ? "suits" : "does-not-suit") : Unknown(Grade);
    }

    private static Outcome Compare(Given given) => OilGrade.Read(given[InSump]) is not { } inSump ? Unknown(InSump)
        : OilGrade.Read(given[Named]) is not { } named ? Unknown(Named)
        : Outcome.Of(Result.Of("inSump", inSump.ToString()), Result.Of("named", named.ToString())).As(OilComparison.Of(inSump, named));

    private static Outcome Unknown(TextInput input) => Outcome.Refuse(input, "SAE J300 has no such grade.");

    private static Outcome AtTemperature(Given given)
    {
        if (given[Measured] is not [var cold, var hot] || hot.Y >= cold.Y)
            return Outcome.Refuse(Measured, "The viscosity must fall with temperature.");
        var line = Walther.Through(cold, hot);
        var viscosity = line.At(given[Wanted]);
        return double.IsFinite(viscosity) && viscosity >= Walther.LeastViscosity
            ? Outcome.Of(Result.Of("viscosity", viscosity, "mm2/s"), Result.Of("a", line.A), Result.Of("b", line.B))
            : Outcome.Refuse(Wanted, "The viscosity there is outside what the short formula holds for (2 mm2/s and more).");
    }

    private static Outcome Index(Given given) => given[At40] <= given[Y]
        ? Outcome.Refuse(At40, "Must be above the viscosity at 100 degC.")
        : Outcome.Of(Result.Of("viscosityIndex", Math.Round(ViscosityIndex.Of(given[At40], given[Y]))));

    private static Outcome Sinking(Given given) => given[Ball] <= given[Fluid]
        ? Outcome.Refuse(Ball, "Must be above the density of the oil: the ball must sink.")
        : Outcome.Of(Result.Of("viscosity", 1000 * FallingBall.PascalSeconds(given[Radius] / 1000, given[Ball], given[Fluid], given[Speed]), "mPa.s"));
}
