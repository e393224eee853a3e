using System.Diagnostics;
using System.Text.RegularExpressions;

namespace AdviceService.Tests.Verbs;

/// <summary>Runs the executable as a person would.</summary>
internal static partial class Run
{
    /// <summary>Starts it.</summary>
    public static Process Start(params string[] args) => StartIn("", args);

    /// <summary>Starts the service on a free port and waits until it says where it listens.</summary>
    /// <returns>The process, its address, and what it writes to standard error until it ends.</returns>
    public static async Task<(Process Process, Uri Address, Task<string> Errors)> ServeAsync()
    {
        var process = Start("--urls", "http://127.0.0.1:0");
        var errors = process.StandardError.ReadToEndAsync();
        return (process, new Uri(Address().Match((await process.StandardOutput.ReadLineAsync())!).Value), errors);
    }

    private static Process StartIn(string folder, string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "AdviceService.dll"), .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = folder,
        };
        return Process.Start(start)!;
    }

    /// <summary>Runs it to its end.</summary>
    public static Task<(int ExitCode, string Output, string Error)> ToEndAsync(string input, params string[] args) => ToEndInAsync("", input, args);

    /// <summary>Runs it to its end in a folder.</summary>
    public static async Task<(int ExitCode, string Output, string Error)> ToEndInAsync(string folder, string input, params string[] args)
    {
        using var process = StartIn(folder, args);
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return (process.ExitCode, await output, await error);
    }

    [GeneratedRegex("http://[0-9.:]+")]
    private static partial Regex Address();
}
