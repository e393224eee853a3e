using System.Globalization;
using AdviceService.Fleet.Scoring;
using Spectre.Console;

namespace AdviceService.Terminal;

/// <summary>Shows on a terminal how far a run has come, how fast and how long it will take; says nothing where standard error is no terminal.</summary>
internal static class ScoreBar
{
    /// <summary>Runs it.</summary>
    public static Task<T> ShowAsync<T>(string input, Func<Action<ScoreProgress>, Task<T>> run) => Console.IsErrorRedirected
        ? run(_ => { })
        : ShowAsync(AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) }), TimeProvider.System, input, run);

    /// <summary>Runs it before that terminal.</summary>
    public static Task<T> ShowAsync<T>(IAnsiConsole terminal, TimeProvider clock, string input, Func<Action<ScoreProgress>, Task<T>> run) =>
        terminal.Progress()
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .StartAsync(async bars =>
            {
                var bytes = File.Exists(input) ? new FileInfo(input).Length : 0;
                var bar = bars.AddTask("reading", maxValue: Math.Max(1, bytes));
                bar.IsIndeterminate = bytes == 0;
                var start = clock.GetTimestamp();
                long before = -1;
                var result = await run(now =>
                {
                    before = before < 0 ? now.Lines - 1 : before;
                    var seconds = Math.Max(0.001, clock.GetElapsedTime(start).TotalSeconds);
                    bar.Description = string.Create(CultureInfo.InvariantCulture, $"{now.Lines} vehicles, {(now.Lines - before) / seconds:F0} a second");
                    bar.Value = now.Bytes ?? 0;
                });
                bar.Value = bar.MaxValue;
                return result;
            });
}
