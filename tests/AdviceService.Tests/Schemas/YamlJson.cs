using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace AdviceService.Tests.Schemas;

/// <summary>YAML as an editor sees it: the JSON of its core schema. Written apart from the loader, whose reading it is held against.</summary>
internal static partial class YamlJson
{
    /// <summary>The document of a file; null where it is empty.</summary>
    public static JsonNode? Read(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents.Count == 0 ? null : Json(stream.Documents[0].RootNode);
    }

    private static JsonNode? Json(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new JsonObject(mapping.Children.Select(child => KeyValuePair.Create(((YamlScalarNode)child.Key).Value!, Json(child.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Json)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "null" or "~" } => null,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } scalar => JsonValue.Create(scalar.Value == "true"),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: { } value } when Number().IsMatch(value) => JsonValue.Create(decimal.Parse(value, NumberStyles.Float, CultureInfo.InvariantCulture)),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };

    [GeneratedRegex(@"^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$")]
    private static partial Regex Number();
}
