namespace Advice.Documents.Judgements;

/// <summary>What a verdict says of the vehicle.</summary>
/// <param name="Id">Its id in the rule set.</param>
/// <param name="Text">What it says, in the words of the trade.</param>
/// <param name="Plain">The same for the owner.</param>
/// <param name="Checks">Ids of the checks that come next.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record MeaningDocument(string Id, string Text, string Plain, IReadOnlyList<string> Checks, string Source);
