namespace Advice.Knowledge.Words;

/// <summary>A sentence with what fills its slots, before it is put into words.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Slots">What fills its slots, in order.</param>
public sealed record Saying(Sentence Sentence, params IReadOnlyList<object> Slots);
