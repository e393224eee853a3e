using Advice.Evidence;
using Prometheus;

namespace AdviceService.Http;

/// <summary>Metrics for whoever runs the service, on a port of their own: what callers reach does not tell how the service is doing.</summary>
internal static class ManagementPort
{
    private const string Setting = "management";

    private static readonly Gauge RuleSet = Metrics.CreateGauge("advice_rule_set_info", "The rule set that answers; always 1.", "revision");

    /// <summary>Listens on the address that the setting "management" names; without it there are no metrics.</summary>
    public static void UseManagementPort(this ConfigureWebHostBuilder host, IConfiguration settings)
    {
        if (settings[Setting] is { Length: > 0 } url)
            host.UseUrls(host.GetSetting(WebHostDefaults.ServerUrlsKey)!, url);
    }

    /// <summary>Counts requests, and answers /metrics on the management port and nothing else there.</summary>
    public static void UseMetrics(this WebApplication app)
    {
        if (app.Configuration[Setting] is not { Length: > 0 } url)
            return;
        app.Lifetime.ApplicationStarted.Register(() => RuleSet.WithLabels(app.Services.GetRequiredService<IRuleBook>().Revision).Set(1));
        var port = BindingAddress.Parse(url).Port;
        // The port and not the host name, which a caller is free to choose.
        app.MapWhen(http => http.Connection.LocalPort == port, management => management.UseMetricServer("/metrics").Run(http =>
        {
            http.Response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        }));
        app.UseHttpMetrics();
    }
}
