using Advice.Arithmetic.Batteries;

namespace Advice.Tests.Arithmetic;

public class BatteryTests
{
    /// <summary>BCI table at 80 °F, and between its rows.</summary>
    [Theory]
    [InlineData(12.65, 100)]
    [InlineData(12.45, 75)]
    [InlineData(12.4, 69)]
    [InlineData(12.5, 81)]
    [InlineData(12.24, 50)]
    [InlineData(12.06, 25)]
    [InlineData(11.89, 0)]
    [InlineData(11.0, 0)]
    [InlineData(12.9, 100)]
    public void Charge_BciTable(double volts, double percent) => Assert.Equal(percent, OpenCircuit.ChargePercent(volts), 0.5);

    [Fact]
    public void Charge_OtherLadders_LieAround()
    {
        var (least, most) = OpenCircuit.ChargeRangePercent(12.4);
        Assert.Equal(200.0 / 3, least, 6);
        Assert.Equal(75, most, 6);
    }

    [Theory]
    [InlineData(80 / 3.0, 12.4)]
    [InlineData(0, 12.432)]
    [InlineData(40, 12.384)]
    public void Charge_Cold_CountsHigher(double degC, double atReference) => Assert.Equal(atReference, OpenCircuit.AtReference(12.4, degC), 3);

    /// <summary>Worked examples of two makers for the rule of TM 5-4210-230-14&amp;P-1.</summary>
    [Theory]
    [InlineData(1.250, 20, 1.226)]
    [InlineData(1.235, 100, 1.243)]
    [InlineData(1.250, 90, 1.254)]
    [InlineData(1.250, 70, 1.246)]
    public void Gravity_WorkedExamples(double reading, double degF, double corrected) => Assert.Equal(corrected, SpecificGravity.At80DegF(reading, degF), 9);

    /// <summary>BCI load-test table, and between its rows.</summary>
    [Theory]
    [InlineData(70, 9.6)]
    [InlineData(50, 9.4)]
    [InlineData(35, 9.2)]
    [InlineData(30, 9.1)]
    [InlineData(0, 8.5)]
    [InlineData(100, 9.6)]
    public void LoadTest_BciTable(double degF, double volts) => Assert.Equal(volts, LoadTest.LeastVolts(degF), 9);

    [Theory]
    [InlineData("cranking-voltage", 9.5, 10.0, "holds")]
    [InlineData("cranking-voltage", 9.3, 10.0, "drops")]
    [InlineData("battery-load-test", 9.3, 4.4, "holds")]
    public void Load_AgainstTheTableOfItsTemperature(string name, double volts, double degC, string verdict) =>
        Assert.Equal(verdict, Computed.By(name, ("voltage", volts), ("temperature", degC)).Verdict);

    [Theory]
    [InlineData(12.5, "none")]
    [InlineData(13.1, "too-low")]
    [InlineData(13.5, "low")]
    [InlineData(13.8, "usual")]
    [InlineData(14.8, "usual")]
    [InlineData(15.2, "high")]
    public void Charging_Bands(double volts, string verdict) => Assert.Equal(verdict, Charging.Of(volts));

    [Theory]
    [InlineData("cranking", 0.5, "good")]
    [InlineData("cranking", 0.51, "high")]
    [InlineData("ground", 0.3, "high")]
    public void Drop_TradeLimits(string circuit, double volts, string verdict)
    {
        var lost = Computed.By("voltage-drop", ("circuit", circuit), ("drop", volts), ("current", 150.0));

        Assert.Equal(verdict, lost.Verdict);
        Assert.Equal(volts / 0.15, lost.Number("resistance"), 2);
        Assert.Equal(volts * 150, lost.Number("heat"), 3);
    }

    [Theory]
    [InlineData(1.265, "even")]
    [InlineData(1.24, "doubtful")]
    [InlineData(1.2, "weak-cell")]
    public void Cells_FourManuals(double weakest, string verdict) =>
        Assert.Equal(verdict, Computed.By("battery-cells", ("cells", new List<double> { 1.265, 1.27, weakest })).Verdict);
}
