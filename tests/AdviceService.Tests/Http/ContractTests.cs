using System.Text.Json;
using CsCheck;
using Json.Schema;

namespace AdviceService.Tests.Http;

/// <summary>The committed description of the interface and the service say the same about requests and answers.</summary>
[Collection(Served.ByHttp)]
public class ContractTests(RunningService service)
{
    private static readonly JsonSchema Request = InterfaceDescription.Schema("AdviceRequest");
    private static readonly JsonSchema Answer = InterfaceDescription.Schema("AdviceDocument");
    private static readonly JsonSchema Problem = InterfaceDescription.Schema("ProblemDocument");

    private static readonly Gen<string> Scalar = OneOf(
        "null", "true", "-1", "0", "7", "2016", "2016.5", "1e999", "\"\"", "\"unknown\"", "\"diesel\"", "\"Diesel\"", "\"brakes squeal\"", "\"km\"",
        "\"mi\"", "\"owner\"", "\"US\"", "\"squeal\"", "\"front-left\"", "\"2020-02-29\"", "\"2021-02-29\"", "[]", "{}", "[null]", "[\"P0301\"]", "[1]");

    private static readonly Gen<string> Member = OneOf(
        "asOf", "jurisdiction", "vehicle", "complaint", "symptoms", "troubleCodes", "findings", "services", "workshop", "limit", "fuel", "modelYear",
        "odometer", "engine", "cylinders", "value", "unit", "minutes", "audience", "lift", "check", "symptom", "present", "nope");

    private static readonly Gen<string> Inner = Object(Scalar);
    private static readonly Gen<string> Body = Object(Gen.OneOf(Scalar, Inner, Object(Gen.OneOf(Scalar, Inner)), Inner.List[0, 2].Select(list => $"[{string.Join(',', list)}]")));

    [Fact]
    public void Advise_RandomBody_IsRefusedForItsShapeExactlyWhereItsSchemaRefusesIt()
    {
        var (accepted, refused) = (0, 0);
        Gen.OneOf(Body, Body.Select(body => body[..^1] + (body.Length > 2 ? "," : "") + "\"vehicle\":{}}")).Sample(
            body =>
            {
                var (status, text) = Post(body);
                var fits = Request.Evaluate(JsonDocument.Parse(body).RootElement, new EvaluationOptions { RequireFormatValidation = true }).IsValid;
                if (status == 200)
                    Assert.True(Answer.Evaluate(JsonDocument.Parse(text).RootElement).IsValid, text);
                else
                    Assert.True(Problem.Evaluate(JsonDocument.Parse(text).RootElement).IsValid, text);
                Assert.True(status is 200 or 400 or 422, $"{status} for {body}");
                Assert.True(fits ? status is 200 or 422 : status is 400 or 422, $"schema {(fits ? "takes" : "refuses")}, service says {status} {text}: {body}");
                _ = status == 200 ? Interlocked.Increment(ref accepted) : Interlocked.Increment(ref refused);
            },
            iter: 1500,
            threads: 1);
        Assert.True(accepted > 50 && refused > 50, $"{accepted} accepted, {refused} refused: the generator makes one kind only.");
    }

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static Gen<string> Object(Gen<string> value) => Gen.Select(Member, value).List[0, 4]
        .Select(members => $"{{{string.Join(',', members.DistinctBy(member => member.Item1).Select(member => $"\"{member.Item1}\":{member.Item2}"))}}}");

    private (int Status, string Text) Post(string body)
    {
        using var response = service.Client.PostAsync("/v1/advice", RunningService.Json(body)).GetAwaiter().GetResult();
        return ((int)response.StatusCode, response.Content.ReadAsStringAsync().GetAwaiter().GetResult());
    }
}
