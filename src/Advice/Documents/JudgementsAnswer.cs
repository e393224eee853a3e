namespace Advice.Documents;

/// <summary>What the findings mean.</summary>
/// <param name="AsOf">The day for which ages were reckoned.</param>
/// <param name="Program">Version of the program.</param>
/// <param name="RuleSet">The rule set that was used.</param>
/// <param name="Judgements">One entry per finding, in order.</param>
public sealed record JudgementsAnswer(DateOnly AsOf, string Program, RuleSetStamp RuleSet, IReadOnlyList<JudgementDocument> Judgements);
