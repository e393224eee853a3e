using Advice.Documents.Judgements;
using Advice.Knowledge;

namespace Advice.Documents.Understood;

/// <summary>What a text, codes and findings say, before anything is concluded from it.</summary>
public sealed record IntakeDocument
{
    /// <summary>The day from which "last week" counts.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Version of the program.</summary>
    public required string Program { get; init; }

    /// <summary>The rule set that was used.</summary>
    public required RuleSetStamp RuleSet { get; init; }

    /// <summary>Symptoms noticed or denied, in the order of the text.</summary>
    public required IReadOnlyList<IntakeSymptom> Symptoms { get; init; }

    /// <summary>Systems of which the text speaks, the one it speaks of most first. They are hints, not facts.</summary>
    public required IReadOnlyList<SystemHint> Systems { get; init; }

    /// <summary>The trouble codes of the text and of the request.</summary>
    public required IReadOnlyList<DecodedCode> TroubleCodes { get; init; }

    /// <summary>Work that the text says was done or never done.</summary>
    public required IReadOnlyList<ServiceHeard> Services { get; init; }

    /// <summary>What the findings mean, one for each, in order, then those that the freeze frame makes.</summary>
    public required IReadOnlyList<JudgementDocument> Judgements { get; init; }

    /// <summary>Values of the freeze frame that count for nothing, and why.</summary>
    public required IReadOnlyList<FrameMemberLeft> FreezeFrameLeft { get; init; }

    /// <summary>The sentences in which nothing was recognised.</summary>
    public required IReadOnlyList<UnreadText> NotUnderstood { get; init; }

    /// <summary>What to ask next.</summary>
    public required IReadOnlyList<IntakeQuestion> Questions { get; init; }

    /// <summary>Entries of overlays that had a part in what was read or in the suspects that the questions tell apart, and those switched off that
    /// would have had one.</summary>
    public required IReadOnlyList<OverlayEntry> FromOverlays { get; init; }
}
