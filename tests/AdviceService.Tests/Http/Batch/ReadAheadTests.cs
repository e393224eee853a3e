using System.Buffers;
using System.IO.Pipelines;
using AdviceService.Http.Batch;
using Microsoft.Extensions.Time.Testing;

namespace AdviceService.Tests.Http.Batch;

public sealed class ReadAheadTests : IDisposable
{
    private const int Line = ReadAhead.Enough;

    private readonly FakeTimeProvider _clock = new();
    private readonly Pipe _caller = new(new PipeOptions(pauseWriterThreshold: 1, resumeWriterThreshold: 1));
    private readonly ReadAhead _ahead;
    private bool _dropped;

    public ReadAheadTests() => _ahead = new ReadAhead(new BatchMemory(2L * Line), _clock, () => _dropped = true);

    public void Dispose() => _ahead.Dispose();

    [Fact]
    public async Task Room_CallerTakesReplies_WaitsUntilALineHasLeft()
    {
        Assert.True(await RoomAsync());

        var next = RoomAsync();
        await PassAsync(ReadAhead.Resignation * 2);
        Assert.False(next.IsCompleted);
        _ahead.Left(Line);

        Assert.True(await InTimeAsync(next));
    }

    [Fact]
    public async Task Room_CallerTakesNothing_IsLentUntilMemoryIsUsedUpAndThenRefused()
    {
        var sending = SendAsync();
        Assert.True(await RoomAsync());
        await PassAsync(ReadAhead.Patience * 2);
        Assert.True(await RoomAsync());

        var refused = RoomAsync();
        await PassAsync(ReadAhead.Resignation);

        Assert.False(await InTimeAsync(refused));
        Assert.False(sending.IsCompleted);
        Assert.False(_dropped);
    }

    [Fact]
    public async Task Room_CallerTakesAgainBeforeItIsGivenUp_GoesOn()
    {
        var sending = SendAsync();
        await RoomAsync();
        await PassAsync(ReadAhead.Patience * 2);
        await RoomAsync();
        var next = RoomAsync();
        await PassAsync(TimeSpan.FromSeconds(1));
        _caller.Reader.AdvanceTo((await _caller.Reader.ReadAsync()).Buffer.End);
        await sending;
        _ahead.Left(Line);
        _ahead.Left(Line);

        Assert.True(await InTimeAsync(next));
    }

    [Fact]
    public async Task Send_LeftForTooLong_DropsTheCaller()
    {
        _ = SendAsync();

        await PassAsync(ReadAhead.Abandonment - TimeSpan.FromSeconds(1));
        Assert.False(_dropped);
        await PassAsync(TimeSpan.FromSeconds(2));

        Assert.True(_dropped);
    }

    [Fact]
    public void Memory_OfAnEndedBatch_IsFreeForTheNext()
    {
        var memory = new BatchMemory(100);

        Assert.True(memory.TryTake(60));
        Assert.False(memory.TryTake(60));
        memory.GiveBack(60);
        Assert.True(memory.TryTake(100));
    }

    private Task<bool> RoomAsync() => _ahead.RoomAsync(Line, default).AsTask();

    private Task SendAsync()
    {
        _caller.Writer.Write(new byte[10]);
        return _ahead.SendAsync(_caller.Writer, default);
    }

    private async Task<bool> InTimeAsync(Task<bool> answer)
    {
        while (!answer.IsCompleted)
            await PassAsync(TimeSpan.FromSeconds(1));
        return await answer;
    }

    /// <summary>Lets time go by in steps, so that whoever looks again after a pause does so.</summary>
    private async Task PassAsync(TimeSpan time)
    {
        for (var i = 0; i < 20; i++)
        {
            _clock.Advance(time / 20);
            await Task.Delay(1);
        }
    }
}
