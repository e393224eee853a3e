using Advice.Symptoms;

namespace Advice.Rules.Tests.Words;

/// <summary>What is said after a sign: sentences that only go on about it, and clauses behind a comma.</summary>
public class GoingOnTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    /// <summary>What went away for now was there.</summary>
    [Theory]
    [InlineData("The oil light came on this morning. By the afternoon it had gone off.", "oil-lamp")]
    [InlineData("There was a burning smell last night. Gone by the morning.", "burning-smell")]
    [InlineData("The engine lamp came on last week. It went off again by itself.", "engine-lamp")]
    [InlineData("The vibration had gone. Now it's back.", "vibration")]
    [InlineData("The vibration disappeared. It came back a week later.", "vibration")]
    [InlineData("There was a humming noise from the rear and it disappeared. Then it came back again.", "humming")]
    [InlineData("The oil lamp goes out when it starts, but comes on again on the road.", "oil-lamp")]
    public void Read_SentenceGoesOnAboutTheSign_SignIsThereAndAllUnderstood(string complaint, string symptom)
    {
        var reading = Reader.Read(complaint);

        Assert.Equal([symptom], reading.Reports.Where(report => report.Present).Select(report => report.Symptom));
        Assert.Empty(reading.NotUnderstood);
    }

    [Theory]
    [InlineData("The vibration disappeared. It has not come back.")]
    [InlineData("The vibration has gone. I came back a week later for the tyres.")]
    public void Read_DidNotComeBack_IsNotThere(string complaint) => Assert.DoesNotContain(Reader.Read(complaint).Reports, report => report.Present);

    [Theory]
    [InlineData("The transmission slips, pinkish spots under the car.", "red-fluid-leak")]
    [InlineData("Pedal sank to the floor, wet on the inside of the back tyre.", "brake-fluid-leaks")]
    [InlineData("Steering is heavy, a red puddle under the front.", "red-fluid-leak")]
    public void Read_ClauseBehindAComma_AsAlone(string complaint, string symptom) =>
        Assert.Contains(Reader.Read(complaint).Reports, report => report.Present && report.Symptom == symptom);

    [Theory]
    [InlineData("The clutch slips, pressed the pedal a few times and waited.")]
    [InlineData("Brakes squeal, the battery is only one year old.")]
    [InlineData("The engine overheats in traffic, dealer has changed the thermostat and the pump.")]
    public void Read_HowItCameBehindAComma_OnlyTheComplaint(string complaint) => Assert.Single(Reader.Read(complaint).Reports, report => report.Present);
}
