using Advice.Evidence;
using Advice.Intake;

namespace Advice.Rules.Cases;

/// <summary>Assesses cases as far as an answer goes before it is put into words.</summary>
public sealed class CaseAssessor
{
    private readonly CaseReader _reader;
    private readonly Assessment _assessment;

    /// <summary>An assessor that works by a rule set.</summary>
    public CaseAssessor(IRuleBook rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var catalogue = rules.Catalogue;
        _reader = new(catalogue);
        _assessment = new(rules);
    }

    /// <summary>What is concluded, with every step and not only those that the case asks for.</summary>
    public Advised AssessAll(RuleCase @case) => _assessment.Of(Read(@case) with { MostSteps = int.MaxValue });

    /// <summary>What is concluded.</summary>
    public Advised Assess(RuleCase @case) => _assessment.Of(Read(@case));

    private Case Read(RuleCase @case) => _reader.Read(@case.Given, CaseClock.Today).Case;
}
