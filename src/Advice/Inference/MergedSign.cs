namespace Advice.Inference;

/// <summary>The manifestations of one id and one presence as one, in a form that does not depend on the order they came in.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Leak">The largest leak, 0 … 1.</param>
/// <param name="Links">One link for each cause, strength above 0, by cause.</param>
internal sealed record MergedSign(string Id, double Leak, CauseLink[] Links)
{
    /// <summary>The signs that are present, or those that are absent, by id.</summary>
    public static MergedSign[] All(NoisyOrNetwork network, bool present)
    {
        Manifestation[] own = [.. network.Manifestations.Where(manifestation => manifestation.Present == present)];
        return own.Zip(own.Skip(1)).All(pair => string.CompareOrdinal(pair.First.Id, pair.Second.Id) < 0)
            ? Array.ConvertAll(own, one => new MergedSign(one.Id, one.Leak, StrongestByCause(one.Links)))
            :
            [
                .. own.GroupBy(one => one.Id, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => new MergedSign(
                    group.Key, group.Max(one => one.Leak), StrongestByCause([.. group.SelectMany(one => one.Links)]))),
            ];
    }

    /// <summary>P(present) before anything else is known: 1 − (1 − leak) · Π (1 − p·q).</summary>
    public double PriorProbability(IReadOnlyList<double> priors)
    {
        var absent = 1 - Leak;
        foreach (var link in Links)
            absent *= 1 - priors[link.Cause] * link.Strength;
        return 1 - absent;
    }

    /// <summary>One link for each cause, the strongest, by cause; links without strength say nothing and are left out.</summary>
    public static CauseLink[] StrongestByCause(IReadOnlyList<CauseLink> links)
    {
        CauseLink[] sorted = [.. links];
        if (Array.Exists(sorted, link => link.Strength <= 0))
            sorted = Array.FindAll(sorted, link => link.Strength > 0);
        if (AreByCause(sorted))
            return sorted;
        Array.Sort(sorted, static (a, b) =>
            a.Cause != b.Cause ? a.Cause.CompareTo(b.Cause) : b.Strength.CompareTo(a.Strength));
        var kept = 0;
        foreach (var link in sorted)
            if (kept == 0 || sorted[kept - 1].Cause != link.Cause)
                sorted[kept++] = link;
        return sorted[..kept];
    }

    private static bool AreByCause(CauseLink[] links)
    {
        for (var i = 1; i < links.Length; i++)
        {
            if (links[i - 1].Cause >= links[i].Cause)
                return false;
        }

        return true;
    }
}
