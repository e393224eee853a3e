using System.Text;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Layout;

/// <summary>A rule or case file brought into the canonical layout.</summary>
/// <param name="Path">Path of the file below its folder.</param>
/// <param name="Text">Its text in that layout; null where it must stay as it is.</param>
/// <param name="IsCanonical">Whether it has that layout already.</param>
/// <param name="Errors">Why it must stay: it cannot be read, or the layout would change what it says.</param>
public sealed record FileLayout(string Path, string? Text, bool IsCanonical, IReadOnlyList<RuleFileError> Errors)
{
    /// <summary>The files of a folder, by path.</summary>
    public static IReadOnlyList<FileLayout> Of(string directory)
    {
        var problems = new Problems();
        var files = RuleFolder.Read(directory, problems).Select(Of).ToList();
        return [.. problems.InOrder.Select(error => new FileLayout(error.File, null, false, [error])), .. files];
    }

    /// <summary>One file.</summary>
    public static FileLayout Of(RuleFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var problems = new Problems();
        var before = YamlReader.Read(file, problems);
        if (before is null || !problems.None)
            return new(file.Path, null, false, problems.InOrder);
        var text = CanonicalLayout.Of(Encoding.UTF8.GetString(file.Content.Span));
        var bytes = Encoding.UTF8.GetBytes(text);
        if (YamlReader.Read(file with { Content = bytes }, problems) is { } after && problems.None && SaysTheSame(before, after))
            return new(file.Path, text, file.Content.Span.SequenceEqual(bytes), []);
        return new(file.Path, null, false, [new(file.Path, 1, 1, ErrorCode.FileNotRead, "another layout would change what the file says, so it stays as it is; write it more plainly", null)]);
    }

    /// <summary>Whether two nodes say the same; the order of members says nothing.</summary>
    private static bool SaysTheSame(Node one, Node other) => (one, other) switch
    {
        (ScalarNode a, ScalarNode b) => a.Value == b.Value && a.Plain == b.Plain,
        (ListNode a, ListNode b) => a.Items.Count == b.Items.Count && a.Items.Zip(b.Items).All(pair => SaysTheSame(pair.First, pair.Second)),
        (MappingNode a, MappingNode b) => a.Members.Count == b.Members.Count
            && a.Members.All(member => b[member.Key.Value] is { } value && SaysTheSame(member.Value, value)),
        _ => false,
    };
}
