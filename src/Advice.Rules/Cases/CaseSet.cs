using Advice.Rules.Checking;

namespace Advice.Rules.Cases;

/// <summary>The cases of a rule folder.</summary>
/// <param name="Cases">The cases that could be read, by file and place.</param>
/// <param name="Errors">What is wrong with the case files, by file, line and column.</param>
/// <param name="Warnings">What to look at again, in the same order.</param>
public sealed record CaseSet(IReadOnlyList<RuleCase> Cases, IReadOnlyList<RuleFileError> Errors, IReadOnlyList<RuleFileError> Warnings);
