using Advice.Documents;
using Advice.Knowledge;
using Advice.Rules.Bench;
using Advice.Rules.Cases;

namespace Advice.Rules.Tests.Bench;

public class AnswerChangeTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, new CaseClock());
    private static readonly AdviceDocument Answer = Advice.To(RepositoryCases.Sample.First(one => one.Advised.Steps.Count > 1).Case.Given);

    [Fact]
    public void Between_SameAnswer_None() => Assert.True(AnswerChange.Between(Answer, Answer).IsNone);

    [Fact]
    public void Between_OtherFirstStep_NamesBoth()
    {
        var change = AnswerChange.Between(Answer, Answer with { Steps = [.. Answer.Steps.Skip(1)] });

        Assert.Equal((Answer.Steps[0].Check, Answer.Steps[1].Check), change.First);
        Assert.Equal($"first step {Answer.Steps[0].Check} → {Answer.Steps[1].Check}", change.ToString());
    }

    [Fact]
    public void Between_NothingSuspectedAnyMore_SaysNone() =>
        Assert.Equal((Answer.Suspects[0].Fault, "none"), AnswerChange.Between(Answer, Answer with { Suspects = [] }).Suspect);

    [Theory]
    [InlineData(DrivingAdvice.Stop, DrivingAdvice.Soon, true)]
    [InlineData(DrivingAdvice.Soon, DrivingAdvice.Stop, false)]
    public void Between_OtherDriving_TellsWhereItIsLaxer(DrivingAdvice was, DrivingAdvice now, bool laxer)
    {
        var change = AnswerChange.Between(Answer with { Driving = new(was, []) }, Answer with { Driving = new(now, []) });

        Assert.Equal(laxer, change.IsLaxer);
        Assert.Equal((was, now), change.Driving);
    }

    [Fact]
    public void Between_CautionGone_NamesIt() => Assert.Equal(
        ["hot"], AnswerChange.Between(Answer with { Cautions = [new("hot", "It is hot.")] }, Answer with { Cautions = [] }).CautionsLost);
}
