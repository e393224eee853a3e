using System.Text.Json;
using Advice.Evidence;
using AdviceService.Fleet;
using AdviceService.Fleet.Scoring;
using AdviceService.Tests.Http;
using CsvHelper;
using Microsoft.Extensions.DependencyInjection;
using Parquet.Serialization;

namespace AdviceService.Tests.Fleet;

[Collection(Served.ByHttp)]
public sealed class ScoreRunTests(RunningService service) : IDisposable
{
    private const int Count = 60;

    private static readonly DateOnly Day = new(2026, 3, 1);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory();

    private IRuleBook Rules => service.Services.GetRequiredService<IRuleBook>();

    [Theory]
    [InlineData("full")]
    [InlineData("triage")]
    public async Task Run_Lines_RepliesAreThoseOfTheBatch(string detail)
    {
        var input = SmallFleet.Lines(Count).Replace("\"vehicle\"", "\"asOf\":\"2026-03-01\",\"vehicle\"", StringComparison.Ordinal);
        var response = await service.Client.PostAsync($"/v1/advice/batch?detail={detail}", RunningService.Content(input, "application/x-ndjson"));
        var batch = (await response.Content.ReadAsStringAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        var (output, _) = await RunAsync(input, "fleet.ndjson", "out.ndjson", detail: Enum.Parse<LineDetail>(detail, ignoreCase: true));

        Assert.Equal(batch[..^1], await File.ReadAllLinesAsync(output));
    }

    [Fact]
    public async Task Run_OneCoreOrMany_SameBytes()
    {
        var one = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "one.ndjson", atOnce: 1);
        var many = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "many.ndjson", atOnce: 4);

        Assert.Equal(await File.ReadAllBytesAsync(one.Output), await File.ReadAllBytesAsync(many.Output));
    }

    [Fact]
    public async Task Run_Shards_TogetherAreTheWhole()
    {
        var whole = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "whole.ndjson");
        List<string> parts = [];
        for (var i = 0; i < 3; i++)
            parts.AddRange(await File.ReadAllLinesAsync((await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", $"{i}.ndjson", shard: new Shard(i, 3))).Output));

        Assert.Equal((await File.ReadAllLinesAsync(whole.Output)).Order(StringComparer.Ordinal), parts.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Run_Table_SaysTheSameAsLines()
    {
        var (lines, _) = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "lines.ndjson");
        var (table, _) = await RunAsync(SmallFleet.Table(Count), "fleet.csv", "table.ndjson");

        Assert.Equal((await File.ReadAllLinesAsync(lines)).Select(WithoutPlace), (await File.ReadAllLinesAsync(table)).Select(WithoutPlace));
    }

    [Fact]
    public async Task Run_ToTable_HasARowForEachLineReadableByOthers()
    {
        var (output, _) = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "out.csv", ScoreFormat.Csv);

        using var csv = new CsvReader(new StringReader(await File.ReadAllTextAsync(output)), System.Globalization.CultureInfo.InvariantCulture);
        var rows = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(Enumerable.Range(1, Count).Select(i => $"{i}"), rows.Select(row => row["id"]));
        Assert.All(rows, (row, i) => Assert.Equal((i + 1) % 10 == 0, row["problem"] is not ""));
        Assert.Contains("stop", rows.Select(row => row["driving"]));
        Assert.Subset(new HashSet<object> { "true", "false", "" }, rows.Select(row => row["lift"]).ToHashSet());
    }

    [Fact]
    public async Task Run_ToParquet_HoldsWhatTheTableHolds()
    {
        var parquet = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "out.parquet", ScoreFormat.Parquet);
        var lines = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "out.ndjson");

        await using var stream = File.OpenRead(parquet.Output);
        var rows = (await ParquetSerializer.DeserializeAsync<ReplyRow>(stream)).Data;
        Assert.Equal(
            (await File.ReadAllLinesAsync(lines.Output)).Select(line => JsonSerializer.Serialize(ReplyRow.Of(System.Text.Encoding.UTF8.GetBytes(line)))),
            rows.Select(row => JsonSerializer.Serialize(row)));
    }

    [Fact]
    public async Task Run_CutShort_GoesOnAndGivesTheSameBytes()
    {
        const int Count = 200;
        const int Cut = 30;
        var whole = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "whole.ndjson");
        using var stop = new CancellationTokenSource();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "cut.ndjson", progress: now =>
        {
            if (now.Lines == Cut)
                stop.Cancel();
        }, cancel: stop.Token));
        var part = Path.Combine(_folder.FullName, "cut.ndjson.part");
        // What was answered already when it was cut may still be kept.
        var kept = (await File.ReadAllLinesAsync(part)).Length;
        Assert.InRange(kept, Cut, Count - 1);
        await File.AppendAllTextAsync(part, "{\"id\":0,\"li");

        long first = 0;
        var (output, tally) = await RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "cut.ndjson", namesDay: false, progress: now => first = first == 0 ? now.Lines : first);

        Assert.Equal(kept + 1, first);
        Assert.Equal(await File.ReadAllBytesAsync(whole.Output), await File.ReadAllBytesAsync(output));
        Assert.Equal((Count, Count / 10), (tally.Answers + tally.Problems, tally.Problems));
        Assert.Equal(["cut.ndjson", "fleet.ndjson", "whole.ndjson"], _folder.EnumerateFiles().Select(file => file.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Run_TakenUpWithAnotherInput_IsRefusedAndNamesIt()
    {
        using var stop = new CancellationTokenSource();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => RunAsync(SmallFleet.Lines(Count), "fleet.ndjson", "out.ndjson", progress: _ => stop.Cancel(), cancel: stop.Token));

        var refused = await Assert.ThrowsAsync<ScoreException>(() => RunAsync(SmallFleet.Lines(Count + 1), "fleet.ndjson", "out.ndjson"));

        Assert.Contains("input was", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "has no header")]
    [InlineData("vehicle.modelyear\n", "did you mean 'vehicle.modelYear'?")]
    [InlineData("id,complaint,id\n", "'id' twice")]
    [InlineData("id;complaint\n", "parted by ';'")]
    [InlineData("id\tcomplaint\n", "parted by tabs")]
    public async Task Run_HeaderThatIsWrong_NamesWhatWouldBeRight(string table, string named)
    {
        var refused = await Assert.ThrowsAsync<ScoreException>(() => RunAsync(table, "fleet.csv", "out.ndjson"));

        Assert.Contains(named, refused.Message, StringComparison.Ordinal);
        Assert.Equal(["fleet.csv"], _folder.EnumerateFiles().Select(file => file.Name));
    }

    [Theory]
    [InlineData("0/4", 0, 4)]
    [InlineData("3/4", 3, 4)]
    public void Shard_Parse_Part(string text, int index, int of) => Assert.Equal(new Shard(index, of), Shard.Parse(text));

    [Fact]
    public void Shard_InWords_IsAsItIsGiven() => Assert.Equal("3/4", $"{new Shard(3, 4)}");

    [Theory]
    [InlineData("4/4")]
    [InlineData("-1/4")]
    [InlineData("1")]
    [InlineData("a/b")]
    public void Shard_Parse_NoPart(string text) => Assert.Null(Shard.Parse(text));

    public void Dispose() => _folder.Delete(recursive: true);

    private async Task<(string Output, Tally Tally)> RunAsync(
        string input, string inputName, string outputName, ScoreFormat format = ScoreFormat.Ndjson, LineDetail detail = LineDetail.Triage,
        Shard? shard = null, int atOnce = 2, Action<ScoreProgress>? progress = null, bool namesDay = true, CancellationToken cancel = default)
    {
        var (source, target) = (Path.Combine(_folder.FullName, inputName), Path.Combine(_folder.FullName, outputName));
        await File.WriteAllTextAsync(source, input, CancellationToken.None);
        var options = new ScoreOptions(source, inputName.EndsWith(".csv", StringComparison.Ordinal), target, format, detail, shard ?? Shard.All, namesDay ? Day : null, atOnce);
        return (target, await new ScoreRun(Rules, new DateOnly(2030, 1, 1), progress ?? (_ => { })).RunAsync(options, cancel));
    }

    /// <summary>A table has a header and so other line numbers.</summary>
    private static string WithoutPlace(string reply) => System.Text.RegularExpressions.Regex.Replace(reply, "^{\"id\":\"?(\\d+)\"?,\"line\":\\d+", "$1");
}
