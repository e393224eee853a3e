namespace Advice.Wear;

/// <summary>What came of a projection.</summary>
public enum ProjectionStatus
{
    /// <summary>The limit will be reached, or was, within the interval.</summary>
    Projected,

    /// <summary>The last reading is at the limit or beyond it.</summary>
    Reached,

    /// <summary>The readings scatter too much for their slope: the interval has no end.</summary>
    NotDetermined,

    /// <summary>The readings do not show wear, or not of one part.</summary>
    Refused,
}
