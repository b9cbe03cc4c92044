"""English signs told without the sign's name: what she does about it, what others say of it, what it is likened to.

"Sitting on my hands", "through a whole box of tissues", "my lids arrived before I did": crossed from classes of words,
as in `english_frames`. How phrases are written: `aftercare.core.reading.phrases`.
"""

from __future__ import annotations

from aftercare.core.reading.words.spread import spread

_WORDS = {
    "lid": "lid lids eyelid eyelids",
    "lidbit": "eye eyes eyeball eyeballs lid lids eyelid eyelids corner corners lash lashes eyelash eyelashes",
    "scratcher": """
        nail nails knuckle knuckles finger fingers fingertips fist fists hand sleeve pencil brush hairbrush fork comb
        wand spoolie toothbrush sandpaper
    """,
    "tissue": "tissue tissues hankie hanky hankies kleenex roll rolls napkin napkins",
    "cosmetic": "mascara makeup eyeliner liner concealer foundation contour blush blusher",
    "cloth": "pad pads bud buds wool tissue tissues flannel washcloth pillow pillowcase towel wipe wipes",
    "paste": """
        cornflakes custard porridge icing glaze glazed toffee wax candlewax pva marmalade treacle syrup parmesan
        crispies cheese oatmeal jam honey batter
    """,
    "tinted": "sunglasses shades sunnies sunnys raybans",
    "gloom": "night nighttime dark darkness cloudy overcast dull raining rainy supermarket aisle kitchen candlelight",
    "reptile": """
        braille bubblewrap goosebumps gooseflesh lizard snake snakeskin crocodile alligator reptile toad turkey
        iguana dragon
    """,
    "dandruff": "snow snowing dandruff dandruffy confetti parmesan coconut cornflakes",
    "ouchy": "wince wincing winced flinch flinching flinched yelp yelping yelped ouch ow oww aah aargh yowch eek swear",
    "touch": "blink blinks blinking touch touched touching press pressed pressing wash washed washing laugh sneeze smile",
    "thump": "thumped walloped clobbered elbowed kicked headbutted whacked decked kneed bashed clocked belted",
    "site": "sandpit quarry desert sahara beach ashtray sawmill litter hoover bag mixer",
    "liketo": "want wants wanted trying tries tryin keen determined keeps keep insists loves",
    "duel": "fencing duelling dueling jousting wrestling fighting arguing sparring boxing",
    "strop": "tantrum strop meltdown paddy wobbly hissy hissyfit sulk mare nightmare",
    "whinge": "complaining protesting grumbling whinging whingeing moaning objecting sulking rebelling",
    "ointment": "ralgex voltarol bengay vicks vaporub ibuleve radox",
    "cured": "salami pepperoni pastrami prosciutto paprika sunset sunsets rosé rose merlot beetroots corned",
}

_DOINGS = {
    "itching": """
        glasses|specs|contacts off|out to have|give|rub|scratch .. rub|scratch|them|eyes, been at my|the|both
        left|right? eye|eyes|lid|lids since|all|with|like|again, touching|at my|the lids|eyelids they|and|it
        drive|drives|driving, hands in my|me pockets .. eyes|eye|lids|alone, got|have|had|like|full|crawling
        of|with|got? fleas, woolly|wool|woollen|itchy|scratchy hat|jumper|scarf|blanket|glove .. <eye>,
        rubbed|scratched half|all|most|off my|the makeup|eyeshadow|eyeliner|shadow|concealer off,
        catching|catch|caught myself|me|meself at|rubbing|scratching my|the? eyes|eye|lids|it, raw from
        rubbing|scratching|clawing, gloves|mitts|mittens|socks on|to .. so i dont|cant|wont,
        telling|tells|told|tell|nagging|nags|shouting|shouts|yelling at|me|us me? to? stop|quit
        rubbing|scratching|itching|clawing, mid scratch|rub|rubbing, could|want|wanna|gonna|about|ready to?
        tear|rip|claw|gouge|scratch my eyes|eyeballs|eyelids|lids out|off,
        bug|bugs|spider|spiders|insects|insect|beetles|worms|worm|crawlies|something
        walking|crawling|marching|running|dancing|creeping in|on|along|across|under|over|inside my|me|the
        lash|lashes|lid|lids|eye|eyes, cant|couldnt leave|let my|me|the|both left|right? eye|eyes|lid|lids alone|be,
        press|pressing|push|pushing|rub|rubbing on|at|against|around? my|the left|right? <eye> .. relief|ease,
        constant|constantly|endless|nonstop|urge|desperate|need to? rub|rubbing|scratch|scratching it|them|my|at|is,
        dey scratch|itch my|me|d|the? eye|eyes|lid|lids, itching|itchin|itchy|itched for
        an|a|about|nearly|over|one|two|2|3|three|half|hours|days|ages|weeks|like?
        hour|hours|minutes|mins|min|day|days|bit|while|ages|week|weeks|now|solid, at it|them|em|these with
        my|me|the|a <scratcher>, sit|sitting|sat on my|me hands, stop me|myself|meself
        rubbing|scratching|clawing|picking|itching, go|goes|going|went|gone for|at my|the|both|me
        left|right|upper|top? eye|eyes|lid|lids|eyelid|eyelids with|like|all|again|in, i go|went for my|the|both
        left|right? eye|eyes|lid|lids|eyelids, wouldnt|dont|cant|didnt go for the|my|both left|right?
        eye|eyes|lid|lids,
        slap|slaps|slapping|smack|smacks|smacking|swat|swatting|bat|batting|knock|knocking|pull|pulls|pulling|take|takes
        my|me hand|hands|fingers away|off|down .. <eye>, sock|socks|mitten|mittens|oven over|on my|me hand|hands,
        jumper|sweater|blanket|scarf .. on|over|across my|me|the? <eye>, rubbing|scratching|clawing
        my|me|the|em|them? <eye>? all night|day|shift|evening|week|morning, rubbing|scratching|clawing
        constantly|nonstop|nightly|endlessly|continuously, <lid>|eye .. begging|crying|screaming|desperate|asking
        for it|one|a|that, wanting|wanna|itching|tempted|dying to rub|scratch|claw|scrub these|them|my|at|the|it,
        mozzie|mozzies|mosquito|mosquitoes|midge|midges|midgie|gnat|gnats|flea|fleas .. <eye>, <eye> ..
        mozzie|mozzies|mosquito|mosquitoes|midge|midges|midgie|gnats|flea|fleas, lash line|lines
        tickle|tickles|tickling|crawls|crawling, worrying|worry|fiddling|picking|faffing at with my|a
        finger|fingers|nail|nails, keep|keeps|always|constantly worrying at, cut|filed|bitten|trimmed short ..
        damage|scratch|lids|eyes, quit|stop scratching|rubbing my|me|at, back of my hand|hands .. eyes|eye|lids,
        <lid> .. cow on|against a post|fence, scratching .. <lid>, hairbrush|fork|comb|grater|scourer
        on|over|across|to my <lid>|eyes
    """,
    "redness": """
        rudolph|rudolf|robins|lobsters .. <eye>, been|out|was on the? lash|razz|razzle|bender|bevvy|piss|tiles|town
        .. eyes|eye|look|<isnt>, asked|asks|thinks|think|thought .. hungover|hanging|hanging? wasted|drunk ..
        eyes|eye|look, look|looks|looking|feel like the|a|an? terminator|dracula|satan|devil|beetlejuice|darth,
        <eye> like|of the|a|an? devil|satan|terminator|dracula|beetlejuice, <eye> .. same|matching|exact
        colour|color|shade as, direct|guide|stop|land|control traffic|planes|ships|aircraft with|by my|these|them
        <eye>, eye|eyes|lid|lids|left|right one? match|matches|matching|matched my|me|the
        lippy|lipstick|nails|hair|blusher|wine|ketchup,
        thought|thinks|think|reckons|reckon|assumed|asked|asks|convinced if? i|id|im was|am|were|been|be|had? been?
        high|stoned|baked|smoking|toking|blazing|wasted, i look|looked|looking so|well|proper|dead?
        stoned|baked|wasted, before photo|picture|pic|shot .. eyedrop|eyedrops|drops|visine|optrex,
        eyedrop|visine|optrex ad|advert|commercial|box|model, color|colour|shade|hue of an?|the?
        stop|brake|traffic|fire|pillar|post|letter|phone|emergency
        sign|light|lights|engine|box|truck|extinguisher|exit, eye|eyes|lids|mine|both look|looks|looking|are|is|like
        like? a|an|some? <cured>, eye|eyes|one|left|right is|are|gone|going|all|one? ketchup, white|whites .. <eye>?
        .. gone? like watermelon|salami|ham|bacon, rabbit|bunny for a day|night|bit|while, like a|an rabbit|bunny
        for|all|since
    """,
    "swelling": """
        <lid> .. pressing|weighing|hanging down|on, <lid> .. full of water|fluid|air, through
        two|2|tiny|narrow|little? slits, like two? slits, glasses|specs|shades|goggles is|are?
        sitting|resting|perched|sat|sit on my|me|the lids|eyelids|cheeks|swelling|puff, cant|couldnt
        get|put|do|draw|fit|apply my|any|me? eyeliner|liner|eyeshadow|shadow .. room|lid|space|crease,
        older|rough|tired with|from these bags, <eye> is|are hiding|buried|hidden|disappearing|disappeared|lost|sunk
        in|behind|under|somewhere?, <eye> .. like slits, shiny|tight and? tight|shiny|stretched lids|eyelids, golf
        ball|egg|plum|grape where|instead .. <eye>, cant|couldnt|barely|hardly see|find my|the|any|a eyelid|lid?
        crease|creases|fold, look|looks|looking|looked like the|a|an?
        quasimodo|sloth|shrek|gollum|tyson|rocky|fury|mumps|bruno, rounds with mike|tyson|ali|rocky|bruno|fury, fit
        my|the left|right? eye|lid|eyes|lids in|into|behind|under my|the? glasses|goggles|specs|shades,
        left|right|one|that|this eye|lid looks|is|seems|gone|got|look visibly|noticeably|way|much|a|so? bit|lot?
        smaller|tinier|littler|shut, <eye> .. blow|blows|blowing|puff|puffs|swell|swells up
        again|overnight|every|each|by, lids|lid|eyes for eyelids|lids,
        bring|bringing|get|getting|take|taking|shrink|shrinking|deflate|deflating my|me|the|these <lid>|bags
        down|back|in, hasnt|havent|didnt|isnt|arent|<isnt> shrunk|shrink|shrinking|deflated|deflate|deflating
        it|them|the|my|at|one?, <eye> .. no smaller|flatter|slimmer|thinner, look .. with|from these|my|me bags,
        these bags|eyebags and|under|are|have|on, <lid> .. pressing|pushing|touching|hitting|squashed|rubbing ..
        lens|lenses|glasses|specs|frames, glasses|specs|frames .. fit .. <lid>, could
        rest|balance|stand|sit|put|serve|park|perch .. on my|me|these|the left|right? <lid>, <lid>
        arrived|arrive|arrives|enter|enters|entered|came .. before i|me|the|my, <lid> .. before the rest of,
        marshmallows|dumplings|cushions|pillows|balloons|sausages|teabags for <eye>, <lid> .. hang|hangs|hanging
        heavy|low|thick|fat, been|be|got|getting in a|the|some bar|pub? scrap|fight|brawl|punchup|ring|wars|scuffle
        .. eye|side|night|lid, <eye> .. pumped|inflated up|like, lids|lid|eyes .. no lid left, no lid|eyelid
        left|showing|visible, <lid> .. twice what, twice what they|it was|were|is, <lid> .. gone|blown|pumped|puffed
        up and|overnight|again, <lid> .. down like|as a? shutter|shutters|awning|blind|garage
    """,
    "watering": """
        gone|been|going|getting|got|went|go through|thru .. tissues|kleenex|hankies|loo|toilet|kitchen,
        crying|tearing|weeping|tears without|for|with no|crying|a|being|feeling?
        reason|crying|sad|cause|sadness|anything, niagara falls, tear tracks|trails|stains|streaks, floodgates
        open|opened|wont|are, <eye> ..
        niagara|waterfall|waterfalls|fountain|river|rivers|geyser|sprinkler|sprinklers|taps, cant|couldnt stop
        wiping|dabbing|mopping|blotting, forever|always|nonstop wiping|dabbing|mopping|blotting my|me|at,
        soaked|soaking|drenched|wet|damp|sodden|soggy from|with|off my|the left|right? eye|eyes,
        wet|damp|soggy|drippy face|cheeks all|constantly|since|nonstop|24,
        mask|pillow|collar|sleeve|sleeves|cuffs|scarf|pillowcase .. soaked|wet|damp|drenched|sodden ..
        eyes|eye|tears, my|me|the left|right eye|one's|ones leaking|running|streaming,
        through|thru|on|got|used|using|a|whole|entire|second|third box|pack|packet|roll of?
        tissues|kleenex|hankies|loo|bog|kitchen, only|just|do|they|still|eyes|eye|both|always|and water
        at|in|when|every|all|each|once|whenever|outside|from, roll|box|pack|packet a|per day|hour|night,
        loo|bog|toilet|kitchen roll .. dab|dabbing|eyes|eye|mopping|blotting, <tissue> up|in my|me sleeve|bra,
        dabbing|mopping|blotting at? away|constantly|nonstop|since|every|like|all|them|my|me|it
        since|all|like|every|day|eyes|eye|left|right, for|from|with dabbing|mopping, cheek|cheeks|face ..
        permanent|permanently|constant|constantly|always|forever .. wet|damp|soaked|soggy|track|tracks|trail,
        permanent|constant|permanently|constantly|always wet|damp|soggy cheek|cheeks|face|track|trail|patch,
        drier|dryer cheeks|face|eyes than, tap|taps|hose|sprinkler|sprinklers|waterworks on|running|left .. <eye>,
        left .. taps|tap|hose on|running .. <eye>, eye|eyes|left|right|one|lids
        has|have|is|are|keeps|keep|been|wont|started been|stop? raining|drizzling|pouring|monsoon, rain
        inside|within|indoors|from my, eye|eyes|left|right|one .. having a wee|good|little|quiet|private|secret?
        cry|weep|sob|blub, cry|weep|sob|blub without me, cant|wont|couldnt keep any|my|me|a? <cosmetic> on,
        <cosmetic> .. floats|floating|slides|sliding|washes|washing|melts|streaming|running .. down|off, <cosmetic>
        .. down my|me|both cheek|cheeks|face, <cosmetic> gone|off|washed by|before lunch|noon|dinner|break|ten|nine,
        they run|stream|leak|weep|flow every|each|all|nonstop|constantly|nightly, peeling|peel onions would,
        eyes|eye wont quit|stop, <eye> .. bathing themselves|itself|me, watery .. yday|yesterday
    """,
    "discharge": """
        pulling|pull|pulled|dragging|drag strings|string|strands|threads|goo|gunk|bits|slime out of|from my|me|the
        left|right? eye|eyes|corner|corners, glue|pva|paste in|on|at the|my corner|corners,
        clumped|matted|caked|stuck|clagged with|by|from gunk|goo|crust|crusts|muck|gunge|sleep|goop|yellow,
        bathe|bathing|soak|soaking|steam|wash|washing|prise|sponge|sponging my|me|the|both left|right?
        eye|eyes|lid|lids|lashes open|apart,
        picking|pick|scraping|scrape|flicking|flick|peeling|wiping|digging|hoiking it|them|bits|stuff|sleep|gunk|goo
        out|off|from .. corner|corners|lash|lashes, corner|corners ..
        fill|fills|filling|full|packed|clogged|caked|gummed|bunged ..
        gloop|goo|gunk|gunge|goop|stuff|sticky|again|up, gloop|gloopy, <paste> on|in|along|round|around|over
        my|me|the|both|each left|right|upper|bottom|inner? <lidbit>, <eye>|corner ..
        making|makes|brewing|producing|growing|manufacturing .. <paste>, lash|lashes|eyelash|eyelashes|eye|eyes ..
        stiff|crunchy|crispy|caked|clagged|gummed|matted ..
        dried|gunk|goo|stuff|crust|morning|mornings|yellow|gloop, stiff as a? paintbrush|board|cardboard|bristle ..
        dried|stuff|gunk|morning|wake, yellow|green|white|brown and|n stuck|sticky|crusty|hard|crispy|stringy,
        <cloth> came|comes|is|went|gone|coming|turns|turned away|off|out|up|back?
        yellow|green|brown|gunky|mucky|gooey|slimy|sticky, dried stuff|bits|gunk|yellow ..
        lash|lashes|morning|eye|eyes, sticky|gooey|slimy|stringy|claggy|tacky|yellow|green|white
        stuff|bits|goo|mess|gunk|goop|threads|gloop
        on|in|from|out|along|round|around|is|are|keeps|every|each|again|back, what|stuff|whatever|gunk
        comes|coming|came|keeps coming? out|from of? my|me|the left|right? <lidbit>, yellow|white|green
        bits|flakes|lumps|crumbs|dots on|in|from|all|it .. pillow|pillowcase|eye|eyes|lash|lashes, off in
        yellow|green|white lumps|bits|flakes, unstick|unsticking|soak|soaking|prise|peel my|me|the|both left|right?
        lashes|lash|eyelashes, sticky|stuck|glued|gummy|crusty in the mornings|morning
    """,
    "light": """
        shut|closed in|from|against the? sun|light|daylight|glare|brightness, squint|squinting|squinted
        all|the|driving|outside|home|constantly|in whole? way|time|day|home|sun|light?, bright|lit|sunny
        rooms|shops|places|light|lights|days .. no go|nightmare|hell|killer|torture|issue|problem,
        sunglasses|shades|sunnies|glasses .. november|december|january|february|winter|snowing, cant|couldnt|wont
        go|be|step|walk|stand out|outside|outdoors without my|me? sunglasses|shades|sunnies,
        laptop|phone|screen|telly|tv|monitor is|are|was hurting|killing|burning|stabbing my|me eyes|eye,
        lowest|dimmest|minimum|dimmed|nightmode .. too much|bright|strong|harsh, <lightsrc> .. is|are|was|were too
        much for|to, cap|hat|hood|visor on? indoors|inside, <lightsrc> .. make|makes|making|made
        my|me|the|both|them? eyes|eye|lids hurt|ache|aching|sore|sting|water|stream|cry|run, dark|tinted|black
        glasses|specs|lenses .. <indoors>|<gloom>, <tinted> .. <gloom>, <gloom> .. <tinted>, <tinted>|glasses on ..
        at|by night|teatime|midnight|8|9|10|7, needed|need|needing|wearing|wore|live|living my|me|in|the? <tinted>
        indoors|inside|in|round|around house|kitchen|office|work|the|supermarket,
        phone|screen|laptop|telly|tv|brightness|it .. turn|turned|turning|had .. right|all|way down .. bright,
        had|have to turn my|me|the phone|screen|laptop|telly|tv|brightness|monitor|lights|light right|all|way?
        down|off, <eye> screwed|scrunched|squinched|creased up|tight|shut|closed|tightly, <lightsrc> ..
        made|makes|make|had|has|having me shut|close|look|turn|pull|squeeze|cover|hide, if|wish the
        sun|light|daylight would|could|just go|clear|do|hide|sod, hand over my|me|one|the left|right? eye|eyes ..
        glare|screen|light|sun|lamp|bright, fingers .. too|so|just bright, candle|candles|fairy|christmas .. too
        much for, flinch|flinched|flinching|wince|winced at|from my|me|the|any
        phone|light|lights|screen|lamp|sun|window|daylight, could <isnt>|couldnt look at|toward|towards the|any|a
        sun|light|lamp|lights|window|screen|daylight
    """,
    "gritty": """
        blink|blinks|blinking over|on|across|through broken? glass|gravel|sand|grit|sandpaper|glass,
        flour|talc|chalk|ash|sugar|salt|gravel|dust thrown? in|into|under|behind my|me|the|both|it|them left|right?
        <eye>, like .. sandstorm|duststorm, contact|contacts|lens|lenses is|are|were|went|in? inside
        out|outside|backwards <eye> .. <site>, slept|lying|lay|rolled|rolling|face|down on|in a|an|the
        building|gravel|cat <site>|site|pit|tray, building site .. <eye>, <eye> .. building site,
        soil|rubble|plaster|chalk|talc|gravel|brick .. <eye>, crumbs .. <eye>, grit came|comes|is|has|back
        back|come|in|again, dust and|n all
    """,
    "poking": """
        <pointy>|one|ones|bit|corner|end .. <liketo> .. in|into|inside|to my|me|the left|right?
        eye|eyeball|eyeballs, saying|says|say hello|hi|hiya to my|me|the left|right? <eye>, <duel> with my|me|the
        left|right? eye|eyeball|eyeballs|lid|cornea, thinks|think its|it|theyre a|an?
        <sharp>|sword|spear|dagger|javelin|lance, <eye>|corner has|got|with .. <sharp> in|on|at it|there|the,
        cactus|hedgehog|porcupine|urchin|thistle|pincushion .. <eye>|corner, felt|feel|feels|feeling
        something|sth|summat|smth in|on|at my|me|the left|right|upper|lower? <eye>
    """,
    "burning": """
        up in flames, go|goes|went up in flames|smoke, muscle|deep|heat|joint|pain rub|heat|cream|freeze|gel|balm ..
        <eye>, <eye> .. deep heat|freeze, <ointment> .. <eye>, <eye> .. <ointment>, icy hot, get|got|getting|gets
        shampoo|soap|suds|conditioner|bubbles in, match|lighter|iron|hairdryer|flame|candle|blowtorch|straighteners
        .. near|under|against|to|close .. it|them|<eye>, <eye> .. match|lighter|blowtorch|hairdryer|straighteners ..
        near|under|against|to|close|it, lash line|lines feel|feels|felt like ..
        match|lighter|fire|flame|iron|candle, hot raw, raw hot, pool|sea|swimming water|baths .. <eye>,
        set|sets|setting my|me|the? <eye> off like nettles|fire|acid|chilli, soap in them|it|both|each, <eye> like
        .. onions|soap|shampoo|chlorine|swimming
    """,
    "pain": """
        cream|mascara|makeup|drops|cleanser|water|washing|touching|blinking|wiping|anything|eyeshadow ..
        makes|made|make|making me flinch|wince|yelp|gasp|jump|cringe, cant|couldnt|unable lie|lay|rest on
        that|this|my|the bad|sore|left|right? side|eye, dare|daren't|darent|scared touch|wash|wipe|clean it|them|my,
        <ouchy> .. when|each|every|as|whenever|if|everytime .. <touch>, each|every|whenever|everytime .. <touch> ..
        <ouchy>, press|close|shut|touch .. without <ouchy>, go|goes|went|going|say|says <ouchy> .. <eye>|<touch>,
        <eye> .. wont|cant|couldnt|doesnt take|stand|bear|like|abide|want ..
        pillow|flannel|touch|touched|touching|pressure|towel|wiped|wiping, someone|somebody|something|they|he|she
        <thump> me|my|both .. <eye>|face, like i was|got|been|id|ive been? <thump> .. <eye>, <meds> ..
        <lid>|eyes|eye, <lid>|eyes|eye .. <meds>, <eye>|they|it did|do|does|really?
        <isnt>|didnt|dont|doesnt|hates|hated|hate like? being|getting touched|wiped|washed|pressed|cleaned|dabbed
    """,
    "rash": """
        <lid> .. cheese? grater|sandpaper|emery|pumice, pastry|croissant|croissants .. <lid>, <lid> ..
        pastry|croissant|croissants, pox|measles|acne|chickenpox|shingles .. <lid>|eye|eyes, <lid> ..
        chicken|chickenpox|pox|measles|acne, <lid>|skin|brow|brows .. <reptile>, <reptile> ..
        <lid>|skin|brow|brows|brow, bubble wrap .. <lid>|brow|brows|eye|eyes, <lid> .. bubble wrap, <lid> .. plucked
        chicken|turkey|goose, <lid> .. chicken skin, goose bumps|pimples|flesh on|over|across|all .. <lid>|skin,
        <lid> .. goose bumps|pimples|flesh, strawberry|elephant|rhino skin .. <lid>|eye|eyes, <lid> .. <dandruff>,
        <dandruff> .. <lid>
    """,
    "vision": """
        blink|blinking twice|hard|loads|few|several|lots|times|a? .. before|until|till|for ..
        clear|sharp|focus|read|see, blink|blinking twice|hard|loads|lots to read|see|focus|clear,
        breath|breathes|breathed|steam|condensation|grease|vaseline|fingerprint|fingerprints|smear on|over|across
        my|a|the|both? glasses|lens|lenses|specs|windscreen|window .. blink|wipe|wiped|wipes|clears,
        blink|blinks|blinking .. to get|see|for a? clear|sharp|clean picture|view|image|look,
        frosted|steamy|steamed|misted glass .. till|until|blink
    """,
    "irritated": """
        dont|no|<isnt> know|idea|sure|clue what|whats is|are|has|have|was|does?
        going|happening|happened|wrong|up|the|matter on|matter? with|to|in my|me|the|this left|right? <eye>, <eye>
        .. <isnt>|arent|isnt|aint having a|the|much good|great|best|nice|lovely|fun time|day|week|of, <eye> ..
        didnt|dont|doesnt|<isnt>|never really? like|love|agree|enjoy|appreciate|get|take|liking|loving|agreeing
        with|on|to|kindly? that|the|this|these|your|it|them|being, not having a good|great time .. <eye>, whats|what
        going|happening|wrong|up|matter on? with|to my|me left|right? <eye>, <eye>
        feel|feels|felt|feeling|are|is|look|looks so|really|just|absolutely|pretty|properly?
        awful|horrible|terrible|rotten|dreadful|grim|shocking|rough|crap|shite|shit|manky|grotty|yucky|gross|minging|vile|hideous|nasty,
        <eye> .. havent|hasnt|<isnt>|never|arent|isnt|dont|doesnt been|felt|feel|looked? the same|themselves|itself,
        <eye> .. belong|belongs to someone|somebody|another, dont look like my eyes|own,
        ice|drops|compress|visine|optrex|cream|antihistamine|antihistamines|piriton|benadryl
        isnt|arent|<isnt>|doesnt|dont|didnt|aint|wont|havent|hasnt
        making|make|made|touching|touch|touched|helping|help|helped|working|work|worked|doing|done|shifting, its|it
        all i can do not, could|gonna|wanna|want tear|rip|pull|yank|to? my lashes|eyelashes out,
        contacts|contact|lenses went|go|going straight|right? back in, lash line|lines is|are?
        driving|drives|drive|driven|doing me mad|insane|crazy|bonkers|nuts|up|round|batty|in, <eye> ..
        driving|drive|drives|drove me
        bananas|mad|insane|crazy|bonkers|nuts|potty|demented|doolally|spare|batty|loopy|up|round,
        cold|frozen|chilled|icy|fridge|freezer? spoon|spoons|teabag|teabags|peas|cucumber|cucumbers|icepack on|over
        my|me|the|both left|right? <eye>, ice|cold pack|compress on|over my|me|the|both|each left|right? <eye>,
        spoon|spoons|teabag|teabags in|from the freezer|fridge .. <lid>|eyes|eye, cold|freezer spoons out|on,
        what|whats happened|happen|up|going to|with|on? your|ur|my|me eye|eyes|lid|lids, took|take|takes|had one
        look at my|me|the left|right? <lid>, one look at my|the left|right eye, cant|couldnt|unable|struggling
        get|put|keep|bear|wear to? put|get? my|me|the contacts|contact|lenses in|lens|at|since, <eye>
        wont|cant|couldnt|refuse|refuses|refusing to? have|take|tolerate|stand|bear|accept|put
        it|them|that|contacts|contact|lenses|anything|up, contacts|lenses .. <eye> said|say|hate|hated, <eye> and
        your|ur|the|this|that glue|adhesive|lashes|stuff .. <isnt>|arent|dont|falling|enemies|war, <eye>
        said|say|saying|says no|nope|nah|never, <eye> .. <isnt>|arent|isnt|no longer
        friends|mates|pals|speaking|talking, <eye> .. falling|fallen|fell|gone out|war with .. glue|lashes|you|it,
        <eye> .. having|had|throwing|thrown|chucking .. <strop>, <eye> .. <whinge>,
        on|taking|popping|needing|living|took the|on?
        antihistamine|antihistamines|piriton|benadryl|cetirizine|zyrtec .. since|lids|eyes|eye
    """,
}

DOINGS = spread(_DOINGS, _WORDS)
