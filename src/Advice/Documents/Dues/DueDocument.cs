namespace Advice.Documents.Dues;

/// <summary>A service item and when it is due.</summary>
/// <param name="Item">Id of the item.</param>
/// <param name="Name">Its name.</param>
/// <param name="Status">overdue, due, soon, later or unknown.</param>
/// <param name="Because">Why it matters, and by how much it is due.</param>
/// <param name="At">When it is due.</param>
/// <param name="Source">Source of the interval.</param>
/// <param name="By">By how much.</param>
/// <param name="Recorded">Whether the last one was reported; else it is counted from new.</param>
/// <param name="OnlyIf">What must be true of the vehicle to have the item, where that is not known.</param>
public sealed record DueDocument(string Item, string Name, DueStatus Status, string Because, DuePoint At, string Source, DueAmount By, bool Recorded, string? OnlyIf)
{
    /// <summary>What of the use of the vehicle shortened the interval, as it was given in severeUse.</summary>
    public IReadOnlyList<string> SevereUse { get; init; } = [];
}
