using System.Text.Json;
using Advice.Rules.RuleSets;
using AdviceService.Catalogues;

namespace AdviceService.Tests.Verbs;

/// <summary>The example overlay over the shipped rules, as a fleet would use it.</summary>
public class OverlayTests
{
    private const string Request = """
        {"asOf":"2026-03-01","vehicle":{"modelYear":2021,"fuel":"diesel","odometer":{"value":80000,"unit":"km"}},"complaint":"It squeals when I brake.",
         "findings":[{"check":"tyre-tread-depth","position":"front-left","value":3.5,"unit":"mm"}],
         "services":[{"item":"engine-oil","on":"2025-11-01","odometer":{"value":69500,"unit":"km"}}]}
        """;

    private const string OilLeak = """
        {"asOf":"2026-03-01","vehicle":{"odometer":{"value":80000,"unit":"km"}},"symptoms":[{"symptom":"oil-leak"}],
         "services":[{"item":"engine-oil","on":"2025-03-01","odometer":{"value":70000,"unit":"km"}}]}
        """;

    private static readonly string Rules = Path.Combine(Repository.Root, "rules");
    private static readonly string Fleet = Path.Combine(Repository.Root, "examples", "overlay-fleet");

    [Fact]
    public async Task Advise_WithOverlay_NamesWhatCameFromIt()
    {
        var advice = await AdviseAsync("--overlay", Fleet);

        Assert.Equal("hill-fleet", Assert.Single(advice.GetProperty("ruleSet").GetProperty("overlays").EnumerateArray()).GetProperty("name").GetString());
        Assert.Equal(
            ["limit tyre-tread-trade", "rule hill-fleet-pads", "service item engine-oil"],
            advice.GetProperty("fromOverlays").EnumerateArray().Select(entry => $"{entry.GetProperty("kind")} {entry.GetProperty("id")}"));
        Assert.Equal("minor", advice.GetProperty("judgements")[0].GetProperty("deficiency").GetString());
        Assert.Contains(advice.GetProperty("due").EnumerateArray(), due => due.GetProperty("item").GetString() == "engine-oil");
    }

    [Fact]
    public async Task Advise_RuleSwitchedOffThatWouldHaveCounted_IsNamedWithTheReason()
    {
        var (ended, output, error) = await Run.ToEndAsync(OilLeak, "advise", "-", "--json", "--rules", Rules, "--overlay", Fleet);

        Assert.True(ended == 0, error);
        var off = Assert.Single(JsonDocument.Parse(output).RootElement.GetProperty("fromOverlays").EnumerateArray(), entry => entry.GetProperty("switchedOff").ValueKind == JsonValueKind.String);
        Assert.Equal("rule oil-filter-settled: Our workshop fits the filters and retightens each one after a week.", $"{off.GetProperty("kind")} {off.GetProperty("id")}: {off.GetProperty("switchedOff")}");
    }

    /// <summary>What an answer names only where it would have counted, the rule set names in any case.</summary>
    [Fact]
    public void RuleSet_WithOverlay_NamesAllOfIt()
    {
        var book = RuleSetLoader.Load(Rules, [Fleet]);
        var set = new Entries(book.Catalogue, book.Revision, book.SwitchedOff).RuleSet;

        Assert.Equal(["hill-fleet"], set.Overlays.Select(overlay => overlay.Name));
        Assert.Equal(["limit tyre-tread-trade", "rule hill-fleet-pads", "rule oil-filter-settled", "service item engine-oil"], set.FromOverlays.Select(entry => $"{entry.Kind} {entry.Id}"));
        Assert.Equal(["Our workshop fits the filters and retightens each one after a week."], set.FromOverlays.Select(entry => entry.SwitchedOff).OfType<string>());
    }

    [Fact]
    public async Task Advise_WithoutOverlay_IsTheShippedSet()
    {
        var advice = await AdviseAsync();

        Assert.Empty(advice.GetProperty("ruleSet").GetProperty("overlays").EnumerateArray());
        Assert.Empty(advice.GetProperty("fromOverlays").EnumerateArray());
        Assert.Equal("none", advice.GetProperty("judgements")[0].GetProperty("deficiency").GetString());
    }

    [Fact]
    public async Task Test_WithOverlay_AsksItsCasesToo()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        await RulesCopy.FillAsync(folder.FullName, _ => false);
        var (_, without, _) = await Here.ToEndAsync("rules", "test", "--rules", folder.FullName);
        var (ended, with, _) = await Here.ToEndAsync("rules", "test", "--rules", folder.FullName, "--overlay", Fleet);
        folder.Delete(recursive: true);

        Assert.Equal(0, ended);
        Assert.Matches(@"^0 cases, 0 fail, 0 errors in case files\.\s+[1-9]\d* phrases, 0 misread\.\s*$", without);
        Assert.Matches(@"^1 cases, 0 fail, 0 errors in case files\.\s+[1-9]\d* phrases, 0 misread\.\s*$", with);
    }

    private static async Task<JsonElement> AdviseAsync(params string[] options)
    {
        var (ended, output, error) = await Run.ToEndAsync(Request, ["advise", "-", "--json", "--rules", Rules, .. options]);
        Assert.True(ended == 0, error);
        return JsonDocument.Parse(output).RootElement;
    }
}
