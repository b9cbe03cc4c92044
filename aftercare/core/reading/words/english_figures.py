"""English that sounds like a sign, a visit or a complaint and is none: figures of speech, colors of other things.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

FIGURES = {
    "slight": """
        faint
        little|bit|itch|redness|pink|line|red|sting|hint|trace|tingle|pinkness|blush|mark|mascara|swelling|burn, a
        faint, faint pinkish|itchy|ache, very|so|quite|rather|slightly faint and
    """,
    "figure": """
        vision|visions|sight|eyesight is|s|still|stayed|all? crystal|perfectly|totally|completely|pin?
        clear|sharp|perfect|20/20|tack|unaffected|spot, slit lamp all? clear|normal|fine|healthy|unremarkable,
        cornea|corneas|conjunctiva|sclera|lids and? cornea|corneas|conjunctiva|sclera|lids?
        are|is|look|looks|all|were|was|both? clear|healthy|quiet|normal|intact|unremarkable|fine|white|pristine,
        whites of my|the? eye|eyes are|is|look|still|all? still|all|nice|lovely|pure? white|clear,
        lids|eyes|eyelids|lid are|is|look|feel|all? flat as pancakes|boards|ever|anything, itch with everything,
        allergic to|of the|a|some|most|hair?
        <allergen>|nut|bee|bees|insect|cat|cats|dog|dogs|horse|horses|fish|egg|eggs|food|skin|metal|metals|milk|dust|mould|perfume|dye|dyes|acrylic|gloves|fragrance|plaster|kiwi|strawberries
        sting|stings|bite|bites|hair|fur|dust|things?,
        <allergen>|nut|bee|bees|insect|cat|cats|dog|dogs|horse|horses|fish|egg|eggs|food|skin|metal|metals|milk|dust|mould|perfume|dye|dyes|acrylic|gloves|fragrance|plaster|kiwi|strawberries
        allergy|allergies|allergic|intolerance|intolerant, allergy|allergies|intolerance to the|a|some? hair?
        <allergen>|nut|bee|bees|insect|cat|cats|dog|dogs|horse|horses|fish|egg|eggs|food|skin|metal|metals|milk|dust|mould|perfume|dye|dyes|acrylic|gloves|fragrance|plaster|kiwi|strawberries,
        react|reacts|reacting to the|some|most?
        <allergen>|nut|bee|bees|insect|cat|cats|dog|dogs|horse|horses|fish|egg|eggs|food|skin|metal|metals|milk|dust|mould|perfume|dye|dyes|acrylic|gloves|fragrance|plaster|kiwi|strawberries
        sting|stings|bite|bites?, allergy card|form|list|bracelet|band|tag|alert|section|box|history|info, epipen
        and|in, carry|carrying|bring|keep a|an|my? epipen|inhaler, what is|are a|an|the? eye?
        blepharitis|conjunctivitis|keratitis|uveitis|iritis|stye|styes|chalazion|allergy|allergies|infection|infections|pinkeye|demodex|cyanoacrylate|dermatitis,
        whats|define a|an|the? eye?
        blepharitis|conjunctivitis|keratitis|uveitis|iritis|stye|styes|chalazion|allergy|allergies|infection|infections|pinkeye|demodex|cyanoacrylate|dermatitis,
        what does|do
        blepharitis|conjunctivitis|keratitis|uveitis|iritis|stye|styes|chalazion|allergy|allergies|infection|infections|pinkeye|demodex|cyanoacrylate|dermatitis,
        can|could|do|does you|ye|u|people|person|someone|anyone|anybody|one|women|clients|lashes|extensions|glue
        get|catch|develop|be|become|cause|give a|an|you|people? eye|bad|skin|nasty|allergic?
        blepharitis|conjunctivitis|keratitis|uveitis|iritis|stye|styes|chalazion|allergy|allergies|infection|infections|pinkeye|demodex|cyanoacrylate|dermatitis|allergic|reaction|reactions|irritation|rash|rashes,
        red|pink|scarlet|crimson|purple
        ribbon|door|doors|sign|van|car|bus|bike|carpet|flag|pen|ink|book|card|voucher|vouchers|box|bag|bow|balloon|balloons|house|gate|brick|hoodie|jacket|scarf|tie|hat|cap|gloves|boots|bikini|onion|onions|pepper|cabbage|squirrel|cross|badge|umbrella|sticker|curtains|curtain|chair|couch|towel|bin|bins|awning|shutter|letters|logo|wall|walls|stairs|uniform|bobble|trainers|wellies|gin|grapefruit,
        peel|peeling|peeled|peels the|a|some|my|them|his|her?
        potato|potatoes|spud|spuds|carrot|carrots|orange|oranges|apple|apples|veg|vegetables|prawns|garlic|egg|eggs|mango|mangoes|banana|plantain|sticker|stickers|label|wallpaper|paint|mask,
        forehead|flu|covid|botox|filler|fillers|travel|vitamin|b12|hayfever|steroid|insulin|tetanus|winter|holiday|booster|baby|weight|fat|skinny|ozempic|cortisone|hpv|shingles|pneumonia
        jab|jabs, chlorine pool|pools|ones|bath|baths|tablets|water,
        than|or|and|no|without|will|would|does|can|could|about|of the? chlorine, for|suit|suits|with|on sensitive
        eyes|skin|eyelids|lids types|people|clients|wearers|only?, wont|cant|dont|never|havent|hardly|barely
        see|seen|seeing daylight|sunlight, wont|cant|dont|never|havent|hardly|barely see|seen|seeing my|the
        bed|outside|sun till|until|again|for|all|before|since, or the red|pink one, asthma inhaler|inhalers|pump,
        ive|have|got|with|mild|bother|bothers|for|on|a|an asthma|asthmatic|asthmatics, glue in|on|over|into
        the|my|his|her wrong?
        bag|handbag|carpet|rug|floor|drawer|pocket|desk|dress|car|sink|bathroom|counter|worktop|keyboard,
        throat|chest|breathing|lips|tongue|face is|are|feels|feel|seems fine|ok|okay|grand|normal|good|perfect,
        poke|pokes|poking|touch|touches|touching|hit|hits|hitting|brush|brushes|scrape|scrapes my|the|his|on?
        glasses|sunglasses|specs|shades|goggles|lens|lenses|windscreen|brow|brows|fringe|ceiling|forehead,
        hurt|hurts|ache|aches from looking|staring|seeing|counting at? so|all|too|these|my|compliments,
        flush|flushing|flushed|flushin it|them|out|my|with|under|the|this, ghosting|ghostin|ghosted|ghost|ghosts
        me|us|him|her|you|u|them, with|w|wear|wearing|like|like w|in|eye|body|face|some glitter|glitters, glitter
        eyeshadow|liner|gel|polish|nails|makeup|spray, reason|reasons|excuse to weep|cry|sob|wince,
        rave|party|festival|concert .. glitter, im|were|was|sat|stuck|waiting|at at? a|the red light|lights, see|c
        you|u|ya|ye in|on|for two|2|double, wearing|wear|wore red|pink|burgundy|crimson|scarlet, pink
        eyeshadow|eyeliner, red|pink
        mascara|dress|lipstick|nails|shoes|hair|heels|jumper|top|coat|roses|wine|velvet|sofa, how red is too red,
        blood sweat and tears, blood sweat n tears, blood type, blood test{s/}, blood pressure, blood orange{s/},
        bad blood, my bloods, painting|painted|drawing|drew|drawn|sticking|stuck|gluing ..
        boils|bruises|scars|blood|wounds|pustules|blisters|warts .. on|onto my|me
        eyelids|lids|face|eyes|eye|eyelid|lid?, in the|my face twice, id|youd|theyd|hed go blind, go blind
        lol|haha|looking|if, look|looks like a? stroke patient|victim, glue went|goes|turned all?
        gooey|goopy|gummy|stringy|lumpy, made|makes my|the|his|her old? strip? lash? glue go|all?
        gooey|goopy|gummy|sticky|stringy|cloudy|lumpy|stiff, itch|itching|itchy|rash|burn|sting|antihistamine|anti
        cream|creams|powder|tablet|tablets|lotion|gel|spray, worst|most pain|painful|agony of|in|thing my|the|i
        life|ive .. was|is|were
        childbirth|birth|labour|labor|stepping|giving|lego|parking|paying|divorce|tattoo|tooth|kidney,
        40|38|39|37|41
        min|mins|minutes|minute|hours|hrs|hour|people|quid|euro|euros|dollars|lashes|pounds|year|years,
        that|the|last|first|my|previous .. message|text|txt|one was|is|were|came my|from|for|about|meant
        my|his|her|another|him|someone|somebody|for|flatmate|sister|mum|friend, eyes|eye|eyes are|still?
        watering|streaming|crying laughing, watering|streaming|tears|crying from|with laughing|laughter|giggling,
        do|should|shall|can|could i|u|you flush|rinse, flush|flushing with|it|them|out,
        rub|rubbed|rubbing|scratched|touched my|the|both|them? eyes|eye|lids|it? out of habit, rub|rubbed|rubbing
        my|the|both? eyes|eye by|accidentally|without|in|to accident|mistake|thinking|disbelief|believe|check,
        accidentally rubbed, only thing|things
        leaking|dripping|running|watering|streaming|burning|swollen|sore|red|bleeding|crying .. is|are my|the|our
        kitchen|bathroom|tap|sink|roof|boiler|wallet|purse|bank|pipe|pipes|shower|washing|ceiling|gutter|hose|fridge|toilet|car|radiator|dishwasher,
        at|on|from|to the beach|seaside|dunes .. sand everywhere, sand everywhere .. beach|car|bag|house|shoes|hair,
        with your|ur|his|her|their eyes shut|closed, do|did|done|doing it|them|these|mine with|w .. eyes
        shut|closed, scrubbing|scrub|scrubbed the|my|a
        baby|floor|floors|kitchen|oven|bath|bathroom|loo|toilet|duvet|carpet|pots|pans|tiles|shower|house|grill|car|decks|walls|sink|dishes,
        hurts|hurt|hurting|burns to|when|if look|stare|looking|they|people|she|he at|looks? at? me|you|her|him|us,
        crying|cried|cry|sobbing|weeping|tears|bawling over|about him|her,
        crying|cried|cry|sobbing|weeping|tears|bawling over|about|for a|my|that|some|this
        boy|man|lad|guy|ex|breakup|bloke|girl|fella, stopped|quit|done crying over|about,
        pinkeye|conjunctivitis|nits|norovirus|measles|impetigo .. going|doing|goes round|around|through, pink eye ..
        going|doing|goes round|around|through, doing the rounds, allergic to
        email|emails|manager|exercise|gym|housework|ironing|cooking|cleaning|small|talk|meetings|maths|math|running|men|exes|romance|queues|admin|spreadsheets|hoovering|effort|waking|alarm|alarms|waiting|being|responsibility|texting|cardio|dating|my,
        knee|back|hip|shoulder|leg|foot|toe|ankle|wrist|elbow|stomach|belly|tummy|tooth|ear|hand|thumb|rib|bum|muscle|growing|labour|labor|period|joint
        pain|pains|ache|aches|aching|cramp|cramps, back|backs|hips|legs|feet|arms aching|killing|breaking|throbbing,
        ego|head|pride|bank|ambition however|though|meanwhile? is|are massively|hugely|very|so?
        swollen|swelling|inflamed|bursting|puffy|sore|bruised|burning,
        back|legs|waxing|wax|waxed|massage|knee|shoulder|bikini|brows .. and i was|am
        howling|screaming|yelling|crying|whimpering, my fyp|feed|mutuals|followers|dms|dm's|phone ..
        crying|screaming|sobbing|burning|fire, price|bill|cost|quote|total .. palpitations, eye patch ..
        pirate|party|costume|fancy, pirate .. eye patch, eyes bigger|were|are bigger? than my|our|her
        stomach|belly|tummy|plate, eyes were bigger, chlorine|chlorinated
        always|pool|water|swim|swimmer|swimming|training|does|do|is|bad|affect|ruin|damage|ok|okay|smell|never|used,
        pick|picking|picked up? the|my|our hamster, the|my|our hamster|hamsters, hamsters get|have|are,
        dug|dig|digging his|her|an|their elbow|elbows|thumbs|knuckles, lash glue on his|her|the|my
        curtains|jumper|sofa|carpet|jeans|table|hands|fingers|dress|shirt, tears for fears, no tears shampoo, tear
        jerker, keep|keeping|kept my|the|your eye|eyes shut|closed, though eyes, bambi eyes,
        phone|laptop|screen|computer|tablet blacked|blacking|passed out, burning|burn|burnt through
        mascara|remover|cotton|cleanser|them, welling|welled up at|when|with|over|watching, puffed out from|after
        running|run|stairs|gym|walk|jog, went|gone|turned as? white|pale .. when|at .. price|bill|total|cost, rough
        on price|wallet|pocket|bank|budget, open my eyes before|without|until my|a first|second|third|morning?
        coffee|tea|latte, shaking|trembling .. excitement|joy|happiness|delight,
        passing|passed|pass|faint|fainting|fainted|collapsing|dying|swooning out? from|at|over how .., passing|pass
        out|fainting|swooning from|over how, eyes .. popping|pop|popped|popping out of their|his|her|your
        heads|head|sockets|skull, cant even? open my eyes before|without|until|till|pre ..
        coffee|tea|caffeine|noon|breakfast|alarm|10|9|11|8|7, open my eyes before|without coffee|tea|caffeine, neck
        hurts|aches|ached|hurt|stiff|sore from|after|since, stiff neck, crick in .. neck, neck ..
        lying|pillow|slept, rash of weddings|bookings|bills|parties|birthdays|cancellations|things, rash
        decision|decisions|move, stinging price|bill|comment|remark, choking the|whole .. town|city|valley|place,
        smoke .. choking, smog .. choking, red
        lippy|lipstick|lip|dress|nails|nail|shoes|top|coat|hair|wine|light|lights|carpet|car|bag,
        bloke|man|husband|hubby|boyfriend|bf|fella|lad is blind, hand foot|foot, and|n|& mouth .. disease, hand foot
        n|and mouth, foot and|n mouth, hives .. roof|garden|bee|bees|honey|swarm|swarmed, bee|bees .. hives,
        caterpillar{s/}, spider{s/} on my, stung .. wallet|purse|pocket|bank, £|$ more .. stung, dearer .. stung,
        cheeks hurt|ache|sore .. smiling|grinning, you glued .. caterpillar{s/}|spider{s/}|broom{s/} to, seeing
        double over|at .. bill|price|cost|invoice|total, bill|price|cost|total|invoice made|makes|had|has|left me ..
        faint|dizzy|sick|blind|speechless|breathless|gasp|gasping|choke|choking|wince|cry|weep|sweat, feel|felt
        faint .. bill|price|cost|invoice|total, choked|choking on my .. when|at, nearly|almost fainted ..
        price|bill|cost|total, lips|filler|nose|botox done .. swollen|swelling|bruised, after my
        filler|fillers|botox, pitch black outside|out|already|when, its pitch black,
        street|power|lights|electric{ity/} .. pitch black, cant|couldnt sleep on my|the
        front|side|back|left|right|tummy|face|belly, film|movie on a|the|tv|telly|netflix|loop,
        lids|lid|eyes|eye|skin|whites are|r|is|look|looks their|its|the|my usual|normal|regular
        colour|color|size|shape and|n size|colour|color|shape, painful|painfully how
        long|slow|late|expensive|much|boring|awkward, burning question, only thing
        swollen|inflamed|burning|sore|red|puffy .. my head|ego|pride|wallet|heart|feet|ankles, eyes on the
        prize|road|ball, eye on the prize|ball|clock, cant|cannot|couldnt|dont see|find my
        crease|eyeliner|lash|liner|lid|lids|eyelid|eyelids, are|r|is|look|looks their|its|the|my
        usual|normal|regular colour|color|size|shape|selves|self, clean bill of health, could|would|can knock .. out
        cold, blew|blow|blowing my nose, blind before .. now|see, was blind but|and|before, i|me?
        usually|normally|always|typically? itch|react|swell|flare|peel|blister|puff|streamed to|at|from|with
        literally|absolutely|practically|basically? everything|anything, stung|stings|hurt|hurts|burned|burnt|burns
        more than any glue|adhesive|lash|wax, burns unit|ward|nurse|department|clinic|centre|center,
        painful|painfully|hurts|criminal|unbearable|disgusting|sickening|obscene how
        good|gorgeous|pretty|cute|stunning|fit|beautiful|nice|hot|well|much|amazing|fab|unreal,
        chickenpox|measles|nappy|diaper|teething|shaving|razor rash|spots|bumps|burn, chickenpox, chicken pox,
        inbox|phone|dms|feed|notifications|diary|calendar .. swollen|inflamed|burning|streaming,
        swollen|bursting|heaving|bulging with compliments|pride|messages|joy|likes|love,
        burned|burnt|burn|burning|burns through my|the|all|half|a|so|loads, only thing that|which|thats
        hurts|stings|burns|aches|hurting|burning|sore is|was knowing|that|how|having|paying|waiting|leaving|not|why,
        only thing that|which|thats hurts|stings|burns|aches|hurting|burning|sore is|was my?
        wallet|purse|bank|price|bill|cost|ego|pride|feelings, price|bill|cost|total|invoice|fee .. feel
        faint|dizzy|ill|sick|queasy|nauseous, made me feel? faint|dizzy|sick|ill .. quid|price|bill|cost|£|$,
        burns|stings|kills|pains|hurts|irks|irritates|bugs me that, burns|stings|kills|pains|hurts|irks me to
        say|think|know|see|admit|ask|pay|leave|cancel, swollen head, the|my|this colours|colors|color|colour off,
        colours|colors|color|colour|shade .. off .. wanted|asked|ordered|brown|black|match|brows, power
        cut|cuts|outage|out, pitch black .. typing|candle|torch|street|outside, typing by candle|candlelight|torch,
        checked|looked|look in|with a|the|my torch|mirror|flashlight|microscope, weepy|sad|soppy|tearjerker|romantic
        film|movie|song|series, telly|tv|screen|laptop|monitor|display dimmed, cant|couldnt|wont focus
        in|at|during|through class|work|school|meetings|lectures|lessons|college|uni|church, voice|speech at
        karaoke, raw steak|meat|mince|beef|liver|chicken|onion|egg|fish|salmon|veg, pink|red liner|eyeliner,
        receptionist|stairs|lift|app|parking|traffic|bus|boss is|was a? a pain,
        swollen|puffy|sore|itchy|burnt|aching
        ankle|ankles|feet|foot|knee|knees|leg|legs|hands|hand|gums|wrist|wrists, hurts|hurt|stings|stung to
        pay|fork|part, cant|cannot see myself|us|me ever?, cant|cannot see why|how, hurts but worth|my bank, eyes
        hurt|burn|hurting|burning from? looking|seeing .. pics|pictures|photos|selfies|mascara|price|bill|ex,
        pain|painful|hurt|hurts|hurting|burns emotionally|financially|spiritually|mentally,
        pain|ache|aching|sore|hurt|hurts|hurting .. from laughing|smiling|giggling|grinning|cackling,
        blind|blinded|blinding the|my|whole|entire|half ..
        office|room|class|street|team|party|town|school|church|everyone, take|took|takes|taking the sting out|off,
        sting out of, hit|hits|hitting|touch|touches|touching|brush|brushes|brushing|scrape|scrapes|bump|bumps ..
        glasses|specs|spectacles|sunglasses|readers, glasses|specs .. blink, glasses|specs every blink, seeing
        double .. twin|twins|matching, twin|twins .. seeing double, allergy|antihistamine
        pill|pills|tablet|tablets|tabs|med|meds|medicine|medication|shot|shots|nose|spray|jab|appointment, pupils of
        mine, breathless speechless, breathless with|from excitement|joy|laughing, cataract|cataracts ..
        done|removed|op|operation, nose is|was|keeps? streaming|running|runny|red|sore, only thing
        stinging|burning|hurting|sore|swollen is|was my|the, burned|burnt|burning|burn|tore|tearing up ..
        dance|dancefloor|floor, red|pink|reddish brow|brows, brow|brows|shade|colour|color|tint .. came|come|turned
        out reddish|red|pink, came|come|turned out reddish|orange|purple|ginger, face like a slapped|dropped, cant
        talk driving|busy|rn|im, blind date, burning holes in, eyes water ngl, cost|price|bill made my eyes, enemies
        have, heels .. killing me, feet throbbing, wheezing at my, in my eyes envy, vision|sight|eyesight sharp as a
        tack, vision|sight|eyesight like an eagle|hawk, cant|couldnt swallow how, cant|couldnt swallow the
        price|cost|bill|fact, eyes look like headlights|diamonds|stars, headlights .. ill take it, crying at
        my|the|her|his .. speech|wedding|film|movie, swollen with pride, with pride, burning with
        envy|jealousy|curiosity|shame, red as a lobster, on fire literally, bus is on fire, have keeled over, keeled
        over and died, couple have keeled, died on the, physical pain .. invoice|bill|price|cost|£|$, invoice ..
        pain, lying there with my eyes shut|closed, with my eyes shut|closed, pepper sprayed, complimented my,
        breaks the glue, chewed gum in my ear, not breathing but not me, people not breathing, lots of people not,
        tears happy, tears good, happy tears, in bits laughing, had me in bits, in stitches, hayfever make, hay
        fever make, faint|fainting|fainted|faints|swoon .. every|when|each|whenever .. i ..
        see|saw|catch|caught|look|looked|pass, gasping|gasp when|at .. saw|see|mirror, faint .. at the? ..
        mirror|reflection, feel faint every, i am|im|am on fire, these|they|this|those burn every|all|other|the
        other, poke me if|when, give me a poke, hurts my soul, hurts me soul, hurt my soul, ambulance for
        my|his|her|their, call an ambulance .. for, burn|burns|burned|burnt other|every|all sets, blinded
        everyone|everybody|half, at the bill|price|cost|total, saw the bill|price, when i saw the bill|price, crying
        at .. price|bill, im crying|cryin .. bus|late|traffic|pretty|happy|gorgeous|love, eye watering for, is eye
        watering for, £ .. eye watering, murder on the dancefloor, sore about the, sore over|at the
        price|prices|fee|fees|bill|cost|charge|service|salon|way, still sore about, burnt a hole, hole in my
        purse|wallet|pocket, gagging, was gagging, gagged, lump in my throat .. saw|looked|happy|wedding, tears ..
        wedding, breathless at|over, my jaw, feel blind|naked without, blind with|from happiness|joy, swelled my
        head, sting me for, stung me for, stings the wallet, red with|from envy|embarrassment|jealousy, blushed,
        makes me itch to, hot under the collar, red hot deal, red hot bargain, burning to show|tell|know|ask|see,
        only thing swelling is my pride, swelling is my pride, it hurts to think|imagine|know, hurts .. to think
        that|of|how, poking my husband|wife|friend|sister|boyfriend|man, poking .. in the ribs, lump in my throat ..
        mirror|pretty|happy|beautiful|cried, hurt my feelins, hurts my feelins, these are killing me they, killing
        me they look, killing me .. so good|cute|pretty, had my eyes watering but|at, price .. eyes watering, my
        eyes water what you charge, my pupils are|were|at|love|laugh|giggle
        already|all|so|now|school|asking|laughing, pupils are already giggling, pokes my eyebrows|brows, poke my
        eyebrows|brows, crying onions, burning up my|the|your selfies|feed|insta|instagram|camera|timeline|phone,
        parking was a pain, such a pain, was a pain to, are a pain, were a pain, burned down,
        red|swollen|puffy|pink|inflamed|bloodshot in the|that|my pic|photo|picture|pics|photos|selfie|video, just
        the filter|lighting|flash, so light i, so light that, so light, light i cant, pupil of yours, lungs out,
        scream my lungs, sorry allergies, hay fever, hayfever, pollen allergies, allergies are crazy|bad|insane,
        allergies killing, pain level for, red faced, tight schedule, tight squeeze, sit tight, light makeup, chest
        hurts laughing, saw it closed|shut, screen shot, screen time, window shopping, light as, crying with
        laughter, see you two|double, see two weeks, see two, in two, saw two, throat clearing, see stars, wear
        sunglasses, dry contacts|contact, dry eye drops, dry eyes drops, eye drops .. dry, two spots, see you, see
        u, see what, see how, see the two, see those two, see black lashes, black ones, dark ones, sun kissed, phone
        is dim, warm|cold|cool|hot|boiled|clean|lukewarm|salt|salty|fresh|some water, saline water, water nothing,
        water but, with water, running around, running from|to|errands|low|out|through, since
        my|the|our|that|this|last appointment|fill|visit, since i had .. appointment, after my|the|our|this|last
        appointment|fill|visit, from my|the|our|this|last appointment|visit, at my|the|our|last appointment|visit,
        during my|the appointment, on the way home|to|out|back, on my way home|to|out|back ..
        er|work|hospital|urgent|doctor|gp|a, before my appointment, her|his appointment, past my slot, my wife
        says|said, throat closed up ever, looking out the window, see straight, ears .. bleeding, bleeding ears,
        scared to book, pain dealing|to|getting|trying|finding|booking, a pain .. booking, painful to
        see|look|watch|pay, burning up the dancefloor|floor, burning through my, bleeding
        gorgeous|brilliant|lovely|marvelous, literally bleeding from how, eyes .. bleeding from, nearly passed out
        when, passed out when|at|seeing, cant see it but, patch test{s/}, allergy test, reaction test, my allergist,
        allergic to anything else, known allergies, seasonal allergies, allergy season, allergies acting|are, my
        allergies, stinking cold, streaming nose, streaming cold, streaming nonstop on, streams on, pink eye going
        around, worst pink eye, fire the good, flush with cash, royal flush, flushed with, needle and thread,
        needless, wire transfer, high key, dark glue, sharp look, looking sharp, sharp wing, look sharp, over the
        hill, big smile, my big mouth, big mouth, vinegar on, wires crossed, love is in the, jab booked, flu jab,
        covid jab, the jab, double chin, fat chance, phat, dark lashes, thermometer says, hot flush, hot flashes,
        scraped ice, killing it, killin it, killed it, kill it, slay{s/ed/ing}, dressed to kill, to die for, im
        dying, dying over, dying to, dead, im dead, literally dying, died, im deceased, eye watering price{s/}?, eye
        watering .. price|cost|bill|amount|sum, eyewatering, red carpet, red dress, red lip, red lips, red lipstick,
        red light, red lights, red wine, red top, red nails, red hair, red flag, red hoodie, red car, red door, red
        bull, red shoes, red bag, red roses, red eye flight, red eye to, redeye, in the red, seeing red, see red,
        saw red, paint the town red, pink lashes, pink dress, pink nails, pink lip, pink hair, pink ones, pink bag,
        pink lipstick, pink spoolie, pink brush, pink wand, tickled pink, in the pink, pretty in pink, pink glitter,
        hot pink, pink mask, pink heart, pink tips, pink pillow, pink headband, pink wisps, think pink, pink ..
        spoolie, redhead, red head, burning the candle, burning question{s/}, burning desire, burn{ing/ed/s} a hole,
        burning rubber, burning up the dance, burned dinner, burnt dinner, burnt toast, burned my
        tongue|hand|finger|toast|dinner|mouth, crash and burn, money to burn, slow burn, burn notice, burning
        calories, burn off, heart burns, burning bridges, feel the burn, ears .. burning, ears burning, sick burn,
        itching to, itchin to, itching for, itchin for, itch to
        go|be|get|see|show|wear|come|book|try|do|have|dance|travel, scratch that itch, scratch the itch, scratched
        the itch, lash itch, itchy feet, itchy palms, itchy trigger, itchy sweater, itchy wool, itchy mask, itchy
        bandage, itchy label, itchy fingers, from scratch, start from scratch, scratch what i, scratch that, scratch
        my last, up to scratch, scratch card, scratching my head, scratching the surface, in pain|tears laughing,
        tears of joy, crying laughing, laughing crying, crying happy, tears .. joy|happy|happiness, in tears when i
        saw|looked, cried when i saw|looked, cry when i see|look, make{s/} me cry, made me cry, nearly cried, almost
        cried, teared up, tearing up when|at, crying how, brought .. tears, brings .. tears, tears in my eyes when,
        tears laughing, bawled at, cry every time i look, bored to tears, im crying these|they|at|because|cuz,
        weeping with joy, weep with joy, weeping with happiness, cry at the wedding, crying at .. wedding, cried at
        .. wedding, crying at the, cried at the, jaw|jaws|chin .. deck|floor|ground, gasp|gasped each|every time,
        gasp .. mirror|reflection, tone|comment|comments|words|remark|remarks|attitude|feedback stung|stings, stung
        .. more than it, sore at|with you|ye|yous|them|him|her, sore loser|point|subject|winner|topic, every ..
        light is|was red, lights are|were all? on? red, the red line|team|arrows|sox|cross|ones, red and|or
        black|brown|blue|pink mix|set|fans|lashes|ones|colour|color|tips|option, red letter, red
        cardi|cardigan|jumper|sweater|scarf|hat|jacket|mug|umbrella|van|bus|brolly|purse|beanie|gloves|chair|sofa|blanket|towel|lamp|sign|pen|folder|card|box|packet|bottle|brush|tape|mat|robe|phone|case|velvet,
        the red eye
        friday|saturday|sunday|monday|tuesday|wednesday|thursday|tonight|tomorrow|home|back|out|over|from|to,
        taking|catching|getting|got|on|off|booked the|a red eye, went|go|gone|turned|turn
        beetroot|scarlet|crimson|puce|tomato when|because|cause|at|after ..
        said|told|complimented|asked|winked|called|smiled, i went|go|turned|turn|am bright? red|pink
        when|because|cause .. said|told|complimented|asked|winked|called|smiled, pink|red|white|grey|blue fluffy,
        fluffy pink|red|white, pink
        blanket|towel|chair|robe|sofa|walls|wall|neon|door|box|packet|mug|bottle|jumper|coat|scarf|cushion|cardi|top|bow|throw|rug|case|pouch|sign|lamp|cleanser|foam|tape|set|fans,
        swell see|sounds|idea|cheers|thanks, surf|ocean|sea swell, swell at|off bondi|manly, swell at|off the
        beach|pier|point|bay|coast, puffy white|black|pink|blue|red|green|grey|cream|yellow?
        jacket|coat|vest|gilet|anorak|parka|taco|tacos|sleeve|sleeves|paint|stickers|crisps|cheetos|clouds|cloud|bread,
        my|the|me blood is|was? boiling|boils|boil|boiled, blood running|runs|ran cold, makes|made|make|making
        my|the blood boil|run|curdle, out for blood, sweating blood, blood money, blood from a stone, bleeding
        money|cash|dry|funds|hell|obvious|nora|expensive|freezing|lovely|gorgeous|cheek|marvellous|typical|ages,
        bleed|bleeds|bled me|us|my dry, bleeding my? bank|wallet|account|purse dry?, make|makes|made|making
        my|me|the eyes water|sting|bleed what|how you|u|ye|much|they, make|makes|made my eyes water paying,
        what|price|prices|bill|cost make|makes|made my eyes water, bald|bare|empty|thin|missing spots|spot,
        melting|melted|melt like a|an? cheese|ice|icecream|butter|candle|snow|wax|chocolate|snowman|lolly, so|too
        hot that? i|im|i'm|we am|are? melting|sweating|roasting|boiling, i cant|wont|couldnt|never go back to
        mascara|strips|falsies|clusters|drugstore|my|before|life|being|bare|makeup|wearing|anyone|another,
        cant|wont|couldnt go back to mascara|strips|falsies|clusters|bare|makeup,
        licked|licks|licking|kissed|slobbered|nuzzled|snogged|slobbering on|all|over? my|me whole|entire|poor?
        face|eyes|hand|ear|eyelids|cheek|lashes, sleep|sleeping|slept|lie|lying|nap|napping face down|first,
        sleep|sleeping|slept|lie|lying on my|the tummy|stomach|belly|front|face|back, facedown sleeper,
        feel|feels|feeling|felt like|as though|if? i have|had|got|ive|im|am wearing|got? nothing on|there|at|in,
        feel|feels|felt like nothing on|there|at|is, i mean blind, he|she|they|him|date couldnt|cant|didnt see
        past|over|round|beyond|for|through the|my|these|them,
        shes|hes|theyre|mum|mom|mam|he|she|kids|kid|hubby|husband|boss|daughter|nan
        is|are|keeps|keep|been|was|has|always? nagging, nagging me|her|him|us for|to|about|since|all|again|every,
        cried|crying|wept|howled|howling|weeping|weep|cry laughing, cried|crying|wept|howled with laughter,
        face|nose|cheeks|shoulders|me|skin|back like|as|is|are|was|red as? a? tomato|lobster|beetroot|prawn
        from|in|off|after the|a?
        sun|sunbathing|heat|wind|cold|gym|run|running|sauna|beach|pool|skiing|slopes|wine|tan|sunbed, my lungs
        are|is|at the|like size|of|a|in, told my lungs, nearly|almost|practically|basically|legit?
        fainted|collapsed|died|passed|keeled out|over? when|at|seeing|looking|after? ..
        price|bill|mirror|myself|result|photo|cost|invoice|reflection, fainted|collapsed|died
        when|at|hearing|reading .. price|bill|cost|quote|invoice|total, eyes nearly|almost|practically?
        fell|popped|dropped|jumped|shot out of my|me head|sockets|skull|face when|at|seeing,
        opened|open|opens|opening like|as curtains|flowers|flower|normal|normally|clockwork|dream|usual|always, open
        and shut|close like|as|fine|normally|normal|just, isnt|arent|wasnt|werent stuck|glued|sealed|gummed|crusted
        in|at|together|shut, not stuck|glued|sealed|gummed|crusted in|at|together|shut,
        sobbing|crying|bawling|weeping|blubbing|cried|sobbed theyre|they|its|it|how|at? are|is? so|that|too|how?
        pretty|cute|gorgeous|beautiful|stunning|perfect|good|unreal|lovely, hasnt|havent|never been a|any?
        problem|trouble|issue|bother in|with either|my|both|the eye|eyes|lid|lids, actual|real|legit|literal|proper
        tears at|on|in|over the? bus|train|tube|car|mirror|desk|work|tesco|kitchen|salon, seeing double
        at|in|round|up our|the|my|this|here place|house|home|office|gaff|gym|salon|family|flat|lol, seeing double
        we|me|my|with|since my|the|me twin|sister|bestie|mate|friend|cousin,
        painting|varnishing|tiling|blocking|digging my|the|our|up front|back|garden?
        door|hall|fence|house|gate|stairs|wall|drive|driveway|road|landing, cant get out of? my|the|our
        house|drive|driveway|door|street|road|flat|car|parking|work|meeting, it is|its so? hot
        that|here|today|out|outside, here it is|its so? hot, asking|asks|asked|begs|makes|tells me to
        blink|wink|flutter|bat at|for|again, blink|wink for him|her|them|me|us, make|makes|making|made a?
        wind|breeze|draught|draft|gale when|if|every i|time i?, hasnt|havent|isnt|no|never|without|been a|any?
        problem|problems|trouble|issue|issues|bother|hassle in|with|from either|my|both|the eye|eyes|lid|lids,
        stomach|tummy|sickness|sick|winter bug, eyes are|look|looking|is fire|lit|insane|unreal in|on|at, friendly
        paramedic|nurse|doctor|neighbourhood|optician, room|salon|studio|place|shop|chair|bed|floor|water
        was|is|were so|too|a|bit|absolutely|always? freezing|cold|baltic|boiling|hot|stuffy|tiny|noisy|arctic, music
        was|is so|too|bit|very? loud, cant|couldnt swallow|handle|cope|deal how|with how .. look|looks|are
        tbh|ngl|lol|honestly|rn, with my|me whole|full|entire chest, cant|couldnt stop
        looking|staring|peeking|checking|admiring .. windows|window|mirror|mirrors|reflection|selfies|camera, blind
        date went|goes|was|tonight|well|is, see|saw|seeing every|each|all
        wrinkle|wrinkles|pore|pores|line|freckle|flaw|leaf, no
        pillowy|balloon|boxer|frog|panda|zombie|rabbit|vampire|racoon|raccoon lids|lid|eyes|eye, slit lamp,
        cornea|corneas is|are|looks? clear|fine|perfect|healthy|intact|spotless, no|zero
        injection|staining|infiltrates|flare|cells|papillae at|all|whatsoever|seen?, went|gone|go|going|goes blind
        with|from|by regret|rage|envy|jealousy|lust|love|desire|fury, asked three|two|ten|four|five|a|several|3|2
        times|hundred, pulled|ripped|tugged|yanked a|the|some clump|bunch|few|handful|couple out|off in|while|during
        my|sleeping|the? sleep|night?, like a|an? snout|muzzle, snout|muzzle|paw like|is a|the
        balloon|football|melon, sick in the head, sick to death of?, sick and tired of?, sick of
        being|paying|waiting|the|your|hearing|getting, in the? sun|daylight|sunlight|sunshine it|they|the
        is|are|look|looks|come|goes|go brown|red|purple|grey|ginger|orange|green|rusty, dark|black as i|we|they
        ordered|asked|wanted|hoped|said, dont|not even know how to say|put|tell|word,
        colour|color|curl|length|one|ones|shade|style you|u|ye picked|chose|used|put|gave|did for|on|in the|my?
        inner|outer|top? corner|corners|middle, cat|fox|doll|siren|squirrel|puppy|kitten|open eye|eyes
        style|set|look|and|but|got|shape|map|mapping|effect, printed|written|typed so small|tiny|faint,
        print|font|writing|letters|lettering is|so|too|was so|too? small|tiny|faint, new pair of eyes|specs|glasses,
        send|resend|forward|email|mail .. receipt|invoice|bill|voucher|form|address, havent|hasnt
        received|gotten|got|had the|any|my|a message|text|confirmation|email|reply|answer|link, not received
        the|any|my|a message|text|confirmation|email|reply|answer|link, steam from|off
        the|my|cooking|kettle|pots|shower|iron|wok, loosen|loosens|weaken|weakens the|my|your
        bond|bonds|glue|adhesive|hold, only|one glue|place|girl|brand|adhesive ive|i ever? got|get|gotten on|along
        with, kids|kid|toddler|baby|dog|son|daughter|horse|cat wont|refuses|refuse|refusing to?
        get|put|leave|eat|go|wear|sit|settle|sleep|stop|nap, take|took|taking|keep my|me|your|his|her|their eyes
        off, lost my|all breath when|at|seeing, dont you? dare|ever stop using|buying|changing that|this|the|your
        glue|adhesive|stuff, whatever that|the glue|adhesive is, muck|mess|gum|clog up the|your|my
        glue|bond|adhesive, room|salon|studio|place|it was|is like|as an?
        icebox|ice|fridge|freezer|oven|sauna|furnace, radio|music|tv|telly|speaker was|is|were
        blaring|blasting|deafening|booming, price|prices|bill|cost|invoice|total|speech|song|ad|advert
        brought|brings|bring a|tears? tear|tears to my|the|me eye|eyes, actual|literal|proper|audible|big|loud
        gasp|gasps|gasping, so|too good|pretty|hot|fit|gorgeous|cute|beautiful its
        painful|criminal|unfair|illegal|rude|unreal, on fire tonight|today|tonite at|in|on the|my
        club|dancefloor|party|town|gram|insta|bar|disco, whole|entire
        bar|pub|room|club|office|restaurant|bus|train|party|table was|were
        choking|gasping|drooling|weeping|crying|screaming|dying|fainting, by my own beauty|reflection|face,
        yoga|room|class|studio|sauna|office|kitchen|outside|weather|bath|shop|salon is|was|at|hits
        35|36|37|38|39|40|41|42|43|44|45 degrees|c|celsius?, 35|36|37|38|39|40|41|42 degrees
        in|outside|here|today|at|heat, glue go|goes|get|gets|going all? gooey|gloopy|soft|sticky|runny|stringy, car
        park|carpark .. shut|shuts|close|closes|open, voucher|card run|runs|expire|expires|lapse|valid out?, my
        labrador|dog|puppy|pup|baby|toddler|kid|mum|friend sit|wait|come|stay in|with|along|there, what|which
        oil|cleanser|remover|mascara|cream|spf|moisturiser|serum i|we|you? can|cant|should|shouldnt|must use|wear,
        sweat|sweats|sweating|drips|dripping|pouring down|straight|right|all? down|straight? into|in my|the|me
        eyes|face|eye, kind|type|sort that|which can|could|might|will|would hurt|burn|sting|damage|hurts|burns
        if|when|you|people|eyes, compliments|praise|attention since|from i|the? left|leaving|walking, since i left
        your|you|there|the|yours, nothing to report, from|at|on this|my|our end|side,
        unsubscribed|retired|resigned|opted out? from|of mascara|makeup|falsies|strips|dating, my
        feet|back|legs|head|knees|shoulders do|does|did|are|is lol|though|tho|from|after, breathing
        normal|normally|fine|ok|okay|easy|grand|perfectly, no|zero tightness|tight chest,
        butterfly|doe|bambi|princess|disney|mermaid eyes, said|told|says|tell dont|not to? rub|touch|pick|pull|get,
        oven mitts|gloves|mittens, gloves|mittens|mitts on so|to|at|in|all, dreading|dreaded|hated|hate the
        tape|pads|patches|lamp|bit|lying, sensitive skin|eyes, used to go|get|turn|be|swell|go
        beetroot|red|puffy|itchy|swollen|up|pink with|from|off|at every|any|all|other|most|my, onion in|on
        this|the|my|our kitchen|board|kebab, thought id hate the|it|them|having? feeling|feel|look, hate the
        feeling|feel|sensation of?, stroking the|them|my|their|it, shouts|shouting|asks|asking|yells|calls
        any|is|are .. swelling|redness|itching|pain|itch, any swelling|redness up|down|over the stairs|phone|garden,
        sand in my|the|our ears|bra|bread|shoes|hair|tent|bag|car|bed|sandwiches|knickers|pockets, sandstorm, not
        a|one grain|crumb, fake scar|blood|bruise|wound|injury, swollen|bruised black? eye on me for, short film,
        survived the|your|my|that remover, panda eyes, cry|cries|crying|cried|weep|sob at
        adverts|ads|all|every|commercials|films|movies|everything|weddings|reunions|adoption|bake|strictly, cats|as
        god|nature made|intended them|me, call 911|999 these|my|the lashes|extensions|fans, committed a
        murder|crime|felony, like ive been? bawling|crying|sobbing .. and|but ive not, like ive been?
        bawling|crying|sobbing .. and|but i havent, dont you? dare|ever stop|change|leave|quit|retire
        doing|using|making|being|that|the|these|this|on|me, runny
        sort|kind|type|one|glue|remover|stuff|gel|honey|egg|eggs|texture|consistency, throat on me|him|her like|as
        a? sandpaper|gravel|razors|razor|badger|glass, throat on me|him|her like|as,
        nurse|dentist|hairdresser|vet|chef|cleaner|florist with a|an proper|bad|severe|real|known|actual|diagnosed
        allergy|intolerance, legs|arms|abs|glutes|thighs are|is|in in? bits|pieces|shreds|ribbons, cant|couldnt lift
        my|me arms|legs, like a built in? parasol|sunshade|umbrella|awning, bite|chunk|bites out of my|the|me
        lash|lashes line|row?, what|whats does|do|is|would|by
        gritty|weepy|crusty|puffy|tender|inflamed|gloopy|hazy|bloodshot mean|supposed|like, is|are it|that|they like
        sand|grit|gravel, eye hospital|clinic|infirmary canteen|reception|cleaner|for|have|as,
        clean|cook|temp|volunteer at|in|for the|an eye hospital|clinic|unit|ward|infirmary, woke up looking like,
        landlord|landlords|landlady selling|sells|sold|evicting up?, usually|normally|always|typically i?
        come|break|flare|react|swell up|out? in? a? rash|hives|spots off|to|from|with
        everything|anything|most|every|all, like|as a|an|the
        sausage|cattle|number|sheep|parcel|product|tin|bean|car|chicken on|in a|the|some
        conveyor|conveyer|assembly|production|factory, on|in a conveyor|conveyer belt, sheep dip,
        peeling|peel|peeled like an? onion|snake|banana|orange|lizard, burnt|burned|fried|frazzled to a?
        crisp|cinder|frazzle, gasp|gasped|swoon|squeal|scream|yelp a? bit|little|actual? each|every|whenever|anytime
        time? i? pass|see|catch|walk|look|time|spot, gravel|gravelly|sandy|stony|grassy|pebbly|gritty
        bit|drive|path|car|carpark|driveway|track|yard|lane|road|patch|area|beach, gritted|gritting teeth, salt|sand
        lorry|truck|pit|castle|castles|dunes, snowed|rained|iced|fogged|flooded in|off|under|out
        up|over|down|here|and|again|sorry|at|today, sheep|cows|snow|leaves|toys|kids|glitter|boxes everywhere,
        voice|vn note|notes|memo|message|msg|text|mail|texting|dictation|typing, speech to text, keeps
        writing|writting|typing|saying|sending|putting|spelling period|comma|stop|dot|full|the|wrong, full stop
        smiley, smiley face, in the|my top|bottom|middle|second|left|right|kitchen|big
        drawer|shelf|cupboard|cabinet|freezer|fridge, gate|shop|back|side|front|barn is|was|will|be?
        open|unlocked|locked|shut, bit of alright|allright, righto, rightio, okie dokie, roger that, copy that,
        resting|got|have|has|had|my .. glam|glamour|bitch|supermodel face, resting .. face, eye
        drops|prescription|glasses|spray for|at|from the|my|me? pharmacy|chemist|boots|nan|gran|mum|dad|dog|cat,
        collecting|picking|fetching|getting up? my|the|me
        nans|nan|granny|grannys|granny's|nan's|mums|mum's|dads|dad's|dog's|cat's|husbands|his|her eye?
        drops|prescription|tablets|glasses|meds|cream, bawl|cry|weep|stream|squint|water|wince
        when|whenever|if|in|at the? sun|sunlight|wind|light|cold|onions hits|gets|catches|shines|blows|is|comes|out
        me? normally|usually|always|anyway, drove|driving|drive into the? low? sun|sunset, in my|the eye|eyes line,
        eyeline, eye doctor|surgeon to|for|get|got .. spider|lashes|fans|extensions, went|going|been to the eye
        doctor to|for, eye|oily|oil|micellar|waterproof|cleansing|makeup|gentle|cotton makeup|make|eye
        remover|pads|wipes|cleanser|balm|pad, oily|oil|micellar|makeup|waterproof|cleansing based|free|make|balm?
        remover|cleanser|water, remover|cleanser|balm i|ive|you have|use|used|got|bought|recommend
        says|melts|dissolves|claims|is|for, melts|melt|dissolves|dissolve|eats|rots|loosens the|any|my|lash?
        glue|bond|adhesive|bonds, eye patch|patches on|in|from|for my|the|that
        profile|pic|photo|picture|insta|party|costume|pirate|fancy|halloween, asking|asks|asked|wondering which|what
        hospital, lamp|light|lights|ring|spotlight was|is|were|are blinding|glaring|dazzling|bright
        and|but|so|while|plus|too the|i|my|bed|chair|music|room|your|hot|for|cold|hard,
        aranas|mariposas|abanicos|alas|escobas|persianas en los ojos, the way i
        screamed|yelled|squealed|gasped|shrieked|jumped|cried, screamed|yelled|squealed|shrieked when|at
        i|seeing|the|my? saw|mirror|reflection|looked, seeing my eyes for the? first|1st, arc eye
        as|back|when|years|once, know|knows|knew all about burnt|burned|red|sore|bad|swollen|itchy eyes|eye|lids,
        could|would|will|can|might|these|they|nearly|almost take|have|poke|put|took|had
        an|someones|somebodys|your|his|her|the eye|eyes out, seven|7 year itch, lid|lids of|on|from|for
        your|the|my|her|a ..
        lunchbox|box|jar|pot|tupperware|cleanser|bottle|bin|pan|saucepan|tub|container|kettle|tin|flask|cup|tea|coffee,
        keep|keeping|kept|put a|the lid on, london eye, eye to eye, eye test|tests|exam|appointment, eye for
        detail|colour|color, public eye, private eye, mind|minds eye, an|a|real|bit|total eyesore, eyesore, eye of
        a|the needle|storm|hurricane|cyclone|tornado|beholder|typhoon, cyclones|storms|hurricanes|tornados|typhoons
        eye, my eyes are up here, goldfish .. eyes, blind guess|faith|panic|luck|drunk|optimism|taste|test|audition,
        blind eye to, turn|turned|turning a blind,
        cyclone|cyclones|storm|storms|hurricane|hurricanes|typhoon|tornado eye
        is|was|will|passes|due|meant|moved|moving ..
        cross|crossing|pass|passing|hit|hitting|land|landing|over|through|arrive|arriving|overhead,
        gone|went|go|going? blind to my|the|his|her|your|their|all own? flaws|faults|mess|risks|charms|bills|dust,
        blind to my|the|his|her|your|their|all own? flaws|faults|mess|risks|charms|bills|dust, puff
        pastry|sleeve|sleeves|piece|daddy|jacket|of, powder|cream|cheese|chocolate puff, huff and puff, huffing and
        puff, blackout blinds|blind|curtains|curtain|shutters|mask|lining,
        bridge|road|roads|river|town|city|station|queue|village|bus|train is|are|was?
        swollen|bulging|inflamed|choked|bleeding, swollen with|by traffic|tourists|rain|people|shoppers, red
        dot|alert|handed|velvet|herring|devil|squirrel|gravy|cabbage|onion|onions|kite, caught red, caught me red,
        crying|weeping|sobbing because|over|that ..
        skint|broke|payday|sold|closed|full|booked|due|price|money|moving|leaving, the eye of|from
        every|all|half|everyone, catch|caught|catching the eye of, pink eye|eyes? going|doing round|around|through,
        pink eye|eyes is|are|was|were going|doing round|around|through, phone|laptop|tablet|ipad|telly|tv screen
        is|was|has? cracked|smashed|broken|shattered|knackered, screen is|was? cracked|smashed|broken|shattered
        and|so .. blurry|fuzzy|black|dark|dim|blurred, phone|laptop|tablet|tv screen is|was?
        cracked|smashed|broken|shattered and|so .. blurry|fuzzy|black|dark|dim|blurred, eyes|whites|lids|they
        are|is|look|looking as? white as milk|snow|paper|chalk|pearl|pearls, as? white as
        milk|snow|paper|chalk|pearl|pearls|a, hay fever|hayfever|pollen makes|make|has me
        rub|sneeze|itch|stream|water, i get|have itchy|watery|red|streaming|sore|puffy|runny eyes in|every
        spring|summer|winter|autumn|april|may|june|july|year, light|lights|lighting in|at your|the
        room|studio|salon|place|shop is|are|was|were .. bright|harsh|dim for|but|and, light|lights in your|the
        room|studio|salon is|are .. bright|harsh|dim, too bright for my liking, shaking|trembling|buzzing
        with|from|in excitement|laughter|joy|laughing|anticipation|cold|nerves, head is|was? spinning|spins|spun
        with|from|over|at .. options|choices|choice|styles|curls|info|information|names|prices|love|compliments,
        eyes|eye popping|popped|pop|bulging|bulged out of their|his|her|your|peoples heads?|head?|sockets?, up to
        my|me|our eyes|eyeballs|eyelids|ears|neck|eyebrows in|with, easy on the eye|eyes, my right|left eye for
        a|one|some, dry eye in the house, blink of an eye, bank|savings balance|account|card ..
        fainted|fainting|died|dying|crying|cried|collapsed|choked|screaming|weeping|hurting|sore|bleeding,
        wallet|purse|overdraft fainted|fainting|collapsed|choked|weeping|bleeding|wept, have|has|had|got|getting me
        gasping|swooning|drooling|fainting|choking|screaming|crying|weeping in|at the|my
        mirror|mirrors|selfies|photos|camera|best, gasping|swooning|fainting|choking .. in the best|nicest|good way,
        swoon|swooning|swooned at myself|me|my|them|the, poke|poking|have|take|taking|put|putting out?
        someone|somebody|anyone|someones|somebodys|peoples|people|yer|your man eye|eyes out?,
        poke|poking|take|put|have someones|somebodys|anyones|someone|somebody|anyone eye|eyes out, ive|i|been
        poked|prodded|pressed|pushed and|or poked|prodded|pressed|pushed|squeezed, red|purple|pink|scarlet in the
        face from|after|with|running|because, ex|mate|husband|boss is|was choking on his|her|their,
        bite|chunk|bites|chunks out of my, like im|i|id wearing a|two|an ..
        fringe|curtain|curtains|broom|brooms|blinds|wig|doormat|hedge on|over my eyes|lids,
        quit|stop|stopped|stopping picking|touching|rubbing|pulling|fiddling at|with|them|my lashes?,
        one|two|some|few|half of em|them|these|mine is|are growing|pointing|sticking
        sideways|up|upwards|out|outwards|wonky|backwards, burnt|burned the? toast|dinner|tea|rice|cake, weepy|soppy
        finale|episode|ending, crying over the|a season|finale|episode|film|show|onion|onions, left|got|had me? ..
        doubled over laughing, not to be a pain, be a pain but, being a pain but, sorry to be a pain,
        gave|give|gives|giving|got my|the|his|her
        mother|mum|mom|nan|gran|sister|boss|husband|boyfriend|friend|mate|dad|neighbour|neighbor|hubby .. double
        vision, cant|couldnt|dont walk|go|get|drive past|by a|any|the|my .. mirror|window|reflection|shop|shopfront,
        only|one|sole thing|bit inflamed|swollen|burning|sore|red|puffy|itchy|swelling|stinging|hurting ..
        ego|pride|head|wallet|self|heart|purse|bank|confidence|feelings|jealousy|feet|fringe|arms|back|schedule,
        pic|photo|picture|video|reel|post|story of .. swollen|red|puffy|bloodshot|infected ..
        your|insta|instagram|story|tiktok|facebook, red|sore|swollen|puffy|bloodshot eyes ..
        belong|belonging|belongs, ceiling|roof|pipe|tap|wall|walls|gutter|radiator|boiler|fridge|freezer is?
        weeping|leaking|streaming|watering|dripping|crying, weeping willow|ceiling|roof|pipe|wall|angel,
        hands|fingers|palms|feet|heels|towel|towels|couch|bed .. like sandpaper|gravel|ice, chlorine
        yay|yes|ok|okay|bad|safe|or|allowed|is|at|this|on, vaseline on|in|round|around
        if|maybe|or|overnight|tonight|first|them|it|there, put|use|apply|rub|dab|try|slap|smear|need|some
        vaseline|aquaphor|aloe on|in|round|around|over, with|because|despite|given of? my
        eczema|hayfever|rosacea|psoriasis|allergies|sensitive, burning to know|see|tell|ask|find|show,
        dust|nut|peanut|cat|dog|pollen|gluten|dairy|penicillin allergic, allergic to
        everything|work|mornings|mondays|exercise|cheap|effort|small|bad|housework|gluten|cats|dogs|nuts,
        burned|burnt my? the? toast|dinner|tea|rice, eyes were|are on fire that? night? everyone, cried all through,
        cried through, sobbed at|through, ugly cried, sore from laughing|smiling|the
        gym|gym|workout|leg|running|training|yoga|pilates|lifting, sore from .. laughing|gym|workout, cheeks hurt ..
        smiling, face hurts .. smiling|laughing, hurts .. from smiling|laughing, sore loser, sore point, sore
        subject, sight for sore eyes, sore thumb, sore throat, pain in the ass|neck|butt|arse|backside|bum|behind,
        pain in my ass|neck|butt, pain to clean|wash|get|park|book|schedule|find, a pain getting|parking|to park|to
        get|to, painful to watch, painfully pretty|beautiful|cute|gorgeous|cheap|slow|shy|early, no pain no gain,
        beauty is pain, pain is beauty, growing pains, painkiller for my back, hurts how good|pretty|cute|much i,
        hurt my feelings, hurts my feelings, so pretty it hurts, so good it hurts, so cute it hurts, so cheap it
        hurts, hurts so good, wouldnt hurt to, doesnt hurt to|that, it hurts to say|pay|admit, hurt to pay, hurts my
        wallet|bank|pocket|soul|heart, wallet hurts|hurt|crying|is crying, wallet ..
        hurting|crying|bleeding|sore|ouch, hurt to look, price hurts|hurt|stung|stings, stung a bit paying, price
        sting|stings|stung, sting in the tail, sting of .. price, bill .. stung|stings|sting, stinging review, that
        price burns, words sting, swell job, swell time, looking swell, feeling swell, swell with pride, swell up
        with pride, swelling with pride, swelled with pride, big head, head .. swell{ing/}, head .. get|getting big,
        ego .. swell{ing/}, heart .. swelling|swell|swells|swelled, puffed up with pride, puffed up like a peacock,
        powder puff, puff pastry, puff piece, puffer, cream puff, puff jacket, rash decision, rash choice, rash
        move, rash purchase, rash driver, spots left, spots open, spots available, any spots, spot open, spot left,
        spots free, spots this, spot on, hot spot, bumped into, speed bump, bump into, fist bump, baby bump, bump
        up, bump my, bump me, bump it, bump the appointment, goose bumps, goosebumps, bumped me, bumped my, bumps in
        the road, bump in the road, ran into a rash, peel off the, peel me off, peel out, lip peeling, peel myself,
        flaked on, flake on, being a flake, such a flake, a flake, flakey friend, total flake, dont flake, snow
        flakes, corn flakes, flaked out, flaky friend, flaky pastry, flakes on me, breathtaking, breath taking,
        take{s/} my breath, took my breath, take my breath, catch my breath after, catch your breath, hold my
        breath, holding my breath, breath of fresh air, cant breathe theyre|laughing|lol|lmao|haha|they, cannot
        breathe laughing, laughing .. cant breathe, cant breathe ..
        laughing|pretty|gorgeous|cute|obsessed|stunning|beautiful, cant breathe so|too|they good, cant breathe ..
        look|looks good, couldnt breathe .. laughing, waste my breath, bad breath, under my breath, save your
        breath, baited breath, bated breath, out of breath running|from running|getting|chasing|up|climbing|dancing,
        breathing down, room to breathe, breathe easy, came over all emotional|funny|soft|shy,
        breathe|breath|see|speak|talk|stand|swallow|open|type for|with|through|from the?
        laughing|laughter|giggling|giggles|happiness|joy|excitement, cant|couldnt|could|can hardly|barely|not?
        breathe|see|speak|talk|stand|swallow|type for|with|from the? laughing|laughter|giggling|giggles,
        hardly|barely breathe|see|speak|talk|stand|type for|with|from the? laughing|laughter|giggling|giggles,
        could|can hardly|barely breathe|see|speak|talk for|with|from|through laughing,
        fainted|died|collapsed|choked|swooned|keeled|fell over? theyre|they|its|ur|youre|it|these
        look|is|are|so|that|too so|that|too|this? pretty|gorgeous|cute|beautiful|fab|stunning|dreamy,
        fainted|died|collapsed|choked|swooned .. theyre|so|that|too that|so|too?
        pretty|gorgeous|cute|beautiful|stunning|dreamy, go|goes blind|dizzy|faint|weak|shaky|cross eyed?
        without|before|till|until my|a|the|any|some|morning|first?
        coffee|tea|caffeine|breakfast|food|sugar|glasses|specs|contacts|brew|cuppa|lunch, blind
        without|before|till|until my|a|the|any|some|morning|first?
        coffee|tea|caffeine|breakfast|food|sugar|glasses|specs|contacts|brew|cuppa|lunch,
        glue|adhesive|remover|tint|primer|stuff|dye|bleach on|over|all|onto|across|down over?
        my|the|her|his|your|this new|best|good|favourite|favorite|nice|white|black|work|only?
        jeans|trousers|top|shirt|dress|sofa|couch|carpet|rug|table|desk|hair|hands|fingers|nails|jumper|coat|bag|sleeve|bra|sheets|pillowcase|counter|floor|blouse|skirt|cardigan|hoodie|shoes|phone|mirror|chair|bed|towel,
        happy|joyful|proud|joyous tears, open my|his|her|their eyes from|for|with
        laughing|smiling|grinning|giggling, open my|his|her|their eyes from|for|with crying happy|joyful tears?,
        cant|couldnt open my eyes from|for|with laughing|smiling|grinning|giggling, cant|couldnt open my eyes
        from|for|with crying happy|joyful tears?, pupils dilated|widened soon|when|as ..
        saw|seen|clocked|opened|walked, dark|deep|bright|cherry|blood|fire red
        one|ones|lash|lashes|tips|fans|set|tint|lipstick|lippy|dress|nails|polish|extensions|cluster|clusters|strip|strips,
        eyes|eyeballs bulged|bulging|bugged|fell|jumped|shot|popped|sprang|leapt|flew|dropped out|from|off
        out|of|my|the|his|her|their? my|his|her|their|the|of? head|skull|sockets|face
        when|at|reading|seeing|looking|over|the,
        eat|eating|ate|food|cook|cooking|like|love|curry|noodles|something|order spicy, spicy
        food|curry|noodles|noodle|wings|ramen|chips|soup|sauce|take, like a paint|make|hair|scrub|toilet|yard brush,
        look|looks|looking like a? paint|scrub|toilet|yard|bottle|boot brush|brushes,
        stood|standing|sat|sitting|felt|waiting|left|look|looked like a|an?
        lemon|plum|muppet|mug|spare|idiot|pillock|lunatic, like a lemon, red|white|pink
        wine|sauce|wine's|velvet|cabbage|pepper|bull, glass of .. wine red|white|rose, thread a|the|my needle,
        threading a|the needle, natural|own|real lash|lashes still? in|on|attached to? it|the|them, crossed swords,
        like crossed? swords, like swords crossed|crossing, mouth throbbing|aching, drops for dry|tired eyes, dry
        eyes that|which i use|take|get|put, dont|never|cant|wont|didnt see
        texts|text|messages|msgs|emails|sms|notifications|calls|whatsapp at|until|till|during|send|when|while|here,
        cake|icing|balloon|balloons|dress|ribbon|roses|flowers is|are|too a? bit? too? pink|red, breathe a sigh,
        breathing easy, chest of drawers, hope chest, get .. off my chest, off my chest, left me breathless, leave
        me breathless, breathless with, gasped when, gasped at, gasping for a|tea|coffee, choking on my
        coffee|drink|tea, choked up, gasp when, gasps from, gasped in, swallow my pride, hard to swallow .. price,
        price .. hard .. swallow, choke at the price, choked on my, hard pill to swallow, tough pill, nearly fainted
        at|when|seeing, almost fainted at|when|seeing, fainted when i saw|seen, passed out when i saw|got, passed
        out from exhaustion, passed out early|after, passed out on the? sofa|couch|bed|recliner, passed out in ..
        chair|bed, pass out when, almost passed out when|at|seeing, passed out cold on the|my, feint, fainted at,
        faint heart, faint at the price, faint praise, faint line, faint memory, faintest idea, faint of heart,
        faint hearted, dizzy with|from happiness|joy|love|excitement, blacked out and bought, feeling dizzy with
        love, collapsed laughing, collapsed into bed, collapsed on the sofa, swoon, swooning over, knocked out when,
        dropped dead gorgeous, drop dead gorgeous, drop dead, blinding job, blinding, blind without|as a bat, color
        blind, colour blind, blind spot mirror, blind bargain, blinds, love is blind, blinded by .. beauty|love,
        blind trust, blinded me with, turn a blind eye, cant see myself|why|any|your|that|where|it but, cant see the
        difference|calendar|booking|link|app|times|price|reason, cant see a difference|time|reason, cant see it
        but|happening|from, cant see what time, cannot see any|why|myself|the difference|where, cant see ..
        gap|gaps|difference|website|link|message|booking|slot|slots|appointment|availability|button, cant see you|u
        till|until|on|this|next|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow, couldnt see
        myself, see myself going, cant stop looking, cant see past, doubled, see the world, see double the, seeing
        stars in, see things clearly, flash sale, camera flash, in a flash, flash photography, flash of, flash
        pic{s/}, flashing smile, flashing lights at the club, flashing them at, flash them, flash drive, news flash,
        newsflash, flashing my, flash my, blurred lines, the week .. blur, was a blur, a total blur, is a blur, wavy
        hair, hair wavy, wavy bob, double tap, double check, double booked, dim sum, dim lighting, dim lights, dim
        the lights, shadowy, milky way, milky brown, halo effect, halo of, brain fog, foggy brain, foggy morning,
        foggy outside, foggy head, memory is hazy|fuzzy|foggy, fuzzy memory, fuzzy socks, fuzzy blanket, fuzzy
        towel, fuzzy feeling, warm and fuzzy, hazy on, hazy memory, cloudy day, cloudy weather, cloudy outside,
        photo .. blurry, photo .. blurred, pic{s/} .. blurry, pic .. blurred, picture{s/} .. blurry, blurry
        pic{s/}|photo{s/}|picture{s/}|selfie|screenshot, camera .. blurry, video .. blurry, bag of, screenshot ..
        blurry, glued to my|the|his|her|their|tiktok|phone|screen, glued to, superglued to my|his, glued on nails,
        sealed the deal, sealed deal, seal the deal, seal of approval, lips are sealed, lips sealed, signed and
        sealed, sealed with a kiss, lash sealer, sealant, cant open ..
        link|message|file|photo|form|attachment|app|website|page|door|email|pdf|calendar|schedule|jar|bottle|package,
        link .. wont open, wont open .. link|page|phone|app|form|website|for me, form .. wont open, door .. wont
        open, page .. wont open, file .. wont open, app .. wont open, opened up, do you open, what time .. open,
        open on, open at, any open, mouth .. open, eyes wide open, shop .. shut|closed, road .. shut|closed, shut
        up, cant keep my eyes open, could hardly keep my eyes open, cant keep .. eyes open, shooting stars, poked my
        head|nose|face, poke my head|nose, nothing to do with the|my lashes, hay fever makes|made my? <eye> ..
        itch|itchy|water|watery, watering|watered|teared|tears|crying from laughing|laughter, laughed .. cried,
        swell thanks|thank|time|job|day, on fire emoji, lashes .. on fire, lashes .. fire, lash{es/} on fire, fire
        set, straight fire, youre on fire, ur on fire, set on fire, you are on fire, look fire, looks fire, so fire,
        this set .. fire, these .. fire, fire job, phone .. on fire, dms .. on fire, inbox on fire, group chat .. on
        fire, selfies .. fire, they .. fire, insta .. on fire, comments .. on fire, those lashes are fire, sick set,
        so sick, sick lashes, theyre sick, they look sick, looks sick, these are sick, sick of, sick day, home sick,
        sick kid, love sick, homesick, lovesick, hot date, hot girl, look hot, looking hot, looks hot, feel hot and,
        feeling hot, feel so hot, feel hot af, im hot, so hot in, hot stuff, hot mess, hot outside, hot yoga, hot
        weather, hot day, hot shower, hot tub, hot summer, hot water, hot sauce, hot take, hot coffee, hot topic,
        hot commodity, smoking hot, hot as, eyes .. hot in .. pics, hot in these, fever dream, cabin fever, fever
        pitch, wedding fever, spring fever, lash fever, room temperature, weekend fever, saturday night fever,
        temperature outside, eye candy, eye catching, eye opener, eye opening, eye roll, keep an eye, an eye for|on,
        batting, in a blink, in the blink, catch .. eye, caught his eye, all eyes on, eyes on me, more than meets,
        see eye to eye, cry my eyes out, cried my eyes out, eye contact, turned heads, jaw dropped, jaw dropping,
        jaw on the floor, jaw hit, jealous .. hurts, stole my, watery eyes emoji, mouth watering, mouthwatering,
        water under, watered my|the plants|garden|lawn|flowers, watering the|my plants|garden, water proof,
        waterproof, water resistant, get them wet, get wet, water on them, under water, swim, stream{ing/} a|the
        show|movie|series|netflix, netflix, live stream, livestream, streaming service, water based, water bottle,
        drink water, drinking water, tap water, wash .. water, rinse .. water, micellar water, the water, in water,
        water bill, water main, water heater, upstream, tears apart, tear off, tearing through, tearing it up, tore,
        tearing around, leak the, leaked the, leaking roof, sink .. leaking, pipe .. leaking, leaky tap, burst pipe,
        running late, running behind, runny nose, nose .. runny, run{ning/} .. minutes|mins|late|behind, wear and
        tear, wet weather, wet hair, poke fun, poking fun, poke bowl, hokey pokey, pokey little, poke you, pinch me,
        in a pinch, pinch of salt, pinch myself, pulling off, pull off, pull it off, pulls off, jabs at, dig
        these|them|it|the|this|your|ur, digging these|them|it|the|this|your|ur|my, dig them, really dig, dig in to,
        dig out, dig your, stab in the dark, stab in the back, take a stab, backstab, pricked my finger, dust off,
        dusted, gathering dust, eat my dust, dust my, sand at the beach, sandy beach, sandy brown, sand everywhere,
        sand between, sandcastle, true grit, grit your, gritted, nitty gritty, dry humor, dry humour, dry skin on,
        dry spell, hair .. dry, dry shampoo, dry them, blow dry, air dry, dry cleaning, let dry, till dry, dry off,
        keep them dry, keep dry, stay dry, to dry, dry martini, raw cookie, raw talent, raw footage, uncomfortable
        chair|bed|couch, sticking plaster, fan out, discharged from .. hospital, discharge papers, crust of bread,
        pizza crust, upper crust, pie crust, crusty bread, gunk from .. mascara, snot nosed, goo goo, goo ga ga,
        matter of fact, for that matter, no matter, matter of, matter what, what matters, as a matter, doesnt
        matter, dont matter, whats the matter, grey matter, sob story, sob with, wheezing laughing, wheezing
        at|lmao|lol, wheeze lol|laughing|laugh, ouch .. price, ouch my wallet|bank, price .. ouch, ouch that price,
        ouch at the price, ouchie price, ouch lol that, pressure washer, no pressure, peer pressure, under pressure,
        pressure to, chest press, infectious laugh, infectious, chain reaction, reaction was priceless, reaction
        video, his|her|their|everyones|moms|mums|husbands|hubbys|boyfriends|whose reaction, reaction when
        he|she|they|i saw, reactions, get a reaction, reaction from everyone|everybody|people|my, such a reaction,
        best reaction, mixed reactions, allergic to
        early|mornings|bs|being|ugly|bad|cheap|work|drama|monday|mondays|people|mascara now|commitment, im allergic
        to, allergic to cats|dogs|nuts|penicillin|latex|pollen|shellfish|shrimp|gluten|dairy|peanuts|seafood, travel
        bug, obsession, back pain, period pain{s/}, chest hurts from laughing, love bites, heavy traffic, heavy
        rain, headache to|trying, a headache getting|booking, giving me a headache, traffic .. headache, huge
        headache getting, bloodshot moon, blood moon, flared jeans, flare for, flare at, eyes bigger than, bigger
        and, bigger than my belly, look bigger, looks bigger, looked bigger, looking bigger, seem bigger, make{s/}
        .. eye{s/} .. bigger|huge|pop, eyes .. look .. huge|bigger|big, eyes pop, eyes popping, make .. eyes pop,
        eyes really pop, popping, eye{s/} .. pop, stand out, open{s/ed} up my eyes, opens my eyes, look{s/} so open,
        eyes look .. open, brighter, light as a feather, light weight, lightweight, light on my eyes, traffic
        light{s/}, light and, light up .. room, light bulb, red eye{s/} in .. photo{s/}|pic{s/}, temperature of ..
        room, under the weather, smell{s/ed/ing} like, smelt like, sharp as a tack, price .. made my eyes water,
        price .. eye{s/} .. water, blood sugar, blood thinner{s/}, in cold blood, flesh and blood, bleeding hell,
        bloody hell, blinded a|him|them|everyone|people|my, blinding a|him|them|everyone|people|my, blind
        anyone|people|everyone, see .. blind anyone,
        app|website|site|page|photo|pic|video|map|picture|image|leaflet|email|form|link ..
        blurry|fuzzy|dark|dim|double|foggy|blurred, dry eyes normally|usually|anyway|generally,
        price|cost|bill|fee|charge|total|£|$|€ .. painful|pain|hurts|hurt|stings|burns|sting, bit of a pain, and its
        a pain, overcharged .. pain, im blind without|as, dont see why|any|the|it happening|a difference|anything,
        didnt see why|any|the|it|your|that, wheezing omg,
        car|boot|trunk|garage|gate|packet|bottle|jar|tube|laptop|box|shop|salon|umbrella .. wont|doesnt|cant|not
        open, blind with love|joy|happiness, only thing burning|stinging|hurting|sore|itching|red, migraine{s/} with
        aura, laser eye surgery, eye surgery, cannot wait, cant wait, gave me a headache, red|redder|pink|dark
        tint|lashes|glitter|ones, dark red tint, want them redder|red|pink, red is my, an itch for, itch for a,
        stung by the|that|your price|cost|bill|total, pain of a, water{ing/s} .. how expensive|much, crying .. how
        expensive|much, tears .. laughing, streaming .. laughing, cant|couldnt see for crying|tears|laughing,
        cant|couldnt|dont see your|the sign|door|shop|entrance|studio|message|text|reply|email|number,
        burn|melt|ruin them off, cold sore{s/}, black eye from, only swelling, love at first sight, first sight, out
        of sight, vision board, opened my eyes to, £ .. ouch, cant talk right|now|at|atm|until|till|on, how much
        is|for|are|does a|an|the? fill|infill|refill|removal|set|full|lift, what time do|does you|u|the,
        burned|burnt|burn the dinner|toast|food|cake|pan|house|candle|roast, spots on the book|calendar, spots for
        lashes|a, the pink ones|set|brush|lashes|pack, wear|in|love the pink, burning through my|money|cash, popping
        out of|in .. selfie|pic|photo|pics|selfies, <eye> .. popping out of|in .. selfie|pic|photo|pics|selfies,
        red|pink is my color|colour, burning hot take|tip|opinion|topic|question|gossip|tea, hot water bottle,
        watch|watching|watched|looking|checking|checked|monitoring .. for .. reaction|reactions|redness|swelling,
        his|her|their|everyones|everybodys|mums|moms|peoples|best|priceless reaction, what a reaction, reaction
        from|of my|the|everyone|him|her|them|people,
        cross|crosses|crossing|crossed|crisscross|crisscrossing|tangled|twisting ..
        needles|swords|knitting|chopsticks, knitting needles, can still? see out of it|them|both
        fine|perfectly|ok|okay|alright|grand?, see out of it|them|both? fine|ok|okay|perfectly|grand|alright,
        lips|lip|filler|fillers|botox|tooth|teeth|wisdom|nose|rhinoplasty|dentist|jaw|tonsils|surgery|op|operation
        done|out|removed|tomorrow|tmrw|booked|next|on|this|appointment .. so|and|will ..
        swollen|swelling|puffy|numb|bruised|sore|massive|huge, wheezing with laughter, wheezing at
        the|this|that|your|her|his before|after|pic|photo|picture|meme|joke|video, breathtaking .. gasped, literally
        breathtaking, popping out of my head at|with|when|how, eyes .. popping|popped out .. at|when ..
        how|gorgeous|good|pretty|price|saw, nail polish remover .. smell|run out|bought, wait|waiting|suspense ..
        killing me, blind without .. tech|you|lash|lashes|glasses|specs, be blind without, itch has been|is|was?
        scratched, itch scratched, weeping|weep|sobbing|bawling|crying|teary at|over how,
        take|takes|took|keep|kept|tear his|her|their|my|your|its eyes off, dont|wont|wouldnt|not|aint? hold|holding
        your|ur|ya breath, swim|swimming|swam .. chlorine|chlorinated, chlorine|chlorinated pool, believe
        my|his|her|their eyes, feast for the eyes, eyes on the prize, easy on the eye, faint|dizzy|weak|lightheaded
        with hunger|excitement|joy|happiness|relief|delight, lose|lost|losing sight of when|what|how|who|where|time,
        pain|agony waiting for <day>|my|the|next? appointment|fill|infill|refill|lashes|set, pain|agony waiting for
        <day>, pain of getting|finding|parking|booking|paying|the? parking
    """,
}
