"""English put together: a part of her with what it does, what she can no longer do, and what it looks or feels like.

Where `english_signs` and `english_alarms` hold what people say word for word, these phrases cross classes of words, so
that they cover what nobody has written yet. How phrases are written: `aftercare.core.reading.phrases`.
"""

from __future__ import annotations

_PAST = ("", *(f"{mark}{minute:02}" for mark in ".:" for minute in range(0, 60, 5)))
_HALVES = ("am", "pm", "")
CLASSES = {
    # 9am, 4.30, 11:15pm; and the days of a month
    "clock": " ".join(
        f"{hour}{past}{half}" for hour in range(1, 13) for past in _PAST for half in _HALVES if past + half
    ),
    "nth": " ".join(f"{day}{th}" for day in range(1, 32) for th in ("st", "nd", "rd", "th")),
    "allergen": """
        latex nickel penicillin antibiotics aspirin ibuprofen codeine sulfa sulphites sulfites nuts peanut peanuts almond
        almonds shellfish seafood prawns shrimp dairy lactose gluten soy soya sesame wasp wasps hornet jellyfish pollen
        ragweed plasters elastoplast bandaids wool lanolin henna ppd acrylics acrylates formaldehyde iodine chlorhexidine
        lidocaine
    """,
    "pudgy": """
        marshmallowy pillowy chubby podgy pudgy piggy doughy spongy squishy squidgy bulbous
    """,
    "muck": """
        stuff goo goop gunk gunge discharge muck mucus mucous matter secretion secretions ooze oozing bogey
        bogeys bogy bogies booger boogers fluid liquid crud slime crust sleep strings strands strand pus puss gum glob globs dribble seepage leakage snot
    """,
    "hue": """
        yellow yellowish yellowy green greenish greeny white whitish milky cloudy cream creamy grey greyish gray
        grayish brown brownish lime mustard custardy custard snotty amber
    """,
    "reds": """
        salmon ham gammon beetroot beet strawberry strawberries raspberry raspberries cherry cherries lobster
        lobsters tomato tomatoes ketchup brick bricks
        poppy poppies postbox radish radishes ladybird ladybug ribena watermelon flamingo
        flamingos peony blush brake cranberry cranberries pomegranate rhubarb
        cardinal rust coral fuchsia magenta rouge
    """,
    "doughy": """
        roll rolls bun buns dumpling dumplings marshmallow marshmallows dough doughnut doughnuts donut donuts
        pillow pillows cushion cushions bap baps loaf loaves scone scones muffin muffins
        bagel bagels pancake pancakes crumpet crumpets ravioli gnocchi pierogi sausage
        sausages slug slugs caterpillar caterpillars balloon balloons bladder sponge sponges pitta tortellini
        mozzarella burrata jelly blimp airbag airbags bouncy puffball mushroom mushrooms
    """,
    "day": """
        monday tuesday wednesday thursday friday saturday sunday mon tue tues wed thu thurs fri sat sun tomorrow tonight
        today weekend week month january february march april june july august september october november december
        mondays tuesdays wednesdays thursdays fridays saturdays sundays noon lunchtime
    """,
    "visit": """
        appointment appointments appt slot removal fill infill refill infills fills set lift brows tint session booking
        visit lashes mine
    """,
    "some": """
        one two three four five six seven eight nine ten dozen some few several half most many loads lots tons couple
        bunch all bits 1 2 3 4 5 6 7 8 9 10 12 15 20 30
    """,
    "shed": """
        fell fallen fall falling dropped drop dropping slid slipped popped pinged pulled gone missing shed shedding
        snapped detached lifted lifting peeled vanished
    """,
    "eyeish": """
        eye eyes eyeball eyeballs lid lids eyelid eyelids it its they theyre them one left right both either neither
        mine other
    """,
    "cannot": """
        cant cannot couldnt unable cnt impossible wont dont doesnt didnt barely hardly struggling struggle struggled
        trouble difficulty difficult hard harder fighting refuses refusing refuse isnt not wouldnt aint never
        stopped lost
    """,
    "like": "like as resembling resembles if though similar imagine",
    "feelslike": "like as though imagine rubbed put threw poured tipped squirted full",
    "airway": """
        throat windpipe airway airways gullet chest lungs lung ribcage oesophagus esophagus breastbone sternum
        thorax
    """,
    "closingin": """
        closing closed close closes shutting shut squeezing squeezed squeezes squeeze narrowing narrow narrows
        narrowed constricting constricted constriction tight tighter tightness tightening tightens thick thicker heavy heaviness lump ball golf blocked blocking clogged crushing crushed
        pressure weight rattling rattly rattle whistling whistle whistles band strangled strangling choked choking
        choke burning itchy itching fuzzy furry scratchy tickly numb tingly tingling funny weird strange odd
        pinched straw fist hand hands rope noose belt strap vice vise clamp clamped knot
        shrinking shrinks shrunk smaller clenching clenched clenches seizing seized cinched cinching tightens
        gripping gripped squashed squashing swells
    """,
    "air": """
        breathe breathes breathing breath breaths air oxygen inhale inhaling exhale exhaling lungful lungfuls
    """,
    "airless": """
        struggle struggling struggled hard harder difficult difficulty difficulties trouble problems problem issue
        issues effort laboured labored short shorter shallow wheezy raspy noisy whistling rattling heavy fast faster
        quick rapid tight whistle squeak squeaky squeaking crackly crackling wheezes fighting battling gulp gulping gasp gasping suck sucking straw stirrer snorkel pillow gulps
        chore battle impossible properly fully hurts painful
        fight war mission marathon slog workout gym wheezier raggedy ragged jerky
    """,
    "fluster": "try tries trying hard gotta struggle struggling cant couldnt barely hardly twice",
    "downit": "water sips sip food spit saliva drool tablet tablets pill pills drink drinks anything nothing tea toast",
    "mouth": "tongue mouth lip lips gums palate",
    "tingly": """
        tingle tingles tingling tingly numb numbness fizzy fizz fizzing prickly prickling prickles buzz buzzing
        pins dead asleep itchy itching itches burning furry fuzzy heavy slurring rubbery weird funny strange
        fizzes tingled fuzz stinging zingy zinging staticky static
    """,
    "fasced": "face head lips lip tongue mouth cheeks cheek jaw throat neck chin mush gob chops jowls",
    "round": """
        football footballs balloon balloons pumpkin moon melon watermelon hamster chipmunk blowfish pufferfish
        basketball beachball cabbage potato tomato bread dough sausage sausages tyre tire dinghy inflatable monster
        alien stranger elephant boxer dogs hotdogs football
        beachballs pumpkins melons puffer toad bullfrog cushion cushions rugby spacehopper inner airbag
    """,
    "sighted": "vision sight eyesight",
    "dimming": """
        gone going goes went lost losing fading faded fade dropping dropped worse worsening dim dimmer dimmed dark
        darker black blurry blurred blurrier blur blurring foggy hazy cloudy fuzzy misty milky smeary smeared off
        weird funny strange patchy tunnel double doubled wonky poor bad changed changing different deteriorating
        failing failed reduced narrowing narrowed washed grey gray wavy distorted warped shaky jumpy swimmy swimming
        cutting flickering flickers glitching disappearing disappeared impaired compromised rubbish terrible awful horrible crap
        deteriorated deteriorates declined declining slipping slipped blanked blanking plummeted glitchy
        glitches blinked
    """,
    "smudge": """
        smudge smudges smear smears blob blobs shadow shadows curtain veil mist fog haze cloud
        clouds cobweb cobwebs cobwebby web blank blot blotch shade shutter
    """,
    "seen": "vision sight eye eyes eyesight view everything middle centre center lens",
    "reading": """
        phone screen text texts clock menu sign signs plate plates print writing label telly tv register till computer spreadsheet receipt subtitles emails
        letters words numbers paper book newspaper price labels dashboard watch monitor whiteboard board chart
        bus buses numberplate numberplates prices aisle packet packets captions road newspaper timetable kindle
        page pages
    """,
    "part": "open opened opening part separate separated prise pry unstick unglue peel apart budge crack unseal",
    "lashes": "lash lashes eyelash eyelashes lids lid eyelids eyelid",
    "potion": """
        glue adhesive remover acetone primer bonder cyanoacrylate superglue solvent chemical chemicals tint bleach
        debonder solution dye peroxide alcohol cement stuff liquid product gel cream something drop drip droplet
        bit splash blob oil perm lotion lifting
    """,
    "going": """
        dripped drip drips dripping ran run runs running got get gets getting went go going leaked leaking leaks
        seeped splashed splash squirted fell fallen dropped trickled slid flicked flew shot poured spilled spilt
        sprayed landed oozed rolled slipped came
        dribbled dribbling trickling seeping dropping dripped sloshed slopped
    """,
    "spilling": """
        dripped drip drips dripping ran run runs running leaked leaking leaks seeped splashed splash squirted trickled
        poured spilled spilt sprayed oozed splattered
        dribbled dribbling dribbles drizzled sloshed slopped squished oozing trickling seeping seeps leaky
    """,
    "notable": """
        cant cannot couldnt unable cnt barely hardly struggling struggle trouble difficulty impossible hard harder
        squinting
    """,
    "into": "in into inside on onto",
    "awful": """
        unbearable unreal excruciating agony insane horrendous horrific horrible terrible extreme indescribable
        intolerable severe brutal killer savage ridiculous unimaginable torture torturous crippling ungodly
        blinding searing diabolical
    """,
    "painy": "pain pains hurt hurts hurting sore throbbing throb throbs ache aching aches soreness paining",
    "meds": """
        paracetamol codeine ibuprofen advil tylenol nurofen painkiller painkillers aspirin morphine meds tablets
        panadol motrin aleve cocodamol tramadol naproxen
    """,
    "useless": "not nothing arent dont doesnt isnt aint didnt havent hasnt wont barely no useless",
    "childbirth": "birth labour labor childbirth contractions stones broken broke fracture surgery",
    "beaten": """
        boxer boxers boxing rounds fight fighter punched punch mugged brawl shiner beaten slapped bare headbutted
        ufc wrestler
    """,
    "frogs": """
        frog frogs toad toads sausage sausages balloon balloons marshmallow marshmallows pillow pillows cushion
        cushions plum plums grape grapes egg eggs golfball golfballs golf ping peach peaches hamster chipmunk
        blowfish pufferfish goldfish fish bee bees wasp wasps troll ogre bulldog pug walnut walnuts mushroom bagel
        doughnut donut dumpling dumplings gremlin potato potatoes bug tennis slits rolls
        conker conkers haggis scone dumpling meatball meatballs bap satsuma satsumas kiwi mango
    """,
    "stoner": """
        stoned stoner high weed spliff drunk hungover hangover rabbit rabbits vampire vampires zombie zombies
        demon smoking smoked smoke bender tomatoes strawberries roadmap cherries albino bloodhound wino
        sleepless
    """,
    "hotstuff": """
        chilli chili chillies chilies chile pepper peppers peppermint mint menthol onion onions soap soapy shampoo
        acid lemon lemons vinegar bleach matches fire lava flames coals sauce jalapeno jalapenos wasabi
        mustard nettle nettles sunburnt aftershave perfume hairspray chlorine chlorinated seawater ammonia curry
        ginger toothpaste balm flame embers candle lime detergent
    """,
    "sandy": """
        sand sandpaper grit gravel sawdust dust dirt ash ashes pebbles pebble crumbs crumb breadcrumbs desert soil
        salt grains rubble cement sandy
    """,
    "bit": "hair lash eyelash eyelashes bristle fibre fiber splinter thing something speck fleck lint fluff piece",
    "pointy": """
        lash lashes eyelash eyelashes extension extensions hair hairs tip tips end ends fan fans spike spikes point
        bristle
    """,
    "jabs": """
        poke pokes poking stab stabs stabbing jab jabs jabbing scratch scratches scratching scrape scrapes scraping
        dig digs digging prick pricks pricking stick sticks sticking catch catches catching pointing points rubbing
        rubs spiking needling spearing pierces prodding prods growing curling
    """,
    "sharp": """
        thumbtack tack pin pins staple nail nails barb barbed spike spikes thorn thorns toothpick needle needles
        quills spines prongs prickles bristles
        cactus hedgehog porcupine pine splinter splinters shard shards wire brillo bristles fishbone brush velcro
        tweezers
    """,
    "shades": "sunglasses shades sunnies",
    "indoors": """
        office work house home shop shops store supermarket kitchen class school bed couch sofa telly tv laptop
        screen indoors inside room bathroom lounge
    """,
    "glary": """
        murder murderous, brutal vicious cruel nightmare killer bother bothers bothering bothered hurt hurts hurting
        kills killing kill bug bugs bugging wince wincing squint squinting squints unbearable agony torture painful
        pain stabs stabbing stings sting stinging burns burning hates hate intolerable much strong harsh sore flinch
        flinching sensitive irritates irritating annoys annoying headache aches killed blinded
    """,
    "beam": """
        light lights sunlight sun sunshine brightness daylight lamp lamps headlights glare bulb bulbs fluorescent
        fluorescents torch flashlight penlight bright streetlight streetlights fluros fluro fluoros
    """,
    "offish": """
        narked tetchy mardy stroppy miffed fuming raging vexed niggled irritable unsettled sulky
        off unhappy angry upset wrong strange unwell poorly dodgy iffy grumpy aggravated cross peculiar bad
    """,
    "unwell": "happy great good right well thrilled comfortable agree okay ok normal fine best enjoying coping loving",
    "isnt": "not arent isnt dont doesnt aint",
    "skinny": "skin lid lids eyelid eyelids lashline",
    "scaly": """
        dry rough peeling peely cracked cracking flaky flaking scaly bumpy raised blotchy leathery crusty sandpaper
        shedding raw patchy chapped parched spotty wrinkly crepey tight
    """,
    "bodily": """
        scalp ankles toes knees wrists arms legs chest belly stomach back torso neck tummy thighs body shoulders trunk
    """,
    "wealy": "hives hive welts welt urticaria blotches lumps bumps rash wheals nettle",
}

FRAMES = {
    "breathing!": """
        throat stuff|issues|issue|trouble|troubles|problem|problems|symptoms|bother, tongue|lip
        stuff|issues|trouble|problem|problems, <airway> .. size of .. pea|straw|pin|pinhole|needle|penny|grape|coin,
        <airway> .. like .. straw|pinhole|keyhole, <airway> .. <closingin>, <closingin> .. in|on|round|around
        my|the? <airway>, sat|sitting|sits|standing|brick .. on my? chest, <air> .. <airless>, <airless> .. <air>,
        <cant> .. <air>, <downit> wont|not|doesnt|cant go down, <cant> .. get .. <downit> down, <cant> .. swallow
        .., swallow .. <cant>, <mouth> .. <tingly>, <tingly> my? <mouth>, <fluster> .. get .. <downit> down,
        <airway> .. <like> .. sitting|sat|standing|kneeling, <mouth> .. <like> .. dentist|anaesthetic|novocaine,
        pins and needles in|on|around my? <mouth>, darth vader, <cant> .. get .. words out, <cant> .. finish a?
        sentence{s/}, inhaler .. <useless>, inhaler twice|again|loads|constantly, used .. my inhaler, puffing on my
        inhaler, wheez{e/es/ing/y/ed}, short of breath|puff|wind|air, out of puff, rattle, rattles, rattling, hard
        to talk .. throat, throat .. hard to talk, throat is going, cant draw .. breath, <cant> fill my lungs,
        stop|stopping|pause|pausing .. for|to breath|breathe|air, food|water|anything .. stuck .. down|throat,
        turning blue, lips .. blue, going blue
    """,
    "swelling!": """
        whole|entire face is|has|looks|feels|gone|went a?
        up|balloon|pumpkin|football|melon|moon|pudding|planet|beachball|watermelon|basketball|swollen|puffed,
        swollen|puffed|puffy|blown|ballooned from hairline|forehead|brow|ear|ears|head to|down
        jawline|chin|neck|jaw|throat|ear, face .. from forehead|hairline to chin|jaw, cheeks|cheek
        forehead|chin|nose .. all? puffed|swollen|up|puffy|ballooned, forehead to chin, its my lips they are|theyre
        getting|growing bigger|huge, lips .. bigger and bigger, top|bottom|upper|lower lip gets|arrives|enters|comes
        .. before .. me|i|rest, <fasced> .. <like> .. beach|bouncy|rugby|bowling|tennis|exercise|yoga, <fasced> ..
        size of, <fasced> .. <like> .. <round>, <fasced> .. <swell>, <swell> .. <fasced>, <fasced> .. <huge>,
        <fasced> .. blown up, <fasced> .. blowing up, dont|didnt|cant|wont|wouldnt recogni{se/ze/sed/zed}
        me|myself|my face|her .. face, face .. recogni{se/ze/sed/zed}, dont look like myself, <fasced> ..
        twice|double|triple .. size, lip{s/} .. filler, botched filler, filler lips
    """,
    "vision!": """
        <sighted> .. <dimming>, <dimming> .. <sighted>, eye sight .. <dimming>, <notable> .. read .. <reading>,
        <notable> .. see .. <reading>, <notable> make out, <notable> .. see ..
        faces|road|kerb|stairs|step|hand|hands, <smudge> .. across|over|in|covering .. <seen>, <smudge> .. <seen>,
        <seen> .. <smudge>, patch{es} .. vision|sight|view, half|part|bottom|top|side|chunk ..
        page|screen|words|vision|view|sight .. missing|gone|lost|blank, half|part|bottom|top|chunk of ..
        vision|sight|view, lost .. half|part|bottom|top|side .. vision|sight, no longer see|read|focus|make, two|2
        of everything, in twos|double, flashy, everything .. two|twice, <eye> .. working .. <cannot>, <eye> ..
        stopped working, <eye> .. not working, <eye> .. milk|milky|blind, not safe to drive, shouldnt be driving,
        stop{ped} driving, cant drive .. see, cant see to drive, <notable> .. see out, everything .. <viewbad>,
        everything .. smeary|smudgy|swimming|wobbly|milky, see|seeing .. through ..
        vaseline|net|curtains|gauze|voile|tissue|fog|smoke|steam|water|frosted|gauze|net|curtain|milk|grease, like
        .. dirty|greasy|foggy|steamed|frosted window|windscreen|glass|lens|windshield, flash{es} .. when i
        blink|turn|move|look, lightning .. when|in, <eye> .. lights out, lights .. rings|ring around|round, lights
        .. starbursts|halos|rings|streaks|streaky|smeared|fuzzy, rings round|around lights, lost .. sight, sight ..
        one eye, eye .. lost .. vision, rings|rainbows|rainbow|halos|halo .. round|around ..
        light|lights|lamp|lamps|bulb
    """,
    "vision": """
        vaseline|petroleum|clingfilm|steamy vision|view|filter .. blink|hd, vaseline vision,
        blink|blinks|blinking|blinked .. before|until|till|til .. ..
        sharp|sharpens|focus|focuses|clear|clears|readable|read|comes, slight|bit|touch|little|faint of?
        haze|fog|mist|film|blur|bleariness .. til|till|until|after|wipes|lifts, bleary, bleariness, its all swimmy,
        goes|going|went|go|drifts|slips out of focus, bit of haze after|when|from, everything|everythings|things ..
        soapy|greasy|smudged|smudgy .. blink, soapy looking, <viewbad> till|until i? blink, bit of a|some
        haze|fog|blur|mist|film|smear, <eye> .. haze|hazy, a|some|slight haze, haze that|when|over, <sighted> ..
        blurry|blurred|hazy|foggy|cloudy|fuzzy|misty, <eye> .. blurry|blurred|hazy|foggy|fuzzy
    """,
    "pain!": """
        two|2|three paracetamol|ibuprofen|nurofen|codeine|painkillers .. still .. floor|towel|crying|pacing,
        take|prefer|rather .. over what|the|this .. pain|eye .. doing|right|in, take|prefer .. over the pain in ..
        <eye>, babies|births|c|sections|labours|stones .. over what this|my eye, cant|couldnt look
        side|left|right|up|down|around|sideways .. without .. hurting|pain|hurts|ache|wincing,
        whenever|when|sec|second|moment|time|if i? look|looking|turn|turning|move|moving|glance|shift
        sideways|side|left|right|up|down|the? eye .. ache|aches|hurts|hurt|pain|yanks|stabs|paining,
        look|looks|looking|glance|glancing sideways .. ache|aches|hurts|hurt|pain|yanks|stabs,
        turning|moving|rolling the? left|right|my eye|eyes .. paining|hurts|pain|aches|hurting, eyeball ..
        aches|hurts|pain .. tracks|tracking|moves|moving|turns|turning|roll, behind the? eyeball|eye ..
        when|whenever i look|move|turn, <painy> .. <awful>, <awful> <painy>, <awful>|worst .. <painy>, <painy> ..
        worst, <painy> .. worse than .. <childbirth>, worse than .. <childbirth>, children|kids|babies .. worse,
        <meds> .. <useless> .. <painy>, <painy> .. <meds> .. <useless>, <painy> .. <useless> .. <meds>, <meds> ..
        <useless> .. touch{ing}|dent|edge|cutting, <painy> ..
        screaming|scream|sobbing|vomiting|vomit|threw|throwing|puking|crying|cry|tears|howling|writhing|rocking,
        screaming|sobbing|crying|writhing|howling|rocking .. <painy>, <painy> .. off the scale|charts, <painy> ..
        cant cope|function|think|stand|take|bear, cannot cope .. <painy>, cant|cannot cope with .. <painy>, <painy>
        .. all night .. screaming|crying, like .. knife|dagger|knives|hot poker|screwdriver|skewer in|through ..
        <eye>, stabbing .. eyeball, stabbed .. eyeball, being stabbed in .. <eye>, agony, hurts to look|move, hurts
        .. move my? eye{s/}|eyeball, move my? eye{s/} .. hurts, hurts .. when i look
        up|down|left|right|sideways|around, beg{ging} .. pain, <painy> .. a&e|er|hospital, someone ..
        stabbing|stabbed .. <eye>, like .. stabbing|stabbed .. <eye>
    """,
    "glue_in_eye!": """
        <potion> .. <spilling> .. <into> .. <eye>, <potion> .. <spilling> <into>, <potion> .. .. <spilling> and,
        <glue> .. <going> <into>, <glue> .. went|gone|goes|got right|straight in, eyeball|eye .. dried|hard|bit|blob
        .. <glue>, <glue> .. <going> .. <into> .. <eye>|it, got .. <glue> .. <into> .. <eye>|it, <eye> .. got ..
        <glue>, <glue> .. on|in .. my? eyeball, <spilling> <potion> .. <into> .. <eye>, <glue> .. eyeball
    """,
    "sealed_eye!": """
        stuck lid{s/}|eyelid{s/}, stuck down|fast|solid, neither|none .. eye .. open|opening|opens, <lashes> ..
        stuck to .. each other|another, <lashes> .. stuck .. <cannot> .. open, no way .. get .. open, <eyeish> ..
        glued|sealed|fused|welded|bonded|superglued|cemented|gummed itself|themselves? shut|closed|together,
        <eyeish> .. stuck|jammed|locked|clamped shut|closed|together, <lashes> .. fused|welded|bonded|cemented,
        <cannot> .. <part> .. my|the|either|both|these|top? .. <eye>|<lashes>, <cannot> .. get .. <eyeish> ..
        open|apart, <eyeish> .. <cannot> .. open|apart, <eyeish> .. refus{es/ing} to open, <eyeish> .. wont open,
        eyeball .. covered, only one eye .. open, one eye open only, glued itself|themselves shut|closed|together,
        sealed over, sealed itself, <eye> .. sealed
    """,
    "swollen_shut!": """
        <swell> .. and? theyre|its|eye|are|completely|totally is? shut|closed, <swell> .. <cannot> .. see out,
        <swell> .. <cannot> .. open, <swell> .. completely closed|shut, <eye> .. shut .. <swell>, <eye> .. closed
        over, <swell> .. closed up|over, <swell> .. slit{s/}
    """,
    "injury!": """
        <eye>|eyeball .. bleed{s/ing}, <eye> .. blood on|from|coming|dripping, <jabs> .. <eye> .. blood, <eye> ..
        and theres? blood, poked .. <eye> .. blood, scratched .. cornea|eyeball, something .. pierced, caught ..
        eyeball|eye with|on, tweezers .. <eye>, <eye> .. tweezers, nicked .. <eye>|eyeball|lid, gash{ed} ..
        <eye>|lid, blood .. coming .. <eye>, <eye> .. gouged
    """,
    "blood": "bleeding, bleeds, bled, blood",
    "pupil!": "pupil{s/}",
    "faint!": """
        knee{s/} .. gave|giving|give|buckl{ed/ing}, legs .. gave|giving|jelly|buckl{ed/ing}, passed|passing|pass
        out, gonna|going|boutta|about drop|faint|pass|collapse|keel, going|gonna|about to
        pass|faint|collapse|keel|drop|conk, world|floor|ground|walls|room .. tilting|tilts|moving|swaying|tipping,
        black .. edges, floating .. black, greying|graying|blacking|whiting out, conked out,
        sit|sat|lie|lay|lying|sitting .. on .. floor, head between my knees, keeled over, room .. spin{s/ning},
        spinning .. room, everything .. spinning, head .. spinning|swimming|swimmy, lost consciousness, come|came
        over .. faint|dizzy|funny|queer|wobbly, hold onto|on .. wall|counter|sink|rail|table, dizzy, dizziness,
        lightheaded, woozy, seeing stars, went black for, blacked out, collapsed
    """,
    "hives!": """
        <wealy> .. on|over|all|up|down|across .. <bodily>, <wealy> .. <bodily>, <bodily> .. <wealy>, <wealy> .. head
        to toe, <wealy> .. everywhere, one big hive|welt, covered in|with <wealy>, covered head to toe, <wealy> ..
        spreading down|to|across|over, <bodily> .. covered in, itch{y/ing} all over, itch{y/ing} everywhere
    """,
    "redness!": """
        <eye> .. congealed|dark|dried|clotted ketchup|blood|wine|beetroot|cherry dark?|colour|color|red,
        sclera|white|whites .. congealed|clotted, <eye> .. colour|color of ..
        wine|blood|beetroot|ketchup|cherr{y/ies}|claret, colour|color of .. wine|blood|claret, <eye> .. all blood,
        blood in the white, white{s/} .. .. dark|blood|deep red, white{s/} .. blood, <eye> .. blood red, red where
        .. white, no white
    """,
    "swelling": """
        lid|lids|eyelid|eyelids have|has|is|are|all plumped|puffed|swelled|fattened|swole up|out, <eye> .. is now a
        marshmallow|sausage|cushion|pillow|balloon|bun, hello to my .. <eye>, lid|lids .. glasses|specs are|is
        touching, lid|lids|eyelid|eyelids .. drooping|sagging|droopy|saggy|flopping|flopped|hooding, up they|it
        came|puffed again|both|overnight, my left|right|other|one|poor|top|upper? lid is|looks
        huge|massive|enormous|gigantic|ginormous|humongous, <doughy> where my|the left|right? <eye>, <frogs> where
        my|the left|right? <eye>, left|right|both|lid|lids|eye|eyes|eyelid|eyelids .. <pudgy>, bump|lump
        on|in|under|inside .. lid|eyelid|lashline, <eye> .. after? blowing|blown|puffing|puffed|swelling|coming
        up|out, pillow|cushion|balloon|marshmallow|golf ball|ball|egg|plum|grape|bun|doughnut|bap where|instead of
        .. <eye> .. should|used|was, where my .. <eye> should be, <eye> was|were|is|are|like|turned two|2?
        boiled|fried|poached eggs|egg, <eye> was|is|were|are golf ball|balls, boiled eggs .. <eye>, <eye> .. boiled
        eggs, <eye> are two|2 <frogs>, <eye> ..
        marshmallowy|pillowy|puddingy|doughy|spongy|squishy|squidgy|bulbous|chubby|podgy|pudgy|piggy|porky|jowly|swolley|bready|balloony|squashy,
        gone a? bit|all|kinda|so? marshmallowy|pillowy|doughy|piggy|chubby|podgy|pudgy|spongy|squidgy|bulbous, all
        piggy, piggy eyes|eyed|and, marshmallowy, puffs nearly|almost|all|are|have, the puffs, eyes like
        piggy|piglet, thick like orange peel, look|looks|looking|bit|all|feel|feels|over overinflated|inflated,
        <eye> .. inflated|overinflated, like|bit rocky after|balboa, looking like rocky, after|like round
        ten|10|12|twelve|nine|9, <eye> .. sitting|sits|hangs|hanging lower|heavier|low, lid|eyelid|eye .. lower than
        the other, feels fat, my crease at all, no crease, crease .. gone|hidden|buried|lost|hiding, <eye> .. half
        mast, at half mast, gone|goes|looks|looking|all|suddenly hooded, lid|lids|eyelid|eyelids ..
        like|two|2|resemble .. <doughy>, lid|lids|eyelid|eyelids .. on some <doughy>, lid|lids|eyelid|eyelids
        be|are|is|r|feel|look|turned|gone|went .. <doughy>, eye|eyes like|are|r|be|is|turned|gone|went .. <doughy>,
        <doughy> for|instead of <eye>, enlarged .. lid|lids|eyelid|eyelids, lid|lids|eyelid|eyelids .. enlarged,
        <eye> .. engorged, lid|lids|eyelid|eyelids .. risen, the puff
        is|has|went|was|around|on|in|under|over|under|below, puff has|have|had|went, under|beneath|behind the puff,
        puffing, crease{s/} .. disappeared|dissapeared|gone|vanished|swallowed, no lid|eyelid|crease
        space|left|showing|anymore, bags under me|my|both|the? eye{s/} ..
        shopping|groceries|luggage|suitcase|carry|pack, <eye> .. luggage|suitcases, carry|pack .. shopping|groceries
        in .. bags|<eye>, puffed out, puff pastry lids|eyelids|eyes, look|looks|looking|look .. <like> .. <beaten>,
        <like> .. <beaten>, <eye> .. <like> .. <frogs>, look|looks|looking <like> .. <frogs>, lid{s/}|eyelid{s/} ..
        massive|huge|enormous|doubled, lid{s/}|eyelid{s/}
        is|are|has|have|all|both|well|right|way|proper|blown|puffed|puffing|swelled|come|came?
        all|right|well|way|both? up, lid{s/}|eyelid{s/} .. ballooned|blown, <eye> .. half the size, <eye> .. tiny
        from, one fat eye, all blown up, like i cried, like ive cried, like .. been crying, bump .. on my?
        eyelid|lid, heavy|fat|droopy|drooping|thick <lashes>, stung by .. bee, bee sting, bags .. since|after, lump
        .. lid{s/}|eyelid{s/}|lashline, lids|lid feel{s/} .. full|thick, puff ball{s/}, puffball{s/},
        its|theyre|is|looks kinda|so|all|well|proper|really|a fat
    """,
    "redness": """
        faintest|slightest|slight|light|pink|tiny|little|bit of? a? blush on|round|around|over|in|across, blush on
        the lid|lids, faintest blush, <eyeish> .. like a|an? stop|brake|traffic|tail|warning sign|light|lights,
        righty's|lefty's|righty|lefty .. like a? stop|brake|traffic sign|light, lit up like a?
        brake|stop|tail|christmas, raging red, red as tomatoes|beets|cherries|raspberries|peppers|strawberries,
        <eye> .. like a stop sign, <eye> .. vampire, <eye> the|a colour|color|shade of .., rosy
        round|around|along|at|in the, pink|red|rosy round|around|along the rim|rims|edge|edges|corner|corners,
        pinprick{s/} of? red, white{s/} .. gone|turned|like .. <reds>, which|they|theyre|eyes are|is? a
        shade|hue|tint, <eye> .. color|colour|colored|coloured|shade|hue of .. <reds>, color|colour|shade of ..
        <reds>, shade .. call .. <reds>, <eye> .. like a|an|two|2|some|little|tiny|wee|ripe|boiled|cooked? <reds>,
        <eye> giving|givin|serving sunburn, like two|2|some|little|tiny|wee <reds>, <reds>
        coded|colored|coloured|toned|tinted|red|pink, <eye>
        are|is|r|be|look|looks|turned|gone|went|going|giving|givin|serving .. <reds>, <eye> .. gone|turned|went
        sunburnt|sunburned|rosy|ruddy|scarlet, <eye> .. blush{ing/es/ed}, blushing <eye>, red as ..
        steak|meat|mince|liver|brick|tomato|post|pillar, <eye> .. reid, <eye> .. <like> .. <stoner>,
        tomato|beetroot|cherry|crimson|lobster colored|coloured|red, look|looks|looking <like> .. <stoner>, veins ..
        <eye>, vein{s/} .. showing, burst vessel{s/}, <eye> .. raw red, road map
    """,
    "itching": """
        take a fork|brush|brillo|cheesegrater|comb|scourer|grater|wire to my? <eye>, eyes|eye are|is
        so|very|sobrang? kati, keep|keeping|kept my? hands|nails|fingers|paws|knuckles|fists off|away|from from? my?
        <eye>, leave my? <eye> alone, want|need|wanna|have|had to? scrub|claw my|the|them|at,
        tickle|tickles|tickling like|so|badly|all|constantly, eye|eyes|lid|lids tickle|tickles,
        dig|digging|grind|grinding|jam|stick|shove|press|screw .. knuckle|knuckles|fist|fists in|into|at,
        cant|cannot|keep|wont stop|quit? scratching|rubbing|clawing my|the lid|lids|eye|eyes,
        cor|god|lord|boy|gosh|jeez|wow do they|it|these itch, dont they half itch, itchy scratchy, the|got|of
        scratchies, knuckle|knuckles|fists in|into|at the|my|both? left|right|eye|eyes|lid|lids|one, dig a knuckle,
        trade|give|swap|sell|pay|kill .. for a? good? scratch, good eyelid|eye|lid scratch, good scratch,
        kidney|arm|leg|firstborn for a .. scratch, tickle .. cant|cannot get|reach|scratch|shift to|at|it,
        under-the-skin tickle, under the skin tickle|itch|crawl, tickly|tickling|ticklish itch,
        tiny|tiniest|slightest|little|faint|last|only tickle|tickles|tickling|tickly, tickle
        left|there|still|hanging|remaining, bitten|bit|eaten|munched by|like ..
        mozzies|midges|mosquitoes|fleas|gnats, mozzies|midges|fleas|gnats .. been|at, scratching my lids|lid|eyes,
        dog|cat|bear|monkey with|on|against .. fleas|flea|tree|doorframe|post, going|go|went at it|em|them|my <eye>?
        like, urge|desperate|tempted|dying|wanting to? scrub|scratch|rub|claw, scrubbing at? my|them|em|the,
        like|of|with fleas, knuckles .. <eye>, scratch|claw|gouge em|them|my|these .. off|out,
        wanting|needing|itching|dying|desperate to claw|scratch|rub, makes|making|has|had|got|have me
        scratch|scratching|rub|rubbing|claw|clawing|itch, sleep|sleeping|slept in|with mittens|gloves|socks,
        mosquito|mozzie|midge|midgie|flea|ant|bug|gnat bite|bites feeling|feel|sensation|type|itch,
        wool|woolly|woollen|wooly|scratchy jumper|sweater|blanket|scarf feeling|feel|sensation|vibe, ants ..
        crawling|walking|marching|dancing, like .. ants, crawling|creepy|crawly feeling|sensation .. <eye>,
        tickle{s/} in|on|at|under|round|around|along|near .. <eye>|corner,
        tiny|slight|little|wee|faint|bit|mad|constant tickle, tickling my <eye>, like .. feather{s/} .. <eye>,
        scratch my <eye>|lids, scratching my <eye>, cant|cannot|couldnt|keep|wont|stop|quit ..
        digging|clawing|pawing|picking|rubbing|scratching at, with my knuckles, to scratch, cant|cannot|couldnt
        leave them alone, want|wanna|need|dying .. to? rub|scratch|claw|rip, claw|rip|scratch .. eyes|them|lashes
        out|off, cant stop rubbing|scratching|itching, keep rubbing|scratching|itching, mad with .. itch,
        itch{es/ing/y} .. like mad|crazy|hell, rub|rubbing .. raw, want|wants|wanting|wanna|urge|need|needing|dying
        to? rub|scratch|claw, rubbing them|em|at
    """,
    "burning": """
        <eye> make|makes|making|made fire, fire in|inside my <eye>, <eye> full of fire, side|lid|lids|eye|eyes
        nip|nips|nipping|nippy, days|hours|nights|morning|evening|bout of
        scorching|burning|searing|blistering|smouldering|roasting <eye>,
        scorching|searing|scalding|smouldering|smoldering|roasting|toasty <eye>, <eye> ..
        scorched|scorching|scalded|scalding|seared|searing|singed|toasted|blistered|blistering|roasting|smouldering,
        feel|feels|felt|like|is|are scalded|scorched|singed|seared, nips a|when|like|my, bit nippy, nippy <eye>,
        vinegar|lemon|salt|acid|alcohol|tcp|sanitiser|sanitizer on|in a? papercut|cut|wound|graze|paper
        feeling|sensation, papercut feeling, paper cut feeling, eye|eyes|lid|lids|both|they
        prickle|prickles|prickling|smart|smarts|smarted .. bit|wee|little|tonight|today|like|when|and|since, prickle
        and smart, smart and prickle, smarts a|like|when|something, deep heat|freeze|relief in|on .. <eye>, like ..
        deep heat, <feelslike> .. tiger balm|vicks|deep, <feelslike> .. onions,
        cut|cutting|chopped|chopping|peeling|peeled|slicing|sliced .. onion{s/}, like .. shampoo,
        giving|givin|serving|full|pure hot? sauce|chilli|chili|pepper|onion|vinegar|bleach|acid|sunburn,
        windburnt|windburned|windburn, wind burnt|burned|burn,
        chilli|chili|pepper|peppery|vinegar|acid|acidy|onion|minty feeling|sensation|type,
        sauce|chilli|chili|chillies|acid on|along|round|around|under my|the left|right|both|top|bottom|upper|lower?
        <eye>|lash|lashes, mi eye|eyes .. bun, a bun mi|me, dey pepper me|my|am, <eye> .. dey pepper, <eye> ..
        pepper me, <feelslike> .. <hotstuff>, <hotstuff> .. in my? <eye>, <hotstuff> .. in them|it, hot prickly,
        tingl{e/es/ing/y} hot|like, hot tingl{e/y/ing}, prickly heat, theyre on fire, <eye> .. on fire
    """,
    "gritty": """
        sand in both|mine all|since|when|today|still, sawdusty|sawdust feeling, buhangin in my? eyes|eye,
        scratchiness, grittiness, emptied|emptying|empty|tipped|poured|threw|thrown|dumped|sprinkled|shook
        a|an|the|half? hoover|hoovers|vacuum|ashtray|sandpit|sandbag|bag|bucket|handful|salt|pepper
        of|bag|shaker|sand? .. under|in|behind|into my|the|me|both, slept in my|old|dirty|last contacts|lenses,
        going to the beach and bringing|bringing|bring|brought it|half|home, beach home under|in|behind,
        brought|bringing|bring the|half beach|sahara|desert home|in|under, rough as sandpaper
        under|in|inside|behind, <sandy> in|inside|under|behind the|my|both|each? left|right|both|one|leftie|rightie,
        <sandy> in|under my|the left|right|lower|upper <eye>, speck|grain in|under my|the? left|right? <eye>, rough
        as .. tongue|sandpaper|badgers|old|bark|a, rough as sandpaper|bark|pumice, cats tongue, feels|feeling|felt
        rough inside|in|under|behind, grains of pepper|sand|salt|sugar|dirt rolling|in|under|floating|moving,
        something|somethin|sumthin|summat|somethings like dust|sand|grit|dirt|sawdust|ash|crumbs in|under|behind,
        <sandy> feeling|sensation|feel|type|vibes, <sandy> type|kinda|kind|like feel|feeling, <sandy>
        under|behind|in|inside .. <eye>|contacts, rolled|dipped|coated|lined|dusted in|with .. <sandy>, <feelslike>
        .. velcro|sugar|glitter|sawdust|cement|pumice|brillo, velcro .. blink|<eye>, <eye> .. velcro, rough on ..
        blink{s/ing}?, sand|grit|gravel in both|em|them|there|each, litter in|under|behind .. <eye>, bottom of a ..
        cage, <eye> .. all? grit, contact|contacts|lens .. dirt|dust|sand|grit|dry, crystal{s/} .. under|in|behind
        .. <eye>|lid, <feelslike> .. <sandy>, <sandy> .. in|under my|the? <eye>|there|it|them, dusty, eye{s/} <be>?
        <very>? dry, bone dry, dry as, <eye> .. beach
    """,
    "poking": """
        lash|lashes|hair .. chook|chooks|chooking|jagging|jags|jagged|jooking|juk me|my|at|the, lash dey chook,
        like|of|on razor|razors|barbed blades|blade|wire, like razorblades, like razors, having|has|having a
        dig|jab|go|poke at me|my|the|eye, like a lash|hair|thorn|splinter is|has|got|growing|turned
        inwards|inside|in|the, skewering|needling|spiking|lancing me|my|when, <pointy>|<sharp> ..
        spear|spears|spearing|lance|skewer|skewers|impale|pierce me|my|the|when|<eye>,
        spear|spears|spearing|skewers|spikes|needles me when|every|each|if,
        bristles|quills|spines|prongs|prickles|thorns|needles|pins|spikes|barbs
        on|in|going|inside|poking|under|along|sticking .. <eye>|inside, porcupine quills, hedgehog|porcupine|cactus
        quills|spines|needles|prickles, quills going into, feel bristles|quills|spikes|prickles|spines|prongs,
        <pointy> .. <jabs> the|my|in|at .. corner|corners|eye|lid|skin|inner|outer|inside|waterline|eyeball,
        keeps|keep|constantly|always prodding|nudging|jabbing me, prodding|nudging|spearing my <eye>, <pointy> ..
        nudging|touching|grazing|brushing|prodding|tickling|tapping|stroking|poking .. eyeball|eye|me,
        point|tip|end|spike .. touching|nudging|grazing|poking|jabbing me|my, hair|hairs|hair's in there|it,
        fish|fishing|flush|tweeze it|something|that|one out .. cant|eye, cant fish|flush|rinse|fetch
        it|that|whatever out, sharp point|end|bit|edge|thing, like .. <sharp>, gets|got|getting|stabs me .. blink,
        every blink, <like> .. eyelash in, something .. in there|it|them, somethings in there|it|them, something ..
        under there|it, theres .. <bit> .. in|under|behind there|it|them|my|the, <bit> .. in there|it, <bit> ..
        stuck|trapped|lodged|caught, <like> .. <bit> .. in|under, <pointy> .. <jabs> .. me|my|into|eye|lid|eyeball,
        <jabs> .. <eye>, one .. <jabs> me, one of .. <jabs>, <eye> .. <jabs> when, <jabs> .. when i blink, something
        <jabs>, something is|keeps <jabs>
    """,
    "watering": """
        crying but my face says, face says i am crying?, eyes|een|eye|eyes are|is|r greetin|greeting
        all|aw|day|away, not crying .. nonstop|constantly .. day, left|right|eye|eyes|lid .. running|streaming .. at
        it again, <eye> .. greetin|greeting, soaked|soaks|soaking|drenched|wet my|the
        collar|sleeve|pillow|scarf|mask|hankie|tissue|tissues|top|cuff|cuffs with|from .. eye|eyes, eye|eyes ..
        soaked|soaks|soaking|drenched my|the collar|sleeve|pillow|scarf|mask|cuff,
        wept|weeping|cried|crying|wet|streamed|leaked through the?
        washing|dishes|news|ironing|shopping|meeting|emails|breakfast|lunch|dinner|tea|shift|commute|documentary|homework|hoovering|weather|adverts|ads|school,
        its|theyre|constantly|been|eye|eyes streaming since|down|constantly|away|again, and its streaming, <eye> ..
        soggy|sodden|sopping|dripping|drippy, soggy eyes|eye|eyed, pink and soggy, red and soggy, <eye>
        keep|keeps|kept filling|welling|brimming|flooding|spilling up|over?, filling up .. blurry|cant|blink, keep
        filling up, keeps filling up, cant turn|shut|switch the taps|tap|waterworks|faucet off, cant turn the taps
        off, like|look|looks .. watching titanic|bambi|marley, <eye>|left|right|it|keeps|keep blubbing|blubbering,
        snivelling|sniveling on|all|like, waterworks wont|since|all, lets|let|letting go|out|slip the|an|a?
        odd|occasional|few|little? tear|tears, odd|occasional|stray tear|tears|drip, waters|waters til|till|until
        its|everything, and|all|so|bit|eye|eyes|is|are|a streamy, streamy eyes,
        asking|asks|asked|thinks|think|thought .. why im|i am crying, its just my eyes, crying its|but|just ..
        <eye>, puddle{s/} in|on|under .. corner{s/}|<eye>|chin|pillow, <eye> .. puddle{s/}, permanent puddle,
        swimming pool in .. <eye>, face is|was soaked|drenched, <eye> wont|doesnt quit|stop|pack, eyes|eye|lids|they
        havent|have|has|hasnt|had|been wept, <eye> .. brim{s/ming/med} over|up?, <eye> ..
        wont|not|never|cant|refuse|refuses|doesnt|dont dry up|out|off?, eye|eyes .. they wont dry, drip drip,
        dribble drip, collar|pillow|pillowcase|sleeve|sleeves|hankie|hanky|scarf|cheek|cheeks
        is|are|was|keeps|getting|gets soaked|soaking|wet|drenched|sodden|damp|sopping, lashes are|r
        always|constantly|permanently|forever wet|soaked|damp|sodden, lower|bottom lashes are|r|stay
        wet|soaked|damp|sodden, tear|teardrop|tears sitting|sat|hanging|stuck|on|in ..
        corner{s/}|lash{es/}|chin|cheek{s/}, yawn tear{s/}, ran|run|runs|running|poured|pouring|streamed|streaming
        like .. tap{s/}|river{s/}|hose{s/}|fountain{s/}|faucet{s/}|stream|gutter|drain, crying without being|feeling
        sad|upset, <eye> .. over spreadsheets|emails|nothing, mop|mopping|blotting|dabbing my? <eye>|cheeks|them,
        soaking|soaked through|my tissues|tissue|sleeve|pillow, box of tissues, tissue{s/} .. <eye>, <eye> ..
        tissue{s/}, tears .. pouring|streaming|running|rolling|dripping .. face|cheek{s/}|down, wiping my? <eye>,
        dabbing .. <eye>|them|it|corner{s/}, crying on its own, crying .. not sad, crying for no reason, tears for
        no reason, <eye> ran, still running, niagara, nonstop tears, wont stop
        streaming|watering|leaking|crying|weeping|running
    """,
    "discharge": """
        <eye> .. porridge|custard|cottage|curd|glue|paste|cheese, porridge|custard|cottage|paste
        all|along|round|around .. lash|lashes|line|eye, yellow|green|brown map|stain|patch|mark|puddle on my?
        pillow|pillowcase|pillowslip|sheet, catarrh .. gum|eye|eyelashes|lashes, matter|stuff in
        em|them|it|there|either|the in?, stickiness, gunked|gummed|crusted|clagged up, <eye>|one|left|right|both ..
        mattery|mattered|gunked|gummy|gammy|bunged|clagged|cacky|claggy|pussy|pussie|goopy|gunked,
        is|all|bit|looks|eye|eyes|lid|lids|left|right|one|and mattery, matter in|on my|the|left|right|both?
        <eye>|lashes|corner, gummed up first|this|in|every|each|when, <eye> .. gummed up, gummed up <eye>,
        stuck|welded|glued|gummed in|with .. <hue> .. sleep|gunk|goo|crust|muck|stuff|glue,
        prise|prised|peel|peeled|pick|picked|scrape|scraped|wipe|wiped crust|crusts|gunk|goo|sleep|bogeys ..
        off|away|open, <eye> boogers|bogeys|bogies .. size, <hue> <muck>, <hue> .. <muck>
        from|on|in|at|out|around|coming|all|every, sleepy dust|dirt|sand|bits, lumps|bits|balls of
        sleep|sleepy|crust|goo|gunk, gum|gums is|dey|are|keeps? coming .. <eye>, <eye> .. gum gum,
        snot|snotty|stringy|gunky|slimy|gloopy looking|lookin|like|type? stuff|bits|thing|things ..
        corner|corners|<eye>, stuff|gunk|gunge|gloop|muck in the|my inner|outer? corner{s/},
        stuff|gunk|gunge|gloop|muck in the|my inner|outer? corner{s/} of my|the|left|right|both|each left|right?
        <eye>, bogey|bogeys|booger|boogers stuff|coming|in|from|out, secretion{s/} from|in|on|at|has|have|appeared,
        <muck> coming|oozing|leaking|seeping out|from .. <eye>, cobwebs of|in .. corner{s/},
        green|yellow|white|gray|grey|cloudy stuff|goo|gloop|bits|crud|slime|mucus|string{s/}|muck|discharge|gunge,
        <eye> .. crud{dy/}, gunge, gungy, crud, eye bogie{s/}, stuck together .. wake|waking|morning, <eye> ..
        gooey|goopy|gunky|claggy|claggy|mucky, claggy, <lashes>|<eye> .. stuck|glued|gummed .. with
        muck|gunk|goo|crust|pus|gunge|slime|sleep|matter|discharge, had to wipe|wash .. open|off|out .. morning,
        <eye> .. weeping pus|yellow|green
    """,
    "rash": """
        coming|come|comes|came up|out in spots|bumps|pimples|lumps|blotches|patches|dots, wee|tiny|little dots ..
        <eye>, pinprick{s/} on|all|around|round|along|under .. <eye>|lash|brow, tiny|little|red|wee pinpricks,
        skin|lid|lids .. like old? paint|wallpaper, goosebumps|gooseflesh|goosepimples on|over|all|like ..
        <eye>|skin, wee|tiny|little|raised|pinprick|pinpoint|pink|itchy|row|line|crop|cluster of? .. dots|boils,
        dots on|along|around|round|under|marching|all|above .. <eye>|cheek|cheekbone|cheeks|socket|sockets,
        dots|bumps|pimples|boils .. near|beside|above|below|on|around .. <eye>, boils come|coming|have|on|popping,
        small|tiny|little|wee boils, skin .. .. like .. sandpaper|leather|emery|lizard|bark|parchment|cornflakes,
        dry|itchy|flaky|red|sore|scaly|eczema|rough|raw .. patches, patches where .. gel|pads|pad|tape,
        tape|pad|pads rash|reaction, prickly heat dots|bumps|spots|rash, measles on|around .. <eye>, <eye> ..
        pebbledash{ed}, cobbled <eye>, cobblestone lids|skin, <skinny> <be>? like? a? plucked
        chicken|turkey|goose|hen, <skinny> .. <scaly>, <scaly> .. <skinny>, <scaly> .. round|around|under|on my?
        <eye>, <skinny> .. dust|dandruff|snow|powder|confetti|cornflakes|coconut|parmesan|flakes, dandruff,
        skin|lids|lid|eyelid|eyelids|it .. like .. alligator|lizard|snake|crocodile|reptile|parchment
    """,
    "light": """
        brightness .. last|lowest|minimum|bottom bar|notch|setting .. wince|hurts|hurt|squint|burns|sting,
        brightness|screen|light|lamp|sun .. makes me wince|squint, cant|couldnt be|sit|stay|stand in the? same? room
        as|with <lightsrc>|lamp|bulb|candle|tv|telly|screen, cant|couldnt be|sit|stay in a? room with|where ..
        <lightsrc>|lamp|lights|light, <lightsrc> ..
        faze|fazes|phase|phases|fazed|affect|affects|affecting|trouble|troubles|annoy|annoys|annoying|upset|upsets
        me|my|them|<eye>?, look|looking|stare at a|the|my
        laptop|screen|phone|telly|tv|window|sky|snow|lamp|bulb|headlights|computer|tablet without
        wincing|squinting|flinching|crying|screwing|tearing|watering|shades|sunglasses,
        phone|screen|telly|brightness|laptop|tablet on|to|at|turned the? dim|dimmest|dimmed|lowest|minimum, how
        bad|harsh|brutal|fierce|strong|sharp|awful the? glare|light|lights|brightness|sun|daylight|sunlight
        is|are|was|has|gets, glare|light|brightness|daylight|sunlight|sun is|was|feels|gets
        so|too|really|very|unbearably|bad|harsh|fierce|brutal bad|harsh|fierce|brutal|for|on,
        sunlight|sun|daylight|light|lights|headlights hit|hits|hitting|got|gets|smacked me|my|them
        so|really|like|too hard|bad|rough|different, light|lights|sun|daylight|screen is|are|feels|like a?
        knife|knives|blade|needles|slap|punch|torture, hoodie|hood|towel|jacket|blanket|scarf|hands|hand|cap|coat
        over my|me face|head|eyes|eye, came|come|coming|go|going|went|walk|walked out|outside|backwards with|holding
        my|a|both hand|hands over, any sun|light|daylight|brightness at all, cant|couldnt|cannot
        take|stand|bear|face even a? candle|candlelight,
        headlights|streetlights|lights|light|lamps|fridge|screens|screen|sun|sunshine|daylight|brightness|glare|telly|tv|torch|bulb|windows
        .. recoil|recoils|flinch|flinches|shrink|shrinks|cower|cowering|hide|scrunch|crease|cringe|shy, <eye> ..
        flinch|flinches|flinching|recoil|recoils|recoiling|shrink|shrinks|wince|winces|squeeze|scrunch|hide|cower
        at|from ..
        light|lights|lamp|sun|screen|fridge|torch|window|daylight|headlights|brightness|glare|phone|telly|candle,
        headlights ..
        horrid|horrible|awful|nasty|vile|brutal|dreadful|grim|terrible|too|evil|rank|hideous|dazzling|dazzled,
        horrid|horrible|nasty|vile headlights|lights|glare|sunlight|sun|brightness, make me screw my eyes|face,
        screw my eyes up, screwing my eyes up, screwed my eyes up, bit|slightly|quite|very|a|little
        photophobic|photosensitive|photophobia, opens|open|opening|opened the fridge ..
        wince|squint|flinch|hurt{s/}|eye|eyes|scream,
        wince|winces|wincing|flinch|flinches|flinching|squint|recoil|recoils|recoiling ..
        bulb|light|lights|lamp|fridge|sun|sunlight|window|headlights|glare|torch|screen|phone|candle,
        bulb|light|lights|lamp|lamps|fridge|sun|headlights|glare|torch|candle|fluros|fluoros|fluro|fluorescents|striplights|neons
        .. wince|flinch|flinches|squint|recoil|recoils|screw|shut|close|bury|duck|hide,
        sun|light|lights|lamp|brightness .. hurts|hurt|hurting|kills|burns em|them|it|my so|too|really?, sun hurts
        em, sat|sitting|lying|hiding|living|stuck in the dark, vampire mode, cant do|hack|deal|cope ..
        daylight|sunlight|lights|brightness, photosensitive, photo sensitive, photosensitivity, <lightsrc> .. rough
        on|with|for .. <eye>, <lightsrc> .. covering|shielding|hiding|shading|closing|shutting|screwing my? <eye>,
        cover|covering|shield|shielding|shade|shading my <eye> .. <lightsrc>, <lightsrc> dey worry|pain|disturb,
        <lightsrc> .. worry|worries|worrying|wrecks|wrecking|wreck|mither|hits my? <eye>|different,
        floodlight{s/}|spotlight{s/}|strobes|strobe|strip|neon|snow|sky|brightness ..
        bug|bugs|bother|bothers|hurt|hurts|kill|kills|sting|stings|blind|wince|squint|much my|me?,
        floodlights|spotlights|striplights .. <eye>, cap|hat|hood|visor|brim low|down|indoors|inside|pulled ..
        light|lights|floodlights|sun|bright|<eye>, screen|phone|telly|tv|light|lights|lamp|window|laptop ..
        hurt{s/}|hard|painful|sore to look, telly|tv|screen|phone|lights|lamp|lamps|brightness|light ..
        dimmed|dim|off|down|low .. because|so|or .. glare|light|hurts|hurt|eye|eyes, glare .. in, <beam> .. <glary>,
        <glary> .. <beam>, <cannot> .. look at .. <beam>|screen|phone|window, <cannot> ..
        open|stand|handle|bear|take|face|tolerate|cope .. <beam>, open .. in the? <beam>|daylight|sunshine, <shades>
        .. in|at|to .. <indoors>, <shades> .. <indoors>, <indoors> .. <shades>, screen .. too bright, too bright,
        living in the dark, sat in the dark, lying in the dark, curtains .. closed|drawn|shut, light .. doing my?
        <eye> in, <beam> .. doing .. in, <beam> .. go right|straight through, close|closing|shut|shield|cover .. my?
        left|right|both? <eye> .. <beam>|headlights|car
    """,
    "pain": """
        aches like|as, bruisey|bruisy|bruised feeling|feel|sensation, bruisey, makes|made|making me
        yelp|jump|gasp|shout, touching .. hurts|kills|yelp, done|gone ten|ten|five|12 rounds,
        flick|flicks|flicking|flicked|snapping|snapped|pinging|pinged|slapping|thumping|hammering my .. <eye>, <eye>
        .. pinching|pinched|nipped|clamped, pinching .. <eye> all, rubber|elastic band .. <eye>, <eye> ..
        rubber|elastic band, twinge{s/}, twingy, niggl{e/es/ing/y}, nagging, ouchy, owch, ow, oww
    """,
    "unwell": """
        eyes|eye|lids feel|feels|are|is bothered|aggravated|annoyed|cross, eyes|eye|lids .. disturbing me,
        somethings|something is? off with|w my? <eye>, proper|really|so|very|well aggravated,
        symptoms|irritation|reaction|problem|problems|issues|issue|trouble has|have|had|is|are?
        now|all|since|fully|completely? resolved|subsided|cleared|gone|settled|stopped|passed|disappeared, took
        a|an|one|two|about|half|the .. to calm|settle|clear|heal|ease|fade down|up|off|away|fully, gone down|off
        overnight|completely, it|they|that|everything|all|its|theyre all?
        settled|calmed|eased|subsided|healed|sorted|resolved|cleared itself|themselves|down|off|up|out|right?
        by|overnight|in|within|before|after|when|on|since|now|itself|themselves, its|theyre|has|all|theyve|it|they
        gone down|off overnight|by|now|since|completely|loads|nicely|lots, its|theyre|is|are|came|come back with a
        vengeance, went|gone|go away and|then|but came|come back worse|again|stronger, came|come back
        worse|stronger, allergic to
        whatever|what|something|somethin|this|these|them|it|your|yours|ur|that|stuff|lashes, allergic to
        the|that|this|your
        glue|adhesive|lashes|stuff|product|products|gel|pads|pad|tape|patches|remover|primer|brand|set, allergic
        reaction to, something .. aint|isnt right, <eye> .. dont|doesnt|havent|hasnt|arent|isnt|not ..
        feel|felt|feeling right|good|normal|well|great, <eye> .. not|isnt|arent .. happy
        bunny|bunnies|camper|campers|chappy|chappies, not a happy bunny|camper, <eye> ..
        moody|stroppy|cranky|grouchy|huffy|sulking|shirty, <eye> .. in a mood|huff|strop, <eye> .. throwing ..
        tantrum|strop|wobbly|hissy|fit, <eye> .. kicking off|up, generally narked|irritable, <eye> .. having a|none
        tantrum|strop|moment|of|meltdown, <eye> .. strop, <eye> .. tantrum{s/}, <eye> ..
        protesting|complaining|rebelling|fuming|raging|sulking|moaning, corner|corners|rim|rims is|are|looks|look a?
        bit? angry|cross|raw|upset|unhappy, <eye> settled, <eye> .. settled|calmed|cleared right|all|well|back?
        down|up, <eye> .. flat|smooth again, left|right|lid|lids|eye|eyes is|are down to
        almost|nearly|practically|basically|about nothing|normal, they|eyes|lids|eye|lid were|was|got|looked|went
        angry|cross|raging|furious, <eye> .. healed|recovered, <eye> <isnt> .. <unwell>, <eye> .. <offish>, <eye> ..
        feel{s/} .. <offish>, something .. off with .. <eye>, something .. <isnt> right .. <eye>, allergic to ..
        <glue>|lashes|lash|extensions|them|it|something, react{ed/ing} .. <glue>|lashes|lash|extensions, <eye> ..
        reacting, <eye> .. react, <eye> .. mess, <eye> .. playing up, <eye> .. state, state of .. <eye>, <eye> ..
        struggling, <eye> .. suffering, <eye> .. bothering, <eye> .. annoying me, <eye> .. in bits
    """,
}
