using Advice.Rules.Cases;
using Advice.Rules.Checking;
using Advice.Rules.RuleSets;
using AdviceService.Requests;

namespace AdviceService.Tests.Messages;

/// <summary>Each kind of message about rule files has a page whose examples do what the page says.</summary>
public class MessagePageTests
{
    private static readonly string Words = Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml");

    private static readonly SortedSet<string> All =
    [
        .. new[] { typeof(Advice.Rules.Checking.ErrorCode), typeof(WarningCode) }.SelectMany(kinds => kinds.GetFields()).Where(field => field.IsLiteral)
            .Select(field => (string)field.GetRawConstantValue()!),
    ];

    public static TheoryData<string> Codes => [.. All];

    [Fact]
    public void Pages_AreOneForEachCode() =>
        Assert.Equal(All, Directory.GetFiles(MessagePage.Folder).Select(file => Path.GetFileNameWithoutExtension(file)!).Where(name => name != "README").ToHashSet());

    [Fact]
    public void Index_NamesEachPageUnderItsSeverity()
    {
        var parts = File.ReadAllText(Path.Combine(MessagePage.Folder, "README.md")).Split("## Warnings");

        Assert.All(All, code => Assert.Equal((!IsWarning(code), IsWarning(code)), (Links(parts[0], code), Links(parts[1], code))));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Page_ExamplesDoWhatItSays(string code)
    {
        var page = MessagePage.Read(code);

        var said = Said(page.Wrong, page.WrongName);
        Assert.Equal((code, IsWarning(code) ? "Warning" : "Error"), (page.Title, page.Severity));
        Assert.Contains(said, message => message.Code == code);
        Assert.Equal(page.Says, string.Concat(said.Select(message => $"{message}\n")));
        Assert.Empty(Said(page.Right, page.RightName));
    }

    private static bool IsWarning(string code) => WarningCode.All.Contains(code);

    private static bool Links(string index, string code) => index.Contains($"[{code}]({code}.md)", StringComparison.Ordinal);

    /// <summary>What the reader of rules and cases says about a file beside the shared words.</summary>
    private static IReadOnlyList<RuleFileError> Said(string text, string name)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            File.Copy(Words, Path.Combine(folder.FullName, "words.yaml"));
            File.WriteAllText(Path.Combine(folder.FullName, name), text);
            var reviewed = RuleSetLoader.Review(folder.FullName);
            var reader = new RequestReader(reviewed.Book.Catalogue);
            var cases = CaseFolder.Read(folder.FullName, reviewed.Book.Catalogue, (given, today) =>
            {
                var read = reader.Read(given, today);
                return new GivenRequest(read.Value, [.. read.Errors.Select(error => (error.Pointer, error.Detail))]);
            });
            return [.. reviewed.Warnings, .. cases.Errors];
        }
        catch (RuleSetException broken)
        {
            return broken.Errors;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
