namespace Advice.Symptoms.Words;

/// <summary>Groups of words that stand for one word, such as "not work" for "fail".</summary>
internal sealed class WordGroups
{
    private readonly Dictionary<string, List<(string[] Terms, string Meaning)>> byFirst = new(StringComparer.Ordinal);

    /// <summary>These groups; the longest wins, then the first.</summary>
    /// <param name="groups">Terms, without fillers in between, and what they mean together.</param>
    public WordGroups(IEnumerable<(string[] Terms, string Meaning)> groups)
    {
        foreach (var group in groups.OrderByDescending(g => g.Terms.Length))
        {
            if (!byFirst.TryGetValue(group.Terms[0], out var list))
                byFirst[group.Terms[0]] = list = [];
            list.Add(group);
        }
    }

    /// <summary>The words with every group replaced by one word; fillers between its words are no hindrance.</summary>
    public List<Word> Join(List<Word> words)
    {
        var joined = new List<Word>(words.Count);
        for (var i = 0; i < words.Count; i++)
        {
            var (length, meaning) = At(words, i);
            joined.Add(length == 0 ? words[i] : words[i] with
            {
                Surface = meaning,
                Term = meaning,
                Kind = WordKind.Content,
                End = words[i + length - 1].End,
            });
            i += Math.Max(0, length - 1);
        }

        return joined;
    }

    private (int Length, string Meaning) At(List<Word> words, int start)
    {
        foreach (var (terms, meaning) in byFirst.GetValueOrDefault(words[start].Term, []))
        {
            int next = start + 1, found = 1;
            for (; found < terms.Length && next < words.Count && words[next].Clause == words[start].Clause; next++)
            {
                if (words[next].Term == terms[found])
                    found++;
                else if (words[next].Kind != WordKind.Filler || next - start > 2 * terms.Length)
                    break;
            }

            if (found == terms.Length)
                return (next - start, meaning);
        }

        return (0, "");
    }
}
