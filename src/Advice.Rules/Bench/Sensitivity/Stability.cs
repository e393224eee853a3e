using Advice.Rules.Cases;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Bench.Sensitivity;

/// <summary>How far the first steps of cases depend on the estimates of a rule set. Cases without a step are left out.</summary>
public sealed class Stability
{
    private const int Front = 3;

    private readonly RuleBook _book;
    private readonly IReadOnlyList<(string Id, Case Case, IReadOnlyList<string> Steps)> _cases;

    /// <summary>Assesses the cases by the rule set as it is.</summary>
    public Stability(RuleBook book, IEnumerable<RuleCase> cases)
    {
        _book = book;
        var assessor = new CaseAssessor(book);
        _cases =
        [
            .. cases.Select(one => (one.Id, Advised: assessor.Assess(one))).Where(one => one.Advised.Steps.Count > 0)
                .Select(one => (one.Id, one.Advised.Case, Steps(one.Advised))),
        ];
    }

    /// <summary>How many cases there are with a step.</summary>
    public int Cases => _cases.Count;

    /// <summary>What a variation does to them.</summary>
    public Outcome Under(Variation variation)
    {
        ArgumentNullException.ThrowIfNull(variation);
        var assessment = new Assessment(VariedRules.Of(_book, variation));
        var now = _cases.AsParallel().AsOrdered().Select(one => Steps(assessment.Of(one.Case))).ToList();
        var moved = new List<(string, string, string?)>();
        var sameThree = 0;
        for (var i = 0; i < now.Count; i++)
        {
            var (id, was) = (_cases[i].Id, _cases[i].Steps);
            var first = now[i] is [var step, ..] ? step : null;
            if (first != was[0])
                moved.Add((id, was[0], first));
            if (now[i].Order(StringComparer.Ordinal).SequenceEqual(was.Order(StringComparer.Ordinal)))
                sameThree++;
        }

        return new Outcome(variation.Name, now.Count, moved, sameThree);
    }

    private static IReadOnlyList<string> Steps(Advised advised) => [.. advised.Steps.Take(Front).Select(step => step.Check.Id)];
}
