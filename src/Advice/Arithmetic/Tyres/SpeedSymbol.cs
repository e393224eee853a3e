namespace Advice.Arithmetic.Tyres;

/// <summary>Speed symbols: ISO 4000-1 (ETRTO), as restated. H stands between U and V.</summary>
public static class SpeedSymbol
{
    /// <summary>Largest speed by symbol, km/h.</summary>
    public static IReadOnlyDictionary<string, int> KilometresPerHour { get; } = new Dictionary<string, int>
    {
        ["N"] = 140,
        ["P"] = 150,
        ["Q"] = 160,
        ["R"] = 170,
        ["S"] = 180,
        ["T"] = 190,
        ["U"] = 200,
        ["H"] = 210,
        ["V"] = 240,
        ["W"] = 270,
        ["Y"] = 300,
    };
}
