using System.Globalization;
using System.Text.RegularExpressions;

namespace Advice.Arithmetic.Oils;

/// <summary>An engine-oil grade of SAE J300: a cold part, a hot part, or both.</summary>
/// <param name="Cold">The number before W; null = none.</param>
/// <param name="Hot">The number of the hot part; null = none.</param>
public sealed partial record OilGrade(int? Cold, int? Hot)
{
    private static readonly int[] ColdNumbers = [0, 5, 10, 15, 20, 25];
    private static readonly int[] HotNumbers = [8, 12, 16, 20, 30, 40, 50, 60];

    /// <summary>How a grade is written: 5W-30, 10W40, 30, SAE 30, 5W.</summary>
    [GeneratedRegex(@"^(SAE )?((?<cold>\d{1,2})W(-?(?<hot>\d{1,2}))?|(?<hot>\d{1,2}))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex Form();

    /// <summary>Reads a grade; null where J300 has none of that name.</summary>
    public static OilGrade? Read(string text)
    {
        var match = Form().Match(text);
        if (!match.Success)
            return null;
        var grade = new OilGrade(Number(match.Groups["cold"]), Number(match.Groups["hot"]));
        return (grade.Cold is not { } cold || ColdNumbers.Contains(cold)) && (grade.Hot is not { } hot || HotNumbers.Contains(hot)) ? grade : null;
    }

    /// <inheritdoc/>
    public override string ToString() => (Cold, Hot) switch
    {
        ({ } cold, { } hot) => $"{cold}W-{hot}",
        ({ } cold, null) => $"{cold}W",
        (null, { } hot) => $"{hot}",
        _ => "none",
    };

    private static int? Number(Group group) => group.Success ? int.Parse(group.ValueSpan, CultureInfo.InvariantCulture) : null;
}
