using System.CommandLine;
using AdviceService.Fleet.Queue;
using AdviceService.Fleet.Scoring;
using AdviceService.Terminal;

namespace AdviceService.Verbs;

/// <summary>The verb "collect": waits for the replies to a fleet in the work queue and writes them in the order of its lines.</summary>
internal static class CollectVerb
{
    public static Command Command(Option<string> rules)
    {
        var job = QueueOptions.Job();
        var output = new Argument<string>("OUT") { Description = "Where the replies go: .ndjson, .csv or .parquet" };
        var url = QueueOptions.Url();
        var keep = new Option<bool>("--keep") { Description = "Leave the replies in the queue" };
        var collect = new Command("collect", "Wait for the replies to a fleet in the work queue and write them") { job, output, url, keep };
        collect.SetAction(async (parsed, cancel) =>
        {
            if (RuleFolder.Load(parsed.GetValue(rules)!) is not { } book)
                return 1;
            try
            {
                var (target, name) = (parsed.GetValue(output)!, parsed.GetValue(job)!);
                await using var queue = await FleetQueue.ConnectAsync(parsed.GetValue(url)!, cancel);
                using var part = PartFile.Anew(target);
                await foreach (var reply in new Collection(queue, name).ReadAsync(cancel))
                    part.Add(reply);
                TallyPrinter.Print(await part.CompleteAsync(target, FleetOptions.FormatOf(target)), book.Catalogue);
                if (!parsed.GetValue(keep))
                    await queue.ForgetAsync(name, cancel);
                return 0;
            }
            catch (OperationCanceledException)
            {
                Console.Error.WriteLine("Stopped; what was answered is still in the queue.");
                return 1;
            }
            catch (Exception unable) when (unable is IOException or UnauthorizedAccessException)
            {
                Console.Error.WriteLine(unable.Message);
                return 1;
            }
        });
        return collect;
    }
}
