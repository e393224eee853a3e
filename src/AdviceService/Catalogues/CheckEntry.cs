using Advice.Documents.Judgements;
using Advice.Knowledge.Checks;

namespace AdviceService.Catalogues;

/// <summary>Something to inspect, observe or measure.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What to do, in the trade's words.</param>
/// <param name="Plain">What to do, for an owner.</param>
/// <param name="System">Id of its system.</param>
/// <param name="Area">Id of the area where one works.</param>
/// <param name="Places">Positions that a finding may name.</param>
/// <param name="Minutes">Time without set-up, min.</param>
/// <param name="DoneBy">The least training that it needs.</param>
/// <param name="Needs">Ids of the set-ups that it needs.</param>
/// <param name="Tools">Tools.</param>
/// <param name="Method">What to do, in order.</param>
/// <param name="Unit">Unit of a measured check; null for an observed one.</param>
/// <param name="Units">Units that a finding may be given in.</param>
/// <param name="Results">The closed scale of an observed check.</param>
/// <param name="Limits">Limits, wherever they apply.</param>
/// <param name="OnlyIf">Which vehicles it makes sense on; null = all.</param>
/// <param name="Detects">Ids of the faults that it finds.</param>
/// <param name="Cautions">Ids of its cautions.</param>
public sealed record CheckEntry(
    string Id, string Title, string Plain, string System, string Area, IReadOnlyList<string> Places, int Minutes, DoneBy DoneBy,
    IReadOnlyList<string> Needs, IReadOnlyList<string> Tools, IReadOnlyList<string> Method, string? Unit, IReadOnlyList<string> Units,
    IReadOnlyList<ResultDocument> Results, IReadOnlyList<LimitDocument> Limits, string? OnlyIf, IReadOnlyList<string> Detects,
    IReadOnlyList<string> Cautions)
{
    /// <summary>What a finding may carry in 'with' for the arithmetic of the check.</summary>
    public IReadOnlyList<InputEntry> With { get; init; } = [];
}
