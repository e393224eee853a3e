namespace Advice.Rules.Checking;

/// <summary>One thing that is wrong in a rule file.</summary>
/// <param name="File">Path relative to the rules folder, with forward slashes.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Code">The kind of error or warning, which has a page in docs/errors.</param>
/// <param name="Message">What is wrong and what would be right.</param>
/// <param name="Nearest">The nearest right word, where one is near.</param>
public sealed record RuleFileError(string File, int Line, int Column, string Code, string Message, string? Nearest = null)
{
    /// <summary>Whether the set can be used all the same.</summary>
    public bool IsWarning => WarningCode.All.Contains(Code);

    /// <summary>The line that editors and terminals link to the place.</summary>
    public override string ToString() =>
        $"{File}({Line},{Column}): {(IsWarning ? "warning" : "error")} {Code}: {Message}{(Nearest is null ? null : $"; did you mean '{Nearest}'?")}";
}
