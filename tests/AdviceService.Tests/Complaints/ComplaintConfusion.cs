namespace AdviceService.Tests.Complaints;

/// <summary>Under which system complaints were filed, and which one the answers name first.</summary>
internal sealed class ComplaintConfusion
{
    private const string None = "(none)";
    private readonly List<(string Filed, string First)> counted = [];

    /// <summary>Adds the next complaint.</summary>
    /// <param name="filed">Id of the system that it was filed under.</param>
    /// <param name="first">Id of the system that is named first; null where none is.</param>
    public void Add(string filed, string? first) => counted.Add((filed, first ?? None));

    /// <summary>The table: a row for each system of the complaints, a column for each one named first, the one that it was filed under marked.</summary>
    public IEnumerable<string> Lines()
    {
        var columns = counted.Select(c => c.First).Distinct().Order(StringComparer.Ordinal).ToList();
        yield return "Filed under (down), named first (across); others than the filed one may be accepted too:";
        yield return $"{"",-14}{string.Concat(columns.Select(c => $"{Short(c),8}"))}";
        foreach (var row in counted.GroupBy(c => c.Filed).OrderBy(g => g.Key, StringComparer.Ordinal))
            yield return $"{row.Key,-14}{string.Concat(columns.Select(c => $"{Cell(row.Count(one => one.First == c), c == row.Key),8}"))}";
    }

    private static string Cell(int count, bool same) => same ? $"[{count}]" : count == 0 ? "." : $"{count}";

    private static string Short(string id) => id.Length <= 7 ? id : id[..7];
}
