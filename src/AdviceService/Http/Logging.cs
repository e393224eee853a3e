using Serilog;
using Serilog.AspNetCore;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace AdviceService.Http;

/// <summary>The log: compact JSON on standard error. Nothing of what a caller sent is ever written to it.</summary>
internal static class Logging
{
    public static void Configure(LoggerConfiguration log) => log
        .MinimumLevel.Information()
        .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
        .MinimumLevel.Override("Microsoft.Hosting.Lifetime", LogEventLevel.Information)
        .Enrich.FromLogContext()
        .WriteTo.Async(sink => sink.Console(new CompactJsonFormatter(), standardErrorFromLevel: LevelAlias.Minimum));

    /// <summary>A request that succeeded is counted elsewhere and makes no line.</summary>
    public static void ConfigureRequests(RequestLoggingOptions options) =>
        options.GetLevel = (http, _, failure) =>
            failure is not null || http.Response.StatusCode >= 500 ? LogEventLevel.Error
            : http.Response.StatusCode >= 400 ? LogEventLevel.Information
            : LogEventLevel.Debug;
}
