using Advice.Inspections;
using Advice.Knowledge;
using Advice.Suspects;
using Advice.Symptoms;

namespace Advice.Questions;

/// <summary>
/// What to ask a driver of whom nothing is understood yet: the symptoms that tell most about which system has the fault, if the vehicle has one
/// fault, as probable as its age, distance and history make it.
/// </summary>
public sealed class OpeningQuestions(Catalogue catalogue, Assessment assessment)
{
    private const int Most = 3;

    private readonly ExpectedFaults _expected = new(catalogue);
    private readonly HashSet<string> _vague = [.. catalogue.Systems.Select(system => system.Trouble).OfType<string>()];
    private readonly ILookup<string, ShowsRule> _showsBySymptom = catalogue.Rules.Values.OfType<ShowsRule>()
        .Where(rule => rule.Sign.Kind == SignKind.Symptom).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Sign.Id);

    /// <summary>The questions, most telling first, ties by symptom; none where something is suspected.</summary>
    public IReadOnlyList<Question> Choose(Advised advised)
    {
        var @case = advised.Case;
        if (advised.Suspicion.Raised.Count > 0)
            return [];
        var faults = _expected.On(@case, advised.Evidence with { Factors = _expected.Factors(@case) }, advised.Suspicion);
        var spoken = advised.Spoken;
        var asked = _showsBySymptom.Select(rules => rules.Key)
            .Where(symptom => !spoken.Contains(symptom) && !@case.Unsure.Contains(symptom) && !_vague.Contains(symptom))
            .Select(symptom => (Symptom: symptom, Worth: BitsOnSystem(symptom, faults, @case)))
            .OrderByDescending(one => Math.Round(one.Worth, 9)).ThenBy(one => one.Symptom, StringComparer.Ordinal).Take(Most).ToList();
        var answers = assessment.Foresee(@case, asked.SelectMany(one => new[] { Answer(one.Symptom, true), Answer(one.Symptom, false) })).Chunk(2);
        return [.. asked.Zip(answers, (one, after) => new Question(catalogue.Symptoms[one.Symptom], one.Worth, after[0], after[1]))];
    }

    /// <summary>Mutual information of the answer and the system of the one fault, bit.</summary>
    private double BitsOnSystem(string symptom, IReadOnlyList<Suspect> faults, Case @case)
    {
        var leak = catalogue.Leaks[Sign.Symptom(symptom)];
        var often = _showsBySymptom[symptom].Where(rule => rule.When.Test(@case.Vehicle) != Truth.No)
            .GroupBy(rule => rule.Fault).ToDictionary(rules => rules.Key, rules => rules.Max(rule => rule.Often * rule.When.Share(@case.Vehicle)));
        var systems = faults.GroupBy(fault => fault.Instance.Fault.System).Select(group => (
            All: group.Sum(fault => fault.Probability),
            Yes: group.Sum(fault => fault.Probability * (1 - ((1 - leak) * (1 - often.GetValueOrDefault(fault.Instance.Fault.Id))))))).ToList();
        var (all, yes) = (systems.Sum(system => system.All), systems.Sum(system => system.Yes));
        return systems.Sum(system => Bits(system.Yes, system.All, yes, all) + Bits(system.All - system.Yes, system.All, all - yes, all));
    }

    private static double Bits(double both, double system, double answer, double all) =>
        both > 0 ? both / all * Math.Log2(both * all / (system * answer)) : 0;

    private static Report Answer(string symptom, bool yes) => new(symptom, [], null, yes);
}
