using Advice.Rules.Checking;

namespace Advice.Rules.Tests;

/// <summary>A message is shown with the line that it is about, and a mark under the place.</summary>
public class ExcerptTests
{
    private static readonly string Long = $"  - {{id: pads, because: {new string('x', 80)}, fault: pads-wron, symptom: squeal, often: usually, source: judgement}}";

    [Theory]
    [InlineData("shows: []\n\tid: pads\n", 2, 1, "    →id: pads", "    ^")]
    [InlineData("shows:\n  - {id: pads, fault: pads-wron}\n", 2, 22, "      - {id: pads, fault: pads-wron}", "                         ^")]
    [InlineData("shows:\n", 1, 7, "    shows:", "          ^")]
    [InlineData("shows:\n  - id: ä, fault: pads\n", 2, 15, "      - id: ä, fault: pads", "                  ^")]
    public void Of_Place_ShowsItsLineAndMarksIt(string file, int line, int column, string excerpt, string mark) =>
        Assert.Equal(["topic.yaml(LINE,COLUMN): error unknown-id: wrong".Replace("LINE", $"{line}", StringComparison.Ordinal).Replace("COLUMN", $"{column}", StringComparison.Ordinal), excerpt, mark], Shown(file, line, column));

    /// <summary>Of a long line what stands around the place is shown, and the mark is under it all the same.</summary>
    [Fact]
    public void Of_LongLine_ShowsWhatStandsAroundThePlace()
    {
        var shown = Shown($"shows:\n{Long}\n", 2, Long.IndexOf("pads-wron", StringComparison.Ordinal) + 1);

        Assert.Equal((3, '…'), (shown.Count, shown[1][4]));
        Assert.StartsWith("pads-wron", shown[1][shown[2].IndexOf('^', StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.InRange(shown[1].Length, 100, 106);
    }

    [Fact]
    public void Of_FileThatIsGone_IsTheMessageAlone() =>
        Assert.Single(Excerpt.Of(new RuleFileError("gone.yaml", 1, 1, ErrorCode.UnknownId, "wrong"), Path.GetTempPath()));

    private static List<string> Shown(string text, int line, int column)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.WriteAllText(Path.Combine(folder.FullName, "topic.yaml"), text);
        List<string> shown = [.. Excerpt.Of(new RuleFileError("topic.yaml", line, column, ErrorCode.UnknownId, "wrong"), folder.FullName)];
        folder.Delete(recursive: true);
        return shown;
    }
}
