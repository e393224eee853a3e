using System.Collections.Frozen;
using Advice.Inference;
using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Questions;

/// <summary>Which unreported symptoms would tell most about what is suspected.</summary>
public sealed class QuestionChoice
{
    private const int Most = 3;
    private const double LeastWorth = 0.001;

    private readonly Catalogue _catalogue;
    private readonly Assessment _assessment;
    private readonly Symptom[] _symptoms;
    private readonly FrozenDictionary<string, int> _numbers;
    private readonly FrozenDictionary<string, (int Symptom, ShowsRule Rule)[]> _shownByFault;

    /// <summary>Questions by a rule set.</summary>
    public QuestionChoice(Catalogue catalogue, Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        (_catalogue, _assessment) = (catalogue, assessment);
        // Symptoms that say no more than that something is wrong with a system are no good question once something is suspected.
        var vague = catalogue.Systems.Select(system => system.Trouble).OfType<string>().ToHashSet();
        _symptoms = [.. catalogue.Symptoms.Values.OrderBy(symptom => symptom.Id, StringComparer.Ordinal)];
        _numbers = _symptoms.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);
        var shows = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom && !vague.Contains(rule.Sign.Id))
            .OrderBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Fault, rule => (_numbers[rule.Sign.Id], rule));
        _shownByFault = catalogue.Faults.Keys.ToFrozenDictionary(fault => fault, fault => shows[fault].ToArray());
    }

    /// <summary>The questions, most useful first, ties by symptom; none where nothing is suspected.</summary>
    public IReadOnlyList<Question> Choose(Advised advised)
    {
        var suspects = advised.Suspicion.Raised;
        var harm = suspects.Sum(suspect => suspect.Probability * suspect.Instance.Fault.Consequence.Harm);
        if (harm <= 0)
            return [];
        var probabilities = suspects.Select(suspect => suspect.Probability).ToArray();
        var harms = suspects.Select(suspect => suspect.Instance.Fault.Consequence.Harm / harm).ToArray();
        var asked = Links(advised).Index().Where(one => one.Item is not null)
            .Select(one => (Symptom: _symptoms[one.Index].Id, Worth: Worth(_symptoms[one.Index].Id, one.Item!, probabilities, harms)))
            .Where(one => one.Worth > LeastWorth).OrderByDescending(one => Math.Round(one.Worth, 9))
            .ThenBy(one => one.Symptom, StringComparer.Ordinal).Take(Most).ToList();
        var answers = _assessment.Foresee(advised, asked.SelectMany(one => new[] { Answer(one.Symptom, true), Answer(one.Symptom, false) })).Chunk(2);
        return [.. asked.Zip(answers, (one, after) => new Question(_catalogue.Symptoms[one.Symptom], one.Worth, after[0], after[1]))];
    }

    /// <summary>What the raised suspects would show, for each symptom that nobody has spoken of yet, nor said that it cannot be told.</summary>
    private List<CauseLink>?[] Links(Advised advised)
    {
        var (vehicle, spoken, raised) = (advised.Case.Vehicle, advised.Spoken, advised.Suspicion.Raised);
        var settled = new bool[_symptoms.Length];
        foreach (var symptom in spoken.Concat(advised.Case.Unsure))
        {
            if (_numbers.TryGetValue(symptom, out var number))
                settled[number] = true;
        }

        var links = new List<CauseLink>?[_symptoms.Length];
        for (var cause = 0; cause < raised.Count; cause++)
        {
            foreach (var (symptom, rule) in _shownByFault[raised[cause].Instance.Fault.Id])
            {
                if (settled[symptom] || rule.When.Test(vehicle) == Truth.No || (rule.Without.Count > 0 && rule.Without.Any(spoken.Contains)))
                    continue;
                (links[symptom] ??= []).Add(new CauseLink(cause, rule.Often * rule.When.Share(vehicle)));
            }
        }

        return links;
    }

    private double Worth(string symptom, List<CauseLink> links, double[] probabilities, double[] harms) =>
        ExpectedChange.Worth(probabilities, harms, _catalogue.Leaks[Sign.Symptom(symptom)], links);

    private static Report Answer(string symptom, bool yes) => new(symptom, [], null, yes);
}
