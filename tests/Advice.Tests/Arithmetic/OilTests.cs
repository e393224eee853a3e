using Advice.Arithmetic.Oils;
using CsCheck;

namespace Advice.Tests.Arithmetic;

public class OilTests
{
    /// <summary>ASTM D2270: procedure A, procedure B, and the equations above 70 mm²/s; the ATF row is a computed cross check.</summary>
    [Theory]
    [InlineData(73.30, 8.86, 92)]
    [InlineData(73.50, 8.86, 92)]
    [InlineData(22.83, 5.05, 156)]
    [InlineData(53.47, 7.80, 111)]
    [InlineData(1000, 100, 193)]
    [InlineData(34.5, 7.4, 189)]
    public void ViscosityIndex_D2270(double at40, double at100, double index) =>
        Assert.Equal(index, Computed.By("viscosity-index", ("viscosityAt40", at40), ("viscosityAt100", at100)).Number("viscosityIndex"));

    /// <summary>Rows of the printed table of L and H in ASTM D2270, one of each range of the equations.</summary>
    [Theory]
    [InlineData(2.0, 7.994, 6.394)]
    [InlineData(4.0, 25.32, 19.56)]
    [InlineData(4.7, 35.13, 25.63)]
    [InlineData(6.0, 57.97, 38.19)]
    [InlineData(6.5, 67.12, 43.18)]
    [InlineData(7.3, 84.53, 51.78)]
    [InlineData(8.0, 100.0, 59.60)]
    [InlineData(10.0, 147.7, 82.87)]
    [InlineData(14.0, 263.3, 135.4)]
    public void References_PrintedTable(double at100, double low, double high)
    {
        var (l, h) = ViscosityIndex.References(at100);
        Assert.Equal(1, l / low, 0.0015);
        Assert.Equal(1, h / high, 0.0015);
    }

    /// <summary>Rows of the printed table far up.</summary>
    [Theory]
    [InlineData(30, 1023)]
    [InlineData(40, 1730)]
    [InlineData(70, 4905)]
    public void References_ThickOils(double at100, double low) => Assert.Equal(1, ViscosityIndex.References(at100).L / low, 0.0015);

    /// <summary>ASTM D341: a worked line, which takes T = t + 273.</summary>
    [Fact]
    public void Walther_WorkedLine()
    {
        var line = Walther.Through((40, 32), (100, 5.4));

        Assert.Equal(9.5259, line.A, 0.01);
        Assert.Equal(3.7449, line.B, 0.01);
        Assert.Equal(8.5, line.At(80), 0.05);
    }

    /// <summary>Anchors computed from the equation for the oil of the D2270 example.</summary>
    [Theory]
    [InlineData(0, 1233.07)]
    [InlineData(20, 240.98)]
    [InlineData(60, 30.08)]
    [InlineData(120, 5.742)]
    public void Walther_Anchors(double degC, double viscosity) => Assert.Equal(1, Walther.Through((40, 73.3), (100, 8.86)).At(degC) / viscosity, 0.0005);

    /// <summary>SAE J300: the worked classification, and what each missing or failed test does to it.</summary>
    [Theory]
    [InlineData(10.5, 3.1, -30, 5500, -35, 20000, "2013", "5W-30")]
    [InlineData(10.5, 3.1, -35, 6200, -40, 60000, "2013", "0W-30")]
    [InlineData(10.5, 3.1, -35, 6201, -40, 60000, "2013", "30")]
    [InlineData(10.5, 3.1, -30, 5500, -40, 20000, "2013", "30")]
    [InlineData(10.5, 2.8, -30, 5500, -35, 20000, "2013", "5W")]
    [InlineData(12.5, 3.5, -25, 7000, -30, 60000, "2013", "10W-40")]
    [InlineData(12.5, 3.5, -20, 7000, -25, 60000, "2013", "15W")]
    [InlineData(12.5, 3.7, -20, 7000, -25, 60000, "2013", "15W-40")]
    [InlineData(12.499, 3.7, -20, 7000, -25, 60000, "2013", "15W-30")]
    [InlineData(7.5, 2.6, -30, 5500, -35, 20000, "2013", "5W-20")]
    [InlineData(7.5, 2.3, -30, 5500, -35, 20000, "2013", "5W-16")]
    [InlineData(6.0, 1.7, -30, 5500, -35, 20000, "2013", "5W-8")]
    public void Grade_J300(double at100, double sheared, double crankAt, double crank, double pumpAt, double pump, string edition, string grade) =>
        Assert.Equal(grade, OilClassification.Grade(at100, sheared, [(crankAt, crank)], [(pumpAt, pump)], edition).ToString());

    /// <summary>SAE J300 by edition: SAE 20 began at 5.6 before 2013, the light SAE 40 needed 2.9 before 2007.</summary>
    [Theory]
    [InlineData(6.0, 2.7, "1999", "5W-20")]
    [InlineData(6.0, 2.7, "2007", "5W-20")]
    [InlineData(6.0, 2.7, "2013", "5W-12")]
    [InlineData(13.0, 3.0, "1999", "5W-40")]
    [InlineData(13.0, 3.0, "2007", "5W")]
    [InlineData(13.0, 3.0, "2013", "5W")]
    public void Grade_DependsOnTheEdition(double at100, double sheared, string edition, string grade) =>
        Assert.Equal(grade, OilClassification.Grade(at100, sheared, [(-30, 5500)], [(-35, 20000)], edition).ToString());

    [Theory]
    [InlineData("5W-30", -30, 35, "suits")]
    [InlineData("5W-30", -31, 35, "does-not-suit")]
    [InlineData("5W-30", -10, 45, "does-not-suit")]
    [InlineData("10W-40", -10, 45, "suits")]
    [InlineData("SAE 40", -5, 45, "does-not-suit")]
    public void Weather(string grade, double lowest, double highest, string verdict) =>
        Assert.Equal(verdict, Computed.By("oil-for-weather", ("lowest", lowest), ("highest", highest), ("grade", grade)).Verdict);

    [Theory]
    [InlineData("5w30", "5W-30", "named")]
    [InlineData("10W-30", "5W-30", "stiffer-in-cold")]
    [InlineData("0W-30", "5W-30", "easier-in-cold")]
    [InlineData("0W-20", "5W-30", "thinner-when-hot")]
    [InlineData("5W-40", "5W-30", "thicker-when-hot")]
    [InlineData("30", "5W-30", "stiffer-in-cold")]
    public void Comparison(string inSump, string named, string verdict) =>
        Assert.Equal(verdict, Computed.By("oil-comparison", ("inSump", inSump), ("named", named)).Verdict);

    [Theory]
    [InlineData("7W-30")]
    [InlineData("75W-90")]
    public void Comparison_NoGradeOfJ300_IsRefused(string grade) =>
        Assert.Equal("inSump", Computed.By("oil-comparison", ("inSump", grade), ("named", "5W-30")).Refused!.Name);

    /// <summary>Worked answer for Stokes' law: 205 mg, radius 1.85 mm, 3.9 cm/s, 1260 kg/m³; and a textbook ball in oil.</summary>
    [Theory]
    [InlineData(7729.5, 1260, 1.85, 0.039, 1.2372)]
    [InlineData(7700, 880, 1.25, 0.036, 0.645)]
    public void FallingBall_WorkedAnswers(double ball, double fluid, double radiusMm, double speed, double pascalSeconds) =>
        Assert.Equal(pascalSeconds, FallingBall.PascalSeconds(radiusMm / 1000, ball, fluid, speed), 0.0005);

    [Fact]
    public void FallingBall_DensityOfTheBall() => Assert.Equal(7729.5, FallingBall.Density(205e-6, 1.85e-3), 0.1);

    /// <summary>The line goes through both points, and hotter oil is thinner.</summary>
    [Fact]
    public void Walther_Laws() => Gen.Select(Gen.Double[10, 500], Gen.Double[2, 9], Gen.Double[-20, 150]).Sample((at40, at100, degC) =>
    {
        var line = Walther.Through((40, at40), (100, at100));
        Assert.Equal(at40, line.At(40), 6);
        Assert.Equal(at100, line.At(100), 6);
        Assert.True(line.At(degC) > line.At(degC + 1));
    });
}
