using System.Text;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>
/// The texts of the folder Broken hold faulty rule files: a line "### name", the file, and after ">>> " what the loader must say about it
/// beside the shared words, to the letter.
/// </summary>
public class BrokenRuleSetTests
{
    private const string Name = "### ";
    private const string Says = ">>> ";
    private static readonly string Folder = Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests", "Broken");
    private static readonly byte[] Words = File.ReadAllBytes(Path.Combine(Folder, "words.yaml"));

    private static readonly Dictionary<string, List<string>> Lines = Directory.GetFiles(Folder, "*.txt").Order(StringComparer.Ordinal).SelectMany(Faulty)
        .ToDictionary(one => one.Name, one => one.Lines);

    public static TheoryData<string> All => [.. Lines.Keys];

    [Theory]
    [MemberData(nameof(All))]
    public void Load_FaultyFile_SaysWhatIsWrongWhereAndWhatWouldBeRight(string name)
    {
        var file = Lines[name].Where(line => !line.StartsWith(Says, StringComparison.Ordinal)).Select(line => line + '\n');

        Assert.Equal(
            Lines[name].Where(line => line.StartsWith(Says, StringComparison.Ordinal)).Select(line => line[Says.Length..]),
            ErrorsOf(("words.yaml", Words), ("topic.yaml", Encoding.UTF8.GetBytes(string.Concat(file)))));
    }

    /// <summary>Without a faulty file the shared words are sound: the errors above are those of the file.</summary>
    [Fact]
    public void Load_SharedWordsAlone_NothingIsWrong() => Assert.Empty(ErrorsOf(("words.yaml", Words)));

    [Fact]
    public void Load_BytesThatAreNoText_SaysSo() =>
        Assert.Equal(["topic.yaml(1,1): error file-not-read: the file is not UTF-8 text"], ErrorsOf(("words.yaml", Words), ("topic.yaml", [0xff, 0xfe, 0x00])));

    [Fact]
    public void Load_HugeFile_SaysSo() =>
        Assert.Equal(
            ["topic.yaml(1,1): error file-not-read: the file is larger than 1024 KiB; split it by topic"],
            ErrorsOf(("words.yaml", Words), ("topic.yaml", Enumerable.Repeat((byte)'#', (1 << 20) + 1).ToArray())));

    [Fact]
    public void Load_NoFolder_SaysSo() => Assert.Equal(
        "nowhere-at-all(1,1): error file-not-read: there is no such folder of rules",
        Assert.Single(Assert.Throws<RuleSetException>(() => RuleSetLoader.Load("nowhere-at-all")).Errors).ToString());

    /// <summary>A link to nothing is a file that cannot be read, whoever asks.</summary>
    [Fact]
    public void Load_FileThatCannotBeRead_SaysSo()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.CreateSymbolicLink(Path.Combine(folder.FullName, "topic.yaml"), Path.Combine(folder.FullName, "gone"));
        var errors = Assert.Throws<RuleSetException>(() => RuleSetLoader.Load(folder.FullName)).Errors;
        folder.Delete(recursive: true);

        Assert.StartsWith("topic.yaml(1,1): error file-not-read: the file cannot be read: ", errors[0].ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("topic.yml")]
    [InlineData("topic.YAML")]
    public void Load_FileThatWouldBeLeftOut_SaysSo(string name) =>
        Assert.Equal([$"{name}(1,1): error file-not-read: rule files end in .yaml, so this file would not be read"], ErrorsOf(("words.yaml", Words), (name, [])));

    [Fact]
    public void Load_SeveralFaultyFiles_NamesTheErrorsOfAll() =>
        Assert.Equal(
            ["brakes/pads.yaml(1,1): error unknown-kind: unknown kind of entry 'fault'", "topic.yaml(1,3): error not-plain-data: tags are not allowed; a rule file is plain data"],
            ErrorsOf(("words.yaml", Words), ("topic.yaml", "- !a b"u8.ToArray()), ("brakes/pads.yaml", "fault: []"u8.ToArray()))
                .Select(error => error.Split("; there are")[0]));

    /// <summary>The one error that matters is not lost among those that it brings about.</summary>
    [Fact]
    public void Load_FileThatOthersNeedCannotBeRead_NamesThatAndWhatIsWrongByItself() =>
        Assert.Equal(
            ["needed.yaml(2,1): error malformed-yaml", "topic.yaml(2,93): error unknown-word"],
            ErrorsOf(
                ("words.yaml", Words), ("needed.yaml", "symptoms: [{id: hum\n"u8.ToArray()),
                ("topic.yaml", "shows:\n  - {id: a, fault: pads-worn, symptom: hum, occasions: [braking], source: judgement, often: mostly, because: It rubs.}\n"u8.ToArray()))
                .Select(error => string.Join(": ", error.Split(": ")[..2])));

    [Theory]
    [InlineData("notes.txt")]
    [InlineData("topic.cases.yaml")]
    public void Load_FolderWithoutRules_SaysSo(string name) =>
        Assert.EndsWith("(1,1): error file-not-read: there are no rule files in this folder", Assert.Single(ErrorsOf((name, []))), StringComparison.Ordinal);

    private static IEnumerable<(string Name, List<string> Lines)> Faulty(string path)
    {
        var lines = new List<string>();
        foreach (var line in File.ReadLines(path))
        {
            if (line.StartsWith(Name, StringComparison.Ordinal))
                yield return ($"{Path.GetFileNameWithoutExtension(path)}: {line[Name.Length..]}", lines = []);
            else
                lines.Add(line);
        }
    }

    private static IEnumerable<string> ErrorsOf(params (string Path, byte[] Content)[] files)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            foreach (var (path, content) in files)
            {
                var full = Path.Combine(folder.FullName, path);
                Directory.CreateDirectory(Path.GetDirectoryName(full)!);
                File.WriteAllBytes(full, content);
            }

            return Record.Exception(() => RuleSetLoader.Load(folder.FullName)) is RuleSetException broken ? [.. broken.Errors.Select(error => error.ToString())] : [];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
