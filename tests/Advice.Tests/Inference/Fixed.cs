using System.Numerics;

namespace Advice.Tests.Inference;

/// <summary>A number with 640 binary places after the point, some 190 decimal ones: doubles of the tests convert exactly.</summary>
internal readonly record struct Fixed(BigInteger Units)
    : IAdditionOperators<Fixed, Fixed, Fixed>, ISubtractionOperators<Fixed, Fixed, Fixed>, IMultiplyOperators<Fixed, Fixed, Fixed>
{
    private const int Places = 640;

    public static Fixed From(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)(bits >> 52 & 0x7FF);
        var mantissa = bits & 0xFFFFFFFFFFFFF;
        if (exponent == 0)
            return mantissa == 0 ? default : throw new ArgumentOutOfRangeException(nameof(value), value, "Subnormal.");
        var shift = exponent - 1075 + Places;
        return shift >= 0
            ? new Fixed((BigInteger)(mantissa | 1L << 52) << shift)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "Too small to convert exactly.");
    }

    public double LogE => BigInteger.Log(Units) - Places * Math.Log(2);

    public static Fixed operator +(Fixed a, Fixed b) => new(a.Units + b.Units);

    public static Fixed operator -(Fixed a, Fixed b) => new(a.Units - b.Units);

    public static Fixed operator *(Fixed a, Fixed b) => new(a.Units * b.Units >> Places);

    public static double Ratio(Fixed a, Fixed b) => Math.ScaleB((double)((a.Units << Places) / b.Units), -Places);
}
