"""How people say in English what ails their eyes: patients' and nurses' words, chat, British, second-language.

Collected from the trade's talk and from red-eye leaflets (common practice, no source).
How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "hardto": """
        struggle struggles struggling struggled hard harder difficult difficulty trouble cant cannot tough tricky
        labored laboured effort fighting gasping fight battling unable cnt barely hardly couldnt impossible painful
        tight short shorter
    """,
    "viewbad": """
        blurry blurred foggy wavy double dim dark hazy fuzzy cloudy misty swimmy grey gray milky distorted warped
        bendy doubled smudged
    """,
    "things": """
        everything things stuff words screen room text letters world faces phone tv streetlights print
    """,
    "seebad": """
        double two spots rainbows rainbow halos halo haloes flashes flash waves lines floaters black shadow shadows
        dots squiggles zigzags sparkles sparks stars lightning dark grey gray dim smoke
    """,
    "tight": """
        tight tightness tightening tightens closing closes close closed closin small smaller narrow narrowing
        narrower swelling swollen swell swells weird funny lump constricted constricting constriction itchy itching
        itches thick strange full shutting shut scratchy numb tingly tingling fat thicker squeezing blocked
    """,
    "throat": """
        throat windpipe airway gullet airways
        throats windpipes airway's
    """,
    "lightbad": """
        bother bothers bothering bothered hurt hurts hurting kills killing kill scream wince squint squinting
        unbearable agony torture painful pain stabs stabbing stab stings sting stinging burns burning hate hates cry
        unpleasant uncomfortable intolerable disturbing annoying blinding
    """,
    "lightsrc": """
        light lights sunlight sun sunshine brightness daylight lamp lamps screen screens headlights glare window
        windows bulb bulbs fluorescent fluorescents torch flashlight penlight lighting outdoors
    """,
    "eye": """
        eye eyes eyeball eyeballs lid lids eyelid eyelids lashline waterline eyed peeper peepers cornea sclera
        conjunctiva eyez
    """,
    "my": """
        my mine the me both this that one left right a an your our her his their each either 1 upper lower inner
        outer
    """,
    "be": """
        is are r was were be been being am im its theyre looks look looking looked feels feel feeling felt got get
        gets getting seems seem has have had went go goes going gone become became turned stays stayed keeps keep
        kept
    """,
    "very": """
        so very really super extremely insanely quite pretty too literally rly totally completely just all still a
        bit little lil kinda real mad proper well hella fully almost slightly both my the in on of like this that
    """,
    "cant": """
        cant cannot couldnt unable cnt dont doesnt wont didnt isnt barely hardly trouble difficulty struggling hard
    """,
    "breathe": "breathe breath breathing breathes air",
    "glue": """
        glue adhesive remover acetone primer bonder cyanoacrylate superglue solvent chemical chemicals tint bleach
        debonder solution dye peroxide alcohol nanomister glu cement
    """,
    "face": "face lips lip tongue throat mouth neck cheeks jaw airway",
    "swell": """
        swelling swollen swell swells swelled swole swoll puffy puffed puffing puff puffs puffier inflamed ballooned
        ballooning balloon balloons enlarged bloated edema oedema edematous fat bigger
    """,
    "huge": """
        big large huge massive enormous giant thick fatter fat double ginormous humongous gigantic mahoosive
        colossal monstrous gargantuan bigger larger
    """,
    "sore": """
        sore soreness pain pains painful painfully hurt hurts hurting hurtin ache aches aching achy tender
        tenderness
        paining
    """,
    "lot": """
        severe severely unbearable excruciating agony agonizing agonising intense insane intolerable unreal worst
    """,
}

SIGNS = {
    "redness": """
        this|it|that|its is|was? scarlet|crimson|lobster|vermilion, theyre|they are|went|gone?
        scarlet|crimson|lobster|vermilion, like|as|than|out rudolph|rudolf|rudolphs|rudolfs, rudolph|rudolf
        has|had|nose|would|is|eyes|with|eat|vibes|jealous, colour|color of a?
        post|pillar|fire|beetroot|beet|brick|rust|stop|wine|blood|london box|bus|engine|truck|van|sign|beetroot?,
        last blush, post box|postbox|pillar box|letterbox|phone box red, red as a? post|pillar|phone|letter box,
        look|looks|looking .. on the
        gin|whisky|whiskey|wine|vodka|beer|rum|tequila|drink|piss|booze|bevvy|batter|weed|joint,
        rosy|pink|red|ruddy|crimson|scarlet|cherry
        stripe|stripes|line|lines|band|ring|rings|border|streak|streaks|halo|smudge|tinge|glow right|all?
        along|round|around|at|by|on|across|above|under|near ..
        lash|lashes|lashline|lid|lids|eyelid|eyelids|eye|eyes|rim|rims|corner|corners, rabbit|bunny|lab|white
        rabbit|mouse? eyed, whites ..
        squiggly|squiggle|squiggles|wiggly|spidery|spider|thready|threads|veiny|scribbles|scribbled lines?,
        pinky|pinkish|pink|red with|and|from squiggly|wiggly|spidery|thin|little|tiny lines|veins|threads|squiggles,
        squiggly|wiggly|spidery red|pink lines|veins|threads, stoner look|eyes, colour|color of ..
        ham|gammon|salmon|prawns|prawn|flamingo|bacon, rims? all? rosy|rosey|red|pink|raw, salmon, shade ..
        salmon|rose|lobster|raspberry, <eye> .. rosy, eyes of a rabbit, rabbit eyes, like a rabbits, <eye>|yin|een
        is|are|pure|dead|awfy|a? bit? rid|reid, rid|reid an|and|n greetin|greeting|sair|sore|itchy,
        bilateral|mild|moderate|diffuse|scleral|limbal|perilimbal|conj|trace injection, injection at
        all|noted|seen|od|os|ou|bilaterally, on the pink|red side, white{s/} .. <eye> ..
        tomato|red|pink|crimson|scarlet|strawberry|raspberry|cherry, like a tomato, like tomatoes, white ..
        gone|turned|is|are|went pink|red, white{s/} .. arent|isnt|not|no white, less red, red rimmed, pink rimmed,
        red round|around|along|rims, road maps, angry looking <eye>, <eye> .. angry looking, angry red, ciliary
        flush, flush, flushing, red hot, pinky, ruddy, pinkie, red, redness, reddish, reddened, reddening, redder,
        pink, pinkish, pinkness, pinker, bloodshot, erythema, erythematous, hyperemia, hyperaemia, conjunctival
        injection, injected, <eye> .. like tomato{es/}, pinkeye, veins .. <eye>, veiny, <eye> .. flushed, crimson,
        <eye> look .. stoned|high, rosy <eye>, look .. been crying, look like i .. smok{ed/ing}, <eye> .. scarlet,
        rubor, burst blood vessel{s/}, dey red, don red, e red
    """,
    "swelling": """
        sort|kind of|a hood|hoods|awning|overhang|shelf|canopy over|since|on|above, developed|grown|got|has|have
        a|an sort? of? hood|awning|overhang|shelf|canopy|visor, lid|lids|eyelid|eyelids
        is|are|was|were|gone|got|look|looks fat|round|plump|fleshy|doughy|bulbous and, round and tight the
        lids|lids?, round and|n tight, tight and|n round|puffed|shiny|puffy|fat, ive|have come up a?
        bit|lot|little|touch, eyelid|eyelids|lid|lids left|right|is is? fat, <eye> .. is fat and, swollen|puffed
        right|clean over, cant|couldnt|not get a? ring? finger|pinky|fingers between my lids, and|were puffed|puffy
        sat|sun|mon|tue|wed|thu|fri, twice|double|triple|treble their|its|the? usual|normal|regular
        selves|self|thickness|width|height|bulk|volume, shiner|shiners look|eye|eyes|without|but|like, twice|double
        themselves|itself, hardly|barely|scarcely|no any? crease|creases|fold left|to|showing|visible,
        goose|duck|hens|ostrich|quail|pigeon egg on|over|under|where|for|the|size|came|come, <eye> ..
        goose|duck|hens|quail egg, under? eye bags .. up|puffed|swollen|teabags|suitcases|huge|massive|double|full,
        bags is|are|have|has|both|all|gone|come? both|all|well|right|come|gone|blown? up|out like, like two|2|wet?
        teabags|tea, thick as slugs|sausages|planks|cushions|steaks|thieves|toast|two, its|theyve|theyre
        come|coming|blown|puffed|swelled back up, blown|puffed|swelled|swollen back up, awful|very|pure|desperate
        puffy head, pillows over|under .. <eye>, <eye> .. put on weight, put on weight .. overnight, boxer after
        round, boxer in round, like a boxer, <eye> ..
        come|came|gone|went|puffed|blown|blew|swelled|swollen|ballooned|both|all|well|right up like,
        pea|marble|grape|bean sitting|stuck? in|on|under my? .. lid|eyelid, pea in .. eyelid, enlarged ..
        lid|eyelid|eye, lid|lids|eyelid|eyelids .. enlarged|inflated|thickened|thick|bulky|heavy and
        fat|chunky|chonky|ballooning, smidge|smidgen|trace|dab|bit of puff, puffy looking, one|left|right eye|lid up
        like, on the puffy side, bit on the puffy, bags under my eyes ..
        since|now|today|shopping|appeared|overnight, dumpling{s/}, impression of ..
        dumpling|frog|boxer|potato|balloon|pillow, pierogi, frog lids, lids like frog, bit of puff, cheeky .. puff,
        lids .. dumpling{s/}, look like .. stung, like i lost .. fight, toad, lid{s/}|eye{s/} .. puff|puffs,
        bit|lot|touch|hint of puff, puff to|on|in|around it|them|my|the, lids|lid|eyelid|eyelids .. like
        egg{s/}|plum{s/}|dough|bread|cushion{s/}|pillow{s/}|sausage{s/}|slug{s/}|grape{s/}|fig{s/}|peach{es}|doughnut{s/}|bun{s/},
        eyes like plums|eggs|slits|golf|cushions|pillows, lid{s/}|eyelid{s/} the? size of, size of an?
        egg|plum|grape|walnut|marble|pea, lid{s/}|eyelid{s/} .. folding|folds|fold|hanging|hangs|sagging|drooping
        over|down, lid{s/}|eyelid{s/} .. fat|fatter|thick|thicker|heavy|ballooning|bulgy, up like a balloon, up like
        balloons, come up like a|an, <eye> .. come up .. lump{s/}|bump{s/}, eyelid|eyelids|lid|lids
        become|became|also|get|got|getting|turn|turned so|very|too|really? big|fat|thick|huge, eye bag|bags
        become|became|get|got|is|are big|bigger|huge|swollen, the top|lid of the|my eye .. inflated|fat|big, the
        puff almost|nearly|all|mostly|gone|went|bit|still|does|hasnt|wont, puff, lump .. come up, lump come up, lump
        .. .. lid|lids|eyelid, hard .. lump .. lid, hard .. lump, knot on|in|under .. lid, knot ..
        lid|eyelid|lashline, little knot, swollen small, bags .. doubled|swollen|huge|puffy, bags under my eyes ..
        size, one eye smaller than, lids .. tight, lid .. tight, tight and shiny, shiny and tight, fluid under,
        fluid filled, water balloon, like pillows, like sausages, like frog, frog eyes, bulgy lids, chunky lids,
        like|a|full|total|proper|pure|the hamster, hamster cheeks|face|mode|vibes|eyes|eyed|lids|look, lump on ..
        lid{s/}|eyelid{s/}, lump .. lash line, pimple looking lump, lump .. lid, bump like a pimple on .. lid, bump
        .. pea, stye looking thing, lids .. up a bit, lid{s/} .. come up .. puffy|big|huge|like|swollen|fat, eye{s/}
        .. come up .. puffy|big|huge|like|swollen|fat, lids up, like i cried all night, swoll up,
        gone|goes|looks|looking|all|suddenly hooded, hooded and|now|today|since, <eye> .. balloon, eye{s/} .. size
        of, bloated, <eye> .. <huge> .. normal, lids .. thick, lids .. heavy, swelling, swollen, swell, swells,
        swelled, swole, swoll, puffy, puffiness, puffed, puffing, puff up, puffs up, puffier, inflamed,
        inflammation, edema, oedema, edematous, oedematous, chemosis, ballooned, ballooning, <eye> .. like|size
        balloon{s/}|marshmallow{s/}|grape{s/}|golf|golfball{s/}, <eye> twice .. size, double .. size, twice
        its|their|the normal? size, lump .. <eye>, lump on|in my? .. <eye>, <eye> .. lump, stye, sty, chalazion,
        hordeolum, bags .. bigger, quincke, like .. punched, like .. boxer|boxing, <eye> .. half shut|closed|open,
        <eye> .. fat, fat <eye>, fat lid{s/}, <eye> .. bulge{s/d/}, <eye> heavy and thick, distended, swelt,
        swellings, swells up, blown up like, blew up like, blowing up like, <eye> .. blew|blown up, <eye> ..
        ballooned, don swell, dey swell, e swell, <eye> up like, <eye> is|are|has|have .. up like ..
        <round>|<frogs>|football|footy|balloon, eye{s/}|lid{s/} .. come|gone|went|blown|puffed|swelled up like,
        footy|conker|haggis|bap|dumpling{s/} .. <eye>, like .. been stung|punched|mugged|smacked|thumped
    """,
    "itching": """
        cant|couldnt|cannot leave my|the|either|both eyes|eye|lids|lid|eyelids be|alone,
        mosquitoes|mozzies|midges|fleas|gnats|bees .. on|in|at|round my|the|both lids|lid|eyes|eye|eyelid|eyelids,
        bitten by midges|mozzies|fleas round|around|on, cant|couldnt|cannot leave them|em|it|my be|alone|lids|eyes?
        rubbing|scratching, cant|couldnt|cannot leave them|em be,
        have|having|had|give|giving|gave|need|needing|want|wanting a|it|them|my|the
        good|proper|right|decent|big|wee|mad|hard? old? rub|scratch|claw|rummage at|of|on|the|to|them|it|my|round,
        tickle|tickles|tickling .. leave|leaves|leaving me alone|be, a|dey|de scratch mi|me, eye|eyes|lid|lids dem?
        scratching me|mi, tickle|tickles|tickling .. roots|lashline|rims|rim|lids|lid|corner|corners,
        wont|doesnt|not let me sleep .. scratch|itch, fighting|fight|trying|try|tryna|struggling|hard|dying .. not
        to scratch|rub|claw|itch, sitting|sat|sit on my hands .. scratch|rub|itch,
        put|wear|wearing|had|have|in|sleep to|the|in? mittens|oven|gloves|socks .. on|hands|scratch|rub, knuckles ..
        lids|eyes, ants .. lids|lid|eye|eyes|lash|lashes, ants crawling|marching|doing, cant stop
        clawing|pawing|digging .. eye{s/}|lid{s/}, clawing at my? .. eye{s/}|lid{s/}, at them all day|night|since,
        scratch scratch, my <eye> .. scratch, itchies, wanna .. scratch, wants? to be scratched, i scratch, scratch
        at, scratched at, rubbing at, rubbing them, cant stop rubbing, keep rubbing, keep scratching, itch, itchy,
        itching, itches, itched, itchin, itchiness, itchier, itchyness, pruritus, pruritic, scratchin, scratching,
        want to|wanna scratch, need|wanting to scratch, scratch my eyes out, wanna claw|rip, claw my eyes out,
        rubbing .. <eye>, rub my .. <eye>, tickly, tickling, <eye> .. tickle{s/}, ticklish, make{s/} itch, dey
        scratch|itch|ishing me?, scratching me, are scratching me, is scratching me, eating me alive .. itch{y/ing}
    """,
    "burning": """
        tingly|tingling|prickly and|n hot|warm, hot|warm and|n tingly|prickly|tingling|nippy, <eye> ..
        feel|feels|felt|like|look|looks|been|theyd ..
        sunburnt|sunburned|sunburn|boiled|scalded|steamed|grilled|fried|toasted|microwaved|barbecued|roasted|blowtorched|singed,
        like .. leaned|leant|leaning|stood|standing|stuck|sat|sitting|hung over|near|at|above|by|in|round|behind ..
        barbecue|barbeque|bbq|bonfire|campfire|grill|stove|furnace|oven|fryer|fire|exhaust, heat
        on|in|under|across|over|around|behind|through my|the|both|me left|right|upper|top|both? <eye>,
        chilli|chili|chillies|pepper|jalapeno fingers|finger|hands|thumb, sort|kind|type of heat on|in|under, hot
        tingle|tingling|tingly|nippy, slight|slightly|mild|funny|weird|strange|odd warm|hot|heaty feeling|sensation,
        warm|hot|heaty feeling|sensation .. <eye>|lids|there, dey pepper me, pepper me, peppery, eye{s/} .. pepper,
        chilli|chili|wasabi|vinegar|onion|lemon juice in, slapped with sunburn, sunburn, toasty,
        they|eyes|lids|eye|lid smart, peppering, pepper in|inside, nippy eye{s/}, burn under|in|on|at the?
        left|right|eye|eyes|lid|lids, arson, bun mi, bunning, <eye> .. bun me|mi, wasp{s/} .. <eye>, nettles, like
        nettles, <eye> .. nipping, vinegar, like bleach, chlorine, like .. shampoo, like mint, minty, tiger balm,
        burny, hot sauce in, lemon juice, feels hot, like fire, burn, burns, burning, burnin, burned, burnt, sting,
        stings, stinging, stingin, stung, stingy, smarting, smarts, on fire, prickly, prickling, nipping, nippy,
        scalding, like acid, like chilli|chili|pepper, feel{s/} hot, <eye> <be>? <very>? <very>? hot, hot <eye>,
        spicy, soap in .. <eye>, like soap, like onion{s/}, chopping onions, sizzling, pepper|peppers|peppering me,
        like pepper, peppering me, pepper dey, dey pepper|burn|hot me?, burn me|dem bad|well bad, like ..
        slicing|chopping|cutting onion{s/}
    """,
    "pain": """
        paining, eina, eyeache, eye ache, wee twinge, niggly, bruise, <eye> .. murder, gives me gyp, giving me gyp,
        giving me grief, giving me jip, giving me gip, dead sore, proper sore, gyp, paining me, its paining, is
        paining, pains me, paining small|somehow|bad|seriously, dey pain, hurting me, <eye> ..
        pulsing|pulsating|pounding, pulsing in my <eye>, pain, pains, painful, hurt, hurts, hurting, hurtin, hurty,
        sore, soreness, ache, aches, aching, achy, ached, tender, tenderness, throb, throbs, throbbing, throbbed,
        owie, ouchie, owwie, stabbing, sharp pain, bruised, bruisey, pulling pain, discomfort, uncomfortable,
        killing me, eye{s/} .. killing me, raw, <eye> .. raw, painfull, sensitive to .. touch, pounding .. <eye>,
        <eye> .. pounding, pressure behind .. <eye>, pressure in .. <eye>, ouch, shooting pain, smarting pain, stab
        of, punch{ed/} in the eye, dey pain|paining|hurt me?, are paining
    """,
    "watering": """
        i|ive|eyes|they|mine|lids|we didnt|havent|dont|not|never|hasnt|arent .. tear|teared|torn|tearing up, eye{s/}
        .. crying all, crying all the day, eyes .. havent|not stopped|stop running, havent stopped running, third
        hanky|hankie|tissue, hanky, hankies, chopping onions, slicing onions, slicing|chopping|peeling .. onions,
        taps? running .. <eye>, tap|tap's|taps been|is|are|keeps? running, taps on .. eye{s/}, mascara .. pointless,
        mascara .. down my face, cheeks .. wet|soaked, tissue .. constantly|all day, cry{ing} .. one eye, crying one
        side, running water, runs water, bringing water, brings water, dripping water, water dey, pouring water,
        weeping water, water is|are|keeps also|too|only|just|continuously|constantly|always? coming, water coming
        out|from|continuously|nonstop, make|makes|making tears, tears all the time|day, tears keep|keeps
        coming|falling, wont|hasnt|doesnt|dont|didnt quit|stop running|dripping|pouring|dribbling, dribbled,
        dribbling, wet pillow, pillow .. wet, through tissues, tissues like, used up|going through|get through ..
        tissues, i just leak, leaky, drippy, sprung a leak, eyes .. sprung, like a leaky|dripping|burst
        tap|pipe|hose, eyes were crying, crying the first, eye ran|leaked|dripped|trickled for|all|nonstop|like,
        left|right one ran|leaked|dripped|trickled for|all|nonstop|like, water once, water once and|so|or, eyes|eye
        ran for|all|nonstop, running like taps|tap|a|niagara, pouring like, they|it|eyes|eye do|does|did water,
        wont|doesnt|dont|cant|didnt stop leaking|watering|streaming|running|dripping|weeping, leaking like, <eye> ..
        leak, <eye> .. pouring, on the verge of tears all, mopping my|the? <eye>|face|cheek{s/}, eyes stream, <eye>
        .. streams, water{ing/y/s/in/} .. onion{s/}, streaming .. onion{s/}, tearing .. onion{s/}, water .. like ..
        onions, eyes .. stream, makes my eyes stream|run, eyes run like, red and running, and running but, eyes ..
        running, theyre running, are streaming, crying all day, cry all day, cry nonstop, crying and im not|sad,
        wont quit crying, <eye> .. keep running, keep running, watered, cries|crying|cry alone|without, right|left
        cries|crying|cry, bringing|bring|pouring out? water, cries without, greetin|greeting eye|een|lid|eyes,
        rid|reid|sair|sore|red an|and|n greetin|greeting, cries|crying|cry me|to me? the|my left|right? eye|eyes,
        bit|drop|lot of water in them|both, <eye> .. welling up, keep{s/} welling up, welling up
        all|constantly|nonstop, tissue in hand, eyes .. tearing, teared up, teared, streaming down, watering,
        watery, waters, <eye> .. water, they water, water when|if|a|all|constantly|nonstop|so|like, make{s/} ..
        water, water is coming, water comes, water keeps, water running, water from .. <eye>, waterin, teary,
        tearing, tearing up, teary eyed, tears, weepy, weeping, weep, weeps, streaming, stream, streams, leaking,
        leaks, lacrimation, epiphora, runny, running nonstop, <eye> .. run|running|runs, waterworks, waterfall,
        <eye> .. faucet{s/}|tap{s/}|drip{s/ping}, wont stop crying, keep{s/} crying, <eye> <be>? crying, <eye>
        wont|cant|dont .. crying, crying nonstop, wet <eye>, <eye> .. wet, lacrimating, dripping, eye{s/} ..
        flood{ing/ed}, dey run|bring|drop water, dey water, <eye> .. been|keep|keeps|started running, havent|hasnt
        stopped running, crying all .. day, waterlogged <eye>, <eye> .. waterlogged|flooded|flooding,
        flooded|flooding <eye>
    """,
    "discharge": """
        sticky|thick|gummy|white|cloudy|slimy|stringy|yellow|yellowish|gluey water|tears|liquid .. like?
        gum|glue|paste|corner|corners|coming|comes, sticky|thick|gummy|gluey water like? gum|glue|paste,
        scabby|crispy|crunchy stuff|bits|muck, something|stuff|thing thick|sticky|slimy and yellow|green|white, eye
        goes|comes|come something, thick yellow|green, something yellow|green coming|in|from,
        stringy|ropy|stretchy|gloopy stuff|bits|muck|goo, greenish|yellowish|whitish|milky|brownish
        muck|gunk|goo|stuff|bits|crud, snotty stuff, snotty, snot .. <eye>, eye snot, eye
        boogers|bogeys|bogies|buggers, jelly stuff|bits in .. corner, yellow stuff, green stuff, white stuff ..
        corner|<eye>, muta, eye boogers, matter .. morning, crumbs .. corner{s/},
        yellow|green|greeny|greenish|yellowish|white|cloudy|sticky .. sleep|thing|things|matter|bits in|on|at
        the|my? corner{s/}, sleep in the|my corner{s/}, yellow|green|greeny|white thing|sleep, gooped, stringy
        stuff, pick .. off .. lashes|corner{s/} .. morning, welded .. morning, wash .. open .. morning, soak ..
        open, yellow goop|goo|gunk|slime|film, gluing the corner, gluing .. shut, crusting, crusts, crustier,
        scabbing goo, mucopurulent, mucoid, d/c, sleep in .. eye{s/}, stuck|glued|gummed|sealed .. when i wake,
        stuck|glued|gummed .. every morning, stuck .. on waking, yellowy, eye gunk, eye goop, weepy gunk, discharge,
        discharging, crust, crusty, crusted, crustiness, crusties, gunk, gunky, goop, goopy, goo, gooey, pus, puss,
        pussy eye, purulent, mucus, mucous, mucousy, exudate, sticky <eye>, <eye> .. sticky, eye{s/}?
        bogeys|boogers|booger|bogies, sleepies, slimy, slime, ooze, oozing, oozes, oozy, weeping pus, yellow
        stuff|gunk|crust|bits, green stuff|gunk|crust, stringy, matter in .. <eye>, matted, eye{s/} .. matter,
        gooky, gook, snot, stuck together, glued together .. morning, stuck shut .. morning, <eye> .. bunged up,
        bunged up .. <eye>, gloopy, gloop, manky, flaky crust, <eye> .. gluey|gummy|tacky|gloopy, gluey|gummy <eye>
    """,
    "rash": """
        button|buttons .. eyelid|eyelids|lid|lids|skin, dry|red|scabby|itchy|rough|sore scabby? patches,
        wee|tiny|small|little|red spots .. eyelid|eyelids|lid|lids, goosebumpy, goosebump things, sandpaper dots,
        small|little|tiny dot|dots .. skin|lid|lids|eye, skin .. small|little|tiny|many .. dot|dots|pimple|pimples,
        lids .. pimple|pimples|spotty|bumpy|rough|scaly, prickly heat, eyelids are peeling, come|came|coming up
        in|with .. pimples|dots|bumps|spots|blisters|lumps, small small bumps|balls|pimples|spots, brought friends
        .. bumps, small balls, little balls, tiny balls, balls on .. lid{s/}|eyelid{s/}, crop of
        spots|bumps|pimples, little|tiny|small|wee lumps, all in .. lumps, <eye> .. come up in ..
        lumps|bumps|spots|blisters|dots, come up in .. lumps|bumps|spots|hives|blisters|rash, lumps and bumps, skin
        .. <eye> .. peel{s/}, skin .. is peel, goosebumps on .. lid{s/}, like sandpaper lids, crocodile, lumpy
        lid{s/}, <eye> .. lumpy, lumps on .. lid{s/}, lumps along, blister on .. <eye>, whiteheads, whitehead,
        papular, zits, zit, little dots, scabby, rough and dry, dry and flaky, peely, spot{s/} along, milia,
        pustule, thickened skin, red patches, red patch, blotchy, blotches, flecks, skin .. rough|scaly|dry, rash,
        rashy, rashes, bumps, bump, bumpy, pimple{s/}, pimply, blister{s/ed/ing/y}, spots on|around|under .. <eye>,
        spots, flaky, flaking, flakes, flake, flakey, peel, peeling, peels, peeled, scaly, scaling, scales, dry
        skin, dry patches, dry patch, dermatitis, eczema, papules, pustules, vesicles, welts on .. <eye>, skin ..
        cracked|cracking|rough|leathery, cracked skin, crackled, rough patches, breaking out, broken out, broke out,
        breakout, scabs, scab, lesion{s/}, excoriated, red dots, tiny dots, skin .. coming off, lids .. dry, dry
        <eye>lids, chapped
    """,
    "light": """
        headlights|headlight|light|lights|screen|sun|lamp|bulb|torch|window|fridge|telly|daylight|sunlight ..
        had|has|have|got|sent|left|makes|made me ..
        crouching|cowering|ducking|hiding|wincing|squinting|flinching|recoiling|running|diving|curled|covering|shielding|hissing,
        headlights|light|lights|screen|sun|lamp|bulb|torch|window|fridge|telly|daylight|sunlight ..
        hand|hands|arm|sleeve|towel|blanket|beanie|hood over my|the|it|them|both, even?
        screen|light|lights|lamp|sun|telly|window|bulb|torch|headlights|daylight is|are|was|feels|feel|looks|felt?
        like a|an|two|some? knife|knives|needle|needles|laser|lasers|dagger|blade|razor|torture|murder|slap,
        squint|screw|scrunch|clamp|squeeze it|them|my shut|closed till|until|when|every|for,
        hates|hate|loathes|detests headlights|headlight|lamps|daylight|sunlight|screens|brightness, photosensitive,
        photo sensitive, cant do .. light|lights|screens, lights? too much for, brightness hurts, screens?
        make|makes me squint, make|makes me squint, brightness .. down .. squint|eyes|hurts|screen, turn{ed} ..
        brightness .. down, phone on dark mode, sunnies indoors|inside, sunglasses indoors|inside,
        bulb|fridge|lamp|torch|headlights|headlight|screen|sun|window|daylight ..
        yelp|wince|flinch|squint|scream|cry|recoil|jump|hurt{s/}, made|makes me yelp|wince|flinch|squint ..
        light|bulb|lamp|sun|screen, yelp .. light|bulb, living|sitting|hiding in the dark, curtains ..
        drawn|closed|shut .. eye{s/}, curtains|blinds|drapes .. pulled|closed|drawn|shut|down, pulled the
        curtains|blinds, <lightsrc> and im|i wince|wincing|flinch|flinching|squint|squinting, hiding in the dark,
        tubelight, tube light, brightness .. zero|lowest|down .. hurts|bothers|still, sitting in dark, sit in dark,
        in dark room, cant stand no light|sun|brightness, stand no light, light hittin|hitting it|my|them|me,
        sunlight evil, squinting at everything, squint at everything, light|sun .. is evil, sunlight is my enemy,
        sun makes .. stream|run|water, lights .. unbearable, squint{ing/ed} like, squinting ..
        outside|driving|sun|daylight|bright, daylight .. too much, daylight is just too much, sun|sunlight|sunshine
        .. too much, brightness .. too much, light .. like .. knife, lamp .. like .. knife|knives, if i turn on the
        lamp|light, turn on the lamp|light .. hurts|knife|ouch,
        cant|cannot|avoid|avoiding|hide|hiding|shield|shielding .. <lightsrc>, close|closed|closing|shut|draw|drew
        .. blinds|curtains, blinds .. closed|shut|down, <lightsrc> .. <lightbad>, <lightsrc> .. makes|make ..
        water|cry|squint|scream|wince|shut|close, <lightbad> .. <lightsrc>, too bright for, everything .. too
        bright, feels too bright, have to sit in the dark, keeping the curtains, light .. like .. knife|knives,
        light .. goes through, lights .. squint, light{s/} .. make .. squint, lights .. make .. water, <cant>
        tolerate .. penlight|light{s/}, sun .. disturb{s/ing}, light{s/} .. disturb{s/ing}, light{s/} ..
        annoy{s/ing}, sun .. annoy{s/ing}, hates .. light{s/}, hate .. bright light{s/}, light aversion, sun ..
        makes .. stream|water|run, sun .. <cant> open, light .. stab{s/bing}, light .. too strong, light ..
        agony|torture, dont like .. light, lights .. torture, look at .. window .. hurt{s/}, bright light{s/} ..
        bother{s/}, sun .. too bright, <cant> be in .. light, photophobia, photophobic, light sensitive, light
        sensitivity, sensitive .. light{s/}, sensitive .. sun{light/shine/}, sensitivity to .. light{s/}, light{s/}
        .. bother{s/ing/ed}, bother{s/ed/ing} by .. light{s/}, light{s/} .. hurt{s/ing/in}, light{s/} ..
        kill{ing/s}, light{s/} .. pain{s/ful}, light{s/} .. unbearable, light{s/} .. sting{s/ing}, light{s/} ..
        burn{s/ing}, hurts .. look at .. light{s/}|screen{s/}|phone|window, hurt{s/ing} .. in .. light{s/}, <cant>
        stand .. light{s/}, <cant> look at .. light{s/}, <cant> handle|take|bear|tolerate .. light{s/}|sun,
        sun{light/shine/} .. hurt{s/ing}, sunlight .. bother{s/ing}|unbearable|painful|killing, sun ..
        bother{s/ing}|killing|burn{s/ing}, bright .. hurt{s/ing}|painful|bother{s/ing}, lamp .. hurt{s/}, wearing
        sunglasses|shades inside|indoors, sunglasses|shades indoors|inside, in .. dark room, sit{ting/} in .. dark,
        hide|hiding from .. light, wince .. light, squint{ing/} .. light, screen{s/} .. hurt{s/ing}, daylight ..
        hurt{s/ing}|painful|unbearable|bother{s/ing}, light is too much, lights are too much, lights off, curtains
        drawn|closed|shut, sensitive to bright, glare .. hurt{s/ing}|bother{s/ing}, headlights .. hurt{s/}, windows
        hurts, sun|daylight|light|lights|brightness|screen|lamp stab{s/bed/bing} .. it|them|me|my|<eye>, everything
        bright .. hurt{s/}|<sore>, anything bright .. hurt{s/}|<sore>
    """,
    "gritty": """
        pepper|coffee|salt|spice mill|grinder .. in|under|behind|inside|on|over <eye>|lids|eye|it|them, like ..
        pepper|salt|coffee|spice mill|grinder .. in|under|behind|inside .. <eye>, blink|blinks|blinking ..
        grind|grinds|grinding|grate|grates|grating|rasp|rasps|rasping, every|each blink ..
        sandpaper|sand|grit|gravel|grit|emery|pumice, eye|eyes|lid|lids|they .. full of
        crumbs|sand|grit|ash|gravel|sawdust|biscuits|toast|glitter|dirt, sand feeling, sand .. feeling, half of
        bondi, half the beach|desert|sahara, beach in there, gravel in|under|behind, sawdust in|under, like sandpit,
        sensation|feeling of sand|grit|dust|salt|sandpaper|gravel, sand thing, sand with every, full of sand, full
        of it .. sand, like a sandpit, sandpit, half|whole|all of .. under|in|behind my? <eye>, beach
        under|in|behind, grit under|behind, like a|the beach, beach .. sand, been to the beach, half the beach, sand
        out of, never got the sand, carry .. sand|beach, grains inside|grains|in, bits of sand, like breadcrumbs,
        toast crumbs, gravelly, gravel in my|the, feels like gravel, like grit, bit of sand, sand in the|my|my
        left|my right|it, grain of sand, some sand in, feels like sand, feel like sand, like sand, sand in my|the
        eye{s/}, sand under, sandy, throwing sand, sand on my eyes, eye{s/}
        are|is|feel|feels|so|super|really|been|get|keep .. dry, like a? grain|grains, piedrita, rubbing sand,
        feel{s/} like gravel, like .. pebble, like theres dust, beach in, gritty, grit, grittiness, sand in ..
        <eye>, sandpaper, grainy, scratchy, foreign body sensation, fb sensation, gravel, like .. dust, dry <eye>,
        dryness, dust in .. <eye>, like .. crumb{s/}, glass in .. <eye>, sand|sandy|grit|gritty|dusty|gravel
        feeling|feel|sensation, feeling of|like? grit|sand|gravel|glass
    """,
    "poking": """
        fish bone .. lid, fishbone, something lodged under|in, lodged under|in .. lid, sticky out one ..
        stab{s/bing}|pok{es/ing}|jab{s/bing}, keeps stabbing|jabbing|prodding me, stuck up under, stuck up in ..
        lid|eye, something|somethings|somethin stuck up, stuck up under my lid, hair .. across my <eye>, hair lying
        across, lash lying across, hair .. across .. eyeball, a hair .. eyeball, lash .. across .. eyeball, stuck
        behind my|the lid|eyelid|eye, eyelash stuck, lash stuck, hair stuck, stuck under there|it|my, something
        under there, trapped under, caught under, feel like something is there, something|sth in the corner, bit
        stuck, something sharp, sharp .. corner, sharp lash, sharp hair, small needle, needle, needles, like ..
        splinter, standing inside, is going inside .. <eye>, inside .. <eye> and touching, hair pricks,
        jabbing|poking|prodding|stabbing|pricking|needling away? at me|my, loose|bent|twisted|rogue|stray one
        turned|bent|curled|curling|pointing|growing in|inward|inwards|inside, pointing at .. eyeball, lash ..
        pointing in, thorn, sticking me, sticking in .. corner, scrape{s/}, scraping, stick{s/ing} .. in my lid,
        wire, stabby, jaggy, prickles, catches .. when i blink, feel .. when i blink, poking, poke, pokes, poked,
        pokey, poky, poking me, prick, pricks, pricking, pricked, jab, jabs, jabbing, jabbed, jabby, digging in,
        digging into, digs, dig, pinch, pinching, pinches, stab me, stabs, something .. in .. <eye>, sth in ..
        <eye>, somethings in .. <eye>, stuck in .. <eye>, stuck to .. eyeball, something|somethings stuck, something
        .. under .. lid, foreign body, lash .. in .. <eye>, one .. in .. <eye>, pointing into .. <eye>, pointy,
        spiky, spikey, tugging, pulling on .. lid, pulling at .. lid, pulls, scratching .. eyeball, scratches my
        eye, rubbing against, something in it, stab .. when, going into .. eyeball, something there, touching ..
        eyeball, hair in .. <eye>, catching .. lid, piece of .. in my eye,
        stabbing|jabbing|spiking|spearing|digging|poking|pricking|scratching me, keeps?
        stabbing|jabbing|spiking|spearing|pricking me|my|at|into, sticky out|outy one|lash|bit|hair|fan
    """,
    "vision": """
        seeing|see|saw|get|getting smudge|smear|blur|haze|film|fog|mist|smudges over|on|across|in the? <reading>,
        sight|vision|view|eye|eyes keeps|keep|is|are|kept|starts?
        smearing|smudging|fogging|misting|clouding|filming|steaming|greasing|blurring over|up,
        seeing|see|saw|theres|get|getting a|some|this|that smudge|smear|smudges|blur|haze|film|fog|mist
        over|on|across|in .. blink, words|letters|text|print|page|lines|subtitles
        swim|swims|swam|swimming|wobble|blur|smudge|smear a? bit|little|slightly? on|till|until|when,
        goes|gone|going|went|go misty|foggy|hazy|blurry|cloudy|bleary|smeary|filmy for a
        sec|second|moment|bit|blink|mo, bleary, vision|sight|view|<eye> .. unclear|bleary,
        letters|text|words|print|numbers|signs|screen .. unclear|soft|smear|smears|smeary|swim|swims|wobbly|fuzzy,
        signs .. go|went|goes soft, text .. smears, goes|go|went soft on|till|until, unblur, slightly?
        unfocussed|unfocused|unsharp, vision|view|edges|text|letters|words not sharp, not sharp till|until, film
        till|until, bit of fog, fog when|if|on|over|in|comes, foggy when, haze when|over|comes, blurry, blurred,
        blur, blurs, blurring, blurriness, blury, fuzzy, foggy, hazy, cloudy, filmy, film over, film on, misty,
        smeary, everything .. fuzzy, vision .. off, <eye> .. cloudy, out of focus, unfocused, blurrier, smudgy,
        fogged, cant see clear
    """,
    "in_eye": """
        in|into|inside both her|his|my|their|the <eye>, in|into her|his|their left|right? <eye>,
        splashed|splashes|dripped|leaked|seeped|trickled|squirted|flicked|flew in|inside, in each|either <eye>,
        gone|went|goes|got right|straight in, some in each|both|it|there, in|into|inside my|the|both|one|her actual?
        <eye>, in my left|right <eye>, in .. eyeball, en el|los|mi|mis <eye>, in it
    """,
    "hives": """
        broke|broken|breaking|came out in hives|welts, hive, hives, urticaria, welts, welt, wheals, nettle rash,
        hivey, mosquito hills|bites|bumps
    """,
    "irritated": """
        angry at me, theyre just angry, eyes .. angry, the light thing, iritis, uveitis, eyes .. not happy, playing
        up, <eye> .. acting up, acting up, bothersome, <eye> .. annoyed, giving me .. trouble, <eye> .. giving me,
        <eye> .. not right|good|great, hate .. my eyes, <eye> .. hate, irritated, irritation, irritating my ..
        <eye>, irritate, irritates, reaction, react, reacting, reacted, allergic, allergy, infection, infected,
        infect, conjunctivitis, blepharitis, keratitis, something wrong with .. <eye>, something .. wrong, something
        isnt right, <eye> .. angry, angry <eye>, flare, flared, flaring, flare up, sensitive <eye>, <eye> ..
        sensitive, not right with .. <eye>, <eye> .. bothering me, <eye> .. weird, <eye> .. funny, <eye> .. mess,
        <eye> .. bad, <eye> .. messed up, <eye> .. fried, <eye> .. cooked, <eye> .. aggravated, upset <eye>,
        they|theyre|lids|eyes|lid|eye .. angry looking, they|theyre|lids|eyes|lid|eye .. looking angry
    """,
    "fever": """
        the sweats, got sweats, night sweats, temp of|is|was 38|39|40|100|101|102|103|104, temperature of|is|was,
        running hot, shivery, shivers, shivering, chills, feverish, 38.5, 39.2, 102f, 103f, running a?
        100.{4/5/6/7/8/9}|101.{1/2/3/4/5/6/7/8/9}|102.{1/2/3/4/5/6/7/8/9}|103.{1/2/3/4/5/6/7/8/9}|39.{1/2/3/4
        /5/6/7/8/9}|38.{1/2/3/4/5/6/7/8/9}|104|103|102|101|100|38|39|40, 101.{1/2/3/4/5/6/7/8/9},
        102.{1/2/3/4/5/6/7/8/9}, 103.{1/2/3/4/5/6/7/8/9}, 38.{1/2/3/4}, 39.{1/2/3/4/5/6/7/8/9}, 40.{1/2/3/4/5},
        roasting and shivering, 103, 104, thermometer, 38, 40, hot and cold, burning up with, sweating, fever,
        temperature, temp of, running .. temp, pyrexia, febrile, sweats, 38.{5/6/7/8/9}, 39, 101, 102
    """,
    "hot_lid": """
        lid|lids|eyelid|eyelids is|are|feels|feel|has|got|gone also|too|really|dead|well|proper|gone|pure|all|both?
        hot|warm|boiling|roasting|baking|radiating, <eye> .. hot|warm like|as a|an|the?
        radiator|oven|stove|iron|kettle|toast|furnace|heater|coal, fry an egg, boiling .. lid|eyelid|eye, lid|eyelid
        .. boiling|roasting|burning up|like a radiator|like an oven|radiating|baking, lid|eyelid .. hot to
        touch|the, <eye> is|are|feels|feel? boiling|roasting|scorching|baking, <eye> <be>? <very>? <very>? hot|warm,
        hot <eye>, <eye> .. hot to touch
    """,
    "headache": """
        skull splitting|pounding|banging, splitting skull, savage|blinding|thumping|raging|stonking|cracking
        head|headache, head is|feels pounding|splitting|banging|thumping|throbbing|exploding|killing, headache, head
        ache, migraine, head .. pounding|splitting|killing|hurts|hurting|aching|banging|throbbing|exploding,
        headaches,
        terrible|bad|awful|splitting|pounding|banging|thumping|shocking|sore|stinking|raging|evil|cracking|desperate
        head
    """,
    "sickly": """
        keep|keeps getting sick, got|getting sick once|twice|again|everywhere|three, after getting sick,
        chucked|chucking up, hugging the? toilet|loo|bowl, head in|over|down the? toilet|loo|bowl|bucket|sink,
        cant|couldnt keep toast|food|water|anything|a|dinner|fluids|tea down, brought up my?
        breakfast|lunch|dinner|tea, retching, retched, heaving, queasy, bucket, spewing, chundering, hurling, being
        sick, been sick, nausea, nauseous, nauseated, throwing up, threw up, vomit, vomiting, vomited, puking,
        puked, feel sick, feeling sick, sick to my stomach, want to be sick, barfing, going to be sick, gonna be
        sick, about to be sick, might be sick, could be sick, going to throw up, gonna throw up, about to throw up,
        gonna puke, going to vomit, gonna vomit, nearly threw up, vom, vomming, want|wanna|need to?
        vom|throw|puke|hurl|barf|spew|chunder, boak, boaking
    """,
}
