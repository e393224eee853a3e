using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Bench.Reading;

/// <summary>What a rule set says to owners, by kind.</summary>
public static class OwnerTexts
{
    /// <summary>The kinds, each with its texts and where they stand.</summary>
    public static IReadOnlyList<(string Kind, IReadOnlyList<(string Id, string Text)> Texts)> Of(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var ownChecks = catalogue.Checks.Values.Where(check => check.DoneBy == DoneBy.Owner).OrderBy(check => check.Id, StringComparer.Ordinal).ToList();
        return
        [
            ("titles of checks", [.. catalogue.Checks.Values.Select(check => (check.Id, check.Title.Plain))]),
            ("what to do, checks that owners can do", [.. ownChecks.SelectMany(check => check.Method.Select(line => (check.Id, line)))]),
            ("what is found, checks that owners can do", [.. ownChecks.SelectMany(check => check.Observations.Select(one => (check.Id, one.Text)))]),
            ("names of faults", [.. catalogue.Faults.Values.Select(fault => (fault.Id, fault.Name.Plain))]),
            ("reasons", [.. catalogue.Rules.Values.OfType<ShowsRule>().Select(rule => (rule.Id, rule.Because.Plain))]),
            ("driving advice", [.. catalogue.Rules.Values.OfType<DrivingRule>().Select(rule => (rule.Id, rule.Because.Plain))]),
            ("cautions", [.. catalogue.Cautions.Values.Select(caution => (caution.Id, caution.Text.Plain))]),
            ("questions", [.. catalogue.Symptoms.Values.Select(symptom => (symptom.Id, symptom.Ask))]),
            ("sentences of answers", [.. catalogue.Wordings.Values.OrderBy(wording => wording.Sentence.Id, StringComparer.Ordinal).Select(wording => (wording.Sentence.Id, wording.Text.Plain))]),
            ("services", [.. catalogue.Services.Values.Select(item => (item.Id, item.Name.Plain))]),
        ];
    }
}
