using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;

namespace Advice.Findings;

/// <summary>What a check showed, judged: normal, or one abnormal value.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Position">Where; null = the check as a whole.</param>
/// <param name="Value">The abnormal value (<see cref="Sign.BeyondLimit"/> for measured checks); null = normal.</param>
/// <param name="Deficiency">Its class.</param>
public sealed record Outcome(string Check, string? Position, string? Value, Deficiency Deficiency = Deficiency.None);
