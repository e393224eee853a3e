using System.CommandLine;
using AdviceService.Fleet;
using AdviceService.Fleet.Queue;
using AdviceService.Fleet.Scoring;
using AdviceService.Terminal;
using NATS.Client.Core;

namespace AdviceService.Verbs;

/// <summary>The verb "collect": waits for the replies to a fleet in the work queue and writes them in the order of its lines.</summary>
internal static class CollectVerb
{
    public static Command Command(RuleOptions rules)
    {
        var job = QueueOptions.Job();
        var output = new Argument<string>("OUT") { Description = "Where the replies go: .ndjson, .csv or .parquet" };
        var url = QueueOptions.Url();
        var keep = new Option<bool>("--keep") { Description = "Leave the replies in the queue" };
        var collect = new Command("collect", "Wait for the replies to a fleet in the work queue and write them") { job, output, url, keep };
        collect.SetAction(async (parsed, cancel) =>
        {
            if (RuleFolder.Load(rules.Of(parsed)) is not { } book)
                return 1;
            try
            {
                var (target, name) = (parsed.GetValue(output)!, parsed.GetValue(job)!);
                await using var queue = await FleetQueue.ConnectAsync(parsed.GetValue(url)!, cancel);
                var collection = new Collection(queue, name);
                var format = FleetOptions.FormatOf(target);
                if (format != ScoreFormat.Ndjson && (await collection.BegunAsync(cancel)).Detail == LineDetail.Full)
                    throw new ScoreException("A table has no room for full answers: collect them to a file of lines (.ndjson).");
                using var part = PartFile.Anew(target);
                await foreach (var reply in collection.ReadAsync(cancel))
                    part.Add(reply);
                var tally = new Tally(book.Catalogue.PartsByFault);
                await part.CompleteAsync(target, format, tally);
                TallyPrinter.Print(tally, book.Catalogue);
                if (!parsed.GetValue(keep))
                    await queue.ForgetAsync(name, cancel);
                return 0;
            }
            catch (OperationCanceledException)
            {
                Console.Error.WriteLine("Stopped; what was answered is still in the queue.");
                return 1;
            }
            catch (Exception unable) when (unable is ScoreException or IOException or UnauthorizedAccessException or NatsException)
            {
                Console.Error.WriteLine(unable.Message);
                return 1;
            }
        });
        return collect;
    }
}
