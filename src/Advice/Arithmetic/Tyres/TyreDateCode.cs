using System.Globalization;
using System.Text.RegularExpressions;

namespace Advice.Arithmetic.Tyres;

/// <summary>
/// The date code that ends a tyre identification number: two digits of the week and two of the year (49 CFR 574.5). Before July 2000 the year had one
/// digit, and the decade cannot be known.
/// </summary>
/// <param name="Week">Week of the year, 1 … 53.</param>
/// <param name="Years">The year, or the two that it may be.</param>
public sealed partial record TyreDateCode(int Week, IReadOnlyList<int> Years)
{
    /// <summary>Three or four digits.</summary>
    [GeneratedRegex(@"^(0[1-9]|[1-4]\d|5[0-3])\d{1,2}$")]
    public static partial Regex Form();

    /// <summary>Reads a code of that form.</summary>
    public static TyreDateCode Read(string code)
    {
        var (week, year) = (int.Parse(code.AsSpan(0, 2), CultureInfo.InvariantCulture), int.Parse(code.AsSpan(2), CultureInfo.InvariantCulture));
        return new TyreDateCode(week, code.Length == 4 ? [2000 + year] : [1980 + year, 1990 + year]);
    }

    /// <summary>The Monday of that week in the latest year that it may be, by the calendar of ISO 8601; the last week where the year has no week 53.</summary>
    public DateOnly MadeNotAfter =>
        DateOnly.FromDateTime(ISOWeek.ToDateTime(Years[^1], Math.Min(Week, ISOWeek.GetWeeksInYear(Years[^1])), DayOfWeek.Monday));

    /// <summary>Age on a day, years; of a code with one digit of the year the least that it may be.</summary>
    public double AgeYears(DateOnly on) => (on.DayNumber - MadeNotAfter.DayNumber) / 365.25;

    /// <summary>Trade practice for passenger tyres: look closely from six years on, replace by ten.</summary>
    public static string Of(double years) => years >= 10 ? "replace" : years >= 6 ? "inspect" : "young";
}
