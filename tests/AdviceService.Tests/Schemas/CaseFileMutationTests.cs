using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Knowledge;
using Advice.Rules.Cases;
using Advice.Rules.Files;
using Advice.Rules.RuleSets;
using AdviceService.Requests;
using RuleCode = Advice.Rules.Checking.ErrorCode;

namespace AdviceService.Tests.Schemas;

/// <summary>A sound case file changed in every place and way: what the schema refuses the reader of cases refuses, and what that refuses for its
/// shape the schema refuses.</summary>
public class CaseFileMutationTests
{
    private static readonly Catalogue Known = RuleSetLoader.Load(FileSchema.Folder).Catalogue;
    private static readonly RequestReader Reader = new(Known);

    private static readonly JsonNode Sound = YamlJson.Read("""
        cases:
          - id: own
            given:
              asOf: "2026-03-01"
              jurisdiction: DE
              vehicle: {modelYear: 2016, driveline: frontWheelDrive, fuel: gasoline, odometer: {value: 95000, unit: km}, engine: {cylinders: 4, interference: true}}
              complaint: It squeals.
              symptoms: [{symptom: squeal, occasions: [braking], position: front, present: true}]
              unsure: [grinding]
              troubleCodes: [P0301]
              findings:
                - {check: brake-pad-thickness, position: front-left, value: 2.5, unit: mm, "on": "2026-02-01", odometer: {value: 94000, unit: km}, limit: {minimum: 3, unit: mm, source: stamped}}
                - {check: coolant-condition, observation: rusty}
              services: [{item: brake-fluid, "on": "2019-05-01", odometer: {value: 40000, unit: km}, interval: {years: 2}}]
              workshop: {lift: false, minutes: 60, audience: owner}
              limit: 8
            first: [brake-pad-thickness, brake-disc-surface]
            among: {3: [brake-pad-thickness], 5: brake-disc-surface}
            never: universal-joint-play
            cautions: [brake-dust]
            noCautions: hot-coolant
            suspect: brake-pads-worn
            driving: [soon, normal]
            normal: [tailpipe-water-cold]
            judged: {brake-pad-thickness: major, coolant-condition: minor}
        """)!;

    /// <summary>Codes of errors that a schema can see.</summary>
    private static readonly HashSet<string> OfShape = [RuleCode.WrongShape, RuleCode.UnknownMember, RuleCode.MissingMember, RuleCode.EmptyList, RuleCode.EmptyCase];

    /// <summary>Those of the request that a caller would get as 400, save what takes a calendar.</summary>
    private static readonly HashSet<string> OfRequestShape =
        [ErrorCode.UnknownMember, ErrorCode.MissingMember, ErrorCode.UnfitMember, ErrorCode.WrongType, ErrorCode.UnknownWord];

    [Fact]
    public void Sound_IsTakenByBoth()
    {
        Assert.True(FileSchema.Takes(FileSchema.Cases, Sound));
        Assert.Empty(Read(Sound).Errors);
    }

    [Fact]
    public void Change_IsRefusedByBothOrForWhatASchemaCannotSee()
    {
        var (schemaAlone, readerAlone, both) = (new List<string>(), new List<string>(), 0);
        foreach (var mutation in Mutation.Of(Sound))
        {
            var changed = mutation.In(Sound);
            var (taken, read) = (FileSchema.Takes(FileSchema.Cases, changed), Read(changed));
            both += !taken && read.Errors.Count > 0 ? 1 : 0;
            if (!taken && read.Errors.Count == 0)
                schemaAlone.Add(mutation.ToString());
            if (taken && read.IsOfShape)
                readerAlone.Add($"{mutation}: {string.Join("; ", read.Errors)}");
        }

        Assert.Empty(schemaAlone);
        Assert.Empty(readerAlone);
        Assert.True(both > 500, $"{both} refused by both");
    }

    // JSON is YAML too, so that the reader gets what the schema was asked about.
    private static (IReadOnlyList<string> Errors, bool IsOfShape) Read(JsonNode file)
    {
        var ofRequest = false;
        var set = CaseFolder.Read([new RuleFile("own.cases.yaml", Encoding.UTF8.GetBytes(file.ToJsonString()))], Known, Given);
        return ([.. set.Errors.Select(error => error.ToString())], ofRequest || set.Errors.Any(error => OfShape.Contains(error.Code)));

        GivenRequest Given(JsonElement given, DateOnly today)
        {
            var read = Reader.Read(given, today);
            ofRequest |= read.Errors.Any(error => OfRequestShape.Contains(error.Code));
            return new GivenRequest(read.Value, [.. read.Errors.Select(error => (error.Pointer, error.Detail))]);
        }
    }
}
