using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Rows;

namespace Advice.Rules.Bench.Conditions;

/// <summary>What the conditions of rules look at in a case that was assessed.</summary>
internal sealed class CaseSight
{
    private readonly Catalogue _catalogue;
    private readonly ILookup<Sign, Seen> _seen;
    private readonly HashSet<string> _reported;
    private readonly IReadOnlyDictionary<string, double> _suspected;
    private readonly HashSet<string> _linked;
    private readonly HashSet<string> _spokenFor;
    private readonly HashSet<string> _advised;
    private readonly HashSet<string> _fired;

    public CaseSight(Advised advised, Catalogue catalogue)
    {
        _catalogue = catalogue;
        var (@case, evidence) = (advised.Case, advised.Evidence);
        Case = @case;
        _seen = @case.Reports.Select(report => new Seen(new(Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present), true))
            .Concat(@case.Codes.Select(code => new Seen(new(Sign.Code(code), [], null, true), true)))
            .Concat(evidence.Implied.Select(one => new Seen(one.Implied, false)))
            .ToLookup(seen => seen.Sign.Sign);
        _reported = [.. @case.Reports.Where(report => report.Present).Select(report => report.Symptom)];
        _suspected = advised.Suspicion.ByFault;
        _linked = [.. evidence.Links.Select(link => link.Fault)];
        _spokenFor = [.. _seen.Where(signs => signs.Any(seen => seen.Sign.Present)).SelectMany(signs => catalogue.ShowsBySign[signs.Key]).Select(rule => rule.Fault), .. _linked];
        _advised = [.. advised.Steps.Select(step => step.Check.Id), .. @case.Done];
        _fired =
        [
            .. evidence.Links.Where(link => link.Seen.Present).Select(link => link.Rule), .. evidence.Factors.Select(one => one.Rule.Id),
            .. evidence.Implied.Select(one => one.Rule.Id), .. evidence.Normals.Select(one => one.Rule.Id),
            .. advised.Driving.Select(rule => rule.Id), .. advised.Cautions.Select(rule => rule.Id),
        ];
    }

    /// <summary>The case.</summary>
    public Case Case { get; }

    /// <summary>Whether the rule applied to the case. Nothing records that something exists on a vehicle, so of a fits rule its conditions tell.</summary>
    public bool Fired(Rule rule) => _fired.Contains(rule.Id) || (rule is FitsRule && rule.When.Test(Case.Vehicle) != Truth.No);

    /// <summary>Whether a sign is there.</summary>
    public bool Sees(Sign sign) => _seen[sign].Any(seen => seen.Sign.Present);

    /// <summary>Whether a symptom was reported, and does not only follow from a report.</summary>
    public bool Reports(string symptom) => _reported.Contains(symptom);

    /// <summary>How far a sign is there on one of these occasions; open where it is not there or nobody said when.</summary>
    public Standing On(Sign sign, IReadOnlyList<string> occasions, bool reported = false)
    {
        var present = _seen[sign].Where(seen => seen.Sign.Present && (seen.Reported || !reported)).ToList();
        return present.Count == 0 ? Standing.Open
            : present.Exists(seen => seen.Sign.Occasions.Count > 0 && seen.Concerns(occasions, _catalogue)) ? Standing.Holds
            : present.Exists(seen => seen.Concerns(occasions, _catalogue)) ? Standing.Open : Standing.Fails;
    }

    /// <summary>Whether a fault is suspected at least that much.</summary>
    public bool Suspects(string fault, double probability) => _suspected.GetValueOrDefault(fault) >= probability;

    /// <summary>Whether a sign of the case speaks for or against a fault.</summary>
    public bool Links(string fault) => _linked.Contains(fault);

    /// <summary>Whether a sign of the case would speak for a fault if the vehicle had it.</summary>
    public bool SpeaksFor(string fault) => _spokenFor.Contains(fault);

    /// <summary>Whether a check is advised or done.</summary>
    public bool Advises(string check) => _advised.Contains(check);
}
