namespace Advice.Knowledge.Words;

/// <summary>A sentence that answers need. Its words stand in the rules, under the same id.</summary>
/// <param name="Id">Id of its wording.</param>
/// <param name="Slots">What the words may name, as {slot}, in the order in which it is filled in.</param>
public sealed record Sentence(string Id, IReadOnlyList<string> Slots)
{
    /// <summary>Whether it keeps people from harm, so that other words for it are never taken unseen.</summary>
    public bool Protects { get; init; }
}
