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
        new DuePoint(due.On, due.OdometerKm is { } km ? Math.Round(km) : null), due.Interval.Source.ToString());

    private static string HowMuch(DueItem due)
    {
        var byTime = due.DaysPast is { } days ? Amount(days, "days", due.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)) : null;
        var byDistance = due.KmPast is { } km ? Amount(Math.Round(km), "km", null) : null;
        return $"{string.Join("; ", new[] { byDistance, byTime }.OfType<string>())}.";
    }

    private static string Amount(double past, string unit, string? on) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(past >= 0 ? $"Past it by {past:N0} {unit}" : $"{-past:N0} {unit} to go")}{(on is null ? "" : $" ({on})")}");
}
