using System.Text.Json.Nodes;
using Advice.Rules.RuleSets;
using Json.Schema;

namespace AdviceService.Tests.Schemas;

/// <summary>The schema of overlay manifests and the loader say the same about shapes.</summary>
public class OverlaySchemaTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "examples", "overlay-fleet");
    private static readonly JsonObject Text = JsonNode.Parse(File.ReadAllText(Path.Combine(FileSchema.Folder, "overlay.schema.json")))!.AsObject();
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text.ToJsonString());

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

    private static bool Loads(string manifest)
    {
        var folder = Directory.CreateTempSubdirectory("overlay-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "overlay.yaml"), manifest);
            RuleSetLoader.Load(FileSchema.Folder, [folder.FullName]);
            return true;
        }
        catch (RuleSetException)
        {
            return false;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
