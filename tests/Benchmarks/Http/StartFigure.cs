using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Benchmarks.Http;

/// <summary>From the start of the process to its first advice: with a set of one entry, with the rules, and with the rules on a complaint in words.</summary>
internal static class StartFigure
{
    private const int Starts = 5;
    private const string Anything = """{"vehicle":{}}""";
    private const string Complaint = """{"vehicle":{},"complaint":"There is a loud squeal from the front when I brake and it pulls to the left."}""";

    /// <summary>Medians of wall time and of CPU time, ms, by name; the first is the start that the others are held against.</summary>
    /// <param name="service">Path of AdviceService.dll, as it is published, with its rules beside it.</param>
    public static async Task<IReadOnlyList<(string Name, double Wall, double Cpu)>> TimesAsync(string service)
    {
        var empty = Directory.CreateTempSubdirectory("rules-");
        try
        {
            await File.WriteAllTextAsync(Path.Combine(empty.FullName, "one.yaml"), "systems:\n  - {id: brakes, name: Brakes}\n");
            var rules = Path.Combine(Path.GetDirectoryName(service)!, "rules");
            (string Name, string Rules, string Body)[] ways =
                [("with a set of one entry", empty.FullName, Anything), ("with the rules", rules, Anything), ("with the rules, on a complaint", rules, Complaint)];
            var times = ways.Select(_ => new List<(double Wall, double Cpu)>()).ToList();
            for (var i = 0; i < Starts; i++)
            {
                for (var way = 0; way < ways.Length; way++)
                    times[way].Add(await StartAsync(service, ways[way].Rules, ways[way].Body));
            }

            return [.. ways.Zip(times, (way, own) => (way.Name, Median(own.Select(one => one.Wall)), Median(own.Select(one => one.Cpu))))];
        }
        finally
        {
            empty.Delete(recursive: true);
        }
    }

    private static double Median(IEnumerable<double> values) => values.Order().ElementAt(Starts / 2);

    private static async Task<(double Wall, double Cpu)> StartAsync(string service, string rules, string body)
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
            while (!await IsAnsweredAsync(client, body))
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

    private static async Task<bool> IsAnsweredAsync(HttpClient client, string body)
    {
        try
        {
            using var content = new StringContent(body, null, "application/json");
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
