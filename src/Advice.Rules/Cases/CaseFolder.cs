using Advice.Knowledge;
using Advice.Rules.Checking;
using Advice.Rules.Files;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Cases;

/// <summary>The case files beside the rules.</summary>
public static class CaseFolder
{
    /// <summary>All cases below a folder, by file and place.</summary>
    /// <param name="directory">The folder.</param>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    /// <exception cref="RuleSetException">Something is wrong with a case file; every error is named.</exception>
    public static IReadOnlyList<RuleCase> Load(string directory, Catalogue catalogue, ReadGiven readGiven)
    {
        var problems = new Problems();
        var files = RuleFolder.Read(directory, problems).Where(file => file.HoldsCases).ToList();
        var cases = Bind(files, catalogue, readGiven, problems);
        return problems.None ? cases : throw new RuleSetException(problems.InOrder);
    }

    /// <summary>The cases of these files.</summary>
    internal static IReadOnlyList<RuleCase> Bind(IEnumerable<RuleFile> files, Catalogue catalogue, ReadGiven readGiven, Problems problems)
    {
        var binder = new CaseBinder(catalogue, readGiven, problems);
        return [.. files.Select(file => YamlReader.Read(file, problems)).OfType<MappingNode>().SelectMany(binder.Bind)];
    }
}
