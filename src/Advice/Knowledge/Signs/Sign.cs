namespace Advice.Knowledge.Signs;

/// <summary>Something seen that speaks for or against faults.</summary>
/// <param name="Kind">What kind of sign.</param>
/// <param name="Id">Id of the symptom, code or check.</param>
/// <param name="Value">For outcomes: the abnormal value.</param>
public readonly record struct Sign(SignKind Kind, string Id, string? Value = null)
{
    /// <summary>Value of an outcome of a measured check beyond its limit.</summary>
    public const string BeyondLimit = "beyond-limit";

    /// <summary>A symptom.</summary>
    public static Sign Symptom(string id) => new(SignKind.Symptom, id);

    /// <summary>A trouble code.</summary>
    public static Sign Code(string id) => new(SignKind.Code, id);

    /// <summary>An abnormal outcome.</summary>
    public static Sign Outcome(string check, string value) => new(SignKind.Outcome, check, value);

    /// <summary>Unique text form, for ordering and diagnostics.</summary>
    public override string ToString() => Value is null ? $"{Kind}:{Id}" : $"{Kind}:{Id}={Value}";
}
