using System.Diagnostics.CodeAnalysis;
using Advice.Knowledge;

namespace Advice.Documents.Judgements;

/// <summary>What a piece of workshop arithmetic gave, as an answer by itself.</summary>
public sealed record ComputationAnswer : ComputationDocument
{
    /// <summary>The answer.</summary>
    /// <param name="computed">What was computed.</param>
    /// <param name="ruleSet">The rule set that gave the meanings.</param>
    /// <param name="fromOverlays">The entries of overlays.</param>
    [SetsRequiredMembers]
    internal ComputationAnswer(ComputationDocument computed, RuleSetStamp ruleSet, IReadOnlyList<OverlayEntry> fromOverlays)
        : base(computed) => (RuleSet, FromOverlays) = (ruleSet, fromOverlays);

    /// <summary>The rule set that gave the meanings.</summary>
    public required RuleSetStamp RuleSet { get; init; }

    /// <summary>The meanings that are entries of overlays, and those that one switched off and that would have been given.</summary>
    public required IReadOnlyList<OverlayEntry> FromOverlays { get; init; }
}
