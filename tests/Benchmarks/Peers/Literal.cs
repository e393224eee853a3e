namespace Benchmarks.Peers;

/// <summary>One test of a peer's rule: a key in a set, a word among some, or a number against a bound.</summary>
/// <param name="Op">in, notIn, word, atLeast, below, above or atMost.</param>
/// <param name="Of">The set or the fact.</param>
/// <param name="Words">Keys or words; empty for numbers.</param>
/// <param name="Bound">The bound of a number.</param>
internal sealed record Literal(string Op, string Of, IReadOnlyList<string> Words, double Bound = 0);
