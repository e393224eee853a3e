namespace Advice.Knowledge;

/// <summary>Whether the vehicle may be driven, mildest first.</summary>
public enum DrivingAdvice
{
    /// <summary>As usual.</summary>
    Normal,

    /// <summary>Yes, but have it seen to within days.</summary>
    Soon,

    /// <summary>Only gently, straight to a workshop.</summary>
    WorkshopOnly,

    /// <summary>No.</summary>
    Stop,
}
