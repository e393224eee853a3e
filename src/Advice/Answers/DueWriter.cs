using System.Globalization;
using Advice.Documents;
using Advice.Due;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>A service item in words.</summary>
internal static class DueWriter
{
    /// <summary>The item for that reader.</summary>
    public static DueDocument Write(DueItem due, Audience audience) => new(
        due.Item.Id, due.Item.Name.For(audience), due.Status, $"{due.Item.Because.For(audience)} {HowMuch(due)}",
        new DuePoint(due.On, Rounded(due.OdometerKm)), due.Interval.Source.ToString(), new DueAmount(due.DaysPast, Rounded(due.KmPast)),
        due.Recorded, due.OnlyIf)
    {
        SevereUse = [.. due.Uses.Select(use => use.Id)],
    };

    private static string HowMuch(DueItem due)
    {
        var byTime = due.DaysPast is { } days ? Amount(days, "days", due.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)) : null;
        var byDistance = due.KmPast is { } km ? Amount(Math.Round(km), "km", null) : null;
        var amounts = string.Join("; ", new[] { byDistance, byTime }.OfType<string>());
        var sentences = new[]
        {
            amounts.Length == 0 ? "Neither its distance nor its time can be told." : due.Recorded ? $"{amounts}." : $"No record of it is known; counted from new: {amounts}.",
            due.MayBeDone ? "If it was done since, give the day or the distance." : null,
            due.Interval.IsGiven ? "The interval is the one that was given, which wins over ours." : due.Interval.Duty is { } duty ? $"The interval is that for {duty} use{(due.Uses.Count == 0 ? "" : ": ")}{string.Join(", ", due.Uses.Select(use => use.Name))}." : null,
            due.Interval.Jurisdiction is { } law ? $"It is the interval of the law of {law}; the certificate of the last test says the day for sure." : null,
        };
        return string.Join(' ', sentences.OfType<string>());
    }

    private static double? Rounded(double? km) => km is { } known ? Math.Round(known) : null;

    private static string Amount(double past, string unit, string? on) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Math.Abs(past):N0} {unit} {(past >= 0 ? "past it" : "to go")}{(on is null ? "" : $" ({on})")}");
}
