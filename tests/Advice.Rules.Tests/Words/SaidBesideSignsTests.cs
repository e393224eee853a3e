using Advice.Symptoms;

namespace Advice.Rules.Tests.Words;

/// <summary>What is said beside the signs of a vehicle, in words that signs have: the real rules read nothing from it, and still the sign.</summary>
public class SaidBesideSignsTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData("I opened the hood to check the oil")]
    [InlineData("My neighbour knocked")]
    [InlineData("We had it for three years and never had a problem with it")]
    [InlineData("I was on my way home from work when it began")]
    [InlineData("My boiler bangs at night")]
    [InlineData("Our washing machine squeals and its motor smells burnt")]
    [InlineData("The hedge trimmer cuts out and won't start again")]
    [InlineData("My brother has a short fuse and blows up at me")]
    [InlineData("Exports are the engine of growth")]
    [InlineData("My shoulder grinds when I lift my arm")]
    [InlineData("The radio in the kitchen crackles")]
    [InlineData("The hose in the garden leaks")]
    [InlineData("The roses are wilting and have black spots")]
    [InlineData("Your order of wiper blades has been shipped")]
    [InlineData("De auto start niet")]
    public void Read_NoSign_NothingIsReported(string complaint) => Assert.DoesNotContain(Reader.Read(complaint).Reports, report => report.Present);

    [Theory]
    [InlineData("The hood opened while driving", "bonnet-unlatched")]
    [InlineData("Brake lights won't go off, my neighbour knocked to say they're on", "brake-lamps-stay-on")]
    [InlineData("I opened the bonnet and the battery case was bulging", "battery-swollen")]
    [InlineData("4 wheel drive wont go in, the light just keeps blinking", "four-wheel-drive-fails")]
    [InlineData("The brakes squeal like a washing machine", "brake-squeal")]
    [InlineData("It smells sweet and the film is greasy", "sweet-smell")]
    [InlineData("The fuse in my truck keeps blowing, short fuse or not", "fuse-blows")]
    public void Read_SignBesideIt_OnlyTheSign(string complaint, string symptom) =>
        Assert.Equal([symptom], Reader.Read(complaint).Reports.Where(report => report.Present).Select(report => report.Symptom));

    /// <summary>A part makes its own noise and not that of another.</summary>
    [Theory]
    [InlineData("The window makes a crunching noise", "grinding")]
    [InlineData("The sunroof makes a grinding noise", "grinding")]
    public void Read_NoiseOfAPartThatCannotBearIt_IsNotRead(string complaint, string not) =>
        Assert.DoesNotContain(Reader.Read(complaint).Reports, report => report.Symptom == not);

    [Fact]
    public void Read_FineAtSteadySpeed_ShakesOnlyWhenBraking()
    {
        var reports = Reader.Read("The steering wheel shakes when I brake, but it's smooth as glass when I'm just cruising.").Reports;

        Assert.Contains(reports, report => report is { Symptom: "steering-shake", Present: true } && report.Occasions.SequenceEqual(["braking"]));
        Assert.Contains(reports, report => report is { Symptom: "steering-shake", Present: false } && report.Occasions.SequenceEqual(["steady-speed"]));
    }

    /// <summary>A sentence, or a clause of one, that is understood alone is understood behind another complaint too.</summary>
    [Theory]
    [InlineData("The pedal sank to the floor. There's wet on the inside of the back tyre.", "brake-fluid-leaks")]
    [InlineData("The pedal sank to the floor and there's wet on the inside of the back tyre.", "brake-fluid-leaks")]
    [InlineData("Transmission slips between 2nd and 3rd. I found pinkish spots under the car.", "red-fluid-leak")]
    [InlineData("The transmission slips and I found pinkish spots under the car.", "red-fluid-leak")]
    [InlineData("The gearbox slips. I found a reddish puddle on the drive.", "red-fluid-leak")]
    [InlineData("The heater only blows cold. There's a sweet whiff in the cabin.", "sweet-smell")]
    public void Read_BehindAnotherComplaint_AsAlone(string complaint, string symptom) =>
        Assert.Contains(Reader.Read(complaint).Reports, report => report.Present && report.Symptom == symptom);

    /// <summary>How it came is no complaint of its own.</summary>
    [Theory]
    [InlineData("The brakes squeal. The road to my house is full of holes.")]
    [InlineData("The brakes squeal. I always use the cruise control on the motorway.")]
    [InlineData("The brakes squeal. The battery is only one year old.")]
    [InlineData("The clutch slips. I pressed the pedal a few times and waited.")]
    [InlineData("The clutch slips. It has heated seats and a big screen.")]
    [InlineData("There is a smell of petrol. The tank was half full.")]
    [InlineData("There is a smell of petrol. The kids sit in the back.")]
    [InlineData("The engine overheats in traffic, and the dealer has changed the thermostat and the pump.")]
    public void Read_HowItCame_OnlyTheComplaint(string complaint) => Assert.Single(Reader.Read(complaint).Reports, report => report.Present);

    /// <summary>What is well is heard, and nothing is left to be understood.</summary>
    [Theory]
    [InlineData("Knocking from the front over speed bumps. Steering feels ok.")]
    [InlineData("The clutch slips. The clutch pedal feels normal.")]
    [InlineData("Grinding when braking. Brakes work fine otherwise.")]
    [InlineData("It pulls to the left all the time. Braking is dead straight.")]
    [InlineData("The rear slides on wet bends. It's never done that on dry roads.")]
    [InlineData("The heater is cold at idle. It's good when driving.")]
    public void Read_WhatIsWell_IsHeard(string complaint)
    {
        var reading = Reader.Read(complaint);

        Assert.Single(reading.Reports, report => report.Present);
        Assert.Empty(reading.NotUnderstood);
    }
}
