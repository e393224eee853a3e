using Advice.Arithmetic.Tyres;
using Advice.Findings;

namespace Advice.Tests.Arithmetic;

public class TyreTests
{
    /// <summary>Worked examples of tyre sizes.</summary>
    [Theory]
    [InlineData("245/55R18", 726.7)]
    [InlineData("205/55R16", 631.9)]
    [InlineData("225/45R17", 634.3)]
    [InlineData("P245/55 R18 103V", 726.7)]
    public void Diameter(string size, double millimetres) => Assert.Equal(millimetres, TyreSize.Read(size)!.DiameterMm, 0.06);

    [Fact]
    public void SpeedError_WorkedExample() =>
        Assert.Equal(0.38, Computed.By("tyre-size", ("size", "205/55R16"), ("fitted", "225/45R17")).Number("speedError"), 0.005);

    [Theory]
    [InlineData("205/55")]
    [InlineData("205/55R99")]
    [InlineData("205/05R16")]
    [InlineData("")]
    public void Size_OfNoForm_IsNone(string size) => Assert.Null(TyreSize.Read(size));

    /// <summary>ISO 4000-1 (ETRTO), the rows that could be read.</summary>
    [Theory]
    [InlineData(71, 345)]
    [InlineData(75, 387)]
    [InlineData(80, 450)]
    [InlineData(82, 475)]
    [InlineData(85, 515)]
    [InlineData(88, 560)]
    [InlineData(91, 615)]
    [InlineData(94, 670)]
    [InlineData(97, 730)]
    [InlineData(98, 750)]
    [InlineData(100, 800)]
    [InlineData(103, 875)]
    [InlineData(105, 925)]
    [InlineData(108, 1000)]
    [InlineData(110, 1060)]
    public void Load_Table(int index, int kilograms) => Assert.Equal(kilograms, LoadIndex.Kilograms(index));

    /// <summary>The rows from memory cannot be far off: the table follows 45 · 10^(index / 80).</summary>
    [Fact]
    public void Load_EveryRow_FollowsTheFormula()
    {
        for (var index = LoadIndex.Least; index <= LoadIndex.Most; index++)
            Assert.Equal(1, LoadIndex.Kilograms(index) / (45 * Math.Pow(10, index / 80.0)), 0.018);
    }

    [Fact]
    public void Speed_H_StandsBetweenUAndV()
    {
        var speeds = SpeedSymbol.KilometresPerHour;
        Assert.True(speeds["U"] < speeds["H"] && speeds["H"] < speeds["V"]);
    }

    /// <summary>49 CFR 574.5: 0301 is week 3 of 2001; before July 2000 317 is week 31 of 1987 or 1997.</summary>
    [Theory]
    [InlineData("0301", 3, new[] { 2001 })]
    [InlineData("317", 31, new[] { 1987, 1997 })]
    [InlineData("5320", 53, new[] { 2020 })]
    public void DateCode(string code, int week, int[] years)
    {
        var read = TyreDateCode.Read(code);
        Assert.Equal(week, read.Week);
        Assert.Equal(years, read.Years);
    }

    [Theory]
    [InlineData("0301", "2026-03-01", "replace", 25.1)]
    [InlineData("1020", "2026-03-10", "inspect", 6.0)]
    [InlineData("1020", "2026-02-10", "young", 5.9)]
    [InlineData("317", "2026-03-01", "replace", 28.6)]
    public void Age(string code, string on, string verdict, double years)
    {
        var outcome = Computed.By("tyre-age", ("code", code), ("asOf", DateOnly.Parse(on, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(verdict, outcome.Verdict);
        Assert.Equal(years, outcome.Number("leastAge"), 0.06);
    }

    [Fact]
    public void Age_OfAFutureTyre_IsRefused() =>
        Assert.Equal("code", Computed.By("tyre-age", ("code", "0327"), ("asOf", new DateOnly(2026, 3, 1))).Refused!.Name);

    /// <summary>49 CFR 571.138 S4.2: a placard of 35 psi warns at 26.25, of 32 at 24.</summary>
    [Theory]
    [InlineData(35, 26.25)]
    [InlineData(32, 24)]
    public void Warning(double placard, double psi) => Assert.Equal(psi, TyrePressure.WarnsAt(placard), 9);

    /// <summary>Ideal gas from 68 to 58 °F: 0.88 psi at 32, 0.94 at 35.</summary>
    [Theory]
    [InlineData(32, 0.88)]
    [InlineData(35, 0.94)]
    public void Pressure_FallsWithTemperature(double psi, double fall)
    {
        var cold = TyrePressure.At(UnitConversion.Convert(psi, "psi", "kPa")!.Value, 20, UnitConversion.Convert(58, "degF", "degC")!.Value);
        Assert.Equal(fall, psi - UnitConversion.Convert(cold, "kPa", "psi")!.Value, 0.006);
    }

    [Fact]
    public void Tread_InThirtySeconds()
    {
        var tread = Computed.By("tyre-tread", ("depth", 3.175), ("newDepth", 8.0), ("minimum", 1.6));
        Assert.Equal(4, tread.Number("depthIn32nds"), 6);
        Assert.Equal(75.39, tread.Number("worn"), 2);
    }

    [Fact]
    public void Tread_AboveNew_IsRefused() => Assert.Equal("depth", Computed.By("tyre-tread", ("depth", 9.0), ("newDepth", 8.0)).Refused!.Name);
}
