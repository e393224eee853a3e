using Advice.Knowledge.Limits;

namespace Advice;

/// <summary>A service that was done.</summary>
/// <param name="On">The day, if known.</param>
/// <param name="OdometerKm">The distance then, km, if known.</param>
/// <param name="MakersInterval">The interval that the caller gives for it, if any.</param>
public sealed record ServiceDone(DateOnly? On, double? OdometerKm, Interval? MakersInterval = null)
{
    /// <summary>Whether anything tells when it was done.</summary>
    public bool IsDated => On is not null || OdometerKm is not null;
}
