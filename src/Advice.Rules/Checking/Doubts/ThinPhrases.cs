using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Phrases of which so little counts when a text is read that harmless texts hold it: "like a boat" is found in "I towed a boat".</summary>
internal sealed class ThinPhrases(Tables tables, Problems doubts)
{
    /// <summary>Two words tell too little where by the number of symptoms that use them they would stand together in more than one of so many.</summary>
    private const double Rare = 33;

    /// <summary>More words tell enough.</summary>
    private const int Most = 2;

    /// <summary>In a small set every word is one of few.</summary>
    private const int FewestUses = 5;

    /// <summary>Words that do not count and without which others say something else.</summary>
    private static readonly FrozenSet<string> Bearing = new[] { "like", "as", "too", "in", "at", "to", "from", "into", "onto", "with", "by", "for", "of" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Checks the phrases of symptoms. Who writes only the words that count means them.</summary>
    public void Check()
    {
        var symptoms = tables.Symptoms.Bound;
        var reader = new PhraseWords(symptoms.SelectMany(symptom => symptom.Phrases));
        var uses = new Dictionary<string, int>(StringComparer.Ordinal);
        var few = new List<(string Id, string Phrase, CountedWords Counted)>();
        foreach (var symptom in symptoms)
        {
            var used = new HashSet<string>(StringComparer.Ordinal);
            foreach (var phrase in symptom.Phrases)
            {
                var counted = reader.Of(phrase);
                used.UnionWith(counted.Terms);
                if (counted.LeftOut.Count > 0 && counted.Terms.Count <= Most)
                    few.Add((symptom.Id, phrase, counted));
            }

            foreach (var term in used)
                uses[term] = uses.GetValueOrDefault(term) + 1;
        }

        foreach (var (id, phrase, counted) in few.Where(one => IsThin(one.Counted)))
            doubts.Add(WarningCode.ThinPhrase, tables.Symptoms.PlaceOf(id), $"of the phrase '{phrase}' of '{id}' only '{counted.Words}' counts when a text is read; say more, or write only that if it is meant");

        bool IsThin(CountedWords counted) => counted.Terms switch
        {
            [_] => true,
            [var one, var other] => counted.LeftOut.Any(Bearing.Contains) && uses[one] >= FewestUses && uses[other] >= FewestUses
                && (double)symptoms.Count / uses[one] * symptoms.Count / uses[other] < Rare,
            _ => false,
        };
    }
}
