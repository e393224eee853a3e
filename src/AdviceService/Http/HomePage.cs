namespace AdviceService.Http;

/// <summary>The front door for people.</summary>
internal static class HomePage
{
    private const string Html =
        """
        <!doctype html>
        <html lang="en">
        <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>AdviceService</title>
        <style>body{font:1.1rem/1.6 system-ui,sans-serif;max-width:40rem;margin:3rem auto;padding:0 1rem}</style></head>
        <body><main>
        <h1>AdviceService</h1>
        <p>Vehicle-maintenance advice: what to inspect first on this vehicle, how, with which cautions and for which reason.</p>
        <ul>
        <li><a href="docs">All routes, to read and to try</a></li>
        <li><a href="openapi/v1.json">Their description (OpenAPI 3.1)</a></li>
        <li><a href="v1/catalogue/symptoms">Symptoms</a>, <a href="v1/catalogue/faults">faults</a>, <a href="v1/catalogue/checks">checks</a>,
        <a href="v1/catalogue/cautions">cautions</a>, <a href="v1/rules">rules</a>, <a href="v1/rule-set">rule set</a></li>
        </ul>
        <p>The vehicle maker's manual, local codes and licensed people who see the vehicle come before this advice.</p>
        </main></body></html>
        """;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/", () => Results.Text(Html, "text/html")).ExcludeFromDescription();
}
