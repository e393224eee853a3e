using AdviceService.Tests.Fleet;

namespace AdviceService.Tests.Verbs;

public sealed class ScoreVerbTests : IDisposable
{
    private const string AsOf = "--as-of=2026-03-01";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory();

    [Fact]
    public async Task Score_KilledInTheMiddle_TheSameCommandGoesOnToTheSameBytes()
    {
        const int Count = 3000;
        var (input, killed, whole, page) = (FilePath("fleet.ndjson"), FilePath("killed.ndjson"), FilePath("whole.ndjson"), FilePath("page.html"));
        await File.WriteAllTextAsync(input, SmallFleet.Lines(Count));
        using (var process = Run.Start("score", input, killed, AsOf))
        {
            while (!process.HasExited && Length(killed + ".part") == 0)
                await Task.Delay(5);
            process.Kill();
            await process.WaitForExitAsync();
        }

        Assert.InRange(Length(killed + ".part"), 1, long.MaxValue);
        Assert.False(File.Exists(killed), "The run ended before it was killed: the test needs more lines.");
        var (exitCode, _, summary) = await Run.ToEndAsync("", "score", input, killed, AsOf, "--page", page);
        await Run.ToEndAsync("", "score", input, whole, AsOf);

        Assert.Equal(0, exitCode);
        Assert.Equal(await File.ReadAllBytesAsync(whole), await File.ReadAllBytesAsync(killed));
        Assert.Contains($"{Count - (Count / 10)} vehicles answered, {Count / 10} problems", summary, StringComparison.Ordinal);
        Assert.Contains("<svg", await File.ReadAllTextAsync(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Score_Pipes_RepliesAloneOnStandardOutput()
    {
        var (exitCode, output, _) = await Run.ToEndAsync(SmallFleet.Lines(20), "score", "-", AsOf);

        Assert.Equal(0, exitCode);
        Assert.Equal(20, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Count(line => line.StartsWith("{\"id\":", StringComparison.Ordinal)));
        Assert.Equal(20, output.Count(letter => letter == '\n'));
    }

    [Theory]
    [InlineData("--shard is I/N", "score", "-", "--shard", "2/2")]
    [InlineData("--as-of is a day", "score", "-", "--as-of", "yesterday")]
    [InlineData("no room for full answers", "score", "-", "out.csv", "--detail", "full")]
    [InlineData("--cores is 1 to", "work", "--cores", "0")]
    [InlineData("--patience is 1 to", "work", "--patience", "0")]
    [InlineData("Parquet cannot be written to a pipe", "score", "-", "--format", "parquet")]
    [InlineData("no-such-fleet.ndjson", "score", "no-such-fleet.ndjson")]
    public async Task Score_ImpossibleWish_SaysWhatWouldBeRight(string said, params string[] args)
    {
        var (exitCode, _, error) = await Run.ToEndAsync("", args);

        Assert.Equal(1, exitCode);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static long Length(string path) => File.Exists(path) ? new FileInfo(path).Length : 0;

    private string FilePath(string name) => Path.Combine(_folder.FullName, name);
}
