using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>What verdicts of a piece of workshop arithmetic say of a vehicle, and where to look next.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Computation">Name of the computation.</param>
/// <param name="Verdicts">The verdicts.</param>
/// <param name="Text">What they say.</param>
/// <param name="Checks">Ids of the checks that come next, the first in front.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Meaning(string Id, string Computation, IReadOnlyList<string> Verdicts, Text Text, IReadOnlyList<string> Checks, Source Source);
