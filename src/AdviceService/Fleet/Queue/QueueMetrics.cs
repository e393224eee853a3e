using Prometheus;

namespace AdviceService.Fleet.Queue;

/// <summary>How the queue stands, for whoever scales the workers.</summary>
internal sealed class QueueMetrics(CollectorRegistry registry)
{
    private readonly MetricFactory _make = Metrics.WithCustomRegistry(registry);

    /// <summary>Chunks that wait for a worker, when this one last took one.</summary>
    public Gauge Waiting => _make.CreateGauge("advice_queue_waiting_chunks", "Chunks that wait for a worker, as seen when the last one was taken.");

    /// <summary>Chunks that this worker finished.</summary>
    public Counter Finished => _make.CreateCounter("advice_queue_finished_chunks_total", "Chunks that this worker answered.");

    /// <summary>Chunks that this worker put aside after too many tries.</summary>
    public Counter Buried => _make.CreateCounter("advice_queue_buried_chunks_total", "Chunks put aside after three tries.");

    /// <summary>Chunks that came again, because a worker died or took too long.</summary>
    public Counter Again => _make.CreateCounter("advice_queue_redelivered_chunks_total", "Chunks that came a second time or more.");
}
