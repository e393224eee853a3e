namespace Advice.Documents.Dues;

/// <summary>When an item is due: whichever comes first.</summary>
public sealed record DuePoint(DateOnly? On, double? OdometerKm);
