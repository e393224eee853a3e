using System.Text;
using System.Text.Json.Nodes;
using Advice.Rules.Files;
using Advice.Rules.Layout;

namespace Advice.Rules.Tests.Layout;

public class FileLayoutTests
{
    private static readonly IReadOnlyList<FileLayout> Repository = FileLayout.Of(RepositoryRules.Directory);

    [Fact]
    public void Of_EveryFile_IsLaidOutWithoutChangingWhatItSays() => Assert.All(Repository, file => Assert.Empty(file.Errors));

    [Fact]
    public void Of_EveryFile_IsInTheLayout() =>
        Assert.All(Repository, file => Assert.True(file.IsCanonical, $"{file.Path}: run `rules fmt`"));

    [Fact]
    public void Of_WhatIsLaidOut_StaysAsItIs() => Assert.All(Repository, file => Assert.True(Of(file.Text!).IsCanonical, file.Path));

    [Fact]
    public void Of_FilesMangled_GivesTheSameAgain() => Assert.All(Repository, file => Assert.Equal(file.Text, Of(Mangled(file.Text!)).Text));

    [Theory]
    [InlineData("cautions:\r\n- {plain: b, id: a,   text: 'hot, wet'}  # why\r\n", "cautions:\n  - {id: a, text: \"hot, wet\", plain: b}  # why\n")]
    [InlineData("shows:\n-   id: a\n    often: often\n    # a word on it\n    fault: b\n", "shows:\n  - id: a\n    # a word on it\n    fault: b\n    often: often\n")]
    [InlineData("# top\n\n\nareas:\n    - id: a\n\n      name: b   \n\n\n    - {name: d, id: c}\n# end\n", "# top\n\nareas:\n  - id: a\n    name: b\n\n  - {id: c, name: d}\n  # end\n")]
    [InlineData("checks:\n  - title: The maker's, {own} way\n    method:\n    - One.\n    -  Two # three\n    id: a\n", "checks:\n  - id: a\n    title: The maker's, {own} way\n    method:\n      - One.\n      - Two # three\n")]
    [InlineData("cautions:\n  - text: 'it''s \"hot\"'\n    id: a\n", "cautions:\n  - id: a\n    text: 'it''s \"hot\"'\n")]
    [InlineData("cautions:\n  - text: |\n       One\n         two\n    id: a\n", "cautions:\n  - id: a\n    text: |\n      One\n        two\n")]
    public void Of_AnyLayout_GivesTheOne(string text, string canonical) => Assert.Equal(canonical, Of(text).Text);

    [Theory]
    [InlineData("cautions:\n  - {id: a\n")]
    [InlineData("cautions:\n  - id: a\n    text: \"two\n\n      paragraphs\"\n")]
    public void Of_WhatCannotBeLaidOut_StaysAndSaysWhy(string text)
    {
        var layout = Of(text);

        Assert.Null(layout.Text);
        Assert.NotEmpty(layout.Errors);
    }

    [Fact]
    public void MemberOrder_NamesExactlyTheMembersOfTheSchemas()
    {
        var rules = JsonNode.Parse(File.ReadAllText(Path.Combine(RepositoryRules.Directory, "rules.schema.json")))!;
        foreach (var (kind, list) in rules["properties"]!.AsObject())
            Assert.Equal(Members(rules, list!["items"]!).Order(StringComparer.Ordinal), MemberOrder.Of(kind).Order(StringComparer.Ordinal));
        var cases = JsonNode.Parse(File.ReadAllText(Path.Combine(RepositoryRules.Directory, "cases.schema.json")))!;
        Assert.Equal(Members(cases, cases["$defs"]!["case"]!).Order(StringComparer.Ordinal), MemberOrder.Of("cases").Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Members(JsonNode schema, JsonNode entry)
    {
        while (entry["$ref"] is { } reference)
            entry = schema["$defs"]![reference.GetValue<string>().Split('/')[^1]]!;
        return entry["properties"]!.AsObject().Select(member => member.Key);
    }

    // Indented by two more, spaces at the ends, blank lines doubled.
    private static string Mangled(string text) => string.Join("\r\n", text.Split('\n').Select(line =>
        line.Length == 0 ? "\r\n" : line.StartsWith(' ') ? $"  {line}  " : line));

    private static FileLayout Of(string text) => FileLayout.Of(new RuleFile("own.yaml", Encoding.UTF8.GetBytes(text)));
}
