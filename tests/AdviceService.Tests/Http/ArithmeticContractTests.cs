using System.Globalization;
using System.Text.Json;
using Advice.Arithmetic;
using Advice.Findings;
using CsCheck;
using Json.Schema;

namespace AdviceService.Tests.Http;

/// <summary>For each computation the description, the reader and the answer say the same, whatever is sent.</summary>
[Collection(Served.ByHttp)]
public class ArithmeticContractTests(RunningService service)
{
    private static readonly JsonSchema Answer = InterfaceDescription.Schema("ComputationAnswer");
    private static readonly JsonSchema Problem = InterfaceDescription.Schema("ProblemDocument");
    private static readonly EvaluationOptions Formats = new() { RequireFormatValidation = true };

    private static readonly Gen<string> Odd =
        OneOf("null", "true", "-1", "0", "1e999", "\"\"", "\"mm\"", "[]", "{}", "[null]", "{\"value\":1}", "{\"value\":1,\"unit\":\"mm\"}", "\"2021-02-29\"");

    public static TheoryData<string> Names { get; } = new(Computations.All.Select(computation => computation.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Compute_AnyBody_AnswersAsDescribed(string name)
    {
        var computation = Computations.All.Single(one => one.Name == name);
        var posted = InterfaceDescription.Posted($"/v1/arithmetic/{name}");
        var (answered, refused) = (0, 0);
        Body(computation).Sample(
            body =>
            {
                using var response = service.Client.PostAsync($"/v1/arithmetic/{name}", RunningService.Json(body)).GetAwaiter().GetResult();
                var text = response.Content.ReadAsStringAsync().GetAwaiter().GetResult();
                var fits = posted.Evaluate(JsonDocument.Parse(body).RootElement, Formats).IsValid;
                Assert.True((int)response.StatusCode is 422 || (int)response.StatusCode == (fits ? 200 : 400), $"{(int)response.StatusCode}, schema {fits}: {body} {text}");
                Assert.True((response.IsSuccessStatusCode ? Answer : Problem).Evaluate(JsonDocument.Parse(text).RootElement, Formats).IsValid, text);
                if (response.IsSuccessStatusCode && JsonDocument.Parse(text).RootElement.GetProperty("verdict").GetString() is { } verdict)
                    Assert.Contains(verdict, computation.Verdicts);
                _ = response.IsSuccessStatusCode ? answered++ : refused++;
            },
            iter: 200,
            threads: 1);
        Assert.True(answered > 0 && refused > 0, $"{answered} answered, {refused} refused: the generator makes one kind only.");
    }

    private static Gen<string> Body(Computation computation) => computation.Inputs
        .Select(input => Gen.Frequency((input.Optional ? 8 : 30, Of(input).Select(value => $"\"{input.Name}\":{value}")), (1, Odd.Select(value => $"\"{input.Name}\":{value}")), (input.Optional ? 12 : 1, Gen.Const(""))))
        .Aggregate(Gen.Const(""), (all, one) => Gen.Select(all, one, (a, b) => a.Length == 0 ? b : b.Length == 0 ? a : $"{a},{b}"))
        .Select(members => $"{{{members}}}");

    private static Gen<string> Of(Input input) => input switch
    {
        NumberInput { Unit: { } unit } number => Given(number.Least, number.Most, unit, value => $"\"value\":{value}"),
        NumberInput { Name: "rebounds" or "loadIndex" or "value" or "first" or "second", Unit: null } number => Gen.Int[(int)number.Least, (int)number.Most].Select(value => $"{value}"),
        NumberInput number => Between(number.Least, number.Most).Select(Text),
        SeriesInput { Unit: { } unit } series => Between(series.Least, series.Most).List[series.Fewest, Math.Min(series.MostValues, 6)]
            .Select(values => $"{{\"values\":[{string.Join(',', values.Select(Text))}],\"unit\":\"{unit}\"}}"),
        SeriesInput series => Between(series.Least, series.Most).List[series.Fewest, series.MostValues].Select(values => $"[{string.Join(',', values.Select(Text))}]"),
        PointsInput points => Points(points),
        WordInput word => OneOf(word.Words.Select(one => $"\"{one}\"").ToArray()),
        TextInput text => Gen.Frequency((9, Gen.Const($"\"{text.Example}\"")), (1, Gen.Const("\"x\""))),
        _ => Gen.Const("\"2026-03-01\""),
    };

    /// <summary>A value of the range in any unit that is taken; with a step beyond the bounds now and then.</summary>
    private static Gen<string> Given(double least, double most, string unit, Func<string, string> member) =>
        Gen.Select(Between(least - (0.01 * (most - least)), most), OneOf(UnitConversion.Accepted(unit).ToArray()))
            .Select((value, other) => $"{{{member(Text(UnitConversion.Convert(value, unit, other)!.Value))},\"unit\":\"{other}\"}}");

    private static Gen<string> Points(PointsInput points) => Gen.Select(Between(points.X.Least, points.X.Most), Between(points.Y.Least, points.Y.Most))
        .List[points.Fewest, Math.Min(points.MostPoints, points.Fewest + 3)]
        .Select(list => points.Ascending ? list.DistinctBy(point => point.Item1).OrderBy(point => point.Item1).ThenByDescending(point => point.Item2).ToList() : list)
        .Select(list => $"[{string.Join(',', list.Select(point => $"{{\"{points.X.Name}\":{Text(point.Item1)},\"{points.Y.Name}\":{Text(point.Item2)}}}"))}]");

    private static Gen<double> Between(double least, double most) => Gen.Int[0, 1_000_000].Select(share => Math.Round(least + (share * 1e-6 * (most - least)), 6));

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
