using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using NRules.RuleModel;

namespace Advice.Rules.Tests.Oracles;

/// <summary>The case that textbook rules ask, and what they conclude.</summary>
internal sealed class Notes(Catalogue known, Case @case) : Fact
{
    private readonly HashSet<SeenSign> _seen = [];
    private readonly HashSet<string> _linked = [];

    public Catalogue Known => known;

    public Case Case => @case;

    public Findings Found { get; } = new();

    public IEnumerable<SeenSign> Reported() => PlainLoop.Reported(@case, known);

    /// <summary>The fact of a sign; null where it is known already.</summary>
    public SeenFact? See(SeenSign sign, bool reported) => _seen.Add(sign) ? new SeenFact(sign, reported) : null;

    public bool Speaks(SeenSign sign, IReadOnlyList<string> asked) => PlainLoop.Speaks(sign, asked, known);

    public bool Likely(VehicleCondition when) => PlainCondition.IsLikely(when, @case.Vehicle);

    public bool MayBe(VehicleCondition when) => !PlainCondition.IsRuledOut(when, @case.Vehicle);

    public double Strength(ShowsRule rule) => rule.Often * PlainCondition.Share(rule.When, @case.Vehicle);

    public bool Exists(string fault) =>
        !known.Rules.Values.OfType<FitsRule>().Any(rule => rule.Faults.Contains(fault) && !MayBe(rule.When));

    public bool Met(VehicleCondition when) => PlainCondition.IsMet(when, @case.Vehicle);

    public bool Served(ServiceTest? test) => test is null || PlainLoop.Served(test, @case);

    public void Link(IContext context, SeenFact seen, string fault, double strength, string rule)
    {
        Found.Link(seen.Sign, fault, strength, rule);
        if (_linked.Add(fault))
            context.Insert(new LinkedFact(fault));
    }

    public void Imply(IContext context, SeenFact seen, ImpliesRule rule)
    {
        var symptom = rule.Implied.Kind == SignKind.Symptom;
        var implied = new SeenSign(rule.Implied, symptom ? seen.Sign.Occasions : [], symptom ? seen.Sign.Position : null, true);
        Found.Implied(seen.Sign, implied, rule);
        if (See(implied, reported: false) is { } fact)
            context.Insert(fact);
    }
}
