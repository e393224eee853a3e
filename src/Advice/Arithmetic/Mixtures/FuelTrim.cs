namespace Advice.Arithmetic.Mixtures;

/// <summary>
/// Fuel trims: short plus long term, for each bank. Positive = fuel was added, the engine runs lean without it. Trade rule: suspect beyond ±10 %;
/// trouble codes usually come at 20 … 25 %.
/// </summary>
public static class FuelTrim
{
    /// <summary>Beyond this a total is suspect, percent.</summary>
    public const double Suspect = 10;

    /// <summary>Percent of a raw byte: (A − 128) · 100 / 128 (SAE J1979, parameters 06 … 09).</summary>
    public static double OfByte(int value) => (value - 128) * 100 / 128.0;

    /// <summary>The pattern of the totals at idle, and of those at a steady cruise where they are known.</summary>
    /// <param name="idle">Short plus long term of each bank at idle, percent.</param>
    /// <param name="cruise">The same at a cruise; empty = not known.</param>
    public static string Pattern(IReadOnlyList<double> idle, IReadOnlyList<double> cruise)
    {
        var (still, loaded) = (SideOfAll(idle), SideOfAll(cruise));
        if (cruise.Count > 0 && still != loaded && still is "lean" or "rich" or "within" && loaded is "lean" or "rich" or "within")
        {
            return (still, loaded) switch
            {
                (_, "within") => $"{still}-at-idle",
                ("within", _) => $"{loaded}-under-load",
                _ => "mixed",
            };
        }

        if (idle.Count == 1)
            return still;
        var sides = idle.Select(Side).ToList();
        return (sides[0], sides[1]) switch
        {
            ("within", "within") => "within",
            var (one, other) when one == other => $"{one}-both-banks",
            ("within", var other) => $"{other}-bank-2",
            (var one, "within") => $"{one}-bank-1",
            _ => "mixed",
        };
    }

    private static string Side(double total) => total > Suspect ? "lean" : total < -Suspect ? "rich" : "within";

    private static string SideOfAll(IReadOnlyList<double> totals) => totals.Select(Side).Distinct().ToList() is [var one] ? one : "mixed";
}
