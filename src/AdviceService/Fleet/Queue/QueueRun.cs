namespace AdviceService.Fleet.Queue;

/// <summary>What a job in the queue was asked for.</summary>
/// <param name="Input">SHA-256 of the fleet; null for a pipe.</param>
/// <param name="Detail">How much is answered.</param>
/// <param name="AsOf">The day that counts where a line names none.</param>
internal sealed record QueueRun(string? Input, LineDetail Detail, DateOnly AsOf)
{
    /// <summary>Its name in the queue once it has begun, its own alone: a job that was collected may be submitted again under the same name, and
    /// nothing that is left of the one before can be taken for a part of it.</summary>
    public string Name { get; init; } = "";
}
