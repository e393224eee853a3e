using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>Periodic tests: StVZO Anlage VIII 2.1 (36, then 24 months), Directive 2014/45/EU article 5 (48, then 24), gov.uk on tests (third
/// anniversary, then each year).</summary>
[Collection(Served.ByHttp)]
public class RoadworthinessTestDueTests(RunningService service)
{
    [Theory]
    [InlineData("DE", "2024-05-20", null, "2027-05-20", "later")]
    [InlineData("DE", "2023-05-20", null, "2026-05-20", "soon")]
    [InlineData("DE", "2023-03-01", null, "2026-03-01", "due")]
    [InlineData("DE", "2023-02-28", null, "2026-02-28", "overdue")]
    [InlineData("EU", "2022-05-20", null, "2026-05-20", "soon")]
    [InlineData("FR", "2022-05-20", null, "2026-05-20", "soon")]
    [InlineData("GB", "2023-05-20", null, "2026-05-20", "soon")]
    [InlineData("GB", "2015-05-20", "2025-02-27", "2026-02-27", "overdue")]
    [InlineData("DE", "2015-05-20", "2025-02-27", "2027-02-27", "later")]
    [InlineData("EU", "2015-05-20", "2024-02-29", "2026-02-28", "overdue")]
    public async Task Due_Test_CountsFromRegistrationThenFromTheLastOne(string law, string registered, string? last, string on, string status)
    {
        var services = last is null ? "" : $$""", "services":[{"item":"roadworthiness-test","on":"{{last}}"}]""";
        var item = await TestAsync($$$"""{"asOf":"2026-03-01","jurisdiction":"{{{law}}}","vehicle":{"firstRegistration":"{{{registered}}}"}{{{services}}}}""");

        Assert.Equal(on, item!.Value.GetProperty("at").GetProperty("on").GetString());
        Assert.Equal(status, item.Value.GetProperty("status").GetString());
    }

    /// <summary>The rules and the workshop arithmetic tell the same day.</summary>
    [Theory]
    [InlineData("DE", null)]
    [InlineData("EU", null)]
    [InlineData("DE", "2023-11-30")]
    [InlineData("EU", "2023-11-30")]
    public async Task Due_Test_AgreesWithTheArithmetic(string law, string? last)
    {
        var services = last is null ? "" : $$""", "services":[{"item":"roadworthiness-test","on":"{{last}}"}]""";
        var item = await TestAsync($$$"""{"asOf":"2026-03-01","jurisdiction":"{{{law}}}","vehicle":{"firstRegistration":"2020-08-31"}{{{services}}}}""");
        var then = last is null ? "" : $$""", "lastTest":"{{last}}" """;
        var computed = await service.AskAsync("/v1/arithmetic/roadworthiness-test", $$$"""{"law":"{{{law}}}","registered":"2020-08-31","asOf":"2026-03-01"{{{then}}}}""");

        Assert.Equal(computed.GetProperty("results")[0].GetProperty("text").GetString(), item!.Value.GetProperty("at").GetProperty("on").GetString());
    }

    [Fact]
    public async Task Due_Test_OfAModelYearWithoutRegistration_CountsFromItsFirstDay() => Assert.Equal(
        "2027-01-01", (await TestAsync("""{"asOf":"2026-03-01","jurisdiction":"EU","vehicle":{"modelYear":2023}}"""))!.Value.GetProperty("at").GetProperty("on").GetString());

    [Theory]
    [InlineData("")]
    [InlineData(""" "jurisdiction":"US",""")]
    public async Task Due_WithoutALawThatAsksForOne_HasNoTest(string law) =>
        Assert.Null(await TestAsync($$$"""{"asOf":"2026-03-01",{{{law}}}"vehicle":{"modelYear":2015}}"""));

    [Fact]
    public async Task Due_Test_OfAVehicleOfUnknownAge_IsUnknown() => Assert.Equal(
        "unknown", (await TestAsync("""{"asOf":"2026-03-01","jurisdiction":"DE","vehicle":{"fuel":"diesel"}}"""))!.Value.GetProperty("status").GetString());

    [Fact]
    public async Task Due_RegistrationAfterTheDay_IsRefused()
    {
        var problem = await service.RefuseAsync("/v1/due", """{"asOf":"2026-03-01","vehicle":{"firstRegistration":"2026-03-02"}}""");

        Assert.Equal("/vehicle/firstRegistration", problem.GetProperty("errors")[0].GetProperty("pointer").GetString());
    }

    private async Task<JsonElement?> TestAsync(string request)
    {
        var answer = await service.AskAsync("/v1/due", request);
        return answer.GetProperty("due").EnumerateArray().Where(item => item.GetProperty("item").GetString() == "roadworthiness-test")
            .Select(item => (JsonElement?)item).SingleOrDefault();
    }
}
