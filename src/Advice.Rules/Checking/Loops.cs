namespace Advice.Rules.Checking;

/// <summary>Finds loops in what should have none.</summary>
internal static class Loops
{
    /// <summary>One node of each loop: the first of the loop in the order of the edges.</summary>
    public static IEnumerable<T> In<T>(IEnumerable<(T From, T To)> edges)
        where T : notnull
    {
        var next = edges.ToLookup(edge => edge.From, edge => edge.To);
        var reached = next.ToDictionary(group => group.Key, group => Reached(group.Key, next));
        var known = new HashSet<T>();
        foreach (var start in next.Select(group => group.Key).Where(node => reached[node].Contains(node)))
        {
            // The rest of this loop would be reported once more for each of its nodes.
            if (known.Contains(start))
                continue;
            known.UnionWith(reached[start].Where(node => reached.TryGetValue(node, out var back) && back.Contains(start)));
            yield return start;
        }
    }

    private static HashSet<T> Reached<T>(T start, ILookup<T, T> next)
        where T : notnull
    {
        var reached = new HashSet<T>();
        var open = new Stack<T>(next[start]);
        while (open.TryPop(out var node))
        {
            if (!reached.Add(node))
                continue;
            foreach (var to in next[node])
                open.Push(to);
        }

        return reached;
    }
}
