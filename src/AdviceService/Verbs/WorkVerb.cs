using System.CommandLine;
using AdviceService.Fleet.Queue;
using Prometheus;

namespace AdviceService.Verbs;

/// <summary>The verb "work": answers chunks of fleets from the queue until it is told to stop.</summary>
internal static class WorkVerb
{
    public static Command Command(Option<string> rules)
    {
        var url = QueueOptions.Url();
        var atOnce = new Option<int>("--cores") { Description = "How many lines are worked on at once", DefaultValueFactory = _ => Environment.ProcessorCount };
        var patience = new Option<int>("--patience") { Description = "Seconds after which an unfinished chunk is given to another worker", DefaultValueFactory = _ => 30 };
        var work = new Command("work", "Answer fleets from a work queue (host options such as --urls pass through)") { url, atOnce, patience };
        work.TreatUnmatchedTokensAsErrors = false;
        work.SetAction(async (parsed, _) =>
        {
            if (RuleFolder.Load(parsed.GetValue(rules)!) is not { } book)
                return 1;
            var registry = Metrics.NewCustomRegistry();
            await using var app = Health([.. parsed.UnmatchedTokens], registry);
            await app.StartAsync(CancellationToken.None);
            var stop = app.Lifetime.ApplicationStopping;
            await using var queue = await FleetQueue.ConnectAsync(parsed.GetValue(url)!, stop);
            Console.WriteLine($"Taking chunks with rule set {book.Revision}; health and metrics on {string.Join(", ", app.Urls)}.");
            await new ChunkWorker(queue, book, parsed.GetValue(atOnce), TimeSpan.FromSeconds(parsed.GetValue(patience)), new QueueMetrics(registry)).RunAsync(stop);
            return 0;
        });
        return work;
    }

    private static WebApplication Health(string[] args, CollectorRegistry registry)
    {
        var builder = WebApplication.CreateSlimBuilder(args);
        if (string.IsNullOrEmpty(builder.Configuration["urls"]))
            builder.WebHost.UseUrls("http://127.0.0.1:5081");
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        var app = builder.Build();
        app.MapGet("/health/live", () => Results.Ok());
        app.MapGet("/health/ready", () => Results.Ok());
        app.MapMetrics(registry: registry);
        return app;
    }
}
