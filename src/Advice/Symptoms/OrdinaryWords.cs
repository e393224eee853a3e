using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>Correct English words that differ by one letter from words of the vocabulary: they are no misspellings of those.</summary>
internal static class OrdinaryWords
{
    private static readonly FrozenSet<string> Words = WordSet.Of("""
        absorb adder allow allowed alter angel animate animation apple bails bands bellow bells blame blaze blend blogs blond
        bonding bounding bowing braced braces broker bucket built caches cards caret casting chance chances chapter charted
        charter chock chose chuck clark clipped clock clocks clone cloned closer clutter cluttering comet compete completer
        complex compute computed computes condense condensed consumer consumers contract cooked cores cream creat create
        creating creation cropping curses decay defeat derive derives deriving detective difference doing drafts drawn entire
        expend explore extender extent feeding fifty filed files filing finder fixing flags flask flaws flight flush foils
        folder folks fooled former formerly forth framer freed games garbage glade grand greasy great greek greet grids
        grinning grower growing handler handlers handy headed header heading headline hearing hints hooks hunts hurts
        independence infer initiate inline inserter inter inverted issuer joins judgment juggling larger later leading leads
        learning learns lease leased leasing least licence licensee likes limiter linear linen linger linker listing litter
        lives loader logger looms looping loops loosen maker makers mask masking massage matter meaning means medal minor
        mixer mould multiply newer norman notch opener opera outset overhead parse parted partial patched patrol peeked phase
        phases plane poser pouting provider quark rainy raises raising ratio react readily ready reals rebuild reducer
        relation relax remover replay replayed resent retain retains retreat revert risks roaming roles roller ruins savings
        saying scatter scattered scene scorer seeding seeds seeking seeks seemingly seems selling serves shader shall shape
        shapes share shared shares sharing sheer sheet shell shells shipped shipping ships shirt shoes shorten shorter shout
        shown shrink sings sized sizes skill skunk slash slashes slate sleep sleeping slider slots slower smarter smarty
        smudge snips sorted spain spans sparse spell spelled spelling spend spending spent spice splay splice spoke sport
        spouse squeeze stabs stack stacks staff stage staging stair stalk stamp stamping staple stapled steal steamy still
        stock store stored story straint strand stranded stranding straps stray stream streaming streams strike string strings
        stripper stroke struct stubs study stuff suits summed surfing swapped swaps sweat sweep swept swift tainted talking
        taxes thank think thorough thoroughly though thread threads throw throws thumb thumbs titled token topic torch trace
        traces trail trait traverse treat treats trend trick tricks trips tuned tuning turner types unblock unmatched untie
        usable value vapour violet waiter wasted waves weaver whale wherever whose wider widows winner winnow wonder wording
        write
        """);

    private static readonly FrozenSet<string> Stems = Words.Select(WordForms.Stem).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether it is one of them or a form of one.</summary>
    public static bool Contains(string word) => Words.Contains(word) || Stems.Contains(WordForms.Stem(word));
}
