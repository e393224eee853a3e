using System.IO.Pipelines;

namespace AdviceService.Http.Batch;

/// <summary>How far a batch is read ahead of its answers: a little, so that memory stays flat; but to the end once the caller takes no
/// answers, since one who sends everything before reading must not hang.</summary>
internal sealed class ReadAhead(TimeProvider clock)
{
    private const int EnoughLines = 1000;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(10);

    private long _sendingSince;

    /// <summary>Sends what was written and notes how long the caller takes to accept it.</summary>
    public async Task SendAsync(PipeWriter body, CancellationToken cancel)
    {
        Interlocked.Exchange(ref _sendingSince, clock.GetTimestamp());
        await body.FlushAsync(cancel);
        Interlocked.Exchange(ref _sendingSince, 0);
    }

    /// <summary>Waits until reading on makes sense.</summary>
    /// <param name="waitingLines">How many lines wait for their answer.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async ValueTask RoomAsync(Func<int> waitingLines, CancellationToken cancel)
    {
        while (waitingLines() >= EnoughLines && !TakesNothing())
            await Task.Delay(Pause, clock, cancel);
    }

    private bool TakesNothing() => Interlocked.Read(ref _sendingSince) is not 0 and var since && clock.GetElapsedTime(since) > Patience;
}
