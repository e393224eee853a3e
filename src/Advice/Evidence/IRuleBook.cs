using Advice.Knowledge;

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
}
