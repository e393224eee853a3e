namespace Advice.Symptoms.Mentions;

/// <summary>Work that a text says was done or never done.</summary>
/// <param name="Item">Id of the service item; null where the words name none.</param>
/// <param name="System">Id of the system, where the words name one.</param>
/// <param name="Done">Whether it was done; false = never, or the first part is still in use.</param>
/// <param name="DaysAgo">How many days ago, where the words tell.</param>
/// <param name="KmAgo">How many kilometres ago, where the words tell.</param>
/// <param name="Words">The words, as written.</param>
/// <param name="Start">Place of their first character in the text.</param>
/// <param name="End">Place after their last one.</param>
public sealed record ServiceMention(string? Item, string? System, bool Done, int? DaysAgo, double? KmAgo, string Words, int Start, int End);
