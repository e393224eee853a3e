using Advice.Findings;
using CsCheck;

namespace Advice.Tests.Findings;

public class UnitConversionTests
{
    private static readonly string[] Units = ["mm", "cm", "m", "in", "32nds", "km", "mi", "V", "mV", "A", "mA", "kPa", "bar", "psi", "degC", "degF", "percent", "%", "count", "x"];

    private static readonly Gen<string> AnyUnit = Gen.Int[0, Units.Length - 1].Select(i => Units[i]);

    [Theory]
    [InlineData(1, "in", "mm", 25.4)]
    [InlineData(2, "32nds", "mm", 1.5875)]
    [InlineData(25.4, "mm", "32nds", 32)]
    [InlineData(0.0625, "in", "mm", 1.5875)]
    [InlineData(0.1875, "in", "mm", 4.7625)]
    [InlineData(4, "32nds", "mm", 3.175)]
    [InlineData(205, "degC", "degF", 401)]
    [InlineData(100, "km/h", "m/s", 27.777777778)]
    [InlineData(20, "mph", "m/s", 8.9408)]
    [InlineData(125, "lbf", "N", 556.027701907562)]
    [InlineData(32, "psi", "kPa", 220.632233381388)]
    [InlineData(160000, "km", "mi", 99419.3907579734)]
    [InlineData(8.86, "cSt", "mm2/s", 8.86)]
    [InlineData(1, "mi", "km", 1.609344)]
    [InlineData(1, "bar", "kPa", 100)]
    [InlineData(32, "degF", "degC", 0)]
    [InlineData(-40, "degF", "degC", -40)]
    [InlineData(3, "%", "percent", 3)]
    [InlineData(7, "count", "count", 7)]
    public void Convert_UnitsThatFit_IsTheSameQuantity(double value, string from, string to, double expected) =>
        Assert.Equal(expected, UnitConversion.Convert(value, from, to)!.Value, 9);

    [Theory]
    [InlineData("km", "mm")]
    [InlineData("V", "A")]
    [InlineData("32nds", "V")]
    [InlineData("MM", "mm")]
    [InlineData("", "mm")]
    public void Convert_UnitsThatDoNotFit_IsNull(string from, string to) => Assert.Null(UnitConversion.Convert(1, from, to));

    [Theory]
    [InlineData(1e308, "m", "mm", double.PositiveInfinity)]
    [InlineData(double.MinValue, "km", "mi", double.NegativeInfinity)]
    public void Convert_TooLarge_IsInfinite(double value, string from, string to, double expected) => Assert.Equal(expected, UnitConversion.Convert(value, from, to));

    [Fact]
    public void Convert_AnyNumberAndUnits_NeverFails() =>
        Gen.Select(Gen.Double, AnyUnit, AnyUnit).Where((value, _, _) => double.IsFinite(value)).Sample((value, from, to) =>
            Assert.Equal(UnitConversion.IsPossible(from, to), UnitConversion.Convert(value, from, to) is not null));

    [Fact]
    public void Convert_ThereAndBack_IsTheSame() =>
        Gen.Select(Gen.Double[-1000, 1000], AnyUnit, AnyUnit).Sample((value, from, to) =>
        {
            if (UnitConversion.Convert(value, from, to) is { } there)
                Assert.Equal(value, UnitConversion.Convert(there, to, from)!.Value, tolerance: 1e-6);
        });
}
