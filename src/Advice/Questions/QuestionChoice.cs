using Advice.Inference;
using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Questions;

/// <summary>Which unreported symptoms would tell most about what is suspected.</summary>
public sealed class QuestionChoice(Catalogue catalogue, Assessment assessment)
{
    private const int Most = 3;
    private const double LeastWorth = 0.001;

    private readonly ILookup<string, ShowsRule> _showsByFault = catalogue.Rules.Values.OfType<ShowsRule>()
        .Where(rule => rule.Sign.Kind == SignKind.Symptom).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Fault);

    /// <summary>Symptoms that say no more than that something is wrong with a system: no good question once something is suspected.</summary>
    private readonly HashSet<string> _vague = [.. catalogue.Systems.Select(system => system.Trouble).OfType<string>()];

    /// <summary>The questions, most useful first, ties by symptom; none where nothing is suspected.</summary>
    public IReadOnlyList<Question> Choose(Advised advised)
    {
        var suspects = advised.Suspicion.Raised;
        var harm = suspects.Sum(suspect => suspect.Probability * suspect.Instance.Fault.Consequence.Harm);
        if (harm <= 0)
            return [];
        var probabilities = suspects.Select(suspect => suspect.Probability).ToArray();
        var harms = suspects.Select(suspect => suspect.Instance.Fault.Consequence.Harm / harm).ToArray();
        var asked = Links(advised).Select(one => (Symptom: one.Key, Worth: Worth(one.Key, one.Value, probabilities, harms)))
            .Where(one => one.Worth > LeastWorth).OrderByDescending(one => Math.Round(one.Worth, 9))
            .ThenBy(one => one.Symptom, StringComparer.Ordinal).Take(Most).ToList();
        var answers = assessment.Foresee(advised.Case, asked.SelectMany(one => new[] { Answer(one.Symptom, true), Answer(one.Symptom, false) })).Chunk(2);
        return [.. asked.Zip(answers, (one, after) => new Question(catalogue.Symptoms[one.Symptom], one.Worth, after[0], after[1]))];
    }

    /// <summary>What the raised suspects would show, by symptom that nobody has spoken of yet, nor said that it cannot be told.</summary>
    private Dictionary<string, List<CauseLink>> Links(Advised advised)
    {
        var vehicle = advised.Case.Vehicle;
        var spoken = advised.Spoken;
        var links = new Dictionary<string, List<CauseLink>>();
        foreach (var (cause, suspect) in advised.Suspicion.Raised.Index())
        {
            foreach (var rule in _showsByFault[suspect.Instance.Fault.Id])
            {
                if (spoken.Contains(rule.Sign.Id) || advised.Case.Unsure.Contains(rule.Sign.Id) || _vague.Contains(rule.Sign.Id) || rule.When.Test(vehicle) == Truth.No || rule.Without.Any(spoken.Contains))
                    continue;
                if (!links.TryGetValue(rule.Sign.Id, out var linked))
                    links[rule.Sign.Id] = linked = [];
                linked.Add(new CauseLink(cause, rule.Often * rule.When.Share(vehicle)));
            }
        }

        return links;
    }

    private double Worth(string symptom, List<CauseLink> links, double[] probabilities, double[] harms) =>
        ExpectedChange.Worth(probabilities, harms, catalogue.Leaks[Sign.Symptom(symptom)], links);

    private static Report Answer(string symptom, bool yes) => new(symptom, [], null, yes);
}
