using System.Globalization;
using System.Text.RegularExpressions;

namespace Advice.Arithmetic.Tyres;

/// <summary>A tyre size such as 205/55R16: width in mm, height of the sidewall in percent of it, rim in inches.</summary>
/// <param name="WidthMm">Section width.</param>
/// <param name="AspectPercent">Height of the sidewall as a share of the width.</param>
/// <param name="RimIn">Diameter of the rim.</param>
public sealed partial record TyreSize(double WidthMm, double AspectPercent, double RimIn)
{
    /// <summary>Height of the sidewall, mm.</summary>
    public double SidewallMm => WidthMm * AspectPercent / 100;

    /// <summary>Diameter of the tyre, mm: the rim and twice the sidewall.</summary>
    public double DiameterMm => (RimIn * 25.4) + (2 * SidewallMm);

    /// <summary>How a size is written, with or without load index and speed symbol.</summary>
    [GeneratedRegex(@"^(P|LT)?(?<width>[1-4]\d5)/(?<aspect>[2-9]\d) ?Z?R ?(?<rim>1[0-9]|2[0-6])(C| XL)?( \d{2,3}[A-Z])?$", RegexOptions.CultureInvariant)]
    public static partial Regex Form();

    /// <summary>Reads a size of that form.</summary>
    public static TyreSize? Read(string text)
    {
        var match = Form().Match(text);
        return match.Success ? new TyreSize(Number(match, "width"), Number(match, "aspect"), Number(match, "rim")) : null;
    }

    /// <summary>How much faster the vehicle goes than its speedometer thinks, percent, with other tyres than it was set for.</summary>
    public static double SpeedErrorPercent(TyreSize original, TyreSize fitted) => 100 * ((fitted.DiameterMm / original.DiameterMm) - 1);

    private static double Number(Match match, string name) => double.Parse(match.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
}
