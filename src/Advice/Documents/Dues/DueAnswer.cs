using Advice.Knowledge;

namespace Advice.Documents.Dues;

/// <summary>How every service item of this vehicle stands, the most pressing first.</summary>
/// <param name="AsOf">The day for which ages and dues were reckoned.</param>
/// <param name="Program">Version of the program.</param>
/// <param name="RuleSet">The rule set that was used.</param>
/// <param name="Due">The items.</param>
/// <param name="FromOverlays">Service items of overlays, and those switched off that this vehicle would have.</param>
/// <param name="Notice">What the answer defers to.</param>
public sealed record DueAnswer(DateOnly AsOf, string Program, RuleSetStamp RuleSet, IReadOnlyList<DueDocument> Due, IReadOnlyList<OverlayEntry> FromOverlays, string Notice);
