using Advice.Rules.Cases;
using Advice.Rules.Tests.Cases;

namespace Advice.Rules.Tests.Bench;

/// <summary>The cases of this repository, assessed once for all tests.</summary>
internal static class RepositoryCases
{
    private static readonly CaseAssessor Assessor = new(RepositoryRules.Book);

    /// <summary>Every tenth case with its assessment.</summary>
    public static IReadOnlyList<(RuleCase Case, Advised Advised, Advised All)> Sample { get; } =
    [
        .. CaseFolder.Read(RepositoryRules.Directory, RepositoryRules.Book.Catalogue, PlainRequest.Read).Cases
            .Where((_, i) => i % 10 == 0).Select(one => (one, Assessor.Assess(one), Assessor.AssessAll(one))),
    ];
}
