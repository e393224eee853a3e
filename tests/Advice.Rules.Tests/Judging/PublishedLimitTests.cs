using Advice.Judging;

namespace Advice.Rules.Tests.Judging;

public class PublishedLimitTests
{
    private static readonly FindingsReader Findings = new(RepositoryRules.Book.Catalogue);

    public static TheoryData<string> Rows => [.. Published.Rows];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Read_ValueAtAPublishedLimit_HasItsClass(string row)
    {
        var published = Published.Read(row);

        var judgement = Findings.Read([published.Finding], published.Case).Judgements[0];

        Assert.True(judgement.Judged, judgement.Note);
        Assert.True(published.Class == judgement.Deficiency, $"{judgement.Deficiency} by {judgement.Limit} ({judgement.Source}); margin {judgement.Margin} {judgement.Unit}");
        Assert.NotEqual("", judgement.Action);
    }

    [Fact]
    public void Rows_AreManyAndFromManyChecks()
    {
        Assert.True(Published.Rows.Count >= 120);
        Assert.True(Published.Rows.Select(row => Published.Read(row).Finding.Check).Distinct().Count() >= 30);
    }
}
