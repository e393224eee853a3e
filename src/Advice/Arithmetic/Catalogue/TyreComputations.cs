using Advice.Arithmetic.Tyres;
using Advice.Findings;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Tyres.</summary>
internal static class TyreComputations
{
    private static readonly TextInput Size = new("size", "size on the tyre", TyreSize.Form(), "205/55R16");
    private static readonly TextInput Fitted = new("fitted", "another size, fitted in its place", TyreSize.Form(), "225/45R17") { Optional = true };
    private static readonly NumberInput Index = new("loadIndex", "load index", null, LoadIndex.Least, LoadIndex.Most);
    private static readonly WordInput Symbol = new("speedSymbol", "speed symbol", [.. SpeedSymbol.KilometresPerHour.Keys]) { Optional = true };
    private static readonly NumberInput AxleLoad = new("axleLoad", "greatest permitted load of the axle, on two such tyres", "kg", 50, 100_000) { Optional = true };
    private static readonly TextInput Code = new("code", "the last three or four digits of the tyre identification number", TyreDateCode.Form(), "0301");
    private static readonly DayInput On = new("asOf", "the day on which the age counts");
    private static readonly NumberInput Depth = new("depth", "tread depth", "mm", 0, 30);
    private static readonly NumberInput New = new("newDepth", "tread depth when new", "mm", 1, 30) { Optional = true };
    private static readonly NumberInput Least = new("minimum", "least depth", "mm", 0, 10) { Optional = true };
    private static readonly NumberInput Placard = new("placard", "pressure on the placard, cold", "kPa", 100, 1000);
    private static readonly NumberInput Gauge = new("pressure", "measured pressure", "kPa", 20, 1500);
    private static readonly NumberInput Then = new("temperature", "temperature of the tyre then", "degC", -50, 100);
    private static readonly NumberInput Other = new("otherTemperature", "temperature asked for", "degC", -50, 100);

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("tyre-size", "Diameter of a tyre and the error of the speedometer with another", "rim · 25.4 + 2 · width · aspect; error = fitted / original − 1",
            [From.Restated("worked example of tyre sizes")], [Size, Fitted], Sizes),
        new("tyre-load-and-speed", "Load index and speed symbol of a tyre", "table", [From.Restated("ISO 4000-1 (ETRTO)", null, "15 of the load rows; the others from memory")], [Index, Symbol, AxleLoad], Rating)
        { Verdicts = ["carries", "too-weak"] },
        new("tyre-age", "Age of a tyre from its date code", "week and year; before July 2000 the year has one digit", [From.Primary("49 CFR 574.5", "(b)(3)"), From.CommonPractice], [Code, On], Age)
        { Verdicts = ["young", "inspect", "replace"] },
        new("tyre-tread", "Tread depth in millimetres and 32nds of an inch, and how much is worn", "worn = (new − depth) / (new − minimum)", [From.Restated("exact definition of the inch")],
            [Depth, New, Least], Tread),
        new("tyre-warning-pressure", "Pressure at which the warning lamp must come on", "75 % of the placard", [From.Primary("49 CFR 571.138", "S4.2(a)", "or the floor of Table 1, whichever is higher")],
            [Placard], given => Outcome.Of(Result.Of("warnsAt", TyrePressure.WarnsAt(given[Placard]), "kPa"))),
        new("tyre-pressure-at-temperature", "Tyre pressure at another temperature", "p₂ = (p₁ + 101.325) · T₂ / T₁ − 101.325 kPa", [From.Restated("ideal gas law", null, "fixed volume, sea level")],
            [Gauge, Then, Other], given => Outcome.Of(Result.Of("pressure", TyrePressure.At(given[Gauge], given[Then], given[Other]), "kPa")))
        { Corrects = ["pressure"] },
    ];

    private static Outcome Sizes(Given given)
    {
        var size = TyreSize.Read(given[Size])!;
        List<Result> results = [Result.Of("diameter", size.DiameterMm, "mm"), Result.Of("sidewall", size.SidewallMm, "mm")];
        if (given.Maybe(Fitted) is not { } other)
            return Outcome.Of(results);
        var fitted = TyreSize.Read(other)!;
        var error = TyreSize.SpeedErrorPercent(size, fitted);
        return Outcome.Of([.. results, Result.Of("fittedDiameter", fitted.DiameterMm, "mm"), Result.Of("speedError", error, "percent")])
            .Note(error > 0, Sentences.FasterThanShown);
    }

    private static Outcome Rating(Given given)
    {
        if (given[Index] != Math.Floor(given[Index]))
            return Outcome.Refuse(Index, "Must be a whole number.");
        var load = LoadIndex.Kilograms((int)given[Index]);
        List<Result> results = [Result.Of("load", load, "kg")];
        if (given.Maybe(Symbol) is { } symbol)
            results.Add(Result.Of("speed", SpeedSymbol.KilometresPerHour[symbol], "km/h"));
        if (given.Maybe(AxleLoad) is not { } axle)
            return Outcome.Of(results);
        results.Add(Result.Of("axleCapacity", 2 * load, "kg"));
        return Outcome.Of(results).As(2 * load >= axle ? "carries" : "too-weak");
    }

    private static Outcome Age(Given given)
    {
        var (code, on) = (TyreDateCode.Read(given[Code]), given[On]);
        if (code.MadeNotAfter > on)
            return Outcome.Refuse(Code, "The tyre would be made after the day asked for.");
        var years = code.AgeYears(on);
        return Outcome.Of(Result.Of("week", code.Week), Result.Of("year", string.Join(" or ", code.Years)), Result.Of("leastAge", years, "years")).As(TyreDateCode.Of(years))
            .Note(code.Years.Count > 1, Sentences.DecadeNotTold);
    }

    private static Outcome Tread(Given given)
    {
        var (depth, whole, least) = (given[Depth], given.Maybe(New), given.Maybe(Least) ?? 0);
        if (depth > whole)
            return Outcome.Refuse(Depth, FormattableString.Invariant($"Must be between 0 and {whole:0.##} mm, the depth when new.")) with { IsImpossible = true };
        if (least >= whole)
            return Outcome.Refuse(Least, "Must be below the depth when new.");
        List<Result> results = [Result.Of("depth", depth, "mm"), Result.Of("depthIn32nds", UnitConversion.Convert(depth, "mm", "32nds")!.Value, "32nds")];
        if (whole is { } fresh)
            results.Add(Result.Of("worn", 100 * (fresh - depth) / (fresh - least), "percent"));
        return Outcome.Of(results);
    }
}
