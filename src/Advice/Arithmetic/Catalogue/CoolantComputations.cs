using Advice.Arithmetic.Coolants;
using Advice.Knowledge.Limits;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Coolant.</summary>
internal static class CoolantComputations
{
    private static readonly Source Table =
        From.Restated("ASHRAE Handbook Fundamentals 2001", "tables of glycol in water", "another table (Melinder 2010) lies up to 2.2 K lower at half and half");

    private static readonly WordInput Kind = new("glycol", "the glycol of the coolant", "ethylene", "propylene");
    private static readonly NumberInput Concentration = new("concentration", "glycol by volume", "percent", 0, 60);
    private static readonly NumberInput Freezing = new("freezesAt", "freezing point", "degC", -51.1, 0);
    private static readonly NumberInput Capacity = new("capacity", "what the cooling system holds", "L", 0.5, 100);
    private static readonly NumberInput Present = new("present", "glycol by volume now", "percent", 0, 100);
    private static readonly NumberInput Target = new("target", "glycol by volume wanted", "percent", 0, 100);
    private static readonly NumberInput Fill = new("fill", "glycol by volume of what is filled in; left out = concentrate to strengthen, water to thin", "percent", 0, 100) { Optional = true };

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("coolant-freeze-point", "Freezing point of a coolant from its concentration", "table, straight lines between the rows", [Table, UseRange],
            [Kind, Concentration], given => FreezePoint(Of(given[Kind]), given[Concentration]))
        { Verdicts = ["in-range", "too-thin", "too-strong"] },
        new("coolant-concentration", "Concentration of a coolant from its freezing point", "the same table, read backwards", [Table, UseRange],
            [Kind, Freezing], given => Percent(Of(given[Kind]), given[Freezing]))
        { Verdicts = ["in-range", "too-thin", "too-strong"] },
        new("coolant-drain-and-fill", "How much coolant to drain and replace to reach a concentration", "V · (target − present) / (fill − present)",
            [From.Estimate("balance of the concentrate; the system is full before and after and mixes fully")],
            [Capacity, Present, Target, Fill], Replace),
    ];

    private static Source UseRange => From.Primary("ASTM D3306-08a", "1.1", "use at 40 … 70 % by volume");

    private static Glycol Of(string kind) => kind == "ethylene" ? Glycol.Ethylene : Glycol.Propylene;

    private static Outcome FreezePoint(Glycol glycol, double percent) => percent > glycol.MostPercent
        ? Outcome.Refuse(Concentration, FormattableString.Invariant($"Must be at most {glycol.MostPercent} percent for this glycol: beyond that the table ends and the protection falls again."))
        : Outcome.Of(Result.Of("freezesAt", glycol.FreezesAt(percent), "degC")).As(Class(percent));

    private static Outcome Percent(Glycol glycol, double degC)
    {
        if (degC < glycol.LowestDegC)
            return Outcome.Refuse(Freezing, FormattableString.Invariant($"Must be at least {glycol.LowestDegC} degC for this glycol: its table ends there."));
        var percent = glycol.PercentFor(degC);
        return Outcome.Of(Result.Of("concentration", percent, "percent")).As(Class(percent));
    }

    private static string Class(double percent) => percent < 40 ? "too-thin" : percent > 70 ? "too-strong" : "in-range";

    private static Outcome Replace(Given given)
    {
        var (present, target) = (given[Present], given[Target]);
        var fill = given.Maybe(Fill) ?? (target > present ? 100 : 0);
        return DrainAndFill.IsPossible(present, target, fill)
            ? Outcome.Of(Result.Of("replace", DrainAndFill.Litres(given[Capacity], present, target, fill), "L"))
            : Outcome.Refuse(given.Has(Fill) ? Fill : Target, "That fill cannot bring the target about: the target must lie between the present concentration and that of the fill.");
    }
}
