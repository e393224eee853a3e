using System.Text;
using System.Text.Json;
using Advice.Evidence;
using AdviceService.Requests;
using CsCheck;
using Json.Schema;
using Microsoft.Extensions.DependencyInjection;

namespace AdviceService.Tests.Http;

/// <summary>The committed description of the interface and the service say the same about requests and answers.</summary>
[Collection(Served.ByHttp)]
public class ContractTests(RunningService service)
{
    private static readonly JsonSchema Request = InterfaceDescription.Schema("AdviceRequest");
    private static readonly JsonSchema Answer = InterfaceDescription.Schema("AdviceDocument");
    private static readonly JsonSchema Problem = InterfaceDescription.Schema("ProblemDocument");

    private static readonly EvaluationOptions Formats = new() { RequireFormatValidation = true };

    private static readonly Gen<string> Odd = OneOf(
        "null", "true", "-1", "0", "7", "2016.5", "1e999", "\"\"", "\"unknown\"", "\"Diesel\"", "\"owner\"", "\"2021-02-29\"", "[]", "{}", "[null]", "[1]");

    private static readonly Gen<string> Quantity = Object(("value", "0", "150000"), ("unit", "\"km\"", "\"mi\""));

    private static readonly Gen<string> Vehicle = Object(
        ("modelYear", Text("2012", "2020")), ("fuel", Text("\"diesel\"", "\"electric\"")), ("driveline", Text("\"allWheelDrive\"")), ("odometer", Quantity),
        ("engine", Object(("cylinders", "4", "6"), ("interference", "true", "false"), ("ignition", "\"coilOnPlug\"", "\"distributor\""))),
        ("equipment", Object(("sunroof", "true", "false"), ("startStop", "true", "false"))));

    private static readonly Gen<string> Body = Object(
        ("vehicle", Vehicle), ("complaint", Text("\"The brakes squeal\"", "\"\"")), ("asOf", Text("\"2026-03-01\"")), ("limit", Text("1", "50")),
        ("jurisdiction", Text("\"US\"", "\"DE\"")), ("troubleCodes", Text("[\"P0301\"]", "[]")),
        ("symptoms", List(Object(("symptom", "\"squeal\"", "\"clunk\""), ("present", "true", "false"), ("position", "\"front\"", "\"rear-left\"")))),
        ("findings", List(Object(("check", "\"damper-leak\"", "\"coolant-condition\""), ("observation", "\"film\"", "\"rusty\"")))),
        ("unsure", List(Text("\"squeal\"", "\"clunk\""))),
        ("services", List(Object(("item", "\"brake-fluid\"", "\"brake-fluid\""), ("on", "\"2019-05-01\"", "\"2020-02-29\"")))),
        ("workshop", Object(("lift", "true", "false"), ("minutes", "1", "60"), ("audience", "\"owner\"", "\"technician\""))));

    [Fact]
    public void Read_RandomBody_IsRefusedForItsShapeExactlyWhereItsSchemaRefusesIt()
    {
        var reader = new RequestReader(service.Services.GetRequiredService<IRuleBook>().Catalogue);
        var (accepted, refused) = (0, 0);
        Body.Sample(
            body =>
            {
                var read = reader.Read(Encoding.UTF8.GetBytes(body), new DateOnly(2026, 3, 1));
                var fits = Request.Evaluate(JsonDocument.Parse(body).RootElement, Formats).IsValid;
                Assert.True(fits ? read.Status is 200 or 422 : read.Status is 400 or 422, $"schema {(fits ? "takes" : "refuses")}, reader says {read.Status}: {body}");
                _ = read.Status == 200 ? Interlocked.Increment(ref accepted) : Interlocked.Increment(ref refused);
            },
            iter: 20_000);
        Assert.True(accepted > 1000 && refused > 1000, $"{accepted} accepted, {refused} refused: the generator makes one kind only.");
    }

    [Fact]
    public void Advise_RandomBody_AnswersAsDescribed() =>
        Body.Sample(
            body =>
            {
                using var response = service.Client.PostAsync("/v1/advice", RunningService.Json(body)).GetAwaiter().GetResult();
                var text = response.Content.ReadAsStringAsync().GetAwaiter().GetResult();
                Assert.True((int)response.StatusCode is 200 or 400 or 422, $"{response.StatusCode} for {body}");
                var schema = response.IsSuccessStatusCode ? Answer : Problem;
                Assert.True(schema.Evaluate(JsonDocument.Parse(text).RootElement, Formats).IsValid, text);
            },
            iter: 300,
            threads: 1);

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static Gen<string> Text(params string[] texts) => OneOf(texts);

    private static Gen<string> List(Gen<string> element) => Gen.Frequency((9, element), (1, Odd)).List[0, 2].Select(list => $"[{string.Join(',', list)}]");

    private static Gen<string> Object(params (string Name, string First, string Second)[] members) =>
        Object([.. members.Select(member => (member.Name, OneOf(member.First, member.Second)))]);

    /// <summary>Nearly always valid in each member, so that one odd value alone often decides.</summary>
    private static Gen<string> Object(params (string Name, Gen<string> Value)[] members)
    {
        var choices = members.Select(member => Gen.Frequency(
            (14, member.Value.Select(value => $"\"{member.Name}\":{value}")), (5, Gen.Const("")), (1, Odd.Select(value => $"\"{member.Name}\":{value}"))));
        return choices.Aggregate(Gen.Const(""), (all, one) => Gen.Select(all, one, (a, b) => a.Length == 0 ? b : b.Length == 0 ? a : $"{a},{b}"))
            .Select(text => $"{{{text}}}");
    }
}
