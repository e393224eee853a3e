using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;

namespace AdviceService.Requests;

/// <summary>Reads what a check can give. Where the check is not known only the type is looked at.</summary>
internal static class CheckResult
{
    /// <summary>A unit that fits what the check measures.</summary>
    public static string? UnitOf(this JsonValue unit, Check? check)
    {
        if (unit.Text(JsonValue.LongestId) is not { } given)
            return null;
        if (check?.Measure is { } measure && !UnitConversion.IsPossible(given, measure.Unit))
            unit.Errors.BadValue(unit.At, ErrorCode.UnfitForCheck, () => $"Must be one of {string.Join(", ", UnitConversion.Accepted(measure.Unit))}.");
        return given;
    }

    /// <summary>A value that the check can measure and that is no slip of the pen.</summary>
    public static double? ValueOf(this JsonValue value, Check? check, string? unit)
    {
        if (value.Number() is not { } given || check is null)
            return null;
        if (check.Measure is not { } measure)
            value.Errors.BadValue(value.At, ErrorCode.UnfitForCheck, () => $"This check is observed, not measured: give observation, one of {Scale(check)}.");
        else if (unit == "count" && given != Math.Floor(given))
            value.Errors.BadValue(value.At, ErrorCode.OutOfRange, "Must be a whole number: it is counted.");
        else if (unit is not null && UnitConversion.Convert(given, unit, measure.Unit) is { } converted
            && !(converted >= measure.PlausibleMinimum && converted <= measure.PlausibleMaximum))
            value.OutOfRange(measure.PlausibleMinimum, measure.PlausibleMaximum, measure.Unit);
        return given;
    }

    /// <summary>A value of the check's closed scale.</summary>
    public static string? ObservationOf(this JsonValue observation, Check? check)
    {
        if (observation.Text(JsonValue.LongestId) is not { } given || check is null)
            return null;
        if (check.Measure is not null)
            observation.Errors.BadValue(observation.At, ErrorCode.UnfitForCheck, "This check is measured, not observed: give value and unit.");
        else if (check.Observations.All(one => one.Id != given))
            observation.Errors.BadValue(observation.At, ErrorCode.UnknownId, () => $"Must be one of {Scale(check)}.");
        return given;
    }

    /// <summary>A position at which the check is done.</summary>
    public static string? PositionOf(this JsonValue given, Check? check, Catalogue catalogue)
    {
        var position = given.Entry(catalogue.Positions, "position")?.Id;
        if (position is not null && check is { Places.Count: > 0 } && !check.Places.Any(place => catalogue.PositionsOverlap(place, position)))
            given.Errors.BadValue(given.At, ErrorCode.UnfitForCheck, () => $"This check is not done there; it is done at {string.Join(", ", check.Places)}.");
        return position;
    }

    private static string Scale(Check check) => string.Join(", ", check.Observations.Select(one => one.Id));
}
