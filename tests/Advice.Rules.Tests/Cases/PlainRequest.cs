using System.Text.Json;
using System.Text.Json.Serialization;
using Advice.Documents.Requests;
using Advice.Rules.Cases;

namespace Advice.Rules.Tests.Cases;

/// <summary>Reads a request by its shape alone: types and names of members are checked, ranges and ids are not.</summary>
internal static class PlainRequest
{
    private static readonly JsonSerializerOptions Strict = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        Converters = { new FrameConverter() },
    };

    /// <summary>Reads it, or says what is wrong first.</summary>
    public static GivenRequest Read(JsonElement given, DateOnly today)
    {
        try
        {
            return new GivenRequest(given.Deserialize<AdviceRequest>(Strict), []);
        }
        catch (JsonException error)
        {
            return new GivenRequest(null, [(Pointer(error.Path ?? "$"), error.Message)]);
        }
    }

    // "$.symptoms[0].occasions" is "/symptoms/0/occasions".
    private static string Pointer(string path) =>
        path[1..].Replace('[', '/').Replace("]", "", StringComparison.Ordinal).Replace('.', '/').Replace("'", "", StringComparison.Ordinal);
}
