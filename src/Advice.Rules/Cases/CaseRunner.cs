namespace Advice.Rules.Cases;

/// <summary>Asks a rule set what its cases ask, and compares.</summary>
public sealed class CaseRunner
{
    private readonly GiveAdvice _advice;

    /// <summary>A runner that answers by the rule set that the cases were read for.</summary>
    public CaseRunner(Evidence.IRuleBook rules) => _advice = new GiveAdvice(rules, new CaseClock());

    /// <summary>Runs one case.</summary>
    public CaseResult Run(RuleCase @case)
    {
        var advice = _advice.To(@case.Given);
        return new CaseResult(@case, advice, [.. @case.Expectations.Where(expectation => !expectation.IsMet(advice))]);
    }
}
