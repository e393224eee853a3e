namespace AdviceService.Fleet.Queue;

/// <summary>A fleet in the queue.</summary>
/// <param name="Detail">How much is answered.</param>
/// <param name="AsOf">The day that counts where a line names none.</param>
/// <param name="Chunks">Into how many chunks it was cut.</param>
/// <param name="Lines">How many lines it has, blank ones left out.</param>
internal sealed record QueueJob(LineDetail Detail, DateOnly AsOf, int Chunks, long Lines);
