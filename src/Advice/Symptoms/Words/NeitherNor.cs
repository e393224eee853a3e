using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Reads "neither the horn nor the wipers work" as "the horn and the wipers fail".</summary>
internal static class NeitherNor
{
    private const string Failing = "fail";
    private static readonly FrozenSet<string> Working = WordSet.Of("work works worked function functions operate operates respond responds");

    /// <summary>The words, with what neither of two things does turned into what both of them do.</summary>
    /// <param name="words">The words of a text.</param>
    public static void Resolve(List<Word> words)
    {
        for (var neither = 0; neither < words.Count; neither++)
        {
            if (words[neither].Surface != "neither")
                continue;
            var clause = words[neither].Clause;
            var nor = words.FindIndex(neither, w => w.Surface == "nor" && w.Clause == clause);
            var verb = nor < 0 ? -1 : words.FindIndex(nor, w => Working.Contains(w.Surface) && w.Clause == clause);
            if (verb < 0)
                continue;
            words[neither] = words[neither] with { Surface = "both", Term = "both", Kind = WordKind.Filler };
            words[nor] = words[nor] with { Surface = "and", Term = "and", Kind = WordKind.Link };
            words[verb] = words[verb] with { Surface = Failing, Term = Failing };
        }
    }
}
