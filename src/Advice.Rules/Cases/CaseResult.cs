using System.Globalization;
using System.Text;
using Advice.Documents;

namespace Advice.Rules.Cases;

/// <summary>How the rule set answered a case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Advice">The answer.</param>
/// <param name="Unmet">The expectations that the answer does not meet.</param>
public sealed record CaseResult(RuleCase Case, AdviceDocument Advice, IReadOnlyList<Expectation> Unmet)
{
    /// <summary>Whether the answer is as expected.</summary>
    public bool Passed => Unmet.Count == 0;

    /// <summary>Where the case stands, how it was understood, and each expectation that is not met with what was answered.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        var (file, line, column) = (Case.Place.File, Case.Place.Line, Case.Place.Column);
        text.Append(CultureInfo.InvariantCulture, $"{file}({line},{column}): {Case.Id} {(Passed ? "passes" : "fails")}");
        text.Append(CultureInfo.InvariantCulture, $"\n  understood: {AnswerText.Understood(Advice)}");
        foreach (var expectation in Unmet)
            text.Append(CultureInfo.InvariantCulture, $"\n  expected {expectation.Expected}\n  actual   {expectation.Actual(Advice)}");
        return text.ToString();
    }
}
