using Advice.Inference;

namespace Advice.Suspects;

/// <summary>What is suspected in a case.</summary>
/// <param name="Network">The network that was solved; its causes are <paramref name="All"/>, in that order.</param>
/// <param name="All">Every fault instance that a sign touches, by fault, then place.</param>
/// <param name="LeftOut">Signs that could not be counted beside the most telling ones.</param>
public sealed record Suspicion(NoisyOrNetwork Network, IReadOnlyList<Suspect> All, IReadOnlyList<string> LeftOut)
{
    /// <summary>Probability of each raised fault at any of its places.</summary>
    public IReadOnlyDictionary<string, double> ByFault
    {
        get
        {
            var byFault = new Dictionary<string, double>(Raised.Count);
            foreach (var suspect in Raised)
            {
                var fault = suspect.Instance.Fault.Id;
                byFault[fault] = Math.Min(1, byFault.GetValueOrDefault(fault) + suspect.Probability);
            }

            return byFault;
        }
    }

    /// <summary>The instances that the signs raised, most probable first, ties by fault and place.</summary>
    public IReadOnlyList<Suspect> Raised { get; } = MostProbableFirst(All);

    private static Suspect[] MostProbableFirst(IReadOnlyList<Suspect> all)
    {
        var raised = all.Where(suspect => suspect.Raise > 1e-9).ToArray();
        Array.Sort(Array.ConvertAll(raised, suspect => new Rank(Math.Round(suspect.Probability, 9), suspect.Instance)), raised);
        return raised;
    }

    private readonly record struct Rank(double Probability, FaultInstance Instance) : IComparable<Rank>
    {
        public int CompareTo(Rank other)
        {
            if (Probability != other.Probability)
                return Probability > other.Probability ? -1 : 1;
            var byFault = string.CompareOrdinal(Instance.Fault.Id, other.Instance.Fault.Id);
            return byFault != 0 ? byFault : string.CompareOrdinal(Instance.Place, other.Instance.Place);
        }
    }
}
