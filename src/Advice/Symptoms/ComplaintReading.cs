using Advice.Symptoms.Mentions;

namespace Advice.Symptoms;

/// <summary>What was read from a complaint.</summary>
/// <param name="Reports">The symptoms, in the order of the text; denied ones are marked as not present.</param>
/// <param name="Codes">Trouble codes such as P0301 or, with a failure type, P0301-1A, in the order of the text, each once.</param>
/// <param name="Unread">The sentences in which nothing was recognised.</param>
/// <param name="Services">Work that it says was done or never done.</param>
/// <param name="Mentions">Where it speaks of a system, in the order of the text.</param>
/// <param name="StatesTrouble">Whether it says that something is wrong.</param>
public sealed record ComplaintReading(
    IReadOnlyList<Report> Reports, IReadOnlyList<string> Codes, IReadOnlyList<UnreadSentence> Unread,
    IReadOnlyList<ServiceMention> Services, IReadOnlyList<SystemMention> Mentions, bool StatesTrouble)
{
    /// <summary>What it says of symptoms that were not read from it, each once. Found when first asked for.</summary>
    public IReadOnlyList<Inkling> Inklings => Half?.Value ?? [];

    /// <summary>Finds them.</summary>
    internal Lazy<IReadOnlyList<Inkling>>? Half { get; init; }

    /// <summary>The sentences in which nothing was recognised, as written.</summary>
    public IReadOnlyList<string> NotUnderstood => [.. Unread.Select(sentence => sentence.Text)];
}
