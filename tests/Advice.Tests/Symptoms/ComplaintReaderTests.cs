namespace Advice.Tests.Symptoms;

public class ComplaintReaderTests
{
    [Theory]
    // Word forms and small gaps
    [InlineData("It squeals.", "squeal")]
    [InlineData("squealing and grinding", "squeal; grinding")]
    [InlineData("The steering wheel really shakes", "steering-shake")]
    [InlineData("the light for the check engine is on", "engine-lamp")]
    [InlineData("the engine died on me", "stalling")]
    [InlineData("my brakes went spongy", "soft-pedal")]
    // Synonyms, where nothing else is said
    [InlineData("there is a split in the windshield", "windscreen-crack")]
    [InlineData("it squeals and there is a split in the windshield", "squeal")]
    [InlineData("a split in the curtain", "")]
    [InlineData("The brake pedal suddenly went all the way to the floor", "pedal-sinks")]
    // The longest phrase wins
    [InlineData("check engine light flashing", "engine-lamp-flashing")]
    [InlineData("the car shakes when braking", "brake-pulsation")]
    [InlineData("the car shakes", "vibration")]
    [InlineData("turns over but won't start", "no-start")]
    // British and American words
    [InlineData("the tyre is flat", "tyre-loses-air")]
    [InlineData("steam comes from the bonnet", "steam")]
    [InlineData("a crack in the windscreen", "windscreen-crack")]
    [InlineData("it smells of petrol", "fuel-smell")]
    [InlineData("an odour of gasoline", "fuel-smell")]
    [InlineData("the gearbox slips", "gear-slip")]
    [InlineData("the handbrake doesn't hold", "parking-brake-weak")]
    // Misspellings
    [InlineData("it is overheting", "overheating")]
    [InlineData("stearing wheel vibartes", "steering-shake")]
    [InlineData("sqeal", "squeal")]
    // Ways to say that something does not work
    [InlineData("wipers failed", "wipers-fail")]
    [InlineData("the wipers have stopped working", "wipers-fail")]
    [InlineData("wipers inoperable", "wipers-fail")]
    [InlineData("brakes never work", "brakes-fail")]
    public void Read_Words_Symptoms(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("It squeals when I brake", "squeal @braking")]
    [InlineData("When I brake, the steering wheel shakes, and when I turn, it clunks", "steering-shake @braking; clunk @turning")]
    [InlineData("squeals and grinds in the morning", "squeal @cold-start; grinding @cold-start")]
    [InlineData("steering wheel shakes when braking on the motorway", "steering-shake @braking+high-speed")]
    [InlineData("Big clunk from underneath when I shift from reverse into drive", "clunk @selecting-gear")]
    [InlineData("it clunks when I turn left", "clunk @turning-left")]
    [InlineData("Engine stalls. It only happens at a red light.", "stalling @idling")]
    [InlineData("grinding noise from the left front wheel", "grinding #front-left")]
    [InlineData("Clunk over bumps, in the back", "clunk @over-bumps #rear")]
    [InlineData("squeals when i brake on the highway it also rattles", "squeal @braking+high-speed; rattle")]
    [InlineData("squeals when braking and clunks over bumps", "squeal @braking; clunk @over-bumps")]
    [InlineData("in the morning it squeals when braking", "squeal @braking+cold-start")]
    public void Read_Circumstances_BelongToTheirSymptom(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("the brake pedal is hard", "hard-pedal")]
    [InlineData("brake light on the dash", "brake-lamp")]
    [InlineData("it rattles beside a parked car", "rattle")]
    [InlineData("it rattles in front of my house", "rattle")]
    [InlineData("it rattles when I turn on the radio", "rattle")]
    public void Read_WordsOfOccasionsInOtherUse_AreNoOccasion(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("no squeal when braking", "not squeal @braking")]
    [InlineData("It is not overheating", "not overheating")]
    [InlineData("it doesnt squeal", "not squeal")]
    [InlineData("It stopped squealing after that", "not squeal")]
    [InlineData("stopped making the squeal", "not squeal")]
    [InlineData("the engine never stalls", "not stalling")]
    [InlineData("without any clunk", "not clunk")]
    [InlineData("I do not hear any loud clunk", "not clunk")]
    [InlineData("no squeal, clunk or rattle", "not squeal; not clunk; not rattle")]
    [InlineData("the squeal is gone", "not squeal")]
    [InlineData("it doesn't squeal when braking but it grinds", "not squeal @braking; grinding")]
    [InlineData("vibration and no noise", "vibration")]
    [InlineData("the squeal stopped after they changed the pads", "not squeal")]
    [InlineData("squeal? none", "not squeal")]
    [InlineData("it is free of squeal", "not squeal")]
    [InlineData("stopped after the service, the squeal I mean", "not squeal")]
    [InlineData("I checked for squeal and found nothing", "not squeal")]
    [InlineData("nothing but a squeal", "squeal")]
    [InlineData("the squeal stopped for a week and is back", "squeal")]
    [InlineData("it never used to squeal", "squeal")]
    public void Read_Denied_IsNotPresent(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("it will not start", "no-start")]
    [InlineData("The car wouldn't start", "no-start")]
    [InlineData("failed to start", "no-start")]
    [InlineData("no brakes", "brakes-fail")]
    [InlineData("no power", "loss-of-power")]
    [InlineData("there is no heat", "no-heat")]
    [InlineData("the bonnet won't stay shut", "bonnet-unlatched")]
    [InlineData("not only squeals", "squeal")]
    [InlineData("I don't know why it stalls", "stalling")]
    [InlineData("they could not fix the squeal", "squeal")]
    [InlineData("without warning the engine stalls", "stalling")]
    public void Read_NegativeWordsOfAnotherMeaning_StayPresent(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("There is a squeal when I brake gently, it goes away when I brake hard.", "squeal @braking-lightly; not squeal @braking-hard")]
    [InlineData("clunks over bumps but not on the highway", "clunk @over-bumps; not clunk @high-speed")]
    [InlineData("It shakes at idle, fine on the motorway", "vibration @idling; not vibration @high-speed")]
    [InlineData("the squeal goes away when hot", "squeal; not squeal @engine-warm")]
    [InlineData("It shakes at idle but smooths out on the motorway", "vibration @idling; not vibration @high-speed")]
    [InlineData("It shakes at idle but gets better when hot", "vibration @idling; not vibration @engine-warm")]
    [InlineData("It shakes at idle and the power drops on the motorway", "vibration @high-speed+idling")]
    public void Read_WellOnAnOccasion_IsDeniedForIt(string complaint, string expected) => AssertReads(expected, complaint);

    [Theory]
    [InlineData("squeal. SQUEAL! squealing?", "squeal")]
    [InlineData("squeals when I brake. It squeals when braking.", "squeal @braking")]
    [InlineData("it stalls. It has not stalled today.", "stalling")]
    public void Read_SaidTwice_IsReportedOnce(string complaint, string expected) => AssertReads(expected, complaint);

    private static void AssertReads(string expected, string complaint) =>
        Assert.Equal(expected, SmallVocabulary.Reader.Read(complaint).Summary());
}
