using System.Text.Json;
using Advice;
using Advice.Rules.Cases;
using AdviceService.Http;
using AdviceService.Json;
using AdviceService.Requests;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Benchmarks.Http;

/// <summary>The service as it is in production, with one more route that reads the same request and returns a canned reply.</summary>
internal static class CannedService
{
    public const string Route = "/canned";

    public static void Run(Corpus corpus)
    {
        var reply = ReplyOfMeanSize(corpus);
        var reader = new RequestReader(corpus.Book.Catalogue);
        var app = AdviceApp.Build(corpus.Book, ["--urls", "http://127.0.0.1:0"]);
        app.MapPost(Route, async (HttpRequest request) =>
        {
            if (reader.Read(await RequestBytes.ReadAsync(request), CaseClock.Today).Value is null)
                throw new InvalidOperationException("A request of the corpus was refused.");
            request.HttpContext.Response.ContentType = "application/json";
            request.HttpContext.Response.ContentLength = reply.Length;
            await request.HttpContext.Response.Body.WriteAsync(reply);
        });
        app.Lifetime.ApplicationStarted.Register(() => Console.WriteLine($"urls {app.Urls.First()}"));
        app.Run();
    }

    private static byte[] ReplyOfMeanSize(Corpus corpus)
    {
        var give = new GiveAdvice(corpus.Book, new CaseClock());
        var replies = corpus.Requests.Select(request => JsonSerializer.SerializeToUtf8Bytes(give.To(request), Written.As.AdviceDocument)).ToList();
        var mean = replies.Average(reply => reply.Length);
        return replies.MinBy(reply => Math.Abs(reply.Length - mean))!;
    }
}
