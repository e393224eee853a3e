using System.CommandLine;
using AdviceService.Fleet;
using AdviceService.Fleet.Scoring;
using AdviceService.Terminal;

namespace AdviceService.Verbs;

/// <summary>The verb "score": advice on a fleet, from file or pipe to file or pipe.</summary>
internal static class ScoreVerb
{
    public static Command Command(RuleOptions rules)
    {
        var input = new Argument<string>("IN") { Description = "The fleet: lines of JSON as for /v1/advice/batch, or a table (.csv); - reads lines from standard input" };
        var output = new Argument<string>("OUT") { Description = "Where the replies go: .ndjson, .csv or .parquet; - is standard output", DefaultValueFactory = _ => ScoreOptions.Pipe };
        var csv = new Option<bool>("--csv") { Description = "The input is a table, whatever it is called" };
        var format = new Option<ScoreFormat?>("--format") { Description = "Form of the replies, whatever the output is called" };
        var (detail, asOf) = (FleetOptions.Detail(), FleetOptions.AsOf());
        var shard = new Option<Shard>("--shard")
        {
            Description = "Part I of N of the lines, as I/N with I from 0; /N takes I from JOB_COMPLETION_INDEX",
            CustomParser = given =>
            {
                if (Shard.Parse(given.Tokens.Single().Value) is { } part)
                    return part;
                given.AddError("--shard is I/N with 0 <= I < N, or /N with JOB_COMPLETION_INDEX set.");
                return Shard.All;
            },
            DefaultValueFactory = _ => Shard.All,
        };
        var atOnce = FleetOptions.Cores();
        var page = new Option<string?>("--page") { Description = "Write the summary as a page (HTML) there" };
        var score = new Command("score", "Give advice on a fleet; the same command takes up a run that died") { input, output, csv, format, detail, shard, asOf, atOnce, page };
        score.SetAction((parsed, cancel) =>
        {
            var (source, target) = (parsed.GetValue(input)!, parsed.GetValue(output)!);
            return ScoreAsync(
                new ScoreOptions(
                    source, parsed.GetValue(csv) || FleetOptions.IsTable(source), target, parsed.GetValue(format) ?? FleetOptions.FormatOf(target),
                    parsed.GetValue(detail), parsed.GetValue(shard)!, parsed.GetValue(asOf), parsed.GetValue(atOnce)),
                parsed.GetValue(page), rules.Of(parsed), cancel);
        });
        return score;
    }

    private static async Task<int> ScoreAsync(ScoreOptions options, string? page, RuleFolders rules, CancellationToken cancel)
    {
        if (Refusal(options) is { } refusal)
            return Fail(refusal);
        if (RuleFolder.Load(rules) is not { } book)
            return 1;
        try
        {
            var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().Date);
            var tally = await ScoreBar.ShowAsync(options.Input, progress => new ScoreRun(book, today, progress).RunAsync(options, cancel));
            TallyPrinter.Print(tally, book.Catalogue);
            if (page is not null)
                await File.WriteAllTextAsync(page, TallyPage.Of(tally, book.Catalogue), CancellationToken.None);
            return 0;
        }
        catch (OperationCanceledException)
        {
            return Fail("Stopped; the same command goes on from here.");
        }
        catch (Exception unable) when (unable is ScoreException or IOException or UnauthorizedAccessException)
        {
            return Fail(unable.Message);
        }
    }

    private static string? Refusal(ScoreOptions options) =>
        options.Format != ScoreFormat.Ndjson && options.Detail == LineDetail.Full ? "A table has no room for full answers: take --detail triage or --format ndjson."
        : options.Format == ScoreFormat.Parquet && options.Output == ScoreOptions.Pipe ? "Parquet cannot be written to a pipe: name a file."
        : options.Input == options.Output && options.Input != ScoreOptions.Pipe ? "The output would overwrite the input."
        : null;

    private static int Fail(string why)
    {
        Console.Error.WriteLine(why);
        return 1;
    }
}
