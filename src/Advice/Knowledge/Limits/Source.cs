namespace Advice.Knowledge.Limits;

/// <summary>Where a value comes from.</summary>
/// <param name="Grade">How it is known.</param>
/// <param name="Document">The document, if there is one.</param>
/// <param name="Place">Paragraph, table or page in it.</param>
/// <param name="Note">What a reader must know to weigh it.</param>
public sealed record Source(Grade Grade, string? Document, string? Place, string? Note)
{
    /// <summary>The same line with the note.</summary>
    public string WithNote => Note is null ? ToString() : $"{this}: {Note}";

    /// <summary>One line for an answer: document and place, with the grade where the document itself was not read.</summary>
    public override string ToString()
    {
        var named = Document is null ? null : Place is null ? Document : $"{Document}, {Place}";
        return Grade switch
        {
            Grade.Primary => named ?? "published",
            Grade.Secondary => $"{named} (as restated)",
            Grade.FromMemory => $"{named} (from memory)",
            Grade.CommonPractice => "common practice",
            _ => named is null ? "our estimate" : $"our estimate after {named}",
        };
    }
}
