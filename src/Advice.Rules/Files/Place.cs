namespace Advice.Rules.Files;

/// <summary>A place in a rule file.</summary>
/// <param name="File">Path relative to the rules folder, with forward slashes.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct Place(string File, int Line, int Column);
