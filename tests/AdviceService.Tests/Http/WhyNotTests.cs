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

    /// <summary>What the answer promises is what the service does.</summary>
    [Theory]
    [InlineData("It squeals when I brake", "wheel-bearing-worn")]
    [InlineData("The engine overheats", "head-gasket-leaking")]
    [InlineData("clunk over bumps", "ball-joint-worn")]
    public async Task WhyNot_Change_BringsTheFaultWhereItSays(string complaint, string fault)
    {
        const string Vehicle = """{"fuel":"gasoline","modelYear":2012}""";
        var change = (await AskAsync($$"""{"vehicle":{{Vehicle}},"complaint":"{{complaint}}","fault":"{{fault}}"}""")).GetProperty("faults")[0].GetProperty("change");

        var symptom = change.GetProperty("symptom").GetString();
        var advice = await service.AdviseAsync($$"""{"vehicle":{{Vehicle}},"complaint":"{{complaint}}","symptoms":[{"symptom":"{{symptom}}"}]}""");
        Assert.Contains(advice.GetProperty("suspects").EnumerateArray().Take(6), suspect => suspect.GetProperty("fault").GetString() == fault);
        Assert.InRange(change.GetProperty("rank").GetInt32(), 1, 3);
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

    private async Task<JsonElement> AskAsync(string body)
    {
        var response = await service.Client.PostAsync("/v1/why-not", RunningService.Json(body));
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        Assert.True(InterfaceDescription.Schema("WhyNotDocument").Evaluate(JsonDocument.Parse(text).RootElement).IsValid, text);
        return JsonDocument.Parse(text).RootElement;
    }
}
