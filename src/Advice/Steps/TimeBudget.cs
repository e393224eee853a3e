using Advice.Ranking;

namespace Advice.Steps;

/// <summary>Which checks fit into the time that there is.</summary>
internal static class TimeBudget
{
    /// <summary>Ids of the checks to do within the minutes: those lifted for safety first, then the most harm found in what is left.</summary>
    /// <param name="ranked">All checks, ranked without a budget.</param>
    /// <param name="weights">Weight of each suspect.</param>
    /// <param name="candidates">The checks that can be done here, by id.</param>
    /// <param name="minutes">Time that there is, min.</param>
    public static HashSet<string> Fitting(
        IReadOnlyList<RankedCheck> ranked, IReadOnlyList<double> weights, IReadOnlyList<Candidate> candidates, double minutes)
    {
        var byId = candidates.ToDictionary(candidate => candidate.Id);
        var left = new HarmLeft(weights);
        var fitting = new HashSet<string>();
        foreach (var lifted in ranked.Where(one => one.Lifted))
        {
            if (!byId.TryGetValue(lifted.Id, out var candidate) || candidate.Minutes > minutes)
                continue;
            fitting.Add(candidate.Id);
            byId.Remove(candidate.Id);
            minutes -= candidate.Minutes;
            left.Do(candidate, lifted: true);
        }

        fitting.UnionWith(HarmFoundRanking.WithinBudget(left, [.. candidates.Where(candidate => byId.ContainsKey(candidate.Id))], minutes).Select(one => one.Id));
        return fitting;
    }
}
