using Advice.Ranking;
using Advice.Suspects;

namespace Advice.Inspections;

/// <summary>What the case itself asks for comes before what only base rates suggest.</summary>
internal sealed class AskedFirst
{
    /// <summary>Once so much of what the case raised is found, the rest has to stand its ground among all else.</summary>
    private const double Enough = 0.5;

    private readonly double[] _weights;
    private readonly int[] _urgent;

    /// <param name="raised">What the case raised.</param>
    /// <param name="indices">Place of each fault among all.</param>
    /// <param name="faults">How many there are.</param>
    public AskedFirst(IReadOnlyList<Suspect> raised, Dictionary<string, int> indices, int faults)
    {
        _weights = new double[faults];
        foreach (var suspect in raised)
            _weights[indices[suspect.Instance.Fault.Id]] += suspect.Weight;
        _urgent = [.. raised.Where(suspect => suspect.IsUrgent).Select(suspect => indices[suspect.Instance.Fault.Id]).Distinct()];
    }

    /// <summary>Whether a check looks for something that the case raised.</summary>
    public bool Concerns(InspectionOption option) => Array.Exists(option.Candidate.Detections, detection => _weights[detection.Cause] > 0);

    /// <summary>Ids of the checks to do first: those for what could make the vehicle unsafe now, then the best for what is raised until enough is found.</summary>
    public IEnumerable<string> Among(IReadOnlyList<InspectionOption> options, SharedSetUps setUps)
    {
        var ranked = HarmFoundRanking.GreedyWithLift(
            _weights,
            [.. options.Where(Concerns).Select(option => new CheckOption(option.Check.Id, option.Check.Minutes + setUps.Minutes(option.SetUps), option.Candidate.Detections))],
            _urgent);
        var (found, enough) = (0.0, _weights.Sum() * Enough);
        foreach (var check in ranked)
        {
            if (!check.Lifted && found >= enough)
                yield break;
            found += check.HarmFound;
            yield return check.Id;
        }
    }
}
