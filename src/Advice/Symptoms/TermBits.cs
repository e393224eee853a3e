namespace Advice.Symptoms;

/// <summary>A set of terms in 64 bits. Several terms share a bit, so that it can only rule out: most phrases that have a word in common with
/// a sentence ask for others that are not there.</summary>
internal readonly record struct TermBits(ulong Bits)
{
    /// <summary>The set of these terms.</summary>
    public static TermBits Of(IEnumerable<string> terms)
    {
        var bits = 0ul;
        foreach (var term in terms)
            bits |= 1ul << (string.GetHashCode(term, StringComparison.Ordinal) & 63);
        return new(bits);
    }

    /// <summary>Whether all of the others may be in it.</summary>
    public bool MayHold(TermBits others) => (others.Bits & ~Bits) == 0;
}
