using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace Container;

/// <summary>The service in a container with a read-only root and few rights: it answers, and it stops when it is told to.</summary>
public sealed class ServiceContainerTests(ServiceImage image) : IClassFixture<ServiceImage>
{
    [SkippableFact]
    public async Task Gives_advice()
    {
        await using var container = await image.StartAsync();
        using var client = ServiceImage.Client(container);

        using var response = await client.PostAsJsonAsync(
            new Uri("/v1/advice", UriKind.Relative), new { vehicle = new { }, complaint = "squeal when braking" });

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        var advice = await response.Content.ReadFromJsonAsync<JsonElement>();
        Assert.NotEqual(0, advice.GetProperty("steps").GetArrayLength());
    }

    [SkippableFact]
    public async Task Runs_without_rights_on_a_read_only_root()
    {
        await using var container = await image.StartAsync();

        // Asked of the running process: what was configured is not always what holds.
        var status = Fields((await container.ExecAsync(["cat", "/proc/1/status"])).Stdout);
        var mounts = (await container.ExecAsync(["cat", "/proc/1/mounts"])).Stdout.Split('\n').Select(line => line.Split(' '));

        Assert.All(status["Uid"].Split('\t'), user => Assert.NotEqual("0", user));
        Assert.All(status["Gid"].Split('\t'), group => Assert.NotEqual("0", group));
        Assert.Equal(0UL, Convert.ToUInt64(status["CapEff"], 16));
        Assert.Equal("1", status["NoNewPrivs"]);
        var root = Assert.Single(mounts, mount => mount is [_, "/", ..]);
        Assert.Contains("ro", root[3].Split(','));
    }

    [SkippableFact]
    public async Task Ends_with_exit_code_0_on_the_stop_signal()
    {
        await using var container = await image.StartAsync();

        await container.StopAsync();

        Assert.Equal(0, await container.GetExitCodeAsync());
    }

    [SkippableFact]
    public async Task Keeps_its_address_when_options_are_added()
    {
        await using var container = await image.StartAsync("--rules", "/app/rules");
        using var client = ServiceImage.Client(container);

        Assert.Equal("live", await client.GetStringAsync(new Uri("/health/live", UriKind.Relative)));
    }

    private static Dictionary<string, string> Fields(string lines) =>
        lines.Split('\n').Select(line => line.Split(':', 2)).Where(pair => pair.Length == 2).ToDictionary(pair => pair[0], pair => pair[1].Trim());
}
