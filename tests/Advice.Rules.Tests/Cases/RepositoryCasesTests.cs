using Advice.Rules.Cases;

namespace Advice.Rules.Tests.Cases;

/// <summary>Runs the cases beside the rules of the repository.</summary>
public class RepositoryCasesTests
{
    private static readonly CaseSet Set = CaseFolder.Read(RepositoryRules.Directory, RepositoryRules.Book.Catalogue, PlainRequest.Read);
    private static readonly CaseRunner Runner = new(RepositoryRules.Book);

    public static TheoryData<string> Ids => [.. Set.Cases.Select(one => one.Id)];

    public static TheoryData<string> Families => [.. Set.Cases.Select(Family).Distinct()];

    /// <summary>What must come first, what must not come up, a caution, driving advice, and what is no fault.</summary>
    [Theory]
    [MemberData(nameof(Families))]
    public void Family_HasEachKindOfCase(string family)
    {
        var asked = Set.Cases.Where(one => Family(one) == family).SelectMany(one => one.Expectations).Select(one => one.Expected).ToList();

        Assert.All(["first: ", "never: ", "cautions: ", "driving: ", "normal: "], kind => Assert.Contains(asked, one => one.StartsWith(kind, StringComparison.Ordinal)));
    }

    [Fact]
    public void Read_CaseFiles_NothingIsWrong() => Assert.Equal([], Set.Errors);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Run_CaseBesideTheRules_AnswersAsExpected(string id)
    {
        var result = Runner.Run(Assert.Single(Set.Cases, one => one.Id == id));

        Assert.True(result.Passed, result.ToString());
    }

    private static string Family(RuleCase @case) => @case.Place.File.Split('/')[0];
}
