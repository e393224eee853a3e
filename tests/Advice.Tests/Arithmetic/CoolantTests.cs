using Advice.Arithmetic.Coolants;
using CsCheck;

namespace Advice.Tests.Arithmetic;

public class CoolantTests
{
    /// <summary>ASHRAE Handbook Fundamentals 2001; 50 % and -20 °C lie between rows.</summary>
    [Theory]
    [InlineData(8.9, -3.2)]
    [InlineData(27.7, -14.1)]
    [InlineData(47.6, -33.8)]
    [InlineData(50, -37.0)]
    [InlineData(57.8, -48.3)]
    [InlineData(35.17, -20.0)]
    public void Ethylene_AshraeTable(double percent, double degC)
    {
        Assert.Equal(degC, Glycol.Ethylene.FreezesAt(percent), 0.05);
        Assert.Equal(percent, Glycol.Ethylene.PercentFor(degC), 0.05);
    }

    /// <summary>The same for propylene glycol.</summary>
    [Theory]
    [InlineData(9.6, -3.3)]
    [InlineData(29.4, -12.7)]
    [InlineData(49.9, -33.5)]
    [InlineData(60, -51.1)]
    public void Propylene_AshraeTable(double percent, double degC) => Assert.Equal(degC, Glycol.Propylene.FreezesAt(percent), 9);

    /// <summary>Lange's Handbook of Chemistry, 15th edition, table 5.13: another source agrees within half a kelvin.</summary>
    [Theory]
    [InlineData(20, -6.7)]
    [InlineData(30, -12.8)]
    [InlineData(40, -20.6)]
    [InlineData(50, -33.3)]
    public void Propylene_Lange(double percent, double degC) => Assert.Equal(degC, Glycol.Propylene.FreezesAt(percent), 1.0);

    /// <summary>ASTM D3306 table 2 (from memory): a half-and-half mixture freezes at -36.4 °C or lower.</summary>
    [Fact]
    public void Ethylene_HalfAndHalf_MeetsD3306() => Assert.True(Glycol.Ethylene.FreezesAt(50) <= -36.4);

    [Fact]
    public void ThereAndBack_IsTheSame() => Gen.Select(Gen.Double[0, 57.8], Gen.Bool).Sample((percent, ethylene) =>
    {
        var glycol = ethylene ? Glycol.Ethylene : Glycol.Propylene;
        Assert.Equal(percent, glycol.PercentFor(glycol.FreezesAt(percent)), tolerance: 1e-6);
    });

    [Fact]
    public void Replace_EightLitres() => Assert.Equal(2.286, DrainAndFill.Litres(8, 30, 50, 100), 3);

    /// <summary>What was replaced brings the target about.</summary>
    [Fact]
    public void Replace_ThenMix_IsTheTarget() => Gen.Select(Gen.Double[1, 30], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 100]).Sample((capacity, present, target, fill) =>
    {
        if (!DrainAndFill.IsPossible(present, target, fill))
            return;
        var litres = DrainAndFill.Litres(capacity, present, target, fill);
        Assert.InRange(litres, 0, capacity + 1e-9);
        Assert.Equal(target, (((capacity - litres) * present) + (litres * fill)) / capacity, tolerance: 1e-6);
    });

    [Theory]
    [InlineData(30.0, 50.0, 40.0, "fill")]
    [InlineData(30.0, 20.0, 40.0, "fill")]
    public void Replace_ImpossibleFill_IsRefused(double present, double target, double fill, string refused) =>
        Assert.Equal(refused, Computed.By("coolant-drain-and-fill", ("capacity", 8.0), ("present", present), ("target", target), ("fill", fill)).Refused!.Name);

    [Fact]
    public void FreezePoint_BeyondTheTable_IsRefused() =>
        Assert.Equal("concentration", Computed.By("coolant-freeze-point", ("glycol", "ethylene"), ("concentration", 59.0)).Refused!.Name);
}
