using System.Collections.Frozen;
using Advice.Inspections;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Signs;
using Advice.Vehicles;

namespace Advice.Questions;

/// <summary>
/// How much symptoms would tell about which system has the fault, in bits, if the vehicle has one fault, as probable as its age, distance and history
/// make it: what a driver is asked of whom nothing is understood yet.
/// </summary>
internal sealed class SystemWorth(Catalogue catalogue)
{
    private readonly ExpectedFaults _expected = new(catalogue);
    private readonly FrozenDictionary<string, int> _systems = catalogue.Systems.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);

    /// <summary>Each symptom that a fault would show.</summary>
    public IEnumerable<(Symptom Symptom, double Worth)> Of(Advised advised, Func<Symptom, bool> isOpen)
    {
        var @case = advised.Case;
        var faults = _expected.On(@case, advised.Evidence with { Factors = _expected.Factors(@case) }, advised.Suspicion);
        var probabilities = faults.ToDictionary(fault => fault.Instance.Fault.Id, fault => fault.Probability);
        var systems = new double[_systems.Count];
        foreach (var fault in faults)
            systems[_systems[fault.Instance.Fault.System]] += fault.Probability;
        return catalogue.Symptoms.Values.Where(isOpen).Where(symptom => catalogue.ShowsBySign.Contains(Sign.Symptom(symptom.Id)))
            .Select(symptom => (symptom, Bits(Sign.Symptom(symptom.Id), probabilities, systems, @case.Vehicle)));
    }

    /// <summary>Mutual information of the answer and the system of the one fault, bit.</summary>
    /// <param name="symptom">The symptom that is asked for.</param>
    /// <param name="faults">Probability by fault.</param>
    /// <param name="systems">Expected faults of each system.</param>
    /// <param name="vehicle">The vehicle.</param>
    private double Bits(Sign symptom, Dictionary<string, double> faults, double[] systems, Vehicle vehicle)
    {
        var shown = new double[systems.Length];
        foreach (var rules in catalogue.ShowsBySign[symptom].Where(rule => rule.When.Test(vehicle) != Truth.No).GroupBy(rule => rule.Fault))
        {
            if (faults.TryGetValue(rules.Key, out var probability))
                shown[_systems[catalogue.Faults[rules.Key].System]] += probability * rules.Max(rule => rule.Often * rule.When.Share(vehicle));
        }

        // What no fault shows happens by itself.
        var leak = catalogue.Leaks[symptom];
        var yes = shown.Select((often, system) => (leak * systems[system]) + ((1 - leak) * often)).ToArray();
        var (all, yesOfAll) = (systems.Sum(), yes.Sum());
        return systems.Select((system, i) => Bits(yes[i], system, yesOfAll, all) + Bits(system - yes[i], system, all - yesOfAll, all)).Sum();
    }

    private static double Bits(double both, double system, double answer, double all) =>
        both > 0 ? both / all * Math.Log2(both * all / (system * answer)) : 0;
}
