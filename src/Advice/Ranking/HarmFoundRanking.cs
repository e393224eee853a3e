namespace Advice.Ranking;

/// <summary>
/// Orders checks by the harm they are expected to find per minute. A set of checks finds
/// Σ over causes weight · (1 − Π (1 − surely)), which has diminishing returns; greedy by marginal harm per minute
/// therefore holds, at the end of each of its steps, at least 1 − 1/e of what any choice could find in those minutes
/// (Streeter and Golovin 2008, from memory; the ratio rule: Mitten 1960, from memory).
/// </summary>
public static class HarmFoundRanking
{
    /// <summary>Half surely: so much is enough for an urgent cause, and for a check beside the surest one.</summary>
    private const double SurelyEnough = 0.5;

    /// <summary>Gains up to this end the list, and keys are rounded to it before ties, so that rounding errors order nothing.</summary>
    private const double LeastGain = 1e-9;

    /// <summary>All checks that find something, greedily by marginal harm per minute, ties by id.</summary>
    /// <param name="weights">Harm of each cause times its probability, 0 or more.</param>
    /// <param name="options">Checks to choose from.</param>
    public static IReadOnlyList<RankedCheck> Greedy(IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options) =>
        [.. Continue(new HarmLeft(weights), Candidate.From(weights, options), double.PositiveInfinity)];

    /// <summary>
    /// Checks that fit into the minutes together: greedy over what still fits, or, where a single check finds more than
    /// all of those, that one and greedily what fits beside it. At least ½(1 − 1/e) of the best choice.
    /// </summary>
    /// <param name="weights">Harm of each cause times its probability, 0 or more.</param>
    /// <param name="options">Checks to choose from.</param>
    /// <param name="minutes">Time to spend, min.</param>
    public static IReadOnlyList<RankedCheck> WithinBudget(
        IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options, double minutes) =>
        WithinBudget(new HarmLeft(weights), Candidate.From(weights, options), minutes);

    /// <summary>The same for candidates by id, of the harm that other checks left.</summary>
    internal static List<RankedCheck> WithinBudget(HarmLeft left, List<Candidate> candidates, double minutes)
    {
        var greedy = Continue(left.Copy(), candidates, minutes).ToList();
        var single = candidates.Where(candidate => candidate.Minutes <= minutes).MaxBy(candidate => Rounded(left.FoundBy(candidate)));
        if (single is null || left.FoundBy(single) <= greedy.Sum(check => check.HarmFound) + LeastGain)
            return greedy;

        return [left.Do(single, lifted: false), .. Continue(left, candidates.FindAll(candidate => candidate != single), minutes - single.Minutes)];
    }

    /// <summary>
    /// Greedy order in two parts: first among the checks that look for an urgent cause, until each of these is found at least half
    /// surely or nothing more finds it; then among all. A check looks for a cause if it finds it half as surely as the surest can.
    /// </summary>
    /// <param name="weights">Harm of each cause times its probability, 0 or more.</param>
    /// <param name="options">Checks to choose from.</param>
    /// <param name="urgentCauses">Indices of the causes that could make the vehicle unsafe now.</param>
    public static IReadOnlyList<RankedCheck> GreedyWithLift(
        IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options, IReadOnlyList<int> urgentCauses) =>
        [.. GreedyWithLift(weights, Candidate.From(weights, options), urgentCauses)];

    /// <summary>The same for candidates by id, as far as one asks for it, each time from the start.</summary>
    internal static IEnumerable<RankedCheck> GreedyWithLift(IReadOnlyList<double> weights, List<Candidate> candidates, IReadOnlyList<int> urgentCauses)
    {
        var left = new HarmLeft(weights);
        var done = new HashSet<string>();
        foreach (var lifted in Lifted(weights, left, candidates, urgentCauses))
        {
            done.Add(lifted.Id);
            yield return lifted;
        }

        foreach (var next in Continue(left, done.Count == 0 ? candidates : candidates.FindAll(candidate => !done.Contains(candidate.Id)), double.PositiveInfinity))
            yield return next;
    }

    /// <summary>The first of them, without the cost of the others.</summary>
    internal static RankedCheck? FirstWithLift(IReadOnlyList<double> weights, List<Candidate> candidates, IReadOnlyList<int> urgentCauses)
    {
        var left = new HarmLeft(weights);
        return Lifted(weights, left, candidates, urgentCauses).FirstOrDefault()
            ?? (Best(candidates, left) is { } best ? left.Do(best, lifted: false) : null);
    }

    /// <summary>The first of the greedy order, of checks by id, where nothing is lifted; null where none finds anything.</summary>
    /// <param name="found">The harm that each check finds.</param>
    /// <param name="minutes">Time that each takes, min.</param>
    /// <param name="mayBeDone">Whether the check with that place may be done.</param>
    internal static int? MostPerMinute(double[] found, double[] minutes, Func<int, bool> mayBeDone)
    {
        var (first, most) = ((int?)null, 0.0);
        for (var check = 0; check < found.Length; check++)
        {
            if (found[check] > LeastGain && Rounded(found[check] / minutes[check]) is var key && (first is null || key > most) && mayBeDone(check))
                (first, most) = (check, key);
        }

        return first;
    }

    private static IEnumerable<RankedCheck> Lifted(IReadOnlyList<double> weights, HarmLeft left, List<Candidate> candidates, IReadOnlyList<int> urgentCauses)
    {
        if (urgentCauses.Count == 0)
            yield break;
        var finders = candidates.FindAll(candidate => urgentCauses.Any(cause => candidate.Surely(cause) > 0));
        while (true)
        {
            var open = urgentCauses.Where(cause => left[cause] > weights[cause] * SurelyEnough)
                .Select(cause => (Cause: cause, Surest: finders.Select(candidate => candidate.Surely(cause)).DefaultIfEmpty().Max())).ToList();
            var looking = finders.Where(candidate => open.Exists(
                one => candidate.Surely(one.Cause) > 0 && candidate.Surely(one.Cause) >= one.Surest * SurelyEnough));
            if (Best(looking, left) is not { } best)
                yield break;
            finders.Remove(best);
            yield return left.Do(best, lifted: true);
        }
    }

    // MaxBy takes the first of equals, and candidates stand by id.
    private static Candidate? Best(IEnumerable<Candidate> candidates, HarmLeft left) =>
        candidates.Where(candidate => left.FoundBy(candidate) > LeastGain).MaxBy(candidate => Key(candidate, left));

    // What a check finds only falls as others are done, so that a key reckoned earlier bounds today's, and only the check in front
    // need be reckoned again (lazy greedy: Minoux 1978, from memory).
    private static IEnumerable<RankedCheck> Continue(HarmLeft left, List<Candidate> candidates, double minutes)
    {
        var queue = new PriorityQueue<Candidate, Turn>(candidates.Count);
        queue.EnqueueRange(candidates.Select((candidate, order) => (candidate, new Turn(Key(candidate, left), order))));
        while (queue.TryDequeue(out var candidate, out var earlier))
        {
            var found = left.FoundBy(candidate);
            if (candidate.Minutes > minutes || found <= LeastGain)
                continue;
            var now = earlier with { Key = Rounded(found / candidate.Minutes) };
            if (queue.TryPeek(out _, out var next) && now.CompareTo(next) > 0)
            {
                queue.Enqueue(candidate, now);
                continue;
            }

            minutes -= candidate.Minutes;
            yield return left.Do(candidate, lifted: false);
        }
    }

    private static double Key(Candidate candidate, HarmLeft left) => Rounded(left.FoundBy(candidate) / candidate.Minutes);

    private static double Rounded(double key) => Math.Round(key, 9);

    /// <summary>The largest key is served first, ties in order.</summary>
    private readonly record struct Turn(double Key, int Order) : IComparable<Turn>
    {
        public int CompareTo(Turn other) => Key > other.Key ? -1 : Key < other.Key ? 1 : Order.CompareTo(other.Order);
    }
}
