namespace Advice.Rules.Checking.Doubts;

/// <summary>What an author should look at again in a set without errors. Nothing here keeps the set from being used.</summary>
internal static class Review
{
    /// <summary>The doubts by file, line and column.</summary>
    public static IReadOnlyList<RuleFileError> Of(Tables tables)
    {
        // Each looks at the same tables and at nothing else, so that they need not wait for each other.
        Action<Problems>[] reviews =
        [
            doubts => new MethodCautions(tables, doubts).Check(),
            doubts => new EmptyReasons(tables, doubts).Check(),
            doubts => new SwallowedRules(tables, doubts).Check(),
            doubts => new FaultPaths(tables, doubts).Check(),
            doubts => new Repetitions(tables, doubts).Doubt(),
            doubts => new OwnExceptions(tables, doubts).Check(),
            doubts => new DoubledLimits(tables, doubts).Check(),
            doubts => new UnusedWords(tables, doubts).Check(),
            doubts => new ThinPhrases(tables, doubts).Check(),
        ];
        var found = new Problems[reviews.Length];
        Parallel.For(0, reviews.Length, i =>
        {
            found[i] = new Problems();
            reviews[i](found[i]);
        });
        var all = new Problems();
        foreach (var doubts in found)
            all.Add(doubts);
        return all.InOrder;
    }
}
