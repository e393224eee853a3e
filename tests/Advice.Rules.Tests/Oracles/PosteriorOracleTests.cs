using Advice.Suspects;
using CsCheck;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Oracles;

/// <summary>The probabilities of the service are those of the design, whatever the rules and the case.</summary>
public class PosteriorOracleTests(ITestOutputHelper output)
{
    [Fact]
    public void Suspect_RandomRulesAndCases_AsByAddingUpAllWorlds()
    {
        var (suspects, raised, atPlaces, cases) = (0, 0, 0, 0);
        Gen.Select(RandomRules.Any, RandomCase.Any.Array[10]).Sample(
            (rules, asked) =>
            {
                foreach (var one in asked)
                {
                    var evidence = rules.Open(one.Case).Gather();
                    var expected = new PlainPosterior(rules.Catalogue, one.Case, evidence).ByFaultAndPlaces();
                    var found = new Suspecting(rules.Catalogue).Suspect(one.Case, evidence).All;
                    Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), found.Select(Name).Order(StringComparer.Ordinal));
                    foreach (var suspect in found)
                        Assert.Equal(expected[Name(suspect)], suspect.Probability, 1e-9);
                    Interlocked.Increment(ref cases);
                    Interlocked.Add(ref suspects, found.Count);
                    Interlocked.Add(ref raised, found.Count(suspect => suspect.Raise > 1e-9));
                    Interlocked.Add(ref atPlaces, found.Count(suspect => suspect.Instance.Place is not null));
                }
            },
            iter: 200);
        output.WriteLine($"{cases} cases, {suspects} suspects, {raised} raised, {atPlaces} at a place");
        Assert.True(raised > cases && atPlaces > cases / 2, "Hardly anything was suspected.");
    }

    private static string Name(Suspect suspect) =>
        suspect.Instance.Places.Count == 0 ? suspect.Instance.Fault.Id : $"{suspect.Instance.Fault.Id} {string.Join('+', suspect.Instance.Places)}";
}
