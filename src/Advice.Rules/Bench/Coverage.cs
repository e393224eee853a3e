using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench;

/// <summary>What of a rule set its cases touch.</summary>
public sealed class Coverage
{
    private readonly Catalogue _catalogue;
    private readonly HashSet<string> _symptoms = [];
    private readonly HashSet<string> _codes = [];
    private readonly HashSet<string> _faults = [];
    private readonly HashSet<string> _checks = [];
    private readonly HashSet<string> _cautions = [];
    private readonly HashSet<string> _rules = [];

    /// <summary>The coverage by cases that were assessed.</summary>
    public Coverage(Catalogue catalogue, IEnumerable<Advised> cases)
    {
        ArgumentNullException.ThrowIfNull(cases);
        _catalogue = catalogue;
        foreach (var advised in cases)
            Add(advised);
    }

    /// <summary>What is covered, kind by kind; rules by their kind.</summary>
    public IReadOnlyList<CoveredKind> Kinds =>
    [
        Kind("symptoms", _catalogue.Symptoms.Keys, _symptoms), Kind("trouble codes", _catalogue.Codes.Keys, _codes),
        Kind("faults", _catalogue.Faults.Keys, _faults), Kind("checks", _catalogue.Checks.Keys, _checks),
        Kind("cautions", _catalogue.Cautions.Keys, _cautions),
        Rules<ShowsRule>("shows"), Rules<ProneRule>("prone"), Rules<FitsRule>("fits"), Rules<ImpliesRule>("implies"),
        Rules<WarnsRule>("warns"), Rules<DrivingRule>("driving"), Rules<NormalRule>("normal"),
    ];

    private CoveredKind Rules<T>(string kind)
        where T : Rule => Kind($"rules: {kind}", _catalogue.Rules.Values.OfType<T>().Select(rule => rule.Id), _rules);

    private static CoveredKind Kind(string kind, IEnumerable<string> all, HashSet<string> touched)
    {
        var ids = all.ToList();
        return new CoveredKind(kind, ids.Count, [.. ids.Where(id => !touched.Contains(id)).Order(StringComparer.Ordinal)]);
    }

    private void Add(Advised advised)
    {
        var (@case, evidence) = (advised.Case, advised.Evidence);
        _symptoms.UnionWith(@case.Reports.Select(report => report.Symptom));
        _symptoms.UnionWith(evidence.Implied.Where(one => one.Implied.Sign.Kind == SignKind.Symptom).Select(one => one.Implied.Sign.Id));
        _codes.UnionWith(@case.Codes);
        _faults.UnionWith(advised.Suspicion.Raised.Select(suspect => suspect.Instance.Fault.Id));
        _checks.UnionWith(advised.Steps.Select(step => step.Check.Id).Concat(@case.Outcomes.Select(outcome => outcome.Check)));
        _cautions.UnionWith(advised.Steps.SelectMany(step => step.Check.Cautions).Concat(advised.Cautions.Select(rule => rule.Caution)));
        _rules.UnionWith(evidence.Links.Select(link => link.Rule).Concat(evidence.Factors.Select(one => one.Rule.Id))
            .Concat(evidence.Implied.Select(one => one.Rule.Id)).Concat(evidence.Normals.Select(one => one.Rule.Id))
            .Concat(advised.Driving.Select(rule => rule.Id)).Concat(advised.Cautions.Select(rule => rule.Id))
            .Concat(Excluding(advised).Select(rule => rule.Id)));
    }

    /// <summary>A fits rule is at work where it keeps out a fault that a sign speaks for, or a check that would find a suspect.</summary>
    private IEnumerable<FitsRule> Excluding(Advised advised)
    {
        var signs = advised.Case.Reports.Where(report => report.Present).Select(report => Sign.Symptom(report.Symptom))
            .Concat(advised.Case.Codes.Select(Sign.Code)).Concat(advised.Evidence.Implied.Select(one => one.Implied.Sign)).Distinct();
        var faults = signs.SelectMany(sign => _catalogue.ShowsBySign[sign]).Select(rule => rule.Fault).Distinct().ToList();
        return faults.SelectMany(fault => _catalogue.FitsByFault[fault])
            .Concat(faults.SelectMany(fault => _catalogue.ChecksByFault[fault]).SelectMany(check => _catalogue.FitsByCheck[check.Id]))
            .Distinct().Where(rule => rule.When.Test(advised.Case.Vehicle) == Truth.No);
    }
}
