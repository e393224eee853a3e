using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Benchmarks.Http;

/// <summary>From the start of the process to its first advice, with the rules and with a set of one entry.</summary>
internal static class StartFigure
{
    private const int Starts = 5;

    /// <summary>Medians of wall time and of CPU time, ms.</summary>
    /// <param name="service">Path of AdviceService.dll, as it is published, with its rules beside it.</param>
    public static async Task<(double Wall, double Cpu, double EmptyWall, double EmptyCpu)> TimesAsync(string service)
    {
        var empty = Directory.CreateTempSubdirectory("rules-");
        try
        {
            await File.WriteAllTextAsync(Path.Combine(empty.FullName, "one.yaml"), "systems:\n  - {id: brakes, name: Brakes}\n");
            var (full, none) = (new List<(double Wall, double Cpu)>(), new List<(double Wall, double Cpu)>());
            for (var i = 0; i < Starts; i++)
            {
                full.Add(await StartAsync(service, Path.Combine(Path.GetDirectoryName(service)!, "rules")));
                none.Add(await StartAsync(service, empty.FullName));
            }

            return (Median(full.Select(one => one.Wall)), Median(full.Select(one => one.Cpu)), Median(none.Select(one => one.Wall)), Median(none.Select(one => one.Cpu)));
        }
        finally
        {
            empty.Delete(recursive: true);
        }
    }

    private static double Median(IEnumerable<double> values) => values.Order().ElementAt(Starts / 2);

    private static async Task<(double Wall, double Cpu)> StartAsync(string service, string rules)
    {
        var url = $"http://127.0.0.1:{FreePort()}";
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo("dotnet", [service, "serve", "--rules", rules, "--urls", url])
        { RedirectStandardOutput = true, RedirectStandardError = true })!;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        try
        {
            using var client = new HttpClient { BaseAddress = new Uri(url) };
            while (!await IsAnsweredAsync(client))
                await Task.Delay(5);
            var wall = clock.Elapsed;
            process.Refresh();
            return (wall.TotalMilliseconds, process.TotalProcessorTime.TotalMilliseconds);
        }
        finally
        {
            process.Kill();
        }
    }

    private static async Task<bool> IsAnsweredAsync(HttpClient client)
    {
        try
        {
            using var content = new StringContent("""{"vehicle":{}}""", null, "application/json");
            using var answer = await client.PostAsync("/v1/advice", content);
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
