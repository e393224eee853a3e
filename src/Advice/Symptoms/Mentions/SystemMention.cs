namespace Advice.Symptoms.Mentions;

/// <summary>A place in a complaint that speaks of a system of the vehicle. It is a hint, not a fact: people name what they suspect or touch.</summary>
/// <param name="System">Id of the system.</param>
/// <param name="Words">The words, as written.</param>
/// <param name="Start">Place of their first character in the text.</param>
/// <param name="End">Place after their last one.</param>
/// <param name="Weight">How much they tell, 0 … 1.</param>
public sealed record SystemMention(string System, string Words, int Start, int End, double Weight);
