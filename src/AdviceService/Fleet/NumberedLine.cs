namespace AdviceService.Fleet;

/// <summary>A line of the input.</summary>
/// <param name="Number">Its number, from 1, blank lines counted.</param>
/// <param name="Json">Its bytes; null for one that is too long.</param>
internal readonly record struct NumberedLine(int Number, byte[]? Json)
{
    /// <summary>How many bytes of it are held.</summary>
    public int Bytes => Json?.Length ?? 0;
}
