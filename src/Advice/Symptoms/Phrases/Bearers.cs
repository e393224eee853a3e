using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Symptoms.Mentions;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>
/// Which systems can bear a symptom, by the faults that show it: "the window makes a crunching noise" is no grinding of brakes or wheels.
/// </summary>
internal sealed class Bearers
{
    /// <summary>Words between a part and what it does.</summary>
    private static readonly FrozenSet<string> Linking = WordSet.Stems("make give have keep start begin sound now");

    private readonly Dictionary<string, HashSet<string>> systems;

    /// <summary>Nothing known: any part may do anything.</summary>
    public static Bearers Any { get; } = new();

    private Bearers() => systems = [];

    /// <summary>The bearers by the rules of a catalogue; a symptom takes over those of the ones that imply it or that it implies.</summary>
    public Bearers(Catalogue catalogue)
    {
        var own = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom)
            .Select(rule => (Symptom: rule.Sign.Id, catalogue.Faults[rule.Fault].System)).ToLookup(one => one.Symptom, one => one.System);
        var implied = catalogue.Rules.Values.OfType<ImpliesRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom && rule.Implied.Kind == SignKind.Symptom)
            .SelectMany(rule => new[] { (One: rule.Sign.Id, Other: rule.Implied.Id), (One: rule.Implied.Id, Other: rule.Sign.Id) }).ToLookup(one => one.One, one => one.Other);
        systems = catalogue.Symptoms.Keys.ToDictionary(
            symptom => symptom, symptom => own[symptom].Concat(implied[symptom].SelectMany(other => own[other])).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>Whether the part that is said to do it belongs to systems of which none can.</summary>
    /// <param name="match">What is said.</param>
    /// <param name="sentence">The sentence.</param>
    /// <param name="mentions">Where the text speaks of systems.</param>
    public bool Denies(PhraseMatch match, IReadOnlyList<Word> sentence, Lazy<List<SystemMention>> mentions)
    {
        if (!match.Words.Any(w => w.Is("<noise>") || w.Is("<shakes>")) || !systems.TryGetValue(match.Meaning, out var able) || able.Count == 0)
            return false;
        var before = sentence.Where(w => w.Clause == match.First.Clause && w.Kind == WordKind.Content && w.Index < match.First.Index && !match.Words.Contains(w))
            .Reverse().SkipWhile(w => Linking.Contains(w.Term)).FirstOrDefault();
        if (before is null)
            return false;
        var named = mentions.Value.Where(m => m.Weight == 1 && m.Start <= before.Start && before.End <= m.End).ToList();
        return named.Count > 0 && !named.Exists(m => able.Contains(m.System));
    }
}
