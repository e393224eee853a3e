namespace Advice.Rules.Network;

/// <summary>Lists that stand in an order.</summary>
internal static class Sorted
{
    /// <summary>Two such lists as one, in the same order; of equals those of the first list come first.</summary>
    public static IReadOnlyList<T> Merge<T>(IReadOnlyList<T> first, IReadOnlyList<T> second, Comparison<T> order)
    {
        if (first.Count == 0 || second.Count == 0)
            return first.Count == 0 ? second : first;
        var merged = new List<T>(first.Count + second.Count);
        var taken = 0;
        foreach (var one in first)
        {
            while (taken < second.Count && order(second[taken], one) < 0)
                merged.Add(second[taken++]);
            merged.Add(one);
        }

        for (; taken < second.Count; taken++)
            merged.Add(second[taken]);
        return merged;
    }
}
