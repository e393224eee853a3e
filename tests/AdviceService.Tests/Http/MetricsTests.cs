using System.Net;
using System.Text.RegularExpressions;
using Advice.Evidence;
using Advice.Rules.RuleSets;
using AdviceService.Http;
using Microsoft.Extensions.DependencyInjection;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public sealed class MetricsTests(RunningService service)
{
    private RuleBook Rules => (RuleBook)service.Services.GetRequiredService<IRuleBook>();

    [Fact]
    public async Task Metrics_OnTheManagementPort_CountRequestsNameTheRuleSetAndAreAlone()
    {
        var management = $"http://127.0.0.1:{Port.Free()}";
        await using var app = AdviceApp.Build(Rules, ["--urls", "http://127.0.0.1:0", "--management", management]);
        await app.StartAsync();
        using var caller = new HttpClient { BaseAddress = new Uri(app.Urls.First(url => url != management)) };
        using var operators = new HttpClient { BaseAddress = new Uri(management) };
        for (var i = 0; i < 3; i++)
            await caller.GetAsync("/v1/rule-set");

        var metrics = await operators.GetStringAsync("/metrics");

        Assert.Contains($"advice_rule_set_info{{revision=\"{Rules.Revision}\"}} 1", metrics, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await operators.GetAsync("/v1/rule-set")).StatusCode);
        Assert.Matches(new Regex("""http_request_duration_seconds_count\{[^}]*endpoint="/v1/rule-set"[^}]*\} 3"""), metrics);
    }

    [Fact]
    public async Task Metrics_OnThePublicPort_AreNotThere()
    {
        var management = Port.Free();
        await using var app = AdviceApp.Build(Rules, ["--urls", "http://127.0.0.1:0", "--management", $"http://127.0.0.1:{management}"]);
        await app.StartAsync();
        using var caller = new HttpClient { BaseAddress = new Uri(app.Urls.First(url => !url.EndsWith($":{management}", StringComparison.Ordinal))) };
        using var disguised = new HttpRequestMessage(HttpMethod.Get, "/metrics") { Headers = { Host = $"127.0.0.1:{management}" } };

        Assert.Equal(HttpStatusCode.NotFound, (await caller.SendAsync(disguised)).StatusCode);
    }
}
