namespace Advice.Ranking;

/// <summary>A check option that was looked over, with one detection for each cause, by cause.</summary>
internal sealed record Candidate(string Id, double Minutes, Detection[] Detections)
{
    /// <summary>The options by id, which is the order that breaks ties.</summary>
    /// <exception cref="ArgumentException">A time is not above 0, a number is out of range, or a detection names no cause.</exception>
    public static List<Candidate> From(IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options)
    {
        if (weights.Any(weight => !(weight >= 0) || double.IsInfinity(weight)))
            throw new ArgumentException("A weight must be 0 or more and finite.", nameof(weights));
        foreach (var option in options)
        {
            if (!(option.Minutes > 0) || double.IsInfinity(option.Minutes))
                throw new ArgumentException($"{option.Id} must take more than 0 minutes, not {option.Minutes}.", nameof(options));
            if (option.Detections.Any(detection =>
                    detection.Surely is not (>= 0 and <= 1) || detection.Cause < 0 || detection.Cause >= weights.Count))
                throw new ArgumentException($"{option.Id} finds a cause that has no weight, or not with a probability.", nameof(options));
        }

        return [.. options.OrderBy(option => option.Id, StringComparer.Ordinal).Select(From)];
    }

    /// <summary>How surely it finds the cause, 0 … 1.</summary>
    public double Surely(int cause)
    {
        foreach (var detection in Detections)
            if (detection.Cause == cause)
                return detection.Surely;
        return 0;
    }

    private static Candidate From(CheckOption option)
    {
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
}
