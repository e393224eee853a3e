namespace Advice.Rules.Layout;

/// <summary>The one layout of rule and case files. It works on lines, so that comments stay; <see cref="FileLayout"/> sees that nothing else changes.</summary>
internal static class CanonicalLayout
{
    /// <summary>The text in that layout: two spaces a level, members in the order of their kind, double quotes, at most one blank line, none
    /// within an entry, no space at the end of a line. Where lines break stays with the author.</summary>
    public static string Of(string text)
    {
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select(line => LineText.WithDoubleQuotes(line.TrimEnd())).ToList();
        var result = new List<string>();
        var keys = lines.Index().Where(line => IsKey(line.Item)).Select(line => StartOfComment(lines, line.Index)).ToList();
        for (var i = 0; i < keys.Count; i++)
            result.AddRange(Section(lines[(i == 0 ? 0 : keys[i])..(i + 1 < keys.Count ? keys[i + 1] : lines.Count)]));
        return string.Join('\n', WithoutDoubleBlanks(result)).Trim('\n') + "\n";
    }

    private static IEnumerable<string> Section(List<string> lines)
    {
        var key = lines.FindIndex(IsKey);
        var kind = lines[key].Split(':')[0];
        return lines[..(key + 1)].Concat(Blocks(Indented(lines[(key + 1)..], 2)).SelectMany(block => Entry(kind, block)));
    }

    /// <summary>The comment lines before each entry, and each entry with its lines.</summary>
    private static IEnumerable<List<string>> Blocks(List<string> lines)
    {
        var block = new List<string>();
        foreach (var line in lines)
        {
            if (Indentation(line) <= 2 && block.Count > 0)
            {
                yield return block;
                block = [];
            }

            block.Add(line);
        }

        if (block.Count > 0)
            yield return block;
    }

    private static IEnumerable<string> Entry(string kind, List<string> lines)
    {
        var blanks = lines.AsEnumerable().Reverse().TakeWhile(line => line.Length == 0).Count();
        var own = lines[..^blanks].Where(line => line.Length > 0).ToList();
        if (own is [var flow] && flow.StartsWith("  - {", StringComparison.Ordinal) && LineText.Members(flow[4..], out var rest) is { } members)
            return [$"  - {{{string.Join(", ", MemberOrder.Sort(kind, members, Name))}}}{rest}", .. lines[^blanks..]];
        if (own.Count < 2 || !own[0].StartsWith("  - ", StringComparison.Ordinal))
            return [.. own, .. lines[^blanks..]];
        own[0] = $"    {own[0][4..]}";
        var sorted = MemberOrder.Sort(kind, Members(own), member => member.Name).SelectMany(member => member.Lines).ToList();
        // A comment that came to stand first cannot follow the dash.
        var first = sorted.FindIndex(line => !line.TrimStart().StartsWith('#'));
        return [.. sorted[..first].Select(line => line[2..]), $"  - {sorted[first][4..]}", .. sorted[(first + 1)..], .. lines[^blanks..]];
    }

    /// <summary>Members of a block entry: comment lines, then the line of the member with those below it.</summary>
    private static List<(string Name, List<string> Lines)> Members(List<string> lines)
    {
        var members = new List<(string Name, List<string> Lines)>();
        var comments = new List<string>();
        foreach (var line in lines)
        {
            if (Indentation(line) > 4 && members.Count > 0)
            {
                members[^1].Lines.AddRange([.. comments, line]);
                comments = [];
            }
            else if (line.TrimStart().StartsWith('#'))
                comments.Add(line);
            else
            {
                members.Add((Name(line.TrimStart()), [.. comments, line]));
                comments = [];
            }
        }

        // What ends an entry stays behind its last member.
        members[^1].Lines.AddRange(comments);
        return members;
    }

    /// <summary>The lines with their outermost ones at an indentation and two spaces for each level below.</summary>
    private static List<string> Indented(List<string> lines, int indentation)
    {
        var result = new List<string>();
        var outermost = lines.Where(line => line.Length > 0 && !line.TrimStart().StartsWith('#')).Select(Indentation).DefaultIfEmpty(0).Min();
        for (var at = 0; at < lines.Count;)
        {
            var line = lines[at++];
            var below = new List<string>();
            while (at < lines.Count && (lines[at].Length == 0 || Indentation(lines[at]) > outermost || IsListBelow(line, lines[at], outermost)))
                below.Add(lines[at++]);
            if (line.Length == 0)
            {
                result.Add(line);
                result.AddRange(below);
                continue;
            }

            var content = line.TrimStart();
            var prefix = new string(' ', indentation);
            if (content.StartsWith("- ", StringComparison.Ordinal))
            {
                var width = content.Length - content[2..].TrimStart().Length;
                var item = Indented([new string(' ', outermost + width) + content[width..], .. below], indentation + 2);
                result.AddRange([$"{prefix}- {item[0].TrimStart()}", .. item[1..]]);
                continue;
            }

            result.Add(prefix + content);
            result.AddRange(EndsInText(content) ? Shifted(below, indentation + 2) : Indented(below, indentation + 2));
        }

        return result;
    }

    // A list may stand as far left as the member that holds it.
    private static bool IsListBelow(string member, string line, int outermost) =>
        Indentation(line) == outermost && line.TrimStart().StartsWith("- ", StringComparison.Ordinal) && member.EndsWith(':')
        && !member.TrimStart().StartsWith("- ", StringComparison.Ordinal);

    private static bool EndsInText(string content) => content.Split(' ')[^1].TrimEnd('-', '+') is "|" or ">";

    private static IEnumerable<string> Shifted(List<string> lines, int indentation)
    {
        var outermost = lines.Where(line => line.Length > 0).Select(Indentation).DefaultIfEmpty(0).Min();
        return lines.Select(line => line.Length == 0 ? line : new string(' ', indentation) + line[outermost..]);
    }

    private static IEnumerable<string> WithoutDoubleBlanks(List<string> lines) => lines.Where((line, i) => line.Length > 0 || (i > 0 && lines[i - 1].Length > 0));

    private static bool IsKey(string line) => line.Length > 0 && line[0] is not (' ' or '#' or '-');

    private static int StartOfComment(List<string> lines, int key)
    {
        while (key > 0 && lines[key - 1].StartsWith('#'))
            key--;
        return key;
    }

    private static int Indentation(string line) => line.Length == 0 ? int.MaxValue : line.Length - line.TrimStart(' ').Length;

    private static string Name(string member) => member.Split(':')[0].Trim('"', ' ');
}
