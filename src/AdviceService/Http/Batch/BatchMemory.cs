namespace AdviceService.Http.Batch;

/// <summary>Memory that all batches together may use for lines that wait because their callers take no replies.</summary>
/// <param name="bytes">How much, bytes.</param>
internal sealed class BatchMemory(long bytes)
{
    private long _left = bytes;

    /// <summary>A quarter of what this process may use.</summary>
    public static BatchMemory OfThisProcess => new(GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / 4);

    /// <summary>Takes a part of it; false, and nothing is taken, where less is left.</summary>
    public bool TryTake(int wanted)
    {
        if (Interlocked.Add(ref _left, -wanted) >= 0)
            return true;
        GiveBack(wanted);
        return false;
    }

    /// <summary>Gives back what was taken.</summary>
    public void GiveBack(long taken) => Interlocked.Add(ref _left, taken);
}
