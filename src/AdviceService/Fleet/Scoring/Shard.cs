using System.Globalization;

namespace AdviceService.Fleet.Scoring;

/// <summary>One of several parts of equal size of the lines: every <paramref name="Of"/>th, from line <paramref name="Index"/> + 1 on.</summary>
/// <param name="Index">Which part, from 0.</param>
/// <param name="Of">How many parts there are.</param>
internal sealed record Shard(int Index, int Of)
{
    private const string IndexVariable = "JOB_COMPLETION_INDEX";

    /// <summary>All lines.</summary>
    public static Shard All { get; } = new(0, 1);

    /// <summary>Whether a line belongs to it.</summary>
    public bool Has(NumberedLine line) => (line.Number - 1) % Of == Index;

    /// <summary>As it is written.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Index}/{Of}");

    /// <summary>Reads "I/N" with I from 0, or "/N" for the index that an Indexed Job gives its pods; null where it is neither.</summary>
    public static Shard? Parse(string text)
    {
        var parts = text.Split('/');
        if (parts.Length != 2)
            return null;
        var index = parts[0].Length > 0 ? parts[0] : Environment.GetEnvironmentVariable(IndexVariable);
        return int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var i)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var of) && i < of
            ? new Shard(i, of) : null;
    }
}
