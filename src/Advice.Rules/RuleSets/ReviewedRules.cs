using Advice.Rules.Checking;

namespace Advice.Rules.RuleSets;

/// <summary>A rule set without errors, as its author sees it.</summary>
/// <param name="Book">The rule set.</param>
/// <param name="Warnings">What should be looked at again, by file, line and column.</param>
public sealed record ReviewedRules(RuleBook Book, IReadOnlyList<RuleFileError> Warnings);
