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
    public static CaseSet Read(string directory, Catalogue catalogue, ReadGiven readGiven)
    {
        var problems = new Problems();
        return Read(RuleFolder.Read(directory, problems), catalogue, readGiven, problems);
    }

    /// <summary>The cases of a folder and of the overlays over it.</summary>
    /// <param name="directory">The folder.</param>
    /// <param name="overlays">Folders of the overlays, in order.</param>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    public static CaseSet Read(string directory, IReadOnlyList<string> overlays, Catalogue catalogue, ReadGiven readGiven)
    {
        var problems = new Problems();
        var files = overlays.SelectMany(overlay => RuleFolder.Read(overlay, problems, Overlays.OverlayFolder.Prefix(overlay)));
        return Read([.. RuleFolder.Read(directory, problems), .. files], catalogue, readGiven, problems);
    }

    /// <summary>The cases of those of these files that hold cases.</summary>
    /// <param name="files">Files of a rule folder.</param>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    public static CaseSet Read(IEnumerable<RuleFile> files, Catalogue catalogue, ReadGiven readGiven) =>
        Read(files, catalogue, readGiven, new Problems());

    private static CaseSet Read(IEnumerable<RuleFile> files, Catalogue catalogue, ReadGiven readGiven, Problems problems)
    {
        var doubts = new Problems();
        var binder = new CaseBinder(catalogue, readGiven, problems, doubts);
        var nodes = ParsedFiles.Of([.. files.Where(file => file.HoldsCases)], problems);
        var cases = nodes.SelectMany(binder.Bind).ToList();
        return new CaseSet(cases, problems.InOrder, doubts.InOrder);
    }
}
