namespace AdviceService.Tests;

/// <summary>The folder that holds the solution.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo? folder) =>
        folder is null ? throw new DirectoryNotFoundException("The tests do not run inside the repository.")
        : File.Exists(Path.Combine(folder.FullName, "AdviceService.sln")) ? folder.FullName
        : Find(folder.Parent);
}
