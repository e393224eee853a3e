using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>Each folder of Broken holds a faulty file beside the shared words, and what the loader must say about it, to the letter.</summary>
public class BrokenRuleSetTests
{
    private static readonly string Folder = Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests", "Broken");

    public static TheoryData<string> Broken => [.. Directory.GetDirectories(Folder).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Broken))]
    public void Load_FaultyFile_SaysWhatIsWrongWhereAndWhatWouldBeRight(string name)
    {
        var broken = Assert.Throws<RuleSetException>(() => Load(Path.Combine(Folder, name, "topic.yaml")));

        Assert.Equal(File.ReadAllLines(Path.Combine(Folder, name, "errors.txt")), broken.Errors.Select(error => error.ToString()));
    }

    /// <summary>Without a faulty file the shared words are sound: the errors above are those of the file.</summary>
    [Fact]
    public void Load_SharedWordsAlone_NothingIsWrong() => Assert.NotEmpty(Load().Revision);

    private static RuleBook Load(string? topic = null)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            File.Copy(Path.Combine(Folder, "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));
            if (topic is not null)
                File.Copy(topic, Path.Combine(folder.FullName, "topic.yaml"));
            return RuleSetLoader.Load(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
