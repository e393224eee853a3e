namespace Advice.Knowledge;

/// <summary>Whether the vehicle may be driven, mildest first; unknown where something was said and nothing of it tells.</summary>
public enum DrivingAdvice
{
    /// <summary>As usual.</summary>
    Normal,

    /// <summary>Nothing that was said tells. No rule demands it.</summary>
    Unknown,

    /// <summary>Yes, but have it seen to within days.</summary>
    Soon,

    /// <summary>Only gently, straight to a workshop.</summary>
    WorkshopOnly,

    /// <summary>No.</summary>
    Stop,
}
