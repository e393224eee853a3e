using System.Globalization;
using RulesEngine.Models;

namespace Benchmarks.Peers;

/// <summary>The NuGet package RulesEngine: one lambda expression for each rule, all of them evaluated for each request.</summary>
internal sealed class RulesEnginePeer
{
    private readonly RulesEngine.RulesEngine _engine;

    public RulesEnginePeer(IEnumerable<FlatRule> rules)
    {
        var workflow = new Workflow
        {
            WorkflowName = "all",
            Rules = [.. rules.Select(rule => new Rule { RuleName = rule.Name, RuleExpressionType = RuleExpressionType.LambdaExpression, Expression = Expression(rule) })],
        };
        _engine = new RulesEngine.RulesEngine([workflow], new ReSettings { CustomTypes = [typeof(Facts)] });
    }

    public static RuleParameter Input(FlatRequest request) => new("f", new Facts(request));

    public List<string> Run(RuleParameter facts) =>
        [.. _engine.ExecuteAllRulesAsync("all", [facts]).AsTask().GetAwaiter().GetResult().Where(result => result.IsSuccess).Select(result => result.Rule.RuleName)];

    private static string Expression(FlatRule rule) =>
        rule.All.Count == 0 ? "true" : string.Join(" && ", rule.All.Select(any => $"({string.Join(" || ", any.Select(Text))})"));

    private static string Text(Literal one)
    {
        var bound = one.Bound.ToString("F6", CultureInfo.InvariantCulture);
        return one.Op switch
        {
            "in" => string.Join(" || ", one.Words.Select(word => $"f.Has(\"{one.Of}\", \"{word}\")")),
            "notIn" => string.Join(" && ", one.Words.Select(word => $"!f.Has(\"{one.Of}\", \"{word}\")")),
            "word" => string.Join(" || ", one.Words.Select(word => $"f.Word(\"{one.Of}\") == \"{word}\"")),
            "atLeast" => $"f.Number(\"{one.Of}\") >= {bound}",
            "below" => $"f.Number(\"{one.Of}\") < {bound}",
            "above" => $"f.Number(\"{one.Of}\") > {bound}",
            _ => $"f.Number(\"{one.Of}\") <= {bound}",
        };
    }
}
