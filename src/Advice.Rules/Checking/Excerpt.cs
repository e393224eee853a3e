namespace Advice.Rules.Checking;

/// <summary>Shows a message with the line of the file that it is about.</summary>
public static class Excerpt
{
    private const int Width = 100;
    private const int Before = 60;
    private const string Indent = "    ";

    /// <summary>The message, and below it the line and a mark under the place. A line of which only a part fits is cut on either side.</summary>
    /// <param name="error">The message.</param>
    /// <param name="folder">The folder that its path is relative to.</param>
    public static IEnumerable<string> Of(RuleFileError error, string folder)
    {
        yield return error.ToString();
        var path = Path.IsPathRooted(error.File) ? error.File : Path.Combine(folder, error.File);
        if (error.Code == ErrorCode.FileNotRead || !File.Exists(path) || File.ReadLines(path).Skip(error.Line - 1).FirstOrDefault() is not { Length: > 0 } line)
            yield break;
        var from = error.Column - 1 <= Before || line.Length <= Width ? 0 : Math.Min(error.Column - 1 - Before, line.Length - Width);
        var part = line.Substring(from, Math.Min(Width, line.Length - from));
        // A tab is seen by no one and puts the mark out of place.
        yield return $"{Indent}{(from > 0 ? "…" : "")}{part.Replace('\t', '→')}{(from + part.Length < line.Length ? "…" : "")}";
        yield return $"{Indent}{new string(' ', Math.Min(error.Column - 1, line.Length) - from + (from > 0 ? 1 : 0))}^";
    }
}
