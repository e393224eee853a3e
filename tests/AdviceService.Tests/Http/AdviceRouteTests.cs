using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class AdviceRouteTests(RunningService service)
{
    private const string Clunk =
        """{"asOf":"2026-03-01","vehicle":{"modelYear":2009,"driveline":"fourWheelDrive","fuel":"gasoline"},"complaint":"Big clunk from underneath when I shift from reverse into drive"}""";

    private const string Squeal = """{"asOf":"2026-03-01","vehicle":{},"complaint":"It squeals when I brake.","workshop":{"audience":"owner"}}""";

    public static TheoryData<string> Requests => [Clunk, Squeal];

    [Theory]
    [MemberData(nameof(Requests))]
    public async Task Advise_EveryStep_NamesARuleAndTheCautionsItNames(string request)
    {
        var advice = await service.AdviseAsync(request);
        var cautions = advice.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("id").GetString()).ToHashSet();

        var steps = advice.GetProperty("steps").EnumerateArray().ToList();

        Assert.NotEmpty(steps);
        Assert.All(steps, step => Assert.NotEmpty(step.GetProperty("reasons").EnumerateArray()));
        Assert.All(steps, step => Assert.All(step.GetProperty("cautions").EnumerateArray(), caution => Assert.Contains(caution.GetString(), cautions)));
        Assert.Equal(Enumerable.Range(1, steps.Count), steps.Select(step => step.GetProperty("rank").GetInt32()));
    }

    [Fact]
    public async Task Advise_SameRequest_SameBytes()
    {
        var first = await (await service.Client.PostAsync("/v1/advice", RunningService.Json(Clunk))).Content.ReadAsByteArrayAsync();
        var second = await (await service.Development.PostAsync("/v1/advice", RunningService.Json(Clunk))).Content.ReadAsByteArrayAsync();

        Assert.Equal(first, second);
    }

    [Fact]
    public async Task Advise_NothingUnderstood_IsNoErrorAndSaysSo()
    {
        var advice = await service.AdviseAsync("""{"vehicle":{},"complaint":"The moon is made of cheese."}""");

        Assert.Empty(advice.GetProperty("steps").EnumerateArray());
        Assert.Empty(advice.GetProperty("suspects").EnumerateArray());
        Assert.Contains("does not tell us what is wrong", advice.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Equal("The moon is made of cheese", advice.GetProperty("understood").GetProperty("notUnderstood")[0].GetString());
    }

    [Fact]
    public async Task Advise_MinutesOfAnOwner_BoundTheWorkDoneHere()
    {
        var advice = await service.AdviseAsync(
            """{"vehicle":{"modelYear":2012},"complaint":"There is a clunk over bumps and it wanders","workshop":{"audience":"owner","minutes":25},"limit":50}""");

        var here = advice.GetProperty("orderOfWork").EnumerateArray().Sum(visit => visit.GetProperty("minutes").GetInt32());
        Assert.InRange(here, 1, 25);
        Assert.Contains(advice.GetProperty("steps").EnumerateArray(), step => step.GetProperty("doneBy").GetString() == "technician");
    }

    [Fact]
    public async Task Advise_Findings_AreJudgedOneByOneInOrder()
    {
        var advice = await service.AdviseAsync(
            """
            {"vehicle":{"modelYear":2012},"jurisdiction":"US","findings":[
              {"check":"brake-pad-thickness","position":"front-left","value":0.5,"unit":"mm"},
              {"check":"brake-pad-thickness","position":"front-right","value":9,"unit":"mm"},
              {"check":"coolant-condition","observation":"clean"}]}
            """);

        var judgements = advice.GetProperty("judgements").EnumerateArray().ToList();
        Assert.Equal(3, judgements.Count);
        Assert.Equal(["front-left", "front-right", null], judgements.Select(one => one.GetProperty("position").GetString()));
        Assert.Equal("none", judgements[1].GetProperty("deficiency").GetString());
        Assert.Contains(judgements[0].GetProperty("deficiency").GetString(), new[] { "major", "dangerous" });
        Assert.DoesNotContain(advice.GetProperty("steps").EnumerateArray(), step => step.GetProperty("check").GetString() == "brake-pad-thickness");
    }

    [Fact]
    public async Task Advise_Question_SaysWhatEachAnswerChanges()
    {
        var advice = await service.AdviseAsync(Squeal);

        var questions = advice.GetProperty("questions").EnumerateArray().ToList();
        Assert.NotEmpty(questions);
        Assert.All(questions, question => Assert.Equal(JsonValueKind.String, question.GetProperty("ifYes").ValueKind));
        Assert.Equal(questions.OrderByDescending(question => question.GetProperty("worth").GetDouble()), questions);
    }
}
