using System.Diagnostics;
using System.Net;
using AdviceService.Tests.Http;
using AdviceService.Tests.Verbs;

namespace AdviceService.Tests.Fleet.Replicas;

/// <summary>Two replicas behind nginx, one of which is killed under load.</summary>
public sealed class ReplicaTests : IDisposable
{
    private const int Requests = 300;
    private const int AtOnce = 6;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("nginx-");

    private static string? Program { get; } = Installed.Find("nginx");

    [SkippableFact]
    public async Task Replicas_OneKilledUnderLoad_EveryRequestEndsWithTheRightAnswer()
    {
        Skip.If(Program is null && Environment.GetEnvironmentVariable("REQUIRE_REPLICAS") is null, "There is no nginx.");
        var (first, second) = (await StartAsync(), await StartAsync());
        var port = Port.Free();
        using var nginx = Process.Start(new ProcessStartInfo(Program!, ["-c", Configuration(port, first.Port, second.Port), "-e", Path.Combine(_folder.FullName, "error.log")]))!;
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}"), Timeout = TimeSpan.FromSeconds(20) };
        var answered = 0;

        var answers = new string[Requests];
        await Parallel.ForAsync(0, Requests, new ParallelOptions { MaxDegreeOfParallelism = AtOnce }, async (i, cancel) =>
        {
            for (var tries = 0; ; tries++)
            {
                try
                {
                    var response = await client.PostAsync("/v1/advice", RunningService.Json(Body(i)), cancel);
                    if (response.StatusCode == HttpStatusCode.OK)
                    {
                        answers[i] = await response.Content.ReadAsStringAsync(cancel);
                        if (Interlocked.Increment(ref answered) == Requests / 3)
                            first.Process.Kill();
                        return;
                    }
                }
                catch (Exception failed) when (failed is HttpRequestException or TaskCanceledException)
                {
                    // Tried again below.
                }

                Assert.True(tries < 50, "The same request failed fifty times.");
                await Task.Delay(100, cancel);
            }
        });

        using var survivor = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{second.Port}") };
        Assert.True(first.Process.HasExited);
        for (var i = 0; i < Requests; i++)
            Assert.Equal(await (await survivor.PostAsync("/v1/advice", RunningService.Json(Body(i)))).Content.ReadAsStringAsync(), answers[i]);
        nginx.Kill();
        second.Process.Kill();
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static string Body(int i) =>
        $$"""{"asOf":"2026-03-01","vehicle":{"modelYear":{{2000 + (i % 20)}}},"complaint":"{{(i % 2 == 0 ? "brakes squeal" : "it overheats in traffic")}}","limit":3}""";

    private string Configuration(int port, params int[] replicas)
    {
        var file = Path.Combine(_folder.FullName, "nginx.conf");
        File.WriteAllText(
            file,
            $$"""
            daemon off;
            master_process off;
            pid {{_folder.FullName}}/pid;
            events {}
            http {
                access_log off;
                client_body_temp_path {{_folder.FullName}}/body;
                proxy_temp_path {{_folder.FullName}}/proxy;
                fastcgi_temp_path {{_folder.FullName}}/fastcgi;
                uwsgi_temp_path {{_folder.FullName}}/uwsgi;
                scgi_temp_path {{_folder.FullName}}/scgi;
                upstream advice { {{string.Concat(replicas.Select(replica => $"server 127.0.0.1:{replica} max_fails=1 fail_timeout=2s; "))}} }
                server {
                    listen 127.0.0.1:{{port}};
                    location / { proxy_pass http://advice; proxy_http_version 1.1; proxy_next_upstream off; }
                }
            }
            """);
        return file;
    }

    private static async Task<(Process Process, int Port)> StartAsync()
    {
        var port = Port.Free();
        var process = Run.Start("--urls", $"http://127.0.0.1:{port}");
        _ = process.StandardError.ReadToEndAsync();
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        while (true)
        {
            try
            {
                if ((await client.GetAsync("/health/ready")).IsSuccessStatusCode)
                    return (process, port);
            }
            catch (HttpRequestException)
            {
                Assert.False(process.HasExited, "The service ended before it was ready.");
            }

            await Task.Delay(50);
        }
    }
}
