using System.Globalization;

namespace Advice.Rules.Tests.Published;

/// <summary>One cell of the published UK table: cars of an age and mileage band, and how many of them fail the yearly test.</summary>
/// <param name="AgeYears">First year of the band.</param>
/// <param name="Age">Middle of the age band, years.</param>
/// <param name="Mileage">First thousand miles of the band.</param>
/// <param name="Km">Middle of the mileage band, km.</param>
/// <param name="LogOdds">Of failing.</param>
/// <param name="Weight">Square root of the number of tests.</param>
internal sealed record FailureBand(int AgeYears, double Age, int Mileage, double Km, double LogOdds, double Weight)
{
    private const double KmPerThousandMiles = 1609.344;
    private const double WidthOfOpenBand = 40;

    /// <summary>The table of the folder that ADVICE_SHARED names.</summary>
    public static IReadOnlyList<FailureBand> All()
    {
        var folder = Environment.GetEnvironmentVariable("ADVICE_SHARED");
        Skip.If(string.IsNullOrEmpty(folder), "ADVICE_SHARED names no folder with the failure rates.");
        return [.. File.ReadLines(Path.Combine(folder, "reference", "failure-rates.csv")).Select(line => line.Split(',')).Select(Read).OfType<FailureBand>()];
    }

    // No cell before the note holds a comma in these rows.
    private static FailureBand? Read(string[] cells)
    {
        if (cells[0].Length == 0 || cells[2] != "GB" || cells[6] != "fail rate (pass after rectification counted as pass)" || !cells[8].EndsWith("k mi", StringComparison.Ordinal) && !cells[8].EndsWith("k+ mi", StringComparison.Ordinal))
            return null;
        var ages = cells[7].Split('-');
        if (ages.Length != 2 || cells[7] == "3-25")
            return null;
        var miles = cells[8].Replace(" mi", "", StringComparison.Ordinal).Replace("k", "", StringComparison.Ordinal).Split('-', '+');
        var (youngest, oldest, least) = (Number(ages[0]), Number(ages[1]), Number(miles[0]));
        var most = miles[1].Length == 0 ? least + WidthOfOpenBand : Number(miles[1]);
        var rate = Number(cells[9]) / 100;
        return new FailureBand(
            (int)youngest, (youngest + oldest + 1) / 2, (int)least, (least + most) / 2 * KmPerThousandMiles, Math.Log(rate / (1 - rate)), Math.Sqrt(Number(cells[11])));
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
