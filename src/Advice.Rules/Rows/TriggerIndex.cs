using Advice.Knowledge;

namespace Advice.Rules.Rows;

/// <summary>Which rows a sign, a fault or a check can bring into play, so that a session holds candidates only.</summary>
internal sealed class TriggerIndex
{
    private readonly ILookup<Sign, SignRow> _bySign;
    private readonly ILookup<string, FactorRow> _factors;
    private readonly ILookup<string, CaseRow> _bySymptom;
    private readonly ILookup<string, CaseRow> _byFault;
    private readonly ILookup<string, CaseRow> _byCheck;

    public TriggerIndex(Catalogue catalogue)
    {
        var rules = catalogue.Rules.Values.OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var outcomes = catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal).SelectMany(check => Outcomes(check, catalogue));
        _bySign = rules.OfType<ShowsRule>().Select(rule => (rule.Sign, Row: (SignRow)new LinkRow(rule, catalogue)))
            .Concat(rules.OfType<ImpliesRule>().Select(rule => (rule.Sign, Row: (SignRow)new ImpliesRow(rule))))
            .Concat(rules.OfType<NormalRule>().Select(rule => (Sign: Sign.Symptom(rule.Symptom), Row: (SignRow)new NormalRow(rule))))
            .Concat(outcomes.Select(row => (row.Sign, Row: (SignRow)row)))
            .ToLookup(pair => pair.Sign, pair => pair.Row);
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

    public IEnumerable<SignRow> Of(Sign sign) => _bySign[sign];

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
