using Advice.Documents.Understood;

namespace Advice.FreezeFrames;

/// <summary>What a freeze frame gave.</summary>
/// <param name="Taken">The findings that its values make.</param>
/// <param name="NotTaken">The members of which no finding was made, with the reason.</param>
public sealed record FrameReading(IReadOnlyList<FrameFinding> Taken, IReadOnlyList<FrameMemberLeft> NotTaken)
{
    /// <summary>The reading of a request without a freeze frame.</summary>
    public static FrameReading None { get; } = new([], []);
}
