using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Bench;
using Advice.Suspects;
using Advice.Vehicles;

namespace Advice.Rules.Tests;

public class SuspectingTests
{
    private static readonly Catalogue Catalogue = RepositoryRules.Book.Catalogue;

    [Fact]
    public void Suspect_CodeImpliesLamp_FaultOfTheLampAloneCountsAsOftenAsTheLampComesWithTheCode()
    {
        var advised = new Assessment(RepositoryRules.Book).Of(
            new Case { AsOf = new DateOnly(2026, 3, 1), Vehicle = Vehicle.Unknown, Codes = ["C0031"] });
        var network = advised.Suspicion.Network;
        var strengths = advised.Suspicion.All.Select((suspect, i) => (suspect.Instance.Fault.Id, Index: i))
            .ToDictionary(one => one.Id, one => Assert.Single(network.Manifestations).Links.Single(link => link.Cause == one.Index).Strength);
        var shareOfCode = Catalogue.ShownRates[Sign.Code("C0031")] / Catalogue.ShownRates[Sign.Symptom("abs-lamp")];

        Assert.InRange(shareOfCode, 0.001, 0.9);
        Assert.Equal(Often("C0031", "wheel-speed-sensor-faulty"), strengths["wheel-speed-sensor-faulty"], 12);
        Assert.Equal(Often("abs-lamp", "abs-unit-faulty") * shareOfCode, strengths["abs-unit-faulty"], 12);
    }

    /// <summary>What is reckoned once for many faults is the sum of what is reckoned fault by fault.</summary>
    [Fact]
    public void BaseRates_OfASystem_AreTheSumOverItsFaults()
    {
        var (rates, priors, asOf) = (new SystemBaseRates(Catalogue), new PriorOnVehicle(Catalogue), new DateOnly(2026, 3, 1));
        foreach (var vehicle in SampleVehicles.All.Select(one => SampleVehicles.Case(one.Vehicle, asOf).Vehicle))
        {
            var expected = rates.On(vehicle);
            foreach (var system in Catalogue.Faults.Values.GroupBy(fault => fault.System))
                Assert.Equal(system.Sum(fault => priors.Of(fault, vehicle, [])), expected[system.Key], 1e-9);
        }
    }

    private static double Often(string sign, string fault) =>
        Catalogue.Rules.Values.OfType<ShowsRule>().Single(rule => rule.Sign.Id == sign && rule.Fault == fault).Often;
}
