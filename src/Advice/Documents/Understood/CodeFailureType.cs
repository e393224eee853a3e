namespace Advice.Documents.Understood;

/// <summary>The failure type byte of a trouble code.</summary>
/// <param name="Byte">Two hexadecimal digits.</param>
/// <param name="Meaning">How the circuit or part failed; null where the rule set does not know.</param>
public sealed record CodeFailureType(string Byte, string? Meaning);
