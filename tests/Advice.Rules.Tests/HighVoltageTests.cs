using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Rules.Cases;

namespace Advice.Rules.Tests;

/// <summary>What nobody without training may do on a vehicle with a drive battery.</summary>
public class HighVoltageTests
{
    private static readonly Catalogue Catalogue = RepositoryRules.Book.Catalogue;
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, new CaseClock());

    /// <summary>Opening, measuring or unplugging what carries the voltage: never the owner's.</summary>
    [Theory]
    [InlineData("insulation-resistance")]
    [InlineData("high-voltage-codes")]
    [InlineData("drive-battery-health")]
    [InlineData("converter-output-voltage")]
    [InlineData("drive-coolant-pump-test")]
    public void Checks_OnTheHighVoltageSystem_AreForTechnicians(string check) => Assert.Equal(DoneBy.Technician, Catalogue.Checks[check].DoneBy);

    [Theory]
    [InlineData("The hybrid system warning is on.", "hybrid")]
    [InlineData("It will not charge at home.", "electric")]
    [InlineData("It smells like burning plastic and the hybrid warning is on.", "hybrid")]
    [InlineData("The hybrid system failure message is on and the range dropped.", "plugInHybrid")]
    public void Advice_OnTheDriveBattery_WarnsOfTheVoltage(string complaint, string fuel)
    {
        var advice = Advice.To(new AdviceRequest { Vehicle = new VehicleDescription { Fuel = fuel }, Complaint = complaint });

        Assert.Contains(advice.Cautions, caution => caution.Id == "high-voltage");
    }

    [Theory]
    [InlineData("insulation-resistance")]
    [InlineData("high-voltage-codes")]
    public void Checks_BehindTheLockOut_CarryItsCaution(string check) => Assert.Contains("high-voltage", Catalogue.Checks[check].Cautions);

    [Theory]
    [InlineData("There is a high squeal when I brake gently.", "gasoline")]
    [InlineData("The battery is dead.", "diesel")]
    public void Advice_OnAVehicleWithoutDriveBattery_DoesNotWarnOfTheVoltage(string complaint, string fuel)
    {
        var advice = Advice.To(new AdviceRequest { Vehicle = new VehicleDescription { Fuel = fuel }, Complaint = complaint });

        Assert.DoesNotContain(advice.Cautions, caution => caution.Id == "high-voltage");
    }

    [Fact]
    public void Advice_Whatever_DefersToTheMakersManual()
    {
        var advice = Advice.To(new AdviceRequest { Vehicle = new VehicleDescription(), Complaint = "It is time for new brake fluid." });

        Assert.Contains("maker's manual", advice.Notice, StringComparison.Ordinal);
    }
}
