using System.CommandLine;
using AdviceService.Fleet.Queue;
using NATS.Client.Core;
using Prometheus;

namespace AdviceService.Verbs;

/// <summary>The verb "work": answers chunks of fleets from the queue until it is told to stop.</summary>
internal static class WorkVerb
{
    public static Command Command(RuleOptions rules)
    {
        var url = QueueOptions.Url();
        var atOnce = FleetOptions.Cores();
        var patience = FleetOptions.Positive(
            new("--patience") { Description = "Seconds after which an unfinished chunk is given to another worker", DefaultValueFactory = _ => 30 }, 3600);
        var work = new Command("work", "Answer fleets from a work queue (host options such as --urls pass through)") { url, atOnce, patience };
        work.TreatUnmatchedTokensAsErrors = false;
        work.SetAction(async (parsed, _) =>
        {
            if (RuleFolder.Load(rules.Of(parsed)) is not { } book)
                return 1;
            var registry = Metrics.NewCustomRegistry();
            await using var app = Health([.. parsed.UnmatchedTokens], registry);
            await app.StartAsync(CancellationToken.None);
            var stop = app.Lifetime.ApplicationStopping;
            try
            {
                await using var queue = await FleetQueue.ConnectAsync(parsed.GetValue(url)!, stop);
                var metrics = new QueueMetrics(registry);
                metrics.Follow(queue);
                Console.WriteLine($"Taking chunks with rule set {book.Revision}; health and metrics on {string.Join(", ", app.Urls)}.");
                await new ChunkWorker(queue, book, parsed.GetValue(atOnce), TimeSpan.FromSeconds(parsed.GetValue(patience)), metrics).RunAsync(stop);
                return 0;
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                // Told to end before the queue answered: nothing was taken.
                return 0;
            }
            catch (NatsException unable)
            {
                Console.Error.WriteLine(unable.Message);
                return 1;
            }
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
