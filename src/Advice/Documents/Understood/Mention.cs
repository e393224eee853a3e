namespace Advice.Documents.Understood;

/// <summary>A place in a text.</summary>
/// <param name="Words">The words.</param>
/// <param name="Start">Place of the first of them in the text, in UTF-16 units from 0.</param>
/// <param name="End">Place after the last of them.</param>
public sealed record Mention(string Words, int Start, int End);
