using Advice.Knowledge.Limits;

namespace AdviceService.Catalogues;

/// <summary>Something that can be wrong with a vehicle.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Plain">Its name for an owner.</param>
/// <param name="System">Id of its system.</param>
/// <param name="Places">Positions where it can be.</param>
/// <param name="Prior">Share of vehicles ten years old with 150,000 km that have it, 0 … 1.</param>
/// <param name="Consequence">What it does if left alone.</param>
/// <param name="Deficiency">Its usual class when found.</param>
/// <param name="OnlyIf">Which vehicles can have it; null = all.</param>
/// <param name="Checks">Ids of the checks that find it.</param>
/// <param name="Source">Source of the prior.</param>
public sealed record FaultEntry(
    string Id, string Name, string Plain, string System, IReadOnlyList<string> Places, double Prior, string Consequence,
    Deficiency Deficiency, string? OnlyIf, IReadOnlyList<string> Checks, string Source);
