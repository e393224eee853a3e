using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Rows;

/// <summary>Which rows a sign, a fault or a check can bring into play, so that a session holds candidates only. Rows stand by rule, then fault.</summary>
internal sealed class TriggerIndex
{
    private readonly RowsBy<Sign, LinkRow> _links;
    private readonly RowsBy<Sign, ImpliesRow> _implies;
    private readonly RowsBy<Sign, NormalRow> _normals;
    private readonly RowsBy<string, FactorRow> _factors;
    private readonly RowsBy<Sign, string> _without;

    public TriggerIndex(Catalogue catalogue)
    {
        var rules = catalogue.Rules.Values.OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var outcomes = catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal).SelectMany(check => Outcomes(check, catalogue));
        _links = new(rules.OfType<ShowsRule>().Select(rule => new LinkRow(rule, catalogue)).Concat(outcomes)
            .OrderBy(row => row.Rule, StringComparer.Ordinal).ThenBy(row => row.Fault, StringComparer.Ordinal).Select(row => (row.Sign, row)));
        _implies = new(rules.OfType<ImpliesRule>().Select(rule => (rule.Sign, new ImpliesRow(rule))));
        _normals = new(rules.OfType<NormalRule>().Select(rule => (Sign.Symptom(rule.Symptom), new NormalRow(rule))));
        _factors = new(rules.OfType<ProneRule>().SelectMany(rule => rule.Faults, (rule, fault) => (fault, new FactorRow(rule, fault))));
        _without = new(rules.SelectMany(Without).Distinct());
        Cautions = new([.. rules.OfType<WarnsRule>().Select(rule => (rule.Symptoms, rule.Fault, rule.Checks, new CautionRow(rule)))]);
        Driving = new([.. rules.OfType<DrivingRule>().Select(rule => (rule.Symptoms, rule.Fault, (IReadOnlyList<string>)[], new DrivingRow(rule)))]);
    }

    public CaseRowIndex<CautionRow> Cautions { get; }

    public CaseRowIndex<DrivingRow> Driving { get; }

    public LinkRow[] LinksOf(Sign sign) => _links[sign];

    public ImpliesRow[] ImpliesOf(Sign sign) => _implies[sign];

    public NormalRow[] NormalsOf(Sign sign) => _normals[sign];

    public FactorRow[] FactorsOf(string fault) => _factors[fault];

    /// <summary>Ids of the symptoms that may not be reported where rows of a sign are to hold.</summary>
    public string[] WithoutOf(Sign sign) => _without[sign];

    private static IEnumerable<(Sign Sign, string Symptom)> Without(Rule rule)
    {
        var (sign, without) = rule switch
        {
            ShowsRule shows => (shows.Sign, shows.Without),
            ImpliesRule implies => (implies.Sign, implies.Without),
            NormalRule normal => (Sign.Symptom(normal.Symptom), normal.Without),
            _ => (default, []),
        };
        return without.Select(symptom => (sign, symptom));
    }

    private static IEnumerable<LinkRow> Outcomes(Check check, Catalogue catalogue)
    {
        foreach (var abnormal in check.Abnormal)
        {
            var says = check.Measure is null ? new Text(abnormal.Text, abnormal.Text) : catalogue.BeyondLimit;
            foreach (var detects in check.Detects.Where(detects => detects.Value is null || detects.Value == abnormal.Id))
                yield return new LinkRow(check, detects, abnormal.Id, says, catalogue);
        }
    }
}
