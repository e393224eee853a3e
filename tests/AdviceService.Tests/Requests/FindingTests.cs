using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

/// <summary>What a check can give, and what it cannot.</summary>
public class FindingTests
{
    private const string Pad = "\"check\":\"brake-pad-thickness\"";

    [Theory]
    [InlineData("""{"check":"tyre-tread-depth","value":5,"unit":"32nds","position":"front"}""")]
    [InlineData("""{"check":"tyre-tread-depth","value":0.2,"unit":"in","position":"left"}""")]
    [InlineData("""{"check":"brake-fluid-water","value":3,"unit":"%"}""")]
    [InlineData("""{"check":"coolant-freeze-point","value":-34,"unit":"degF"}""")]
    [InlineData("""{"check":"tyre-pressure","value":35,"unit":"psi","limit":{"minimum":2.2,"unit":"bar"}}""")]
    [InlineData("""{"check":"damper-rebound","value":2,"unit":"count","position":"rear-right"}""")]
    [InlineData("""{"check":"brake-imbalance","value":12,"unit":"percent","position":"front-left"}""")]
    [InlineData("""{"check":"mirrors-look","observation":"mount-loose","position":"left"}""")]
    [InlineData("""{"check":"coolant-condition","observation":"clean","position":"front","on":"2026-03-01"}""")]
    [InlineData("""{"check":"steering-free-play","value":2,"unit":"in","odometer":{"value":1864113,"unit":"mi"}}""")]
    [InlineData("""{"check":"brake-pad-thickness","value":30,"unit":"mm","limit":{"minimum":1,"maximum":1,"unit":"in"}}""")]
    public void Read_WhatTheCheckGives_IsNoError(string finding) => Assert.Empty(Read(With($"\"findings\":[{finding}]")).Errors);

    /// <summary>Members of a finding, the status, and "pointer code" of every error, the pointer within the finding.</summary>
    public static TheoryData<string, int, string[]> Wrong => new()
    {
        { "", 400, [" missing-member", "/check missing-member"] },
        { "\"check\":\"brake-pads\",\"value\":\"2\",\"unit\":5", 400, ["/check unknown-id", "/unit wrong-type", "/value wrong-type"] },
        { "\"check\":null,\"observation\":null", 400, ["/check wrong-type", "/observation wrong-type"] },
        { $"\"check\":\"{new string('c', 101)}\",\"observation\":\"x\"", 422, ["/check too-long"] },
        { "\"check\":\"coolant\\u0000-condition\",\"observation\":\"rusty\"", 400, ["/check null-character"] },
        { "\"check\":\"Coolant-condition\",\"observation\":\"rusty\"", 422, ["/check unknown-id"] },
        { "\"check\":\"coolant-condition\",\"observation\":\"Rusty\"", 422, ["/observation unknown-id"] },
        { "\"check\":\"coolant-condition\",\"observation\":1", 400, ["/observation wrong-type"] },
        { "\"check\":\"coolant-condition\",\"observation\":\"rusty\",\"unit\":\"mm\"", 400, ["/unit unfit-member"] },
        { "\"check\":\"coolant-condition\",\"observation\":\"rusty\",\"limit\":{\"minimum\":1,\"unit\":\"mm\"}", 422, ["/limit unfit-for-check"] },
        { "\"check\":\"coolant-condition\",\"value\":1,\"unit\":\"mm\"", 422, ["/value unfit-for-check"] },
        { $"{Pad},\"observation\":\"thin\"", 422, ["/observation unfit-for-check"] },
        { $"{Pad},\"unit\":\"mm\"", 400, [" missing-member"] },
        { $"{Pad},\"value\":2,\"unit\":\"km\"", 422, ["/unit unfit-for-check"] },
        { $"{Pad},\"value\":2,\"unit\":\"MM\"", 422, ["/unit unfit-for-check"] },
        { $"{Pad},\"value\":-0.1,\"unit\":\"mm\"", 422, ["/value out-of-range"] },
        { $"{Pad},\"value\":1.2,\"unit\":\"in\"", 422, ["/value out-of-range"] },
        { $"{Pad},\"value\":1e308,\"unit\":\"m\"", 422, ["/value out-of-range"] },
        { $"{Pad},\"value\":-1e999,\"unit\":\"mm\"", 422, ["/value out-of-range"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"position\":\"middle\"", 422, ["/position unknown-id"] },
        { "\"check\":\"brake-lining-thickness\",\"value\":2,\"unit\":\"mm\",\"position\":\"front-left\"", 422, ["/position unfit-for-check"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"on\":\"2026-03-02\"", 422, ["/on out-of-range"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"on\":\"1949-12-31\"", 422, ["/on out-of-range"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"on\":\"2026-3-1\"", 400, ["/on invalid-date"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"on\":20260301", 400, ["/on wrong-type"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"odometer\":null", 400, ["/odometer wrong-type"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"odometer\":{{\"unit\":\"km\"}}", 400, ["/odometer/value missing-member"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"odometer\":{{\"value\":\"unknown\",\"unit\":\"km\"}}", 400, ["/odometer/value wrong-type"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"odometer\":{{\"value\":2000000,\"unit\":\"mi\"}}", 422, ["/odometer/value out-of-range"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":3}}", 400, ["/limit/unit missing-member"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":3,\"unit\":\"V\"}}", 422, ["/limit/unit unfit-for-check"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":3,\"maximum\":2,\"unit\":\"mm\"}}", 422, ["/limit/minimum out-of-range"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":\"3\",\"unit\":\"mm\"}}", 400, ["/limit/minimum wrong-type"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":3,\"unit\":\"mm\",\"source\":\"{new string('s', 201)}\"}}", 422, ["/limit/source too-long"] },
        { $"{Pad},\"value\":2,\"unit\":\"mm\",\"limit\":{{\"minimum\":3,\"unit\":\"mm\",\"sauce\":\"x\"}}", 400, ["/limit/sauce unknown-member"] },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Read_Wrong_EveryErrorWithItsPointer(string members, int status, string[] errors)
    {
        var read = Read(Finding(members));

        Assert.Equal(errors.Select(error => $"/findings/0{error}").Order(StringComparer.Ordinal), Errors(read));
        Assert.Equal(status, read.Status);
    }
}
