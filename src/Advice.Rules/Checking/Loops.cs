namespace Advice.Rules.Checking;

/// <summary>Finds loops in what should have none.</summary>
internal static class Loops
{
    /// <summary>One node of each loop: the first of the loop in the order of the edges.</summary>
    public static IEnumerable<T> In<T>(IEnumerable<(T From, T To)> edges)
        where T : notnull
    {
        var next = edges.ToLookup(edge => edge.From, edge => edge.To);
        var known = new HashSet<T>();
        foreach (var start in next.Select(group => group.Key))
        {
            if (known.Contains(start))
                continue;
            var reached = new HashSet<T>();
            var open = new Stack<T>(next[start]);
            while (open.TryPop(out var node))
            {
                if (!reached.Add(node))
                    continue;
                foreach (var to in next[node])
                    open.Push(to);
            }

            if (!reached.Contains(start))
                continue;
            // The rest of this loop would be reported once more for each of its nodes.
            known.UnionWith(reached);
            yield return start;
        }
    }
}
