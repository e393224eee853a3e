namespace Advice.Symptoms.Words;

/// <summary>A phrase as it is looked for in a text.</summary>
/// <param name="Terms">The terms that must be found, in order.</param>
/// <param name="Words">The words that they stand for.</param>
/// <param name="LeftOut">The other words, which make no difference.</param>
public sealed record CountedWords(IReadOnlyList<string> Terms, string Words, IReadOnlyList<string> LeftOut);
