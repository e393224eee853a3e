using AdviceService.Fleet.Scoring;

namespace AdviceService.Fleet.Queue;

/// <summary>Cuts a fleet into chunks and puts them into the queue.</summary>
internal sealed class Submission(FleetQueue queue, string job)
{
    /// <summary>So many bytes of lines fit into a message, compressed or not.</summary>
    private const int MostBytes = 512 * 1024;

    /// <summary>Puts a fleet into the queue. Doing so again after it was broken off is harmless.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="asked">What is asked for; a run that did not end is taken up.</param>
    /// <param name="givenAsOf">Whether the day was asked for; else that of a run that is taken up counts.</param>
    /// <param name="linesOfAChunk">The most lines of a chunk.</param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="ScoreException">The job is in the queue for something else.</exception>
    public async Task<QueueJob> RunAsync(IAsyncEnumerable<NumberedLine> lines, QueueRun asked, bool givenAsOf, int linesOfAChunk, CancellationToken cancel)
    {
        var run = await queue.BeginAsync(job, asked, cancel);
        if (Difference(run, asked, givenAsOf) is { } difference)
            throw new ScoreException($"The job {job} is in the queue for {difference}: collect it first, or take another name.");
        var (chunk, bytes, chunks, count) = (new List<NumberedLine>(), 0, 0, 0L);
        await foreach (var line in lines.WithCancellation(cancel))
        {
            var size = line.Json?.Length ?? 0;
            if (chunk.Count == linesOfAChunk || (chunk.Count > 0 && bytes + size > MostBytes))
                await SubmitAsync();
            chunk.Add(line);
            bytes += size;
        }

        if (chunk.Count > 0)
            await SubmitAsync();
        var total = new QueueJob(chunks, count);
        await queue.SubmitAsync(run, total, cancel);
        return total;

        async Task SubmitAsync()
        {
            await queue.SubmitAsync(run, chunks++, new Chunk(run.Detail, run.AsOf, [.. chunk]), cancel);
            count += chunk.Count;
            chunk.Clear();
            bytes = 0;
        }
    }

    private static string? Difference(QueueRun run, QueueRun asked, bool givenAsOf) =>
        run.Input != asked.Input ? "another fleet"
        : run.Detail != asked.Detail ? "another detail"
        : givenAsOf && run.AsOf != asked.AsOf ? "another day"
        : null;
}
