namespace Advice.Rules.Tests.Published;

/// <summary>Holds the base rates that cite a published failure rate against it: spread over several faults, they must still sum to it.</summary>
public class BaseRateTests
{
    // A vehicle ten years old with 150,000 km fails about 1.25 times as often as the mean of all vehicles tested (39.2 against 31.7 in 100).
    private const double AtReference = 1.25;

    // Found and failed together: 9.7 fail, and 34.74 advisory items make half as many faults. It stands in where no advisory items are published.
    private const double FoundForEachFailure = (9.7 + 34.74 / 2) / 9.7;

    public static TheoryData<string, double> PublishedPercent => new()
    {
        { "Brakes:", 8.1 + 44.03 / 2 },
        { "Tyres:", 6.8 + 48.24 / 2 },
        { "Suspension:", 9.7 + 34.74 / 2 },
        { "Steering:", 2.0 * FoundForEachFailure },
        { "Noise, emissions and leaks:", 3.6 + 7.14 },
        { "Lamps and electrical equipment:", 13.9 + 3.62 },
        { "Visibility:", 5.3 * FoundForEachFailure },
        { "Seat belts and restraints:", 1.3 / 2 },
    };

    [Theory]
    [MemberData(nameof(PublishedPercent))]
    public void FaultsOfOneRate_Summed_AreThePublishedRate(string category, double percent)
    {
        var faults = RepositoryRules.Book.Catalogue.Faults.Values.Where(fault => fault.Source.Place?.StartsWith(category, StringComparison.Ordinal) == true).ToList();

        Assert.NotEmpty(faults);
        Assert.InRange(faults.Sum(fault => fault.Prior) / (percent / 100 * AtReference), 0.97, 1.03);
    }
}
