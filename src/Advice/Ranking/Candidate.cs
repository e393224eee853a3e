namespace Advice.Ranking;

/// <summary>A check option that was looked over, with one detection for each cause, by cause.</summary>
internal sealed record Candidate(string Id, double Minutes, Detection[] Detections)
{
    /// <summary>The options by id, which is the order that breaks ties.</summary>
    /// <exception cref="ArgumentException">A time is not above 0, a number is out of range, or a detection names no cause.</exception>
    public static List<Candidate> From(IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options)
    {
        foreach (var weight in weights)
        {
            if (!(weight >= 0) || double.IsInfinity(weight))
                throw new ArgumentException("A weight must be 0 or more and finite.", nameof(weights));
        }

        var candidates = new List<Candidate>(options.Count);
        foreach (var option in options)
        {
            if (!(option.Minutes > 0) || double.IsInfinity(option.Minutes))
                throw new ArgumentException($"{option.Id} must take more than 0 minutes, not {option.Minutes}.", nameof(options));
            foreach (var (cause, surely) in option.Detections)
            {
                if (surely is not (>= 0 and <= 1) || cause < 0 || cause >= weights.Count)
                    throw new ArgumentException($"{option.Id} finds a cause that has no weight, or not with a probability.", nameof(options));
            }

            candidates.Add(From(option));
        }

        return AreById(candidates) ? candidates : [.. candidates.OrderBy(candidate => candidate.Id, StringComparer.Ordinal)];
    }

    /// <summary>How surely it finds the cause, 0 … 1.</summary>
    public double Surely(int cause)
    {
        foreach (var detection in Detections)
            if (detection.Cause == cause)
                return detection.Surely;
        return 0;
    }

    private static bool AreById(List<Candidate> candidates)
    {
        for (var i = 1; i < candidates.Count; i++)
        {
            if (string.CompareOrdinal(candidates[i - 1].Id, candidates[i].Id) > 0)
                return false;
        }

        return true;
    }

    private static Candidate From(CheckOption option)
    {
        if (option.Detections is Detection[] detections && AreByCause(detections))
            return new Candidate(option.Id, option.Minutes, detections);
        var sorted = option.Detections.ToArray();
        Array.Sort(sorted, static (a, b) => a.Cause != b.Cause ? a.Cause.CompareTo(b.Cause) : b.Surely.CompareTo(a.Surely));
        var kept = 0;
        foreach (var detection in sorted)
        {
            if (kept == 0 || sorted[kept - 1].Cause != detection.Cause)
                sorted[kept++] = detection;
        }

        return new Candidate(option.Id, option.Minutes, sorted[..kept]);
    }

    private static bool AreByCause(Detection[] detections)
    {
        for (var i = 1; i < detections.Length; i++)
        {
            if (detections[i - 1].Cause >= detections[i].Cause)
                return false;
        }

        return true;
    }
}
