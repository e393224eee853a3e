using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>Each folder of Broken holds a faulty file beside the shared words, and what the loader must say about it, to the letter.</summary>
public class BrokenRuleSetTests
{
    public static TheoryData<string> Broken => WrittenRules.Folders("Broken");

    [Theory]
    [MemberData(nameof(Broken))]
    public void Load_FaultyFile_SaysWhatIsWrongWhereAndWhatWouldBeRight(string name)
    {
        var broken = Assert.Throws<RuleSetException>(() => WrittenRules.Beside("Broken", name, RuleSetLoader.Load));

        Assert.Equal(WrittenRules.Lines("Broken", name, "errors.txt"), broken.Errors.Select(error => error.ToString()));
    }
}
