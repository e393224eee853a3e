using System.Text;

namespace Advice.Rules.Layout;

/// <summary>The marks of YAML within one line: quotes, brackets and comments.</summary>
internal static class LineText
{
    /// <summary>Cuts the inside of a flow mapping at its own commas; null where the line does not hold the whole mapping.</summary>
    /// <param name="text">Text that starts with the opening brace.</param>
    /// <param name="rest">What stands after the closing brace.</param>
    public static IReadOnlyList<string>? Members(string text, out string rest)
    {
        var (members, depth, start) = (new List<string>(), 0, 1);
        rest = "";
        foreach (var (at, mark) in Marks(text))
        {
            depth += mark is '{' or '[' ? 1 : mark is '}' or ']' ? -1 : 0;
            if ((depth, mark) is (1, ',') or (0, '}'))
            {
                members.Add(text[start..at].Trim());
                start = at + 1;
            }

            if (depth > 0)
                continue;
            rest = text[(at + 1)..];
            return [.. members.Where(member => member.Length > 0)];
        }

        return null;
    }

    /// <summary>The line with double quotes where single ones do the same.</summary>
    public static string WithDoubleQuotes(string line)
    {
        var result = new StringBuilder(line);
        foreach (var (at, mark) in Marks(line).Where(one => one.Mark == '\''))
        {
            var end = line.IndexOf('\'', at + 1);
            if (end < 0 || (end + 1 < line.Length && line[end + 1] == '\'') || line[at..end].AsSpan().IndexOfAny('"', '\\') >= 0)
                continue;
            (result[at], result[end]) = ('"', '"');
        }

        return result.ToString();
    }

    /// <summary>Brackets, commas and opening single quotes that are marks and not part of a word or of quoted text, up to a comment.</summary>
    private static IEnumerable<(int At, char Mark)> Marks(string text)
    {
        var before = ' ';
        var depth = 0;
        for (var at = 0; at < text.Length; at++)
        {
            var letter = text[at];
            var starts = before is ':' or ',' or '[' or '{' or '-' or ' ';
            if (letter is '"' or '\'' && starts)
            {
                if (letter == '\'')
                    yield return (at, letter);
                at = End(text, at);
                before = 'x';
                continue;
            }

            if (letter == '#' && (at == 0 || text[at - 1] == ' '))
                yield break;
            if (letter is '{' or '[' && (depth > 0 || starts))
                depth++;
            if (letter is '{' or '[' or '}' or ']' or ',')
                yield return (at, letter);
            before = letter == ' ' && before is not (':' or ',' or '[' or '{' or '-' or ' ') ? 'x' : letter == ' ' ? before : letter;
        }
    }

    private static int End(string text, int start)
    {
        for (var at = start + 1; at < text.Length; at++)
        {
            if (text[at] == '\\' && text[start] == '"')
                at++;
            else if (text[at] == text[start])
            {
                if (text[start] == '"' || at + 1 >= text.Length || text[at + 1] != '\'')
                    return at;
                at++;
            }
        }

        return text.Length;
    }
}
