using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Rules.Tests;

/// <summary>Nobody is given leave to drive by words of which nothing tells how the vehicle is.</summary>
public class LeaveToDriveTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    [Theory]
    [InlineData("Can I drive?")]
    [InlineData("is it safe to drive")]
    [InlineData("Is it ok to drive my car to work tomorrow?")]
    [InlineData("Can I still drive it like this?")]
    [InlineData("it acts up")]
    public void To_NothingTells_SaysOnlyWhenToLetItStand(string complaint)
    {
        foreach (var (audience, stand) in new[] { ("owner", Wording("driving-unknown").Plain), ("technician", Wording("driving-unknown").Trade) })
        {
            var advice = Advice.To(Asked(complaint) with { Workshop = new WorkshopDescription { Audience = audience } });

            Assert.Equal(DrivingAdvice.Unknown, advice.Driving.Advice);
            Assert.StartsWith(stand, advice.Summary, StringComparison.Ordinal);
            Assert.Equal(DrivingAdvice.Unknown, Advice.Triage(Asked(complaint)).Driving);
        }
    }

    [Theory]
    [InlineData("It squeals when I brake. Can I drive it?", DrivingAdvice.Normal, DrivingAdvice.Soon)]
    [InlineData("The brake pedal sinks to the floor. Is it safe to drive?", DrivingAdvice.Stop, DrivingAdvice.Stop)]
    [InlineData("", DrivingAdvice.Normal, DrivingAdvice.Normal)]
    public void To_SomethingTellsOrNobodySpoke_FollowsTheRules(string complaint, DrivingAdvice least, DrivingAdvice most) =>
        Assert.InRange(Advice.To(Asked(complaint)).Driving.Advice, least, most);

    /// <summary>What is named as a reason to let it stand forbids driving once it is reported.</summary>
    [Theory]
    [InlineData("The brakes do not work.")]
    [InlineData("The brake pedal sinks to the floor.")]
    [InlineData("The steering does not work.")]
    [InlineData("The steering sticks and jams.")]
    [InlineData("The red oil pressure light is on.")]
    [InlineData("The engine overheats, the needle is in the red.")]
    [InlineData("Smoke comes out from under the hood.")]
    [InlineData("It smells strongly of fuel.")]
    [InlineData("It smells of burning plastic.")]
    [InlineData("A wheel is loose.")]
    [InlineData("The tyre has a bulge in the sidewall.")]
    public void To_AReasonToLetItStand_ForbidsDriving(string complaint) => Assert.Equal(DrivingAdvice.Stop, Advice.To(Asked(complaint)).Driving.Advice);

    /// <summary>A no to the opening question is answered: something else is asked, and not the same again.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("it acts up")]
    public void To_NoToTheOpeningQuestion_SaysThatSomethingElseIsAsked(string complaint)
    {
        var opening = Advice.To(Asked(complaint)).Questions[0];
        Assert.Equal(Wording("then-something-else").Plain, opening.IfNo);

        var after = Advice.To(Asked(complaint) with { Symptoms = [new SymptomReport { Symptom = opening.Symptom, Present = false }] });

        Assert.Equal($"{Wording("driving-unknown").Plain} {Wording("something-else").Plain}", after.Summary);
        Assert.DoesNotContain(opening.Symptom, after.Questions.Select(question => question.Symptom));
        Assert.NotEmpty(after.Questions);
    }

    private static Text Wording(string id) => RepositoryRules.Book.Catalogue.Wordings[id].Text;

    private static AdviceRequest Asked(string complaint) => new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = new VehicleDescription(), Complaint = complaint };
}
