namespace AdviceService.Catalogues;

/// <summary>A rule: a piece of conditional knowledge.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">shows, prone, fits, implies, warns, driving or normal.</param>
/// <param name="If">Signs, faults, checks and services that bring it into play, as kind:id.</param>
/// <param name="Then">What it says, as kind:id.</param>
/// <param name="Occasions">Ids of the occasions it holds for; empty = any.</param>
/// <param name="Vehicles">Conditions on the vehicle, all of which must hold.</param>
/// <param name="Strength">Probability for shows, factor on the odds for prone, share for normal; else null.</param>
/// <param name="Because">Its reason in the trade's words.</param>
/// <param name="Plain">Its reason for an owner.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record RuleEntry(
    string Id, string Kind, IReadOnlyList<string> If, IReadOnlyList<string> Then, IReadOnlyList<string> Occasions,
    IReadOnlyList<string> Vehicles, double? Strength, string Because, string Plain, string? Source);
