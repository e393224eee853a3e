using Advice.Evidence;
using Advice.Knowledge;
using Advice.Rules.Checking;
using Advice.Rules.Network;
using Advice.Rules.Rows;
using Advice.Symptoms;

namespace Advice.Rules.RuleSets;

/// <summary>A checked rule set, ready to be run. Immutable and safe to share between threads.</summary>
public sealed class RuleBook : IRuleBook
{
    private readonly TriggerIndex _index;

    internal RuleBook(Catalogue catalogue, string revision, IReadOnlyList<RuleFileError> warnings)
    {
        Warnings = warnings;
        Catalogue = catalogue;
        Revision = revision;
        _index = new TriggerIndex(catalogue);
    }

    /// <inheritdoc/>
    public Catalogue Catalogue { get; }

    /// <inheritdoc/>
    public string Revision { get; }

    /// <summary>What overlays take away that protects people; to be shown whenever the set is put to use.</summary>
    public IReadOnlyList<RuleFileError> Warnings { get; }

    /// <inheritdoc/>
    public IReadOnlyList<SwitchedOff> SwitchedOff { get; init; } = [];

    /// <inheritdoc/>
    public IRuleSession Open(Case @case) => new RuleSession(@case, Catalogue, _index, KnownCase.Nothing, KnownCase.SignsOf(@case, Catalogue));

    /// <inheritdoc/>
    public Func<Report, IRuleSession> Continue(Case @case, CaseEvidence known)
    {
        var before = KnownCase.Of(@case, known, Catalogue);
        return added => before.IsChangedBy(added, _index)
            ? Open(@case.With(added))
            : new RuleSession(@case.With(added), Catalogue, _index, before, [KnownCase.SignOf(added)]);
    }
}
