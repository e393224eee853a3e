namespace Advice.Knowledge.Signs;

/// <summary>What kind of sign it is.</summary>
public enum SignKind
{
    /// <summary>A symptom that the driver notices.</summary>
    Symptom,

    /// <summary>A trouble code.</summary>
    Code,

    /// <summary>An abnormal outcome of a check.</summary>
    Outcome,
}
