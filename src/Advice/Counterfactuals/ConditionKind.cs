namespace Advice.Counterfactuals;

/// <summary>What a condition asks about.</summary>
public enum ConditionKind
{
    /// <summary>A fact of the vehicle.</summary>
    Fact,

    /// <summary>A symptom.</summary>
    Symptom,

    /// <summary>When a symptom is noticed.</summary>
    Occasion,

    /// <summary>A trouble code.</summary>
    Code,

    /// <summary>That a symptom is not there.</summary>
    Without,

    /// <summary>The service history.</summary>
    Service,
}
