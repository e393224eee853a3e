using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Mentions;

/// <summary>Tells what somebody does from what the vehicle does: "I opened the bonnet", "my neighbour knocked" are no signs.</summary>
internal static class PersonActing
{
    /// <summary>A longer phrase says what comes of it.</summary>
    private const int MostWords = 2;

    private static readonly FrozenSet<string> Persons = WordSet.Of("""
        i we you he she they someone somebody neighbour neighbor neighbours neighbors man woman lady guy bloke boy girl kid kids child children son daughter wife husband
        friend partner mum dad mother father brother sister passenger driver cyclist policeman policewoman officer cop mechanic
        """);

    private static readonly FrozenSet<string> Acts = WordSet.Of("""
        open opened opens opening close closed closes closing shut shuts shutting lift lifted lifts raise raised pop popped pops
        knock knocked knocks bang banged bangs tap tapped taps honk honked hoot hooted whistle whistled scream screamed shout shouted wave waved click clicked switchoff shutoff
        """);

    /// <summary>Whether the phrase is no more than what a person named right before it does.</summary>
    /// <param name="match">The phrase.</param>
    /// <param name="words">The words of the text.</param>
    public static bool Is(PhraseMatch match, IReadOnlyList<Word> words)
    {
        if (match.Words.Count > MostWords || !Acts.Contains(match.First.Surface))
            return false;
        for (var i = match.First.Index - 1; i >= 0 && words[i].Sentence == match.First.Sentence; i--)
        {
            if (Persons.Contains(words[i].Surface))
                return true;
            if (words[i].Kind == WordKind.Content)
                return false;
        }

        return false;
    }
}
