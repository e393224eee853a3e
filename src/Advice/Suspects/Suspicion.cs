using Advice.Inference;

namespace Advice.Suspects;

/// <summary>What is suspected in a case.</summary>
/// <param name="Network">The network that was solved; its causes are <paramref name="All"/>, in that order.</param>
/// <param name="All">Every fault instance that a sign touches, by fault, then place.</param>
/// <param name="LeftOut">Signs that could not be counted beside the most telling ones.</param>
public sealed record Suspicion(NoisyOrNetwork Network, IReadOnlyList<Suspect> All, IReadOnlyList<string> LeftOut)
{
    /// <summary>Probability of each raised fault at any of its places.</summary>
    public IReadOnlyDictionary<string, double> ByFault => Raised.GroupBy(suspect => suspect.Instance.Fault.Id)
        .ToDictionary(group => group.Key, group => Math.Min(1, group.Sum(suspect => suspect.Probability)));

    /// <summary>The instances that the signs raised, most probable first, ties by fault and place.</summary>
    public IReadOnlyList<Suspect> Raised { get; } =
    [
        .. All.Where(suspect => suspect.Raise > 1e-9).OrderByDescending(suspect => Math.Round(suspect.Probability, 9))
            .ThenBy(suspect => suspect.Instance.Fault.Id, StringComparer.Ordinal)
            .ThenBy(suspect => suspect.Instance.Place, StringComparer.Ordinal),
    ];
}
