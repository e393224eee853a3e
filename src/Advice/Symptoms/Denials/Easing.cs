using System.Collections.Frozen;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a clause says that what was complained of goes away or becomes less: "climbs in traffic but drops on the highway".</summary>
internal sealed class Easing(IReadOnlyList<Word> words)
{
    private static readonly FrozenSet<string> Going = WordSet.Of("gone disappeared disappears disappear vanished vanishes vanish");

    private static readonly FrozenSet<string> Lessening = WordSet.Of("""
        drop drops dropped fall falls fell less lessens eases eased improves improved subsides fades settles recovers quiet quieter quietens cools cooler smooth smoother
        better clears
        """);

    /// <summary>Verbs that say so with "down", "off", "out" or "up": "comes back down", "smooths out", "clears up".</summary>
    private static readonly FrozenSet<string> Turning = WordSet.Of("come comes came go goes went calm calms cool cools die dies settle settles quiet quiets quieten quietens ease eases smooth smooths clear clears");

    /// <summary>What the clause may be about, for "the oil pressure drops" is a complaint of its own.</summary>
    private static readonly FrozenSet<string> Same = WordSet.Of("but and then though yet temperature temp needle gauge noise sound vibration shaking get gets getting become becomes bit lot much back again right");

    /// <summary>Whether the word says that it goes away, now or at one time: "gone", "goes away".</summary>
    public bool IsGone(int i) => Going.Contains(words[i].Surface) || (words[i].Term == "go" && i + 1 < words.Count && words[i + 1].Surface == "away");

    /// <summary>Whether the word says that what was named before becomes less or goes away.</summary>
    public bool IsAt(int i)
    {
        if (IsGone(i) || (words[i].Surface == "away" && i > 0 && IsGone(i - 1)))
            return true;
        var verb = words[i].Surface is "down" or "off" or "out" or "up" ? (i > 0 && words[i - 1].Surface == "back" ? i - 2 : i - 1) : i;
        return verb >= 0 && words[verb].Clause == words[i].Clause
            && (verb == i ? Lessening : Turning).Contains(words[verb].Surface)
            && Enumerable.Range(0, verb).Reverse().TakeWhile(j => words[j].Clause == words[i].Clause).All(j => words[j].Kind != WordKind.Content || Same.Contains(words[j].Surface));
    }
}
