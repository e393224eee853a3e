using Advice.Arithmetic.OxygenSensors;
using CsCheck;

namespace Advice.Tests.Arithmetic;

public class OxygenSensorTests
{
    [Theory]
    [InlineData("switching", 0.1, 0.9, 1.0, 0.05)]
    [InlineData("lazy", 0.1, 0.9, 0.2, 0.05)]
    [InlineData("lazy", 0.1, 0.9, 0.6, 0.6)]
    [InlineData("stuck-lean", 0.05, 0.2, 1.0, 0.05)]
    [InlineData("stuck-rich", 0.75, 0.9, 1.0, 0.05)]
    [InlineData("inactive", 0.43, 0.47, 1.0, 0.05)]
    [InlineData("narrow", 0.2, 0.55, 1.0, 0.05)]
    public void Verdict_OfATrapezoid(string verdict, double low, double high, double hertz, double ramp) =>
        Assert.Equal(verdict, SensorTrace.Of(Trapezoid(low, high, hertz, ramp, 20)).Verdict);

    /// <summary>A cold cell that wakes up late points at its heater.</summary>
    [Fact]
    public void Verdict_ColdFirst_IsLate()
    {
        var cold = Enumerable.Range(0, 900).Select(i => (i * 0.1, 0.45));
        var awake = Trapezoid(0.1, 0.9, 1, 0.05, 20).Select(point => (point.Seconds + 90, point.Volts));

        var trace = SensorTrace.Of([.. cold, .. awake]);

        Assert.Equal("late", trace.Verdict);
        Assert.Equal(90, trace.FirstActive!.Value, 0.1);
    }

    /// <summary>What is known of a trapezoid comes back: its switches, mean, bounds and the time between the two voltages.</summary>
    [Fact]
    public void Trace_OfATrapezoid_GivesItsNumbers() => Gen.Select(Gen.Double[0.3, 2], Gen.Double[0.04, 0.12]).Sample((hertz, ramp) =>
    {
        var trace = SensorTrace.Of(Trapezoid(0.1, 0.9, hertz, ramp, 20));

        Assert.Equal(2 * hertz * 20, trace.Switches, 2.01);
        Assert.Equal(0.5, trace.Mean, 0.03);
        Assert.Equal(0.8, trace.Swing, 9);
        Assert.Equal(ramp * 0.3 / 0.8, trace.Crossing!.Value, 0.011);
    });

    /// <summary>A square wave with these ramps, sampled each 10 ms.</summary>
    private static List<(double Seconds, double Volts)> Trapezoid(double low, double high, double hertz, double ramp, double seconds)
    {
        var half = 0.5 / hertz;
        return [.. Enumerable.Range(0, (int)(seconds / 0.01)).Select(i => i * 0.01).Select(t =>
        {
            var turn = (int)(t / half);
            var within = t - (turn * half);
            var (from, to) = turn % 2 == 0 ? (low, high) : (high, low);
            return (t, from + ((to - from) * Math.Clamp(within / ramp, 0, 1)));
        })];
    }
}
