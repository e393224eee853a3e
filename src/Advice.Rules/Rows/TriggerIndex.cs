using Advice.Knowledge;

namespace Advice.Rules.Rows;

/// <summary>Which rows a sign, a fault or a check can bring into play, so that a session holds candidates only.</summary>
internal sealed class TriggerIndex
{
    private readonly ILookup<Sign, LinkRow> _links;
    private readonly ILookup<Sign, ImpliesRow> _implies;
    private readonly ILookup<Sign, NormalRow> _normals;
    private readonly ILookup<string, FactorRow> _factors;
    private readonly ILookup<string, CaseRow> _bySymptom;
    private readonly ILookup<string, CaseRow> _byFault;
    private readonly ILookup<string, CaseRow> _byCheck;

    public TriggerIndex(Catalogue catalogue)
    {
        var rules = catalogue.Rules.Values.OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var outcomes = catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal).SelectMany(check => Outcomes(check, catalogue));
        _links = rules.OfType<ShowsRule>().Select(rule => new LinkRow(rule, catalogue)).Concat(outcomes).ToLookup(row => row.Sign);
        _implies = rules.OfType<ImpliesRule>().ToLookup(rule => rule.Sign, rule => new ImpliesRow(rule));
        _normals = rules.OfType<NormalRule>().ToLookup(rule => Sign.Symptom(rule.Symptom), rule => new NormalRow(rule));
        _factors = rules.OfType<ProneRule>().SelectMany(rule => rule.Faults, (rule, fault) => (fault, Row: new FactorRow(rule, fault)))
            .ToLookup(pair => pair.fault, pair => pair.Row);

        var warns = rules.OfType<WarnsRule>().Select(rule => (rule.Symptoms, rule.Fault, rule.Checks, Row: (CaseRow)new CautionRow(rule)));
        var driving = rules.OfType<DrivingRule>()
            .Select(rule => (rule.Symptoms, rule.Fault, Checks: (IReadOnlyList<string>)[], Row: (CaseRow)new DrivingRow(rule)));
        var all = warns.Concat(driving).ToList();
        _bySymptom = all.Where(one => one.Symptoms.Count > 0 && one.Fault is null && one.Checks.Count == 0)
            .ToLookup(one => one.Symptoms[0], one => one.Row);
        _byFault = all.Where(one => one.Fault is not null).ToLookup(one => one.Fault!, one => one.Row);
        _byCheck = all.Where(one => one.Fault is null).SelectMany(one => one.Checks, (one, check) => (check, one.Row))
            .ToLookup(pair => pair.check, pair => pair.Row);
    }

    public IEnumerable<LinkRow> LinksOf(Sign sign) => _links[sign];

    public IEnumerable<ImpliesRow> ImpliesOf(Sign sign) => _implies[sign];

    public IEnumerable<NormalRow> NormalsOf(Sign sign) => _normals[sign];

    public IEnumerable<FactorRow> FactorsOf(string fault) => _factors[fault];

    public IEnumerable<CaseRow> OfSymptom(string symptom) => _bySymptom[symptom];

    public IEnumerable<CaseRow> OfFault(string fault) => _byFault[fault];

    public IEnumerable<CaseRow> OfCheck(string check) => _byCheck[check];

    private static IEnumerable<LinkRow> Outcomes(Check check, Catalogue catalogue)
    {
        foreach (var abnormal in check.Abnormal)
        {
            foreach (var detects in check.Detects.Where(detects => detects.Value is null || detects.Value == abnormal.Id))
                yield return new LinkRow(check, detects, abnormal.Id, abnormal.Text, catalogue);
        }
    }
}
