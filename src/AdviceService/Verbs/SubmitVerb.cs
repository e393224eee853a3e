using System.CommandLine;
using AdviceService.Fleet;
using AdviceService.Fleet.Queue;
using AdviceService.Fleet.Scoring;
using NATS.Client.Core;

namespace AdviceService.Verbs;

/// <summary>The verb "submit": puts a fleet into the work queue.</summary>
internal static class SubmitVerb
{
    private const int LinesOfATriageChunk = 200;
    private const int LinesOfAFullChunk = 100;

    public static Command Command()
    {
        var job = QueueOptions.Job();
        var input = new Argument<string>("IN") { Description = "The fleet, as for score" };
        var (url, detail, asOf) = (QueueOptions.Url(), FleetOptions.Detail(), FleetOptions.AsOf());
        var submit = new Command("submit", "Put a fleet into the work queue; again after it was broken off is harmless") { job, input, url, detail, asOf };
        submit.SetAction(async (parsed, cancel) =>
        {
            var path = parsed.GetValue(input)!;
            try
            {
                await using var fleet = path == ScoreOptions.Pipe ? Console.OpenStandardInput() : File.OpenRead(path);
                await using var queue = await FleetQueue.ConnectAsync(parsed.GetValue(url)!, cancel);
                var asked = parsed.GetValue(detail);
                var day = parsed.GetValue(asOf) ?? DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().Date);
                var run = new QueueRun(await FleetLines.HashAsync(fleet, cancel), asked, day);
                var total = await new Submission(queue, parsed.GetValue(job)!).RunAsync(
                    FleetLines.Of(fleet, FleetOptions.IsTable(path), cancel), run, parsed.GetValue(asOf) is not null,
                    asked == LineDetail.Full ? LinesOfAFullChunk : LinesOfATriageChunk, cancel);
                Console.Error.WriteLine($"{total.Lines} lines in {total.Chunks} chunks.");
                return 0;
            }
            catch (OperationCanceledException)
            {
                Console.Error.WriteLine("Stopped; the same command goes on from here.");
                return 1;
            }
            catch (Exception unable) when (unable is ScoreException or IOException or UnauthorizedAccessException or NatsException)
            {
                Console.Error.WriteLine(unable.Message);
                return 1;
            }
        });
        return submit;
    }
}
