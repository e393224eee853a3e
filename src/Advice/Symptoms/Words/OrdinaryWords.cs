using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Correct English words that differ by one letter from words of the vocabulary: they are no misspellings of those.</summary>
internal static class OrdinaryWords
{
    private static readonly FrozenSet<string> Words = WordSet.Of("""
        absent absorb adder advise agent allow allowed alter angel animate animation ankle answers apple aquarius attack bails
        baked bakes baking bands banned barge barks barred beard begun bellow bells bench bilge birds bitter blame blaze blend
        blenders blobs blogs bloke blond blots bonding booking books booth booths bored bounding bowing bowling braced braces
        braid bread breads breadth brisk broker brought brunch bucket budget built burger butter bytes caches calves cannon
        cards caret carriers casting cello chance chances chapped chapter charm charming charted charter chefs chess chicks
        chili chimneys chock chores chose chuck clark clash clauses clipped clock clocks clone cloned closer clover clutter
        cluttering coats collars colon comet compete completer complex compute computed computers computes concert condense
        condensed consumer consumers continuous contract cooked copier cores couch counters coupe court courts cramp cramps
        crane cream creat create creating creation crick crimes cropping crutch crutches curses dancers daughters debate
        decade decay decent defeat deliver denied derive derives deriving destroy detective detent detention difference
        digging displaced doing drafts drawings drawn easel easter efficient eighth entire excerpt expend explore extender
        extent facts father feeding ferry fever fibres fifty filed files filing fillet finder fingers finnish fixing flags
        flails flask flatter flaws flight fling flings flint flour flush foils folder folks fooled forget forks former
        formerly forth forty forums fraction framer freed freezers friend fright games garbage gauze glade glide glides
        glimmer globe grades grains grams grand grapes greasy great greek greet grids grinning grower growing grown guests
        hallway halos handler handlers handy harmonica headed header heading headline hearing heart highways hints holidays
        hooks horribly hosts hover hunts hurts independence infection infer initiate inline inserter inter inverted invest
        issuer joins judgment juggling known lakes lambs lands larder larger later lathe leading leads learning learns lease
        leased leasing least letters levers liberal licence licensee likes limiter linear linen linger linker listing litter
        lively lives loader lodger logger looms looping loops loosen losses loves lunch maker makers march market markets mask
        masking massage masses matter meals meaning means meant medal messed milder mills minor mistaken mixer mondays mould
        mousse multiply neural newer nickel norman notch numbers opener openings opera orders ordinal outset ovens overhead
        owners packet parse parted partial particular pasta patched patrol paying peace peach peeked petals petting phase
        phases piles pills plane planet plant plants pliers polite polls ponds porch poser possibly pottery potting pouting precious
        price pride print printed printer prints program project projects property protector prove proved provider quark
        quilts rainy raises raising ratio react readily ready reals rebuild reducer regent relation relax remover replay
        replayed resent retain retains retreat revert risen risks rivers roaming roles roller rollers roses ruins runway
        sacked savings saying scalp scaly scanner scanners scarf scatter scattered scene scope scorer scrapped seeding seeds
        seeking seeks seemingly seems selling serves shader shall shape shapes share shared shares sharing shark sharks sheds
        sheep sheer sheet shell shells shipped shipping ships shirt shoes shone shorten shorter shout shovel showers shown
        shrink shrub shrubs shutters silly simmer simmering simple sings sixty sized sizes skill skunk slash slashes slate
        sledge sleep sleeping sleet slider slots slower smarter smarty smokers smudge snarl sneakers sniff snips snore snores
        snoring soiled soldier songs sorted sowing spade spain spans sparse spell spelled spelling spend spending spent spice
        spilt spinal splay splice splinter spoke spoken sport spouse sprain sprinter squeeze stabs stack stacks staff stage
        staging stair stalk stamp stamping staple stapled startled statue steak steaks steal steamy stickers still stock store
        stored storey story stove stoves straint strand stranded stranding straps straw stray stream streaming streams strike
        string strings stripper stroke struct stubs study stuff style suits summed surfing swapped swaps sweat sweep swept
        swift tagged tainted talking tasked tasty taxes tenth texts thank think thirty thorough thoroughly though thread
        threads throw throws thumb thumbs timers titled token tooted topic torch towers trace traces trail trait trash
        traverse treat treats trend trial trick tricks trigger tripped trips tuned tuning turner types unblock unmatched untie
        usable value vapour vegan violet waist waiter wander wanes wasted waves waxes weaken weathers weaver wedding weeding
        weeds weigh weighs whale wherever whisked whiskey whose wider widows wines winner winnow wonder wording world worlds
        worst write wrote
        """);

    private static readonly FrozenSet<string> Stems = Words.Select(WordForms.Stem).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether it is one of them or a form of one.</summary>
    public static bool Contains(string word) => Words.Contains(word) || Stems.Contains(WordForms.Stem(word));
}
