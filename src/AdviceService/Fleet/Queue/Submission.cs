namespace AdviceService.Fleet.Queue;

/// <summary>Cuts a fleet into chunks and puts them into the queue.</summary>
internal sealed class Submission(FleetQueue queue, string job)
{
    /// <summary>So many bytes of lines fit into a message, compressed or not.</summary>
    private const int MostBytes = 512 * 1024;

    /// <summary>Puts a fleet into the queue. Doing so again after it was broken off is harmless.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="detail">How much is to be answered.</param>
    /// <param name="asOf">The day that counts where a line names none.</param>
    /// <param name="linesOfAChunk">The most lines of a chunk.</param>
    /// <param name="cancel">Ends it.</param>
    public async Task<QueueJob> RunAsync(IAsyncEnumerable<NumberedLine> lines, LineDetail detail, DateOnly asOf, int linesOfAChunk, CancellationToken cancel)
    {
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
        var total = new QueueJob(detail, asOf, chunks, count);
        await queue.SubmitAsync(job, total, cancel);
        return total;

        async Task SubmitAsync()
        {
            await queue.SubmitAsync(job, chunks++, new Chunk(detail, asOf, [.. chunk]), cancel);
            count += chunk.Count;
            chunk.Clear();
            bytes = 0;
        }
    }
}
