using System.Net;
using AdviceService.Http.Problems;

namespace AdviceService.Mcp;

/// <summary>A service on loopback answers chat hosts on this machine alone: a page in a browser that had its own name pointed here is refused
/// (the DNS rebinding of the protocol's security notes). Where AllowedHosts is set, that decides.</summary>
internal static class LoopbackGuard
{
    public static void UseLoopbackGuard(this WebApplication app)
    {
        if (app.Configuration["AllowedHosts"] is { Length: > 0 } and not "*")
            return;
        app.UseWhen(http => http.Request.Path.StartsWithSegments("/mcp"), mcp => mcp.Use(async (http, next) =>
        {
            if (http.Connection.LocalIpAddress is { } own && IPAddress.IsLoopback(own) && !(IsHere(http.Request.Host.Host) && IsHere(http.Request.Headers.Origin)))
                await new ProblemResult(ProblemDocument.Of(403, "wrong-host", "Reached through loopback, this address answers localhost alone; AllowedHosts names others.")).ExecuteAsync(http);
            else
                await next(http);
        }));
    }

    private static bool IsHere(string? host)
    {
        var name = Uri.TryCreate(host, UriKind.Absolute, out var origin) && origin.Host.Length > 0 ? origin.Host : host;
        return string.IsNullOrEmpty(name) || name == "localhost" || (IPAddress.TryParse(name.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));
    }
}
