using System.Text.Encodings.Web;
using System.Text.Json;

namespace AdviceService.Json;

/// <summary>How the service writes JSON.</summary>
internal static class Written
{
    /// <summary>The documents with an encoder that escapes only what JSON needs escaped; answers are never put into HTML.</summary>
    public static AdviceJson As { get; } =
        new(new JsonSerializerOptions(AdviceJson.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, TypeInfoResolver = null });
}
