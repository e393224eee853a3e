using System.Net;
using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class WhyNotTests(RunningService service)
{
    [Fact]
    public async Task WhyNot_FaultThatTheVehicleCannotHave_SaysSoAndNoChangeHelps()
    {
        var answer = await AskAsync("""{"vehicle":{"driveline":"frontWheelDrive","fuel":"gasoline"},"complaint":"clunk when shifting into drive","fault":"universal-joint-worn"}""");

        var fault = answer.GetProperty("faults")[0];
        Assert.Equal(JsonValueKind.Null, fault.GetProperty("rank").ValueKind);
        Assert.Equal(JsonValueKind.Null, fault.GetProperty("change").ValueKind);
        Assert.Equal("failed", fault.GetProperty("conditions")[0].GetProperty("status").GetString());
        Assert.Contains("not raised", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    /// <summary>What the answer promises is what the service does once the change is made.</summary>
    [Theory]
    [InlineData("It squeals when I brake", "wheel-bearing-worn")]
    [InlineData("The engine overheats", "head-gasket-leaking")]
    [InlineData("clunk over bumps", "ball-joint-worn")]
    [InlineData("The steering wheel shakes", "wheel-bearing-worn")]
    [InlineData("wipers streak", "brake-pads-worn")]
    public async Task WhyNot_ChangeOfAFault_BringsItToThatPlace(string complaint, string fault)
    {
        var (change, advice) = await ChangedAsync(complaint, "fault", fault, answer => answer.GetProperty("faults")[0].GetProperty("change"));

        var rank = change.GetProperty("rank").GetInt32();
        Assert.InRange(rank, 1, 3);
        var suspect = advice.GetProperty("suspects")[rank - 1];
        Assert.Equal(fault, suspect.GetProperty("fault").GetString());
        Assert.Equal(change.GetProperty("probability").GetDouble(), suspect.GetProperty("probability").GetDouble());
    }

    [Theory]
    [InlineData("wipers streak", "brake-pad-thickness")]
    [InlineData("It squeals when I brake", "coolant-leak-look")]
    [InlineData("The engine overheats", "universal-joint-play")]
    [InlineData("clunk over bumps", "oil-record-look")]
    public async Task WhyNot_ChangeOfACheck_MakesItThatStep(string complaint, string check)
    {
        var (change, advice) = await ChangedAsync(complaint, "check", check, answer => answer.GetProperty("change"));

        var rank = change.GetProperty("rank").GetInt32();
        Assert.InRange(rank, 1, 3);
        Assert.Equal(check, advice.GetProperty("steps")[rank - 1].GetProperty("check").GetString());
    }

    [Fact]
    public async Task WhyNot_FaultInFront_NeedsNoChange()
    {
        var answer = await AskAsync("""{"vehicle":{},"complaint":"clicking when turning","fault":"outer-cv-joint-worn"}""");

        var fault = answer.GetProperty("faults")[0];
        Assert.Equal(1, fault.GetProperty("rank").GetInt32());
        Assert.Contains(fault.GetProperty("conditions").EnumerateArray(), condition => condition.GetProperty("status").GetString() == "held");
        Assert.NotEmpty(fault.GetProperty("lookAt").EnumerateArray());
    }

    [Theory]
    [InlineData("""{"vehicle":{"fuel":"electric"},"complaint":"it jerks","check":"spark-plug-look"}""", "It exists only if")]
    [InlineData("""{"vehicle":{},"complaint":"brake pedal sinks to the floor","check":"brake-road-test"}""", "needs a drive")]
    [InlineData("""{"vehicle":{},"findings":[{"check":"coolant-condition","observation":"rusty"}],"check":"coolant-condition"}""", "It was done")]
    [InlineData("""{"vehicle":{},"complaint":"wipers streak","check":"brake-pad-thickness"}""", "nothing that it finds is raised")]
    public async Task WhyNot_CheckThatIsNoStep_SaysWhy(string request, string why)
    {
        var answer = await AskAsync(request);

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("stepRank").ValueKind);
        Assert.Contains(why, answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"vehicle":{}}""", 400, "")]
    [InlineData("""{"vehicle":{},"fault":"brake-pads-worn","check":"brake-pad-thickness"}""", 400, "")]
    [InlineData("""{"vehicle":{},"fault":"brake-pads-wron"}""", 422, "/fault")]
    public async Task WhyNot_Wrong_NamesTheField(string request, int status, string pointer)
    {
        var response = await service.Client.PostAsync("/v1/why-not", RunningService.Json(request));

        Assert.Equal((HttpStatusCode)status, response.StatusCode);
        var error = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors")[0];
        Assert.Equal(pointer, error.GetProperty("pointer").GetString());
    }

    /// <summary>The change that the service names, and its advice on the case with that change.</summary>
    private async Task<(JsonElement Change, JsonElement Advice)> ChangedAsync(string complaint, string kind, string id, Func<JsonElement, JsonElement> changeOf)
    {
        const string Case = """ "vehicle":{"fuel":"gasoline","modelYear":2012,"driveline":"rearWheelDrive"} """;
        var change = changeOf(await AskAsync($$"""{{{Case}},"complaint":"{{complaint}}","{{kind}}":"{{id}}"}"""));
        Assert.Equal(JsonValueKind.Object, change.ValueKind);
        var advice = await service.AdviseAsync(
            $$"""{{{Case}},"complaint":"{{complaint}}","symptoms":[{"symptom":{{change.GetProperty("symptom").GetRawText()}},"occasions":{{change.GetProperty("occasions").GetRawText()}}}]}""");
        return (change, advice);
    }

    private async Task<JsonElement> AskAsync(string body)
    {
        var response = await service.Client.PostAsync("/v1/why-not", RunningService.Json(body));
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        Assert.True(InterfaceDescription.Schema("WhyNotDocument").Evaluate(JsonDocument.Parse(text).RootElement).IsValid, text);
        return JsonDocument.Parse(text).RootElement;
    }
}
