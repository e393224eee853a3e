using Advice.Documents.Requests;

namespace Advice.Rules.Tests;

/// <summary>Who speaks of two vehicles is told that all was taken for one.</summary>
public class SeveralVehiclesTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    [Theory]
    [InlineData("My truck squeals and my wife's car overheats", true)]
    [InlineData("my truck squeals and my wifes car overheats", true)]
    [InlineData("My car pulls to the left. My son’s old Sunday car does not start.", true)]
    [InlineData("Our van leaks oil, and my SUV shakes when I brake", true)]
    [InlineData("my other car is fine but my car will not start", true)]
    [InlineData("My truck squeals when I brake", false)]
    [InlineData("My wife's car overheats", false)]
    [InlineData("My truck squeals. The vehicle has 90,000 miles and my truck was serviced last week.", false)]
    [InlineData("It's my car, that's why my car worries me. What's wrong with my car?", false)]
    [InlineData("The brakes of my old car grind; the car ahead of me stopped", false)]
    public void To_Complaint_SaysWhereMoreThanOneIsSpokenOf(string complaint, bool several)
    {
        var said = RepositoryRules.Book.Catalogue.Wordings["several-vehicles"].Text.Plain;

        Assert.Equal(several, Advice.To(new AdviceRequest { Vehicle = new VehicleDescription(), Complaint = complaint }).Understood.Assumptions.Contains(said));
    }
}
