using Advice.Answers;
using Advice.Evidence;

namespace AdviceService.Fleet.Scoring;

/// <summary>Scores a fleet from a file or a pipe. A run from file to file that died is taken up where it stopped.</summary>
/// <param name="rules">The rule set.</param>
/// <param name="today">The day that counts where nothing else is said.</param>
/// <param name="progress">Is told how far it has come.</param>
internal sealed class ScoreRun(IRuleBook rules, DateOnly today, Action<ScoreProgress> progress)
{
    /// <summary>Scores it.</summary>
    /// <returns>What the replies add up to.</returns>
    /// <exception cref="ScoreException">It cannot start, or not go on.</exception>
    public async Task<Tally> RunAsync(ScoreOptions options, CancellationToken cancel)
    {
        await using var input = options.Input == ScoreOptions.Pipe ? Console.OpenStandardInput() : File.OpenRead(options.Input);
        return options.Output == ScoreOptions.Pipe ? await ToPipeAsync(options, input, cancel) : await ToFileAsync(options, input, cancel);
    }

    private async Task<Tally> ToFileAsync(ScoreOptions options, Stream input, CancellationToken cancel)
    {
        var asked = new ScoreJob(rules.Revision, AdviceWriter.Program, await FleetLines.HashAsync(input, cancel), options.Detail, options.Shard, options.AsOf ?? today);
        using var part = PartFile.Open(options.Output, asked, options.AsOf is not null, out var job);
        await foreach (var reply in Replies(options, job.AsOf).ReadAsync(input, part.Done, cancel))
            part.Add(reply);
        var tally = new Tally(rules.Catalogue.PartsByFault);
        await part.CompleteAsync(options.Output, options.Format, tally);
        return tally;
    }

    private async Task<Tally> ToPipeAsync(ScoreOptions options, Stream input, CancellationToken cancel)
    {
        var tally = new Tally(rules.Catalogue.PartsByFault);
        await using var output = new BufferedStream(Console.OpenStandardOutput(), 64 * 1024);
        var replies = Replies(options, options.AsOf ?? today).ReadAsync(input, 0, cancel).Select(reply =>
        {
            tally.Add(reply);
            return reply;
        });
        if (options.Format == ScoreFormat.Csv)
        {
            await ReplyTable.WriteCsvAsync(replies.Select(reply => ReplyRow.Of(reply)), output);
            return tally;
        }

        await foreach (var reply in replies)
        {
            output.Write(reply);
            output.WriteByte((byte)'\n');
        }

        return tally;
    }

    private FleetReplies Replies(ScoreOptions options, DateOnly asOf) => new(rules, options with { AsOf = asOf }, progress);
}
