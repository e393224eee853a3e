namespace Advice.Symptoms;

/// <summary>A set of terms in 64 bits. Several terms share a bit, so that it can only rule out: most phrases that have a word in common with
/// a sentence ask for others that are not there.</summary>
internal readonly record struct TermBits(ulong Bits)
{
    /// <summary>The set of these terms.</summary>
    public static TermBits Of(IEnumerable<string> terms) =>
        new(terms.Aggregate(0ul, (bits, term) => bits | (1ul << (string.GetHashCode(term, StringComparison.Ordinal) & 63))));

    /// <summary>Whether all of the others may be in it.</summary>
    public bool MayHold(TermBits others) => (others.Bits & ~Bits) == 0;
}
