using Advice.Arithmetic.Cylinders;
using Advice.Arithmetic.Diagnostics;
using Advice.Arithmetic.Mixtures;
using Advice.Arithmetic.OxygenSensors;

namespace Advice.Tests.Arithmetic;

public class MixtureTests
{
    /// <summary>Nernst equation at 700 °C.</summary>
    [Theory]
    [InlineData(0.2095, 0.0)]
    [InlineData(0.05, 30.0)]
    [InlineData(0.01, 63.8)]
    [InlineData(1e-3, 112.1)]
    [InlineData(1e-10, 450.0)]
    [InlineData(1e-15, 691.3)]
    [InlineData(1e-20, 932.7)]
    public void Nernst(double atmospheres, double millivolts)
    {
        Assert.Equal(millivolts, NernstCell.Millivolts(700, atmospheres), 0.06);
        Assert.Equal(1, NernstCell.Exhaust(700, NernstCell.Millivolts(700, atmospheres)) / atmospheres, 9);
    }

    [Theory]
    [InlineData(600, 43.31)]
    [InlineData(700, 48.27)]
    [InlineData(800, 53.23)]
    public void Nernst_Slope(double degC, double millivolts) => Assert.Equal(millivolts, NernstCell.MillivoltsPerDecade(degC), 0.006);

    /// <summary>Brettschneider: the worked example, and anchors computed with the same constants.</summary>
    [Theory]
    [InlineData(1.2, 13.5, 45, 0.3, 0.976)]
    [InlineData(0.3, 15.0, 100, 0.5, 1.010)]
    [InlineData(0.0, 15.4, 0, 0.0, 1.000)]
    [InlineData(0.5, 14.5, 200, 2.5, 1.094)]
    [InlineData(3.5, 12.0, 1200, 0.5, 0.879)]
    public void Lambda_Brettschneider(double co, double co2, double hydrocarbons, double o2, double lambda) =>
        Assert.Equal(lambda, ExhaustLambda.Of(co, co2, hydrocarbons, o2), 0.0006);

    /// <summary>Mass balance with 0.2314 oxygen in air; blends by mass.</summary>
    [Theory]
    [InlineData("methane", 17.24)]
    [InlineData("propane", 15.68)]
    [InlineData("ethanol", 9.005)]
    [InlineData("methanol", 6.473)]
    [InlineData("hydrogen", 34.3)]
    [InlineData("iso-octane", 15.13)]
    [InlineData("diesel", 14.5)]
    [InlineData("e10", 14.1)]
    [InlineData("e15", 13.8)]
    [InlineData("e85", 9.82)]
    public void Stoichiometric(string fuel, double ratio) => Assert.Equal(1, Fuel.All.Single(one => one.Name == fuel).Stoichiometric / ratio, 0.0035);

    /// <summary>The composition of gasoline gives 14.6, near the 14.7 of convention.</summary>
    [Fact]
    public void Stoichiometric_Gasoline() => Assert.Equal(14.6, Fuel.Ratio(1, 1.87, 0), 0.05);

    /// <summary>SAE J1979, parameters 06 … 09.</summary>
    [Theory]
    [InlineData(0, -100)]
    [InlineData(64, -50)]
    [InlineData(96, -25)]
    [InlineData(112, -12.5)]
    [InlineData(128, 0)]
    [InlineData(144, 12.5)]
    [InlineData(160, 25)]
    [InlineData(255, 99.22)]
    public void Trim_OfByte(int value, double percent) => Assert.Equal(percent, FuelTrim.OfByte(value), 0.005);

    [Theory]
    [InlineData(10.0, 10.0, null, null, "within")]
    [InlineData(10.1, null, null, null, "lean")]
    [InlineData(-15.0, null, null, null, "rich")]
    [InlineData(15.0, 12.0, null, null, "lean-both-banks")]
    [InlineData(-15.0, -12.0, null, null, "rich-both-banks")]
    [InlineData(15.0, 2.0, null, null, "lean-bank-1")]
    [InlineData(2.0, -20.0, null, null, "rich-bank-2")]
    [InlineData(15.0, -12.0, null, null, "mixed")]
    [InlineData(18.0, 16.0, 3.0, 2.0, "lean-at-idle")]
    [InlineData(3.0, 2.0, 18.0, 16.0, "lean-under-load")]
    [InlineData(18.0, 16.0, 18.0, 16.0, "lean-both-banks")]
    [InlineData(18.0, 2.0, 3.0, 2.0, "lean-bank-1")]
    [InlineData(-18.0, null, 3.0, null, "rich-at-idle")]
    [InlineData(-18.0, null, 18.0, null, "mixed")]
    public void Trims_Pattern(double first, double? second, double? cruise1, double? cruise2, string pattern) =>
        Assert.Equal(pattern, FuelTrim.Pattern([first, .. second is { } two ? [two] : Array.Empty<double>()], [.. new[] { cruise1, cruise2 }.OfType<double>()]));

    /// <summary>SAE J2012 packing.</summary>
    [Theory]
    [InlineData(0x01, 0x04, "P0104")]
    [InlineData(0x41, 0x23, "C0123")]
    [InlineData(0x80, 0x03, "B0003")]
    [InlineData(0xC1, 0x00, "U0100")]
    [InlineData(0x3A, 0xBC, "P3ABC")]
    [InlineData(0x00, 0x00, null)]
    public void TroubleCode_OfBytes(int first, int second, string? code) => Assert.Equal(code, TroubleCodeBytes.Code(first, second));

    /// <summary>Highest 150 psi: 105 under the 70 % rule of a maker, 112.5 under the 75 % of TM 5-4210-230-14&amp;P-1; never below 100.</summary>
    [Theory]
    [InlineData(150, 105, 112.5)]
    [InlineData(130, 100, 97.5)]
    public void Compression_Rules(double highest, double milder, double stricter)
    {
        Assert.Equal(milder, Compression.LeastByMilderRule(highest * 6.894757) / 6.894757, 0.001);
        Assert.Equal(stricter, Compression.LeastByStricterRule(highest), 9);
    }

    [Theory]
    [InlineData("even", 150.0, 145.0, 140.0, 150.0)]
    [InlineData("doubtful", 150.0, 108.0, 140.0, 150.0)]
    [InlineData("uneven", 150.0, 104.0, 140.0, 150.0)]
    [InlineData("uneven-neighbours", 150.0, 90.0, 85.0, 150.0)]
    [InlineData("uneven", 90.0, 150.0, 85.0, 150.0)]
    [InlineData("low-overall", 90.0, 92.0, 95.0, 91.0)]
    [InlineData("doubtful", 110.0, 95.0, 110.0, 112.0)]
    public void Compression_Verdict(string verdict, params double[] psi) => Assert.Equal(verdict, Compression.Of([.. psi.Select(one => one * 6.894757)]));

    [Theory]
    [InlineData("sound", 5.0, 8.0, 4.0, 6.0)]
    [InlineData("worn", 12.0, 15.0, 9.0, 11.0)]
    [InlineData("uneven", 3.0, 15.0, 4.0, 5.0)]
    [InlineData("leaking", 5.0, 35.0, 6.0, 5.0)]
    public void LeakDown_Verdict(string verdict, params double[] percent) => Assert.Equal(verdict, LeakDown.Of(percent));
}
