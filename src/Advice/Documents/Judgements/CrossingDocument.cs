namespace Advice.Documents.Judgements;

/// <summary>Where and when a limit is reached.</summary>
/// <param name="Odometer">Distance driven, in the unit of the first reading.</param>
/// <param name="On">The day at the rate of driving so far; null = after 2100.</param>
/// <param name="AlreadyPast">Whether that day lies before the day that counts.</param>
public sealed record CrossingDocument(Amount Odometer, DateOnly? On, bool AlreadyPast);
