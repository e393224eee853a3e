namespace Advice.Documents.Judgements;

/// <summary>One value of a check's closed scale.</summary>
/// <param name="Observation">The value, as a finding would name it.</param>
/// <param name="Text">What it looks like.</param>
/// <param name="Normal">Whether it is the sound one.</param>
public sealed record ResultDocument(string Observation, string Text, bool Normal);
