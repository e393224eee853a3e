namespace Advice.Knowledge.Words;

/// <summary>Words by which a text shows what it is about.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">What such a word says.</param>
/// <param name="Words">The words; several stand for words in a row, of a question at the beginning of a sentence, or for a whole sentence.</param>
public sealed record Topic(string Id, TopicKind Kind, IReadOnlyList<string> Words);
