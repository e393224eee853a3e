using Advice.Arithmetic;

namespace Advice.Rules.Tests.Judging;

/// <summary>Each computation has its function and its address; a finding reaches all but those that no finding is about.</summary>
public class ComputationsReachedTests
{
    /// <summary>Raw bytes are decoded before they are findings; the risk of an operator, the life of a kind of part and the day of the next test are no
    /// findings on a vehicle (the last is reckoned in /v1/due).</summary>
    private static readonly string[] NoFindings = ["fuel-trim-byte", "operator-risk-rating", "part-life", "roadworthiness-test", "trouble-code-bytes"];

    [Fact]
    public void Computations_OfFindings_AreNamedByChecks()
    {
        var named = RepositoryRules.Book.Catalogue.Checks.Values.SelectMany(check => check.Arithmetic).Select(one => one.Computation).ToHashSet();

        Assert.Equal(NoFindings, Computations.All.Select(one => one.Name).Where(name => !named.Contains(name)).Order(StringComparer.Ordinal));
    }
}
