namespace Advice.Documents.Understood;

/// <summary>One trouble code as understood.</summary>
/// <param name="Code">The code.</param>
/// <param name="Meaning">What it means; of one that the rules do not know, what its first characters say.</param>
/// <param name="Used">Whether the rules use it.</param>
/// <param name="FailureType">Its failure type, if it was given with one.</param>
public sealed record UnderstoodCode(string Code, string Meaning, bool Used, CodeFailureType? FailureType);
