using System.Runtime.CompilerServices;
using System.Threading.Tasks.Dataflow;
using Advice.Evidence;
using AdviceService.Http;

namespace AdviceService.Fleet.Scoring;

/// <summary>The replies to the lines of a fleet, in their order, answered on several cores with few of them in memory.</summary>
/// <param name="rules">The rule set.</param>
/// <param name="options">What was asked, with the day that counts.</param>
/// <param name="progress">Is told how far it has come.</param>
internal sealed class FleetReplies(IRuleBook rules, ScoreOptions options, Action<ScoreProgress> progress)
{
    /// <summary>The replies as UTF-8 JSON.</summary>
    /// <param name="input">The fleet.</param>
    /// <param name="done">How many of them there are already.</param>
    /// <param name="cancel">Ends it.</param>
    public async IAsyncEnumerable<byte[]> ReadAsync(Stream input, long done, [EnumeratorCancellation] CancellationToken cancel)
    {
        using var end = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var desk = new AdviceDesk(rules, new DayClock(options.AsOf!.Value));
        var working = new LineAnswers(desk, options.Detail, LineAnswers.OnStandardError).InOrder(options.AtOnce, end.Token);
        var feeding = FeedAsync(working, input, done, end.Token);
        try
        {
            await foreach (var reply in working.ReceiveAllAsync(end.Token))
            {
                yield return reply.Json;
                progress(new ScoreProgress(++done, input.CanSeek ? input.Position : null));
            }

            await feeding;
        }
        finally
        {
            await end.CancelAsync();
        }
    }

    private async Task FeedAsync(TransformBlock<NumberedLine, LineReply> working, Stream input, long done, CancellationToken cancel)
    {
        try
        {
            await foreach (var line in FleetLines.Of(input, options.InputIsCsv, cancel).Where(options.Shard.Has).Skip(checked((int)done)))
                await working.SendAsync(line, cancel);
        }
        finally
        {
            working.Complete();
        }
    }
}
