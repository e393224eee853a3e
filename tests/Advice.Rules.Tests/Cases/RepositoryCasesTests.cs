using Advice.Rules.Cases;

namespace Advice.Rules.Tests.Cases;

/// <summary>Runs the cases beside the rules of the repository.</summary>
public class RepositoryCasesTests
{
    private static readonly CaseSet Set = CaseFolder.Read(RepositoryRules.Directory, RepositoryRules.Book.Catalogue, PlainRequest.Read);
    private static readonly CaseRunner Runner = new(RepositoryRules.Book);

    public static TheoryData<string> Ids => [.. Set.Cases.Select(one => one.Id)];

    [Fact]
    public void Read_CaseFiles_NothingIsWrong() => Assert.Equal([], Set.Errors);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Run_CaseBesideTheRules_AnswersAsExpected(string id)
    {
        var result = Runner.Run(Assert.Single(Set.Cases, one => one.Id == id));

        Assert.True(result.Passed, result.ToString());
    }
}
