namespace Advice.Knowledge.Checks;

/// <summary>The workshop arithmetic that a finding goes into.</summary>
/// <param name="Computation">Name of the computation.</param>
/// <param name="Input">The input that the measured value is; null where a finding carries all of them.</param>
/// <param name="With">Words for inputs that the check itself decides.</param>
/// <param name="Asks">Inputs that a finding may carry.</param>
/// <param name="Facts">Ids of the vehicle facts that some of those inputs are: each is taken for the other where that is not given.</param>
public sealed record CheckArithmetic(
    string Computation, string? Input, IReadOnlyDictionary<string, string> With, IReadOnlyList<string> Asks, IReadOnlyDictionary<string, string> Facts)
{
    /// <summary>The value that is held against the limits in place of the measured one: what would have been read under their conditions.</summary>
    public string? Judges { get; init; }
}
