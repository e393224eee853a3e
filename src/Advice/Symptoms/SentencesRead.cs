namespace Advice.Symptoms;

/// <summary>What reading the sentences of a text once gave.</summary>
/// <param name="Reports">What they report.</param>
/// <param name="Understood">Numbers of the sentences that were understood.</param>
/// <param name="Unsure">What the others may mean, by their number.</param>
/// <param name="Inklings">What each says of symptoms that were not read from it.</param>
internal sealed record SentencesRead(
    IReadOnlyList<Report> Reports, IReadOnlyList<int> Understood, IReadOnlyDictionary<int, Lazy<IReadOnlyList<Guess>>> Unsure,
    IReadOnlyList<Lazy<IReadOnlyList<Inkling>>> Inklings);
