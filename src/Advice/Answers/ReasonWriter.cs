using Advice.Documents;
using Advice.Evidence;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;
using Advice.Suspects;

namespace Advice.Answers;

/// <summary>Why a fault is suspected: the signs that it shows, and what makes it likely on this vehicle.</summary>
internal static class ReasonWriter
{
    /// <summary>The reasons for a suspect: signs by strength, then factors by odds, each rule and each text once.</summary>
    public static IEnumerable<ReasonDocument> Write(Suspect suspect, Advised advised)
    {
        var audience = advised.Case.Workshop.Reader;
        var signs = suspect.Instance.Links.Where(link => link.Seen.Present)
            .OrderByDescending(link => link.Strength).ThenBy(link => link.Rule, StringComparer.Ordinal)
            .Select(link => Reason(link, audience));
        var factors = advised.Evidence.Factors.Where(factor => factor.Fault == suspect.Instance.Fault.Id && factor.Rule.Odds > 1)
            .OrderByDescending(factor => factor.Rule.Odds).ThenBy(factor => factor.Rule.Id, StringComparer.Ordinal)
            .Select(factor => Reason(factor.Rule, audience));
        return signs.Concat(factors).DistinctBy(reason => reason.Rule).DistinctBy(reason => reason.Text);
    }

    /// <summary>The reason that a rule gives.</summary>
    public static ReasonDocument Reason(Rule rule, Audience audience) => new(rule.Id, rule.Because.For(audience), rule.Source?.ToString());

    private static ReasonDocument Reason(Link link, Audience audience) => new(link.Rule, link.Because.For(audience), link.Source?.ToString());
}
