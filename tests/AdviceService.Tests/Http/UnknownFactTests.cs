namespace AdviceService.Tests.Http;

/// <summary>Where the law depends on a fact that is not known, the strictest limit decides and the answer says so.</summary>
[Collection(Served.ByHttp)]
public class UnknownFactTests(RunningService service)
{
    /// <summary>Directive 2014/45/EU as remembered: 58 % from 2012 on, 50 % before; 0.3 and 0.5 % CO at idle from and before July 2002; smoke 2.5 and 3.0 with a turbocharger.</summary>
    [Theory]
    [InlineData("EU", "brake-efficiency", "percent", 55, """{"body":"car","modelYear":2005}""", "none", null)]
    [InlineData("EU", "brake-efficiency", "percent", 55, """{"body":"car"}""", "major", "model year")]
    [InlineData("EU", "brake-efficiency", "percent", 47, """{"body":"van","modelYear":2005}""", "none", null)]
    [InlineData("EU", "brake-efficiency", "percent", 47, """{"modelYear":2005}""", "major", "the body")]
    [InlineData("EU", "tailpipe-carbon-monoxide-idle", "percent", 0.4, """{"fuel":"gasoline","modelYear":1999}""", "none", null)]
    [InlineData("EU", "tailpipe-carbon-monoxide-idle", "percent", 0.4, """{"fuel":"gasoline"}""", "major", "model year")]
    [InlineData("FR", "diesel-smoke-opacity", "1/m", 2.7, """{"fuel":"diesel","modelYear":2000,"engine":{"forcedInduction":true}}""", "none", null)]
    [InlineData("FR", "diesel-smoke-opacity", "1/m", 2.7, """{"fuel":"diesel","modelYear":2000}""", "major", "turbocharger")]
    [InlineData("FR", "diesel-smoke-opacity", "1/m", 2.7, """{"modelYear":2000}""", "major", "fuel")]
    [InlineData("GB", "brake-efficiency", "percent", 55, """{}""", "major", "model year")]
    [InlineData("GB", "brake-efficiency", "percent", 55, """{"modelYear":2005}""", "none", null)]
    public async Task Judge_LawByAnUnknownFact_IsTheStrictest(string law, string check, string unit, double value, string vehicle, string deficiency, string? unknown)
    {
        var judgement = (await service.AskAsync("/v1/judgements", FormattableString.Invariant(
            $$$"""{"asOf":"2026-03-01","jurisdiction":"{{{law}}}","vehicle":{{{vehicle}}},"findings":[{"check":"{{{check}}}","value":{{{value}}},"unit":"{{{unit}}}"}]}"""))).GetProperty("judgements")[0];

        Assert.Equal(deficiency, judgement.GetProperty("deficiency").GetString());
        var note = judgement.GetProperty("note").GetString();
        Assert.True(unknown is null || (note?.Contains(unknown, StringComparison.Ordinal) == true && note.Contains("strictest", StringComparison.Ordinal)), note);
    }

    /// <summary>A law for what few vehicles have does not decide beside one that holds for all: most tyres in Austria are no winter tyres.</summary>
    [Theory]
    [InlineData("", "minor")]
    [InlineData("\"equipment\":{\"winterTyres\":true}", "major")]
    [InlineData("\"equipment\":{\"winterTyres\":false}", "minor")]
    public async Task Judge_LawForAFewBesideTheGeneralOne_CountsWhereItIsKnownToHold(string vehicle, string deficiency)
    {
        var answer = await service.AskAsync("/v1/judgements", $$$"""{"jurisdiction":"AT","vehicle":{ {{{vehicle}}} },"findings":[{"check":"tyre-tread-depth","value":2.5,"unit":"mm"}]}""");

        Assert.Equal(deficiency, answer.GetProperty("judgements")[0].GetProperty("deficiency").GetString());
    }

    [Fact]
    public async Task Judge_TreadAboveTheNewDepth_IsRefusedWithTheRange()
    {
        var error = (await service.RefuseAsync(
            "/v1/judgements", """{"vehicle":{},"findings":[{"check":"tyre-tread-depth","value":11,"unit":"32nds","with":{"newDepth":{"value":8,"unit":"mm"}}}]}""")).GetProperty("errors")[0];

        Assert.Equal("/findings/0/value", error.GetProperty("pointer").GetString());
        Assert.Equal("Must be between 0 and 8 mm, the depth when new.", error.GetProperty("detail").GetString());
    }
}
