using System.Collections.Frozen;
using Advice.Inspections;
using Advice.Knowledge;
using Advice.Symptoms;
using Advice.Vehicles;

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
    private readonly FrozenDictionary<string, int> _systems = catalogue.Systems.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);
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
        var probabilities = faults.ToDictionary(fault => fault.Instance.Fault.Id, fault => fault.Probability);
        var systems = new double[_systems.Count];
        foreach (var fault in faults)
            systems[_systems[fault.Instance.Fault.System]] += fault.Probability;
        var asked = _showsBySymptom.Select(rules => rules.Key)
            .Where(symptom => !spoken.Contains(symptom) && !@case.Unsure.Contains(symptom) && !_vague.Contains(symptom))
            .Select(symptom => (Symptom: symptom, Worth: BitsOnSystem(symptom, probabilities, systems, @case.Vehicle)))
            .OrderByDescending(one => Math.Round(one.Worth, 9)).ThenBy(one => one.Symptom, StringComparer.Ordinal).Take(Most).ToList();
        var answers = assessment.Foresee(advised, asked.SelectMany(one => new[] { Answer(one.Symptom, true), Answer(one.Symptom, false) })).Chunk(2);
        return [.. asked.Zip(answers, (one, after) => new Question(catalogue.Symptoms[one.Symptom], one.Worth, after[0], after[1]))];
    }

    /// <summary>Mutual information of the answer and the system of the one fault, bit.</summary>
    /// <param name="symptom">Id of the symptom that is asked for.</param>
    /// <param name="faults">Probability by fault.</param>
    /// <param name="systems">Expected faults of each system.</param>
    /// <param name="vehicle">The vehicle.</param>
    private double BitsOnSystem(string symptom, Dictionary<string, double> faults, double[] systems, Vehicle vehicle)
    {
        var shown = new double[systems.Length];
        foreach (var rules in _showsBySymptom[symptom].Where(rule => rule.When.Test(vehicle) != Truth.No).GroupBy(rule => rule.Fault))
        {
            if (faults.TryGetValue(rules.Key, out var probability))
                shown[_systems[catalogue.Faults[rules.Key].System]] += probability * rules.Max(rule => rule.Often * rule.When.Share(vehicle));
        }

        // What no fault shows happens by itself.
        var leak = catalogue.Leaks[Sign.Symptom(symptom)];
        var yes = shown.Select((often, system) => (leak * systems[system]) + ((1 - leak) * often)).ToArray();
        var (all, yesOfAll) = (systems.Sum(), yes.Sum());
        return systems.Select((system, i) => Bits(yes[i], system, yesOfAll, all) + Bits(system - yes[i], system, all - yesOfAll, all)).Sum();
    }

    private static double Bits(double both, double system, double answer, double all) =>
        both > 0 ? both / all * Math.Log2(both * all / (system * answer)) : 0;

    private static Report Answer(string symptom, bool yes) => new(symptom, [], null, yes);
}
