namespace AdviceService.Fleet.Scoring;

/// <summary>What was asked on the command line.</summary>
/// <param name="Input">Path of the fleet; - for standard input.</param>
/// <param name="InputIsCsv">Whether it is a table, not lines of JSON.</param>
/// <param name="Output">Path of the replies; - for standard output.</param>
/// <param name="Format">Form of the replies.</param>
/// <param name="Detail">How much is answered.</param>
/// <param name="Shard">Which part of the lines.</param>
/// <param name="AsOf">The day that counts where a line names none; null = today, or the day of the run that is taken up.</param>
/// <param name="AtOnce">How many lines are worked on at once.</param>
internal sealed record ScoreOptions(
    string Input, bool InputIsCsv, string Output, ScoreFormat Format, LineDetail Detail, Shard Shard, DateOnly? AsOf, int AtOnce)
{
    /// <summary>Name of standard input or output.</summary>
    public const string Pipe = "-";
}
