using System.Diagnostics;

namespace AdviceService.Tests.Verbs;

/// <summary>Runs the executable as a person would.</summary>
internal static class Run
{
    /// <summary>Starts it.</summary>
    public static Process Start(params string[] args) => StartIn("", args);

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
}
