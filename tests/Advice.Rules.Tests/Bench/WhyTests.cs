using System.Globalization;
using System.Text.RegularExpressions;
using Advice.Rules.Bench;

namespace Advice.Rules.Tests.Bench;

/// <summary>The numbers that "why" shows are those that made the answer: what is computed again for display agrees with the ranking.</summary>
public partial class WhyTests
{
    private static readonly Knowledge.Catalogue Catalogue = RepositoryRules.Book.Catalogue;

    [Fact]
    public void WhyCheck_AdvisedStep_ItsShareOfEachSuspectAddsUpToWhatTheRankingFound()
    {
        foreach (var (_, advised, all) in RepositoryCases.Sample)
        {
            foreach (var step in all.Steps.Take(5))
            {
                var lines = new WhyCheck(Catalogue, all, advised.Case.MostSteps).Of(step.Check.Id).ToList();
                var found = lines.Where(line => line.Contains("× surely", StringComparison.Ordinal)).Sum(line => Last(line));

                Assert.Equal(step.Ranked.HarmFound, found, 1e-4 * Math.Max(1, lines.Count));
                Assert.Contains(lines, line => line.StartsWith("  rank ", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void WhyFault_Suspect_ItsChainEndsAtItsProbability()
    {
        foreach (var (_, advised, _) in RepositoryCases.Sample)
        {
            foreach (var suspect in advised.Suspicion.Raised.Take(3).Where(suspect => suspect.Instance.Places.Count == suspect.Instance.Fault.Places.Count))
            {
                var lines = new WhyFault(Catalogue, advised).Of(suspect.Instance.Fault.Id).ToList();
                var chain = Assert.Single(lines, line => line.Contains("as a probability", StringComparison.Ordinal));
                var numbers = Number().Matches(chain).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture)).ToList();
                var prior = numbers.Skip(1).Aggregate((product, factor) => product * factor);

                Assert.Equal(suspect.Instance.Prior, Math.Clamp(prior, 1e-5, 0.5), 2e-4);
                Assert.Contains(lines, line => line.StartsWith($"  probability {suspect.Probability.ToString("0.0000", CultureInfo.InvariantCulture)};", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void WhyFault_AnyFault_TellsWhyOrWhyNot()
    {
        foreach (var (_, advised, _) in RepositoryCases.Sample.Take(3))
        {
            var touched = advised.Suspicion.All.Select(one => one.Instance.Fault.Id).ToHashSet();
            foreach (var fault in Catalogue.Faults.Keys)
                Assert.Equal(touched.Contains(fault), !new WhyFault(Catalogue, advised).Of(fault).Contains("  no sign of the case speaks for or against it"));
        }
    }

    [Fact]
    public void Why_AnyCase_NamesFactsRulesSuspectsAndSteps()
    {
        foreach (var (@case, advised, _) in RepositoryCases.Sample)
        {
            var text = string.Join('\n', new Why(Catalogue, @case, advised).Lines());
            Assert.Contains(@case.Id, text, StringComparison.Ordinal);
            Assert.All(advised.Driving, rule => Assert.Contains($"[{rule.Id}]", text, StringComparison.Ordinal));
            Assert.All(advised.Steps, step => Assert.Contains(step.Check.Id, text, StringComparison.Ordinal));
        }
    }

    private static double Last(string line) => double.Parse(Number().Matches(line)[^1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
