using YamlDotNet.Core;

namespace Advice.Rules.Files;

/// <summary>Says what the YAML parser stumbles over in the words of a person who writes rules, not parsers.</summary>
internal static class YamlTrouble
{
    private static readonly (string Part, string Plainly)[] Known =
    [
        ("Duplicate", "the same member stands twice"),
        ("quoted scalar", "a text opens with a quote, and no second quote closes it on its line"),
        ("',' or '}'", "a comma or the closing '}' is missing before this place"),
        ("',' or ']'", "a comma or the closing ']' is missing before this place"),
        ("invalid mapping", "a ': ' stands within a text; put the whole text between double quotes"),
        ("block collection", Indentation),
        ("block mapping", Indentation),
        ("node content", "a value is missing before this place, or a bracket was opened and not closed"),
    ];

    private const string Indentation =
        "this line starts in another column than those that it belongs to; the '- ' of all entries stand below each other, and so do the members of one entry";

    /// <summary>What is wrong.</summary>
    public static string Of(YamlException error) =>
        Known.FirstOrDefault(one => error.Message.Contains(one.Part, StringComparison.OrdinalIgnoreCase)).Plainly ?? error.Message.TrimEnd('.');
}
