using System.CommandLine;
using AdviceService.Http;

namespace AdviceService.Verbs;

/// <summary>The verb "serve": advice over HTTP.</summary>
internal static class ServeVerb
{
    /// <summary>The verb; options that it does not know go to the web host.</summary>
    public static Command Command(RuleOptions rules)
    {
        var serve = new Command("serve", "Serve advice over HTTP (host options such as --urls pass through)") { TreatUnmatchedTokensAsErrors = false };
        serve.SetAction((parsed, cancel) => RunAsync(parsed, rules));
        return serve;
    }

    /// <summary>Serves until it is told to stop.</summary>
    public static async Task<int> RunAsync(ParseResult parsed, RuleOptions rules)
    {
        // The rules are loaded beside the building of the application, which takes as long.
        var loading = Task.Run(() => RuleFolder.Load(rules.Of(parsed)));
        var app = AdviceApp.Build(() => loading.GetAwaiter().GetResult()!, [.. parsed.UnmatchedTokens]);
        if (await loading is null)
            return 1;
        await app.RunAsync();
        return 0;
    }
}
