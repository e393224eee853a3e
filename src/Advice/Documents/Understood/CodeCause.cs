namespace Advice.Documents.Understood;

/// <summary>A fault that sets a code.</summary>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Name">Its name.</param>
/// <param name="Share">In what share of such codes it is the cause, on an average vehicle.</param>
public sealed record CodeCause(string Fault, string Name, double Share);
