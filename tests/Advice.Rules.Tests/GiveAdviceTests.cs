using Advice.Documents.Requests;
using Xunit.Abstractions;

namespace Advice.Rules.Tests;

public class GiveAdviceTests(ITestOutputHelper output)
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    [Theory]
    [InlineData("My brake pedal slowly sinks to the floor when I hold it down.", "brakes")]
    [InlineData("The temperature gauge is in the red and steam comes from the hood.", "cooling")]
    [InlineData("It keeps bouncing after every bump.", "suspension")]
    public void To_Complaint_FirstStepIsOfItsSystem(string complaint, string system)
    {
        var advice = Advice.To(Asked(complaint));

        output.WriteLine(string.Join(' ', advice.Steps.Select(step => step.Check)));
        Assert.Equal(system, advice.Steps[0].System);
        Assert.All(advice.Steps, step => Assert.NotEmpty(step.Suspects));
    }

    [Fact]
    public void To_NothingReported_AdvisesNothing() => Assert.Empty(Advice.To(Asked("")).Steps);

    private static AdviceRequest Asked(string complaint) =>
        new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = new VehicleDescription { ModelYear = 2014, Fuel = "gasoline" }, Complaint = complaint };
}
