using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>Each folder of Contradictory holds entries that are sound one by one and not together, and what the loader must say, to the letter.</summary>
public class ContradictoryRuleSetTests
{
    public static TheoryData<string> Contradictory => WrittenRules.Folders("Contradictory");

    [Theory]
    [MemberData(nameof(Contradictory))]
    public void Load_EntriesThatContradict_SaysWhichAndWhy(string name)
    {
        var broken = Assert.Throws<RuleSetException>(() => WrittenRules.Beside("Contradictory", name, RuleSetLoader.Load));

        Assert.Equal(WrittenRules.Lines("Contradictory", name, "errors.txt"), broken.Errors.Select(error => error.ToString()));
    }
}
