using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Words of the vocabulary that nothing uses, and services that some vehicles never get.</summary>
internal sealed class UnusedWords(Tables tables, Problems doubts)
{
    /// <summary>Checks symptoms, codes, cautions, set-ups and services.</summary>
    public void Check()
    {
        var rules = tables.Rules.Bound;
        var signs = rules.SelectMany(Signs).ToHashSet();
        Each(tables.Symptoms, tables.Symptoms.Bound.Select(symptom => symptom.Id), id => signs.Contains(Sign.Symptom(id)), "no rule uses");
        Each(tables.Codes, tables.Codes.Bound.Select(code => code.Id), id => signs.Contains(Sign.Code(id)), "no rule uses");
        var checks = tables.Checks.Bound;
        var cautions = checks.SelectMany(check => check.Cautions).Concat(rules.OfType<WarnsRule>().Select(rule => rule.Caution))
            .Concat(tables.SetUps.Bound.SelectMany(setUp => setUp.Cautions)).ToHashSet();
        Each(tables.Cautions, tables.Cautions.Bound.Select(caution => caution.Id), cautions.Contains, "no check, set-up or rule gives");
        var needs = checks.SelectMany(check => check.Needs).Select(need => need.Id).ToHashSet();
        Each(tables.SetUps, tables.SetUps.Bound.Select(setUp => setUp.Id), needs.Contains, "no check needs");
        var asked = rules.OfType<ProneRule>().Select(prone => prone.Service?.Item).ToHashSet();
        Each(tables.Services, tables.Services.Bound.Where(service => service.Intervals.Count == 0).Select(service => service.Id), asked.Contains, "no interval is given and no rule asks for");
        foreach (var service in tables.Services.Bound.Where(service => service.Intervals.Count > 0 && service.Intervals.All(interval => interval.Duty is not null)))
            doubts.Add(WarningCode.NeverDue, tables.Services.PlaceOf(service.Id), $"every interval of '{service.Id}' is for one duty, so that it is never due where the duty is not stated");
    }

    private void Each(IDeclaredIds ids, IEnumerable<string> all, Func<string, bool> isUsed, string none)
    {
        foreach (var id in all.Where(id => !isUsed(id)))
            doubts.Add(WarningCode.Unused, ids.PlaceOf(id), $"{none} the {ids.Noun} '{id}'");
    }

    private static IEnumerable<Sign> Signs(Rule rule) => rule switch
    {
        ShowsRule shows => [shows.Sign],
        ImpliesRule implies => [implies.Sign, implies.Implied],
        NormalRule normal => [Sign.Symptom(normal.Symptom)],
        WarnsRule warns => warns.Symptoms.Select(Sign.Symptom),
        DrivingRule driving => driving.Symptoms.Select(Sign.Symptom),
        _ => [],
    };
}
