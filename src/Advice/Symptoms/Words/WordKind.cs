namespace Advice.Symptoms.Words;

/// <summary>How much a word contributes to a meaning.</summary>
internal enum WordKind
{
    /// <summary>A word that carries meaning.</summary>
    Content,

    /// <summary>A preposition or person: tells occasions apart, but no symptoms.</summary>
    Link,

    /// <summary>An article, auxiliary or adverb of degree: ignored.</summary>
    Filler,
}
