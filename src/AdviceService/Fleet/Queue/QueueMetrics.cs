using Prometheus;

namespace AdviceService.Fleet.Queue;

/// <summary>How the queue stands, for whoever scales the workers.</summary>
internal sealed class QueueMetrics
{
    private readonly CollectorRegistry _registry;

    /// <summary>All at nought.</summary>
    public QueueMetrics(CollectorRegistry registry)
    {
        _registry = registry;
        var make = Metrics.WithCustomRegistry(registry);
        Waiting = make.CreateGauge("advice_queue_waiting_chunks", "Chunks that wait for a worker.");
        Taken = make.CreateGauge("advice_queue_taken_chunks", "Chunks that some worker has taken and not finished.");
        Finished = make.CreateCounter("advice_queue_finished_chunks_total", "Chunks that this worker answered.");
        Buried = make.CreateCounter("advice_queue_buried_chunks_total", "Chunks that this worker put aside after three tries.");
        Again = make.CreateCounter("advice_queue_redelivered_chunks_total", "Chunks that came to this worker a second time or more.");
    }

    /// <summary>Chunks that wait for a worker.</summary>
    public Gauge Waiting { get; }

    /// <summary>Chunks that some worker has taken and not finished.</summary>
    public Gauge Taken { get; }

    /// <summary>Chunks that this worker finished.</summary>
    public Counter Finished { get; }

    /// <summary>Chunks that this worker put aside after too many tries.</summary>
    public Counter Buried { get; }

    /// <summary>Chunks that came again, because a worker died or took too long.</summary>
    public Counter Again { get; }

    /// <summary>Asks the queue whenever the metrics are read, so that they hold too while no worker takes anything.</summary>
    public void Follow(FleetQueue queue) => _registry.AddBeforeCollectCallback(async cancel =>
    {
        if (await queue.LagAsync(cancel) is not var (waiting, taken))
            return;
        Waiting.Set(waiting);
        Taken.Set(taken);
    });
}
