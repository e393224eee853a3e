using System.Globalization;
using Advice.Documents.Dues;
using Advice.Due;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Answers;

/// <summary>A service item in words.</summary>
internal sealed class DueWriter(Catalogue catalogue)
{
    /// <summary>The item for that reader.</summary>
    public DueDocument Write(DueItem due, Audience audience) => new(
        due.Item.Id, due.Item.Name.For(audience), due.Status, $"{due.Item.Because.For(audience)} {HowMuch(due, audience)}",
        new DuePoint(due.On, Rounded(due.OdometerKm)), due.Interval.Source.ToString(), new DueAmount(due.DaysPast, Rounded(due.KmPast)),
        due.Recorded, due.OnlyIf)
    {
        SevereUse = [.. due.Uses.Select(use => use.Id)],
    };

    private string HowMuch(DueItem due, Audience audience)
    {
        var byTime = due.DaysPast is { } days ? Amount(days, "days", due.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), audience) : null;
        var byDistance = due.KmPast is { } km ? Amount(Math.Round(km), "km", null, audience) : null;
        var amounts = string.Join("; ", new[] { byDistance, byTime }.OfType<string>());
        var sentences = new[]
        {
            amounts.Length == 0 ? Say(Sentences.DueUnknown) : due.Recorded ? $"{amounts}." : Say(Sentences.DueFromNew, amounts),
            due.MayBeDone ? Say(Sentences.DueIfDone) : null,
            due.Interval.IsGiven ? Say(Sentences.DueGivenInterval)
            : due.Interval.Duty is not { } duty ? null
            : due.Uses.Count == 0 ? Say(Sentences.DueForUse, duty) : Say(Sentences.DueForUses, duty, string.Join(", ", due.Uses.Select(use => use.Name))),
            due.Interval.Jurisdiction is { } law ? Say(Sentences.DueByLaw, law) : null,
        };
        return string.Join(' ', sentences.OfType<string>());

        string Say(Sentence sentence, params ReadOnlySpan<object?> slots) => catalogue.Say(audience, sentence, slots);
    }

    private static double? Rounded(double? km) => km is { } known ? Math.Round(known) : null;

    private string Amount(double past, string unit, string? on, Audience audience)
    {
        var amount = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(past):N0} {unit}");
        return catalogue.Say(audience, past >= 0 ? Sentences.Past : Sentences.ToGo, amount) + (on is null ? "" : $" ({on})");
    }
}
