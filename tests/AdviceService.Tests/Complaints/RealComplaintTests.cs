using System.Text.Json;
using AdviceService.Tests.Http;
using Xunit.Abstractions;

namespace AdviceService.Tests.Complaints;

/// <summary>Complaints of real owners to a road-safety authority (public domain; see the folder that ADVICE_SHARED names).</summary>
[Collection(Served.ByHttp)]
public class RealComplaintTests(RunningService service, ITestOutputHelper output)
{
    [SkippableFact]
    public async Task Advise_EachComplaint_WithoutErrorAndSystemFound()
    {
        var (figures, bySuspects) = (new ComplaintFigures(), new ComplaintFigures());
        foreach (var complaint in Complaint.All())
        {
            var advice = await AdviseAsync(complaint.Symptoms);
            var understood = advice.GetProperty("understood").GetProperty("symptoms").GetArrayLength() > 0;
            figures.Add(complaint, Systems(advice, "systems"), understood);
            bySuspects.Add(complaint, Systems(advice, "suspects"), understood);
        }

        foreach (var line in figures.Lines().Append("").Concat(figures.Confusion()).Append("").Append("By the suspects alone:").Concat(bySuspects.Lines().Take(5)))
            output.WriteLine(line);
        Assert.True(figures.AmongThree > 0.82, "The system is found in fewer complaints than it was: something is broken.");
    }

    [SkippableFact]
    public async Task Advise_EachComplaintWithItsDiagnosis_WithoutError()
    {
        foreach (var complaint in Complaint.All())
            Assert.Equal(JsonValueKind.Array, (await AdviseAsync(complaint.Text)).GetProperty("steps").ValueKind);
    }

    private static IEnumerable<string> Systems(JsonElement advice, string of) =>
        advice.GetProperty(of).EnumerateArray().Select(one => one.GetProperty("system").GetString()!);

    private async Task<JsonElement> AdviseAsync(string complaint) =>
        await service.AdviseAsync($$"""{"vehicle":{},"complaint":{{JsonSerializer.Serialize(complaint)}}}""");
}
