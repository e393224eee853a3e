using System.Net;
using System.Text.Json;
using Advice.Evidence;
using Microsoft.Extensions.DependencyInjection;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class InspectionTests(RunningService service)
{
    private const string PickUp =
        """ "asOf":"2026-03-01","vehicle":{"modelYear":2011,"body":"pickup","driveline":"fourWheelDrive","fuel":"gasoline","transmission":"automatic","odometer":{"value":210000,"unit":"km"}}""";

    private const string Hatchback = """ "asOf":"2026-03-01","vehicle":{"modelYear":2022,"driveline":"frontWheelDrive","fuel":"electric","odometer":{"value":40000,"unit":"km"}}""";

    private IRuleBook Rules => service.Services.GetRequiredService<IRuleBook>();

    [Fact]
    public async Task Inspect_OldPickUp_CoversEverySystemAndTheElectricHatchbackIsFarShorter()
    {
        var (pickUp, hatchback) = (await InspectAsync(PickUp), await InspectAsync(Hatchback));

        Assert.Equal(
            Rules.Catalogue.Systems.Select(system => system.Id).Order(StringComparer.Ordinal),
            Steps(pickUp).Select(step => Text(step, "system")).Distinct().Order(StringComparer.Ordinal));
        Assert.Empty(pickUp.GetProperty("leftOut").EnumerateArray());
        Assert.True(Steps(hatchback).Count < 0.7 * Steps(pickUp).Count, $"{Steps(hatchback).Count} against {Steps(pickUp).Count}");
        Assert.DoesNotContain(Steps(hatchback), step => Text(step, "system") is "exhaust" or "ignition");
    }

    [Fact]
    public async Task Inspect_EveryStep_HasAReasonAndCautionsThatAreExplained()
    {
        var inspection = await InspectAsync(PickUp);
        var cautions = inspection.GetProperty("cautions").EnumerateArray().Select(caution => Text(caution, "id")).ToHashSet();

        Assert.All(Steps(inspection), step => Assert.NotEmpty(step.GetProperty("reasons").EnumerateArray()));
        Assert.All(Steps(inspection), step => Assert.All(step.GetProperty("cautions").EnumerateArray(), id => Assert.Contains(id.GetString(), cautions)));
    }

    /// <summary>Ground before lift, cold before hot, the road last: no set-up comes after one of a later stage.</summary>
    [Fact]
    public async Task Inspect_Steps_StandInOrderOfWork()
    {
        var inspection = await InspectAsync(PickUp);

        var stages = Steps(inspection).Select(step => Rules.Catalogue.Checks[Text(step, "check")!])
            .Select(check => (check.Needs.Select(need => need.Order).DefaultIfEmpty(0).Max(), check.Area.Order)).ToList();
        Assert.Equal(stages.Order(), stages);
        Assert.Equal("on-the-road", Text(Steps(inspection)[^1], "area"));
        Assert.True(stages.TakeWhile(stage => stage.Item1 == 0).Count() > 100);
        Assert.Equal(
            Steps(inspection).Select(step => Text(step, "check")),
            inspection.GetProperty("orderOfWork").EnumerateArray().SelectMany(visit => visit.GetProperty("checks").EnumerateArray()).Select(id => id.GetString()));
    }

    [Theory]
    [InlineData(15)]
    [InlineData(60)]
    [InlineData(180)]
    public async Task Inspect_WithinMinutes_FitsAndNamesWhatIsLeftOut(int minutes)
    {
        var all = Steps(await InspectAsync(PickUp)).Select(step => Text(step, "check")).ToHashSet();
        var inspection = await InspectAsync($$"""{{PickUp}},"workshop":{"audience":"technician","lift":true,"minutes":{{minutes}}}""");

        var chosen = Steps(inspection).Select(step => Text(step, "check")).ToList();
        Assert.NotEmpty(chosen);
        Assert.InRange(inspection.GetProperty("orderOfWork").EnumerateArray().Sum(visit => visit.GetProperty("minutes").GetInt32()), 1, minutes);
        Assert.True(all.SetEquals(chosen.Concat(inspection.GetProperty("leftOut").EnumerateArray().Select(id => id.GetString()))));
    }

    [Fact]
    public async Task Inspect_Complaint_IsLookedIntoWithinAShortTime()
    {
        var inspection = await InspectAsync($$"""{{PickUp}},"complaint":"It squeals when I brake","workshop":{"minutes":45}""");

        Assert.Contains(Steps(inspection), step => Text(step, "check") == "brake-pad-thickness");
    }

    /// <summary>A complaint about a nuisance is looked into before hazards that only base rates suggest.</summary>
    [Theory]
    [InlineData("The wipers leave streaks", "wiper")]
    [InlineData("Clunk from underneath when I shift from reverse into drive", "universal-joint")]
    [InlineData("The horn does not work", "horn")]
    public async Task Inspect_Complaint_ComesFirstEvenInAShortTime(string complaint, string check)
    {
        var inspection = await InspectAsync($$"""{{PickUp}},"complaint":"{{complaint}}","workshop":{"audience":"technician","lift":true,"minutes":25}""");

        Assert.Contains(Steps(inspection), step => Text(step, "check")!.StartsWith(check, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Inspect_FindingOfLastYear_IsCheckedAgainAndOneOfTodayIsNot()
    {
        const string Pads = """ "findings":[{"check":"brake-pad-thickness","value":8,"unit":"mm","on":"{0}"}]""";

        Assert.Contains(Steps(await InspectAsync($"{PickUp},{Pads.Replace("{0}", "2025-02-01", StringComparison.Ordinal)}")), step => Text(step, "check") == "brake-pad-thickness");
        Assert.DoesNotContain(Steps(await InspectAsync($"{PickUp},{Pads.Replace("{0}", "2026-03-01", StringComparison.Ordinal)}")), step => Text(step, "check") == "brake-pad-thickness");
    }

    [Fact]
    public async Task Inspect_DueItems_AreMergedIn()
    {
        var inspection = await InspectAsync($$"""{{PickUp}},"services":[{"item":"brake-fluid","on":"2018-01-01"}]""");

        Assert.Equal("overdue", Text(inspection.GetProperty("due").EnumerateArray().Single(item => Text(item, "item") == "brake-fluid"), "status"));
    }

    [Theory]
    [InlineData(300, 200)]
    [InlineData(301, 422)]
    [InlineData(0, 422)]
    public async Task Inspect_Limit_IsFrom1To300(int limit, int status)
    {
        using var response = await service.Client.PostAsync("/v1/inspection", RunningService.Json($$"""{"vehicle":{},"limit":{{limit}}}"""));

        Assert.Equal((HttpStatusCode)status, response.StatusCode);
    }

    private Task<JsonElement> InspectAsync(string members) => service.AskAsync("/v1/inspection", $"{{{members}}}");

    private static List<JsonElement> Steps(JsonElement inspection) => [.. inspection.GetProperty("steps").EnumerateArray()];

    private static string? Text(JsonElement element, string member) => element.GetProperty(member).GetString();
}
