using System.Globalization;
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
        var complaints = Complaint.All();
        var (first, amongThree, notUnderstood) = (0, 0, 0);
        foreach (var complaint in complaints)
        {
            var advice = await AdviseAsync(complaint.Symptoms);
            var systems = advice.GetProperty("suspects").EnumerateArray().Select(suspect => suspect.GetProperty("system").GetString()!).Distinct().ToList();
            first += systems.Take(1).Any(complaint.Systems.Contains) ? 1 : 0;
            amongThree += systems.Take(3).Any(complaint.Systems.Contains) ? 1 : 0;
            notUnderstood += advice.GetProperty("understood").GetProperty("symptoms").GetArrayLength() == 0 ? 1 : 0;
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{complaints.Count} complaints: system first {Share(first)}, among the first three systems {Share(amongThree)}, nothing understood {Share(notUnderstood)}"));
        Assert.True(amongThree > complaints.Count / 2, "The system is found in fewer than half of the complaints: something is broken.");

        string Share(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} ({100.0 * count / complaints.Count:F1} %)");
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
