using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Evidence;
using Microsoft.Extensions.DependencyInjection;

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
        Assert.Empty(fault.GetProperty("changes").EnumerateArray());
        Assert.Equal("failed", fault.GetProperty("conditions")[0].GetProperty("status").GetString());
        Assert.Contains("not raised", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    /// <summary>What the answer promises is what the service does once the change is made in the request to the letter.</summary>
    [Theory]
    [InlineData("It squeals when I brake", "wheel-bearing-worn", "symptom")]
    [InlineData("The engine overheats", "head-gasket-leaking", "symptom")]
    [InlineData("clunk over bumps", "ball-joint-worn", "symptom")]
    [InlineData("The steering wheel shakes", "wheel-bearing-worn", "symptom")]
    [InlineData("wipers streak", "brake-pads-worn", "symptom", "code")]
    public async Task WhyNot_ChangesOfAFault_BringItToThatPlace(string complaint, string fault, params string[] kinds)
    {
        var request = Request(complaint);
        var changes = (await AskAsync(With(request, "fault", fault))).GetProperty("faults")[0].GetProperty("changes").EnumerateArray().ToList();

        Assert.Subset(Kinds(changes), kinds.ToHashSet());
        foreach (var change in changes)
        {
            var rank = change.GetProperty("rank").GetInt32();
            Assert.InRange(rank, 1, 3);
            var suspect = (await service.AdviseAsync(Changed(request, change))).GetProperty("suspects")[rank - 1];
            Assert.Equal(fault, suspect.GetProperty("fault").GetString());
            Assert.Equal(change.GetProperty("probability").GetDouble(), suspect.GetProperty("probability").GetDouble());
        }
    }

    /// <summary>Over many faults that come late or not at all, every change that is named does what is said, and every kind of change is found.</summary>
    [Fact]
    public async Task WhyNot_ManyFaults_EveryChangeHoldsAndEveryKindIsFound()
    {
        var all = service.Services.GetRequiredService<IRuleBook>().Catalogue.Faults.Keys.Order(StringComparer.Ordinal).ToList();
        var (kinds, pairs) = (new HashSet<string>(), 0);
        foreach (var (complaint, i) in new[] { "It squeals when I brake", "The steering wheel shakes", "air conditioning blows warm" }.Select((complaint, i) => (complaint, i)))
        {
            var request = Request(complaint);
            var late = (await service.AdviseAsync(request.ToJsonString())).GetProperty("suspects").EnumerateArray().Skip(3).Take(8).Select(suspect => suspect.GetProperty("fault").GetString()!);
            foreach (var fault in late.Concat(all.Where((_, at) => at % 30 == i)).Distinct())
            {
                foreach (var change in (await AskAsync(With(request, "fault", fault))).GetProperty("faults")[0].GetProperty("changes").EnumerateArray())
                {
                    var advice = await service.AdviseAsync(Changed(request, change));
                    Assert.Equal(fault, advice.GetProperty("suspects")[change.GetProperty("rank").GetInt32() - 1].GetProperty("fault").GetString());
                    kinds.UnionWith(Kinds([change]));
                    pairs += change.GetProperty("parts").GetArrayLength() - 1;
                }
            }
        }

        Assert.Equal(["code", "fact", "finding", "occasion", "symptom"], kinds.Order(StringComparer.Ordinal));
        Assert.NotEqual(0, pairs);
    }

    /// <summary>The least comes first: to state a fact or an occasion, then to ask the driver, then to read codes, then to do a check.</summary>
    [Theory]
    [InlineData("It squeals when I brake", "brake-drum-dusty", "/vehicle/brakes/rear")]
    [InlineData("The steering wheel shakes", "wheel-fouled", "/symptoms/-")]
    public async Task WhyNot_ChangesOfAFault_NameTheLeastFirst(string complaint, string fault, string at)
    {
        var changes = (await AskAsync(With(Request(complaint), "fault", fault))).GetProperty("faults")[0].GetProperty("changes").EnumerateArray().ToList();

        Assert.Equal(at, changes[0].GetProperty("parts")[0].GetProperty("at").GetString());
        var order = new[] { "fact", "occasion", "symptom", "code", "finding" };
        Assert.Equal(order.Where(Kinds(changes).Contains), changes.Select(change => change.GetProperty("parts")[0].GetProperty("kind").GetString()));
    }

    [Theory]
    [InlineData("""{"vehicle":{"driveline":"frontWheelDrive"},"complaint":"it clunks","fault":"universal-joint-worn"}""", "fact", "driveline", "failed", "stated: front-wheel drive")]
    [InlineData("""{"vehicle":{"driveline":"rearWheelDrive"},"complaint":"it clunks","fault":"universal-joint-worn"}""", "fact", "driveline", "held", "stated: rear-wheel drive")]
    [InlineData("""{"vehicle":{},"complaint":"it clunks","fault":"universal-joint-worn"}""", "fact", "driveline", "unknown", "not stated")]
    [InlineData("""{"vehicle":{},"complaint":"wipers streak","fault":"outer-cv-joint-worn"}""", "symptom", "clicking-turns", "unknown", "not spoken of")]
    [InlineData("""{"vehicle":{},"complaint":"clicking when turning","fault":"outer-cv-joint-worn"}""", "symptom", "clicking-turns", "held", "reported")]
    [InlineData("""{"vehicle":{},"symptoms":[{"symptom":"clicking-turns","present":false}],"fault":"outer-cv-joint-worn"}""", "symptom", "clicking-turns", "failed", "expressly not")]
    [InlineData("""{"vehicle":{},"symptoms":[{"symptom":"clicking-turns","occasions":["turning"]}],"fault":"outer-cv-joint-worn"}""", "occasion", "clicking-turns", "held", "stated: in a turn")]
    [InlineData("""{"vehicle":{},"symptoms":[{"symptom":"clicking-turns"}],"fault":"outer-cv-joint-worn"}""", "occasion", "clicking-turns", "unknown", "not stated")]
    [InlineData("""{"vehicle":{},"symptoms":[{"symptom":"clicking-turns","occasions":["idling"]}],"fault":"outer-cv-joint-worn"}""", "occasion", "clicking-turns", "failed", "stated: at idle")]
    [InlineData("""{"vehicle":{},"complaint":"it jerks","fault":"converter-clutch-worn"}""", "code", "P0740", "unknown", "not spoken of")]
    [InlineData("""{"vehicle":{},"troubleCodes":["P0740"],"fault":"converter-clutch-worn"}""", "code", "P0740", "held", "reported")]
    public async Task WhyNot_Conditions_SayOfEachPartHowItStands(string request, string kind, string id, string status, string says)
    {
        var parts = (await AskAsync(request)).GetProperty("faults")[0].GetProperty("conditions").EnumerateArray().SelectMany(condition => condition.GetProperty("parts").EnumerateArray())
            .Where(part => part.GetProperty("kind").GetString() == kind && part.GetProperty("id").GetString() == id).ToList();

        Assert.Contains(parts, part => part.GetProperty("status").GetString() == status && part.GetProperty("text").GetString()!.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wipers streak", "brake-pad-thickness")]
    [InlineData("It squeals when I brake", "coolant-leak-look")]
    [InlineData("The engine overheats", "universal-joint-play")]
    [InlineData("clunk over bumps", "oil-record-look")]
    public async Task WhyNot_ChangesOfACheck_MakeItThatStep(string complaint, string check)
    {
        var request = Request(complaint);
        var changes = (await AskAsync(With(request, "check", check))).GetProperty("changes").EnumerateArray().ToList();

        Assert.NotEmpty(changes);
        foreach (var change in changes)
        {
            var rank = change.GetProperty("rank").GetInt32();
            Assert.InRange(rank, 1, 3);
            Assert.Equal(check, (await service.AdviseAsync(Changed(request, change))).GetProperty("steps")[rank - 1].GetProperty("check").GetString());
        }
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

    /// <summary>What was reported was reported, though the vehicle cannot have the fault; and nothing is to be looked at for it.</summary>
    [Fact]
    public async Task WhyNot_FaultThatTheVehicleCannotHave_ItsSignHoldsAndNothingIsToBeLookedAt()
    {
        var answer = await AskAsync("""{"vehicle":{"driveline":"frontWheelDrive","fuel":"gasoline"},"symptoms":[{"symptom":"clunk","occasions":["selecting-gear"]}],"fault":"universal-joint-worn"}""");

        var fault = answer.GetProperty("faults")[0];
        Assert.Equal("held", Assert.Single(fault.GetProperty("conditions").EnumerateArray(), condition => condition.GetProperty("rule").GetString() == "universal-joint-clunk").GetProperty("status").GetString());
        Assert.Empty(fault.GetProperty("lookAt").EnumerateArray());
        Assert.Contains("if it was stated wrongly", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhyNot_LateCheck_NamesTheStepsThatLookForTheSameBeforeIt()
    {
        const string Complaint = "Squeals when braking";
        var answer = await AskAsync(With(Request(Complaint), "check", "brake-pad-condition"));
        var steps = (await service.AdviseAsync(With(Request(Complaint), "limit", 50))).GetProperty("steps");

        Assert.True(answer.GetProperty("stepRank").GetInt32() > 3);
        var before = answer.GetProperty("before").EnumerateArray().ToList();
        Assert.NotEmpty(before);
        Assert.All(before, step => Assert.Equal(step.GetProperty("check").GetString(), steps[step.GetProperty("rank").GetInt32() - 1].GetProperty("check").GetString()));
        Assert.All(before, step => Assert.NotEmpty(step.GetProperty("faults").EnumerateArray()));
    }

    [Fact]
    public async Task WhyNot_CheckThatWasDone_IsNotToBeLookedAtAgain()
    {
        var answer = await AskAsync("""{"vehicle":{},"complaint":"Squeals when braking","troubleCodes":["P0420"],"findings":[{"check":"brake-pad-thickness","value":9,"unit":"mm"}],"fault":"brake-pads-worn"}""");

        Assert.DoesNotContain(answer.GetProperty("faults")[0].GetProperty("lookAt").EnumerateArray(), one => one.GetProperty("check").GetString() == "brake-pad-thickness");
    }

    [Theory]
    [InlineData("""{"vehicle":{"fuel":"electric"},"complaint":"it jerks","check":"spark-plug-look"}""", "It exists only if")]
    [InlineData("""{"vehicle":{},"complaint":"brake pedal sinks to the floor","check":"brake-road-test"}""", "needs a drive")]
    [InlineData("""{"vehicle":{},"findings":[{"check":"coolant-condition","observation":"rusty"}],"check":"coolant-condition"}""", "It was done")]
    [InlineData("""{"vehicle":{},"complaint":"wipers streak","check":"brake-pad-thickness"}""", "nothing here points to what it finds")]
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

    private static JsonObject Request(string complaint) => new()
    {
        ["asOf"] = "2026-03-01",
        ["vehicle"] = new JsonObject { ["fuel"] = "gasoline", ["modelYear"] = 2012, ["driveline"] = "rearWheelDrive" },
        ["complaint"] = complaint,
    };

    private static string With(JsonObject request, string member, JsonNode value)
    {
        var asked = request.DeepClone();
        asked[member] = value;
        return asked.ToJsonString();
    }

    private static HashSet<string> Kinds(IEnumerable<JsonElement> changes) =>
        [.. changes.SelectMany(change => change.GetProperty("parts").EnumerateArray()).Select(part => part.GetProperty("kind").GetString()!)];

    /// <summary>The request with each part put where its pointer says.</summary>
    private static string Changed(JsonObject request, JsonElement change)
    {
        var changed = request.DeepClone();
        foreach (var part in change.GetProperty("parts").EnumerateArray())
        {
            var (names, value, place) = (part.GetProperty("at").GetString()!.Split('/')[1..], JsonNode.Parse(part.GetProperty("value").GetRawText()), changed);
            if (names[^1] == "-")
                ((place[names[0]] ??= new JsonArray()) as JsonArray)!.Add(value);
            else
                names[..^1].Aggregate(place, (at, name) => at[name] ??= new JsonObject())[names[^1]] = value;
        }

        return changed.ToJsonString();
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
