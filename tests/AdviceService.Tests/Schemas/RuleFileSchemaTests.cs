using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Advice.Rules.RuleSets;

namespace AdviceService.Tests.Schemas;

/// <summary>The schema of rule files and the loader say the same about shapes; only the loader knows which ids there are.</summary>
public partial class RuleFileSchemaTests
{
    /// <summary>Faulty files whose shape is right: what is wrong with them only shows beside other entries, or by comparing values.</summary>
    private static readonly HashSet<string> RightShapes =
    [
        "faults-and-checks: one name for two inputs",
        "faults-and-checks: a result that cannot be judged",
        "faults-and-checks: a fault that nothing shows or finds",
        "faults-and-checks: a plausible range upside down",
        "faults-and-checks: a value that stands twice",
        "faults-and-checks: a fault that a check finds by a value it lacks",
        "faults-and-checks: a part for an unknown fault",
        "faults-and-checks: a limit in another unit",
        "faults-and-checks: a limit upside down",
        "faults-and-checks: a limit of what is observed",
        "faults-and-checks: a duty that no fact knows",
        "faults-and-checks: a meaning of an unknown computation",
        "faults-and-checks: a meaning of an unknown verdict",
        "faults-and-checks: arithmetic that the value does not fit",
        "faults-and-checks: arithmetic that needs more than a value",
        "faults-and-checks: arithmetic whose input is an observation",
        "faults-and-checks: arithmetic that asks for what it does not take",
        "faults-and-checks: a share across an axle in millimetres",
        "faults-and-checks: a limit times a word",
        "faults-and-checks: a limit that means a normal value",
        "faults-and-checks: a limit that means an observation without its value",
        "faults-and-checks: a limit that means a value of what is measured",
        "rules: an unknown fault",
        "rules: an unknown symptom",
        "rules: an unknown occasion",
        "rules: an unknown source",
        "rules: an unknown caution",
        "rules: a rule that excludes what it asks for",
        "rules: the same link twice",
        "rules: an unknown vehicle fact",
        "rules: every word of a vehicle fact",
        "rules: a word where a range belongs",
        "rules: a range that holds nothing",
        "rules: signs that imply each other, twice",
        "vocabulary: an id that is taken",
        "vocabulary: an id that a rule of another kind has",
        "vocabulary: an occasion within itself",
        "vocabulary: a jurisdiction within itself",
        "vocabulary: a set-up that includes itself",
        "vocabulary: points of ageing that do not ascend",
        "vocabulary: a phrase of two symptoms",
        "vocabulary: shares that do not add up",
        "vocabulary: shares of other values",
    ];

    public static TheoryData<string> Kinds => [.. FileSchema.RuleText["properties"]!.AsObject().Select(member => member.Key)];

    public static TheoryData<string> Examples => [.. FaultyFiles.All.Keys];

    [Fact]
    public void Rules_EveryFileOfTheRepository_FitsTheSchemaThatItsFirstLineNames()
    {
        foreach (var file in Directory.GetFiles(FileSchema.Folder, "*.yaml", SearchOption.AllDirectories))
        {
            var (text, holdsCases) = (File.ReadAllText(file), file.EndsWith(".cases.yaml", StringComparison.Ordinal));
            Assert.StartsWith($"# yaml-language-server: $schema=../{(holdsCases ? "cases" : "rules")}.schema.json\n", text, StringComparison.Ordinal);
            Assert.True(FileSchema.Takes(holdsCases ? FileSchema.Cases : FileSchema.Rules, YamlJson.Read(text)), file);
        }
    }

    [Fact]
    public void Rules_EveryFileBelowAllSets_FitsTheSchema() => Assert.All(
        Directory.GetFiles(Path.Combine(Repository.Root, "src", "Advice.Rules", "Base")), file => Assert.True(FileSchema.Takes(FileSchema.Rules, YamlJson.Read(File.ReadAllText(file))), file));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Rules_FaultyFile_IsRefusedWhereItsShapeIsWrong(string name) =>
        Assert.Equal(RightShapes.Contains(name), FileSchema.Takes(FileSchema.Rules, YamlJson.Read(FaultyFiles.All[name])));

    [Fact]
    public void Rules_RightShapes_AreAllExamples() => Assert.Empty(RightShapes.Except(FaultyFiles.All.Keys));

    [Fact]
    public void Kinds_AreThoseOfTheLoader() =>
        Assert.Equal(Listed(Assert.Single(Errors("no-such-kind: []\n"), error => error.Contains("unknown kind", StringComparison.Ordinal)), "there are "), Members(FileSchema.RuleText));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Members_OfAKind_AreThoseThatTheLoaderKnows(string kind)
    {
        var errors = Errors($"{kind}: [{{id: a, no-such-member: 1}}]\n").ToList();
        var entry = FileSchema.RuleText["$defs"]![kind]!.AsObject();

        Assert.Equal(Listed(Assert.Single(errors, error => error.Contains("'no-such-member'", StringComparison.Ordinal)), "it may have "), Members(entry));
        var missing = errors.Select(error => Missing().Match(error)).Where(match => match.Success).Select(match => match.Groups["member"].Value).ToHashSet();
        var required = entry["required"]!.AsArray().Select(member => member!.GetValue<string>()).Where(member => member != "id").ToHashSet();
        Assert.Empty(required.Except(missing));
        // What is asked for in one case of several stands in the conditions of the schema.
        Assert.All(missing.Except(required), member => Assert.Contains($"\"{member}\"", Conditions(entry), StringComparison.Ordinal));
    }

    private static string Conditions(JsonObject entry) =>
        new JsonObject(entry.Where(member => member.Key is "oneOf" or "anyOf" or "allOf").Select(member => KeyValuePair.Create(member.Key, member.Value?.DeepClone()))).ToJsonString();

    private static SortedSet<string> Members(JsonObject schema) => [.. schema["properties"]!.AsObject().Select(member => member.Key)];

    private static SortedSet<string> Listed(string error, string after) =>
        [.. error[(error.IndexOf(after, StringComparison.Ordinal) + after.Length)..].Split(';')[0].Split(", ")];

    private static IEnumerable<string> Errors(string text)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "topic.yaml"), text);
            return Assert.Throws<RuleSetException>(() => RuleSetLoader.Load(folder.FullName)).Errors.Select(error => error.ToString());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [GeneratedRegex(@"(?:'(?<member>[\w-]+)' is missing|needs a '(?<member>[\w-]+)' condition)")]
    private static partial Regex Missing();
}
