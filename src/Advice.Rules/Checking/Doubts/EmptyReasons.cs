using System.Text.RegularExpressions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Reasons that say no more than the names of what they connect.</summary>
internal sealed partial class EmptyReasons(Tables tables, Problems doubts)
{
    private static readonly HashSet<string> Particles =
        [.. "the and its with when then that this are has have can does for from into which while because there too may".Split(' ')];

    private readonly Dictionary<Text, HashSet<string>> _words = [];

    /// <summary>Checks the reasons of links, driving advice, normal reports and services.</summary>
    public void Check()
    {
        foreach (var rule in tables.Rules.Bound)
        {
            if (rule.Because.Trade.Length > 0 && Repeats(rule.Because, [.. Named(rule)]))
                doubts.Add(WarningCode.EmptyReason, tables.Rules.PlaceOf(rule.Id), $"the reason of '{rule.Id}' only repeats the names of what it is about; say how the one brings about the other");
        }

        foreach (var service in tables.Services.Bound.Where(service => Repeats(service.Because, service.Name)))
            doubts.Add(WarningCode.EmptyReason, tables.Services.PlaceOf(service.Id), $"the reason of '{service.Id}' only repeats its name; say what happens without it");
    }

    private bool Repeats(Text reason, params Text[] names)
    {
        var known = Array.ConvertAll(names, WordsOf);
        return known.Any(words => words.Count > 0) && Words(reason.Trade).All(word => known.Any(words => words.Contains(word)));
    }

    // Many rules are about one fault or symptom.
    private HashSet<string> WordsOf(Text name) =>
        _words.TryGetValue(name, out var known) ? known : _words[name] = [.. Words(name.Trade), .. Words(name.Plain)];

    // A trouble code says what is wrong, and an implication is one of words: neither has a mechanism to tell.
    private IEnumerable<Text> Named(Rule rule)
    {
        var (fault, symptoms) = rule switch
        {
            ShowsRule { Sign.Kind: SignKind.Symptom } shows => (shows.Fault, [shows.Sign.Id]),
            DrivingRule driving => (driving.Fault, driving.Symptoms),
            NormalRule normal => (null, [normal.Symptom]),
            _ => (null, (IReadOnlyList<string>)[]),
        };
        if (tables.Faults.TryGet(fault, out var named))
            yield return named.Name;
        foreach (var id in symptoms)
        {
            if (tables.Symptoms.TryGet(id, out var symptom))
                yield return symptom.Name;
        }
    }

    private static IEnumerable<string> Words(string text) =>
        Word().Matches(text.ToLowerInvariant()).Select(match => match.Value).Where(word => !Particles.Contains(word)).Select(Stem);

    // Rough, for it is compared with itself only.
    private static string Stem(string word) => Ending().Replace(word, "");

    [GeneratedRegex(@"[a-z]{3,}")]
    private static partial Regex Word();

    [GeneratedRegex(@"(?<=[a-z]{3})(ing|ed|es|s|e)$")]
    private static partial Regex Ending();
}
