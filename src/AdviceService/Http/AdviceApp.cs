using Advice.Evidence;
using Advice.Rules.RuleSets;
using AdviceService.Http.Batch;
using AdviceService.Http.OpenApi;
using AdviceService.Http.Problems;
using AdviceService.Mcp;
using Serilog;

namespace AdviceService.Http;

/// <summary>The web application: everything that serves a rule set over HTTP.</summary>
internal static class AdviceApp
{
    private const string Loopback = "http://127.0.0.1:5080";

    /// <summary>Builds it.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="args">Options of the host, such as --urls.</param>
    public static WebApplication Build(RuleBook rules, string[] args) => Build(() => rules, args);

    /// <summary>Builds it while the rules may still be loaded.</summary>
    /// <param name="rules">Gives the rule set; asked once the application runs.</param>
    /// <param name="args">Options of the host, such as --urls.</param>
    public static WebApplication Build(Func<RuleBook> rules, string[] args)
    {
        // Without it a compressed body that breaks off passes for one that ends.
        AppContext.SetSwitch("System.IO.Compression.UseStrictValidation", true);
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
        if (string.IsNullOrEmpty(builder.Configuration["urls"]))
            builder.WebHost.UseUrls(Loopback);
        builder.WebHost.UseManagementPort(builder.Configuration);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = RequestBytes.MostDropped;
        });
        builder.Services.AddSerilog(Logging.Configure);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<IRuleBook>(_ => rules());
        builder.Services.AddSingleton<AdviceDesk>();
        builder.Services.AddSingleton(BatchMemory.OfThisProcess);
        builder.Services.AddRequestDecompression();
        builder.Services.AddResponseCompression(options => options.MimeTypes = ["application/json", "application/problem+json", "application/x-ndjson"]);
        builder.Services.AddSingleton<Readiness>();
        builder.Services.AddHostedService<WarmUp>();
        builder.Services.AddAdviceDocumentation();
        builder.Services.AddAdviceTools();

        var app = builder.Build();
        app.UseMetrics();
        app.UseResponseCompression();
        app.UseSerilogRequestLogging(Logging.ConfigureRequests);
        app.UseMiddleware<ProblemMiddleware>();
        app.UseRequestDecompression();
        app.Use((http, next) =>
        {
            http.Response.OnStarting(() =>
            {
                http.Response.Headers.XContentTypeOptions = "nosniff";
                return Task.CompletedTask;
            });
            return next(http);
        });
        app.UseLoopbackGuard();
        app.UseAdviceDocumentation();
        AdviceRoutes.Map(app);
        ArithmeticRoutes.Map(app);
        BatchRoute.Map(app);
        CatalogueRoutes.Map(app);
        HealthRoutes.Map(app);
        app.UseAdviceTools();
        HomePage.Map(app);
        app.Lifetime.ApplicationStarted.Register(() => Greeting.Print(app.Urls));
        return app;
    }
}
