using System.Collections.Frozen;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells sentences about what is noticed, "there's wet on the tyre", from those about how it came, "we drove to the coast".</summary>
internal static class Noticing
{
    private static readonly FrozenSet<string> Words = WordSet.Of("""
        theres there something somewhere found find finding finds noticed notice saw see seen heard hear smelt smell smells feel feels felt wet damp puddle patch stain spot spots drips
        """);

    /// <summary>Words of what is not there or as it should be.</summary>
    private static readonly FrozenSet<string> Well = WordSet.Of("""
        nothing none never nobody left firm solid bright full strong plenty clean dry correct normal fine new ok okay good great healthy perfect checked check looked tested same
        gone stopped fixed cured repaired replaced renewed changed instead rather
        """);

    /// <summary>Whether some words tell of something noticed.</summary>
    public static bool Is(IEnumerable<Word> words) => words.Any(word => Words.Contains(word.Surface) || word.Is("<trouble>"));

    /// <summary>Whether some words tell of what is not there or as it should be.</summary>
    public static bool IsAbsence(IEnumerable<Word> words) => words.Any(word => Negation.Is(word) || Well.Contains(word.Surface));
}
