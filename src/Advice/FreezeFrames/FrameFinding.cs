using Advice.Documents.Requests;

namespace Advice.FreezeFrames;

/// <summary>A finding that was taken from a freeze frame.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Members">The members that its value is the sum of.</param>
public sealed record FrameFinding(FindingReport Finding, IReadOnlyList<string> Members);
