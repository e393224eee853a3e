using Advice.Arithmetic.BrakeFluids;
using Advice.Arithmetic.Braking;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Brakes and brake fluid.</summary>
internal static class BrakeComputations
{
    private static readonly WordInput Kind = new("class", "class on the reservoir cap", [.. BrakeFluidClass.All.Select(kind => kind.Name)]);
    private static readonly NumberInput Boiling = new("boilingPoint", "measured boiling point", "degC", 80, 350) { Optional = true };
    private static readonly NumberInput Water = new("water", "water in the fluid", "percent", 0, 3.7) { Optional = true };
    private static readonly NumberInput Speed = new("speed", "speed when braking begins", "m/s", 0.5, 80);
    private static readonly NumberInput Deceleration = new("deceleration", "mean deceleration", "m/s2", 0.1, 15) { Optional = true };
    private static readonly NumberInput Stopped = new("distance", "distance in which the vehicle stopped", "m", 0.5, 5000) { Optional = true };
    private static readonly NumberInput Delay = new("delay", "time before the brakes act; left out = none", "s", 0, 10) { Optional = true };
    private static readonly NumberInput Force = new("force", "sum of the braking forces", "N", 0, 1_000_000);
    private static readonly NumberInput Mass = new("mass", "mass of the vehicle as tested, or the one that the rule names", "kg", 50, 60_000);
    private static readonly NumberInput Left = new("left", "braking force on the left", "N", 0, 100_000);
    private static readonly NumberInput Right = new("right", "braking force on the right", "N", 0, 100_000);

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("brake-fluid", "Brake fluid by class, boiling point and water",
            "dry and wet limits by class; between 0 and 3.7 % water the boiling point falls as DOT 3 does by trade figures",
            [From.Restated("49 CFR 571.116", "S5.1.1, S5.1.2"), From.Estimate("the fall with water for other classes than DOT 3"), From.CommonPractice],
            [Kind, Boiling, Water], Fluid)
        { Verdicts = ["as-new", "used", "below-wet-limit"] },
        new("stopping-distance", "Stopping distance from speed and deceleration, or deceleration from the distance", "v² / (2 a) + v · t; efficiency = a / g",
            [From.Restated("mechanics", null, "level dry road, steady deceleration"), From.Primary("67 Pa. Code ch. 175", "Table I", "gives both limits; they are not equivalent")],
            [Speed, Deceleration, Stopped, Delay], Stop),
        new("brake-efficiency", "Braking force as a share of the weight", "F / (m · 9.80665 m/s²)", [From.Primary("UK MOT inspection manual, January 2012", "3.8")],
            [Force, Mass], given => Outcome.Of(Result.Of("efficiency", Stopping.EfficiencyPercent(given[Force], given[Mass]), "percent"))),
        new("brake-imbalance", "Difference of the braking forces across an axle", "(higher − lower) / higher",
            [From.Restated("UK MOT, change of 23 June 2013", null, "25 % before, 30 % after"), From.Memory("Directive 2014/45/EU", "Annex I, 1.2.1", "30 and 50 %")],
            [Left, Right], Balance)
        { Verdicts = ["within", "over-25", "over-30", "over-50"] },
    ];

    private static Outcome Fluid(Given given)
    {
        var kind = BrakeFluidClass.All.First(one => one.Name == given[Kind]);
        if (given.Has(Water) && !kind.TakesUpWater)
            return Outcome.Refuse(Water, "Silicone fluid does not take up water; leave it out.");
        List<Result> results = [Result.Of("dryLimit", kind.DryDegC, "degC"), Result.Of("wetLimit", kind.WetDegC, "degC")];
        if (given.Maybe(Water) is { } water)
            results.Add(Result.Of("estimatedBoilingPoint", kind.EstimatedDegC(water), "degC"));
        if (given.Maybe(Boiling) is not { } boiling)
            return Outcome.Of(results);
        return Outcome.Of([.. results, Result.Of("marginOverWetLimit", boiling - kind.WetDegC, "degC")]).As(kind.Of(boiling));
    }

    private static Outcome Stop(Given given)
    {
        var (speed, before) = (given[Speed], Stopping.Before(given[Speed], given.Maybe(Delay) ?? 0));
        if (given.Has(Deceleration) == given.Has(Stopped))
            return Outcome.Refuse(Deceleration, "Give either the deceleration or the distance.");
        if (given.Maybe(Stopped) <= before)
            return Outcome.Refuse(Delay, "Takes more than the whole distance.");
        var deceleration = given.Maybe(Deceleration) ?? Stopping.Deceleration(speed, given.Maybe(Stopped)!.Value - before);
        return Outcome.Of(
            Result.Of("distance", before + Stopping.Distance(speed, deceleration), "m"), Result.Of("deceleration", deceleration, "m/s2"),
            Result.Of("efficiency", Stopping.EfficiencyPercent(deceleration), "percent"));
    }

    private static Outcome Balance(Given given)
    {
        var imbalance = BrakeBalance.ImbalancePercent(given[Left], given[Right]);
        return Outcome.Of(Result.Of("imbalance", imbalance, "percent")).As(BrakeBalance.Of(imbalance))
            .Note(Math.Max(given[Left], given[Right]) == 0, Sentences.NeitherBrakes);
    }
}
