using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Tests.Oracles;

/// <summary>What rules conclude, by looking at every rule for every sign: no index, no rules engine. Written from rules/README.md.</summary>
internal sealed class PlainLoop(Catalogue known, RandomCase asked)
{
    private readonly Case _case = asked.Case;
    private readonly List<(SeenSign Sign, bool Reported)> _seen = [];
    private readonly Findings _found = new();

    public Findings Run()
    {
        _seen.AddRange(Reported(_case, known).Distinct().Select(sign => (sign, true)));
        for (var i = 0; i < _seen.Count; i++)
            Imply(_seen[i].Sign);
        var linked = _seen.SelectMany(seen => Links(seen.Sign)).ToHashSet();
        foreach (var rule in known.Rules.Values)
        {
            switch (rule)
            {
                case NormalRule normal:
                    foreach (var (sign, _) in _seen.Where(seen => seen.Reported && seen.Sign.Present && seen.Sign.Sign == Sign.Symptom(normal.Symptom)))
                        if (Speaks(sign, normal.Occasions, known) && !Excluded(normal.Without) && Likely(normal.When))
                            _found.Normal(sign, normal);
                    break;
                case ProneRule prone when PlainCondition.IsMet(prone.When, _case.Vehicle) && (prone.Service is null || Served(prone.Service, _case)):
                    foreach (var fault in prone.Faults.Where(linked.Contains))
                        _found.Factor(fault, prone);
                    break;
                case WarnsRule warns:
                    if (Triggered(warns.Symptoms, warns.Occasions, warns.Fault, warns.Probability, warns.Without, warns.When)
                        && (warns.Checks.Count == 0 || warns.Checks.Any(asked.Advised.Contains)))
                        _found.Warns(warns);
                    break;
                case DrivingRule driving:
                    if (Triggered(driving.Symptoms, driving.Occasions, driving.Fault, driving.Probability, driving.Without, driving.When))
                        _found.Driving(driving);
                    break;
            }
        }

        return _found;
    }

    /// <summary>The signs of a case.</summary>
    public static IEnumerable<SeenSign> Reported(Case @case, Catalogue known)
    {
        foreach (var report in @case.Reports)
            yield return new SeenSign(Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present);
        foreach (var code in @case.Codes)
            yield return new SeenSign(Sign.Code(code), [], null, true);
        foreach (var outcome in @case.Outcomes)
            foreach (var value in known.Checks[outcome.Check].Abnormal.Select(abnormal => abnormal.Id))
                if (outcome.Value is null || outcome.Value == value)
                    yield return new SeenSign(Sign.Outcome(outcome.Check, value), [], outcome.Position, outcome.Value is not null);
    }

    private void Imply(SeenSign sign)
    {
        foreach (var rule in known.Rules.Values.OfType<ImpliesRule>().Where(rule => rule.Sign == sign.Sign))
        {
            if (!sign.Present || !Speaks(sign, rule.Occasions, known) || Excluded(rule.Without) || !Likely(rule.When))
                continue;
            var symptom = rule.Implied.Kind == SignKind.Symptom;
            var implied = new SeenSign(rule.Implied, symptom ? sign.Occasions : [], symptom ? sign.Position : null, true);
            _found.Implied(sign, implied, rule);
            if (!_seen.Exists(seen => seen.Sign.Equals(implied)))
                _seen.Add((implied, false));
        }
    }

    /// <summary>Ids of the faults that the sign is linked to.</summary>
    private IEnumerable<string> Links(SeenSign sign)
    {
        foreach (var rule in known.Rules.Values.OfType<ShowsRule>())
        {
            if (rule.Sign != sign.Sign || !Speaks(sign, rule.Occasions, known) || Excluded(rule.Without) || PlainCondition.IsRuledOut(rule.When, _case.Vehicle) || !Exists(rule.Fault))
                continue;
            _found.Link(sign, rule.Fault, rule.Often * PlainCondition.Share(rule.When, _case.Vehicle), rule.Id);
            yield return rule.Fault;
        }

        foreach (var check in known.Checks.Values.Where(check => sign.Sign.Kind == SignKind.Outcome && check.Id == sign.Sign.Id))
            foreach (var detects in check.Detects.Where(detects => (detects.Value is null || detects.Value == sign.Sign.Value) && Exists(detects.Fault)))
            {
                _found.Link(sign, detects.Fault, detects.Surely, check.Id);
                yield return detects.Fault;
            }
    }

    private bool Exists(string fault) =>
        !known.Rules.Values.OfType<FitsRule>().Any(rule => rule.Faults.Contains(fault) && PlainCondition.IsRuledOut(rule.When, _case.Vehicle));

    /// <summary>A report without occasion fits every rule but one that asks for events alone; a stated one must fit, where an event states
    /// nothing about the rest; a denial with an occasion denies that occasion only.</summary>
    public static bool Speaks(SeenSign sign, IReadOnlyList<string> asked, Catalogue known)
    {
        if (asked.Count == 0)
            return sign.Present || sign.Occasions.Count == 0;
        var open = sign.Occasions.All(one => known.Occasions[one].IsEvent) && !asked.All(one => known.Occasions[one].IsEvent);
        return open || sign.Occasions.Any(stated => asked.Any(one => Within(stated, one, known) || Within(one, stated, known)));
    }

    private static bool Within(string? narrow, string wide, Catalogue known) =>
        narrow is not null && (narrow == wide || Within(known.Occasions[narrow].Within, wide, known));

    private bool Excluded(IReadOnlyList<string> without) => _case.Reports.Any(report => report.Present && without.Contains(report.Symptom));

    private bool Likely(VehicleCondition when) => PlainCondition.IsLikely(when, _case.Vehicle);

    private bool Triggered(
        IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions, string? fault, double probability, IReadOnlyList<string> without, VehicleCondition when) =>
        symptoms.Select((symptom, i) => _seen.Exists(seen =>
            seen.Sign.Present && seen.Sign.Sign == Sign.Symptom(symptom) && Speaks(seen.Sign, i == 0 ? occasions : [], known))).All(there => there)
        && (fault is null || asked.Suspected.GetValueOrDefault(fault) >= probability) && !Excluded(without) && Likely(when);

    /// <summary>Whether the last service that was given is old in years or in distance, and recent in both, as far as that is asked.</summary>
    public static bool Served(ServiceTest test, Case @case)
    {
        if (!@case.Services.TryGetValue(test.Item, out var done))
            return false;
        double? years = done.On is { } on ? (@case.AsOf.DayNumber - on.DayNumber) / MeanYear.Days : null;
        var km = @case.Vehicle.Number("odometerKm") - done.OdometerKm;
        var old = years > test.OlderThanYears || km > test.OlderThanKm || (test.OlderThanYears is null && test.OlderThanKm is null);
        var recent = (test.WithinYears is null || years <= test.WithinYears) && (test.WithinKm is null || km <= test.WithinKm);
        return old && recent;
    }
}
