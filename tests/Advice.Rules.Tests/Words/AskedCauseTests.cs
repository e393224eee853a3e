using Advice.Symptoms;

namespace Advice.Rules.Tests.Words;

/// <summary>A cause that is only asked after is no report beside what is noticed; a sign in a question is one.</summary>
public class AskedCauseTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData("White vapour from the exhaust on frosty mornings, coolant level never drops. Is that the head gasket?", "cold-vapour", "head-gasket-named")]
    [InlineData("Loses coolant but no puddle under the car. Is it the water pump?", "coolant-loss", "water-pump-named")]
    [InlineData("The engine lamp is on. Is this possibly the oxygen sensor?", "engine-lamp", "oxygen-sensor-named")]
    [InlineData("Blue smoke on the overrun. Would that be the valve stem seals?", "blue-smoke", "stem-seals-named")]
    [InlineData("The radio resets now and then. Is my battery dying?", "electrical-fails", "battery-flat")]
    [InlineData("It hesitates, has the fuel pump gone?", "hesitation", "fuel-pump-named")]
    [InlineData("It loses coolant. Does it need a new head gasket?", "coolant-loss", "head-gasket-named")]
    [InlineData("There's a hum from the front left. Wondering if it is the wheel bearing.", "humming", "wheel-bearing-named")]
    [InlineData("There's a hum from the front left. Do you think it's the wheel bearing?", "humming", "wheel-bearing-named")]
    [InlineData("Misfires when wet. Coil pack, do you think?", "misfire", "coil-named")]
    [InlineData("It loses coolant. Head gasket?", "coolant-loss", "head-gasket-named")]
    public void Read_CauseAskedAfter_OnlyWhatIsNoticed(string complaint, string noticed, string asked)
    {
        var present = Reader.Read(complaint).Reports.Where(report => report.Present).Select(report => report.Symptom).ToList();

        Assert.Contains(noticed, present);
        Assert.DoesNotContain(asked, present);
    }

    [Theory]
    [InlineData("Is it the head gasket?", "head-gasket-named")]
    [InlineData("is it the water pump", "water-pump-named")]
    [InlineData("I think it is the head gasket, it loses coolant.", "head-gasket-named")]
    [InlineData("It loses coolant. The garage says it is the head gasket.", "head-gasket-named")]
    [InlineData("Why does it squeal when I brake? The pedal is firm.", "brake-squeal")]
    [InlineData("The clutch slips. My engine lamp is on, is that bad?", "engine-lamp")]
    [InlineData("The clutch slips. Is it normal that the brakes squeal in the morning?", "brake-squeal")]
    [InlineData("The clutch slips. Is it safe to drive with the battery light on?", "battery-lamp")]
    [InlineData("The clutch slips. Should I worry that the brake pedal goes to the floor?", "pedal-sinks")]
    [InlineData("The clutch slips. Is it leaking oil?", "oil-leak")]
    public void Read_SaidOrAllThatIsAsked_IsReported(string complaint, string symptom) =>
        Assert.Contains(Reader.Read(complaint).Reports, report => report.Present && report.Symptom == symptom);
}
