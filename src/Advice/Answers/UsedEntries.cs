using Advice.Judging;
using Advice.Knowledge;

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

    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>Those entries, by kind and id, some of them more than once.</summary>
    /// <param name="advised">What was concluded.</param>
    /// <param name="cautions">Ids of the cautions that the answer gives.</param>
    /// <param name="services">Ids of the service items that it names.</param>
    public IEnumerable<(string Kind, string Id)> Of(Advised advised, IEnumerable<string> cautions, IEnumerable<string> services)
    {
        var steps = advised.Steps.Select(step => step.Check).ToList();
        return Rules(advised).Select(id => ("rule", id))
            .Concat(advised.Suspicion.Raised.Select(suspect => ("fault", suspect.Instance.Fault.Id)))
            .Concat(advised.Case.Reports.Select(report => ("symptom", report.Symptom)))
            .Concat(advised.Case.Codes.Select(code => ("trouble code", code)))
            .Concat(steps.Select(check => (Check, check.Id)))
            .Concat(steps.SelectMany(check => check.Needs, (_, need) => ("set-up", need.Id)))
            .Concat(Limits(steps, advised.Case).Select(limit => (Limit, limit.Id)))
            .Concat(cautions.Select(caution => ("caution", caution)))
            .Concat(services.Select(service => (ServiceItem, service)));
    }

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
    private IEnumerable<Knowledge.Limit> Limits(IEnumerable<Knowledge.Check> steps, Case @case) =>
        steps.Concat(@case.Outcomes.Select(outcome => outcome.Check).Concat(@case.Done).Distinct().Select(id => catalogue.Checks[id]))
            .SelectMany(check => _limits.For(check, position: null, @case));
}
