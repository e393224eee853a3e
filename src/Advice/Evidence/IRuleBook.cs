using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Evidence;

/// <summary>A checked rule set, ready to be run. Immutable and safe to share between threads.</summary>
public interface IRuleBook
{
    /// <summary>What it knows.</summary>
    Catalogue Catalogue { get; }

    /// <summary>Hash of its content, as "sha256:…".</summary>
    string Revision { get; }

    /// <summary>What overlays switch off, overlay by overlay.</summary>
    IReadOnlyList<SwitchedOff> SwitchedOff => [];

    /// <summary>Opens a session for one case. Not safe to share between threads.</summary>
    IRuleSession Open(Case @case);

    /// <summary>Opens sessions for a case of which the evidence is known, each with one more report. They conclude what a session opened for
    /// <see cref="Case.With"/> would; what the report does not change may be taken over.</summary>
    /// <param name="case">The case without the report.</param>
    /// <param name="known">Its evidence.</param>
    Func<Report, IRuleSession> Continue(Case @case, CaseEvidence known) => added => Open(@case.With(added));
}
