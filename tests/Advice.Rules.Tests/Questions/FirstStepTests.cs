using Advice.Documents.Requests;

namespace Advice.Rules.Tests.Questions;

/// <summary>A question names the step that would come first for whoever asked, as the summary does.</summary>
public class FirstStepTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    [Theory]
    [InlineData("Check engine light is flashing and the car shakes", null)]
    [InlineData("Black smoke and no power", null)]
    [InlineData("It grinds when I brake", 20)]
    [InlineData("The transmission slips", 5)]
    public void IfYes_ToAnOwner_NamesTheFirstStepOfTheAnswerToThat(string complaint, int? minutes)
    {
        var asked = new AdviceRequest { Vehicle = new VehicleDescription(), Complaint = complaint, Workshop = new WorkshopDescription { Audience = "owner", Minutes = minutes } };
        foreach (var question in Advice.To(asked).Questions)
        {
            var after = Advice.To(asked with { Symptoms = [new SymptomReport { Symptom = question.Symptom }] });

            var first = after.Steps.FirstOrDefault(step => step.DoneBy == Knowledge.Checks.DoneBy.Owner) ?? after.Steps[0];
            Assert.Contains($": {first.Title}. ", question.IfYes, StringComparison.Ordinal);
        }
    }
}
