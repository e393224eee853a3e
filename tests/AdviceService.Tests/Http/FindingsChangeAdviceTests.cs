using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>A finding is evidence: it moves suspects, steps and driving advice, and what was done is not advised again.</summary>
[Collection(Served.ByHttp)]
public class FindingsChangeAdviceTests(RunningService service)
{
    private const string Vehicle = """ "asOf":"2026-03-01","jurisdiction":"US","limit":50,"vehicle":{"modelYear":2014,"fuel":"gasoline","driveline":"rearWheelDrive","odometer":{"value":140000,"unit":"km"}}""";

    public static TheoryData<string, string, string, string> Findings => new()
    {
        { "Big clunk from underneath when I shift from reverse into drive", "universal-joint-worn", """{"check":"universal-joint-play","observation":"none"}""", """{"check":"universal-joint-play","observation":"play"}""" },
        { "There is a high squeal when I brake", "brake-pads-worn", """{"check":"brake-pad-thickness","value":9,"unit":"mm"}""", """{"check":"brake-pad-thickness","value":0.5,"unit":"mm"}""" },
        { "It cranks slowly in the morning", "battery-weak", """{"check":"battery-open-circuit-voltage","value":12.7,"unit":"V"}""", """{"check":"battery-open-circuit-voltage","value":11.6,"unit":"V"}""" },
    };

    [Theory]
    [MemberData(nameof(Findings))]
    public async Task Advise_Finding_MovesItsFaultBothWaysAndIsNotAdvisedAgain(string complaint, string fault, string normal, string abnormal)
    {
        var check = JsonDocument.Parse(normal).RootElement.GetProperty("check").GetString();
        var (before, good, bad) = (await AdviseAsync(complaint), await AdviseAsync(complaint, normal), await AdviseAsync(complaint, abnormal));

        Assert.Contains(check, Steps(before));
        Assert.True(Probability(good, fault) < Probability(before, fault) && Probability(before, fault) < Probability(bad, fault), $"{Probability(good, fault)} {Probability(before, fault)} {Probability(bad, fault)}");
        Assert.DoesNotContain(check, Steps(good));
        Assert.DoesNotContain(check, Steps(bad));
        Assert.DoesNotContain(check, OrderOfWork(good));
    }

    /// <summary>Whoever does the first step and finds nothing each time is led through all of them, best next.</summary>
    [Fact]
    public async Task Advise_NormalAgainAndAgain_TheNextBestCheckMovesUpAndNoneComesTwice()
    {
        const string Complaint = "There is a high squeal when I brake";
        var (done, findings) = (new List<string>(), new List<string>());
        for (var step = 0; step < 6; step++)
        {
            var steps = Steps(await AdviseAsync(Complaint, [.. findings]));
            Assert.Empty(steps.Intersect(done));
            done.Add(steps[0]);
            findings.Add(Normal(await CheckAsync(steps[0])));
        }

        Assert.Equal(6, done.Distinct().Count());
    }

    [Fact]
    public async Task Advise_DangerousFinding_StopsTheVehicleAndChangesWhatIsAsked()
    {
        const string Complaint = "There is a high squeal when I brake";
        var (before, after) = (await AdviseAsync(Complaint), await AdviseAsync(Complaint, """{"check":"brake-pad-thickness","position":"front-left","value":0.3,"unit":"mm"}"""));

        Assert.Equal(("soon", "stop"), (Driving(before), Driving(after)));
        Assert.NotEqual(before.GetProperty("questions").ToString(), after.GetProperty("questions").ToString());
        Assert.DoesNotContain("brake-road-test", Steps(after));
    }

    [Fact]
    public async Task Advise_UnevenBrakeForces_RaisesTheCaliper()
    {
        var advice = await AdviseAsync(
            "It pulls to the left when I brake",
            """{"check":"brake-force","position":"front-left","value":3.2,"unit":"kN"}""", """{"check":"brake-force","position":"front-right","value":1.9,"unit":"kN"}""");

        var across = Assert.Single(advice.GetProperty("acrossAxles").EnumerateArray());
        Assert.Equal("major", across.GetProperty("deficiency").GetString());
        Assert.True(Probability(advice, "brake-caliper-piston-seized") > Probability(await AdviseAsync("It pulls to the left when I brake"), "brake-caliper-piston-seized"));
    }

    private Task<JsonElement> AdviseAsync(string complaint, params string[] findings) =>
        service.AdviseAsync($$"""{{{Vehicle}},"complaint":"{{complaint}}","findings":[{{string.Join(',', findings)}}]}""");

    private async Task<JsonElement> CheckAsync(string id) =>
        JsonDocument.Parse(await service.Client.GetStringAsync($"/v1/catalogue/checks/{id}")).RootElement;

    /// <summary>A good result of any check: the normal value of its scale, or a value that a limit of the maker allows.</summary>
    private static string Normal(JsonElement check)
    {
        var (id, unit) = (check.GetProperty("id").GetString(), check.GetProperty("unit").GetString());
        var normal = check.GetProperty("results").EnumerateArray().Where(one => one.GetProperty("normal").GetBoolean()).Select(one => one.GetProperty("observation").GetString());
        return unit is null
            ? $$"""{"check":"{{id}}","observation":"{{normal.Single()}}"}"""
            : $$$"""{"check":"{{{id}}}","value":9,"unit":"{{{unit}}}","limit":{"minimum":4,"unit":"{{{unit}}}"}}""";
    }

    private static List<string> Steps(JsonElement advice) => [.. advice.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("check").GetString()!)];

    private static List<string> OrderOfWork(JsonElement advice) =>
        [.. advice.GetProperty("orderOfWork").EnumerateArray().SelectMany(visit => visit.GetProperty("checks").EnumerateArray()).Select(id => id.GetString()!)];

    private static double Probability(JsonElement advice, string fault) => advice.GetProperty("suspects").EnumerateArray()
        .Where(suspect => suspect.GetProperty("fault").GetString() == fault).Sum(suspect => suspect.GetProperty("probability").GetDouble());

    private static string? Driving(JsonElement advice) => advice.GetProperty("driving").GetProperty("advice").GetString();
}
