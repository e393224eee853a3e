namespace Advice.Documents;

/// <summary>One trouble code as understood.</summary>
/// <param name="Code">The code.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Used">Whether the rules use it.</param>
public sealed record UnderstoodCode(string Code, string Meaning, bool Used);
