using Advice.Evidence;
using Advice.Knowledge.Rules;
using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>What the rules of one session write to, and where they find what a conclusion brings into play.</summary>
internal sealed class Workspace
{
    private readonly Inquiry _inquiry;
    private readonly TriggerIndex _index;
    private readonly HashSet<string> _linkedFaults;
    private readonly HashSet<SeenSign> _signs;

    public Workspace(Inquiry inquiry, TriggerIndex index, KnownCase known)
    {
        (_inquiry, _index) = (inquiry, index);
        _linkedFaults = new HashSet<string>(known.LinkedFaults);
        _signs = [.. known.Signs.Select(seen => seen.Sign)];
        foreach (var seen in known.Signs)
            inquiry.Add(seen);
    }

    /// <summary>The links of each sign, by rule, then fault.</summary>
    public List<List<Link>> LinksBySign { get; } = [];

    public List<OddsFactor> Factors { get; } = [];

    public List<ImpliedSign> Implied { get; } = [];

    public List<NormalReport> Normals { get; } = [];

    public List<WarnsRule> Cautions { get; } = [];

    public List<DrivingRule> Driving { get; } = [];

    /// <summary>What a sign brings, once per sign.</summary>
    public IEnumerable<object> See(Seen seen)
    {
        if (!_signs.Add(seen.Sign))
            yield break;
        _inquiry.Add(seen);
        if (Holding(_index.ImpliesOf(seen.Sign.Sign), seen) is { Count: > 0 } implied)
            yield return new SignRows<ImpliesRow>(seen, implied);
        if (Holding(_index.LinksOf(seen.Sign.Sign), seen) is { Count: > 0 } links)
            yield return new SignRows<LinkRow>(seen, links);
        if (Holding(_index.NormalsOf(seen.Sign.Sign), seen) is { Count: > 0 } normals)
            yield return new SignRows<NormalRow>(seen, normals);
    }

    /// <summary>Notes the signs that follow from one; what they bring.</summary>
    public IReadOnlyList<object> Imply(SignRows<ImpliesRow> rows)
    {
        var brought = new List<object>();
        foreach (var row in rows.Rows)
        {
            var implied = row.Implied(rows.Seen);
            Implied.Add(new ImpliedSign(rows.Seen.Sign, implied, row.Rule));
            brought.AddRange(See(new Seen(implied, reported: false)));
        }

        return brought;
    }

    /// <summary>Notes the faults that a sign speaks for; what makes these more likely, once per fault.</summary>
    public IReadOnlyList<object> Link(SignRows<LinkRow> rows)
    {
        var (links, factors) = (new List<Link>(rows.Rows.Count), new List<FactorRow>());
        foreach (var row in rows.Rows)
        {
            links.Add(row.Link(rows.Seen, _inquiry));
            if (!_linkedFaults.Add(row.Fault))
                continue;
            foreach (var factor in _index.FactorsOf(row.Fault))
            {
                if (factor.Holds(_inquiry))
                    factors.Add(factor);
            }
        }

        LinksBySign.Add(links);
        return factors.Count > 0 ? [new CaseRows<FactorRow>(factors)] : [];
    }

    /// <summary>Notes that a report may be no fault.</summary>
    public void Normal(SignRows<NormalRow> rows) => Normals.AddRange(rows.Rows.Select(row => new NormalReport(rows.Seen.Sign, row.Rule)));

    /// <summary>Notes what makes faults more or less likely.</summary>
    public void Weigh(CaseRows<FactorRow> rows) => Factors.AddRange(rows.Rows.Select(row => row.Factor));

    /// <summary>Notes what the case calls for.</summary>
    public void Caution(CaseRows<CautionRow> rows) => Cautions.AddRange(rows.Rows.Select(row => row.Rule));

    /// <summary>Notes what limits driving.</summary>
    public void LimitDriving(CaseRows<DrivingRow> rows) => Driving.AddRange(rows.Rows.Select(row => row.Rule));

    private List<TRow> Holding<TRow>(TRow[] rows, Seen seen)
        where TRow : SignRow
    {
        var holding = new List<TRow>(rows.Length);
        foreach (var row in rows)
        {
            if (row.Holds(seen, _inquiry))
                holding.Add(row);
        }

        return holding;
    }
}
