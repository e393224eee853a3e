using Advice.Knowledge;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Cases;

/// <summary>Case files that were parsed but not yet held against a rule set.</summary>
public sealed class ParsedCases
{
    private readonly Problems _problems;
    private readonly IReadOnlyList<MappingNode> _files;

    internal ParsedCases(IEnumerable<RuleFile> files, Problems problems)
    {
        _problems = problems;
        _files = ParsedFiles.Of([.. files.Where(file => file.HoldsCases)], problems);
    }

    /// <summary>What is wrong with them whatever the rules say, by file, line and column.</summary>
    public IReadOnlyList<RuleFileError> Errors => _problems.InOrder;

    /// <summary>The cases; one with an error is left out and its error named.</summary>
    /// <param name="catalogue">The rule set that the cases are about.</param>
    /// <param name="readGiven">Reads their requests.</param>
    public CaseSet Bind(Catalogue catalogue, ReadGiven readGiven)
    {
        var (problems, doubts) = (new Problems(), new Problems());
        problems.Add(_problems);
        var binder = new CaseBinder(catalogue, readGiven, problems, doubts);
        return new CaseSet([.. _files.SelectMany(binder.Bind)], problems.InOrder, doubts.InOrder);
    }
}
