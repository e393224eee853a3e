using Advice.Rules.Files;

namespace Advice.Rules.Overlays;

/// <summary>An entry below an overlay that it replaces or switches off.</summary>
/// <param name="Kind">Its kind, as rule files name it.</param>
/// <param name="Id">Its id.</param>
/// <param name="Because">Why; only what is switched off must say so.</param>
/// <param name="Place">Where the mark names the id.</param>
internal sealed record OverlayMark(string Kind, string Id, string? Because, Place Place);
