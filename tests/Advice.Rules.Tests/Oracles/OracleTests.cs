using Advice.Intake;
using Advice.Rules.Tests.Laws;
using Advice.Symptoms;
using CsCheck;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Oracles;

/// <summary>The service concludes what two other ways of running the same rules conclude.</summary>
public class OracleTests(ITestOutputHelper output)
{
    [Fact]
    public void Conclude_RandomRulesAndCases_AsAPlainLoopOverTheRules() =>
        Compare(300, rules => asked => new PlainLoop(rules.Catalogue, asked).Run());

    [Fact]
    public void Conclude_RandomRulesAndCases_AsOneNRulesRuleForEach() =>
        Compare(100, rules => new TextbookRules(rules.Catalogue).Run);

    [Fact]
    public void Gather_RepositoryRulesAndRandomRequests_AsAPlainLoopOverTheRules()
    {
        var (rules, found) = (RepositoryRules.Book, 0);
        var reader = new CaseReader(rules.Catalogue, new ComplaintReader([], [], []));
        RandomRequests.Any.Sample(
            request =>
            {
                var @case = reader.Read(request, request.AsOf!.Value).Case;
                var suspected = rules.Catalogue.Faults.Keys.Order(StringComparer.Ordinal).Take(40).ToDictionary(fault => fault, _ => 0.4);
                var asked = new RandomCase(@case, suspected, [.. rules.Catalogue.Checks.Keys.Order(StringComparer.Ordinal).Take(20)]);
                var concluded = Findings.Of(rules, asked);
                Assert.Equal(new PlainLoop(rules.Catalogue, asked).Run().ToString(), concluded.ToString());
                Interlocked.Add(ref found, concluded.Count);
            },
            iter: 300);
        output.WriteLine($"{found} findings in 300 requests");
        Assert.True(found > 3000, $"Only {found} findings in 300 requests.");
    }

    private void Compare(int ruleSets, Func<RuleSets.RuleBook, Func<RandomCase, Findings>> translate)
    {
        var (cases, something) = (0, 0);
        Gen.Select(RandomRules.Any, RandomCase.Any.Array[20]).Sample(
            (rules, asked) =>
            {
                var oracle = translate(rules);
                foreach (var one in asked)
                {
                    var found = Findings.Of(rules, one);
                    Assert.Equal(oracle(one).ToString(), found.ToString());
                    Interlocked.Increment(ref cases);
                    if (found.Count > 0)
                        Interlocked.Increment(ref something);
                }
            },
            iter: ruleSets);
        output.WriteLine($"{cases} cases over {ruleSets} rule sets, something concluded in {something}");
        Assert.True(something > cases * 0.6, $"Something was concluded in {something} of {cases} cases only.");
    }
}
