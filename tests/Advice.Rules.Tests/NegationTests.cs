using System.Globalization;
using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>Ways to deny and to affirm, each with every one of some symptoms: what is denied is never taken as present, and what is affirmed is.</summary>
public class NegationTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    /// <summary>Symptoms as things.</summary>
    private static readonly (string Thing, string Symptom)[] Things =
    [
        ("squeal", "squeal"), ("grinding noise", "grinding"), ("rattle", "rattle"), ("clunk", "clunk"), ("hissing noise", "hiss"), ("vibration", "vibration"),
        ("burning smell", "burning-smell"), ("oil leak", "oil-leak"), ("misfire", "misfire"), ("blue smoke", "blue-smoke"), ("fuel smell", "fuel-smell"),
    ];

    /// <summary>Symptoms as what the vehicle does: infinitive, third person, participle, past.</summary>
    private static readonly (string Do, string Does, string Doing, string Done, string Symptom)[] Deeds =
    [
        ("overheat", "overheats", "overheating", "overheated", "overheating"), ("stall", "stalls", "stalling", "stalled", "stalling"),
        ("misfire", "misfires", "misfiring", "misfired", "misfire"), ("vibrate", "vibrates", "vibrating", "vibrated", "vibration"),
        ("squeal", "squeals", "squealing", "squealed", "squeal"), ("pull to the left", "pulls to the left", "pulling to the left", "pulled to the left", "pulls-to-side"),
        ("leak oil", "leaks oil", "leaking oil", "leaked oil", "oil-leak"), ("hesitate", "hesitates", "hesitating", "hesitated", "hesitation"),
    ];

    [Theory]
    [InlineData("no {0}")]
    [InlineData("No {0} when braking.")]
    [InlineData("There is no {0}.")]
    [InlineData("there isn't any {0}")]
    [InlineData("there is not a single {0}")]
    [InlineData("never had any {0}")]
    [InlineData("never a {0}")]
    [InlineData("without any {0}")]
    [InlineData("I do not hear, smell or see any {0}")]
    [InlineData("I haven't noticed any {0}")]
    [InlineData("I can't make out any {0}")]
    [InlineData("the {0} is gone since the service")]
    [InlineData("the {0} has gone away")]
    [InlineData("the {0} went away after the repair")]
    [InlineData("the {0} stopped after the repair")]
    [InlineData("the {0} has stopped")]
    [InlineData("the {0} has disappeared")]
    [InlineData("the {0} is no longer there")]
    [InlineData("the {0} isn't there any more")]
    [InlineData("the {0} is fixed now")]
    [InlineData("the {0} has been cured")]
    [InlineData("the {0} has not come back")]
    [InlineData("the {0} never came back")]
    [InlineData("no more {0}")]
    [InlineData("no sign of a {0}")]
    [InlineData("not a hint of a {0}")]
    [InlineData("there is no longer a {0}")]
    [InlineData("there used to be a {0}")]
    [InlineData("there was a {0} until the part was replaced")]
    [InlineData("we had a {0} before the new parts were fitted")]
    [InlineData("the mechanic ruled out a {0}")]
    [InlineData("a {0} has been ruled out")]
    [InlineData("they looked for a {0} and found none")]
    [InlineData("they found no {0}")]
    [InlineData("I thought it was a {0} but it isn't")]
    [InlineData("They suspected a {0}, but it was not.")]
    [InlineData("at first I suspected a {0}, wrongly")]
    [InlineData("it is free of any {0}")]
    [InlineData("nothing like a {0}")]
    [InlineData("none of that {0} any more")]
    [InlineData("neither a {0} nor anything else")]
    [InlineData("it no longer has a {0}")]
    [InlineData("it doesn't have a {0}")]
    [InlineData("zero {0}")]
    [InlineData("it is not a {0}")]
    [InlineData("that isn't a {0}")]
    [InlineData("Any {0}? No.")]
    [InlineData("{0}: none")]
    [InlineData("the new part got rid of the {0}")]
    [InlineData("the new part cured the {0}")]
    [InlineData("it had a {0} last year, fixed under warranty")]
    public void Read_ThingDenied_NotPresent(string way) => Assert.Empty(
        Things.Where(one => IsPresent(Say(way, one.Thing), one.Symptom)).Select(one => Say(way, one.Thing)));

    [Theory]
    [InlineData("there is a {0}")]
    [InlineData("the {0} is not gone")]
    [InlineData("the {0} hasn't gone away")]
    [InlineData("the {0} won't go away")]
    [InlineData("the {0} never stops")]
    [InlineData("the {0} doesn't stop")]
    [InlineData("the {0} has not stopped")]
    [InlineData("the {0} came back")]
    [InlineData("the {0} returned after the repair")]
    [InlineData("the {0} is still there")]
    [InlineData("the {0} stopped for a week but is back")]
    [InlineData("the {0} was fixed last year but it is back")]
    [InlineData("the repair did not cure the {0}")]
    [InlineData("the new part did not get rid of the {0}")]
    [InlineData("no idea why but there is a {0}")]
    [InlineData("I don't know why there is a {0}")]
    [InlineData("not sure what it is, there is a {0}")]
    [InlineData("there is a {0} and no warning light")]
    [InlineData("not only a {0}")]
    [InlineData("no warning light, but a {0}")]
    [InlineData("there was no {0} until yesterday")]
    [InlineData("there is a {0} until the engine is warm")]
    [InlineData("the mechanic did not rule out a {0}")]
    [InlineData("nothing was done about the {0}")]
    [InlineData("nobody could fix the {0}")]
    [InlineData("the {0} was never fixed")]
    public void Read_ThingAffirmed_Present(string way) => Assert.Empty(
        Things.Where(one => !IsPresent(Say(way, one.Thing), one.Symptom)).Select(one => Say(way, one.Thing)));

    [Theory]
    [InlineData("it does not {0}")]
    [InlineData("it doesn't {0}")]
    [InlineData("it didn't {0} once")]
    [InlineData("it never {1}")]
    [InlineData("it has never {3}")]
    [InlineData("not once has it {3}")]
    [InlineData("it is not {2}")]
    [InlineData("it isn't {2}")]
    [InlineData("it wasn't {2}")]
    [InlineData("it isn't {2} any more")]
    [InlineData("it no longer {1}")]
    [InlineData("it used to {0}")]
    [InlineData("it stopped {2} after the repair")]
    [InlineData("it has stopped {2}")]
    [InlineData("it quit {2}")]
    [InlineData("it hardly {1} anymore")]
    [InlineData("it hardly ever {1} any more")]
    [InlineData("it runs without {2}")]
    [InlineData("nor does it {0}")]
    [InlineData("it neither {1} nor anything else")]
    [InlineData("since the repair it has not {3}")]
    [InlineData("it {3} until the part was replaced")]
    [InlineData("it {3} before the repair but not any more")]
    [InlineData("it won't {0} any more")]
    [InlineData("I thought it {3} but it didn't")]
    public void Read_DeedDenied_NotPresent(string way) => Assert.Empty(
        Deeds.Where(one => IsPresent(Say(way, one.Do, one.Does, one.Doing, one.Done), one.Symptom)).Select(one => Say(way, one.Do, one.Does, one.Doing, one.Done)));

    [Theory]
    [InlineData("it {1}")]
    [InlineData("it keeps {2}")]
    [InlineData("it won't stop {2}")]
    [InlineData("it never stops {2}")]
    [InlineData("it hasn't stopped {2}")]
    [InlineData("it still {1}")]
    [InlineData("it didn't {0} until last week")]
    [InlineData("it doesn't {0} until it is warm")]
    [InlineData("I cannot drive it because it {1}")]
    [InlineData("I don't know why it {1}")]
    [InlineData("it not only {1}")]
    public void Read_DeedAffirmed_Present(string way) => Assert.Empty(
        Deeds.Where(one => !IsPresent(Say(way, one.Do, one.Does, one.Doing, one.Done), one.Symptom)).Select(one => Say(way, one.Do, one.Does, one.Doing, one.Done)));

    [Theory]
    [InlineData("neither a {0} nor a {1}")]
    [InlineData("I notice neither {0} nor {1} in it")]
    [InlineData("no {0}, no {1}, no warning light")]
    [InlineData("no {0} and no {1}")]
    [InlineData("no {0} or {1}")]
    [InlineData("there isn't any {0} or {1}")]
    [InlineData("never any {0}, never any {1}")]
    [InlineData("no {0}, {1} or anything else")]
    [InlineData("there was no {0}, nor was there any {1}")]
    [InlineData("the {0} and the {1} are both gone since the service")]
    public void Read_TwoThingsDenied_NeitherPresent(string way) => Assert.Empty(
        from one in Things
        from other in Things
        where one != other && (one.Symptom, other.Symptom) is not (_, "fuel-smell") and not ("fuel-smell", _)
        let text = Say(way, one.Thing, other.Thing)
        where IsPresent(text, one.Symptom) || IsPresent(text, other.Symptom)
        select text);

    [Theory]
    [InlineData("the wipers work, the washers do not", "wipers-fail")]
    [InlineData("both headlights work fine", "headlamp-out lamp-out")]
    [InlineData("the brakes are fine and the steering is fine", "brakes-trouble steering-trouble weak-brakes")]
    [InlineData("none of the gears crunch", "gear-crunch")]
    [InlineData("the battery is not flat", "battery-flat")]
    [InlineData("no, the battery isn't dead", "battery-flat")]
    [InlineData("the temperature needle never leaves the middle so it is not running hot", "overheating needle-in-the-red")]
    [InlineData("the tire isn't losing any air", "tyre-loses-air")]
    [InlineData("the tyre isn't losing air any more, but it is bald", "tyre-loses-air")]
    [InlineData("neither the ABS light nor the brake light is on", "abs-lamp brake-lamp-red")]
    [InlineData("the check engine light is not on", "engine-lamp")]
    [InlineData("the check engine light went out by itself", "engine-lamp")]
    [InlineData("no warning lights are on", "engine-lamp many-lamps")]
    [InlineData("it didn't stall, didn't misfire, passed its emissions test", "stalling misfire failed-emissions")]
    [InlineData("it doesn't squeak, doesn't knock, doesn't wander", "squeak clunk engine-knock wanders")]
    [InlineData("the steering is not heavy any longer", "heavy-steering")]
    [InlineData("the oil level is not low and it is not burning any", "oil-low oil-used-up")]
    [InlineData("the pedal isn't soft", "soft-pedal")]
    [InlineData("the coolant level does not drop", "coolant-loss")]
    [InlineData("I am not losing coolant", "coolant-loss")]
    [InlineData("it does not use any oil", "oil-used-up")]
    [InlineData("it does not pull to either side", "pulls-to-side")]
    [InlineData("the wheel does not shake", "steering-shake")]
    [InlineData("the tyres are not worn", "tread-low uneven-tyre-wear")]
    [InlineData("the belt is not cracked", "belt-cracked")]
    [InlineData("it hasn't lost any power", "loss-of-power")]
    [InlineData("the engine hasn't lost power at all", "loss-of-power")]
    public void Read_PartIsWell_NotPresent(string text, string symptoms) =>
        Assert.DoesNotContain(symptoms.Split(' '), symptom => IsPresent(text, symptom));

    [Theory]
    [InlineData("it won't charge anywhere, not at home and not at the rapid charger", "drive-battery-does-not-charge")]
    [InlineData("when its below zero it wont start until the sun comes out", "starts-once-thawed")]
    [InlineData("4 wheel drive wont go in, the light just keeps blinking", "four-wheel-drive-fails")]
    [InlineData("the horn doesn't work, it never beeps", "horn-fails")]
    public void Read_PhraseWithItsOwnNegation_StaysPresent(string text, string symptom) => Assert.True(IsPresent(text, symptom));

    /// <summary>What an occasion adds nothing to is not noticed on it.</summary>
    [Theory]
    [InlineData("The car pulls to the left. It doesn't do it any worse under braking.", "pulls-to-side", "braking")]
    [InlineData("Clunks over bumps. It isn't any worse when it's cold.", "clunk", "engine-cold")]
    [InlineData("There's a hum from the front. It's no louder when I turn.", "humming", "turning")]
    public void Read_NoWorseOnAnOccasion_IsNotTiedToIt(string text, string symptom, string occasion)
    {
        var report = Assert.Single(Reader.Read(text).Reports, report => report.Symptom == symptom);

        Assert.True(report.Present);
        Assert.DoesNotContain(occasion, report.Occasions);
    }

    [Theory]
    [InlineData("It misfires at idle. No bother at all when it's warm.", "misfire", "engine-warm")]
    public void Read_WellOnAnOccasion_DeniedThere(string text, string symptom, string occasion) =>
        Assert.Contains(Reader.Read(text).Reports, report => report.Symptom == symptom && !report.Present && report.Occasions.Contains(occasion));

    /// <summary>An occasion is wider than what is said: what shakes at 60 and not at 75 shakes at high speed.</summary>
    [Fact]
    public void Read_WellElsewhereWithinAnOccasion_IsNotDenied() =>
        Assert.DoesNotContain(Reader.Read("Steering wheel wobbles at 60 to 65 mph and then it smooths out again at 75.").Reports, report => !report.Present);

    private static bool IsPresent(string text, string symptom) => Reader.Read(text).Reports.Any(report => report.Symptom == symptom && report.Present);

    private static string Say(string way, params object[] words) => string.Format(CultureInfo.InvariantCulture, way, words);
}
