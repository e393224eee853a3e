using Advice.Knowledge;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Cases;

/// <summary>The case files beside the rules.</summary>
public static class CaseFolder
{
    /// <summary>All cases below a folder; a case with an error is left out and its error named.</summary>
    /// <param name="directory">The folder.</param>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    public static CaseSet Read(string directory, Catalogue catalogue, ReadGiven readGiven) => Parse(directory, []).Bind(catalogue, readGiven);

    /// <summary>The case files of a folder and of the overlays over it, parsed.</summary>
    /// <param name="directory">The folder.</param>
    /// <param name="overlays">Folders of the overlays, in order.</param>
    public static ParsedCases Parse(string directory, IReadOnlyList<string> overlays)
    {
        var problems = new Problems();
        var files = overlays.SelectMany(overlay => RuleFolder.Read(overlay, problems, Overlays.OverlayFolder.Prefix(overlay)));
        return new ParsedCases([.. RuleFolder.Read(directory, problems), .. files], problems);
    }

    /// <summary>The cases of those of these files that hold cases.</summary>
    /// <param name="files">Files of a rule folder.</param>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    public static CaseSet Read(IEnumerable<RuleFile> files, Catalogue catalogue, ReadGiven readGiven) =>
        new ParsedCases(files, new Problems()).Bind(catalogue, readGiven);
}
