namespace Advice.Rules.Checking.Doubts;

/// <summary>What an author should look at again in a set without errors. Nothing here keeps the set from being used.</summary>
internal static class Review
{
    /// <summary>The doubts by file, line and column.</summary>
    public static IReadOnlyList<RuleFileError> Of(Tables tables)
    {
        var all = new Problems();
        all.AddAll(
            doubts => new MethodCautions(tables, doubts).Check(),
            doubts => new EmptyReasons(tables, doubts).Check(),
            doubts => new SwallowedRules(tables, doubts).Check(),
            doubts => new FaultPaths(tables, doubts).Check(),
            doubts => new Repetitions(tables, doubts).Doubt(),
            doubts => new OwnExceptions(tables, doubts).Check(),
            doubts => new DoubledLimits(tables, doubts).Check(),
            doubts => new UnusedWords(tables, doubts).Check(),
            doubts => new ThinPhrases(tables, doubts).Check());
        return all.InOrder;
    }
}
