namespace Advice.Symptoms.Phrases;

/// <summary>A set of terms, by their numbers, in 64 bits. Several terms share a bit, so that it can only rule out: most phrases that have a word in common with
/// a sentence ask for others that are not there.</summary>
internal readonly record struct TermBits(ulong Bits)
{
    /// <summary>The set with that term; a number below zero is no term of any phrase.</summary>
    public TermBits With(int term) => term < 0 ? this : new(Bits | (1ul << (term & 63)));

    /// <summary>Whether all of the others may be in it.</summary>
    public bool MayHold(TermBits others) => (others.Bits & ~Bits) == 0;
}
