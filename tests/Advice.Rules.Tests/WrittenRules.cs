namespace Advice.Rules.Tests;

/// <summary>Rule files of the tests, each read beside the shared words.</summary>
internal static class WrittenRules
{
    private static readonly string Tests = Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests");

    /// <summary>Names of the examples of a kind.</summary>
    public static TheoryData<string> Folders(string kind) =>
        [.. Directory.GetDirectories(Path.Combine(Tests, kind)).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    /// <summary>Lines of a file beside an example.</summary>
    public static string[] Lines(string kind, string name, string file) => File.ReadAllLines(Path.Combine(Tests, kind, name, file));

    /// <summary>Reads the shared words and, if one is named, an example.</summary>
    public static T Beside<T>(string? kind, string? name, Func<string, T> read)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            File.Copy(Path.Combine(Tests, "Words", "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));
            if (kind is not null && name is not null)
                File.Copy(Path.Combine(Tests, kind, name, "topic.yaml"), Path.Combine(folder.FullName, "topic.yaml"));
            return read(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
