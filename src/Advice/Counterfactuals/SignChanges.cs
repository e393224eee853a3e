using System.Text.Json.Nodes;
using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Counterfactuals;

/// <summary>Signs of a fault that a case does not have, or not on the occasion that tells.</summary>
internal sealed class SignChanges(Catalogue catalogue)
{
    private const int MostOfAKind = 12;

    /// <summary>Occasions of reported symptoms, further symptoms and trouble codes, the strongest first.</summary>
    /// <param name="shows">What the fault shows, the strongest first.</param>
    /// <param name="case">The case.</param>
    public IEnumerable<Change> Of(IEnumerable<ShowsRule> shows, Case @case)
    {
        var open = shows.Where(rule => rule.When.Test(@case.Vehicle) != Truth.No).ToList();
        var reports = @case.Reports.ToLookup(report => report.Symptom);
        var symptoms = open.Where(rule => rule.Sign.Kind == SignKind.Symptom).ToList();
        return symptoms.Where(rule => reports[rule.Sign.Id].Any() && reports[rule.Sign.Id].All(report => report.Present))
            .SelectMany(rule => rule.Occasions.Where(occasion => !reports[rule.Sign.Id].Any(report => report.Occasions.Contains(occasion))), (rule, occasion) => (rule.Sign.Id, occasion))
            .Distinct().Take(MostOfAKind).Select(one => Reported(ChangeKind.Occasion, one.Id, [one.occasion], $"{catalogue.Symptoms[one.Id].Name.For(@case.Workshop.Reader)}, {catalogue.Occasions[one.occasion].Name}"))
            .Concat(symptoms.Where(rule => !reports[rule.Sign.Id].Any()).DistinctBy(rule => rule.Sign.Id).Take(MostOfAKind)
                .Select(rule => Reported(ChangeKind.Symptom, rule.Sign.Id, rule.Occasions, Question(rule))))
            .Concat(open.Where(rule => rule.Sign.Kind == SignKind.Code && !@case.Codes.Contains(rule.Sign.Id)).DistinctBy(rule => rule.Sign.Id).Take(MostOfAKind)
                .Select(rule => Stored(catalogue.Codes[rule.Sign.Id], @case.Workshop.Reader)));
    }

    private static Change Reported(ChangeKind kind, string symptom, IReadOnlyList<string> occasions, string text)
    {
        var report = new SymptomReport { Symptom = symptom, Occasions = occasions };
        var json = new JsonObject { ["symptom"] = symptom, ["occasions"] = new JsonArray([.. occasions.Select(id => (JsonNode)JsonValue.Create(id))]) };
        return new Change(kind, symptom, text, "/symptoms/-", json, request => request with { Symptoms = [.. request.Symptoms, report] });
    }

    private Change Stored(TroubleCode code, Audience audience) => new(
        ChangeKind.Code, code.Id, catalogue.Say(audience, Sentences.CodeStored, code.Id, code.Meaning.For(audience)), "/troubleCodes/-", JsonValue.Create(code.Id),
        request => request with { TroubleCodes = [.. request.TroubleCodes, code.Id] });

    /// <summary>The question that asks for exactly what is tried.</summary>
    private string Question(ShowsRule rule) => rule.Occasions.Count == 0 ? catalogue.Symptoms[rule.Sign.Id].Ask : $"{catalogue.Symptoms[rule.Sign.Id].Ask} ({When(rule)})";

    private string When(ShowsRule rule) => string.Join(" or ", rule.Occasions.Select(id => catalogue.Occasions[id].Name));
}
