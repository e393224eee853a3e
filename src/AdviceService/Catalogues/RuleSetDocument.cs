using Advice.Knowledge;

namespace AdviceService.Catalogues;

/// <summary>The rule set in use.</summary>
/// <param name="Revision">Hash of its content.</param>
/// <param name="Program">Version of the program.</param>
/// <param name="Rules">Number of rules.</param>
/// <param name="Symptoms">Number of symptoms.</param>
/// <param name="Faults">Number of faults.</param>
/// <param name="Checks">Number of checks.</param>
/// <param name="Cautions">Number of cautions.</param>
/// <param name="Limits">Number of limits.</param>
/// <param name="Services">Number of service items.</param>
/// <param name="TroubleCodes">Number of trouble codes.</param>
/// <param name="Overlays">Overlays over the shipped set, in the order in which they were laid.</param>
/// <param name="FromOverlays">All that they add, put in the place of something below them, or switch off.</param>
public sealed record RuleSetDocument(
    string Revision, string Program, int Rules, int Symptoms, int Faults, int Checks, int Cautions, int Limits, int Services, int TroubleCodes,
    IReadOnlyList<Overlay> Overlays, IReadOnlyList<OverlayEntry> FromOverlays);
