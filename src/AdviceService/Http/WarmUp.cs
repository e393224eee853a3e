namespace AdviceService.Http;

/// <summary>Gives one advice at start, so that the first caller does not wait for the compiler, and withdraws readiness at the end.</summary>
internal sealed class WarmUp(IServiceProvider services, Readiness readiness, IHostApplicationLifetime life) : BackgroundService
{
    private static readonly byte[] Complaint = """{"vehicle":{},"complaint":"It squeals and pulls to the left when braking."}"""u8.ToArray();

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        services.GetRequiredService<AdviceDesk>().Answer(Complaint);
        readiness.IsReady = true;
        life.ApplicationStopping.Register(() => readiness.IsReady = false);
    }
}
