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
        var figures = new ComplaintFigures();
        foreach (var complaint in Complaint.All())
        {
            var advice = await AdviseAsync(complaint.Symptoms);
            figures.Add(
                complaint,
                advice.GetProperty("suspects").EnumerateArray().Select(suspect => suspect.GetProperty("system").GetString()!),
                advice.GetProperty("understood").GetProperty("symptoms").GetArrayLength() > 0);
        }

        foreach (var line in figures.Lines())
            output.WriteLine(line);
        Assert.True(figures.AmongThree > 0.75, "The system is found in fewer complaints than it was: something is broken.");
    }

    [SkippableFact]
    public async Task Advise_EachComplaintWithItsDiagnosis_WithoutError()
    {
        foreach (var complaint in Complaint.All())
            Assert.Equal(JsonValueKind.Array, (await AdviseAsync(complaint.Text)).GetProperty("steps").ValueKind);
    }

    private async Task<JsonElement> AdviseAsync(string complaint) =>
        await service.AdviseAsync($$"""{"vehicle":{},"complaint":{{JsonSerializer.Serialize(complaint)}}}""");
}
