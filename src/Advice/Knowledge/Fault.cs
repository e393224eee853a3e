using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>Something that can be wrong with a vehicle.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="System">Id of the system that it belongs to.</param>
/// <param name="Places">Positions where it can be; empty = it has no place.</param>
/// <param name="Prior">Share of vehicles ten years old with 150,000 km that have it.</param>
/// <param name="Ageing">How the odds change with age and distance.</param>
/// <param name="Consequence">What it does if left alone.</param>
/// <param name="Deficiency">Its usual class when found.</param>
/// <param name="Source">Source of the prior.</param>
public sealed record Fault(
    string Id, Text Name, string System, IReadOnlyList<string> Places, double Prior, Ageing Ageing,
    Consequence Consequence, Deficiency Deficiency, Source Source);
