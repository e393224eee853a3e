using Advice.Rules.Checking;

namespace Advice.Rules.RuleSets;

/// <summary>A rule set without errors, as its author sees it.</summary>
/// <param name="book">The rule set.</param>
/// <param name="review">Looks for what should be looked at again.</param>
public sealed class ReviewedRules(RuleBook book, Func<IReadOnlyList<RuleFileError>> review)
{
    private readonly Task<IReadOnlyList<RuleFileError>> _review = Task.Run(review);

    /// <summary>The rule set.</summary>
    public RuleBook Book => book;

    /// <summary>What should be looked at again, by file, line and column. It is looked for while the caller does something else.</summary>
    public IReadOnlyList<RuleFileError> Warnings => _review.GetAwaiter().GetResult();
}
