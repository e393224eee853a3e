using Advice.Rules.RuleSets;
using Advice.Symptoms;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Questions;

/// <summary>What is foreseen of an answer is what the case with that answer is assessed to be.</summary>
public class ForeseenAnswersTests
{
    private const int EachReported = 9;
    private const int EachAnswered = 41;

    private static readonly RuleBook Book = RepositoryRules.Book;

    [Fact]
    public void Foresee_AnyAnswer_IsWhatTheWholeAssessmentGives()
    {
        var assessment = new Assessment(Book);
        var symptoms = Book.Catalogue.Symptoms.Keys.Order(StringComparer.Ordinal).ToList();
        var (suspected, denied) = (0, 0);
        foreach (var reported in Each(symptoms, EachReported))
        {
            var advised = assessment.Of(new Case { AsOf = new DateOnly(2026, 3, 1), Vehicle = Vehicle.Unknown, Reports = [new Report(reported, [], null, true)] });
            List<Report> answers = [.. Each(symptoms, EachAnswered).Where(symptom => symptom != reported).SelectMany(symptom => new[] { true, false }, (symptom, yes) => new Report(symptom, [], null, yes))];
            foreach (var (answer, foreseen) in answers.Zip(assessment.Foresee(advised, answers)))
            {
                var after = assessment.Of(advised.Case.With(answer));
                Assert.True(after.Steps.Select(step => step.Check.Id).FirstOrDefault() == foreseen.First?.Id, $"{reported} + {answer.Symptom} {answer.Present}: {after.Steps.Select(step => step.Check.Id).FirstOrDefault()} {foreseen.First?.Id}");
                Assert.Equal(after.Suspicion.Raised.Select(suspect => (suspect.Instance.Fault.Id, suspect.Instance.Place)).FirstOrDefault(), (foreseen.Likeliest?.Instance.Fault.Id, foreseen.Likeliest?.Instance.Place));
                Assert.Equal(after.Suspicion.Raised.Select(suspect => suspect.Probability).FirstOrDefault(), foreseen.Likeliest?.Probability ?? 0);
                _ = foreseen.Likeliest is null ? 0 : answer.Present ? suspected++ : denied++;
            }
        }

        Assert.True(suspected > 500 && denied > 300, $"{suspected} and {denied}: too few to tell.");
    }

    private static IEnumerable<string> Each(List<string> all, int step) => all.Where((_, i) => i % step == 0);
}
