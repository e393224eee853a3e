using System.Text.Json.Serialization.Metadata;
using Advice.Knowledge.Words;
using AdviceService.Catalogues;
using AdviceService.Http.Problems;
using AdviceService.Json;
using Microsoft.AspNetCore.Mvc;

namespace AdviceService.Http;

/// <summary>The knowledge, readable: what there is and what it says.</summary>
internal static class CatalogueRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        var json = Written.As;
        MapKind(routes, "/v1/catalogue/systems", "System", desk => desk.Entries.Systems, one => one.Id, json.IReadOnlyListSystemEntry, json.SystemEntry);
        MapKind(routes, "/v1/catalogue/symptoms", "Symptom", desk => desk.Entries.Symptoms, one => one.Id, json.IReadOnlyListSymptomEntry, json.SymptomEntry);
        MapKind(routes, "/v1/catalogue/faults", "Fault", desk => desk.Entries.Faults, one => one.Id, json.IReadOnlyListFaultEntry, json.FaultEntry);
        MapKind(routes, "/v1/catalogue/checks", "Check", desk => desk.Entries.Checks, one => one.Id, json.IReadOnlyListCheckEntry, json.CheckEntry);
        MapKind(routes, "/v1/catalogue/cautions", "Caution", desk => desk.Entries.Cautions, one => one.Id, json.IReadOnlyListCautionEntry, json.CautionEntry);
        MapKind(routes, "/v1/rules", "Rule", desk => desk.Entries.Rules, one => one.Id, json.IReadOnlyListRuleEntry, json.RuleEntry);
        routes.MapGet("/v1/rule-set", (HttpContext http, AdviceDesk desk) => Tagged(http, desk, desk.Entries.RuleSet, json.RuleSetDocument))
            .WithName("getRuleSet").WithTags("knowledge").WithSummary("The rule set in use").Produces<RuleSetDocument>().Produces(304);
    }

    private static void MapKind<T>(
        IEndpointRouteBuilder routes, string path, string kind, Func<AdviceDesk, IReadOnlyList<T>> entries, Func<T, string> id,
        JsonTypeInfo<IReadOnlyList<T>> list, JsonTypeInfo<T> entry)
        where T : class
    {
        routes.MapGet(path, (HttpContext http, AdviceDesk desk) => Tagged(http, desk, entries(desk), list))
            .WithName($"list{kind}s").WithTags("knowledge").WithSummary($"All entries of kind {kind.ToLowerInvariant()}, by id")
            .Produces<IReadOnlyList<T>>().Produces(304);
        routes.MapGet($"{path}/{{id}}", ([FromRoute(Name = "id")] string wanted, HttpContext http, AdviceDesk desk) => One(wanted, http, desk))
            .WithName($"get{kind}").WithTags("knowledge").WithSummary($"One entry of kind {kind.ToLowerInvariant()}")
            .Produces<T>().Produces(304).Produces<ProblemDocument>(404, ProblemResult.MediaType);

        IResult One(string wanted, HttpContext http, AdviceDesk desk)
        {
            if (entries(desk).FirstOrDefault(one => id(one) == wanted) is { } found)
                return Tagged(http, desk, found, entry);
            var near = NearestWord.Ids(wanted, entries(desk).Select(id));
            return new ProblemResult(ProblemDocument.Of(
                404, "unknown-id", near.Count == 0 ? $"Known ids are listed at {path}." : $"The nearest known ids are {string.Join(", ", near)}."));
        }
    }

    private static IResult Tagged<T>(HttpContext http, AdviceDesk desk, T document, JsonTypeInfo<T> type)
    {
        var tag = $"\"{desk.Revision}\"";
        http.Response.Headers.ETag = tag;
        http.Response.Headers.CacheControl = "no-cache";
        return http.Request.Headers.IfNoneMatch.ToString().Split(',').Select(one => one.Trim()).Any(one => one == tag || one == $"W/{tag}" || one == "*")
            ? Results.StatusCode(StatusCodes.Status304NotModified)
            : new JsonResult<T>(document, type);
    }
}
