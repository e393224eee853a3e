namespace Advice.Symptoms.Words;

/// <summary>
/// English as drivers write it: words without weight, irregular forms, British and American spellings, words with one meaning.
/// A line reads "word: whatever else means the same"; an entry of several words stands for one. Forms are folded on both sides.
/// </summary>
internal static class Usage
{
    /// <summary>Words that mean nothing here.</summary>
    public const string Fillers = """
        a an the my your his her our their this that these those it its is are was were be been being am im ive id
        has have had having do does did doing will would shall should can could may might must wanna want wants wanted
        me us him them theres thats so very really quite also too even again always often sometimes usually
        properly correctly completely totally absolutely suddenly immediately actually basically literally simply
        some any anymore kind sort bit little like here there got get gets getting now then please too
        ever yet already almost nearly severely badly extremely super pretty rather somewhat slightly
        seem seems seemed appear appears appeared able randomly constantly consistently continually continuously repeatedly
        occasionally intermittently periodically suddenly abruptly unexpectedly miles mile
        """;

    /// <summary>Words that only tell occasions apart.</summary>
    public const string Links = "in at of to from with for by as into onto and or i we you he she they which who mph km kmh";

    /// <summary>Contractions; the apostrophe is gone already, as it is in much of what people write.</summary>
    public const string NegativeContractions = """
        wont cant dont doesnt didnt isnt arent wasnt werent hasnt havent hadnt wouldnt couldnt shouldnt cannot aint mustnt neednt
        """;

    /// <summary>Single words and groups of words with one meaning.</summary>
    public const string Meanings = """
        whir: whirr, whirring, whirred
        not: never, fail to, fails to, failed to, failing to, failure to, refuse to, refused to, refusing to, refuses to, unable to, inability to, no longer, not able to, not want to, nor
        no: without, wo, zero, lack, lacks, lacking, lack of, absence of
        when: while, whenever, if, during, upon, whilst, wen, once
        fail: failure, failing, inoperable, inoperative, inop, nonfunctional, non functional, not work, not function, not operate, stop work, stop function, stop operate, quit work, quit function, cease, cease to work, out of order, not operational, not functional, give out, gave out, stop respond, not respond
        itself: by itself, on its own, on own, by themselves, on their own, themselves, its own, own accord
        tire: tyre, tyres
        hood: bonnet
        windshield: windscreen, wind shield, wind screen, windsheild, windshild
        trunk: boot lid
        transmission: gearbox, tranny, trans, gear box, auto box, automatic box, auto transmission, automatic transmission
        automatic: auto
        gearlever: gearstick, gear lever, gear selector, gear shifter, shift lever, shifter
        first: 1st
        second: 2nd
        third: 3rd
        fourth: 4th
        fifth: 5th
        sixth: 6th
        floor: right to floor
        gas: petrol, gasoline, gasolene, benzine, benzin
        coolant: antifreeze, anti freeze
        curb: kerb
        center: centre
        color: colour
        gray: grey
        odor: odour, stench, stink, stinks, stinking, stunk, reek, reeks, scent, aroma
        smell: odor, smelled, smelt, smelling, smelly
        noise: sound, sounds, sounding, noisy, noises
        rotor: disc, disk
        dash: dashboard, dash board
        cluster: instrument cluster, instrument panel, dash cluster, gauge cluster, dash panel, info panel, information panel
        light: lamp, lite, telltale
        message: warning message, error message, notification, alert
        headlight: headlamp, head light, head lamp, headlite
        taillight: taillamp, tail light, tail lamp, rear light
        turnsignal: turn signal, blinker, turning signal, direction indicator, turn indicator, signal light
        airbag: air bag, srs
        ac: aircon, air con, air conditioning, air conditioner, air condition, climate control, hvac
        parkbrake: parking brake, handbrake, hand brake, emergency brake, e brake, ebrake, park brake
        4wd: four wheel drive, 4 wheel drive, 4x4, awd, all wheel drive, four by four
        temperature: temp
        gauge: gage, guage
        startup: start up
        sunroof: sun roof, moonroof, moon roof, pano roof, panoramic roof
        tailgate: liftgate, lift gate, tail gate, hatchback, hatch
        keyfob: key fob, fob
        speedometer: speedo, speed o meter
        defrost: defroster, demist, demister, defog, defogger
        camera: cam
        shock: shock absorber, damper
        caliper: calliper
        mirror: miror
        wiper: windshield wiper
        coil: coilpack
        thermostat: thermastat
        shudder: judder
        only: just
        malfunction: malfunctioning, malfunctioned
        car: vehicle, truck, suv, van, minivan, automobile, pickup
        highway: motorway, freeway, interstate, expressway, turnpike
        rpm: rpms
        infotainment: touchscreen, touch screen, head unit
        shake: shook, shaken, shaky
        vibrate: vibration
        wobble: wobbly
        go: went, goes, gone, going
        come: came, coming
        lose: lost, loss, losing, loses, loosing
        blow: blew, blown
        break: broke, broken, busted, bust
        fall: fell, fallen
        stick: stuck, sticky
        die: died, dying, dies
        freeze: froze, frozen
        run: ran
        wear: wore, worn
        keep: kept
        feel: felt, feels
        hold: held
        spin: spun
        burn: burnt
        leak: leakage, leaky
        catch: caught
        take: took, taken
        tear: tore, torn
        bend: bent
        drive: drove, driven
        sink: sank, sunk
        swell: swollen
        use: used, uses
        add: adding, added
        grind: grinded
        squeak: squeaky
        squeal: squeel, squeeling
        make: made, makes, making
        hit: hitting
        slip: slippage
        crack: cracked
        detach: detached, detachment
        explode: explosion, exploded
        corrode: corrosion
        distort: distortion
        separate: separation
        shutoff: shut off, shuts off, shutting off, shut down, shutdown, shuts down, shutting down, turn itself off, turn off itself
        switchoff: switch off
        afterrun: dieseling, dieselling
        vent: ventilation
        lightup: light up, lit up
        comeoff: come off
        falloff: fall off
        flyoff: fly off, flew off, flown off
        breakoff: break off, snap off
        comeloose: come loose, work loose
        comeapart: come apart
        fallapart: fall apart
        goout: go out
        goblank: go blank, go black, go dark
        actup: act up, play up, act funny, act weird, act strange
        until: till, til
        wrong: not feel right, not sound right, not drive right, not run right
        burnout: burn out
        lockup: lock up
        speed up: sped up
        clunk: clonk
        boot: gaiter, gaitor
        seatbelt: seat belt, safety belt
        timingbelt: timing belt, cam belt, cambelt, distribution belt
        wheelarch: wheel arch, wheel well, fender well
        wet: soaked, soaking, soggy, sodden, drenched, waterlogged
        """;

    /// <summary>Words that are also written apart.</summary>
    public const string Compounds = """
        driveshaft propshaft halfshaft camshaft crankshaft crankcase tailpipe downpipe gearstick gearchange sparkplug pothole sidewall overnight halfway glovebox
        dipstick flywheel flexplate drivetrain powertrain bellhousing airbox airflow airlock antilock antitheft adblue screenwash toolbox keyring pigtail
        preheat kickdown jumpstart leakdown sawtooth voltmeter underinflated overinflated snowstorm carpark turbocharger supercharger intercooler subframe
        """;

    /// <summary>
    /// Classes of words for phrases: "&lt;class&gt;: words". A class that was named before may stand among the words.
    /// The name of a class is one of its words, so that a phrase is read as it is written.
    /// </summary>
    public const string Classes = """
        <noise>: noise squeal squeak creak screech shriek grind clunk clank knock rattle hum whine whistle click clack tick pop thump thud bang buzz chirp groan moan rumble roar growl howl hiss scrape chatter clatter crunch boom whir drone grumble scream racket din clang ping wail yelp buzz jangle whoosh
        <shakes>: shakes vibrate shudder wobble shimmy pulsate pulse tremble jitter flutter quiver shiver throb judder
        <broken>: broken crack snap shatter explode burst detach separate split tear rip loose bend collapse fall comeoff falloff flyoff breakoff comeloose comeapart fallapart fracture disintegrate melt rot worn rust corrode buckle shear sever crumble fray puncture dent smash
        <failed>: failed bad faulty defective dead die quit kaput knackered shot toast malfunction erratic goout actup burnout intermittent goblank
        <stuck>: stuck jam seize freeze bind lockup wedge
        <leaks>: leaks drip seep spill gush spray pour squirt weep ooze dribble trickle
        <trouble>: <noise> <shakes> <broken> <failed> <stuck> <leaks> trouble problem issue fault code error defect replace wrong missing
        <done>: changed replaced renewed fitted installed swapped serviced repaired fixed rebuilt aligned balanced flushed bled
        """;

    /// <summary>Idioms with words that elsewhere state a symptom; they state none.</summary>
    public const string Harmless = """
        pull over; pull over to the right; pull over to the left; pull over to the side; pull off the road; pull out; fire department; fire truck; fire hydrant; fire hazard; fire extinguisher; risk of fire; stop sign; stop light;
        how much; what grinds gears; washing machine shakes; washing machine leaks; washing machine; laptop battery; phone battery; loose spanner; loose change; loose stone;
        light throttle; light load; light braking; light brake; light rain; light acceleration; light pressure; light snow; light steering;
        traffic light; street light; red light; quiet as a mouse; dead straight; without warning; no warning; no idea; no choice; no reason; no problem; no issue; no one; no avail; passed emissions; passed emissions test; passed the smog test;
        oil light goes out; oil lamp goes out; shut the door; slam on the brakes; check my engine; lost control; wind up; break down; drive off; in the red light;
        """;

    /// <summary>Idioms with words that elsewhere state an occasion or a position; they state none.</summary>
    public const string Idioms = """
        in front of; front seat; rear seat; back seat; rear view; rearview; rear ended; rear end collision; rear end accident; front collision;
        parking lot; parking brake; park assist; parking sensor; brake light; brake pedal; brake system; brake fluid; brake pads;
        turn signal; turn on; turn off; turned on; turned off; turned out; turn over; turns over; turn around; in turn;
        i turn on; i turn off; i turn the heat; i turn the heater; i turn the ac; i turn the fan; i turn the radio; i turn the lights; turn back;
         i turn over; i turn around; i turned it on; i turned it off; i turn it on; i turn it off;
        cruise control; winter tires; summer tires; snow tires; rain sensor; right now; right away; right after; all right;
        steering wheel; start driving; started driving; to start with; started when; cold air; hot air; idle air; air conditioning; highway patrol;
        stop sign; stop light turned; parked car; parked cars; parking garage; park it; highway safety; national highway; highway traffic safety;
        """;

    /// <summary>What drivers and traffic do, with words that elsewhere name a part; they name none.</summary>
    public const string Handling = """
        apply the brake; applied the brakes; hit the brakes; slam on the brakes; slammed the brakes; step on the brake; press the brake; depress the brake; tap the brakes; let off the brake; release the brake;
        seat belt; belt up; air bag; gas station; fuel station; petrol station; gas mileage; stop light; traffic light; red light; green light; street light; light traffic; stop sign;
        turn signal; oil change; cruise control; remote control; traffic control; head on; front end collision; rear end collision; control of the car; lost control; fire engine; window of time; park the car; in park; parking lot;
        wear and tear; key parts; tow truck; behind the wheel; rain; gearing up; crack of dawn; next door; door to door; out of gas; off the gas; on the gas; on gas; cheap gas; give it gas; step on the gas; hit the gas;
        turned the radio up; turn the radio up; turned up the radio; turn up the radio; radio on; radio up; over the radio; radio off; with the radio; pull over; pull off the road; pull to the side; pull off the highway; pull into; pull up; pull out; slow lane; fast lane; left lane; right lane; middle lane; center lane;
        emergency lane; turn lane; other lane; next lane; lane of traffic; come to a stop; come to a complete stop; complete stop; stop at; stop by; full stop; stop sign;
        first time; second time; warning light; see pictures; see attached; see photo; test drive; drive home; drive through; driver side; passenger side; first place
        """;

    /// <summary>
    /// Fixed expressions with words that elsewhere state a symptom, an occasion or a part; they state none of these.
    /// What means something to a driver ("speed bump", "hard shoulder") does not belong here, nor what leaves one word that counts ("in the fall").
    /// </summary>
    public const string Sayings = """
        tap water; cup of tea; cup of coffee; cups of tea; cups of coffee; hot drink; coffee break; lunch break; flat white; flat out; flat share; block of flats; fire up the engine; fired up the engine;
        drive it home; two wheel drive; phone went flat; phone is flat; phone is dead; phone charger; charge my phone; charging my phone; plug my phone; night shift; end of my shift;
        fishing gear; camping gear; sports gear; ski gear; walking boots; wellington boots; ski boots; last fall; last spring; early spring; fall asleep; fell asleep;
        out of the blue; rule of thumb; piece of cake; knock on wood; touch wood; knock on the door; rings a bell; dead end; running late; running errands; run into town;
        ran into a friend; shook his head; shakes his head; shook my head; lost my job; olive oil; cooking oil; washing up liquid; light meal; light lunch
        """;

    /// <summary>The entries of lists that are separated by semicolons.</summary>
    public static IEnumerable<string> List(params string[] lists) => lists.SelectMany(List);

    private static IEnumerable<string> List(string entries) =>
        entries.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
