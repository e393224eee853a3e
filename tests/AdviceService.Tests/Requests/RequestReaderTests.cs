using System.Text;
using Advice.Rules.RuleSets;
using AdviceService.Requests;
using CsCheck;

namespace AdviceService.Tests.Requests;

public class RequestReaderTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly RequestReader Reader = new(RuleSetLoader.Load(Path.Combine(AppContext.BaseDirectory, "rules")).Catalogue);

    /// <summary>The example of the contract, with nothing left out.</summary>
    private const string Full =
        """
        { "asOf": "2026-03-01", "jurisdiction": "US",
          "vehicle": { "modelYear": 2009, "odometer": {"value": 178000, "unit": "km"}, "body": "suv", "driveline": "fourWheelDrive", "transmission": "automatic",
            "fuel": "gasoline", "engine": {"timingDrive": "belt", "interference": true, "cylinders": 6, "ignition": "coilOnPlug", "forcedInduction": false},
            "steering": {"wheelDiameter": {"value": 16, "unit": "in"}, "assist": "power"}, "brakes": {"front": "disc", "rear": "drum", "parking": "cable"},
            "rearAxle": "solid", "equipment": {"limitedSlip": true, "antilockBrakes": true}, "duty": "severe" },
          "complaint": "Big clunk from underneath when I shift from reverse into drive",
          "symptoms": [ {"symptom": "clunk", "occasions": ["selecting-gear"], "position": "rear", "present": true} ],
          "troubleCodes": ["P0135", "p0301"],
          "findings": [ {"check": "brake-pad-thickness", "position": "front-left", "value": 2.5, "unit": "mm", "on": "2026-02-01", "odometer": {"value": 177000, "unit": "km"},
                         "limit": {"minimum": 3, "unit": "mm", "source": "stamped on the part"}}, {"check": "coolant-condition", "observation": "rusty"} ],
          "services": [ {"item": "differential-fluid", "on": "2019-05-01", "odometer": {"value": 60000, "unit": "mi"}} ],
          "workshop": {"lift": false, "minutes": 60, "audience": "owner"}, "limit": 8 }
        """;

    [Fact]
    public void Read_ContractExample_EveryMember()
    {
        var read = Reader.Read(Bytes(Full), Today);

        Assert.Empty(read.Errors);
        var request = read.Value!;
        Assert.Equal((200, "US", 8), (read.Status, request.Jurisdiction, request.Limit));
        Assert.Equal((2009, 178000, "drum", true), (request.Vehicle.ModelYear, request.Vehicle.Odometer!.Value, request.Vehicle.Brakes!.Rear, request.Vehicle.Equipment!.LimitedSlip));
        Assert.Equal(["P0135", "P0301"], request.TroubleCodes);
        Assert.Equal((2.5, 3, "rusty"), (request.Findings[0].Value, request.Findings[0].Limit!.Minimum, request.Findings[1].Observation));
        Assert.Equal((new DateOnly(2019, 5, 1), "mi"), (request.Services[0].On, request.Services[0].Odometer!.Unit));
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
        var read = Reader.Read(Bytes(body), Today);

        Assert.Null(read.Value);
        Assert.Equal(errors.Order(StringComparer.Ordinal), read.Errors.Select(error => $"{error.Pointer} {error.Code}").Order(StringComparer.Ordinal));
        Assert.Equal(status, read.Status);
        Assert.All(read.Errors, error => Assert.DoesNotContain("System.", error.Detail, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"modelYear":null,"fuel":"unknown","odometer":"unknown","engine":null,"brakes":{"front":"unknown"},"equipment":{"sunroof":null}}""")]
    [InlineData("""{"modelYear":2028.0}""")]
    public void Read_WhatIsNotKnownOfAVehicle_IsNoError(string vehicle) => Assert.Empty(Reader.Read(Bytes($"{{\"vehicle\":{vehicle}}}"), Today).Errors);

    [Theory]
    [InlineData("""{"id":"a-1","vehicle":{}}""", "\"a-1\"")]
    [InlineData("""{"id":7,"vehicle":{}}""", "7")]
    [InlineData("""{"id":7,"vehicle":{"modelYear":1}}""", "7")]
    [InlineData("""{"vehicle":{}}""", null)]
    [InlineData("""{"id":{},"vehicle":{}}""", null)]
    public void ReadLine_Id_ComesBackAsItWasGiven(string line, string? id) => Assert.Equal(id, Reader.ReadLine(Bytes(line), Today).Id?.GetRawText());

    [Fact]
    public void Read_AnyMutationOfAGoodRequest_IsAValueOrErrorsAndAlwaysTheSame()
    {
        var good = Bytes(Full);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[0, 2]).List[1, 4].Sample(
            changes =>
            {
                var bytes = good.ToList();
                foreach (var (at, value, kind) in changes.Where(change => change.Item1 < bytes.Count))
                {
                    if (kind == 0)
                        bytes[at] = value;
                    else if (kind == 1)
                        bytes.RemoveAt(at);
                    else
                        bytes.Insert(at, value);
                }

                var (first, second) = (Reader.Read(bytes.ToArray(), Today), Reader.Read(bytes.ToArray(), Today));
                Assert.Equal(first.Value is null, first.Errors.Count > 0);
                Assert.Equal(first.Errors, second.Errors);
                Assert.True(first.Status is 200 or 400 or 422);
            },
            iter: 20_000);
    }

    private static string With(string members) => $"{{\"vehicle\":{{}},{members}}}";

    private static string Vehicle(string members) => $"{{\"vehicle\":{{{members}}}}}";

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
