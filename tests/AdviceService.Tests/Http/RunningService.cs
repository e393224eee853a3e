using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Advice.Rules.RuleSets;
using AdviceService.Http;
using Microsoft.AspNetCore.Builder;

namespace AdviceService.Tests.Http;

/// <summary>The service with the repository's rules on a free port of loopback, once in Production and once in Development.</summary>
public sealed class RunningService : IAsyncLifetime
{
    private WebApplication _production = null!;
    private WebApplication _development = null!;

    public HttpClient Client { get; private set; } = null!;

    public HttpClient Development { get; private set; } = null!;

    public IServiceProvider Services => _production.Services;

    public async Task InitializeAsync()
    {
        var rules = RuleSetLoader.Load(Path.Combine(AppContext.BaseDirectory, "rules"));
        (_production, Client) = await StartAsync(rules, "Production");
        (_development, Development) = await StartAsync(rules, "Development");
    }

    public async Task DisposeAsync()
    {
        Client.Dispose();
        Development.Dispose();
        await _production.DisposeAsync();
        await _development.DisposeAsync();
    }

    public static HttpContent Json(string body) => Content(body, "application/json");

    public static HttpContent Content(string body, string mediaType) =>
        new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType) } };

    /// <summary>Asks for advice and expects it.</summary>
    public Task<JsonElement> AdviseAsync(string body) => AskAsync("/v1/advice", body);

    /// <summary>Asks and expects an answer.</summary>
    public async Task<JsonElement> AskAsync(string route, string body)
    {
        var response = await Client.PostAsync(route, Json(body));
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        return JsonDocument.Parse(text).RootElement;
    }

    /// <summary>Asks and expects to be refused for a range or an unknown id.</summary>
    public async Task<JsonElement> RefuseAsync(string route, string body)
    {
        var response = await Client.PostAsync(route, Json(body));
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.UnprocessableEntity, text);
        return JsonDocument.Parse(text).RootElement;
    }

    private static async Task<(WebApplication App, HttpClient Client)> StartAsync(RuleBook rules, string environment)
    {
        var app = AdviceApp.Build(rules, ["--urls", "http://127.0.0.1:0", "--environment", environment]);
        await app.StartAsync();
        var client = new HttpClient { BaseAddress = new Uri(app.Urls.Single()) };
        while (!(await client.GetAsync("/health/ready")).IsSuccessStatusCode)
            await Task.Delay(20);
        return (app, client);
    }
}
