namespace Advice.Documents.Understood;

/// <summary>Work that a text says was done or never done.</summary>
/// <param name="Item">Id of the service item; null where the words name none.</param>
/// <param name="System">Id of the system; null where the words name none.</param>
/// <param name="Done">Whether it was done; false = never, or the first part is still in use.</param>
/// <param name="On">The day, about; null where the words do not tell.</param>
/// <param name="KmAgo">How many kilometres ago, about; null where the words do not tell.</param>
/// <param name="Words">The words.</param>
/// <param name="Start">Place of the first of them in the text, in UTF-16 units from 0.</param>
/// <param name="End">Place after the last of them.</param>
public sealed record ServiceHeard(string? Item, string? System, bool Done, DateOnly? On, double? KmAgo, string Words, int Start, int End);
