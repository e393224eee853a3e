using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>
/// Orders the systems of a case: by how probable a fault of each is, by how much the complaint speaks of it, and a little by how common its
/// faults are. What people say of a system tells where to look even where no symptom was understood; it makes no fault more probable.
/// </summary>
public sealed class SystemRanking(Catalogue catalogue)
{
    private const int Most = 5;

    /// <summary>Added to the probability, so that a system without suspects is not ruled out.</summary>
    private const double Unraised = 0.1;

    /// <summary>Weight of a mention against the logarithm of the probability.</summary>
    private const double ForEachMention = 1.5;

    /// <summary>Weight of the logarithm of how many faults of a system a vehicle has.</summary>
    private const double OfBaseRate = 0.25;

    private readonly SystemBaseRates _baseRates = new(catalogue);

    /// <summary>The likeliest systems, at most five; none where the case says nothing of any.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected in it.</param>
    public IReadOnlyList<SuspectedSystem> Of(Case @case, Suspicion suspicion)
    {
        var free = suspicion.Raised.GroupBy(suspect => suspect.Instance.Fault.System)
            .ToDictionary(group => group.Key, group => group.Aggregate(1.0, (rest, suspect) => rest * (1 - suspect.Probability)));
        if (free.Count == 0 && @case.Named.Most == 0)
            return [];
        var expected = _baseRates.On(@case.Vehicle);
        return
        [
            .. catalogue.Systems
                .Select(system => new SuspectedSystem(system, 1 - free.GetValueOrDefault(system.Id, 1), @case.Named.Weight(system.Id)))
                .OrderByDescending(one => Math.Round(
                    Math.Log(one.Probability + Unraised) + (ForEachMention * one.Named) + (OfBaseRate * Math.Log(expected.GetValueOrDefault(one.System.Id) + Unraised)), 9))
                .ThenBy(one => one.System.Id, StringComparer.Ordinal)
                .Take(Most),
        ];
    }
}
