using AdviceService.Fleet.Scoring;
using AdviceService.Terminal;
using Spectre.Console;

namespace AdviceService.Tests.Terminal;

public sealed class ScoreBarTests : IDisposable
{
    private readonly StringWriter _screen = new();

    /// <summary>The lines of an earlier run, which died, were not scored in this time and do not count.</summary>
    [Fact]
    public async Task Show_Run_ShowsHowFarHowFastAndHowLong()
    {
        var clock = new TwoSecondsLater();
        var terminal = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.Yes, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(_screen) });

        var result = await ScoreBar.ShowAsync(terminal, clock, "-", progress =>
        {
            progress(new ScoreProgress(101, null));
            clock.Passed = true;
            progress(new ScoreProgress(120, null));
            return Task.FromResult(7);
        });

        Assert.Equal(7, result);
        Assert.Contains("120 vehicles, 10 a second", _screen.ToString(), StringComparison.Ordinal);
        Assert.Contains("100%", _screen.ToString(), StringComparison.Ordinal);
    }

    public void Dispose() => _screen.Dispose();

    private sealed class TwoSecondsLater : TimeProvider
    {
        public bool Passed { get; set; }

        public override long TimestampFrequency => 1;

        public override long GetTimestamp() => Passed ? 2 : 0;
    }
}
