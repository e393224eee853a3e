namespace Advice.Ranking;

/// <summary>The harm that the checks done so far leave unfound: weight · Π (1 − surely) for each cause.</summary>
internal sealed class HarmLeft
{
    private readonly double[] _left;

    public HarmLeft(IReadOnlyList<double> weights) => _left = [.. weights];

    private HarmLeft(HarmLeft other) => _left = [.. other._left];

    /// <summary>The same, to try something with.</summary>
    public HarmLeft Copy() => new(this);

    /// <summary>What is left of the harm of a cause.</summary>
    public double this[int cause] => _left[cause];

    /// <summary>Marginal harm that the check would find, in the unit of the weights.</summary>
    public double FoundBy(Candidate candidate)
    {
        var found = 0.0;
        foreach (var detection in candidate.Detections)
            found += _left[detection.Cause] * detection.Surely;
        return found;
    }

    /// <summary>Does the check and says what it found.</summary>
    public RankedCheck Do(Candidate candidate, bool lifted)
    {
        var found = FoundBy(candidate);
        foreach (var detection in candidate.Detections)
            _left[detection.Cause] *= 1 - detection.Surely;
        return new RankedCheck(candidate.Id, found, found / candidate.Minutes, lifted);
    }
}
