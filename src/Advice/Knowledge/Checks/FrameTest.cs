using Advice.Arithmetic;
using Advice.Knowledge.Conditions;

namespace Advice.Knowledge.Checks;

/// <summary>One test on a freeze frame: a word among some, or a number in a half-open range.</summary>
/// <param name="Member">The member.</param>
/// <param name="Words">Accepted words; empty for numbers.</param>
/// <param name="AtLeast">Smallest accepted number, in the unit of the member.</param>
/// <param name="Below">First number no longer accepted.</param>
public sealed record FrameTest(Input Member, IReadOnlyList<string> Words, double? AtLeast, double? Below)
{
    /// <summary>Whether the frame passes; unknown where it lacks the member.</summary>
    public Truth Test(Given frame) => !frame.All.TryGetValue(Member, out var value) ? Truth.Unknown
        : (value is double number ? (AtLeast is null || number >= AtLeast) && (Below is null || number < Below) : Words.Contains((string)value)) ? Truth.Yes : Truth.No;
}
