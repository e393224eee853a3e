using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench;

/// <summary>The order of the three columns of a drawing, so that few of the lines between them cross: each column in turn is put in the order of
/// the middle of what it is joined to (the barycentre method of layered drawings).</summary>
internal sealed class DrawingColumns
{
    private const int Sweeps = 12;

    /// <summary>Orders the columns.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="shows">What each shows.</param>
    /// <param name="finds">What finds each.</param>
    public DrawingColumns(IReadOnlyList<string> faults, IReadOnlyList<(string Fault, Sign Sign)> shows, IReadOnlyList<(string Fault, string Check)> finds)
    {
        Faults = [.. faults];
        Signs = [.. shows.Select(one => one.Sign).Distinct()];
        Checks = [.. finds.Select(one => one.Check).Distinct()];
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            var rows = Rows(Faults);
            Signs = Beside(shows.Select(one => (one.Sign, rows[one.Fault])), sign => sign.ToString());
            Checks = Beside(finds.Select(one => (one.Check, rows[one.Fault])), id => id);
            var (signs, checks) = (Rows(Signs), Rows(Checks));
            Faults = Beside(shows.Select(one => (one.Fault, signs[one.Sign])).Concat(finds.Select(one => (one.Fault, checks[one.Check]))), id => id);
        }
    }

    /// <summary>Signs from top to bottom.</summary>
    public List<Sign> Signs { get; private set; }

    /// <summary>Ids of the faults.</summary>
    public List<string> Faults { get; private set; }

    /// <summary>Ids of the checks.</summary>
    public List<string> Checks { get; private set; }

    /// <summary>The height of each, 0 … 1, for the columns are of one height.</summary>
    private static Dictionary<T, double> Rows<T>(List<T> column)
        where T : notnull => column.Index().ToDictionary(one => one.Item, one => (one.Index + 0.5) / column.Count);

    private static List<T> Beside<T>(IEnumerable<(T Item, double Row)> joined, Func<T, string> name) =>
        [.. joined.GroupBy(one => one.Item).OrderBy(group => group.Average(one => one.Row)).ThenBy(group => name(group.Key), StringComparer.Ordinal).Select(group => group.Key)];
}
