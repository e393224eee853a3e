using Advice.Documents.Requests;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Limits;

namespace Advice.Rules.Tests.Published;

/// <summary>Holds the limits of the rules against values written down from their sources.</summary>
public class LimitValueTests
{
    private static readonly Catalogue Catalogue = RepositoryRules.Book.Catalogue;
    private static readonly FindingJudge Judge = new(Catalogue, new LimitChoice(Catalogue));

    public static TheoryData<string> Lines => [.. CheckValue.Lines];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Judge_ValueAtTheLimitAndBeyondIt_FailsOnlyBeyond(string line)
    {
        var row = CheckValue.Read(line);

        Assert.InRange(ClassOf(row, row.Good), Deficiency.None, row.Class - 1);
        Assert.Equal(row.Class, ClassOf(row, row.Bad));
    }

    [Fact]
    public void Lines_EveryRow_NamesItsSource() => Assert.All(CheckValue.Lines, line => Assert.NotEmpty(CheckValue.Read(line).Source));

    [Fact]
    public void Limits_EveryLawThatWasRead_HasACheckValue()
    {
        var rows = CheckValue.Lines.Select(CheckValue.Read).Select(row => (row.Check, row.Jurisdiction)).ToHashSet();
        var unheld = Catalogue.LimitsByCheck.SelectMany(limits => limits)
            .Where(limit => limit.Jurisdiction is not null && limit.Source.Grade == Grade.Primary && !rows.Contains((limit.Check, limit.Jurisdiction)))
            .Select(limit => limit.Id);

        Assert.Equal([], unheld);
    }

    private static Deficiency ClassOf(CheckValue row, double value)
    {
        var finding = new FindingReport { Check = row.Check, Position = row.Position, Value = value, Unit = row.Unit };
        return Judge.Judge(finding, new Case { AsOf = new DateOnly(2026, 3, 1), Vehicle = row.Vehicle, Jurisdiction = row.Jurisdiction }).Document.Deficiency!.Value;
    }
}
