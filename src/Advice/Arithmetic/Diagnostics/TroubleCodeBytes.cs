using System.Globalization;

namespace Advice.Arithmetic.Diagnostics;

/// <summary>The two bytes of a stored trouble code (SAE J2012, J1979): two bits the letter P, C, B or U, two bits the first digit, then three hexadecimal digits.</summary>
public static class TroubleCodeBytes
{
    /// <summary>The code; null where both bytes are 0, which fills the frame.</summary>
    public static string? Code(int first, int second) => first == 0 && second == 0
        ? null
        : string.Create(CultureInfo.InvariantCulture, $"{"PCBU"[first >> 6]}{(first >> 4) & 3}{first & 15:X}{second:X2}");
}
