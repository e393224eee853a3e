using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Rules.Tests.Oracles;

/// <summary>All that rules conclude about a case, as sorted lines, so that two ways of concluding can be compared.</summary>
internal sealed class Findings
{
    private readonly SortedSet<string> lines = new(StringComparer.Ordinal);

    public int Count => lines.Count;

    public static Findings Of(IRuleBook rules, RandomCase asked)
    {
        var found = new Findings();
        var session = rules.Open(asked.Case);
        var evidence = session.Gather();
        evidence.Links.ToList().ForEach(link => found.Link(link.Seen, link.Fault, link.Strength, link.Rule));
        evidence.Factors.ToList().ForEach(factor => found.Factor(factor.Fault, factor.Rule));
        evidence.Implied.ToList().ForEach(implied => found.Implied(implied.From, implied.Implied, implied.Rule));
        evidence.Normals.ToList().ForEach(normal => found.Normal(normal.Seen, normal.Rule));
        session.LimitDriving(asked.Suspected).ToList().ForEach(found.Conclusion);
        session.Caution(asked.Advised).ToList().ForEach(found.Conclusion);
        return found;
    }

    public void Link(SeenSign seen, string fault, double strength, string rule) => lines.Add($"link {seen} {fault} {strength:R} {rule}");

    public void Factor(string fault, ProneRule rule) => lines.Add($"factor {fault} {rule.Id}");

    public void Implied(SeenSign from, SeenSign implied, ImpliesRule rule) => lines.Add($"implied {from} {implied} {rule.Id}");

    public void Normal(SeenSign seen, NormalRule rule) => lines.Add($"normal {seen} {rule.Id}");

    public void Conclusion(Rule rule) => lines.Add($"conclusion {rule.Id}");

    public override string ToString() => string.Join('\n', lines);
}
