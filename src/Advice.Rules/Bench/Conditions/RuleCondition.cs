namespace Advice.Rules.Bench.Conditions;

/// <summary>One condition of a rule.</summary>
/// <param name="Text">The member that states it and what it asks for.</param>
/// <param name="In">How it stands in a case.</param>
/// <param name="Own">Whether the rule itself states it; what others say of its fault must hold as well, but is counted there.</param>
internal sealed record RuleCondition(string Text, Func<CaseSight, Standing> In, bool Own = true);
