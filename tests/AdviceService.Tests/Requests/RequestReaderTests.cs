using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

public class RequestReaderTests
{
    private static readonly JsonSerializerOptions AsRead =
        new(JsonSerializerDefaults.Web) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    [Fact]
    public void Read_ContractExample_WritesBackAsItCame()
    {
        var read = Read(Full);

        Assert.Empty(read.Errors);
        Assert.Equal(200, read.Status);
        var written = JsonSerializer.SerializeToNode(read.Value, AsRead);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Full), written), written!.ToJsonString());
    }

    /// <summary>A body whose vehicle is empty unless it says otherwise, the status, and "pointer code" of every error.</summary>
    public static TheoryData<string, int, string[]> Wrong => new()
    {
        { "", 400, [" empty-body"] },
        { "   ", 400, [" empty-body"] },
        { "nul", 400, [" malformed-json"] },
        { "{\"vehicle\":{}} x", 400, [" malformed-json"] },
        { "{\"vehicle\":{},}", 400, [" malformed-json"] },
        { "{/* no */\"vehicle\":{}}", 400, [" malformed-json"] },
        { "{\"vehicle\":{},\"complaint\":\"\\ud800\"}", 400, [" invalid-text"] },
        { "{\"vehicle\":{},\"complaint\":\"a\\u0000b\"}", 400, ["/complaint null-character"] },
        { "[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]", 400, [" too-deep"] },
        { "7", 400, [" wrong-type"] },
        { "null", 400, [" wrong-type"] },
        { "{}", 400, ["/vehicle missing-member"] },
        { "{\"vehicle\":null}", 400, ["/vehicle wrong-type"] },
        { "{\"vehicle\":[]}", 400, ["/vehicle wrong-type"] },
        { "{\"Vehicle\":{}}", 400, ["/Vehicle unknown-member", "/vehicle missing-member"] },
        { "{\"vehicle\":{},\"limit\":1,\"limit\":2}", 400, ["/limit duplicate-member"] },
        { With("\"a/b~c\":1"), 400, ["/a~1b~0c unknown-member"] },
        { With("\"complaint\":5"), 400, ["/complaint wrong-type"] },
        { With("\"complaint\":null"), 400, ["/complaint wrong-type"] },
        { With($"\"complaint\":\"{new string('x', 10_001)}\""), 422, ["/complaint too-long"] },
        { With("\"limit\":\"8\""), 400, ["/limit wrong-type"] },
        { With("\"limit\":8.5"), 400, ["/limit wrong-type"] },
        { With("\"limit\":0"), 422, ["/limit out-of-range"] },
        { With("\"limit\":51"), 422, ["/limit out-of-range"] },
        { With("\"limit\":1e999"), 422, ["/limit out-of-range"] },
        { With("\"asOf\":\"2026-02-30\""), 400, ["/asOf invalid-date"] },
        { With("\"asOf\":\"1.3.2026\""), 400, ["/asOf invalid-date"] },
        { With("\"asOf\":\"1800-01-01\""), 422, ["/asOf out-of-range"] },
        { With("\"jurisdiction\":\"XX\""), 422, ["/jurisdiction unknown-id"] },
        { With("\"symptoms\":{}"), 400, ["/symptoms wrong-type"] },
        { With("\"symptoms\":[null]"), 400, ["/symptoms/0 wrong-type"] },
        { With("\"symptoms\":[{}]"), 400, ["/symptoms/0/symptom missing-member"] },
        { With("\"symptoms\":[{\"symptom\":\"sqeal\"}]"), 422, ["/symptoms/0/symptom unknown-id"] },
        { With("\"symptoms\":[{\"symptom\":\"squeal\",\"occasions\":[\"breaking\",null]}]"), 400, ["/symptoms/0/occasions/0 unknown-id", "/symptoms/0/occasions/1 wrong-type"] },
        { With("\"symptoms\":[{\"symptom\":\"squeal\",\"position\":\"middle\"}]"), 422, ["/symptoms/0/position unknown-id"] },
        { With("\"symptoms\":[{\"symptom\":\"squeal\",\"present\":\"yes\"}]"), 400, ["/symptoms/0/present wrong-type"] },
        { With("\"troubleCodes\":[\"X0301\"]"), 422, ["/troubleCodes/0 invalid-trouble-code"] },
        { With("\"troubleCodes\":[301]"), 400, ["/troubleCodes/0 wrong-type"] },
        { With("\"findings\":[{\"check\":\"coolant-condition\"}]"), 400, ["/findings/0 missing-member"] },
        { With("\"findings\":[{\"check\":\"coolant-condition\",\"observation\":\"green\"}]"), 422, ["/findings/0/observation unknown-id"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":5}]"), 400, ["/findings/0/unit missing-member"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":5,\"unit\":\"bar\"}]"), 422, ["/findings/0/unit unfit-for-check"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":500,\"unit\":\"mm\"}]"), 422, ["/findings/0/value out-of-range"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":5,\"unit\":\"mm\",\"observation\":\"thin\"}]"), 400, ["/findings/0 unfit-member", "/findings/0/observation unfit-for-check"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":5,\"unit\":\"mm\",\"on\":\"2030-01-01\"}]"), 422, ["/findings/0/on out-of-range"] },
        { With("\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":5,\"unit\":\"mm\",\"limit\":{\"unit\":\"mm\"}}]"), 400, ["/findings/0/limit missing-member"] },
        { With("\"services\":[{\"item\":\"brake-fluids\"}]"), 422, ["/services/0/item unknown-id"] },
        { With("\"workshop\":{\"minutes\":0,\"audience\":\"Owner\"}"), 400, ["/workshop/audience unknown-word", "/workshop/minutes out-of-range"] },
        { Vehicle("\"modelYear\":1949"), 422, ["/vehicle/modelYear out-of-range"] },
        { Vehicle("\"modelYear\":2029"), 422, ["/vehicle/modelYear out-of-range"] },
        { Vehicle("\"fuel\":\"petrol\""), 400, ["/vehicle/fuel unknown-word"] },
        { Vehicle("\"fuel\":2"), 400, ["/vehicle/fuel wrong-type"] },
        { Vehicle("\"odometer\":120000"), 400, ["/vehicle/odometer wrong-type"] },
        { Vehicle("\"odometer\":{\"value\":120000}"), 400, ["/vehicle/odometer/unit missing-member"] },
        { Vehicle("\"odometer\":{\"value\":-1,\"unit\":\"km\"}"), 422, ["/vehicle/odometer/value out-of-range"] },
        { Vehicle("\"odometer\":{\"value\":3000001,\"unit\":\"km\"}"), 422, ["/vehicle/odometer/value out-of-range"] },
        { Vehicle("\"odometer\":{\"value\":10,\"unit\":\"furlong\"}"), 400, ["/vehicle/odometer/unit unknown-word"] },
        { Vehicle("\"engine\":{\"cylinders\":17}"), 422, ["/vehicle/engine/cylinders out-of-range"] },
        { Vehicle("\"engine\":{\"interference\":\"maybe\"}"), 400, ["/vehicle/engine/interference wrong-type"] },
        { Vehicle("\"equipment\":{\"winch\":true}"), 400, ["/vehicle/equipment/winch unknown-member"] },
        { Vehicle("\"steering\":{\"wheelDiameter\":{\"value\":5,\"unit\":\"in\"}}"), 422, ["/vehicle/steering/wheelDiameter/value out-of-range"] },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Read_Wrong_EveryErrorWithItsPointer(string body, int status, string[] errors)
    {
        var read = Read(body);

        Assert.Null(read.Value);
        Assert.Equal(errors.Order(StringComparer.Ordinal), Errors(read));
        Assert.Equal(status, read.Status);
        Assert.All(read.Errors, error => Assert.DoesNotContain("System.", error.Detail, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"modelYear":null,"fuel":"unknown","odometer":"unknown","engine":null,"brakes":{"front":"unknown"},"equipment":{"sunroof":null}}""")]
    [InlineData("""{"modelYear":2028.0}""")]
    public void Read_WhatIsNotKnownOfAVehicle_IsNoError(string vehicle) => Assert.Empty(Read($"{{\"vehicle\":{vehicle}}}").Errors);
}
