using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Joins the two halves of a word that is also written apart: "drive shaft", "tail-pipe".</summary>
internal static class Compounds
{
    private static readonly FrozenSet<string> Known = WordSet.Stems(Usage.Compounds);

    /// <summary>The words with such halves joined.</summary>
    /// <param name="words">The words of a text.</param>
    public static List<RawWord> Join(IEnumerable<RawWord> words)
    {
        var joined = new List<RawWord>();
        foreach (var word in words)
        {
            if (joined.Count > 0 && joined[^1] is var first && first.Clause == word.Clause && Known.Contains(WordForms.Stem(first.Text + word.Text)))
                joined[^1] = first with { Text = first.Text + word.Text, End = word.End };
            else
                joined.Add(word);
        }

        return joined;
    }
}
