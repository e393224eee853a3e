using AdviceService.Verbs;

namespace AdviceService.Tests.Verbs;

/// <summary>Runs a verb within this process: a start costs more than most verbs. What it prints is caught for the test that runs it, whatever other
/// tests print meanwhile.</summary>
internal static class Here
{
    private static readonly CaughtWriter Output = new(Console.Out);
    private static readonly CaughtWriter Error = new(Console.Error);

    static Here()
    {
        Console.SetOut(Output);
        Console.SetError(Error);
    }

    /// <summary>Runs it to its end.</summary>
    public static async Task<(int ExitCode, string Output, string Error)> ToEndAsync(params string[] args)
    {
        using var output = Output.Catch();
        using var error = Error.Catch();
        var ended = await CommandLine.RunAsync(args);
        return (ended, output.ToString(), error.ToString());
    }
}
