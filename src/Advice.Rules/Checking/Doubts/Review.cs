namespace Advice.Rules.Checking.Doubts;

/// <summary>What an author should look at again in a set without errors. Nothing here keeps the set from being used.</summary>
internal static class Review
{
    /// <summary>The doubts by file, line and column.</summary>
    public static IReadOnlyList<RuleFileError> Of(Tables tables)
    {
        var doubts = new Problems();
        new Repetitions(tables, doubts).Doubt();
        new SwallowedRules(tables, doubts).Check();
        new OwnExceptions(tables, doubts).Check();
        new FaultPaths(tables, doubts).Check();
        new MethodCautions(tables, doubts).Check();
        new EmptyReasons(tables, doubts).Check();
        new UnusedWords(tables, doubts).Check();
        return doubts.InOrder;
    }
}
