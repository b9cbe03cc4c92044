"""English for extensions that fall, twist, tangle and thin, and what of it looks like a sign: a bald lid, a mouse at it.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "bare": """
        bald balding bare naked nude sparse sparser gappy plucked moulting molting threadbare thinning mangy
        barren
    """,
    "hole": "hole holes gap gaps space spaces window windows parting partings tunnel clearing runway",
    "strand": "lash lashes eyelash eyelashes extension extensions fan fans cluster clusters strip clump ones em",
    "joined": "stuck glued clumped matted welded knotted tangled tangling caught locked",
    "points": "point points pointing pointed facing faces leaning curl curls curling bending folding flipping",
}

# What of falling lashes sounds like a sign of the eye: neither the rules nor the second opinion look at these words.
_BALD = """
    <bare> <my>? <my>? <eye>|<lashes>|corner|corners|side|ends|middle, <bare> patch|patches|spot|spots|strip|bit|bits,
    <eye>|<lashes>|corner|corners|side <be> half? <bare>|empty, left|right <be> <bare>, <bare> at|on|in <my> corner|corners|ends|edges|middle,
    <bare> patch|patches|spot|spots|bit on|in|at|above|near|along|over|by <my> <my>? <eye>|<lashes>|pupil|nose|corner,
    <hole> in|on|at|along <my> <my>? <strand>|lashline|row|set|hair|line, lash line <be> <my> <hole>, lid|eyelid|lids <be> <my>? parting|partings,
    mouse|mice|moths|rat|hamster|hens .. at|eaten|nibbled <my>? <eye>|<lashes>, moth|mouse eaten <eye>|<lashes>?, <eye>|<lashes> <be> moth|mouse eaten,
    eyelash|lash|lid alopecia, i look|looking like a? half? plucked|moulting|molting|mangy chicken|turkey|hen|ostrich|pigeon|goose|bird|dog|cat,
    no|few|fewer|less|hardly|barely|only <strand> left|remaining|on|at|in <my> <my>? <eye>|end|ends|corner|corners|side,
    few|some|several|three|four|five|two|couple of them|these <strand>? <joined> together,
    matted into, cross like swords, <be> crossed like fingers|swords|legs|needles over|on|above? <my>? right|left? eye|lid?,
    <strand>|hairs on|of <my> <my>? <eye> <points>|doing, doing a handstand|cartwheel|somersault|headstand on <my> <my>? <eye>,
    <points> at|to|toward|towards|up|down at|to|toward|towards? <my> floor|ceiling|cheek|cheeks|nose|ear|ears|sky|eyebrow|eyebrows|brow|ground,
    tips|ends|end|tip <be>? <points> down|up|sideways at|to|toward|towards <my> cheek|cheeks|nose|brow|floor,
    <points> backwards|upside|over onto|on|toward|towards <my> <eye>|brow,
    <strand> peeled|peeling|lifted|lifting|came|coming|hang|hanging .. off|from|away <my> <eye>|<lashes> edge|line?, lash|lashes|hair stuck|still attached? on|to them|it|the|each|one, lifted|lifting at the roots|root, hang|hanging away from <my> <eye>,
    broken|venetian blind|blinds, <shed>|drop|drops|comes off|out every|each|any time|day i?,
    lost a? good|whole? few|some|loads|half from|off the top|corner|end|middle of <my> <my>? eye|lid,
    half of the top|bottom|outer|inner|middle row|line|corner <be> <shed> on <my> eye|side,
    look|looks|looking? like? they|theyve had a? fight and lost, look|looking mangy, gaps are killing me, chunk|clump|bunch|handful|cluster|strip came|come|fell|gone off|away|out <my> <my>? <eye>|corner,
    soldiers on my left|right? <eye>, <shed> out|off? in|from|at|on the middle|end|corner|centre|edge of the|my <eye>,
    came off when|while i took|take|pulled my goggles|glasses|mask|top|jumper|contacts|lenses, caught|snagged on|in my,
    full left|right <eye>|side not so much, cant|couldnt see why my <eye> looked|look small|smaller|different|odd|funny
"""

_RETENTION = f"""
    {_BALD},
    tore|ripped|pulled|yanked|plucked|picked|rubbed|cried|washed|wiped|knocked|dragged|took|taken|takes
    <some> off|out|away|with|along, pulled|ripped|yanked|took|tore|plucked <some> of .. out|off|away,
    brush|towel|pillow|sink|tissue|pad|comb|plughole <be> full|covered, full|covered of|in <strand>, confetti, <strand> loss, loss of <strand>,
    they|theyre|theyve|<strand>|mine <be>? all over the place|shop|show|gaff, <shed>|going quicker|faster|sooner|earlier,
    like helicopters|windmills|propellers|antennae|dominoes|petals|feathers,
    upside down, back to front, wrong road|direction, faces|facing the? wrong|other, rotated, swivelled, swiveled,
    down to about|around|like|maybe|the|my|last? last? <some>|forty|thirty|twenty|wisps|stumps|stubble|handful|naturals,
    <some>|forty|thirty|twenty|fifteen a|each|per side, about|around|only|maybe thirty|twenty|forty|fifteen|ten on each,
    not one left, not many left, how many should i have left, how many are left, standing|stands|sticking straight|bolt|upright,
    come|came|coming|work|worked|gone|hanging loose, dangling, hang|hanging away|by|off, lie|lying flat across|sideways, fan|<strand>|one has|have flipped,
    curl|curling|curled backwards|inwards, <joined>|tangle on|in|with each|one other|another, tangled, tangling,
    wont|cant|dont|doesnt brush|comb|brushing them|em|it? out|straight|through|apart, drooped, wilted, flopped,
    gone|went|go flat|limp|frizzy|spidery|wispy|stringy|fuzzy|squiffy|wonky|straggly, lost|losing their|its|the curl|bounce|lift|volume,
    given|gave|giving up the ghost, left the building|chat|party|group, on their way out, past their best, seen better days,
    bailing|bailed|bailin on me, mutiny, exodus, casualties, lash down, fallen soldiers|comrades, emigrated, evacuated, deserting,
    on strike, worn out, they|theyve|<strand> all? but? disappeared|disappearing|vanished, raggedy, scraggly, straggly, stragglers, tatty, mangy, askew, skewwhiff, squiffy, sparser, frayed, frizzy, spindly,
    looking|gettin|getting|going thin|thinner|<bare>|empty, <hole> where, where the longest|outer|inner|long|others ones? were|was,
    hole|gap|gaps now|there|everywhere|underneath, strip|patch|bit|spot with nothing, nothing on it|them|there, nothing left on,
    shaved, balder, shorn, left|right side|set|half has given|died, stuck to|on|in each|them|the brush|towel, bare bit|bits|patch|patches|strip|lids|lid|corner, tuft|tufts|wisp|wisps|clump|clumps left|remain|remains|remaining,
    fewer|less <strand>, hardly|barely any left, lost|losing|dropped the lot, lost|losing|lose a third,
    losing|lose them overnight|already|the|so|quick|fast, good few from|off|gone, lash|lashes has|have departed|died|resigned|fled|escaped,
    more .. pillow|cheek|towel|floor than, everywhere|anywhere except|but my eyes|lids|face, more going on than,
    missing tooth|teeth, gap tooth, tips|ends <be>? snapped|bent|bend|split|kinked|chewed|frayed|broke|crimped, kinked|kinks in|at,
    look|looks chewed|nibbled|gnawed|plucked|moulted, split at the ends, closed up into, into single|big|three sticks|spikes,
    came|come|coming away when|with|tonight|today|yesterday, snagged on|in, heard it go|snap|pop|ping, was a pop|snap|ping,
    separating|separated|detaching|detached from the|my natural|real|own, growing|grown out,
    dozen|handful|bunch|loads .. on my shirt|top|jumper|lap|chest|desk, eleven|twelve|fifteen|twenty|thirteen fell|dropped|slid|gone, dropped about <some>,
    own|natural lashes <be> coming|falling, lashless, no lashes left|on|at, no lashes no, spaced out, lash front, lash|lashes drop|dropped|comot
"""

# One side compared with the other: the side is the one that she speaks of.
_NOT_SIDE = """
    than|unlike my|the right|left one|eye|side|lid|set?, left|right eye|side|one? not so|as much|full|many, different to|from my|the left|right
"""

# What tells of falling lashes beside a word for the eye, whatever stands between: no matter for the second opinion.
_SHEDDING = """
    <bare>|gap|gaps|hole .. of .. <eye>|<lashes>|corner, <strand> .. of .. <eye> .. <shed>,
    <bare>|gap|gaps|hole|holes|parting|sparse .. <eye>|<lashes>|corner|corners, <eye>|corner|corners .. <bare>|gap|gaps|gappy,
    <strand> .. <shed> .. <eye>|<lashes>|corner|corners|side,
    no|few|fewer|hardly|barely|missing .. <strand> .. <eye>|corner|corners|side, <eye>|corner|corners|side .. no|few|fewer|hardly|barely|missing .. <strand>,
    <eye>|side|corner loses|losing|lost|lose .. <strand>, soldiers .. <eye>|side, chunk|clump|bunch|handful|cluster .. <shed>|off|out .. <eye>|corner
"""

TOPICS = {"shedding": _SHEDDING, "bald": _BALD, "retention": _RETENTION, "notside": _NOT_SIDE}
