using System.Globalization;

namespace AdviceService.Tests.Complaints;

/// <summary>
/// How many complaints end in an accepted system. Nothing is fitted by machine; the interval and the spread over ten parts say how far the figures
/// are chance, and the two halves how far the phrases were made to fit: the wording of odd lines was read while they were written, that of even lines never.
/// </summary>
internal sealed class ComplaintFigures
{
    private const int Parts = 10;
    private readonly ComplaintConfusion confusion = new();
    private readonly List<(int Line, Complaint Complaint, int Rank, bool Understood)> read = [];

    /// <summary>Adds the next complaint.</summary>
    /// <param name="complaint">The complaint.</param>
    /// <param name="systems">Systems of the suspects, the likeliest first.</param>
    /// <param name="understood">Whether any symptom was understood.</param>
    public void Add(Complaint complaint, IEnumerable<string> systems, bool understood)
    {
        var named = systems.Distinct().ToList();
        var rank = named.FindIndex(complaint.Systems.Contains);
        confusion.Add(complaint.System, named.FirstOrDefault());
        read.Add((read.Count + 1, complaint, rank < 0 ? int.MaxValue : rank, understood));
    }

    /// <summary>Share with an accepted system among the first three.</summary>
    public double AmongThree => Share(read, r => r.Rank < 3);

    /// <summary>The table.</summary>
    public IEnumerable<string> Lines()
    {
        yield return "                              n   first  first 3  nothing understood (per cent)";
        yield return Row("all", read);
        yield return Row("all that have a text", [.. read.Where(r => r.Complaint.Symptoms.Length > 0)]);
        yield return Row("odd lines (read)", [.. read.Where(r => r.Line % 2 == 1)]);
        yield return Row("even lines (never read)", [.. read.Where(r => r.Line % 2 == 0)]);
        var bySystem = read.GroupBy(r => r.Complaint.System).OrderBy(g => g.Key, StringComparer.Ordinal).ToList();
        foreach (var system in bySystem)
            yield return Row(system.Key, [.. system]);
        yield return Format("macro average", bySystem.Count, [.. Measures.Select(m => bySystem.Average(g => Share(g, m)))]);
        var intervals = Measures.Select(m => Resampling.Interval([.. read.Select(m)])).ToList();
        yield return Format("95 % interval, from", read.Count, [.. intervals.Select(i => i.Low)]);
        yield return Format("95 % interval, to", read.Count, [.. intervals.Select(i => i.High)]);
        var parts = read.GroupBy(r => r.Line % Parts).Select(g => g.ToList()).ToList();
        yield return Format("least of ten parts", parts.Count, [.. Measures.Select(m => parts.Min(p => Share(p, m)))]);
        yield return Format("most of ten parts", parts.Count, [.. Measures.Select(m => parts.Max(p => Share(p, m)))]);
        yield return Format("standard deviation of them", parts.Count, [.. Measures.Select(m => Deviation([.. parts.Select(p => Share(p, m))]))]);
    }

    /// <summary>What was named first of the complaints of each system.</summary>
    public IEnumerable<string> Confusion() => confusion.Lines();

    private static Func<(int Line, Complaint Complaint, int Rank, bool Understood), bool>[] Measures { get; } =
        [r => r.Rank == 0, r => r.Rank < 3, r => !r.Understood];

    private static string Row(string name, List<(int Line, Complaint Complaint, int Rank, bool Understood)> some) =>
        Format(name, some.Count, [.. Measures.Select(m => Share(some, m))]);

    private static string Format(string name, int count, double[] shares) => string.Create(
        CultureInfo.InvariantCulture, $"{name,-27} {count,4}  {100 * shares[0],5:F1}  {100 * shares[1],5:F1}  {100 * shares[2],5:F1}");

    private static double Share<T>(IEnumerable<T> some, Func<T, bool> holds) => some.Select(r => holds(r) ? 1.0 : 0).DefaultIfEmpty().Average();

    private static double Deviation(double[] values) => Math.Sqrt(values.Sum(v => Math.Pow(v - values.Average(), 2)) / (values.Length - 1));
}
