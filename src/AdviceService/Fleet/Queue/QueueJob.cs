namespace AdviceService.Fleet.Queue;

/// <summary>A fleet that is in the queue as a whole.</summary>
/// <param name="Chunks">Into how many chunks it was cut.</param>
/// <param name="Lines">How many lines it has, blank ones left out.</param>
internal sealed record QueueJob(int Chunks, long Lines);
