using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>Which rules gave the answer.</summary>
/// <param name="Revision">Hash of the rule files.</param>
/// <param name="Rules">Number of rules.</param>
/// <param name="Overlays">Overlays over the shipped set, which the revision covers.</param>
public sealed record RuleSetStamp(string Revision, int Rules, IReadOnlyList<Overlay> Overlays)
{
    /// <summary>That of a rule set.</summary>
    internal static RuleSetStamp Of(IRuleBook rules) => new(rules.Revision, rules.Catalogue.Rules.Count, rules.Catalogue.Overlays);
}
