using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Overlays;

/// <summary>Overlays written for a test, over the shared words.</summary>
internal static class Laid
{
    public const string Name = "name: ours\ntitle: rules of our own\n";

    /// <summary>What the loader says, by file name; the warnings of the set where nothing is wrong.</summary>
    public static IReadOnlyList<string> Says(string manifest, string own = "", string shipped = "")
    {
        try
        {
            return Over(shipped, [(manifest, own)], book => Texts(book.Warnings));
        }
        catch (RuleSetException broken)
        {
            return Texts(broken.Errors);
        }
    }

    /// <summary>Reads overlays, each a manifest and a file, over the shared words and a further file.</summary>
    public static T Over<T>(string shipped, IReadOnlyList<(string Manifest, string Own)> overlays, Func<RuleBook, T> then)
    {
        var root = Directory.CreateTempSubdirectory("overlays-").FullName;
        try
        {
            var folders = overlays.Select((overlay, i) => Write(root, i, overlay.Manifest, overlay.Own)).ToList();
            return WrittenRules.Beside(null, null, rules =>
            {
                File.WriteAllText(Path.Combine(rules, "more.yaml"), shipped);
                return then(RuleSetLoader.Load(rules, folders));
            });
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static string Write(string root, int number, string manifest, string own)
    {
        var folder = Directory.CreateDirectory(Path.Combine(root, $"{number}")).FullName;
        File.WriteAllText(Path.Combine(folder, "overlay.yaml"), manifest);
        File.WriteAllText(Path.Combine(folder, "own.yaml"), own);
        return folder;
    }

    private static List<string> Texts(IEnumerable<Checking.RuleFileError> errors) =>
        [.. errors.Select(error => (error with { File = Path.GetFileName(error.File) }).ToString())];
}
