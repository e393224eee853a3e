namespace Advice.Counterfactuals;

/// <summary>How a condition stands in a case.</summary>
public enum ConditionStatus
{
    /// <summary>It is met.</summary>
    Held,

    /// <summary>It is not met.</summary>
    Failed,

    /// <summary>Nothing in the case tells.</summary>
    Unknown,
}
