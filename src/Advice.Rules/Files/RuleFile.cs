namespace Advice.Rules.Files;

/// <summary>One file of a rule set.</summary>
/// <param name="Path">Path relative to the rules folder, with forward slashes.</param>
/// <param name="Content">Its bytes.</param>
public sealed record RuleFile(string Path, ReadOnlyMemory<byte> Content)
{
    /// <summary>How the names of case files end.</summary>
    public const string CasesEnding = ".cases.yaml";

    /// <summary>Whether it holds cases, which are no part of the set's content.</summary>
    public bool HoldsCases => Path.EndsWith(CasesEnding, StringComparison.Ordinal);
}
