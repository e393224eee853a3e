using System.Text;
using System.Text.RegularExpressions;

namespace Advice.Rules.Tests;

/// <summary>
/// Every message that the code can put together stands to the letter in an example of these tests or of docs/errors. The messages are read from the
/// source: a new one without an example fails here.
/// </summary>
public partial class MessageGoldenTests
{
    private static readonly string Root = Path.Combine(RepositoryRules.Directory, "..");

    /// <summary>What no file can bring about: guards against faults of our own.</summary>
    private static readonly string[] Guards =
        ["expected a word, a list or a mapping", "another layout would change what the file says, so it stays as it is; write it more plainly"];

    [Fact]
    public void Messages_EachHasAnExample()
    {
        var examples = string.Join('\n', Directory.EnumerateFiles(Path.Combine(Root, "tests"), "*", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Path.Combine(Root, "docs", "errors")))
            .Where(file => Path.GetExtension(file) is ".txt" or ".cs" or ".md" && !IsBuilt(file) && !file.EndsWith($"{nameof(MessageGoldenTests)}.cs", StringComparison.Ordinal))
            .Select(file => File.ReadAllText(file).Replace("\\\"", "\"", StringComparison.Ordinal)));
        var messages = Directory.EnumerateFiles(Path.Combine(Root, "src", "Advice.Rules"), "*.cs", SearchOption.AllDirectories).Where(file => !IsBuilt(file))
            .SelectMany(file => Messages(File.ReadAllText(file))).Distinct().Except(Guards).ToList();

        Assert.True(messages.Count > 100, $"{messages.Count} messages were found: the source is written in another way.");
        Assert.DoesNotContain(messages, message => !Regex.IsMatch(examples, Pattern(message)));
    }

    private static bool IsBuilt(string file) => file.Contains("/obj/", StringComparison.Ordinal) || file.Contains("/bin/", StringComparison.Ordinal);

    /// <summary>The first text of several words in each call that names a code.</summary>
    private static IEnumerable<string> Messages(string source) => Code().Matches(source)
        .Select(code => Texts(source[(code.Index + code.Length)..Math.Min(source.Length, code.Index + 600)]).FirstOrDefault(text => text.Contains(' ', StringComparison.Ordinal)))
        .OfType<string>();

    private static IEnumerable<string> Texts(string call)
    {
        for (var at = 0; at < call.Length && call[at] != ';'; at++)
        {
            if (call[at] != '"')
                continue;
            var (start, holes) = (at + 1, 0);
            for (at++; at < call.Length && (call[at] != '"' || holes > 0); at++)
            {
                if (call[at] == '\\')
                    at++;
                else if (call[start - 2] == '$' && call[at] is '{' or '}' && at + 1 < call.Length && call[at + 1] == call[at] && holes == 0)
                    at++;
                else if (call[start - 2] == '$' && call[at] is '{' or '}')
                    holes += call[at] == '{' ? 1 : -1;
            }

            yield return call[start..Math.Min(at, call.Length)];
        }
    }

    /// <summary>The message with anything in its holes.</summary>
    private static string Pattern(string message)
    {
        var (pattern, depth) = (new StringBuilder(), 0);
        var text = message.Replace("{{", "\u0001", StringComparison.Ordinal).Replace("}}", "\u0002", StringComparison.Ordinal).Replace("\\\"", "\"", StringComparison.Ordinal);
        foreach (var letter in text)
        {
            if (letter == '{' && depth++ == 0)
                pattern.Append("[^\n]*");
            else if (letter == '}')
                depth--;
            else if (depth == 0)
                pattern.Append(letter switch { '\u0001' => "[{]{1,2}", '\u0002' => "[}]{1,2}", _ => Regex.Escape(letter.ToString()) });
        }

        return pattern.ToString();
    }

    [GeneratedRegex(@"(Error|Warning)Code\.\w+,")]
    private static partial Regex Code();
}
