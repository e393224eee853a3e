using Advice.Knowledge;

namespace Advice.Evidence;

/// <summary>What an overlay switches off, and the rules below it, in which it still is.</summary>
/// <param name="Entries">The entries.</param>
/// <param name="Below">The set without this overlay and those above it.</param>
public sealed record SwitchedOff(IReadOnlyList<OverlayEntry> Entries, IRuleBook Below);
