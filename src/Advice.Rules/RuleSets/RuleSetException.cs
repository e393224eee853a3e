using Advice.Rules.Checking;

namespace Advice.Rules.RuleSets;

/// <summary>A rule set that cannot be used, with everything that is wrong with it.</summary>
public sealed class RuleSetException(IReadOnlyList<RuleFileError> errors) : Exception(string.Join(Environment.NewLine, errors))
{
    /// <summary>The errors by file, line and column.</summary>
    public IReadOnlyList<RuleFileError> Errors { get; } = errors;
}
