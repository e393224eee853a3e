using Advice.Evidence;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Tests.Oracles;

/// <summary>All that rules conclude about a case, as lines, so that two ways of concluding can be compared. A line said twice counts twice.</summary>
internal sealed class Findings
{
    private readonly List<string> _lines = [];

    public int Count => _lines.Count;

    /// <summary>The lines in the order in which they were concluded.</summary>
    public string InOrder => string.Join('\n', _lines);

    /// <summary>How many lines there are of each kind.</summary>
    public IEnumerable<(string Kind, int Lines)> Kinds => _lines.GroupBy(line => line.Split(' ')[0]).Select(kind => (kind.Key, kind.Count()));

    public static Findings Of(IRuleBook rules, RandomCase asked) => Of(rules.Open(asked.Case), asked);

    public static Findings Of(IRuleSession session, RandomCase asked)
    {
        var found = new Findings();
        var evidence = session.Gather();
        evidence.Links.ToList().ForEach(link => found.Link(link.Seen, link.Fault, link.Strength, link.Rule));
        evidence.Factors.ToList().ForEach(factor => found.Factor(factor.Fault, factor.Rule));
        evidence.Implied.ToList().ForEach(implied => found.Implied(implied.From, implied.Implied, implied.Rule));
        evidence.Normals.ToList().ForEach(normal => found.Normal(normal.Seen, normal.Rule));
        session.LimitDriving(asked.Suspected).ToList().ForEach(found.Driving);
        session.Caution(asked.Advised).ToList().ForEach(found.Warns);
        return found;
    }

    public void Link(SeenSign seen, string fault, double strength, string rule) => _lines.Add($"link {seen} {fault} {strength:R} {rule}");

    public void Factor(string fault, ProneRule rule) => _lines.Add($"factor {fault} {rule.Id}");

    public void Implied(SeenSign from, SeenSign implied, ImpliesRule rule) => _lines.Add($"implied {from} {implied} {rule.Id}");

    public void Normal(SeenSign seen, NormalRule rule) => _lines.Add($"normal {seen} {rule.Id}");

    public void Driving(DrivingRule rule) => _lines.Add($"driving {rule.Id}");

    public void Warns(WarnsRule rule) => _lines.Add($"warns {rule.Id}");

    public override string ToString() => string.Join('\n', _lines.Order(StringComparer.Ordinal));
}
