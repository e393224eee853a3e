using Advice.Inspections;
using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Questions;
using Advice.Suspects;
using Advice.Symptoms;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Questions;

public class OpeningQuestionsTests
{
    private static readonly Catalogue Knowledge = RepositoryRules.Book.Catalogue;
    private static readonly Assessment Assess = new(RepositoryRules.Book);
    private static readonly QuestionChoice Opening = new(Knowledge, Assess);

    [Theory]
    [InlineData("gasoline")]
    [InlineData("diesel")]
    [InlineData("electric")]
    [InlineData(null)]
    public void Choose_NothingUnderstood_AsksWhatSplitsTheSystems(string? fuel)
    {
        var (@case, expected) = (Case(fuel), new ExpectedFaults(Knowledge));
        var advised = Assess.Of(@case);
        var faults = expected.On(@case, advised.Evidence with { Factors = expected.Factors(@case) }, advised.Suspicion);

        var questions = Opening.Choose(advised);

        Assert.Equal(3, questions.Count);
        Assert.All(questions, question => Assert.NotNull(question.IfYes.Likeliest));
        Assert.All(questions, question => Assert.Equal(Bits(question.Symptom.Id, faults, @case) / question.Symptom.Effort, question.Worth, 1e-9));
        var best = Knowledge.Symptoms.Values.Where(symptom => Knowledge.Systems.All(system => system.Trouble != symptom.Id)).Max(symptom => Bits(symptom.Id, faults, @case) / symptom.Effort);
        Assert.Equal(best, questions[0].Worth, 1e-9);
    }

    /// <summary>A "no" is an answer, and so is "I cannot say": the next question is another one.</summary>
    [Fact]
    public void Choose_AnsweredOrUnsure_AsksForSomethingElse()
    {
        var first = Opening.Choose(Assess.Of(Case(null)))[0].Symptom.Id;

        var afterNo = Opening.Choose(Assess.Of(Case(null) with { Reports = [new Report(first, [], null, false)] }));
        var afterUnsure = Opening.Choose(Assess.Of(Case(null) with { Unsure = new HashSet<string> { first } }));

        Assert.All([afterNo, afterUnsure], questions => Assert.DoesNotContain(questions, question => question.Symptom.Id == first));
        Assert.All([afterNo, afterUnsure], Assert.NotEmpty);
    }

    [Fact]
    public void Choose_SomethingIsSuspected_AsksAboutThat()
    {
        var advised = Assess.Of(Case(null) with { Reports = [new Report("squeal", [], null, true)] });

        Assert.Equal(Opening.OnSuspects(advised).Select(question => question.Symptom), Opening.Choose(advised).Select(question => question.Symptom));
        Assert.NotEmpty(Opening.Choose(advised));
        Assert.Empty(Opening.OnSuspects(Assess.Of(Case(null))));
    }

    /// <summary>Whoever asks on to the end is never asked for what only a workshop finds, and for nothing twice.</summary>
    [Theory]
    [InlineData("gear-slip")]
    [InlineData("misfire")]
    [InlineData("cranks-no-start")]
    public void Choose_ToTheEnd_AsksADriverOnlyWhatADriverCanTell(string symptom)
    {
        var @case = Case("gasoline") with { Reports = [new Report(symptom, [], null, true)] };
        var asked = new List<string>();
        while (asked.Count < 40 && Opening.Choose(Assess.Of(@case)) is [var next, ..])
        {
            asked.Add(next.Symptom.Id);
            Assert.True(double.IsFinite(next.Symptom.Effort), next.Symptom.Id);
            @case = @case with { Reports = [.. @case.Reports, new Report(next.Symptom.Id, [], null, false)] };
        }

        Assert.NotEmpty(asked);
        Assert.Equal(asked.Count, asked.Distinct().Count());
    }

    /// <summary>The entropy of the system less what is expected to remain of it once the answer is known.</summary>
    private static double Bits(string symptom, IReadOnlyList<Suspect> faults, Case @case)
    {
        var no = faults.ToDictionary(fault => fault, fault => (1 - Knowledge.Leaks[Sign.Symptom(symptom)]) * Knowledge.ShowsBySign[Sign.Symptom(symptom)]
            .Where(rule => rule.Fault == fault.Instance.Fault.Id).Select(rule => 1 - (rule.Often * rule.When.Share(@case.Vehicle))).DefaultIfEmpty(1).Min());
        var all = faults.Sum(fault => fault.Probability);
        var ifNo = faults.Sum(fault => fault.Probability * no[fault]);
        return Entropy(fault => fault.Probability) - (ifNo / all * Entropy(fault => fault.Probability * no[fault]))
            - ((all - ifNo) / all * Entropy(fault => fault.Probability * (1 - no[fault])));

        double Entropy(Func<Suspect, double> weight)
        {
            var total = faults.Sum(weight);
            return total <= 0 ? 0 : -faults.GroupBy(fault => fault.Instance.Fault.System).Select(system => system.Sum(weight) / total).Where(share => share > 0).Sum(share => share * Math.Log2(share));
        }
    }

    private static Case Case(string? fuel) => new()
    {
        AsOf = new DateOnly(2026, 3, 1),
        Vehicle = new Vehicle(fuel is null ? new Dictionary<string, string>() : new Dictionary<string, string> { ["fuel"] = fuel }, new Dictionary<string, double>()),
    };
}
