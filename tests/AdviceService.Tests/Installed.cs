namespace AdviceService.Tests;

/// <summary>Programs of this machine.</summary>
internal static class Installed
{
    /// <summary>Path of a program; null where it is not installed. Some stand where only administrators look.</summary>
    public static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Append("/usr/sbin")
        .Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);
}
