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

    private static readonly IReadOnlyList<Mutation> Mutations = Mutation.Of(Sound);

    private static readonly Gen<Mutation> AnyMutation = Gen.Int[0, Mutations.Count - 1].Select(at => Mutations[at]);

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
        AnyMutation.Sample(
            mutation =>
            {
                var changed = mutation.In(Sound);
                if (FileSchema.Takes(FileSchema.Rules, changed))
                {
                    Interlocked.Increment(ref taken);
                    return;
                }

                Interlocked.Increment(ref refused);
                Assert.False(Errors(changed).Count == 0, $"The schema alone refuses {mutation}.");
            },
            iter: 1000);
        Assert.True(refused > 300 && taken > 100, $"{refused} refused, {taken} taken");
    }

    [Fact]
    public void Change_RefusedByTheLoaderForItsShape_IsRefusedByTheSchema()
    {
        var refused = 0;
        AnyMutation.Sample(
            mutation =>
            {
                if (ByOtherEntries.Any(other => mutation.Path.StartsWith(other, StringComparison.Ordinal)))
                    return;
                var changed = mutation.In(Sound);
                if (Errors(changed).FirstOrDefault(error => OfShape.Contains(error.Code)) is not { } error)
                    return;
                Interlocked.Increment(ref refused);
                Assert.False(FileSchema.Takes(FileSchema.Rules, changed), $"The loader alone refuses {mutation}: {error}");
            },
            iter: 1000);
        Assert.True(refused > 300, $"{refused} refused");
    }

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
