namespace AdviceService.Fleet.Queue;

/// <summary>Some lines of a fleet, worked on by one worker in one go.</summary>
/// <param name="Detail">How much is answered.</param>
/// <param name="AsOf">The day that counts where a line names none.</param>
/// <param name="Lines">The lines with their numbers in the fleet; null JSON for one that is too long.</param>
internal sealed record Chunk(LineDetail Detail, DateOnly AsOf, IReadOnlyList<NumberedLine> Lines);
