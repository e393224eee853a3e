namespace Benchmarks.Peers;

/// <summary>A rule as every peer can say it: all of these clauses, of each clause any literal.</summary>
internal sealed record FlatRule(string Name, IReadOnlyList<IReadOnlyList<Literal>> All);
