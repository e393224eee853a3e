using Advice;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Rows;

namespace Benchmarks.Floor;

/// <summary>One case run through the rows by plain loops.</summary>
internal sealed class PlainSession(Case @case, Catalogue catalogue, TriggerIndex index) : IRuleSession
{
    private readonly Inquiry _inquiry = new(@case, catalogue);
    private readonly HashSet<SeenSign> _signs = [];
    private readonly List<Seen> _seen = [];
    private readonly List<Link> _links = [];
    private readonly List<ImpliedSign> _implied = [];
    private readonly List<NormalReport> _normals = [];

    public CaseEvidence Gather()
    {
        foreach (var report in @case.Reports)
            See(new SeenSign(Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present), reported: true);
        foreach (var code in @case.Codes)
            See(new SeenSign(Sign.Code(code), [], null, true), reported: true);
        foreach (var outcome in @case.Outcomes)
        {
            foreach (var abnormal in catalogue.Checks[outcome.Check].Abnormal)
            {
                if (outcome.Value is null || outcome.Value == abnormal.Id)
                    See(new SeenSign(Sign.Outcome(outcome.Check, abnormal.Id), [], outcome.Position, outcome.Value is not null), reported: true);
            }
        }

        for (var i = 0; i < _seen.Count; i++)
            Follow(_seen[i]);
        return new CaseEvidence(
            [.. _links.OrderBy(link => link.Seen.ToString(), StringComparer.Ordinal).ThenBy(link => link.Rule, StringComparer.Ordinal).ThenBy(link => link.Fault, StringComparer.Ordinal)],
            Factors(),
            [.. _implied.OrderBy(one => one.Implied.ToString(), StringComparer.Ordinal).ThenBy(one => one.Rule.Id, StringComparer.Ordinal).ThenBy(one => one.From.ToString(), StringComparer.Ordinal)],
            [.. _normals.OrderBy(one => one.Rule.Id, StringComparer.Ordinal).ThenBy(one => one.Seen.ToString(), StringComparer.Ordinal)]);
    }

    public IReadOnlyList<DrivingRule> LimitDriving(IReadOnlyDictionary<string, double> suspected)
    {
        _inquiry.Suspect(suspected);
        var rules = Holding(index.Driving.Of(Symptoms(), suspected.Keys, []));
        return [.. rules.Select(row => row.Rule).OrderByDescending(rule => rule.Advice).ThenBy(rule => rule.Id, StringComparer.Ordinal)];
    }

    public IReadOnlyList<WarnsRule> Caution(IReadOnlyCollection<string> checks)
    {
        _inquiry.Advise(checks);
        var rules = Holding(index.Cautions.Of(Symptoms(), _inquiry.Suspected, checks));
        return [.. rules.Select(row => row.Rule).OrderBy(rule => rule.Id, StringComparer.Ordinal)];
    }

    private void See(SeenSign sign, bool reported)
    {
        if (!_signs.Add(sign))
            return;
        var seen = new Seen(sign, reported);
        _inquiry.Add(seen);
        _seen.Add(seen);
    }

    private void Follow(Seen seen)
    {
        foreach (var row in index.LinksOf(seen.Sign.Sign))
        {
            if (row.Holds(seen, _inquiry))
                _links.Add(row.Link(seen, _inquiry));
        }

        foreach (var row in index.NormalsOf(seen.Sign.Sign))
        {
            if (row.Holds(seen, _inquiry))
                _normals.Add(new NormalReport(seen.Sign, row.Rule));
        }

        foreach (var row in index.ImpliesOf(seen.Sign.Sign))
        {
            if (!row.Holds(seen, _inquiry))
                continue;
            var implied = row.Implied(seen);
            _implied.Add(new ImpliedSign(seen.Sign, implied, row.Rule));
            See(implied, reported: false);
        }
    }

    private List<OddsFactor> Factors()
    {
        var factors = new List<OddsFactor>();
        foreach (var fault in _links.Select(link => link.Fault).Distinct().Order(StringComparer.Ordinal))
        {
            foreach (var row in index.FactorsOf(fault))
            {
                if (row.Holds(_inquiry))
                    factors.Add(row.Factor);
            }
        }

        return factors;
    }

    private IEnumerable<T> Holding<T>(IEnumerable<T> rows)
        where T : CaseRow => rows.Where(row => row.Holds(_inquiry));

    private IEnumerable<string> Symptoms() => @case.Reports.Where(report => report.Present).Select(report => report.Symptom)
        .Concat(_implied.Where(one => one.Implied.Sign.Kind == SignKind.Symptom).Select(one => one.Implied.Sign.Id)).Distinct();
}
