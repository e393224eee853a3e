using Advice.Documents.Judgements;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;

namespace Advice.Answers;

/// <summary>The entries of a set that have a part in an answer.</summary>
internal sealed class UsedEntries(Catalogue catalogue)
{
    /// <summary>The kind of entry that a service item is.</summary>
    public const string ServiceItem = "service item";

    /// <summary>The kind of entry that a limit is.</summary>
    public const string Limit = "limit";

    /// <summary>The kind of entry that a check is.</summary>
    public const string Check = "check";

    /// <summary>The kind of entry that the meaning of a verdict is.</summary>
    public const string Meaning = "meaning";

    /// <summary>The kind of entry that a symptom is.</summary>
    public const string Symptom = "symptom";

    /// <summary>The kind of entry that an occasion is.</summary>
    public const string Occasion = "occasion";

    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>Those entries, by kind and id, some of them more than once.</summary>
    /// <param name="advised">What was concluded.</param>
    /// <param name="named">What the answer names beside that.</param>
    public IEnumerable<(string Kind, string Id)> Of(Advised advised, NamedEntries named)
    {
        var steps = advised.Steps.Select(step => step.Check).ToList();
        var faults = advised.Suspicion.Raised.Select(suspect => suspect.Instance.Fault).ToList();
        return Rules(advised).Select(id => ("rule", id))
            .Concat(faults.Select(fault => ("fault", fault.Id)))
            .Concat(faults.Select(fault => ("ageing", fault.Ageing.Id)))
            .Concat(faults.Select(fault => ("consequence", fault.Consequence.Id)))
            .Concat(advised.Case.Reports.Select(report => (Symptom, report.Symptom)))
            .Concat(advised.Case.Reports.SelectMany(report => report.Occasions).Select(occasion => (Occasion, occasion)))
            .Concat(advised.Case.Codes.Select(code => ("trouble code", code)))
            .Concat(advised.Case.Codes.SelectMany(catalogue.FamiliesOf).Select(family => ("family of codes", family.Id)))
            .Concat(steps.Select(check => (Check, check.Id)))
            .Concat(steps.Select(check => ("area", check.Area.Id)))
            .Concat(steps.SelectMany(check => check.Needs, (_, need) => ("set-up", need.Id)))
            .Concat(Limits(steps, advised.Case).Select(limit => (Limit, limit.Id)))
            .Concat(named.Judgements.SelectMany(judgement => judgement.Arithmetic).SelectMany(MeaningsOf).Select(meaning => (Meaning, meaning.Id)))
            .Concat(named.Cautions.Select(caution => ("caution", caution)))
            .Concat(named.Services.Select(service => (ServiceItem, service)));
    }

    /// <summary>What the verdict of a computation means.</summary>
    public IEnumerable<Knowledge.Meaning> MeaningsOf(ComputationDocument given) =>
        catalogue.MeaningsByComputation[given.Computation].Where(meaning => given.Verdict is { } verdict && meaning.Verdicts.Contains(verdict));

    private IEnumerable<string> Rules(Advised advised) =>
        advised.Evidence.Links.Select(link => link.Rule)
            .Concat(advised.Evidence.Factors.Select(factor => factor.Rule.Id))
            .Concat(advised.Evidence.Implied.Select(implied => implied.Rule.Id))
            .Concat(advised.Evidence.Normals.Select(normal => normal.Rule.Id))
            .Concat(advised.Driving.Select(rule => rule.Id))
            .Concat(advised.Cautions.Select(rule => rule.Id))
            .Concat(advised.Suspicion.Raised.SelectMany(suspect => catalogue.FitsByFault[suspect.Instance.Fault.Id]).Select(rule => rule.Id))
            .Concat(advised.Steps.SelectMany(step => catalogue.FitsByCheck[step.Check.Id]).Select(rule => rule.Id));

    /// <summary>The limits that steps state and findings were held against.</summary>
    private IEnumerable<Limit> Limits(IEnumerable<Check> steps, Case @case) =>
        steps.Concat(@case.Outcomes.Select(outcome => outcome.Check).Concat(@case.Done).Distinct().Select(id => catalogue.Checks[id]))
            .SelectMany(check => _limits.For(check, position: null, @case));
}
