namespace Advice.Knowledge;

/// <summary>The workshop arithmetic that a measured value goes into.</summary>
/// <param name="Computation">Name of the computation.</param>
/// <param name="Input">The input that the value is.</param>
/// <param name="With">Words for inputs that the check itself decides.</param>
public sealed record CheckArithmetic(string Computation, string Input, IReadOnlyDictionary<string, string> With);
