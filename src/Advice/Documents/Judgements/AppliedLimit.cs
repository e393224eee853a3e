using Advice.Knowledge.Limits;

namespace Advice.Documents.Judgements;

/// <summary>One limit that a value was held against.</summary>
/// <param name="Text">The limit in words.</param>
/// <param name="Deficiency">What the value is by this limit.</param>
/// <param name="Margin">Distance from the limit in its own unit; negative = beyond it.</param>
/// <param name="Unit">Unit of the margin.</param>
/// <param name="Jurisdiction">Whose law it is; null = advice of the trade, or a limit that was given.</param>
/// <param name="Source">Source of the limit.</param>
public sealed record AppliedLimit(string Text, Deficiency Deficiency, double Margin, string Unit, string? Jurisdiction, string Source);
