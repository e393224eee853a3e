namespace Advice.Symptoms;

/// <summary>What was read from a complaint.</summary>
/// <param name="Reports">The symptoms, in the order of the text; denied ones are marked as not present.</param>
/// <param name="Codes">Trouble codes, in the order of the text, each once.</param>
/// <param name="NotUnderstood">The sentences in which nothing was recognised, as written.</param>
/// <param name="Mentions">Where it speaks of a system, in the order of the text.</param>
/// <param name="StatesTrouble">Whether it says that something is wrong.</param>
public sealed record ComplaintReading(
    IReadOnlyList<Report> Reports, IReadOnlyList<string> Codes, IReadOnlyList<string> NotUnderstood,
    IReadOnlyList<SystemMention> Mentions, bool StatesTrouble);
