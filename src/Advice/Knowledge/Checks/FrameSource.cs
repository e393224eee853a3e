using Advice.Arithmetic;
using Advice.Knowledge.Limits;

namespace Advice.Knowledge.Checks;

/// <summary>How the value of a check is taken from a freeze frame.</summary>
/// <param name="Sums">Members that are added up; of several sums the one furthest from zero is the value.</param>
/// <param name="Where">What must hold; what is not known does not.</param>
/// <param name="Unless">What must not hold; what is not known does not.</param>
/// <param name="Source">Source of the conditions.</param>
public sealed record FrameSource(
    IReadOnlyList<IReadOnlyList<NumberInput>> Sums, IReadOnlyList<FrameTest> Where, IReadOnlyList<FrameTest> Unless, Source Source);
