using System.Linq.Expressions;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace Advice.Rules.Tests.Oracles;

/// <summary>The textbook translation: one NRules rule for each rule of the set, compiled into a network of its own.</summary>
internal sealed class TextbookRules
{
    private readonly Catalogue _known;
    private readonly ISessionFactory _factory;

    public TextbookRules(Catalogue known)
    {
        _known = known;
        _factory = new RuleCompiler().Compile(
            known.Rules.Values.SelectMany(Translate).Concat(known.Checks.Values.SelectMany(check => check.Detects.Select(detects => Translate(check, detects)))));
    }

    public Findings Run(RandomCase asked)
    {
        var session = _factory.CreateSession();
        var notes = new Notes(_known, asked.Case);
        session.Insert(notes);
        session.InsertAll(notes.Reported().Distinct().Select(sign => notes.See(sign, reported: true)).OfType<Fact>());
        session.InsertAll(asked.Suspected.Select(one => new SuspectedFact(one.Key, one.Value)));
        session.InsertAll(asked.Advised.Select(check => new AdvisedFact(check)));
        session.Fire(100_000);
        return notes.Found;
    }

    private IEnumerable<IRuleDefinition> Translate(Rule rule)
    {
        switch (rule)
        {
            case ShowsRule shows:
                yield return Rule(rule, (left, asked, right) =>
                {
                    Without(left, shows.Without);
                    Seen(left, (seen, notes) => seen.Sign.Sign == shows.Sign && notes.Speaks(seen.Sign, shows.Occasions)
                        && notes.MayBe(shows.When) && notes.Exists(shows.Fault));
                    Act(right, (context, notes, seen) => notes.Link(context, seen, shows.Fault, notes.Strength(shows), shows.Id));
                });
                break;
            case ImpliesRule implies:
                yield return Rule(rule, (left, asked, right) =>
                {
                    Without(left, implies.Without);
                    Seen(left, (seen, notes) => seen.Sign.Present && seen.Sign.Sign == implies.Sign && notes.Speaks(seen.Sign, implies.Occasions) && notes.Likely(implies.When));
                    Act(right, (context, notes, seen) => notes.Imply(context, seen, implies));
                });
                break;
            case NormalRule normal:
                yield return Rule(rule, (left, asked, right) =>
                {
                    Without(left, normal.Without);
                    Seen(left, (seen, notes) => seen.Reported && seen.Sign.Present && seen.Sign.Sign == Sign.Symptom(normal.Symptom)
                        && notes.Speaks(seen.Sign, normal.Occasions) && notes.Likely(normal.When));
                    Act(right, (_, notes, seen) => notes.Found.Normal(seen.Sign, normal));
                });
                break;
            case ProneRule prone:
                foreach (var fault in prone.Faults)
                {
                    yield return Rule(rule, (left, asked, right) =>
                    {
                        left.Exists().Pattern(typeof(LinkedFact), "linked").Condition((Expression<Func<LinkedFact, bool>>)(linked => linked.Fault == fault));
                        Noted(asked, notes => notes.Met(prone.When) && notes.Served(prone.Service));
                        Act(right, notes => notes.Found.Factor(fault, prone));
                    });
                }

                break;
            case WarnsRule warns:
                yield return Rule(rule, (left, asked, right) =>
                {
                    Triggers(left, warns.Symptoms, warns.Occasions, warns.Fault, warns.Probability, warns.Without);
                    if (warns.Checks.Count > 0)
                        left.Exists().Pattern(typeof(AdvisedFact), "advised").Condition((Expression<Func<AdvisedFact, bool>>)(advised => warns.Checks.Contains(advised.Check)));
                    Noted(asked, notes => notes.Likely(warns.When));
                    Act(right, notes => notes.Found.Warns(warns));
                });
                break;
            case DrivingRule driving:
                yield return Rule(rule, (left, asked, right) =>
                {
                    Triggers(left, driving.Symptoms, driving.Occasions, driving.Fault, driving.Probability, driving.Without);
                    Noted(asked, notes => notes.Likely(driving.When));
                    Act(right, notes => notes.Found.Driving(driving));
                });
                break;
        }
    }

    private static IRuleDefinition Translate(Check check, Detects detects) => Rule($"{check.Id} {detects}", (left, asked, right) =>
    {
        Seen(left, (seen, notes) => seen.Sign.Sign.Kind == SignKind.Outcome && seen.Sign.Sign.Id == check.Id
            && (detects.Value == null || detects.Value == seen.Sign.Sign.Value) && notes.Exists(detects.Fault));
        Act(right, (context, notes, seen) => notes.Link(context, seen, detects.Fault, detects.Surely, check.Id));
    });

    private static IRuleDefinition Rule(Rule rule, Action<GroupBuilder, PatternBuilder, ActionGroupBuilder> define) => Rule(rule.Id, define);

    private static IRuleDefinition Rule(string name, Action<GroupBuilder, PatternBuilder, ActionGroupBuilder> define)
    {
        var builder = new RuleBuilder();
        builder.Name(name);
        var asked = builder.LeftHandSide().Pattern(typeof(Notes), "notes");
        define(builder.LeftHandSide(), asked, builder.RightHandSide());
        return builder.Build();
    }

    private static void Seen(GroupBuilder left, Expression<Func<SeenFact, Notes, bool>> condition) => left.Pattern(typeof(SeenFact), "seen").Condition(condition);

    private static void Noted(PatternBuilder asked, Expression<Func<Notes, bool>> condition) => asked.Condition(condition);

    private static void Act(ActionGroupBuilder right, Expression<Action<IContext, Notes, SeenFact>> action) => right.Action(action);

    private static void Act(ActionGroupBuilder right, Expression<Action<Notes>> action) =>
        right.Action(Expression.Lambda<Action<IContext, Notes>>(action.Body, Expression.Parameter(typeof(IContext), "context"), action.Parameters[0]));

    private static void Without(GroupBuilder left, IReadOnlyList<string> symptoms)
    {
        foreach (var symptom in symptoms)
            left.Not().Pattern(typeof(SeenFact), "other").Condition((Expression<Func<SeenFact, bool>>)(other => other.Reported && other.Sign.Present && other.Sign.Sign == Sign.Symptom(symptom)));
    }

    private static void Triggers(
        GroupBuilder left, IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions, string? fault, double probability, IReadOnlyList<string> without)
    {
        Without(left, without);
        foreach (var (i, symptom) in symptoms.Index())
        {
            IReadOnlyList<string> on = i == 0 ? occasions : [];
            left.Exists().Pattern(typeof(SeenFact), "there").Condition(
                (Expression<Func<SeenFact, Notes, bool>>)((there, notes) => there.Sign.Present && there.Sign.Sign == Sign.Symptom(symptom) && notes.Speaks(there.Sign, on)));
        }

        if (fault is not null)
            left.Exists().Pattern(typeof(SuspectedFact), "suspect").Condition((Expression<Func<SuspectedFact, bool>>)(suspect => suspect.Fault == fault && suspect.Probability >= probability));
    }
}
