using System.Globalization;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Published;

/// <summary>
/// Fits log-odds = years + distance to the published UK table and holds the factor 'both' against it. To see fit and residuals:
/// dotnet test tests/Advice.Rules.Tests --filter AgeingFit --logger "console;verbosity=detailed"
/// </summary>
public class AgeingFitTests(ITestOutputHelper output)
{
    private const int LeastMilesAYear = 4;
    private const int Rounds = 200;

    [SkippableFact]
    public void Both_EachBandOfTheTable_IsNearTheFit()
    {
        // Old cars with hardly any distance are mostly odometers that have rolled over.
        var bands = FailureBand.All().Where(band => band.Mileage + 10 >= LeastMilesAYear * band.AgeYears).ToList();
        Assert.Equal(49, bands.Count);
        var (years, distance) = Fit(bands);
        var both = RepositoryRules.Book.Catalogue.Faults.Values.Select(fault => fault.Ageing).First(ageing => ageing.Id == "both");
        var residuals = bands.Select(band => band.LogOdds - years[band.Age] - distance[band.Km]).ToList();
        foreach (var (band, residual) in bands.Zip(residuals))
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{band.Age,5:0.0} years {band.Km,8:0} km  residual {residual,6:+0.000;-0.000}"));
        Report("years", years, years[10], age => both.Factor(null, age));
        Report("km", distance, distance.MinBy(point => Math.Abs(point.Key - 150_000)).Value, km => both.Factor(km, null));

        Assert.InRange(Math.Sqrt(residuals.Average(residual => residual * residual)), 0, 0.03);
        Assert.All(years.Where(point => point.Key < 15), point => Assert.InRange(both.Factor(null, point.Key) / Math.Exp(point.Value - years[10]), 0.94, 1.06));
        var atReference = distance.MinBy(point => Math.Abs(point.Key - 150_000)).Value;
        Assert.All(distance, point => Assert.InRange(both.Factor(point.Key, null) / Math.Exp(point.Value - atReference), 0.94, 1.06));
    }

    private void Report(string unit, Dictionary<double, double> fitted, double reference, Func<double, double> factor)
    {
        foreach (var (at, value) in fitted)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{at,8:0.#} {unit}: fitted {Math.Exp(value - reference):0.000}, rules {factor(at):0.000}"));
    }

    /// <summary>Backfitting: each band's effect is the weighted mean of what the other effect leaves.</summary>
    private static (Dictionary<double, double> Years, Dictionary<double, double> Distance) Fit(List<FailureBand> bands)
    {
        var years = bands.Select(band => band.Age).Distinct().ToDictionary(age => age, _ => 0.0);
        var distance = bands.Select(band => band.Km).Distinct().ToDictionary(km => km, _ => 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var group in bands.GroupBy(band => band.Age))
                years[group.Key] = group.Sum(band => band.Weight * (band.LogOdds - distance[band.Km])) / group.Sum(band => band.Weight);
            foreach (var group in bands.GroupBy(band => band.Km))
                distance[group.Key] = group.Sum(band => band.Weight * (band.LogOdds - years[band.Age])) / group.Sum(band => band.Weight);
        }

        return (years, distance);
    }
}
