using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Symptoms;

namespace Advice.Rules.Bench.Probes;

/// <summary>Changes one thing of a case at a time.</summary>
internal sealed class ProbeChanges(Catalogue catalogue)
{
    /// <summary>The case with one thing left open that a condition asks for: a vehicle fact, a service, an occasion.</summary>
    public static IEnumerable<Case> Opened(Case @case, Rule rule) =>
    [
        .. ProbeVehicles.Opened(@case.Vehicle, rule.When.Tests).Select(vehicle => @case with { Vehicle = vehicle }),
        .. rule is ProneRule { Service: not null } ? [@case with { Services = new Dictionary<string, ServiceDone>() }] : Array.Empty<Case>(),
        .. Each(@case, report => report.Occasions.Count > 0 ? [report with { Occasions = [] }] : []),
    ];

    /// <summary>The case with one thing changed, so that a condition is contradicted.</summary>
    public IEnumerable<Case> Contradicted(Case @case, Rule rule) =>
    [
        .. ProbeVehicles.Changed(@case.Vehicle, rule.When.Tests).Select(vehicle => @case with { Vehicle = vehicle }),
        .. rule is ProneRule { Service: { } service } ? ProbeServices.Changed(@case, service) : [],
        .. Each(@case, report => [report with { Present = false }]),
        .. ProbeCases.ExcludedBy(rule).Select(symptom => ProbeSigns.With(@case, Sign.Symptom(symptom), [])),
        @case with { Codes = [] },
        @case with { Outcomes = [.. @case.Outcomes.Select(outcome => outcome with { Value = null })] },
        @case with { Reports = [.. @case.Reports.Where(report => IsAskedBy(rule, report.Symptom))], Outcomes = [], Codes = [], Done = new HashSet<string>() },
        .. Each(@case, OnOtherOccasions),
    ];

    private static bool IsAskedBy(Rule rule, string symptom) => rule switch
    {
        WarnsRule warns => warns.Symptoms.Contains(symptom),
        DrivingRule driving => driving.Symptoms.Contains(symptom),
        _ => false,
    };

    private static IEnumerable<Case> Each(Case @case, Func<Report, IEnumerable<Report>> change) => @case.Reports.Index().SelectMany(report =>
        change(report.Item).Select(changed => @case with { Reports = [.. @case.Reports.Select((kept, i) => i == report.Index ? changed : kept)] }));

    private IEnumerable<Report> OnOtherOccasions(Report report) => report.Occasions.Count == 0 ? [] :
        catalogue.Occasions.Keys.Order(StringComparer.Ordinal).Where(id => !catalogue.OccasionsFit([id], report.Occasions)).Select(id => report with { Occasions = [id] });
}
