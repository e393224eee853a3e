using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>
/// Tells which sentences are about something else than the trouble of a vehicle: a text that names other things and no part of driving, and
/// questions that ask for knowledge, prices or texts. A dog whines and a boiler leaks in the words that cars have.
/// </summary>
internal static class Subject
{
    /// <summary>Words that hardly anyone uses who does not speak of a vehicle.</summary>
    private static readonly FrozenSet<string> Driving = Set("""
        car cars vehicle truck suv van minivan pickup motor engine drive driving driven drove driver drivers passenger mph kmh km kph highway motorway freeway
        interstate road traffic dash dashboard steering steer tire tyre wheel wheels wheelarch transmission gearbox clutch ignition exhaust hood bonnet oil
        windshield windscreen wiper wipers headlight headlights odometer mileage dealer dealership mechanic mot accelerate accelerating accelerator throttle
        idle idling rev revs revving rpm pedal handbrake brake braking axle suspension axle bumper boot trunk towed tow coolant radiator alternator cylinder
        petrol diesel gasoline pothole sidewall seatbelt airbag
        cabin fumes parked parking corner corners cornering bend bends kerb curb junction roundabout
        """);

    /// <summary>What other texts are about.</summary>
    private static readonly FrozenSet<string> Others = Set("""
        apartment kitchen bathroom bedroom toilet shower bath boiler furnace chimney fridge freezer oven kettle toaster dishwasher
        tv television laptop desktop printer wifi broadband internet router website browser password phone tablet keyboard
        elevator escalator stairs shed fence garden lawn mower roommate neighbour neighbor neighbours neighbors doorbell bell
        dog dogs cat cats puppy kitten horse bird birds baby toddler grandmother granny knee knees elbow ankle tooth stomach belly headache fever doctor nurse hospital
        economy economic inflation market markets shares stocks exchange election politician parliament speech
        film movie song album concert band guitar piano novel book poem story chapter actor
        match goal keeper goalkeeper football soccer tennis skiing ski league coach
        train trains tram bus ferry ship plane flight airport bicycle bike
        thunder lightning forecast sunshine breeze
        homework essay exam physics maths chemistry capital translate
        recipe cake soup bread dinner breakfast barbecue restaurant
        prompt instructions instruction admin password roleplay json pretend pirate chatbot
        invoice invoices receipt refund vat billed
        """);

    private static readonly FrozenSet<string> Comparing = Set("like as sounds resembles");

    /// <summary>First word, or first two, of a question or an order that is about no trouble.</summary>
    private static readonly FrozenSet<string> Asking = Set("what whats which who whose explain define describe calculate compute solve translate write");

    private static readonly FrozenSet<string> AskingByTwo = Set("""
        how-do how-does how-much how-many how-long how-often how-far how-is how-are when-do when-does when-is when-are when-will where-is where-are where-can where-do
        why-do why-does why-is why-are can-you can-i could-you could-i do-you do-i does-a are-you will-you would-you tell-me
        """);

    /// <summary>Who asks about the own vehicle says so, or says that something is wrong.</summary>
    private static readonly FrozenSet<string> Own = Set("my mine our hear feel feels happens turn stop stops stopped start starts smell smells smoke light lights lamp");

    /// <summary>Whether a text has a word of driving.</summary>
    public static bool IsDriving(IEnumerable<RawWord> words) => words.Any(word => Driving.Contains(word.Text));

    /// <summary>Numbers of the sentences that are about something else.</summary>
    /// <param name="words">The words of the text.</param>
    /// <param name="troubled">Numbers of the sentences that say that something is wrong.</param>
    /// <param name="isTold">Whether a word belongs to what is noticed, as the dog in "smells like a wet dog"; asked only where it decides.</param>
    public static IReadOnlySet<int> Elsewhere(IReadOnlyList<RawWord> words, IReadOnlySet<int> troubled, Func<RawWord, bool> isTold)
    {
        var sentences = words.GroupBy(word => word.Sentence).Select(sentence => sentence.ToList()).ToList();
        var elsewhere = !IsDriving(words) && sentences.Exists(sentence => NamesOther(sentence, isTold));
        return sentences
            .Where(sentence => elsewhere || (AsksInGeneral(sentence) && !troubled.Contains(sentence[0].Sentence)))
            .Select(sentence => sentence[0].Sentence).ToHashSet();
    }

    /// <summary>Whether it names another thing, not only to compare: "like a dog in pain".</summary>
    private static bool NamesOther(List<RawWord> sentence, Func<RawWord, bool> isTold)
    {
        var comparing = -1;
        foreach (var word in sentence)
        {
            if (Comparing.Contains(word.Text))
                comparing = word.Clause;
            else if (Others.Contains(word.Text) && word.Clause != comparing && !isTold(word))
                return true;
        }

        return false;
    }

    private static bool AsksInGeneral(List<RawWord> sentence) =>
        (Asking.Contains(sentence[0].Text) || (sentence.Count > 1 && AskingByTwo.Contains($"{sentence[0].Text}-{sentence[1].Text}")))
        && !sentence.Exists(word => Own.Contains(word.Text));

    private static FrozenSet<string> Set(string words) =>
        words.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);
}
