using Advice.Arithmetic.BrakeFluids;
using Advice.Arithmetic.Braking;
using Advice.Findings;

namespace Advice.Tests.Arithmetic;

public class BrakeTests
{
    /// <summary>American Samoa Code 22.1109: distances at 11.6 ft/s², within 0.4 %.</summary>
    [Theory]
    [InlineData(10, 9.3)]
    [InlineData(15, 20.8)]
    [InlineData(20, 37.0)]
    [InlineData(25, 58.0)]
    [InlineData(30, 83.3)]
    public void Distance_AmericanSamoa(double mph, double feet)
    {
        var distance = Stopping.Distance(UnitConversion.Convert(mph, "mph", "m/s")!.Value, UnitConversion.Convert(11.6, "ft/s2", "m/s2")!.Value);
        Assert.Equal(1, UnitConversion.Convert(distance, "m", "ft")!.Value / feet, 0.005);
    }

    /// <summary>67 Pa. Code chapter 175, table I: deceleration and force; the copy that was read prints 3.4 % where 43.5 % is meant. StVZO § 41.</summary>
    [Theory]
    [InlineData(21, "ft/s2", 65.2)]
    [InlineData(17, "ft/s2", 52.8)]
    [InlineData(14, "ft/s2", 43.5)]
    [InlineData(5.0, "m/s2", 51.0)]
    [InlineData(1.5, "m/s2", 15.3)]
    public void Efficiency_Published(double deceleration, string unit, double percent) =>
        Assert.Equal(percent, Stopping.EfficiencyPercent(UnitConversion.Convert(deceleration, unit, "m/s2")!.Value), 0.08);

    /// <summary>The same table: 21 ft/s² from 20 mph needs more than the 20 ft that it allows.</summary>
    [Fact]
    public void Distance_LimitsOfOneRow_AreNotEquivalent()
    {
        var distance = Stopping.Distance(UnitConversion.Convert(20, "mph", "m/s")!.Value, UnitConversion.Convert(21, "ft/s2", "m/s2")!.Value);
        Assert.Equal(20.49, UnitConversion.Convert(distance, "m", "ft")!.Value, 2);
    }

    /// <summary>49 CFR 571.135 S7.5 (from memory): 70 m from 100 km/h is a mean of 5.51 m/s².</summary>
    [Fact]
    public void Deceleration_ColdEffectiveness() =>
        Assert.Equal(5.51, Computed.By("stopping-distance", ("speed", 100 / 3.6), ("distance", 70.0)).Number("deceleration"), 2);

    [Fact]
    public void Distance_WithDelay_IsLonger() =>
        Assert.Equal(20 + 40, Computed.By("stopping-distance", ("speed", 20.0), ("deceleration", 5.0), ("delay", 1.0)).Number("distance"), 6);

    /// <summary>UK roller test: fails above 25 % until 23 June 2013 and above 30 % after.</summary>
    [Theory]
    [InlineData(1000, 720, 28, "over-25")]
    [InlineData(720, 1000, 28, "over-25")]
    [InlineData(1000, 760, 24, "within")]
    [InlineData(1000, 690, 31, "over-30")]
    [InlineData(1000, 400, 60, "over-50")]
    [InlineData(0, 0, 0, "within")]
    public void Imbalance_ByEdition(double left, double right, double percent, string verdict)
    {
        Assert.Equal(percent, BrakeBalance.ImbalancePercent(left, right), 6);
        Assert.Equal(verdict, BrakeBalance.Of(percent));
    }

    /// <summary>49 CFR 571.116 as restated, both sides of each limit.</summary>
    [Theory]
    [InlineData("DOT 3", 205, "as-new")]
    [InlineData("DOT 3", 204, "used")]
    [InlineData("DOT 3", 139, "below-wet-limit")]
    [InlineData("DOT 4", 205, "used")]
    [InlineData("DOT 4", 230, "as-new")]
    [InlineData("DOT 4", 154, "below-wet-limit")]
    [InlineData("DOT 5.1", 180, "used")]
    [InlineData("DOT 5", 179, "below-wet-limit")]
    public void Fluid_BoilingPoint(string kind, double degC, string verdict) =>
        Assert.Equal(verdict, Computed.By("brake-fluid", ("class", kind), ("boilingPoint", degC)).Verdict);

    /// <summary>DOT 3 with 1, 2 and 3 % water by trade figures: 369, 320 and 293 °F.</summary>
    [Theory]
    [InlineData(0, 205)]
    [InlineData(1, 187.2)]
    [InlineData(2, 160)]
    [InlineData(3, 145)]
    [InlineData(3.7, 140)]
    public void Fluid_Dot3WithWater(double water, double degC) => Assert.Equal(degC, BrakeFluidClass.All[0].EstimatedDegC(water), 0.3);

    [Fact]
    public void Fluid_SiliconeWithWater_IsRefused() => Assert.Equal("water", Computed.By("brake-fluid", ("class", "DOT 5"), ("water", 2.0)).Refused!.Name);
}
