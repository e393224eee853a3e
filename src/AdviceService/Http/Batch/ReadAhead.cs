using System.IO.Pipelines;

namespace AdviceService.Http.Batch;

/// <summary>How far a batch is read ahead of its answers: a little, so that memory stays flat. Once the caller takes no replies it is read on as
/// far as memory goes round, since one who sends everything before reading must not hang.</summary>
internal sealed class ReadAhead : IDisposable
{
    /// <summary>What may wait while the caller takes replies, bytes.</summary>
    public const int Enough = 256 * 1024;

    /// <summary>What a waiting line takes beside its bytes.</summary>
    private const int Frame = 64;

    /// <summary>From when on a caller counts as one who takes nothing. A socket wakes its sender only when a third of its buffer is free again, which
    /// may be a megabyte: with less patience whoever reads slowly would seem not to read.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    /// <summary>How long such a caller, whose lines find no memory, is waited for.</summary>
    public static readonly TimeSpan Resignation = TimeSpan.FromSeconds(30);

    /// <summary>How long a caller may leave what is sent before the batch is dropped: whoever hangs must not keep memory from others for ever.</summary>
    public static readonly TimeSpan Abandonment = TimeSpan.FromMinutes(10);

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(10);

    private readonly BatchMemory _memory;
    private readonly TimeProvider _clock;
    private readonly ITimer _abandoned;
    private long _sendingSince;
    private long _waiting;
    private long _borrowed;

    /// <summary>Begins with nothing waiting.</summary>
    /// <param name="memory">What is lent to callers that take nothing.</param>
    /// <param name="clock">Measures how long they take.</param>
    /// <param name="drop">Ends the connection.</param>
    public ReadAhead(BatchMemory memory, TimeProvider clock, Action drop)
    {
        (_memory, _clock) = (memory, clock);
        _abandoned = clock.CreateTimer(_ => drop(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    private TimeSpan Idle => Interlocked.Read(ref _sendingSince) is not 0 and var since ? _clock.GetElapsedTime(since) : TimeSpan.Zero;

    /// <summary>Sends what was written and notes how long the caller takes to accept it.</summary>
    public async Task SendAsync(PipeWriter body, CancellationToken cancel)
    {
        Interlocked.Exchange(ref _sendingSince, _clock.GetTimestamp());
        _abandoned.Change(Abandonment, Timeout.InfiniteTimeSpan);
        await body.FlushAsync(cancel);
        _abandoned.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        Interlocked.Exchange(ref _sendingSince, 0);
    }

    /// <summary>Waits until a line may wait with the others.</summary>
    /// <param name="line">The line, bytes.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>False where it never may: the caller takes nothing and memory is used up.</returns>
    public async ValueTask<bool> RoomAsync(int line, CancellationToken cancel)
    {
        var held = line + Frame;
        while (Interlocked.Read(ref _waiting) > Enough)
        {
            var idle = Idle;
            if (idle > Patience && _memory.TryTake(held))
            {
                _borrowed += held;
                break;
            }

            if (idle > Resignation)
                return false;
            await Task.Delay(Pause, _clock, cancel);
        }

        Interlocked.Add(ref _waiting, held);
        return true;
    }

    /// <summary>A line waits no more.</summary>
    /// <param name="line">The line, bytes.</param>
    public void Left(int line) => Interlocked.Add(ref _waiting, -(line + Frame));

    /// <inheritdoc/>
    public void Dispose()
    {
        _abandoned.Dispose();
        _memory.GiveBack(_borrowed);
    }
}
