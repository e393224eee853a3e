using Serilog;
using Serilog.AspNetCore;
using Serilog.Core;
using Serilog.Events;

namespace AdviceService.Http;

/// <summary>The log: compact JSON on standard error. Nothing of what a caller sent is ever written to it.</summary>
internal static class Logging
{
    public static void Configure(LoggerConfiguration log) => log
        .MinimumLevel.Information()
        .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
        .MinimumLevel.Override("Microsoft.Hosting.Lifetime", LogEventLevel.Information)
        .MinimumLevel.Override("ModelContextProtocol", LogEventLevel.Error)
        .Filter.ByExcluding(QuotingNobody.IsCallersFault)
        .Enrich.FromLogContext()
        .Enrich.With<WithoutAddress>()
        .WriteTo.Async(sink => sink.Console(new QuotingNobody(), standardErrorFromLevel: LevelAlias.Minimum));

    /// <summary>A request that succeeded is counted elsewhere and makes no line; another is named by its route, not by the address that was asked for.</summary>
    public static void ConfigureRequests(RequestLoggingOptions options)
    {
        options.MessageTemplate = "HTTP {Method} {Route} responded {StatusCode} in {Elapsed:0.0000} ms";
        options.GetMessageTemplateProperties = (http, _, elapsed, status) =>
        {
            var route = http.GetEndpoint() as RouteEndpoint;
            return
            [
                new LogEventProperty("Method", new ScalarValue(route is null ? "" : http.Request.Method)),
                new LogEventProperty("Route", new ScalarValue(route?.RoutePattern.RawText ?? "(none)")),
                new LogEventProperty("StatusCode", new ScalarValue(status)),
                new LogEventProperty("Elapsed", new ScalarValue(elapsed)),
            ];
        };
        options.GetLevel = (http, _, failure) =>
            failure is not null || http.Response.StatusCode >= 500 ? LogEventLevel.Error
            : http.Response.StatusCode >= 400 ? LogEventLevel.Information
            : LogEventLevel.Debug;
    }

    /// <summary>Leaves out the address, which the host adds to every line of a request.</summary>
    private sealed class WithoutAddress : ILogEventEnricher
    {
        public void Enrich(LogEvent logEvent, ILogEventPropertyFactory propertyFactory) => logEvent.RemovePropertyIfPresent("RequestPath");
    }
}
