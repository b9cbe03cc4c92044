"""English for what cannot wait: each name ends in "!", an emergency whatever else she writes.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

ALARMS = {
    "redness!": """
        <eye> .. like a? glass|bottle of merlot|wine|red|claret|ribena|port|burgundy,
        filled|full|fills|swimming|brimming up? with|in|of dark? blood, eyeball .. filled up, <eye> .. dark blood,
        <eye> .. merlot|shiraz|malbec|rioja|claret, black cherry <eye>, cherry eyeball, colour|color of a? baboon,
        white .. burgundy|maroon|crimson|scarlet|purple|claret, white{s/} .. isnt|arent|aint|not|no white, white ..
        no longer white, <eye> .. burgundy|crimson|claret|oxblood|scarlet, <eye> .. colour|color of
        liver|rust|burgundy|claret|port|brick|merlot, <eye> the? colour|color of liver|wine|beetroot|blood, like raw
        liver|steak|meat, like a piece of liver, <eye> like liver, white .. turned|gone|went
        red|purple|maroon|blood, <eye> .. solid crimson, <eye> .. blackish red, reddest red, blood vessel burst,
        burst .. blood vessel, <eye> .. tomato red, white part .. blood, white part .. bloody, bleeding .. white of,
        blood on the white, blood on .. white|eyeball, white of .. <eye> .. red, whites .. <eye> .. blood, red all
        over like blood, bright red like blood, red as blood, bloody eye, eye .. bloody, blood spot, crimson,
        scarlet all over, no white left, cant see any white, cant see the white, colour|color of
        beetroot|beet|blood|wine|cherr{y/ies}|ketchup|plum|raw meat, beetroot, whole white .. red, white .. gone ..
        red, all the white .. red, solid blood, purple red, deep crimson, blood shot everywhere, eye .. full of
        blood, filled with blood, blood pooled, pool of blood, blood spot covering, dark red, deep red, blood red,
        very dark red, deepest red, solid red, fire engine red, <eye> .. full|filled of|with blood, blood in ..
        <eye>, dark red .. <eye>, white{s/} .. <eye> .. blood, beet red, cherry red, maroon, subconjunctival
        hemorrhage|haemorrhage, hyphema, black cherry,
        cherry|plum|wine|beetroot|claret|brick|ruby|oxblood|burgundy|blood|mulberry|aubergine
        coloured|colored|eyeball|eye|white{s/}, <eye> .. ruby|mulberry|aubergine|eggplant|black cherry|blood
        orange|raspberry|merlot red?, red as .. beetroot|cherry|rubies .. eyeball|white{s/}, white{s/} .. now ..
        red|blood|burgundy|crimson
    """,
    "swelling!": """
        not the|my eyes|lids|eye|lid|lashes its my tongue|lips|lip|mouth|face, with me its|it the? my? whole|entire
        face, not just the lids|eyes its my|the whole|entire face, this time its my|the whole|entire face,
        whole|entire face is|really|got|has|gone|turned|now? really? that|this|double|twice|treble size, lips
        theyre|are so|really? big|fat|huge|enormous|massive, finger between my lips,
        puffed|swollen|swelled|ballooned|blown|balloon|waterbed|michelin|inflated .. from the|my
        neck|chin|collar|shoulders up, gone|went|going|turned|im|being|full|pure|looking|look
        all|like|full|a|into|pure? pufferfish|puffer|blowfish|bullfrog|toad|michelin|chipmunk ..
        face|cheeks|cheekbones|ears|lips|jaw, gone|went|going|turned all|full|pure|like?
        pufferfish|blowfish|puffer|michelin|chipmunk, cant|barely|hardly|cannot find|see|feel|locate my
        cheekbones|cheekbone|jaw|jawline|chin|nose, tongue|mouth|lips|lip .. so|too fat|thick|swollen|big ..
        dribbling|drooling|lisping|slurring, tongue .. dribbling|drooling|lisping, mouth
        has|have|is|got|went|feels|turned|goes? gone|got|going? all|so|really? thick|fat|rubbery|tight, lips like
        boerewors|wors|chorizo|frankfurters|bananas|cushions, me duck|trout|fish|donald|sausage|rubber
        lips|mouth|face, duck|trout lips .. enormous|massive|huge|swollen|size|growing, mouth looks|look stung,
        stung by .. bees .. lips|mouth|face, lips|mouth|face .. stung by, tongue .. sticking out, lip{s/}
        is|are|has|have been? up, lip{s/} up|out like, lip{s/}|tongue|mouth ..
        massive|enormous|ginormous|gigantic|humongous|doubled|trebled|growing, lip .. out past, lips .. out past,
        lip{s/} .. like a slug|duck, lip{s/} .. burst|bursting|shiny, tongue .. wet sock|flannel|steak|sponge,
        tongue .. fills|filling|fat|fatter, tongue feel fat, coupon{s/} .. up|swollen|football, voice .. croaky ..
        lips, whole .. coupon, free lip job, lip job, lip filler|fillers .. free, free filler|fillers, lip{s/} ..
        out to here, lip{s/} .. growing|ballooned|ballooning|inflating|inflated|tripled, lip{s/} .. still .. bigger,
        mouth|lip{s/} look|looks|looking? stung, top|bottom|upper|lower lip ..
        double|twice|triple|enormous|huge|going|growing, tongue ..
        blew|blown|blows|ballooned|swole|expanded|doubled|tripled, tongue .. too .. for my? mouth, sowwy, no longer
        sit|fit|fits|sits on my? face|it, glasses .. no longer|dont|wont fit|sit, <face> ..
        inflated|ballooned|ballooning|inflating|tripled, pufferfish .. face, face .. pufferfish, puffer|blow fish ..
        face, blowfish .. face, not just .. eye|eyes|lid|lids .. face, hardly|barely know|recognise|recognize
        myself|me, didnt|doesnt|cant recognise|recognize me|myself, face .. moon, moon face, face .. unlock|id ..
        not|wont|doesnt|cant, neck|jaw|jawline .. ballooned|blown|balloon|swole, lips .. inner
        tube{s/}|cushions|pillows|dinghy|dinghies, football from, wrong face, not my face, someone elses face,
        somebody elses face, dont look like me, face .. like a
        football|basketball|pumpkin|balloon|moon|potato|loaf|dumpling, lips .. like ..
        sausages|slugs|hotdogs|tyres|tires, hairline to chin, chin to hairline, lip{s/} .. getting?
        bigger|big|huge|fat, lips are getting bigger, lips fat, lips huge, lips feel big|fat|huge|thick, my lips ..
        bigger and bigger, lips .. duck, duck lips .. swollen, look like shrek|quasimodo|elephant, face ..
        unrecogni{zable/sable}, cant recognise my face, cheeks .. swollen|puffy|puffed|huge, face puffed|puffy,
        lip|lips|gob|mouth|tongue is|a|are|now|turned|gone|like|proper|full|pure|became|become bit? of?
        a|an|two|2|fat|full|pure|proper?
        sausage|sausages|slug|slugs|balloon|balloons|bratwurst|hotdog|hotdogs|cushion|cushions|dinghy|saveloy|chipolata|beak|sponge|mattress,
        face .. twice|double|triple its|the|my normal|usual|own? size .. ear, face which .. twice|double|triple,
        whole? face is|has|just|have|had come|blown|swelled|puffed|swole|blew|blowing up,
        lip|lips|mouth|tongue|cheeks|neck|jaw has|have|had just|all|both? come|blown|swelled|puffed|swole up, cheeks
        chin forehead, cheeks and chin, forehead cheeks, tongue|lip|lips|face|mouth a|dey|de|don?
        swell|swelling|balloon up|bad|big|out?, a swell up inna, twice|double|triple its|the|my normal|usual|own?
        size from ear, jaw .. swollen, tongue .. too big|bigger|thick|heavy|fills, lips .. double|doubled|twice|fat,
        lips .. size, whole head .. swollen, <face> .. .. <swell>, lip{s/} .. <huge>, tongue .. <huge>, face ..
        <huge>, lip massive, cheeks .. up like, <face> <be>? <very>? <very>? <swell>, <face> <be> <be>? <very>?
        <very>? <swell>, swelling|swollen of|in|on|around my?|the? <face>, <swell> <face>, <swell> .. <face>, <face>
        .. <swell>, <face> .. blew|blown|blowing up, <face> .. like .. balloon, angioedema, angiooedema, <face> ..
        doubled, <face> .. twice, whole face .. huge, face .. like football|pumpkin|moon|melon, fat lip{s/} .. inner
        tube{s/}|cushions|pillows|dinghy|dinghies, fat lip{s/}, coupon|gob|chops|kisser|mug|bake|phiz|mush|visage ..
        up|out|blown like, lip{s/} ..
        ginormous|humongous|gigantic|mahoosive|gargantuan|monstrous|colossal|immense|whopping|burst|bursting|popping|explode|exploding|split|splitting,
        lip{s/} .. hanging|dragging|drooping|flopping|lolling|down to .. slug|chin|like|off, tongue|lip{s/} ..
        like|as ..
        slug{s/}|sausage{s/}|steak|sponge|sock|brick|slab|liver|log|tyre|tire|banana{s/}|hotdog{s/}|cushion{s/}|pillow{s/},
        tongue .. ginormous|humongous|gigantic|massive|enormous|filling|hanging|double|tripled|twice, tongue .. too
        fat|big|thick|large|swollen, tongue .. fill{s/ing} my mouth, cant .. close|shut my mouth, cant shut my lips,
        cant feel my lips|face|tongue|mouth, <fasced> .. ginormous|humongous|gigantic|monstrous|balloons|ballooned,
        chin .. gone|disappeared|vanished .. swell{ing}|swollen, no jawline|neck left, neck .. same width|wide as ..
        head, bubble head, bobblehead, bobble head, lip{s/} .. blown|blew|puffed|pumped|swole|come|came .. up,
        <fasced> .. pumped|inflated .. up, bike|foot|bicycle|tyre pump, half .. my? face ..
        gone|come|came|blown|puffed|swelled up, face .. up like, cheek{s/} .. up like|blown, <swell> ..
        spread|spreading|moved|moving|travelled|travelling|creeping|crept|heading|reached .. to|down|into|onto|up
        my? mouth|lips|lip|cheek|cheeks|face|neck|jaw|throat|tongue, <fasced> and my? <eye> ..
        blown|swollen|puffed|ballooned|inflated|swelled|swelling|puffy|massive|huge
    """,
    "pain!": """
        look|move|roll|turn up|down|left|right|across|sideways|it|them|my|at .. without
        yelping|wincing|whimpering|screaming|gasping|flinching|crying .. eye|eyes|and, pain ..
        heave|heaving|retch|retching|gag|gagging|boak|spew|spewing, sooner|rather|prefer|happily ..
        teeth|tooth|birth|labour|labor|leg|arm|root|wisdom|amputated .. than .. eye|eyes,
        childbirth|labour|labor|birth|contractions|kidney|stones|root|canal was|is|were|are|stones?
        easier|nothing|picnic|breeze|cakewalk|doddle|walk|kinder|milder|preferable|tickle, rather ..
        birth|childbirth|labour|labor|contractions|kidney .. than .. eye, like .. hot|red|rusty|white?
        nail|poker|needle|spike|skewer|screw|bolt|wire|drill being|is|was|been?
        hammered|driven|drilled|pushed|shoved|banged|screwed|twisted|rammed in|into|through, nothing is|was
        touching|touches|shifting|dulling|denting|easing|helping .. <painy>|eye, <painy> ..
        whenever|when|if|every|each .. swivel|swing|shift|roll|glance|turn .. eye|eyes|side|sideways, <eye> ..
        <painy> .. whenever|when|if|every|each .. swivel|roll|turn|shift|swing|glance|move
        em|them|it|about|around|up|down|side, <eye> .. scream{s/} .. when|if|every|each ..
        swivel|roll|turn|shift|swing|glance|move, shift|shifts|shifting|swing|swinging|moving my?
        gaze|eye|eyes|eyeball|focus .. gives|sends|shoots|get .. <jabs>|jolt|twinge|shot|ache|pang,
        kids|babies|children|twins .. and this .. is worse, without|no .. this|it .. is worse,
        had|birthed|popped|pushed|delivered .. kids|babies|weans|bairns|children|twins ..
        worse|nothing|wins|easier|beats, without|no an? epidural .. worse|nothing|easier, given birth ..
        worse|wins|beats|trumps, givin birth, glance|glances|glancing|glanced|peek|peeking|peering|squinting ..
        makes|made|make .. <eye> .. scream|yelp|throb|ache|shriek|howl,
        swivel|swivels|swivelling|swiveling|rolling|roll|swinging .. <eye> ..
        hurt{s/}|ache{s/}|sore|kills|agony|painful|scream{s/}, <eye> swivel{ling/ing/s} .. hurt{s/}|ache{s/}|sore,
        jab|stab|jolt|pang|twinge behind|inside my|the <eye>, bit|biting|bites ..
        towel|pillow|flannel|sleeve|lip|fist|leather|knuckles .. <painy>|eye, <eye>|<painy> ..
        screaming|screamed|howling|sobbing into .. pillow|towel|cushion|duvet, curled up|over .. floor|ball|bed ..
        <eye>|<painy>|sore, <eye> .. curled up, cant even talk .. <painy>, red hot|hot|white
        poker|needle|iron|knife|wire|skewer .. <eye>|socket|eyeball, poker in .. <eye>|socket,
        nothings|nothing|nowt|none|neither touching|touches|touched|shifting|dents|dulls|denting|dulling ..
        <painy>|eye, <painy> .. nothings|nothing|nowt touching|touches|touched|shifting|shifts|dulls, <meds> ..
        nothings|nothing touching, <meds> .. <meds> .. <painy>, stack|stacking|double|doubling ..
        painkillers|<meds>, <painy> is too much, too much <painy>, <eye> kills, it kills to|when, pouring and it
        kills, beyond anything i can bear|stand|take, beyond bearing|bearable|endurance, more than i can
        bear|stand|take|cope, past bearing, hurts .. move them, hurts to move .. eyeball{s/}, roll my eyes ..
        hurt{s/}, cant .. roll|move my eyes, looking .. is|was|are painful|sore|agony|murder|torture|hell,
        keep|keeping|hold|holding my? eyes .. still, follow{s/ing/ed} .. jolt|hurt{s/}|pain|stab{s/}|twinge|sore,
        <eye> follow{s/ing} .. pain|hurt{s/}|sore|jolt, <eye> going along .. line|page, reading hurts .. <eye>,
        hurts .. <eye> .. going|tracking|turning|turn|track|shift|shifts, jolt in .. <eye>, jolts of pain,
        moving|move|shifting my gaze .. hurt{s/}|pain|sore, each|every glance .. hurt{s/}|pain|sore, glancing ..
        hurt{s/}|pain|sore, turn my head rather than|instead, turning my whole head, pain .. off the scale, pain ..
        on another level, worst thing ive ever felt, would rather .. give birth, worse than
        labour|labor|childbirth|kidney, begging for .. pain, want to|wanna rip|gouge .. <eye> out, rip my eye{s/}
        out, screaming pain, want to|wanna rip|tear|gouge .. <eye> out, each|every time i move .. <eye>, every|each
        time i move it, when i move .. <eye> .. pain|hurt|hurts, moving .. <eye> .. pain|hurts, hurts to move it,
        hurts .. <eye> to move it, it hurts each|every time i move, never known|felt|had|experienced .. pain, pain
        like this, like no pain, hurts to look left|right|up|down|sideways|around|side|anywhere, pain ..
        look|looking left|right|up|down|sideways|around, moving .. <eye> kills|hurts|killing|agony|painful, kills ..
        move|moving|look|looking, cant even explain the pain, pain level 8|9|10, never felt pain, worst .. pain,
        pain .. unlike, pain .. never felt, made me throw up, pain making me, it kills|killing .. ..
        move|moving|look, proper pain when i look, hurts .. move, cant sleep .. pain, cant stand .. pain, pain ..
        <cant>, so much pain, in so much pain, wicked pain, pain is awful|horrific|terrible|insane|extreme|something
        else, horrific pain, terrible pain, awful pain, extreme pain, blinding pain, screaming in, pain .. 10/10,
        sobbing .. pain, pain .. screaming|vomiting|unreal, cried .. pain, crying .. <sore>, <sore> so much i, pain
        .. doubled, <lot> .. <sore>, <sore> .. <lot>, <sore> .. unbearable, pain .. <lot>, <sore> .. <cant> ..
        take|stand|bear|cope|sleep|function|handle|open, <cant> take|stand|bear|cope|handle .. pain|anymore, cant
        bear it, cant take it, pain .. 10|ten|9|nine|8|eight out of 10|ten, pain|hurts ..
        10/10|9/10|8/10|11/10|100/10, 10/10|9/10|8/10 .. pain, <sore> so bad ..
        cant|crying|screaming|cry|scream|shaking|sick|vomit, in agony, agonizing|agonising, excruciating, worst
        pain, screaming .. pain, in tears .. pain, crying .. pain, crying from .. pain, pain .. worse than
        childbirth|labor|labour, hurts to move .. <eye>, hurts when i|i'm|im move|moving .. <eye>, hurts moving ..
        <eye>, <sore> .. move|moving .. <eye>, <sore> .. look|looking up|down|sideways|side|around, move .. eye{s/}
        .. <sore>, pain on .. movement, pain with .. movement, hurts .. roll .. <eye>, pain .. through the roof,
        pain|ache|throb|throbbing is|are|its|be|something something|a|so|really?
        chronic|shocking|wicked|fierce|savage|desperate|brutal|vicious|diabolical|horrendous|ungodly|inhuman|unholy|cruel|evil|beyond|unspeakable,
        something chronic, beside myself with it|pain|the|agony, never known|felt|had the|its like ..
        pain|hurt|sore, knife in .. <eye>, like .. knife, stabbed .. eye, pain i cant, worst ever pain, howling,
        doubled over .. pain, level 10, no|without|with epidural .. worse|nothing, had|pushed|birthed ..
        babies|kids|twins|children .. worse|nothing, worse than a? root canal|kidney stone|kidney
        stones|migraine|contraction|contractions|gallstones|broken bone|bone|birth, cant .. take|stand|bear no more
        .. <sore>, cant .. take|stand|bear any more .. <sore>, cant .. take|stand|bear ..
        pain|hurting|hurt|throbbing, <sore> .. at the end of my tether|rope|wits, bang|banging my head .. wall ..
        <sore>, <sore> .. bang|banging my head, pain .. pulled my hair|shaking|passed out|blackout|vomit, shaking
        with|from .. pain, pain .. blinding|searing|shooting .. through .. <eye>, move|moving|moved .. <eye> ..
        makes|make|made .. yelp|scream|wince|cry|gasp|shout|sick|jump, look|looking .. makes|make|made ..
        yelp|scream|gasp|shout .. <eye>, want|wanna to? scoop|cut|dig|pull|yank|pluck .. <eye> out, pain me die,
        paining .. cannot|cant|unable|unbearable, pain me well well, very paining, paining too much|badly|severely,
        <sore> .. <cant> tolerate|endure|withstand, cant|cannot tolerate|endure|withstand .. pain|hurt|hurting
    """,
    "poking!": """
        lash|lashes|extension|extensions|hair|fibre|spike|one ..
        speared|skewered|stuck|embedded|lodged|buried|planted|impaled .. white|eyeball|cornea|globe, speared itself,
        embedded itself, buried itself, straight|right|deep into .. eyeball, sticking in there, embedded in ..
        <eye>, stuck .. in .. eyeball, sticking out of .. eyeball, in my actual eyeball,
        speared|skewered|impaled|harpooned|spiked|pierced|punctured my|the <eye>,
        splinter|needle|hook|pin|wire|lash|extension|spike|tweezer ..
        stuck|lodged|embedded|through|clean|buried|wedged|deep .. eyeball|cornea, sharp .. gone|went|stuck
        right|straight|deep|clean? in|into|through .. <eye>, gone|went into my <eye> .. not on it, through ..
        eyeball|cornea, sticking|stuck|poking out of|from .. eyeball
    """,
    "vision!": """
        6/12|6/15|6/18|6/24|6/36|6/60|20/40|20/50|20/60|20/70|20/80|20/100|20/200 l|r|left|od|os|re|le,
        middle|centre|center|part|half|bit|side of the page|screen|word|tv|telly|picture|face isnt|aint just? there,
        middle|centre|center|part|half of the page|screen|word|tv|telly|picture just isnt there,
        middle|centre|center|part|half of the page|word|tv|telly is|goes just? missing|gone|blank
        when|if|with|for|since|today, thumb over the lens, no dey see anything|well|road, only black, every pair|set
        of headlights|lights is|are two|double, headlights .. two pairs, see|seeing|saw|sees two|2|three|3
        lines|cars|lights|moons|phones|screens|people|faces|fingers|heads|lanes|signs|dogs|cats|everything|headlights|cursors|clocks|roads|images|letters
        .. where|when theres|there|its was|is|should|only? .. one|1, see|seeing|saw|sees two|2 of everything, every
        .. is|are two pairs|of, two worlds, worlds overlapping|overlap|on, world|worlds|room|everything|street
        became|become|split|turned|gone|went|has|is into? two, slightly|half|almost overlapping,
        lines|edges|letters|words|tiles|print ..
        wriggle|wriggles|wriggling|squirm|squirming|crawl|crawling|wiggling|waving|jiggle|jiggling,
        chunk|bit|part|half|piece|slice|quarter|corner|lump|patch of|from what .. eye|i sees|see|saw|seeing, like|as
        someones|somebodys|someone|somebody|something|if? erased|rubbed|deleted|wiped|cropped it|out|away|them,
        eyes? view .. dropped|dimmed|darkened|narrowed|shrunk|gone|halved, blink|blinks|blinking
        doesnt|wont|dont|isnt|not|never|cant shift|clear|fix|sort|lift|touch ..
        blur|blurriness|haze|fog|mist|film|cloud|smear, no amount of blinking|blinks,
        blur|haze|fog|mist|film|blurriness .. doesnt|wont|isnt|not shift|shifting|clear|clearing|lift|lifting ..
        blink|blinking|blinks, sees|seeing bugger|sod|naff|sweet|jack|feck|diddly all|squat|fa, see bugger|sod|naff
        all, sees|see|seeing bugger all, sees nowt, see nowt, seeing nowt, covered my|the good|other|right|left eye
        .. nothing|grey|gray|black|blank|blur|fog|cant, good eye .. nothing|bugger|nowt, nothing has|got edges,
        faces .. smudges|blobs|smears|blurs|ovals|masks, see|seeing just|only|nothing smudges|blobs|shapes|shadows,
        see|seeing nothing but smudges|blobs|shapes|shadows, people .. blobs|smudges|shapes,
        blinking|blinks|blink|rubbing .. sod|bugger|naff|jack|feck all, blinking|blinks does|do|did
        nothing|nowt|zilch|zip, however much i blink, no matter how .. blink, keep blinking .. stays|still, and it
        stays cloudy|foggy|blurry|hazy|misty|milky, not shifting .. blink{ing/}, wont blink away|off|out, blinking
        .. stays|still|makes .. cloudy|foggy|blurry|hazy|misty|milky, peering|looking|seeing|staring|gazing through
        steam|fog|smoke|milk|soup|bathwater|dishwater|frosted|bathroom|cling|clingfilm|wax|net|tracing|greaseproof,
        foggy window, free foggy, like .. bathroom|shower|frosted glass|window, <eye>|vision|sight .. clouded over,
        clouded over like, eye|eyes|vision|sight .. blanked|blacked|cut|conked|whited out, door|window|picture
        frame|frames .. wobbling|wobbly|wobble|bendy|wavy|bent|rippling|swaying, door|window|picture|wall|lamp
        frames|frame|post .. under water|wobbling|wobbly|bendy|wavy|rippling|bent, look|looks|looked like .. under
        water, underwater .. wobbl{ing/y/e}, bits|specks|swirls|threads|streaks|spots of red|black|grey|blood
        swirling|swirlin|floating|swimming|drifting, red swirling|swirlin, dont|doesnt|wont|isnt|not
        go|going|clear|clears|clearing away|up|off? when|if|with|after i? blink|blinking, behind|through
        net|lace|voile|muslin curtain|curtains, <eye> .. gone|went completely|totally|fully|pitch|entirely
        black|dark|blank|grey, rooms|room|world|everythings|everything .. hazy|cloudy|foggy|misty|milky on|in
        that|one|left|right side|eye, gone .. hazy on that side, lost the picture, picture .. gone, straight lines
        .. wobbl{e/y/ing/ed}, lines .. wobbl{e/y/ing}, door frame{s/} .. bent|wobbl{e/y/ing}|wavy, lightning
        zaps|zap|streak|streaks|bolt|bolts, zaps at|in|of .. edge|eye|corner, edge of my eye ..
        lightning|flash|flashes|light|lights, brightness .. down in one|left|right|my <eye>, someone .. brightness
        .. down, heat off a road, rippling, ripples in|across .. vision|sight|view|eye, fish tank, fishbowl, fish
        bowl, warped, warping, like .. heat haze, heat haze, lava lamp, mirage, melting .. see|vision, shimmery,
        twinkling lights, fireworks in|behind .. eye{s/}, fairy lights in|behind .. eye{s/}, sparks in|behind ..
        eye{s/}, strobe{s/} in|behind .. eye{s/}, strobe lights, picture .. breaking up, pixelated, pixellated,
        pixels, tele|telly|tv|screen|page|words .. swimming|wobbling|moving|dancing, like .. under water, under
        water, all is dark|black|grey|gray, is all dark|black|grey|gray, dont can see, no can see, can no see, can
        not to see, cant to see, see all dark|black|grey|gray|double, cant see nothing, dont see nothing|anything,
        two of him|her|you, 2 of him|her|you|everything, seeing double|two|2, twos of, like somebody|someone ..
        pulled|drew .. curtain|blind, wont settle .. see|focus, picture .. snowy, snowy .. vision|sight, static ..
        vision|sight, vision .. static, see|seeing static, lights|light .. went out in|on .. <eye>, like a .. bulb
        .. gone in, one eye .. nothing, sight .. left me, sight .. draining, eye|eyes
        went|gone|going|goes|turned|turning a? bit|little? grey|gray|dim|black|blank|dark|milky, my sight|vision
        hasnt|has not|havent come back, two edges, two of everything, everything .. two edges|outlines,
        top|bottom|upper|lower|left|right|one|other half|halfs|side of .. what|whatever|everything|things i|im
        see|look|looking|seeing, half|halfs of? what|everything|whatever i look at|see, half|halfs|bottom|top|side
        is|just|has|have|of? just? gone .. look|see, only the top|bottom|left|right half|side of,
        road|street|car|cars|screen|words|text|lamp|lamps|telly|tv|lights|signs|people|moon|bus|everything|letters|world|picture
        split|splits|splitting|divided|dividing|parted .. two|2|half, road|street|screen|moon|lamp|world|everything
        has|have|is|keeps split|doubled|splitting|doubling, ghost|phantom|second|shadow|duplicate
        copy|copies|version|outline|image|picture|twin next|beside|behind|on|above|of|over|to?,
        ghost|phantom|shadow|duplicate copy|copies|twin|twins, have|has|had|with|got a|an? ghost|shadow|second
        copy|image|outline|twin|edge|one next|beside|behind|on|above|over, keep|keeps|kept|constantly|still|been
        getting|seeing|having|get|see|got|catching
        sparks|zaps|flickers|bursts|sparkles|fireworks|glints|streaks|zigzags|shimmers,
        sparks|zaps|flickers|bursts|glints|lights|flashes|streaks .. eyes|eye|lids are? shut|closed,
        sparks|zaps|bursts|lights|glints like .. camera|flashbulb|strobe|firework|fireworks|sparkler|lightning, like
        .. flashbulb|paparazzi|strobe|flashgun going|in|off|at|every, no amount of
        drops|water|rinsing|washing|rubbing|sleep clears|shifts|fixes|helps|lifts|sorts ..
        blur|blurriness|fog|haze|it, second outline|image, double|extra edges|outline|outlines|image, no fit see, va
        .. down|dropped|reduced|worse|from|gone, va .. 6/24|6/36|6/60|6/18|6/12|20/40|20/80|20/200|20/100, acuity ..
        down|dropped|reduced|worse|gone|lost|fell, drop|reduction|loss|change|fall in|of .. acuity, count|counting
        fingers, hand movements only, no change on|with blinking|blink|pinhole, dimmer down|on, turned .. dimmer,
        somebody|someone .. turned .. down .. side, nothing|nothings .. in focus, not in focus, two|2 of every|each,
        there|theres are? two|2 of, seeing twins, twins of, everyone|everybody has|have a? twin, ghost images,
        ghosting, ghost image, wont come into focus, dont come into focus, wont be driving .. see|two|double, read
        me the, read .. to me .. cant|couldnt, half the|my|a world|room|picture|telly|screen|face .. gone|missing,
        side .. gone .. dark|black|dim|grey|gray, bitten out of, chunk|bite|piece|slice missing out|from of?,
        brightness|lights|dimmer|dial down on|in my? eyes, turned .. brightness|lights down, turned the lights down,
        seeing two of, see two of, theres two of everything, sees nothing|grey|gray|black|double|dark, see|sees
        only|just|nothing .. grey|gray|black|white|light|shapes|shadows|blur, <eye> .. cant see, nothing but
        grey|gray|black|blur|fog, blank in .. <eye>, blind patch, blind in, half blind, vision|sight .. is going,
        vision .. going, see shapes, only see shapes, only see light, only see half, see half, see through a, lines
        in my sight|vision|view, wiggly lines, wavy lines, squiggles, bendy lines, lines look
        bendy|wavy|bent|crooked, straight lines .. wavy|bent|crooked|bendy, everything ..
        smeared|smeary|swimming|swimmy|watery, smeared, smudged vision, seeing through
        vaseline|milk|fog|water|mud|gauze|curtain, like vaseline, vaseline on, vaseline over, like looking through,
        looking through .. fog|frosted|water|milk|mist|smoke|dirty|wax|steam|gauze, vision is less, see less, sight
        is worse, sight .. worse, eyesight .. worse, vision .. deteriorat{ing/ed}, bright flickers, flickering,
        flicker, shimmering, shimmer in .. vision, aura, zigzag lights, disco lights, camera flash .. eye, sparkly
        lights, cobweb{s/} .. eye|vision, black dots, dots floating, floating spots, spots floating, see ..
        <seebad>, seeing .. <seebad>, saw .. flashes, <things> .. <be> .. <viewbad>, <things> .. gone .. <viewbad>,
        cant see out, see out of, half my vision, part of .. vision, side vision, peripheral vision, grey patch,
        gray patch, cant recognise|recognize, dark curtain, curtain .. eye, veil .. eye, shadow .. eye, eye .. gone
        dark|dim|blank, colors|colours .. washed|faded|off|different, cant see a thing, see nothing, nothing out of
        .. <eye>, no vision, zero vision, no sight, lost sight, sight .. comes and goes, missing .. vision, patches
        missing, hole in .. vision, cant|cannot|couldnt really|even|barely|hardly|properly see, sight .. ..
        dim|gone|dark|dimmed|black, double images, image .. double, lamp down, lights down in it, everything .. gone
        blurry, went dim, gone dim, gone dark, going dim, dimness, changes in .. vision, vision .. changed|changes,
        dark patch, see .. double|two|halos, <cant> see, <cant> see
        anything|properly|right|clearly|well|good|straight, lost .. vision|sight|eyesight, losing ..
        vision|sight|eyesight, loss of .. vision|sight, vision|sight|eyesight ..
        gone|going|went|goes|lost|failing|fading|dim|dimmed|darker|dark|weird|funny|off|bad|worse|cloudy|foggy|hazy|misty|fuzzy|wavy|double|patchy|gray|grey|black|strange|wonky|messed|tunnel,
        blind, blinded, blindness, going blind, gone blind, went blind, dim, dimmed, dimming, double vision, seeing
        double, see double, seeing two, see two, see 2, seeing 2, diplopia, doubled vision, flashes, flashing,
        flashing lights, flash of light, flashes of light, wavy, zigzag{s/}, zig zag{s/}, squiggly lines, wobbly
        lines, kaleidoscope, floaters, floater, black spots, dark spots, dark spot, black spot, blank spot, blind
        spot, shadow .. vision|over|across|corner, curtain .. over|across, like .. fog, like .. frosted glass, like
        .. tracing paper, like .. underwater, like .. through .. steam, halos, haloes, halo around, rainbows around,
        scotoma, went .. dark, going .. dark, everything .. double, everything .. dark, everything .. dim,
        everything .. gray|grey|black, went black, goes black, tunnel vision, cant make out, cant focus, wont focus,
        cant read .. text{s/}|screen|sign{s/}|print, lines .. wavy|bend, see .. wavy, seeing stars, seeing spots,
        see spots, visual disturbance, sparkles in, lightning .. corner|eye, milky, change in ..
        vision|sight|eyesight, vision change{s/}, change to .. vision|sight,
        brightness|dimmer|contrast|lights|light|lamp|blind|shutter .. down|off|low|out .. in .. <eye>, turned ..
        brightness|dimmer|contrast|lights .. down|off|low .. <eye>,
        lines|edges|frames|frame|walls|doorframe|tiles|kerbs|bricks|shelves ..
        wobble|wobbles|wobbling|wobbly|bend|bends|bent|ripple|ripples|rippling|warp|warped|curve|curved|curvy|swim|swimming|shimmer|shimmering|melting|wiggle|wiggling|wonky,
        heat off .. road, heat off .. tarmac, seeing|see two|double|twin of, two|2 of every{thing/one/body},
        there{s/} two|2 of him|her|me|everyone|everybody|everything|every, as if ..
        clingfilm|saran|vaseline|cellophane, see|seeing|looking|look|everything ..
        clingfilm|saran|vaseline|cellophane|jelly|soup|treacle, cling film .. <eye>|everything, through
        cling|bubble|wax|greaseproof|bathroom|shower|wet film|wrap|paper|glass|door|screen, only|just see
        light|shapes|shadows|outlines|blobs|shadow|half, just|only shapes|shadows|outlines|blobs, cant ..
        recognise|recognize|tell faces|who, pitch black in|out of .. <eye>, like .. power cut in .. <eye>, <eye> ..
        switched|turned|clocked|knocked off, <eye> .. conked out, <eye> .. packed|given up|in,
        half|part|bit|chunk|some .. i look at|see .. missing|gone|blank|black,
        print|words|letters|page|text|subtitles .. swim|swims|swimming|dances|dancing|jumps|jumping|floating|floats,
        black|grey|gray|dark|blank|missing|brown patch|hole|blob|bit|area|smear ..
        middle|centre|center|everything|look|see, grey|gray|brown|dark|sepia|dirty filter ..
        <eye>|everything|vision, one|left|right eye .. sees nothing, eye .. sees nothing|nowt|zilch|nada,
        vision|sight|eyesight .. not|isnt proper|properly|right|normal|clear|good|same|great,
        telly|tv|moon|screen|clock|lamp|phone|cat|dog|everything|everyone|road|door .. has|got|have a? twin{s/}
    """,
    "breathing!": """
        its closing my throat, this time its my throat|chest, its my throat its going|getting|closing, throat .. its
        going|getting|gone tight|tighter|small|narrow, swallowed .. times .. sits|stuck there|throat, just? sits
        there in my throat, food no dey gree pass|go, feel|feels|like .. truck|bus|car|lorry|van .. parked on it,
        parked|parking a? car|ute|bus|truck|van|lorry|tank|tractor on|across my? chest,
        elephant|someone|something|brick|bricks|weight|anvil|rock|boulder
        elephant|someone|something|brick|bricks|weight|anvil|rock|boulder sitting|standing|sat on my chest, sips|sip
        of air, little|tiny|short|small|shallow sips|gulps of air, dey drag breath, chest .. tight like i?
        wear|wearing, like .. belt|band|strap|corset|rope|vice|elephant|brick|bricks round|around|on|across my?
        chest|me|ribs, breathing .. like .. belt|band|strap|corset round|around, not the|my eyes|lids|eye|lid|lashes
        its my throat|chest|breathing|windpipe|airway, i|ive|im|been|chest|lungs|breathing ..
        whistle|whistles|whistled|whistling|squeak|squeaking|rattle|rattles|rattling|wheezing|crackling ..
        inhale|inhaling|breathe in|breathe|breathing, kettle|harmonica|flute|accordion|bagpipes|squeaky|whistle ..
        inhale|breathe|breath in?, inhale|breathe|breath in? and? ..
        whistle|whistles|squeak|squeaks|squeeak|squeeeak|wheeze|rattle|rattles|crackle|crackles|hiss|hisses,
        swallowing has|is|became|feels become|turned|been|like|getting? into? a|an? real?
        work|chore|effort|job|struggle|battle|labour|ordeal, swallowing takes|needs
        effort|work|concentration|two|three|ages,
        work|working|works|worked|struggle|struggling|fight|fighting|battle|battling|strain|straining to|for?
        get|getting|drag|dragging|pull|pulling|suck|sucking|draw|drawing enough? air|breath in,
        drag|dragging|pulling|sucking|hauling air|breath in, throat|windpipe|gullet|airway like|as|feel|feels|felt
        ..
        drawstring|zip|zipped|cord|shoelace|string|lace|cable|elastic|turnstile|tourniquet|scarf|collar|tie|tightened|throttled|strangled,
        pull|pulling|pulled|draw|drawing|tie|tying|tightening|cinching ..
        drawstring|cord|lace|shoelace|noose|elastic|belt .. throat|neck|windpipe|it|chest, drawstring ..
        throat|neck|windpipe, bother|bothers|hassle|issue|issues|grief|bothered breathing|swallowing,
        swallowing|swallow|swallowings is|are|has|was|just|gone|gets|got|getting? just|gone|got?
        stuck|stopped|impossible|harder|hard|difficult|sore|painful|tricky|weird|slow|blocked|tough,
        talking|speaking|sound|sounds|sounding like .. been at|to the dentist .. tongue,
        work|works|working|worked|labouring|laboring|battling|begging for every|each|my breath|breaths|lungful,
        got|has|have|theres|like a? golf|ping|tennis|snooker|squash|cricket ball in my throat|gullet|windpipe,
        throat|windpipe|airway|gullet .. getting narrower|smaller|tighter|tinier|thinner, throat ..
        shrinking|closing|narrowing|swelling|tightening, windpipe|chest|lungs|throat|airway ..
        squeak{s/ing/y}|whistl{es/ing/y}|wheez{es/ing/y}|creak{s/ing/y}|rasp{s/ing/y}|rattl{es/ing/y}|bubbl{es/ing/y},
        squeak|squeaking|whistle|whistling|rasp|rasping|rattle|rattling|creak .. in|when .. breath|breathe|way
        in|and out|way out, on the way in and? out, dey pant|gasp|struggle, she|he|just dey pant, pant|panting like,
        no fit catch breath, throat dey block|swell|pepper, breath dey cut|hook|seize|short, throat ..
        shrinking|shrunk|shrinks|narrowing|narrower, its closing .. throat, screw|scarf|clamp|vice .. throat|neck,
        neck{s/} .. closing|tightening|tight, gullet .. no|closed|tight|stuck, lungful, proper lungful, tongue ..
        fizz{y/ing}|fizzing|battery, fizzing on .. tongue, licked|licking a battery, spit .. down|swallow, cant get
        my own spit, dribbl{e/ing/in} .. tissue|towel, cant swallow me own, swallowing|swallow|breathing ..
        is|was|are a? right|real? job|chore|struggle|battle|effort|task|mission|nightmare|ordeal|labour, came over
        all wheezy|chesty|breathless|tight, elephant|weight|brick|bricks|boulder|car|anvil|cat|sack .. on my?
        ribs|chest|lungs|breastbone|sternum, parked on my chest|ribs, corset .. chest|ribs|too tight .. breath{e/},
        ribs .. squeezed|crushed|tight, cant .. proper|full|deep breath, puffing like, im puffing, im puffed, puffed
        out lying|sitting, out of puff, got|have|having|had|with|ive no puff, every gulp, each
        gulp|swallow|mouthful, gulp .. fight|hurts|struggle|sore|agony, every swallow, nothing solid ..
        pass|go|stay|down, solid|solids .. wont|cant|not|dont go|pass|stay|down, only .. liquids|soup|broth ..
        swallow|down|pass, golf ball|lump|apple|plum|stone|ball|frog|pill .. throat|gullet|windpipe|road|pipe, able
        to draw|catch|take|get .. breath, cant|cannot|couldnt|unable|struggling|struggle to? draw breath|air,
        swallerin, swallerin', swallering, swallow like, prickle{s/} .. tongue, tongue .. prickle{s/}, tip of ..
        tongue .. tingl{e/es/ing/y}|numb|prickl{e/es/ing/y}|burn{s/ing}, tongue{s/} .. pins, tongue{s/} .. gone
        numb|fuzzy|fat|thick|tingly|dead, throat swelling|swollen, throte, feel .. throat swell{ing/s}, throat ..
        swelling up, throat .. size of, throat .. like .. straw, noose|rope|hand|hands round|around .. throat|neck,
        like .. being strangled|throttled|choked, strangling me, cant .. draw .. breath, cant .. inhale, cant fill
        my lungs, chest .. wont .. fill|expand, sucking .. air, no fit breathe|breath|swallow, chest dey tight,
        throat dey close|tight, its my breathing, belt|band|rope|strap round|around me|my chest|ribs,
        blocking|blocked|block my|the throat|windpipe|airway|chest|breathing, something .. blocking|stuck .. throat,
        water|food|anything|spit|saliva .. not|isnt|wont|doesnt pass|passing|go|going .. down|well|through, gulp
        for, pulling|drawing|fighting .. breath|air, cant pull .. breath|air, breathing .. like ..
        straw|dog|asthma|marathon|ran, asthma .. off|playing|flaring|bad|like, puffing and panting, chest .. like ..
        asthma, whistle when|every .. breath|breathe, throats .. tight|closing|swollen|thick|funny, chests ..
        tight|heavy|tightening|wheezy, throat's, tongue .. pins, tongue .. pins n|and needles, lips .. pins n|and
        needles, <hardto> .. <breathe>, <breathe> .. <hardto>, <hardto> .. swallow|swallowing, sitting on my chest,
        weight on my chest, elephant on, band around my chest, band round my chest, chest .. rattl{ing/es/y}, not
        getting .. air|oxygen, lungs, lung, oxygen, breathe through a straw, like a straw, through a straw, epipen,
        <throat> .. <tight>, <tight> .. <throat>, chest .. hurts|pain|hurting, chest pain, tight across .. chest,
        air wont, suck in air, struggling for air, gulping for air, cant get a breath, cant talk, cant finish a
        sentence, hard time breathing|swallowing, breathing .. off|wrong|strange|noisy|fast|quick|worse, swallowing
        .. tricky|odd|strange|sore, food .. wont go down, spit .. swallow, drooling, tongue ..
        weird|odd|strange|funny|burning, lips .. buzz{ing}, mouth .. fizzy, tongue .. prickl{y/ing}, pins and
        needles .. tongue|lips|mouth, tingle .. tongue, lips .. tingl{y/ing}, cant take .. air, hard .. take .. air,
        air .. not, hard .. get .. air, throat .. like .. closing, clearing my throat, keep clearing my throat,
        throat .. tingl{y/ing}, <glue> .. breathe, used my inhaler, inhaler .. times, inhaler .. not, voice ..
        weird|funny|gone|hoarse|croaky|strange, whistle .. chest, whistling .. chest, chest ..
        whistling|rattling|rattle, air .. not enough, not getting enough air, cant get enough air, throat ..
        closing|close, <cant> .. <breathe>, <cant> catch .. breath, <cant> swallow, <cant> get .. air|breath,
        wheeze, wheezing, wheezy, wheezes, short of breath, shortness of breath, sob, dyspnea, dyspnoea, dysphagia,
        stridor, <breathe> ..
        hard|difficult|trouble|funny|weird|heavy|shallow|labored|labored|tight|harder|rough|bad|difficulty,
        hard|harder|difficult|trouble|struggling|struggle|tough|difficulty|problem{s/}|issue{s/} to|with|in? my?
        <breathe>, hard .. to swallow, harder to swallow, trouble swallowing, difficulty swallowing, difficult to
        swallow, swallowing .. hard|difficult|hurts|weird|funny, hurts to swallow, struggling to swallow|get,
        struggle to swallow, gasping, gasp, gasping for, choking, breathless, out of breath, no breath, fighting for
        breath, labored breathing, chest .. tight|tightness|tightening|heavy|closing|squeezing|tighter,
        tight|tightness|tightening|squeezing|pressure .. chest, tight chest, tight throat, throat ..
        tight|tightness|closing|closed|close|tightening|closes|narrow|itchy|scratchy|swelling|swollen|lump|constricted|constricting|thick|funny|weird|shutting,
        tightness|tightening|lump|tight .. throat, tongue ..
        tingle{s/}|tingling|tingly|numb|itchy|thick|fuzzy|heavy|prickly, tingling|tingly|numb ..
        tongue|lips|lip|mouth, lips .. tingling|tingly|numb|tingle{s/}, mouth .. tingling|tingly|numb|itchy,
        anaphylaxis, anaphylactic, anaphylactic shock, suffocating, airway, cant talk properly, job .. getting? ..
        breath, puffing and wheezing, my breath .. short, using .. inhaler, inhaler .. isnt|not|wont, whistling ..
        breathe, <breathe> in gasps, panting, get my breath, catch my breath, sounds? like a? whistle, voice ..
        hoarse, breathing like, throat|gullet|windpipe|neck .. says|saying|said|going no|nope|nah|closed,
        spit|spat|spitting .. food|toast|dinner|lunch|bread|breakfast|water .. gullet|throat, gullet,
        screw|vice|vise|clamp|fist|fingers|cord|wire|scarf|collar|necktie|tie|belt|python|snake|boa|zip|zip-tie
        round|around|on|at|gripping|squeezing .. throat|neck|windpipe, <tingly> ..
        on|in|round|around|across|over|along|inside my|the? <mouth>, <tingly> ..
        tip|edge|edges|end|side|sides|back|roof of .. tongue|lip|lips|mouth, lick|licked|licking ..
        battery|batteries|9v, tongues .. pins and needles, shallow|short|tiny|quick|little breaths, breath at a
        time, half a breath, cant .. deep breath, breathe in all the way, cant .. full breath|lungful, <airway> ..
        on strike, <airway> .. playing|packing|packed|giving|seizing|seized|closed|clogging up, <airway> ..
        shut|shutting down, gulp|gulping .. fish|air, like a fish out of water, lost|losing my voice ..
        throat|swell{ing}|tight, voice .. squeak{y/ing}|whisper|rasp{y/ing}|strangled|duck|helium, barking cough,
        coughing .. cant stop .. breath{e}, coughing .. since .. glue|lashes .. tight, cant .. swallow .. my? own?
        spit|saliva|drool, dribbling|drooling .. cant|swallow, going|goes down the wrong way ..
        everything|water|food, breathe|breathing|breath .. through ..
        flannel|towel|cloth|pillow|blanket|sock|mud|cotton|sponge|custard|treacle|snorkel|scarf, bolt upright ..
        breathe|breath|air, sit|sitting|sat|stand|standing|propped .. up|upright to breathe|breath, few words at a
        time, couple of words at a time, word at a time, between words .. breath|air, stop for air, air .. past
        my|the throat|chest|collarbone|neck|lungs, no air .. going|getting in|down|through, hand|hands|arm|fingers
        round|around my? neck|throat, huffing and? puffing|blowing, puffing and? blowing, winded,
        puffer|ventolin|salbutamol|albuterol|nebuliser|nebulizer|inhaler|pump .. <useless>,
        used|needed|using|need|taken|had my? blue|brown|purple? puffer|ventolin|salbutamol|albuterol|inhaler,
        use|take my|the? blue|brown|purple? puffer|ventolin|salbutamol|albuterol|inhaler ..
        times|twice|again|already, puffs .. puffer|ventolin|salbutamol|albuterol|inhaler, not|isnt|arent|aint
        breathing right|well|properly|normally|good|great, breathlessness, breath no dey come, no fit breathe, cant
        get enough breath
    """,
    "glue_in_eye!": """
        remover|glue|adhesive|acetone don enter, went in the glue|adhesive|acetone, glue|remover|adhesive|acetone
        it? went in my|the? eye|corner|left|right, theres|there|its some in each|my|both eye|eyes, still feel it in
        there .. eye, gloop|glue|stuff|gunk|adhesive|remover|primer ran|run|dripped|leaked|trickled|seeped in
        when|while|as, splash|splashed|drip|dripped straight|right in my? <eye>,
        acetone|remover|glue|adhesive|bleach|alcohol|superglue|primer|bonder|solvent and? now?
        is|its|it|got|went|all? inside|in|into of? my|the|left|right|both? <eye>, glue|adhesive|remover|primer
        anywhere|somewhere|where it shouldnt|isnt|wasnt|should, adhesive|glue ..
        sitting|lying|stuck|smeared|spread|dried on .. eyeball, gunk|stuff|gloop|goo you|u|they stick|stuck|glue ..
        with .. <eye>, fleck|speck|blob|bit|dot|drop|bead|smear|dollop|splodge|dab of .. <glue> .. on|onto|in|into
        .. eye|eyeball|ball|white|cornea, fleck|speck|blob|bit|dot|drop|bead|smear|dollop|splodge|dab of .. gunk ..
        on|onto .. eyeball|ball|white|cornea, <glue>|stuff|sticky .. <going> under|beneath|behind .. lid{s/}|eyelid,
        cleanser|concentrate|shampoo|bleach|peroxide|disinfectant|barbicide|sanitiser|sanitizer|undiluted|detergent
        .. full|straight|right|splashed|went in|into .. <eye>, eyes? .. <potion> .. straight in, black|clear|sticky
        gunk|stuff|gloop|goo you|u|they|ye stick|stuck|glue|use .. <eye>, stuff you|u|they|ye stick|stuck|glue|glued
        them|em .. <eye>, <glue> .. sat|sitting|landed|lands|set|stuck|dried|hardened on|onto ..
        eyeball|ball|white|cornea|eye, on the ball of my, bonder|bonders|glue|adhesive|remover|primer
        got|gone|went|run|ran in|into|down .. <eye>|left|right|both, remover|glue|acetone|primer|bleach|peroxide ..
        run|ran|running down|straight? in|into .. <eye>, dissolver|remover|debonder|cleanser|primer|bonder ..
        squirted|sprayed|splashed|spurted|shot .. in .. <eye>|face, squirted|spurted her|him|me .. in .. <eye>,
        acetone|remover|primer|bonder|glue|peroxide|bleach .. tipped|spilt|spilled|splashed|knocked .. <eye>, splash
        straight in|into, bleach .. in the eye|eyes, undiluted .. <eye>, full in the eye, tipped .. can? still feel
        it in there, hair dye|developer|peroxide .. in|into .. <eye>, bonding stuff|agent|liquid .. lid|eye|eyeball,
        it went in .. glue, went in. the glue, remover .. splashed right? in, splashed right in, sitting on my
        eyeball, ran under my lid, under my lid .. <glue>,
        bead|blob|drop|dot|dollop|speck|dab|string|droplet|trace|thread|splodge|lump|globule of your|the|that?
        <glue> .. in|under|into|on|onto|beneath the|my|left|right? <eye>|white|lid, <glue> ..
        rolled|slid|seeped|dribbled|trickled|crept|oozed|flicked|pinged|splattered|spat|slipped
        in|under|into|beneath|onto|on, removal|remover|gel|solvent|glue|cream .. some|bit|lot|most of it|that
        slid|ran|went|got|dripped|seeped|trickled|slipped|dribbled|crept in|into my|the|left|right? <eye>,
        some|bit|lot|most of it|that|the .. slid|ran|dripped|seeped|trickled|slipped|dribbled|crept|squirted in|into
        my|the left|right? <eye>, <glue> .. under my|the lid, wrong bottle .. <eye>, <glue> .. eyewash, swimming in
        <glue>, <glue> .. straight in .. <eye>, squirt of <glue>, got <glue> in, tint|glue|remover .. entered ..
        <eye>, drop of .. entered, <glue> .. gone in|into .. <eye>|left|right|it, entered my left|right? <eye>,
        stuff .. take em|them off .. dripped|ran|leaked|went, that stuff .. dripped, rinse .. went right? in, went
        right in .. sting{s/ing}, went right in .. burn{s/ing}, went straight in .. sting{s/ing}|burn{s/ing}, take
        em|them off .. went|got right? in, liquid|rinse|stuff .. went|got|ran right|straight? in my?, some went
        right? in, <glue> .. in|into|inside are|left|right|l|od|os <eye>, <glue> .. eyeball, <glue> ..
        hit|splashed|landed|splattered .. <eye>, splashed .. eyeball, splashed into .. <eye>, splash in .. <eye>,
        went in my eye .. <glue>, <eye> .. <glue> went in, <glue> .. went in, stuff .. .. dripped, stuff .. in ..
        <eye>, product .. in .. <eye>, drip .. in .. <eye>, <glue> .. my eye, felt it go in .. <eye>, liquid .. in
        .. <eye>, drop .. in .. <eye> .. smell, <eye> .. got .. <glue> in, <glue> .. in|into|inside
        my|the|me|both|her .. <eye>, <glue> .. on|onto my|the eyeball, <glue> .. in|into|inside <eye>, <glue>
        got|get|went|ran|dripped|leaked|seeped|splashed|dropped|fell|touched .. <eye>, <glue> .. got in|into|inside,
        <glue> .. went in|into, <glue> ..
        ran|dripped|leaked|seeped|splashed|squirted|flicked|trickled|slid|flew|dropped|fell|shot in|into|on|onto,
        splash{ed/} .. <glue> .. <eye>, drop|bit|blob|splash|drip|some of .. <glue> .. in|into .. <eye>, <eye> ..
        <glue> in it, <glue> in it, <eye> .. full of <glue>, got .. <glue> .. in .. <eye>|it, touched .. <eye> ..
        with .. <glue>, <glue> .. touched .. eyeball, <glue> stuck .. eyeball, chemical burn, chemical in, chemical
        splash, <glue> .. on .. actual|very|bare|naked <eye>, <glue> .. on .. surface of .. <eye>, mistook .. <glue>
        .. drops, squeezed|squirted|put <glue> in .. <eye>
    """,
    "sealed_eye!": """
        stuck as in glued|shut|closed, cant|couldnt prise|pry|prize|peel it|them|lid|lids|eye|eyes apart|open,
        eye|lid .. cant|couldnt prise|pry|prize it|them, eye|lid .. licked stuck, neither lid|eye|one?
        will|would|can|wants part|open|budge|separate, still wont part|budge|separate, lids wont
        part|budge|separate, lid wont part|separate, stuck .. still wont part, cant|couldnt|cannot|not
        part|separate|unstick|unpeel it|them|the|my lids|lid|with|eyelids|fingers, decided to stay
        closed|shut|sealed, left|right|eye|lid|lids|lefty|righty|one .. hasnt|havent opened,
        lefty|righty|leftie|rightie|left|right|eye|lid|lids is|are|has|got|gone
        superglued|glued|welded|sealed|cemented|fused|stapled|bolted|shut, lefty|righty is|has
        superglued|glued|sealed|shut|closed|stuck, top lashes .. bottom lashes, uppers .. lowers ..
        stuck|glued|together, top .. bottom .. glued|superglued|fused, like a clam|oyster, a clam basically, clammed
        shut, shut like a clam|safe|vault|purse, sealed|shut|stuck|glued|closed|locked like|as|tighter an?|than?
        envelope|envelopes|letter|tomb|vault|jar|drum|tin|limpet|door|coffin|safe|ducks|mussel|barnacle|passport,
        unstick|unglue|unseal|reopen|ungum an|my|the|her|your|this|one|a <eye>|lashes, mine|mines|its|theyre
        glued|sealed|stuck|gummed|fused|welded down|shut|closed|together .. wont|cant|not|refuses ..
        budge|open|move|shift|part, cannot|cant|couldnt|unable part|open|separate|prise|unstick her|his|the
        lid{s/}|lash{es/}|eye{s/}, stuck fast, lids|lashes .. met in the middle, no slit|crack|chink left|to, no gap
        .. see|look, chink of light in, cant get .. light in, no light getting in, it is|its close and it
        stay|stays|keep|keeps, <eye> .. stay|stays|staying close|closed|shut, <eye> .. is close, cola .. dry ..
        between, wont unzip, unzip .. eye, pirate mode, swollen i cant lift it, cant lift it, puffed .. over ..
        slit, no slit left, no slit, eye .. apart .. cant, cant prise .. apart, prise .. apart, neither .. unstuck,
        <eye> .. come unstuck, wont come unstuck, not come unstuck, cant get .. unstuck, <eye> .. bolted, <eye> ..
        bolted shut, bolted shut, <eye> .. stapled, stapled shut, <eye> .. super glued,
        mummy|mum|friend|husband|daughter|son .. type|typing .. <eye>, sandpaper shut, lids .. velcro, velcroed,
        velcro .. lids, no fit open .. <eye>, <eye> .. no fit open, <eye> .. cyaan|cannae|cannie open,
        cyaan|cannae|cannie open .. <eye>, eye|eyes|lid|lids has|have|had|is|are|gone|went closed|shut ..
        for|up|over|completely|fully|entirely|and|since|on, eye has closed, eyes have closed, one eye|lid is|has
        closed|shut, eye closing up|over, eyes closing up, closed for business, typing .. with .. other .. eye|one,
        typing one eyed, out of one eye, one eye .. out of action, shutters down|are, zipped, welded, soldered, spot
        welded, lids .. dried together, lids|eyelids|lashes .. .. together, dried shut, dried together, crusted shut
        .. cant, top .. bottom .. together, cant unglue, cant unseal, cant part .. lids|lashes|eye|eyes, cant prise
        .. open, unable to unstick, lids .. married, locked shut, lids locked, eye .. locked, sewn shut, cemented,
        stitched shut, zipped shut, wont unstick, wont unglue, lids wont budge, wont separate, cant separate, <cant>
        .. keep .. open, hardly open, barely open, <eye> .. barely opens, crack .. eye open, <cant> .. open .. ..
        <eye>, tryna|trying .. open .. .. <eye> .. aint, trying to open .. not, top lashes .. stuck .. bottom,
        lashes .. stuck .. bottom, <eye> .. closed by .. glue, <eye> .. is closed, it does not open, does not open,
        do not open, will .. not .. open, shut and wont, wont come apart, lids .. fused, <eye> .. glued, glued
        closed, glued together, <eye> .. stuck, <cant> get my .. <eye> .. open, <cant> unstick, stuck closed, stuck
        together, <cant> .. open .. <eye>, <cant> open it|them|either|neither|my|the|one|left|right, cant get ..
        <eye> .. open, cant get it|them open, <eye> .. wont|cant|doesnt|isnt|not|refuses|refuse to? be? ..
        open|opening, <eye> .. wont open, wont open, isnt opening, not opening, doesnt open, dont open, will not
        open, would not open, wouldnt open, <eye> ..
        glued|stuck|sealed|fused|welded|bonded|gummed|cemented|superglued shut|closed|together|down,
        glued|stuck|sealed|fused|bonded|cemented|welded|gummed shut|closed, <eye> .. sealed, <eye> .. shut, lids ..
        stuck, lids .. glued, eyelids .. together, glued my .. <eye>, <eye> .. closed .. cant, <eye> .. unable ..
        open, unable to open, impossible to open, cant pry|peel .. open, cant separate .. lids|eyelids|lashes|<eye>,
        lids wont separate|part, <eye> .. wont part, top and bottom .. stuck|glued, upper .. lower .. stuck|glued
        together, pry .. eye .. open, cant lift my? .. lid, only open one eye, one eye .. wont open, open one eye
        only, shut tight, clamped shut, eye .. closed up, <eye> .. wont|cant|not|doesnt|refuses|refusing
        unzip|unseal|unlock|budge|separate|part|lift|unstick|unglue|peel|crack|unfold|come apart|apart, cant ..
        prise|pry|lever|peel|tease|pull|work|ease .. <eye> .. apart|open, tried|trying to
        prise|pry|lever|peel|tease|pull .. <eye> .. open|apart .. no|wont|cant|nothing, cyclops, one eyed ..
        stuck|glued|shut|sealed, no fit open am|it|them|the, no gree open, <eye> no gree open, <eye>
        is|are|has|have|been? superglued|cemented|welded|soldered|bonded|fused, <eye>
        superglued|cemented|welded|soldered
    """,
    "swollen_shut!": """
        <swell>|ballooned|puffed .. no gap|slit|opening left|to|at, <swell> .. met in the middle, <swell> ..
        meet|meets|touching|touch in the middle|each|over, ballooned .. no gap|slit|opening|way, no gap|slit ..
        see|look through .. <swell>|ballooned|puffed, lids .. ballooned .. no|cant|cannot|nothing ..
        see|look|through|out, <eye> .. disappeared|vanished, not even a slit, down to a slit, just|only|barely a
        slit, <eye> .. slit, slits for eyes, <eye> .. slits, cant find my eye{s/}, where my eye .. used to|should,
        <eye> .. swallowed by, <eye> .. buried in|under, <swell> so far .. <eye> .. gone, lids .. meet|met|touching
        .. swell{ing}|swollen|puffed, swell close, swell finish .. open, closed from|by|with swelling, completely
        closed .. swelling, shut from|with swelling, swollen|swelled|puffed|swole|swoll|puffy|swelling ..
        shut|closed|close, so swollen .. cant|barely|wont .. open|see, <swell> so much .. cant|wont .. open, <swell>
        .. cant .. open, shut .. swelling, <swell> .. cant|cannot|barely|hardly lift|raise|part|move it|them|the|my?
        <eye>?, <swell> .. only|just .. lash|lashes .. visible|showing|sticking, <eye> .. swallowed|eaten .. <swell>
    """,
    "hives!": """
        all over hives, hives all over, hives everywhere, hives everywhere belly|legs|arms, hives from|scalp|head
        to|down toes|toe|feet, covered in hives, hives .. scalp|head to toes|toe, pantal all over, like|as|in
        nettles|nettle .. head|scalp|neck|crown|ears .. toe|toes|foot|feet|ankles|soles, body don scatter|swell|rise
        .. swellings|lumps|bumps|rashes|balls, whole|all body|skin ..
        swellings|lumps|rashes|weals|wheals|whelps|blotches, swellings|lumps|bumps|weals|rashes .. head|neck
        reach|reaching|to leg|legs|foot|feet|toe|toes|waist, isnt|not|aint|wasnt a|an|one|single
        clear|normal|smooth|clean|free|bare inch|bit|patch|spot|square on|of|left,
        blotches|weals|wheals|whelps|swellings .. across|over|down|up my?
        back|belly|tummy|thighs|legs|arms|chest|body|stomach, weals|weal|whelps|wheals ..
        hairline|scalp|neck|face|head|ears .. down|to|toes|feet|ankles|knees, covered in raised weals|wheals|whelps,
        come|came|coming out|up in|with .. <wealy> .. head to|everywhere, lumps|hives|welts|weals|wheals|bumps
        head|front|top to|and foot|toe|back|bottom, weals|wheals|welts front and back, nettle-sting lumps, nettle
        sting lumps, broke out .. urticaria, inch of me .. hive{s/}|welt{s/}|rash|bump{s/}|red|itchy, not 1|one|an
        inch .. hive{s/}|welt{s/}|bump{s/}, hive{s/} .. on every|each, hives .. even|including,
        rash|bumps|spots|welts|blotches|hives|lumps|nettle|itch over|across|covering|round|around|on the|my
        whole|entire|full|all? body|torso|trunk, wheals|weals|whelps|welts ..
        limb{s/}|everywhere|all|body|arms|legs, raised wheals|weals|whelps, every limb, on every limb, head to foot,
        top to toe, top to bottom .. hives|welts|rash|itch{ing/y}, soles of my feet, palms and soles, hives ..
        soles|feet|hands|palms|scalp, neck to ankles|knees, hives .. spread .. arms|body|legs|chest|tummy|stomach,
        rolled in|through nettles, in nettles naked, like .. stinging nettles all, nettle rash all, all over my
        body|skin .. itch{es/y/ing}|red|burn{ing/s}, all over my body, blotches|hives|welts|bumps|lumps|rash|spots
        everywhere, blotches|hives|welts|bumps|lumps|rash|spots .. all
        over|body|back|arms|legs|chest|belly|stomach|neck|torso|tummy, blotchy all over, covered head to toe, itchy
        lumps all over, red all over my body, whole body .. red|itchy|hives|rash|bumps|lumps|blotchy|welts|spots,
        body .. itchy, hives|welts|welt|urticaria|rash .. all|whole over|body, hives|welts|rash .. everywhere,
        covered in|with .. hives|welts|rash|bumps|spots, head to toe, hives ..
        arms|chest|belly|stomach|legs|back|torso|trunk|neck|tummy, rash|bumps|itchy .. whole|entire body, rash ..
        arms|chest|belly|stomach|legs|back|torso|trunk|body, itchy all over, itching all over, welts ..
        arms|chest|belly|stomach|legs|back|torso|neck, hives spreading, rash .. spreading down, bumps .. all over
        my? body|arms|chest, broke|broken|breaking out .. all over, body .. hives|welts, inch of me without ..
        hive{s/}|welt{s/}|rash|bump{s/}|spot{s/}|blotch, one|1|single? inch .. without ..
        hive{s/}|welt{s/}|bump{s/}, nowhere on me .. hive{s/}|itch{y/ing}|welt{s/}, everywhere .. itch{es/ing/y}
        and? hives|welts|blotches, hives .. all the way|down|up|round|around to|my ..
        legs|arms|feet|back|neck|tummy|stomach, like a human strawberry|dalmatian|pizza, dot to dot ..
        body|arms|legs|skin, hives|welts|wheals .. spreading|multiplying|growing by|fast|quickly|rapidly|everywhere
    """,
    "faint!": """
        everything|everythings|world|worlds|walls|floor|floors|room|ground|kitchen|street
        is|was|keeps|kept|started|starts?
        tilting|tipping|spinning|swaying|whirling|lurching|revolving|rocking|pitching, went|gone|going all?
        grey|green|white|pale and floppy|limp|clammy|sweaty|shaky, legs went .. hit, legs went|go|gone and i
        hit|was|am|ended, everything|everythings|world|all|room|it goes|went|going|gone|turns|turned
        black|dark|grey|gray|blank when|if|whenever|as|every|each time? i
        stand|stood|get|got|sit|sat|rise|move|bend|walk|try|tried, knee{s/}|leg{s/}
        turned|turning|turn|went|go|gone|going|are|is|were|felt|feel to|like|all?
        jelly|water|rubber|noodles|spaghetti|string|cotton|sponge|mush|custard|blancmange, rooms
        still|keeps|wont|is? spinning|tilting|swaying, rooms? still spinning,
        someone|somebody|stranger|strangers|lady|man|nurse|they|shes|hes has|have|had|got|put|propped|lifted my
        feet|legs up, caught me .. second|third|before i time|hit|fell|went, drifting off mid sentence|conversation,
        mid sentence .. drifting, big spin out, spun out .. at|in, lie|lay|lying|laid down? on the
        bathroom|kitchen|cold|hall floor|tiles twice|again|because|before|since,
        slid|slumped|toppled|crumpled|keeled|collapsed off|down|out|from .. chair|seat|stool|sofa|couch,
        went|gone|going|turned|shes|hes|im as? white|pale|grey|gray as a? sheet|ghost|paper|wall|chalk|putty, wont
        wake|rouse|respond, wont come round|around, cant|couldnt|unable wake|rouse her|him|them, not
        waking|rousing|responding, wont respond|answer properly, unresponsive, she|he|shes|hes not|isnt
        really|quite|fully|properly? with it, in and out of it|consciousness, shes|hes out of it, drifting in and
        out, drifting off mid, keep|keeps|kept going under|blank|black, somebodys|someones|somebody|someone ..
        switching|switched|turning|turned|pulling me off|out|plug, going under like, crumpled|slumped
        on|onto|in|against|over, hit the lino|tiles|carpet|floor|pavement, out cold, dropped in the
        kitchen|hall|bathroom|shower|shop, woke|woken|wake|came|coming|come up|to|round|around .. on ..
        floor|ground|tiles|carpet|pavement, came|come round|around|to on|with|in|and|to, went down like, went down
        in, hit my head when i, on the floor .. minute{s/}, found me on .. floor, legs went|gone|go .. from under,
        legs from under, room{s/} .. going|goes|went on me, went over in, keeled, on the deck, sparked out, going
        faint, gone faint, came over all, half fainted, greyed out, blacked, floor came up, lights went out|off ..
        came|woke|floor, sack of spuds|potatoes, feel swimmy, felt swimmy, feeling swimmy, room .. sideways, room ..
        tilt{ed/ing/s}, hit the deck, feet up on, put my feet up on, head rush, saw stars, had to lie down|on, lie
        on .. floor, lying on .. floor, everything went, see stars when, clammy, nearly hit the floor, hit the
        floor, nearly hit the deck, fell down, almost fell over, nearly fell over, cant stand up, cant stay upright,
        legs went, keel over, wobbly legs, legs wobbly, fainted|collapsed .. going again, passed out .. going again,
        going again .. faint|collapse, lost|lose|losing|loosing the|my? conscience|consciousness|senses|knowledge,
        fallen|fell in|to the? apples, fallen|fell two|2|three|3 times in|on|at, passed|blacked out at
        work|school|home|church|college|gym|till|checkout|desk|lunch this|yesterday|today|again|on|and, legs feel
        weak, about to go down, went white, gone white as, ears ringing and, vision went black, world spinning,
        everything spinning, spinning when i stand, went lightheaded, came over funny|faint|dizzy|queer, feeling
        wobbly, greying out, graying out, fainting on, fell over dizzy, almost fell, legs .. gave, room .. going
        round, room went, head .. swimming, swimmy, unsteady, giddy, feeling faint, light in the head, all fuzzy in
        the head, seeing stars when i stand, floaty, faint, fainted, fainting, fainty, faints, passed out, passing
        out, pass out, passin out, blacked out, blacking out, black out, lightheaded, light headed, light head,
        lightheadedness, dizzy, dizziness, dizzier, woozy, syncope, syncopal, presyncope, presyncopal, near syncope,
        collapsed, collapse, collapsing, going to faint, feel faint, room .. spinning, head .. spinning, about to
        drop, keeling over, keeled over, swooning, lost consciousness, unconscious, knees .. buckled|buckling, gone
        clammy, cold sweat, nearly went down, legs .. jelly, gonna pass, wobbly,
        grab|grabbed|grabbing|cling|clinging|hold|holding|clutch|clutching ..
        banister|bannister|rail|railing|railings|doorframe|sink|worktop|sideboard|lamppost|counter, keep
        nearly|almost going|falling|toppling|dropping|keeling over|down?, nearly|almost keeled|toppled|hit|went
        over|deck|floor|down, ears .. ringing .. clammy|floor|black|grey|gray|dizzy|faint, clammy ..
        ringing|black|grey|gray|floor|dizzy|faint, legs .. from under me, legs .. go|went|gone ..
        floor|ground|spaghetti|noodles
    """,
    "injury!": """
        gouged|gouge|scratched|clawed|poked|jabbed|cut|stabbed|nicked the|my|an|me eyeball|cornea,
        caught|jabbed|poked|hit|elbowed .. <eye> .. with .. spoolie|wand|brush|comb|scissors|tweezers, caught the
        eyeball|eye with, visible cut|scratch|gash on|across, scissors .. went in|into, elbowed ..
        scissors|tweezers, sharp .. gone|went|going|go into|in|inside .. <eye>, gone in|into my? .. eye not on, in
        it not on it, not on it in it, gone into my eyeball, sliced|slashed|scratched|clawed|gouged|cut|caught ..
        across .. <eye>|bit|iris|part|pupil, coloured|colored part|bit, across .. coloured|colored, the iris, my
        iris, nail|nails|claw|paw|finger|fingernail|branch|zip .. sliced|slashed|scratched|gouged|ripped ..
        <eye>|me, speared|skewered|impaled|harpooned .. <eye>, <eye> .. speared|skewered|impaled, splinter .. <eye>,
        stuck .. through .. <eye>|eyeball, clean through .. <eye>|eyeball, right through .. <eye>|eyeball, sticking
        out of .. <eye>, sticking out my <eye>, see it sticking out, gash .. <eye>, cut on .. <eye>|eyeball, cut in
        .. eyeball, hole in .. <eye>, jelly .. out, leaking jelly, something punctured, tweezers went into, tweezers
        .. went into .. <eye>, pierced the|my|right|left <eye>, scratch on .. eyeball|eye, something sharp pierced,
        sharp .. pierced, finger|nail|stick|twig|branch|brush|spoolie|wand|key|ball|elbow|claw|paw|toy ..
        in|into|right .. white|eyeball, went into the white, into the white part|of, poked .. in|into the white,
        finger|nail|twig|branch|stick|spoolie|wand|claw|elbow .. <eye> .. blood|bleeding, <eye> .. and theres|there
        blood, poked .. <eye> .. bleeding, <eye> .. bleeding|bleeds|bled, bled .. <eye>, impaled, scratched .. when
        .. tweezer{s/}, caught .. with .. tweezer{s/}|scissor{s/}, tweezed .. eye, poked .. eye .. blood, scratched
        .. cornea|eyeball|eye, corneal abrasion, abrasion, cut my .. <eye>, cut .. eyeball|eyelid, <eye> .. cut,
        <eye> .. pierced, pierced .. <eye>, stabbed .. <eye>, tweezer{s/} .. in|into .. <eye>, tweezer{s/} ..
        poked|jabbed|stabbed|scratched|hit|slipped, poked|jabbed|stabbed|scratched|nicked|gouged .. with ..
        tweezer{s/}, punctured .. <eye>, <eye> .. punctured|torn|ripped|scratched|injured|gashed|sliced, injured ..
        <eye>, eye injury, scissor{s/} .. <eye>, <eye> .. bleeding, tore .. eyelid, ulcer .. <eye>, corneal ulcer,
        corneal, lash .. gone into .. eyeball, cut|nick|slice|tear|hole|gash|graze|scratch .. on|in|across ..
        white|eyeball|cornea|iris of?, pierced|punctured|sliced|slit|tore|torn|ripped ..
        eyeball|cornea|lid|eyelid|white, gone|went|going|right|straight|clean|stuck|poked|stabbed through my|the?
        eyelid|lid|eye|eyeball
    """,
    "bulging!": """
        eye|eyeball is? sticks|stick|standing|sticking|stands|bulges|poking|pushed|pushing|shoved out ..
        further|from|more|than, eye|eyeball feels|is|looks shoved|pushed|forced|pressed out|forward, shoved|pushed
        out from behind, <eye> .. stick|sticks|sticking out .. than its|the|my other|twin|right|left, eyeball|eye ..
        sticking|stick|sticks|popping|pops|pushed|pushing|bulging|bulges|bugging .. out|forward, eyeball{s/} ..
        bulgin, bulgin, <eye> .. protrud{es/ing/ed}, protruding, <eye> .. forward, eye .. like a frog|pug, goggle
        eyed, <eye> .. coming out, <eye> .. out of its|my head, eye .. sticking out further, sticking out further
        than, sticking out more than, eye .. sticks|stick|stuck out, sticks out more, pushed forward, pushed out,
        bulges, bulges out, bug eyed, popping out .. socket, coming out of .. socket, eye|eyes|eyeball|eyeballs ..
        bulging, bulging eye|eyes|eyeball|eyeballs, <eye> .. sticking|popping|poking|bugging out, proptosis, bulging
        out
    """,
    "pupil!": """
        black dot|hole|bit|circle|spot in|of one|my|the .. eye|eyes wont|doesnt|isnt
        shrink|shrinking|react|shrinking|close|move|change, black dot|circle|bit .. eye|eyes .. wont|doesnt shrink,
        black bit|part|dot|hole|middle|centre|center ..
        twice|double|bigger|larger|wider|wide|huge|massive|size|saucer, black|dark bit|part|dot|circle|middle in|of
        .. eye .. other, one|left|right .. dilated .. other, <eye> dilated, black of .. <eye> ..
        bigger|huge|larger|big|enormous|giant, black|dark hole|centre|center|middle .. <eye> .. bigger|huge|larger,
        middle of .. eye .. bigger|huge|larger, black circle .. bigger|larger|huge|size|big, black circle in the
        middle, black part .. bigger|larger|huge, black bit .. bigger|larger|huge, black dot .. bigger|larger, pupil
        .. saucer{s/}|pinhead|pinprick|pinpoint, pupil, pupils, pupil .. ..
        bigger|larger|huge|blown|dilated|different|wider|smaller|size|other, pupils .. .. different|size|same|match,
        pupil .. bigger|larger|huge|blown|dilated|different|size|smaller|wide, pupils ..
        different|uneven|unequal|size{s/}|match|same|mismatched|bigger, one pupil, anisocoria, unequal pupils, blown
        pupil, mismatched pupils, uneven pupils, pupils dont match
    """,
    "hospital!": """
        in resus, ambulance .. coming|here|way|called|sent, paramedic{s/}, in a&e, at a&e, off to casualty, eye
        casualty, taking me to .. er|a&e|hospital|emergency|casualty, drove me to .. er|a&e|hospital, at the er, in
        the er, urgent care, minor injuries, epi pen, epipen, adrenaline pen, used .. epi, called 911, called 999,
        called ambulance, in an ambulance, ambulance is, heading to .. er|hospital|emergency, going to ..
        er|hospital, on my way to .. er|hospital|a&e|casualty, im in|at .. er|hospital|a&e|urgent, off to a & e, off
        to .. er|hospital
    """,
    "agony": """
        easily a 9|10|nine|ten, a 9|nine and a half, is a 9|10|nine|ten out, at a level i ..
        describe|explain|known|had, want it out, want my eye out, rip my? eye|it out, out of my head, biting
        a|my|the|into towel|pillow|hand|lip, on the bathroom|kitchen|bedroom floor, id take
        that|those|them|labour|childbirth over, i would|id|rather take all|that|them|labour|any .. over, rather give
        birth|have another baby, worse than birth|labour|labor|childbirth|kidney|any, pain in|is|so|that so? that?
        bad i|that|ive, pain in my eye|left|right|lid|lids|eyes eye? is? so|that bad, hurts|hurting|hurt so
        bad|badly that|i cant|threw|want, aches so bad|badly i, so much|bad .. been|being|am|was sick,
        been|being|was sick with|from the? pain, vomiting, throwing up, vomited, codeine, morphine, nothing touches
        it, nothing touching it, wont touch it, through the roof, off the charts, on the floor, brought me to my
        knees, throw up, threw up, crying in my car, cant even open|think|function|look|move|talk, cant sleep,
        cannot sleep, couldnt sleep, couldnt sleep all night, no sleep, up all night, kept me up, woke me up crying,
        in tears, crying, cried, sobbing, screaming, scream, bawling, shaking, cant think, cant function, cant
        concentrate, cant stand up, cant bear, cannot bear, painkillers .. nothing, painkillers
        dont|arent|didnt|havent, ibuprofen .. nothing|dont|isnt|doesnt|not|aint, advil ..
        nothing|dont|isnt|doesnt|not|aint, tylenol .. nothing|dont|isnt|doesnt|not|aint, paracetamol ..
        nothing|doesnt|isnt|not, unrelieved by, nurofen .. nothing|doesnt|isnt|not, meds .. nothing|doesnt|dont|not
        working, really really bad, so so bad, so much i cant, so bad i cant, so bad that, worst, unbearable,
        severe, excruciating, out of my mind, climbing the walls, cant take, doubled over, vomiting from, sick with
        pain, 10/10, 9/10, 8/10, 10 out of 10, 9 out of 10, 8 out of 10, ten out of ten, nine out of ten, cant open
        .. from, knives, knife, ice pick, ice picks, needles in my eye, stabbing, hammer
    """,
}
