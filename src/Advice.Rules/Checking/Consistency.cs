using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking;

/// <summary>Checks that look at several entries at once.</summary>
internal sealed class Consistency(Tables tables, Problems problems)
{
    /// <summary>Checks whatever was bound. What rules say together and whether every fault is shown and found is asked only
    /// once the entries themselves are right: a faulty one would seem to lack what it meant to say.</summary>
    public void Check()
    {
        var wellFormed = problems.None;
        Cycles();
        SharedPhrases();
        if (!wellFormed)
            return;
        problems.AddAll(
            found => new Repetitions(tables, found).Refuse(),
            found => new NeverApplies(tables, found).Check(),
            Coverage);
    }

    private void Cycles()
    {
        Acyclic(tables.Occasions, tables.Occasions.Bound.Where(o => o.Within is not null).Select(o => (o.Id, o.Within!)), "lies within itself");
        Acyclic(tables.Jurisdictions, tables.Jurisdictions.Bound.Where(j => j.Within is not null).Select(j => (j.Id, j.Within!)), "lies within itself");
        Acyclic(tables.SetUps, tables.SetUps.Bound.SelectMany(s => s.Includes.Select(other => (s.Id, other))), "includes itself");
        var implies = tables.Rules.Bound.OfType<ImpliesRule>().Where(rule => rule.Id.Length > 0).ToList();
        foreach (var sign in Loops.In(implies.Select(rule => (rule.Sign, rule.Implied))))
        {
            var rule = implies.Find(r => r.Sign == sign)!;
            problems.Add(ErrorCode.Circle, tables.Rules.PlaceOf(rule.Id), $"'{sign.Id}' implies itself, through '{rule.Implied.Id}'; drop one of these rules");
        }
    }

    private void Acyclic(IDeclaredIds ids, IEnumerable<(string From, string To)> edges, string says)
    {
        foreach (var id in Loops.In(edges))
            problems.Add(ErrorCode.Circle, ids.PlaceOf(id), $"the {ids.Noun} '{id}' {says}");
    }

    private void SharedPhrases()
    {
        var owners = new Dictionary<string, (string First, string Last)>(StringComparer.Ordinal);
        foreach (var symptom in tables.Symptoms.Bound)
        {
            foreach (var phrase in symptom.Phrases.Select(phrase => phrase.ToLowerInvariant()))
                owners[phrase] = (owners.TryGetValue(phrase, out var known) ? known.First : symptom.Id, symptom.Id);
        }

        foreach (var (phrase, (first, last)) in owners.Where(one => one.Value.First != one.Value.Last))
            problems.Add(ErrorCode.SharedPhrase, tables.Symptoms.PlaceOf(last), $"the phrase '{phrase}' of '{last}' is already one of '{first}'; a phrase means one symptom");
    }

    private void Coverage(Problems found)
    {
        var shown = tables.Rules.Bound.OfType<ShowsRule>().Select(rule => rule.Fault).ToHashSet(StringComparer.Ordinal);
        var detected = tables.Checks.Bound.SelectMany(check => check.Detects).Select(d => d.Fault).ToHashSet(StringComparer.Ordinal);
        foreach (var fault in tables.Faults.Bound)
        {
            if (!shown.Contains(fault.Id))
                found.Add(ErrorCode.FaultNotShown, tables.Faults.PlaceOf(fault.Id), $"nothing shows the fault '{fault.Id}'; add a 'shows' rule");
            if (!detected.Contains(fault.Id))
                found.Add(ErrorCode.FaultNotFound, tables.Faults.PlaceOf(fault.Id), $"no check detects the fault '{fault.Id}'; name it under 'detects' of a check");
        }

        if (!tables.Facts.TryGet("duty", out _) && tables.Services.Bound.FirstOrDefault(s => s.Intervals.Any(i => i.Duty is not null)) is { } item)
            found.Add(ErrorCode.UnknownId, tables.Services.PlaceOf(item.Id), "an interval names a duty, but there is no vehicle fact 'duty'");
    }
}
