using System.Text.Json.Nodes;
using Advice.Rules.Checking;
using Advice.Rules.RuleSets;
using CsCheck;

namespace AdviceService.Tests.Schemas;

/// <summary>A sound file of every kind, changed in one place: what the schema refuses the loader refuses, and what the loader refuses for its
/// shape the schema refuses.</summary>
public class RuleFileMutationTests
{
    private static readonly JsonNode Sound = YamlJson.Read(File.ReadAllText(Path.Combine(Repository.Root, "tests", "AdviceService.Tests", "Schemas", "every-kind.yaml")))!;

    private static readonly IReadOnlyList<string> Values =
        ["-1", "0", "1", "0.4", "1e9", "\"a\"", "\"Two Words\"", "\"P0301\"", "\"often\"", "\"stop\"", "\"owner\"", "true", "[]", "{}", "[\"a\"]", "[\"a\",\"a\"]", "{\"id\":\"a\"}"];

    private static readonly IReadOnlyList<string> Paths = [.. All(Sound, "").Skip(1)];

    /// <summary>Codes of errors about one entry by itself, which a schema can see; the others take ids, sums or several entries.</summary>
    private static readonly HashSet<string> OfShape =
    [
        ErrorCode.WrongShape, ErrorCode.UnknownKind, ErrorCode.UnknownMember, ErrorCode.MalformedId, ErrorCode.MissingMember, ErrorCode.MissingSource,
        ErrorCode.ChooseOne, ErrorCode.EmptyList,
    ];

    /// <summary>Where what is right depends on another entry: the values of a fact name its shares, and its kind says what conditions on it look like.</summary>
    private static readonly string[] ByOtherEntries = ["/facts/0/shares", "/facts/0/values", "/facts/1/shares", "/limits/0/vehicle/cylinders"];

    [Fact]
    public void Sound_IsTakenByBoth() => Assert.Equal((true, true), (FileSchema.Takes(FileSchema.Rules, Sound), Errors(Sound).Count == 0));

    [Fact]
    public void Change_RefusedByTheSchema_IsRefusedByTheLoader()
    {
        var (refused, taken) = (0, 0);
        Gen.Select(Gen.Int[0, Paths.Count - 1], Gen.Int[-1, Values.Count - 1], Gen.Bool).Sample(
            (path, value, added) =>
            {
                var changed = Sound.DeepClone();
                Change(changed, Paths[path], value < 0 ? null : Values[value], added);
                if (FileSchema.Takes(FileSchema.Rules, changed))
                {
                    Interlocked.Increment(ref taken);
                    return;
                }

                Interlocked.Increment(ref refused);
                Assert.False(Errors(changed).Count == 0, $"The schema alone refuses {Paths[path]} as {(value < 0 ? "left out" : Values[value])}{(added ? " with a member more" : "")}.");
            },
            iter: 1000);
        Assert.True(refused > 300 && taken > 100, $"{refused} refused, {taken} taken");
    }

    [Fact]
    public void Change_RefusedByTheLoaderForItsShape_IsRefusedByTheSchema()
    {
        var refused = 0;
        Gen.Select(Gen.Int[0, Paths.Count - 1], Gen.Int[-1, Values.Count - 1], Gen.Bool).Sample(
            (path, value, added) =>
            {
                if (ByOtherEntries.Any(other => Paths[path].StartsWith(other, StringComparison.Ordinal)))
                    return;
                var changed = Sound.DeepClone();
                Change(changed, Paths[path], value < 0 ? null : Values[value], added);
                if (Errors(changed).FirstOrDefault(error => OfShape.Contains(error.Code)) is not { } error)
                    return;
                Interlocked.Increment(ref refused);
                Assert.False(FileSchema.Takes(FileSchema.Rules, changed), $"The loader alone refuses {Paths[path]} as {(value < 0 ? "left out" : Values[value])}{(added ? " with a member more" : "")}: {error}");
            },
            iter: 1000);
        Assert.True(refused > 300, $"{refused} refused");
    }

    /// <summary>Leaves a value out, replaces it, or gives the mapping there one member more.</summary>
    private static void Change(JsonNode root, string path, string? value, bool added)
    {
        var tokens = path.Split('/')[1..];
        var parent = tokens[..^1].Aggregate(root, (node, token) => node is JsonArray list ? list[int.Parse(token, null)]! : node[token]!);
        var last = tokens[^1];
        var own = parent is JsonArray items ? items[int.Parse(last, null)] : parent[last];
        if (added && own is JsonObject mapping)
            mapping["no-such-member"] = 1;
        else if (parent is JsonArray array && value is null)
            array.RemoveAt(int.Parse(last, null));
        else if (parent is JsonArray list)
            list[int.Parse(last, null)] = JsonNode.Parse(value!);
        else if (value is null)
            parent.AsObject().Remove(last);
        else
            parent[last] = JsonNode.Parse(value);
    }

    private static IEnumerable<string> All(JsonNode? node, string path) => (node switch
    {
        JsonObject mapping => mapping.SelectMany(member => All(member.Value, $"{path}/{member.Key}")),
        JsonArray list => list.SelectMany((item, i) => All(item, $"{path}/{i}")),
        _ => [],
    }).Prepend(path);

    // JSON is YAML too, so that the loader reads what the schema was asked about.
    private static IReadOnlyList<RuleFileError> Errors(JsonNode file)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "topic.yaml"), file.ToJsonString());
            RuleSetLoader.Load(folder.FullName);
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
