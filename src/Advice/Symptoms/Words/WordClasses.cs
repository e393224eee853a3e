using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Which terms belong to which classes: "&lt;noise&gt;" in a phrase stands for every noise.</summary>
internal sealed class WordClasses
{
    private readonly FrozenDictionary<string, string[]> byTerm;

    /// <summary>The classes of <see cref="Usage.Classes"/>.</summary>
    /// <param name="term">Gives a word its term.</param>
    public WordClasses(Func<string, string> term)
    {
        var members = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var line in Usage.Classes.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = line.Split([' ', ':'], StringSplitOptions.RemoveEmptyEntries);
            members[parts[0]] = [.. parts[1..].SelectMany(w => members.GetValueOrDefault(w) ?? [term(w)])];
        }

        byTerm = members.SelectMany(m => m.Value.Select(t => (Term: t, Class: m.Key)))
            .GroupBy(p => p.Term, p => p.Class, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
    }

    /// <summary>The classes of a term.</summary>
    public IReadOnlyList<string> Of(string term) => byTerm.GetValueOrDefault(term, []);

    /// <summary>Whether this is a class and no term.</summary>
    public static bool IsClass(string term) => term[0] == '<';
}
