using Advice.Arithmetic.Damping;
using Advice.Arithmetic.Drivelines;
using CsCheck;

namespace Advice.Tests.Arithmetic;

public class DampingTests
{
    /// <summary>Khurmi and Gupta, Theory of Machines, chapter 23: 8 kg, 5.4 N/mm, 40 N/(m/s).</summary>
    [Fact]
    public void Ratio_TheoryOfMachines()
    {
        var outcome = Computed.By("damping-ratio", ("mass", 8.0), ("stiffness", 5400.0), ("damping", 40.0));

        Assert.Equal(416, outcome.Number("criticalDamping"), 0.5);
        Assert.Equal(0.096, outcome.Number("dampingRatio"), 0.0005);
        Assert.Equal(0.607, outcome.Number("decrement"), 0.0005);
        Assert.Equal(1.836, Math.Exp(outcome.Number("decrement")), 0.001);
    }

    /// <summary>Peak ratio for each cycle, and the cycles that a tenth takes: computed from the definition elsewhere.</summary>
    [Theory]
    [InlineData(2, 0.1097)]
    [InlineData(3, 0.1722)]
    [InlineData(5, 0.2481)]
    [InlineData(10, 0.3441)]
    [InlineData(20, 0.4304)]
    public void Ratio_OfPeaks(double peaks, double ratio) => Assert.Equal(ratio, Decrement.Ratio(Decrement.FromAmplitudes(peaks, 1, 1)), 0.00006);

    [Theory]
    [InlineData(0.05, 7.32)]
    [InlineData(0.10, 3.65)]
    [InlineData(0.20, 1.80)]
    [InlineData(0.25, 1.42)]
    [InlineData(0.30, 1.17)]
    [InlineData(0.40, 0.84)]
    public void CyclesToTenth(double ratio, double cycles) => Assert.Equal(cycles, Decrement.CyclesToTenth(ratio), 0.006);

    /// <summary>The 100th amplitude is 13 % of the first: 99 cycles lie between them, not 100.</summary>
    [Theory]
    [InlineData(99, 0.0206)]
    [InlineData(100, 0.0204)]
    public void Decrement_CountsCyclesNotPeaks(double cycles, double decrement) => Assert.Equal(decrement, Decrement.FromAmplitudes(100, 13, cycles), 0.00005);

    [Theory]
    [InlineData(0, "sound")]
    [InlineData(1, "sound")]
    [InlineData(2, "weak")]
    [InlineData(4, "weak")]
    public void Rebounds(double count, string verdict) => Assert.Equal(verdict, Computed.By("damper-rebounds", ("rebounds", count)).Verdict);

    [Fact]
    public void Rebounds_Half_IsRefused() => Assert.Equal("rebounds", Computed.By("damper-rebounds", ("rebounds", 1.5)).Refused!.Name);

    /// <summary>The free swing of the equation of motion gives back its own ratio and frequency.</summary>
    [Fact]
    public void Trace_OfAKnownSwing_GivesItsRatio() => Gen.Select(Gen.Double[0.03, 0.45], Gen.Double[0.8, 3], Gen.Double[-50, 50]).Sample((ratio, hertz, rest) =>
    {
        var trace = ReboundTrace.Of(Swing(ratio, hertz, rest, 60));

        Assert.Equal(ratio, Decrement.Ratio(trace.Decrement!.Value), 0.02);
        Assert.Equal(1, trace.Hertz!.Value / (hertz * Math.Sqrt(1 - (ratio * ratio))), 0.05);
    });

    [Theory]
    [InlineData(0.10, "weak")]
    [InlineData(0.25, "doubtful")]
    [InlineData(0.40, "sound")]
    [InlineData(0.95, "sound")]
    public void Trace_Verdict(double ratio, string verdict) => Assert.Equal(verdict, Computed.By("damper-trace", ("trace", Swing(ratio, 1.5, 0, 60))).Verdict);

    [Fact]
    public void Trace_WithoutMotion_IsRefused() =>
        Assert.Equal("trace", Computed.By("damper-trace", ("trace", Enumerable.Range(0, 30).Select(i => (i / 10.0, 5.0)).ToList())).Refused!.Name);

    /// <summary>The kinematics of a joint at 30 degrees: the driven shaft turns between 0.866 and 1.1547 times as fast.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 3.062)]
    [InlineData(30, 28.868)]
    public void Joint_Fluctuation(double degrees, double percent) => Assert.Equal(percent, UniversalJoint.FluctuationPercent(degrees), 0.001);

    /// <summary>Against the motion itself: tan φ = cos β · tan θ, differentiated numerically over a turn.</summary>
    [Fact]
    public void Joint_Fluctuation_IsThatOfTheMotion() => Gen.Double[1, 29].Sample(degrees =>
    {
        var cos = Math.Cos(degrees * Math.PI / 180);
        var speeds = Enumerable.Range(0, 3600).Select(i => i * Math.PI / 1800)
            .Select(angle => cos / (1 - (Math.Pow(Math.Sin(degrees * Math.PI / 180), 2) * Math.Pow(Math.Cos(angle), 2)))).ToList();
        Assert.Equal(100 * (speeds.Max() - speeds.Min()), UniversalJoint.FluctuationPercent(degrees), 0.01);
    });

    [Theory]
    [InlineData(4.0, 4.0, "smooth")]
    [InlineData(6.0, 2.0, "uneven")]
    public void Joints_EqualAngles_Cancel(double first, double second, string verdict) =>
        Assert.Equal(verdict, Computed.By("driveline-angle", ("firstAngle", first), ("secondAngle", second)).Verdict);

    private static List<(double Seconds, double Millimetres)> Swing(double ratio, double hertz, double rest, int samplesPerSecond)
    {
        var natural = 2 * Math.PI * hertz;
        var (damped, seconds) = (natural * Math.Sqrt(1 - (ratio * ratio)), 10 / (ratio * natural));
        return [.. Enumerable.Range(0, 2 * samplesPerSecond * (int)Math.Ceiling(seconds)).Select(i => i / (2.0 * samplesPerSecond)).Select(t =>
            (t, rest - (60 * Math.Exp(-ratio * natural * t) * (Math.Cos(damped * t) + (ratio * natural / damped * Math.Sin(damped * t))))))];
    }
}
