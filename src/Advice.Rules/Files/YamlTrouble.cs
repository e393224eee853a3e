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
        ("node content", "a value is missing before this place, or a bracket was opened and not closed"),
    ];

    private const string Indentation =
        "this line starts in another column than those that it belongs to; the '- ' of all entries stand below each other, and so do the members of one entry";

    private const string Deeper =
        "this line starts further right than the one above, which has its value already; members of one entry stand below each other";

    /// <summary>What is wrong.</summary>
    /// <param name="error">What the parser says.</param>
    /// <param name="text">The text that it read.</param>
    public static string Of(YamlException error, string text)
    {
        var lines = text.Split('\n');
        var line = Line(lines, error.Start.Line - 1);
        if (Says(error, "block collection") || Says(error, "block mapping"))
            return Incomplete(line) ?? Indentation;
        if (Says(error, "invalid mapping"))
            return Above(lines, error.Start.Line - 1, (int)error.Start.Column - 1) ?? "a ': ' stands within a text; put the whole text between double quotes";
        return Known.FirstOrDefault(one => Says(error, one.Part)).Plainly ?? error.Message.TrimEnd('.');
    }

    private static bool Says(YamlException error, string part) => error.Message.Contains(part, StringComparison.OrdinalIgnoreCase);

    /// <summary>What a line lacks that is neither an entry nor a member.</summary>
    private static string? Incomplete(string line)
    {
        var words = line.Trim();
        if (words.StartsWith('-') && !words.StartsWith("- ", StringComparison.Ordinal) && words.Length > 1)
            return "a space is missing after the '-' that starts an entry";
        if (words.StartsWith('-') || words.EndsWith(':') || words.Contains(": ", StringComparison.Ordinal))
            return null;
        return words.Contains(':', StringComparison.Ordinal)
            ? "a space is missing after the ':' of this line"
            : "this line has no ': '; a member is its name, a ': ' and its value";
    }

    /// <summary>A line that was read as going on with the one above, though it looks like a member or an entry of its own.</summary>
    /// <param name="lines">All lines.</param>
    /// <param name="number">Number of the line, from 0.</param>
    /// <param name="colon">Where its ':' stands, from 0.</param>
    private static string? Above(string[] lines, long number, int colon)
    {
        var line = Line(lines, number);
        var name = line[..Math.Min(colon, line.Length)].Trim();
        var before = number - 1;
        while (before > 0 && string.IsNullOrWhiteSpace(lines[before]))
            before--;
        var above = Line(lines, before).TrimEnd();
        if (name.StartsWith("- ", StringComparison.Ordinal) && !above.Contains(':', StringComparison.Ordinal) && above.Length > 0)
            return "the line above has no ':' after the kind of entries";
        return name.Length > 0 && name.All(char.IsLetter) && Indent(line) > Indent(above) && above.Contains(": ", StringComparison.Ordinal) ? Deeper : null;
    }

    private static int Indent(string line) => line.Length - line.TrimStart(' ', '-').Length;

    private static string Line(string[] lines, long number) => number >= 0 && number < lines.Length ? lines[number] : "";
}
