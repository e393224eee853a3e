namespace AdviceService.Catalogues;

/// <summary>A caution.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">Its text in the trade's words.</param>
/// <param name="Plain">Its text for an owner.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record CautionEntry(string Id, string Text, string Plain, string Source);
