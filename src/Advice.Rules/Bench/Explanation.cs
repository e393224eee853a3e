using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench;

/// <summary>All that a rule set says about one rule, fault, check, symptom or trouble code, in lines.</summary>
public sealed class Explanation(Catalogue catalogue)
{
    private readonly IReadOnlyList<Rule> _rules = [.. catalogue.Rules.Values.OrderBy(rule => rule.Id, StringComparer.Ordinal)];

    /// <summary>The ids that can be explained.</summary>
    public IEnumerable<string> Ids => catalogue.Rules.Keys.Concat(catalogue.Faults.Keys).Concat(catalogue.Checks.Keys)
        .Concat(catalogue.Symptoms.Keys).Concat(catalogue.Codes.Keys).Concat(catalogue.Cautions.Keys);

    /// <summary>The explanation, for each kind of entry that has this id; nothing where none has.</summary>
    public IEnumerable<string> Of(string id)
    {
        if (catalogue.Rules.TryGetValue(id, out var rule))
            yield return $"rule {Wording.WithReason(rule)}";
        var lines = Enumerable.Empty<string>();
        if (catalogue.Faults.TryGetValue(id, out var fault))
            lines = lines.Concat(Fault(fault));
        if (catalogue.Checks.TryGetValue(id, out var check))
            lines = lines.Concat(Check(check));
        if (catalogue.Symptoms.TryGetValue(id, out var symptom))
            lines = lines.Concat(Seen(Sign.Symptom(id), $"symptom {id}: {symptom.Name.Trade}", symptom.UnexplainedShare));
        if (catalogue.Codes.TryGetValue(id, out var code))
            lines = lines.Concat(Seen(Sign.Code(id), $"trouble code {id}: {code.Meaning.Trade}", TroubleCode.UnexplainedShare));
        if (catalogue.Cautions.TryGetValue(id, out var caution))
            lines = lines.Concat(Caution(caution));
        foreach (var line in lines)
            yield return line;
    }

    private IEnumerable<string> Fault(Fault fault)
    {
        yield return $"fault {fault.Id}: {fault.Name.Trade}";
        yield return $"  base rate {Wording.Number(fault.Prior)} ({fault.Source}), ageing {fault.Ageing.Id}; {fault.Consequence.Id} = harm {Wording.Number(fault.Consequence.Harm)}; {fault.Deficiency.ToString().ToLowerInvariant()} when found";
        foreach (var line in Section("shown by", Rules<ShowsRule>(rule => rule.Fault == fault.Id).OrderByDescending(rule => rule.Often))
            .Concat(Section("exists", catalogue.FitsByFault[fault.Id]))
            .Concat(Section("likelier or less likely", Rules<ProneRule>(rule => rule.Faults.Contains(fault.Id))))
            .Concat(Section("driving", Rules<DrivingRule>(rule => rule.Fault == fault.Id)))
            .Concat(Section("cautions", Rules<WarnsRule>(rule => rule.Fault == fault.Id))))
            yield return line;
        yield return "  found by";
        foreach (var check in catalogue.ChecksByFault[fault.Id].OrderByDescending(check => check.Surely(fault.Id)))
            yield return $"    {check.Id} surely {Wording.Number(check.Surely(fault.Id))} in {Minutes(check)}";
    }

    private IEnumerable<string> Check(Check check)
    {
        yield return $"check {check.Id}: {check.Title.Trade}";
        yield return $"  {Minutes(check)}, by the {(check.DoneBy == DoneBy.Owner ? "owner" : "technician")}; looks bad on {Wording.Number(check.FalseAlarm)} of sound vehicles";
        yield return $"  cautions {(check.Cautions.Count == 0 ? "none" : string.Join(", ", check.Cautions))}";
        yield return "  finds";
        foreach (var detects in check.Detects)
        {
            var fault = catalogue.Faults[detects.Fault];
            yield return $"    {fault.Id}{(detects.Value is null ? "" : $" by {detects.Value}")} surely {Wording.Number(detects.Surely)} (base rate {Wording.Number(fault.Prior)}, harm {Wording.Number(fault.Consequence.Harm)})";
        }

        foreach (var limit in catalogue.LimitsByCheck[check.Id])
            yield return $"  limit {limit.Text.Trade}{Wording.Vehicles(limit.When)}{(limit.Jurisdiction is null ? "" : $" in {limit.Jurisdiction}")}  [{limit.Id}] ({limit.Source})";
        foreach (var line in Section("exists", catalogue.FitsByCheck[check.Id]).Concat(Section("cautions", Rules<WarnsRule>(rule => rule.Checks.Contains(check.Id)))))
            yield return line;
    }

    private IEnumerable<string> Seen(Sign sign, string title, double unexplained)
    {
        yield return title;
        var shows = catalogue.ShowsBySign[sign].OrderByDescending(rule => rule.Often * catalogue.Faults[rule.Fault].Prior).ToList();
        yield return $"  of all vehicles {Wording.Number(catalogue.ShownRates[sign])} show it by a listed fault and {Wording.Number(catalogue.Leaks[sign])} without one ({Wording.Number(unexplained)} of its reports)";
        yield return "  shown by (base rate × how often)";
        foreach (var rule in shows)
        {
            var prior = catalogue.Faults[rule.Fault].Prior;
            yield return $"    {Wording.Number(prior)} × {Wording.Number(rule.Often)} = {Wording.Number(prior * rule.Often)}  {Wording.WithReason(rule)}";
        }

        foreach (var line in Section("implies", Rules<ImpliesRule>(rule => rule.Sign == sign)).Concat(Section("implied by", Rules<ImpliesRule>(rule => rule.Implied == sign))))
            yield return line;
        if (sign.Kind == SignKind.Code)
            yield break;
        foreach (var line in Section("no fault", Rules<NormalRule>(rule => rule.Symptom == sign.Id))
            .Concat(Section("driving", Rules<DrivingRule>(rule => rule.Symptoms.Contains(sign.Id))))
            .Concat(Section("cautions", Rules<WarnsRule>(rule => rule.Symptoms.Contains(sign.Id))))
            .Concat(Section("keeps from applying", _rules.Where(rule => Without(rule).Contains(sign.Id)))))
            yield return line;
    }

    private IEnumerable<string> Caution(Caution caution)
    {
        yield return $"caution {caution.Id}{Wording.Vehicles(caution.When)}: {caution.Text.Trade} ({caution.Source})";
        var checks = catalogue.Checks.Values.Where(check => check.Cautions.Contains(caution.Id)).Select(check => check.Id).Order(StringComparer.Ordinal);
        yield return $"  on {string.Join(", ", checks.DefaultIfEmpty("no check"))}";
        foreach (var line in Section("called for", Rules<WarnsRule>(rule => rule.Caution == caution.Id)))
            yield return line;
    }

    private IEnumerable<T> Rules<T>(Func<T, bool> concerns)
        where T : Rule => _rules.OfType<T>().Where(concerns);

    private static IEnumerable<string> Section(string title, IEnumerable<Rule> rules)
    {
        var lines = rules.Select(rule => $"    {Wording.WithReason(rule)}").ToList();
        return lines.Count == 0 ? [] : lines.Prepend($"  {title}");
    }

    private static string Minutes(Check check) =>
        $"{string.Join(" + ", check.Needs.Where(need => need.Minutes > 0).Select(need => $"{need.Minutes} {need.Id}").Prepend($"{check.Minutes}"))} min";

    private static IReadOnlyList<string> Without(Rule rule) => rule switch
    {
        ShowsRule shows => shows.Without,
        ImpliesRule implies => implies.Without,
        NormalRule normal => normal.Without,
        WarnsRule warns => warns.Without,
        DrivingRule driving => driving.Without,
        _ => [],
    };
}
