namespace Benchmarks.Peers;

/// <summary>A case as facts for one pass over all rules. What our network derives (implied signs, linked and suspected faults, advised
/// checks) is given to the peers for nothing; a vehicle fact that is not known is "?" or <see cref="Unknown"/>.</summary>
internal sealed record FlatRequest(
    IReadOnlyDictionary<string, HashSet<string>> Sets, IReadOnlyDictionary<string, string> Words, IReadOnlyDictionary<string, double> Numbers,
    IReadOnlyList<string> Expected)
{
    public const double Unknown = -1e9;

    public const double LeastKnown = -1e8;
}
