using System.Globalization;

namespace AdviceService.Tests.Http;

/// <summary>Values of published tables, written down from the source that is named with each, asked as a caller would.</summary>
[Collection(Served.ByHttp)]
public class PublishedValueTests(RunningService service)
{
    public static TheoryData<string> Rows => [.. File.ReadLines(Path.Combine(Repository.Root, "tests", "AdviceService.Tests", "Http", "published-values.tsv")).Skip(1)];

    [Theory]
    [MemberData(nameof(Rows))]
    public async Task Compute_ValueOfATable_IsThatOfTheTable(string row)
    {
        if (row.Split('\t') is not [var computation, var inputs, var name, var expected, var within, { Length: > 0 } source])
            throw new InvalidDataException($"A row has six cells, the source last: {row}");

        var answer = await service.AskAsync($"/v1/arithmetic/{computation}", inputs);

        var result = answer.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == name);
        var right = within.Length == 0 ? result.GetProperty("text").GetString() == expected
            : Math.Abs(result.GetProperty("value").GetDouble() - Number(expected)) <= Number(within);
        Assert.True(right, $"{source}: {expected}, not {result}");
    }

    [Fact]
    public void Rows_AreMany() => Assert.True(Rows.Count >= 120);

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
