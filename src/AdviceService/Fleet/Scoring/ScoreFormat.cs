namespace AdviceService.Fleet.Scoring;

/// <summary>In which form a fleet is answered.</summary>
internal enum ScoreFormat
{
    /// <summary>A reply per line, as in a batch.</summary>
    Ndjson,

    /// <summary>A table for a spreadsheet; triage only.</summary>
    Csv,

    /// <summary>The same table for a warehouse.</summary>
    Parquet,
}
