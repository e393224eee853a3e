using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>Each folder of Doubtful holds a file that loads, and what its author must be told about it, to the letter.</summary>
public class DoubtfulRuleSetTests
{
    public static TheoryData<string> Doubtful => WrittenRules.Folders("Doubtful");

    [Theory]
    [MemberData(nameof(Doubtful))]
    public void Review_DoubtfulFile_SaysWhatToLookAtAgain(string name)
    {
        var reviewed = WrittenRules.Beside("Doubtful", name, RuleSetLoader.Review);

        Assert.Equal(WrittenRules.Lines("Doubtful", name, "warnings.txt"), reviewed.Warnings.Select(warning => warning.ToString()));
    }

    /// <summary>Without another file the shared words are sound: all that is said above is about that file.</summary>
    [Fact]
    public void Review_SharedWordsAlone_NothingIsSaid() => Assert.Empty(WrittenRules.Beside(null, null, RuleSetLoader.Review).Warnings);
}
