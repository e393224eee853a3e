using System.Diagnostics;
using System.Net.Http.Headers;

namespace Benchmarks.Http;

/// <summary>CPU time of the server for each request, for the advice and for the canned reply.</summary>
internal static class HttpFigure
{
    private const int Connections = 4;
    private const int Rounds = 5;

    public static async Task<Dictionary<string, double>> TimesAsync(Corpus corpus)
    {
        using var server = Process.Start(new ProcessStartInfo("dotnet", [typeof(HttpFigure).Assembly.Location, "serve"])
        { RedirectStandardOutput = true, RedirectStandardError = true })!;
        server.ErrorDataReceived += (_, _) => { };
        server.BeginErrorReadLine();
        try
        {
            string? line;
            do
                line = await server.StandardOutput.ReadLineAsync();
            while (line is not null && !line.StartsWith("urls ", StringComparison.Ordinal));
            using var client = new HttpClient { BaseAddress = new Uri(line!["urls ".Length..]) };
            string[] routes = ["/v1/advice", CannedService.Route];
            foreach (var route in routes)
                await SendAllAsync(client, route, corpus, times: 4);
            var rounds = routes.ToDictionary(route => route, _ => new List<double>());
            for (var round = 0; round < Rounds; round++)
            {
                foreach (var route in routes)
                {
                    server.Refresh();
                    var before = server.TotalProcessorTime;
                    await SendAllAsync(client, route, corpus, times: 1);
                    server.Refresh();
                    rounds[route].Add((server.TotalProcessorTime - before).TotalMicroseconds / corpus.Bodies.Count);
                }
            }

            return rounds.ToDictionary(one => one.Key, one => one.Value.Order().ElementAt(Rounds / 2));
        }
        finally
        {
            server.Kill();
        }
    }

    private static async Task SendAllAsync(HttpClient client, string route, Corpus corpus, int times)
    {
        var bodies = Enumerable.Repeat(corpus.Bodies, times).SelectMany(one => one);
        await Parallel.ForEachAsync(bodies, new ParallelOptions { MaxDegreeOfParallelism = Connections }, async (body, cancel) =>
        {
            using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
            using var answer = await client.PostAsync(route, content, cancel);
            answer.EnsureSuccessStatusCode();
            await answer.Content.ReadAsByteArrayAsync(cancel);
        });
    }
}
