using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Rules.Tests;

/// <summary>What is normal is said where it helps, and not beside an alarm that it would talk away.</summary>
public class NormalNotesTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    [Theory]
    [InlineData("The brake pedal goes straight to the floor.", "pedal-drops-at-start", DrivingAdvice.Stop)]
    [InlineData("Metal on metal grinding every time I brake.", "rust-film-brakes-grind", DrivingAdvice.WorkshopOnly)]
    public void To_AlarmWithoutTheOccasionOfTheNote_DoesNotCallItNormal(string complaint, string note, DrivingAdvice driving)
    {
        var advice = Advice.To(Asked(complaint));

        Assert.Contains(note, RepositoryRules.Book.Catalogue.Rules.Keys);
        Assert.Equal(driving, advice.Driving.Advice);
        Assert.DoesNotContain(note, advice.Normal.Select(one => one.Rule));
    }

    [Theory]
    [InlineData("drive-too-hot", "under-load", "electric", "too-hot-after-effort")]
    [InlineData("steam", "charging", "electric", "heat-pump-steam")]
    public void To_AlarmOnTheOccasionOfTheNote_SaysBoth(string symptom, string occasion, string fuel, string note)
    {
        var advice = Advice.To(Asked("") with
        {
            Vehicle = new VehicleDescription { Fuel = fuel },
            Symptoms = [new SymptomReport { Symptom = symptom, Occasions = [occasion] }],
        });

        Assert.InRange(advice.Driving.Advice, DrivingAdvice.WorkshopOnly, DrivingAdvice.Stop);
        Assert.Contains(note, advice.Normal.Select(one => one.Rule));
    }

    [Theory]
    [InlineData("The AC drips water under the passenger side.", true)]
    [InlineData("The AC drips water under the passenger side and the brakes squeal.", false)]
    public void To_AllOfItMostlyNormal_SaysSoFirst(string complaint, bool said)
    {
        var advice = Advice.To(Asked(complaint));
        var opening = RepositoryRules.Book.Catalogue.Wordings["often-normal"].Text.For(Audience.Owner).Split('{')[0];

        Assert.NotEmpty(advice.Steps);
        Assert.Equal(said, advice.Summary.Contains(opening + advice.Normal[0].Text, StringComparison.Ordinal));
    }

    private static AdviceRequest Asked(string complaint) => new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = new VehicleDescription(), Complaint = complaint };
}
