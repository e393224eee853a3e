namespace AdviceService.Verbs;

/// <summary>Where a rule set is read from.</summary>
/// <param name="Rules">Folder of the rules.</param>
/// <param name="Overlays">Folders of the overlays over them, in order.</param>
internal sealed record RuleFolders(string Rules, IReadOnlyList<string> Overlays);
