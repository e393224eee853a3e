using System.Text.Json.Nodes;
using Advice.Rules.Checking;
using Advice.Rules.RuleSets;
using Json.Schema;

namespace AdviceService.Tests.Schemas;

/// <summary>The schema of overlay manifests and the loader say the same about shapes.</summary>
public class OverlaySchemaTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "examples", "overlay-fleet");
    private static readonly JsonObject Text = JsonNode.Parse(File.ReadAllText(Path.Combine(FileSchema.Folder, "overlay.schema.json")))!.AsObject();
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text.ToJsonString());

    /// <summary>Codes of errors that a schema can see.</summary>
    private static readonly HashSet<string> OfShape =
        [ErrorCode.WrongShape, ErrorCode.UnknownMember, ErrorCode.MalformedId, ErrorCode.MissingMember, ErrorCode.UnknownWord];

    [Theory]
    [InlineData(true, "name: a\ntitle: b\n")]
    [InlineData(true, "name: a\ntitle: b\noff: []\n")]
    [InlineData(false, "name: a\n")]
    [InlineData(false, "title: b\n")]
    [InlineData(false, "name: A b\ntitle: b\n")]
    [InlineData(false, "name: a\ntitle: ''\n")]
    [InlineData(false, "name: a\ntitle: b\nowner: c\n")]
    [InlineData(false, "name: a\ntitle: b\noff: {}\n")]
    [InlineData(false, "name: a\ntitle: b\noff: [c]\n")]
    [InlineData(false, "name: a\ntitle: b\noff: [{kind: prone, id: oil-filter-settled}]\n")]
    [InlineData(true, "name: a\ntitle: b\noff: [{kind: prone, id: oil-filter-settled, because: c}]\n")]
    [InlineData(false, "name: a\ntitle: b\noff: [{kind: prone, because: c}]\n")]
    [InlineData(false, "name: a\ntitle: b\noff: [{kind: rule, id: oil-filter-settled, because: c}]\n")]
    [InlineData(false, "name: a\ntitle: b\nreplaces: [{kind: prone, id: oil-filter-settled, with: c}]\n")]
    public void Manifest_IsTakenByBothOrByNeither(bool taken, string text)
    {
        Assert.Equal(taken, FileSchema.Takes(Schema, YamlJson.Read(text)));
        Assert.Equal(taken, Loads(text));
    }

    /// <summary>A sound manifest changed in every place and way.</summary>
    [Fact]
    public void Change_IsRefusedByBothOrForWhatASchemaCannotSee()
    {
        var sound = YamlJson.Read("{name: hill-fleet, title: our vans, off: [{kind: prone, id: pads-petrol, because: We renew them.}, {kind: prone, id: pads-electric, because: Not here.}]}")!;
        var rules = Directory.CreateTempSubdirectory("rules-").FullName;
        File.Copy(Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml"), Path.Combine(rules, "words.yaml"));
        File.WriteAllText(Path.Combine(rules, "own.yaml"), """
            prone:
              - {id: pads-petrol, fault: pads-worn, vehicle: {fuel: gasoline}, odds: 2, because: It is faster., source: judgement}
              - {id: pads-electric, fault: pads-worn, vehicle: {fuel: electric}, odds: 0.5, because: The motor brakes., source: judgement}
            """);
        Assert.Empty(Errors(sound.ToJsonString(), rules));
        var both = 0;
        foreach (var mutation in Mutation.Of(sound))
        {
            var changed = mutation.In(sound);
            var (taken, errors) = (FileSchema.Takes(Schema, changed), Errors(changed.ToJsonString(), rules));
            both += !taken && errors.Count > 0 ? 1 : 0;
            Assert.False(!taken && errors.Count == 0, $"The schema alone refuses {mutation}.");
            Assert.False(taken && errors.Any(error => OfShape.Contains(error.Code)), $"The loader alone refuses {mutation}: {string.Join("; ", errors)}");
        }

        Directory.Delete(rules, recursive: true);
        Assert.True(both > 50, $"{both} refused by both");
    }

    [Fact]
    public void Kinds_AreThoseOfRuleFiles() =>
        Assert.Equal(
            FileSchema.RuleText["properties"]!.AsObject().Select(member => member.Key).Order(StringComparer.Ordinal),
            Text["$defs"]!["mark"]!["properties"]!["kind"]!["enum"]!.AsArray().Select(kind => kind!.GetValue<string>()).Order(StringComparer.Ordinal));

    [Fact]
    public void Example_FitsTheSchemasThatItsFilesName()
    {
        foreach (var file in Directory.GetFiles(Folder))
        {
            var (text, name) = (File.ReadAllText(file), Path.GetFileName(file));
            var (word, schema) = name == "overlay.yaml" ? ("overlay", Schema)
                : name.EndsWith(".cases.yaml", StringComparison.Ordinal) ? ("cases", FileSchema.Cases) : ("rules", FileSchema.Rules);
            Assert.StartsWith($"# yaml-language-server: $schema=../../rules/{word}.schema.json\n", text, StringComparison.Ordinal);
            Assert.True(FileSchema.Takes(schema, YamlJson.Read(text)), name);
        }
    }

    private static bool Loads(string manifest) => Errors(manifest, FileSchema.Folder).Count == 0;

    private static IReadOnlyList<RuleFileError> Errors(string manifest, string rules)
    {
        var folder = Directory.CreateTempSubdirectory("overlay-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "overlay.yaml"), manifest);
            RuleSetLoader.Load(rules, [folder.FullName]);
            return [];
        }
        catch (RuleSetException broken)
        {
            return broken.Errors;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
