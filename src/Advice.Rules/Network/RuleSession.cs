using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Rows;
using NRules;

namespace Advice.Rules.Network;

/// <summary>One NRules session for one case. What is known of the case beforehand is taken over; the signs are those that it has beside that.</summary>
internal sealed class RuleSession : IRuleSession
{
    private const int MostFirings = 100_000;

    private readonly ISession _session = AdviceNetwork.Open();
    private readonly TriggerIndex _index;
    private readonly Inquiry _inquiry;
    private readonly Workspace _work;

    private readonly CaseEvidence _known;
    private readonly IEnumerable<SeenSign> _signs;

    public RuleSession(Case @case, Catalogue catalogue, TriggerIndex index, KnownCase known, IEnumerable<SeenSign> signs)
    {
        (_index, _signs) = (index, signs);
        _known = known.Evidence;
        _inquiry = new Inquiry(@case, catalogue);
        _work = new Workspace(_inquiry, index, known);
    }

    public CaseEvidence Gather()
    {
        _session.Insert(_work);
        _session.InsertAll(_signs.SelectMany(sign => _work.See(new Seen(sign, reported: true))).ToList());
        _session.Fire(MostFirings);
        return new CaseEvidence(
            Sorted.Merge(
                _known.Links, [.. _work.LinksBySign.OrderBy(links => links[0].Seen.ToString(), StringComparer.Ordinal).SelectMany(links => links)],
                (one, other) => string.CompareOrdinal(one.Seen.ToString(), other.Seen.ToString())),
            Sorted.Merge(
                _known.Factors, [.. _work.Factors.OrderBy(one => one.Fault, StringComparer.Ordinal).ThenBy(one => one.Rule.Id, StringComparer.Ordinal)],
                (one, other) => string.CompareOrdinal(one.Fault, other.Fault)),
            [.. Implied().OrderBy(one => one.Implied.ToString(), StringComparer.Ordinal).ThenBy(one => one.Rule.Id, StringComparer.Ordinal)
                .ThenBy(one => one.From.ToString(), StringComparer.Ordinal)],
            [.. _known.Normals.Concat(_work.Normals).OrderBy(one => one.Rule.Id, StringComparer.Ordinal).ThenBy(one => one.Seen.ToString(), StringComparer.Ordinal)]);
    }

    public IReadOnlyList<DrivingRule> LimitDriving(IReadOnlyDictionary<string, double> suspected)
    {
        _inquiry.Suspect(suspected);
        Fire(_index.Driving.Of(Symptoms(), suspected.Keys, []));
        return [.. _work.Driving.OrderByDescending(rule => rule.Advice).ThenBy(rule => rule.Id, StringComparer.Ordinal)];
    }

    public IReadOnlyList<WarnsRule> Caution(IReadOnlyCollection<string> checks)
    {
        _inquiry.Advise(checks);
        Fire(_index.Cautions.Of(Symptoms(), _inquiry.Suspected, checks));
        return [.. _work.Cautions.OrderBy(rule => rule.Id, StringComparer.Ordinal)];
    }

    private void Fire<TRow>(IEnumerable<TRow> rows)
        where TRow : CaseRow
    {
        if (rows.Where(row => row.Holds(_inquiry)).ToList() is not { Count: > 0 } holding)
            return;
        _session.Insert(new CaseRows<TRow>(holding));
        _session.Fire(MostFirings);
    }

    /// <summary>Symptoms that were reported or follow from what was.</summary>
    private IEnumerable<string> Symptoms() => _inquiry.Case.Reports.Where(report => report.Present).Select(report => report.Symptom)
        .Concat(Implied().Where(one => one.Implied.Sign.Kind == SignKind.Symptom).Select(one => one.Implied.Sign.Id)).Distinct();

    private IEnumerable<ImpliedSign> Implied() => _known.Implied.Concat(_work.Implied);
}
