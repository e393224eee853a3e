using System.Text.Json;
using System.Text.Json.Serialization;

namespace AdviceService.Json;

/// <summary>Writes an enum as its name in camel case and reads nothing else.</summary>
internal sealed class CamelCaseEnum<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.CamelCase, allowIntegerValues: false)
    where T : struct, Enum;
