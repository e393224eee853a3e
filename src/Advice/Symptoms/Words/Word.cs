namespace Advice.Symptoms.Words;

/// <summary>A word of the text, or several that together mean one.</summary>
/// <param name="Surface">As written, in lower case and without apostrophes.</param>
/// <param name="Term">What all its forms and spellings have in common.</param>
/// <param name="Kind">How much it contributes.</param>
/// <param name="Start">Its place in the text.</param>
/// <param name="End">The place after its last character.</param>
/// <param name="Sentence">Number of its sentence.</param>
/// <param name="Clause">Number of its clause, counted through the text.</param>
/// <param name="Misspelt">Whether it was taken for another word that differs in one letter.</param>
internal sealed record Word(
    string Surface, string Term, WordKind Kind, int Start, int End, int Sentence, int Clause, bool Misspelt = false)
{
    /// <summary>The classes that its term belongs to.</summary>
    public IReadOnlyList<string> Classes { get; init; } = [];

    /// <summary>The terms that it may stand for besides its own.</summary>
    public IReadOnlyList<string> Synonyms { get; init; } = [];

    /// <summary>The preposition right before it, if any.</summary>
    public string? Link { get; init; }

    /// <summary>Whether a form of "be" links it to the word before: "the pedal is hard".</summary>
    public bool IsPredicate { get; init; }

    /// <summary>Its place among the words of the text.</summary>
    public int Index { get; init; }

    /// <summary>Whether it is what a phrase asks for: the term itself or a word of that class.</summary>
    public bool Is(string term) => Term == term || (WordClasses.IsClass(term) && Classes.Contains(term));
}
