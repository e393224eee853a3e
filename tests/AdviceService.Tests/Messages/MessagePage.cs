using System.Text.RegularExpressions;

namespace AdviceService.Tests.Messages;

/// <summary>A page of docs/errors: a kind of message, a file that yields it with what is said about it, and a file that does not.</summary>
internal sealed partial record MessagePage(string Title, string Severity, string Wrong, string WrongName, string Says, string Right, string RightName)
{
    public static string Folder { get; } = Path.Combine(Repository.Root, "docs", "errors");

    public static MessagePage Read(string code)
    {
        var match = Shape().Match(File.ReadAllText(Path.Combine(Folder, $"{code}.md")));
        Assert.True(match.Success, $"{code}.md has not the parts of a page.");
        return new MessagePage(
            match.Groups["title"].Value, match.Groups["severity"].Value, match.Groups["wrong"].Value, Name(match.Groups["wrongName"]), match.Groups["says"].Value,
            match.Groups["right"].Value, Name(match.Groups["rightName"]));
    }

    private static string Name(Group name) => name.Length == 0 ? "topic.yaml" : name.Value;

    [GeneratedRegex(
        """\A# (?<title>\S+)\n\n(?<severity>Error|Warning)\. [^\n]+\n\n.+?\n\nWrong:\n```yaml ?(?<wrongName>\S*)\n(?<wrong>.+?)```\nsays\n```text\n(?<says>.+?)```\nRight:\n```yaml ?(?<rightName>\S*)\n(?<right>.+?)```\n\z""",
        RegexOptions.Singleline)]
    private static partial Regex Shape();
}
