using Advice.Inspections;
using Advice.Knowledge;
using Advice.Suspects;

namespace Advice.Questions;

/// <summary>
/// How much symptoms would tell about which system has the fault, in bits, if the vehicle has one fault, as probable as its age, distance and history
/// make it: what a driver is asked of whom nothing is understood yet.
/// </summary>
internal sealed class SystemWorth(Catalogue catalogue)
{
    private readonly ExpectedFaults _expected = new(catalogue);
    private readonly ILookup<string, ShowsRule> _showsBySymptom = catalogue.Rules.Values.OfType<ShowsRule>()
        .Where(rule => rule.Sign.Kind == SignKind.Symptom).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Sign.Id);

    /// <summary>Each symptom that a fault would show.</summary>
    public IEnumerable<(Symptom Symptom, double Worth)> Of(Advised advised, Func<Symptom, bool> isOpen)
    {
        var @case = advised.Case;
        var faults = _expected.On(@case, advised.Evidence with { Factors = _expected.Factors(@case) }, advised.Suspicion);
        return _showsBySymptom.Select(rules => catalogue.Symptoms[rules.Key]).Where(isOpen).Select(symptom => (symptom, Bits(symptom.Id, faults, @case)));
    }

    /// <summary>Mutual information of the answer and the system of the one fault, bit.</summary>
    private double Bits(string symptom, IReadOnlyList<Suspect> faults, Case @case)
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
}
