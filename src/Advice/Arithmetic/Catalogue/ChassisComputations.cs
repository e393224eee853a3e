using Advice.Arithmetic.Damping;
using Advice.Arithmetic.Drivelines;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Dampers and drive shafts.</summary>
internal static class ChassisComputations
{
    private static readonly string[] Classes = ["sound", "doubtful", "weak"];
    private static readonly NumberInput Rebounds = new("rebounds", "times that the corner swings back up after the first rise, until no motion is seen", null, 0, 20);
    private static readonly NumberInput First = new("first", "an amplitude, measured from rest", "mm", 0.01, 1000);
    private static readonly NumberInput Last = new("last", "the amplitude some cycles later", "mm", 0.001, 1000);
    private static readonly NumberInput Cycles = new("cycles", "whole cycles between the two: one less than the peaks counted", null, 1, 1000);
    private static readonly PointsInput Trace = new("trace", "height of the corner over time, from release until it rests",
        new("seconds", "time", null, 0, 60), new("millimetres", "height", null, -1000, 1000), 20, 5000, Ascending: true);

    private static readonly NumberInput Mass = new("mass", "mass that swings", "kg", 0.01, 50_000);
    private static readonly NumberInput Stiffness = new("stiffness", "stiffness of the spring", "N/m", 1, 10_000_000);
    private static readonly NumberInput Damper = new("damping", "force of the damper for each m/s", "N.s/m", 0, 1_000_000);
    private static readonly NumberInput Front = new("firstAngle", "angle of the first joint in side view", "deg", 0, 30);
    private static readonly NumberInput Rear = new("secondAngle", "angle of the second joint in side view, yokes in phase", "deg", 0, 30) { Optional = true };
    private static readonly NumberInput FrontPlan = new("firstAngleInPlan", "angle of the first joint seen from above; left out = 0", "deg", 0, 30) { Optional = true };
    private static readonly NumberInput RearPlan = new("secondAngleInPlan", "the same of the second", "deg", 0, 30) { Optional = true };

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("damper-rebounds", "Damping from the rebounds of a corner that was pushed down", "the eye loses the motion at a tenth: δ = ln 10 / n, ζ = δ / √(4π² + δ²)",
            [From.CommonPractice, From.Estimate("the bounds 0.20 and 0.30 and the tenth")], [Rebounds], Bounce)
        { Verdicts = Classes },
        new("damper-decrement", "Damping from two amplitudes", "δ = ln(x₀ / xₙ) / n, ζ = δ / √(4π² + δ²)", [From.Restated("textbook of vibration"), From.Estimate("the bounds 0.20 and 0.30")],
            [First, Last, Cycles], given => given[Last] >= given[First]
                ? Outcome.Refuse(Last, "Must be below the first amplitude.")
                : Damped(Decrement.FromAmplitudes(given[First], given[Last], given[Cycles])))
        { Verdicts = Classes },
        new("damper-trace", "Damping from the trace of a free swing", "line through the logarithms of the extremes about rest; δ is twice its fall for each swing",
            [From.Restated("textbook of vibration"), From.Estimate("the bounds 0.20 and 0.30")], [Trace], Swing)
        { Verdicts = Classes },
        new("damping-ratio", "Damping ratio of a mass on a spring and a damper", "ζ = c / (2 √(k m)), δ = 2πζ / √(1 − ζ²)",
            [From.Restated("Khurmi and Gupta, Theory of Machines", "chapter 23")], [Mass, Stiffness, Damper], Ratio),
        new("driveline-angle", "Unevenness of a drive shaft from the angles of its joints", "fastest − slowest = 1 / cos β − cos β; two joints in phase act like one at √|β₁² − β₂²|",
            [From.Memory("textbooks of the theory of machines", "Hooke's joint"), From.CommonPractice], [Front, Rear, FrontPlan, RearPlan], Angles)
        { Verdicts = ["smooth", "uneven"] },
    ];


    private static Outcome Bounce(Given given) => given[Rebounds] switch
    {
        var count when count != Math.Floor(count) => Outcome.Refuse(Rebounds, "Must be a whole number."),
        0 => Outcome.Of().As("sound").Note(true, Sentences.SettlesAtOnce).Note(true, Sentences.BounceSaysLittle),
        var count => Damped(Math.Log(10) / count).Note(true, Sentences.BounceSaysLittle),
    };

    private static Outcome Damped(double decrement)
    {
        var ratio = Decrement.Ratio(decrement);
        return Outcome.Of(Result.Of("decrement", decrement), Result.Of("dampingRatio", ratio), Result.Of("cyclesToTenth", Decrement.CyclesToTenth(ratio)))
            .As(DampingClass.Of(ratio)).Note(ratio > 0.5, Sentences.DecrementTellsLittle);
    }

    private static Outcome Swing(Given given)
    {
        var trace = ReboundTrace.Of(given[Trace]);
        if (trace.Extremes.Count == 0)
            return Outcome.Refuse(Trace, "The corner does not move in this trace.");
        if (trace.Decrement is not { } decrement)
            return Outcome.Of(Result.Of("extremes", trace.Extremes.Count)).As("sound").Note(true, Sentences.SettlesWithoutSwing);
        if (decrement <= 0)
            return Outcome.Refuse(Trace, "The swing does not die down; the trace must end at rest.");
        var damped = Damped(decrement).Note(true, Sentences.BounceSaysLittle);
        return damped with { Results = [.. damped.Results, Result.Of("extremes", trace.Extremes.Count), Result.Of("frequency", trace.Hertz!.Value, "Hz")] };
    }

    private static Outcome Ratio(Given given)
    {
        var critical = Decrement.Critical(given[Mass], given[Stiffness]);
        var ratio = given[Damper] / critical;
        List<Result> results = [Result.Of("criticalDamping", critical, "N.s/m"), Result.Of("dampingRatio", ratio)];
        if (ratio < 1)
            results.Add(Result.Of("decrement", Decrement.OfRatio(ratio)));
        return Outcome.Of(results).Note(ratio >= 1, Sentences.NoDecrement);
    }

    private static Outcome Angles(Given given)
    {
        var first = UniversalJoint.TrueAngle(given[Front], given.Maybe(FrontPlan) ?? 0);
        var second = UniversalJoint.TrueAngle(given.Maybe(Rear) ?? 0, given.Maybe(RearPlan) ?? 0);
        var residual = UniversalJoint.Residual(first, second);
        return Outcome.Of(
            Result.Of("firstJoint", first, "deg"), Result.Of("secondJoint", second, "deg"), Result.Of("residualAngle", residual, "deg"),
            Result.Of("fluctuation", UniversalJoint.FluctuationPercent(residual), "percent"))
            .As(residual > 3 ? "uneven" : "smooth")
            .Note(true, Sentences.JointResidual)
            .Note(given.Has(FrontPlan) || given.Has(RearPlan), Sentences.JointPlanes);
    }
}
