using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>Correct English words that differ by one letter from words of the vocabulary: they are no misspellings of those.</summary>
internal static class OrdinaryWords
{
    private static readonly FrozenSet<string> Words = """
        adder allow alter angel bails bands bells blame blaze blend blogs blond bonding bounding bowing braced braces broker
        bucket built caches cards caret casting chance chances chapter chock chose chuck clark clipped clock clocks clone
        cloned closer clutter comet completer compute computed computes condense condensed consumer consumers contract cooked
        cores creat creating cropping curses decay defeat derive derives deriving detective doing drafts drawn extender
        feeding fifty filed files filing fixing flags flask flaws flush foils folder folks fooled former forth framer games
        glade grand greasy greek greet grids grinning growing handler handlers handy headed header heading headline hearing
        hints hooks hurts infer inserter inter inverted issuer joins judgment juggling larger later leading leads learning
        learns lease leased leasing least licence licensee likes limiter linear linen linger linker listing litter lives
        loader logger looms looping loops loosen maker makers masking massage matter meaning means medal minor mixer mould
        multiply newer norman notch opener overhead parse parted patched patrol peeked phase phases plane poser pouting
        provider quark rainy raises raising ratio react ready reals rebuild reducer relax remover replay replayed resent
        retain retains retreat risks roaming roles roller ruins savings saying scattered scene scorer seeding seeds seeking
        seeks seems selling serves shader shall shape shapes share shared shares sharing sheer sheet shell shells shipped
        shipping ships shirt shoes shorten shorter shout shown shrink sings sized sizes skill skunk slash slashes slate
        sleeping slider slots slower smarter smarty smudge snips sorted spain spans sparse spell spelled spelling spending
        spice splay splice spoke sport stabs stack stacks staff stage staging stair stalk staple stapled steal steamy still
        stock store stored straint stranding straps stray stream streaming streams string strings stripper stroke struct stubs
        study stuff suits summed surfing swapped swaps sweat sweep swept swift tainted talking taxes thank think though thread
        threads throw throws thumb thumbs titled token topic torch trace traces trail trait treat treats trend trick tricks
        trips tuned tuning turner types unblock unmatched untie usable value vapour violet waiter wasted waves weaver whale
        wherever whose wider widows winner winnow wording write
        """.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether it is one of them.</summary>
    public static bool Contains(string word) => Words.Contains(word);
}
