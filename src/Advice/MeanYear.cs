namespace Advice;

/// <summary>The mean year of the Gregorian calendar, by which ages and intervals are reckoned.</summary>
public static class MeanYear
{
    /// <summary>Its length, days.</summary>
    public const double Days = 365.2425;

    /// <summary>Years from one day to another; negative where that lies before it.</summary>
    public static double Between(DateOnly from, DateOnly to) => (to.DayNumber - from.DayNumber) / Days;
}
