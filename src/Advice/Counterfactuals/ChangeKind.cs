namespace Advice.Counterfactuals;

/// <summary>What kind of change, from what is only to be said to what is to be done.</summary>
public enum ChangeKind
{
    /// <summary>A fact of the vehicle that nobody stated.</summary>
    Fact,

    /// <summary>When a symptom that was reported is noticed.</summary>
    Occasion,

    /// <summary>A symptom of which nobody has spoken.</summary>
    Symptom,

    /// <summary>A trouble code.</summary>
    Code,

    /// <summary>What a check would find.</summary>
    Finding,
}
