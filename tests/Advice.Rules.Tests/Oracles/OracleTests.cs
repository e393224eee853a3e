using System.Collections.Concurrent;
using Advice.Evidence;
using CsCheck;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Oracles;

/// <summary>The service concludes what two other ways of running the same rules conclude.</summary>
public class OracleTests(ITestOutputHelper output)
{
    private static readonly string[] Kinds = ["link", "factor", "implied", "normal", "driving", "warns"];

    [Fact]
    public void Conclude_RandomRulesAndCases_AsAPlainLoopOverTheRules() =>
        Compare(ruleSets: 400, casesEach: 20, rules => asked => new PlainLoop(rules.Catalogue, asked).Run());

    [Fact]
    public void Conclude_RandomRulesAndCases_AsOneNRulesRuleForEach() =>
        Compare(ruleSets: 40, casesEach: 50, rules => new TextbookRules(rules.Catalogue).Run);

    [Fact]
    public void Conclude_RepositoryRulesAndRandomCases_AsAPlainLoopOverTheRules()
    {
        var said = new Tally();
        RepositoryCase.Any.Sample(asked => said.Add(Same(new PlainLoop(RepositoryRules.Book.Catalogue, asked).Run(), RepositoryRules.Book, asked)), iter: 500);
        said.Judge(output);
    }

    [Fact]
    public void Conclude_SignsInAnotherOrder_TheSameInTheSameOrder() =>
        Gen.Select(RandomRules.Any, RandomCase.Any.Array[10]).Sample(
            (rules, asked) => Assert.All(asked, one => Assert.Equal(Findings.Of(rules, one).InOrder, Findings.Of(rules, one.Reversed()).InOrder)),
            iter: 100);

    [Fact]
    public void Conclude_OneReportMore_AsWithoutTakingOverWhatWasKnown() =>
        Gen.Select(RandomRules.Any, RandomCase.Any.Where(one => one.Case.Reports.Count > 0).Array[10]).Sample(
            (rules, asked) => Assert.All(asked, one => Assert.Equal(Findings.Of(rules, one).InOrder, Findings.Of(AfterTheLastReport(rules, one.Case), one).InOrder)),
            iter: 400);

    private static IRuleSession AfterTheLastReport(IRuleBook rules, Case @case)
    {
        var before = @case with { Reports = [.. @case.Reports.SkipLast(1)] };
        return rules.Continue(before, rules.Open(before).Gather())(@case.Reports[^1]);
    }

    private void Compare(int ruleSets, int casesEach, Func<IRuleBook, Func<RandomCase, Findings>> translate)
    {
        var said = new Tally();
        Gen.Select(RandomRules.Any, RandomCase.Any.Array[casesEach]).Sample(
            (rules, asked) =>
            {
                var oracle = translate(rules);
                foreach (var one in asked)
                    said.Add(Same(oracle(one), rules, one));
            },
            iter: ruleSets);
        said.Judge(output);
    }

    private static Findings Same(Findings expected, IRuleBook rules, RandomCase asked)
    {
        var found = Findings.Of(rules, asked);
        Assert.Equal(expected.ToString(), found.ToString());
        return found;
    }

    /// <summary>Counts what was compared: two that say nothing agree too.</summary>
    private sealed class Tally
    {
        private readonly ConcurrentDictionary<string, int> _lines = new();
        private int _cases;
        private int _something;

        public void Add(Findings found)
        {
            Interlocked.Increment(ref _cases);
            if (found.Count > 0)
                Interlocked.Increment(ref _something);
            foreach (var (kind, lines) in found.Kinds)
                _lines.AddOrUpdate(kind, lines, (_, before) => before + lines);
        }

        public void Judge(ITestOutputHelper output)
        {
            output.WriteLine($"{_cases} cases, something concluded in {_something}: {string.Join(", ", _lines.OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => $"{one.Value} {one.Key}"))}");
            Assert.True(_something > _cases * 0.7, $"Something was concluded in {_something} of {_cases} cases only.");
            Assert.All(Kinds, kind => Assert.True(_lines.GetValueOrDefault(kind) > _cases / 20, $"Hardly any {kind} in {_cases} cases."));
        }
    }
}
