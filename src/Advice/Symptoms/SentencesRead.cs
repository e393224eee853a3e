namespace Advice.Symptoms;

/// <summary>What reading the sentences of a text once gave.</summary>
/// <param name="Reports">What they report.</param>
/// <param name="Understood">Numbers of the sentences that were understood.</param>
/// <param name="Well">Numbers of those that say no more than that something is well.</param>
/// <param name="Left">Numbers of the clauses of which nothing was understood.</param>
/// <param name="Unsure">What the others may mean, by their number.</param>
/// <param name="Inklings">What each says of symptoms that were not read from it.</param>
internal sealed record SentencesRead(
    IReadOnlyList<Report> Reports, IReadOnlyList<int> Understood, IReadOnlySet<int> Well, IReadOnlySet<int> Left,
    IReadOnlyDictionary<int, Lazy<IReadOnlyList<Guess>>> Unsure, IReadOnlyList<Lazy<IReadOnlyList<Inkling>>> Inklings);
