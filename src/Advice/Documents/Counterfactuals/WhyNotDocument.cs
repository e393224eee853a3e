using Advice.Documents.Understood;
using Advice.Knowledge;

namespace Advice.Documents.Counterfactuals;

/// <summary>Why something did not come up.</summary>
public sealed record WhyNotDocument
{
    /// <summary>The day for which ages were reckoned.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Version of the program.</summary>
    public required string Program { get; init; }

    /// <summary>The rule set that was used.</summary>
    public required RuleSetStamp RuleSet { get; init; }

    /// <summary>The answer in a few plain sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>How the request was understood.</summary>
    public required UnderstoodDocument Understood { get; init; }

    /// <summary>Place of the check among all steps, from 1; null where it is no step or a fault is asked for.</summary>
    public int? StepRank { get; init; }

    /// <summary>Conditions of the check; empty where a fault is asked for.</summary>
    public required IReadOnlyList<ConditionDocument> Conditions { get; init; }

    /// <summary>The first three of the steps before the check that find what it would of this case; empty where it is among the first three, or a fault is asked for.</summary>
    public required IReadOnlyList<StepBeforeDocument> Before { get; init; }

    /// <summary>The smallest changes that would bring the check among the first three steps, each by itself, one of each kind, the least first;
    /// empty where it is there, none was found, or a fault is asked for.</summary>
    public required IReadOnlyList<ChangeDocument> Changes { get; init; }

    /// <summary>The fault, or the faults that the check finds surest.</summary>
    public required IReadOnlyList<WhyNotFault> Faults { get; init; }

    /// <summary>Entries of overlays that had a part in the advice on this case, and those switched off that would have had one.</summary>
    public required IReadOnlyList<OverlayEntry> FromOverlays { get; init; }
}
