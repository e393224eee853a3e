using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>
/// Words that may stand for the word of a phrase: a line reads "word: what people say for it". Other than the meanings of <see cref="Usage"/> they
/// are not the same: what is read by them is less sure, and at least one word of a phrase must be its own.
/// </summary>
internal sealed class Synonyms
{
    private const string Lines = """
        engine: motor
        light: symbol icon picture warning sign bulb
        message: warning notice prompt
        on: lit glowing illuminated
        flash: wink flicker
        dash: panel console
        screen: display monitor
        reservoir: bottle tank container pot
        coolant: water
        fluid: juice liquid stuff oil
        oil: fluid
        leak: dribble ooze weep trickle puddle pool spot
        puddle: spot pool patch stain
        smell: whiff fume pong
        smoke: haze fume cloud
        exhaust: tailpipe pipe muffler
        muffler: silencer exhaust
        tailpipe: exhaust pipe
        hose: pipe tube line
        pipe: tube line hose
        line: pipe tube hose
        wheel: rim tire alloy
        rim: wheel alloy
        tire: wheel rubber
        pads: linings shoes
        gas: fuel
        fuel: gas
        accelerator: gas throttle
        lever: stick selector handle stalk
        shift: lever stick selector
        gear: cog
        seatbelt: belt strap
        window: glass pane
        windshield: glass window
        glass: window pane windshield
        tailgate: trunk boot
        trunk: boot tailgate
        keyfob: remote clicker key
        blower: fan
        heater: heat
        heat: heater
        shock: strut
        spring: coil
        gauge: needle pointer dial
        needle: gauge pointer
        fail: dead die quit nothing useless bust conk
        dead: fail die
        stuck: wedge lock
        jam: stuck freeze lock
        freeze: stuck lock
        loose: wobble play slack slop floppy
        broken: bust smash wreck
        crack: split fracture
        hot: scorch roast boil
        burn: scorch toast fry singe
        low: empty down below
        empty: dry low
        slow: sluggish lazy
        weak: feeble faint poor
        dim: faint weak
        soft: spongy mushy squishy
        hard: stiff firm rock
        heavy: stiff hard
        stiff: hard heavy
        worn: bald slick thin
        bald: slick smooth worn
        rust: rotten crusty flake
        dirty: filthy black grimy
        die: quit conk cut
        stall: die quit conk
        start: fire catch
        crank: turn spin churn
        noise: racket din
        shake: jiggle shiver wobble vibrate shimmy judder
        vibrate: shake buzz tremble tingle
        shudder: shake jerk hop
        jerk: lurch buck hop
        squeal: scream squeak
        squeak: chirp creak squeal
        creak: squeak groan
        grind: scrape crunch grate
        scrape: drag rub grind
        clunk: thud thump knock bang clank
        knock: hammer thump bang pound
        tick: tap click clack
        click: tick snap clack
        rattle: clatter jangle jingle buzz
        hum: drone buzz moan
        whine: howl sing whistle whir
        whistle: sing whine
        groan: moan
        hiss: whoosh
        drop: fall sink
        fall: drop
        sink: drop fall
        sag: droop squat
        lean: tilt tip roll
        pull: drift tug veer
        wander: drift weave
        bounce: bob hop
        fog: mist steam
        mist: fog steam
        wet: damp
        water: rain moisture
        spray: squirt
        open: pop
        close: shut
        move: budge go
        turn: rotate spin
        spin: turn rotate whir
        replace: change
        dark: black
        kick: yank snatch
        grab: bite snatch clamp
        bite: grab catch
        engage: grab bite
        hesitate: pause wait lag
        delay: wait pause
        """;

    private readonly FrozenDictionary<string, string[]> byTerm;

    /// <summary>The synonyms.</summary>
    /// <param name="term">Gives a word its term.</param>
    public Synonyms(Func<string, string> term) => byTerm = Lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => line.Split(':')).SelectMany(line => line[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(said => (Said: term(said), Meant: term(line[0]))))
        .Where(pair => pair.Said != pair.Meant).Distinct()
        .GroupBy(pair => pair.Said, pair => pair.Meant, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);

    /// <summary>The terms that a term may stand for.</summary>
    public IReadOnlyList<string> Of(string term) => byTerm.GetValueOrDefault(term, []);
}
