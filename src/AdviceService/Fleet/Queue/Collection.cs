using System.Text.Json;
using AdviceService.Http.Problems;
using AdviceService.Json;

namespace AdviceService.Fleet.Queue;

/// <summary>Takes the replies of a job from the queue in the order of its lines.</summary>
internal sealed class Collection(FleetQueue queue, string job)
{
    private static readonly TimeSpan AskAgain = TimeSpan.FromMilliseconds(200);

    private static readonly ProblemDocument Dead =
        ProblemDocument.Of(500, "internal", "No worker could answer the chunk of this line in three tries; send the line again once the workers are well.");

    /// <summary>Waits until the job is there.</summary>
    public Task<QueueRun> BegunAsync(CancellationToken cancel) => WaitAsync(() => queue.RunAsync(job, cancel), cancel);

    /// <summary>Waits for each chunk and gives its replies. Every line of the job gets exactly one.</summary>
    public async IAsyncEnumerable<byte[]> ReadAsync([System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel)
    {
        var run = (await BegunAsync(cancel)).Name;
        var total = await WaitAsync(() => queue.TotalAsync(run, cancel), cancel);
        for (var index = 0; index < total.Chunks; index++)
        {
            var chunk = index;
            foreach (var reply in await WaitAsync(() => RepliesAsync(run, chunk, cancel), cancel))
                yield return reply;
        }
    }

    private async Task<IReadOnlyList<byte[]>?> RepliesAsync(string run, int index, CancellationToken cancel)
    {
        if (await queue.ResultAsync(run, index, cancel) is { } replies)
            return Split(replies);
        return await queue.DeadAsync(run, index, cancel) is { } dead ? [.. dead.Lines.Select(Problem)] : null;
    }

    private static byte[] Problem(NumberedLine line) => JsonSerializer.SerializeToUtf8Bytes(new ProblemLine(Id(line.Json), line.Number, Dead), Written.As.ProblemLine);

    private static JsonElement? Id(byte[]? line)
    {
        try
        {
            return line is not null && JsonElement.Parse(line) is { ValueKind: JsonValueKind.Object } json && json.TryGetProperty("id", out var id)
                && id.ValueKind is JsonValueKind.String or JsonValueKind.Number ? id : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static List<byte[]> Split(ReadOnlySpan<byte> replies)
    {
        var lines = new List<byte[]>();
        foreach (var line in replies.Split((byte)'\n'))
        {
            if (!replies[line].IsEmpty)
                lines.Add(replies[line].ToArray());
        }

        return lines;
    }

    private static async Task<T> WaitAsync<T>(Func<Task<T?>> ask, CancellationToken cancel)
        where T : class
    {
        while (true)
        {
            if (await ask() is { } answer)
                return answer;
            await Task.Delay(AskAgain, cancel);
        }
    }
}
