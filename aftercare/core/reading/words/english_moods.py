"""English for what displeases and pleases about a visit, for small talk, and for what only sounds like a sign there.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

_FIGURE = """
    pinky nail|finger|swear|promise|toe|sized, something i am|im doing wrong, am i doing something? wrong, what am i doing wrong, breathe|breathed|sneeze|sneezed near them|it|mine,
    blind with|from rage|fury|anger|anguish, blind rage|fury, see red, bleeding money|cash|us|me dry, bleed|bleeds|bled me|us dry,
    choking|choke|choked on that|your|the price|bill|invoice|total|cost, burned|burnt|stung|scalded by your|the|that|those fee|fees|price|prices|policy|bill|cancellation|offer,
    feeling|feel|felt burned by, poke|gouge|claw|stab|scratch my own eyes|eye out, rather poke|gouge|stab, sack of spuds|potatoes|coal, bone to pick,
    stingy with|on|about|portion|set|discount, poked|poking|poke fun, tight with|tightwad money|lashes|discounts|fisted, stabbed in the back, stab in the back,
    wont|will|never see that|it|them|again again?, pounds|euro|euros|quid|dollars|hours i|we wont|will|never see, cant|couldnt even see em|them,
    cant|cannot|couldnt go to|into|out|back school|work|church|mass|class|there|like|dressed, cant|cannot|couldnt feel my feet|toes|hands|fingers|legs|bum .. cold|freezing|froze,
    couldnt feel my feet|toes|fingers|bum, fan blew cold|hot, cold air in my ear,
    burning up the|my group|chat|internet|timeline, apps|dms|phone|inbox|comments|chat|insta are|is on fire,
    swooning, swoon, swelling|swell of my ego|pride|head|confidence, ego|head|pride .. swelling|swelled, stung by jealousy|envy|her|his|their,
    blinded by my|your|her|our|their own? beauty|looks|lashes|gorgeousness|brilliance, into tears|song at|over how, <eye> watered|teared|welled up? when i saw|seen, <eye> watered|teared|welled up? at the price|bill|photos|cost,
    eyes are doing|do all? the talking, kind eyes, anybody|anyone|nobody|noone else near my <eye>, petting|stroking|touching my eyes|lashes,
    would blink again|twice, 10|ten out of 10|ten would, lash|wedding|spring|cabin fever, foaming at the mouth,
    look|looks|looked like awnings|curtains|canopies|umbrellas|fans|shutters|spiders|feathers|brushes|caterpillars, lids look|looking like awnings|umbrellas|curtains|canopies|porches|roofs,
    make|makes|made my lids|eyes|eye look|feel tired|old|droopy|small|smaller|tiny|heavy|sad,
    right|left eye|side|one is|looks|looked bushier|longer|fuller|shorter|fluffier, came|come out bushier|longer|thicker|fuller|shorter|higher|lower|thinner,
    face looks hard|harsh|cross|cheap|angry|stern|severe|different, too thick|dark|long|much|full|heavy|short|black|thin .. too? thick|dark|long|much|full|heavy|black, all angles,
    over|around|about the shop, length|lengths|lashes is|are all over, my head about|around, dragged|drags|drag|weigh|weighs my eyes|lids|eyelids|eye down, lids|eyelids feel like theyre wearing,
    pink|red|purple|yellow|grey|blue ducks|umbrella|brolly|scarf|hat|mug|coat|mittens|gloves|purse|flask|cardi, umbrella .. pink|red, see the rainbow|sunset|snow over,
    should|shouldve see|seen the|my, wet nails|hair|paint|hands|floor|dog|coat, hand|handed in|over a|my|the|some, bear w|with me|us, lashes as ashes, put .. as, autocorrect|dictation|siri|phone .. lashes|eyes|lids,
    candles went out, weeping|crying with joy|laughter|pride|happiness, nearly|almost fainted|died when|at|seeing, fainted when he|she|they saw, pain in my wallet|purse|pocket|bum|backside|neck,
    sick to my stomach at|about|over what|how|the|that, sore about|at|over the|that|your|how|being, hurt my feelings|pride|soul, hurts to look at my|the, makes|make your|my ears bleed, ears bleed|bleeding,
    my back|spine is? broke|broken|killing|wrecked from|on|after, broke my back, bed|chair|table broke|killed|wrecked|ruined my back|neck|hips,
    breathed garlic|onions, dust|dirt all over it|everything, shut your eyes, with your eyes closed|shut, in the dark, stain|stained|strained my reputation|patience
"""

_WEAK = """
    look|looks|looked tiny|hard|harsh|cross|angry|old|older|tired|droopy|cheap|fake|odd|weird|daft|stupid|silly|bad|rough|drawn|uneven|different|sad|sleepy|mad|ill|hooded,
    makes|make|made me look|feel like|tired|old|hard|cross|angry|cheap|silly|stupid|fat|bald|ill|sad|sick,
    make|makes|made my eyes|lids|face|mouth look|feel,
    left|kept in the|me corridor|waiting|sitting|lying|standing|hanging,
    had to|2|two sit|wait|stand|lie|chase|ask,
    felt pressured|pushed|bullied|robbed|cheated|silly|invisible|small|used|trapped|like|unwelcome,
    treated|treats|treat me|us|like|as like|as|a,
    worse since|every|now,
    got|getting|gets worse,
    disaster,
    useless,
    nightmare,
    could cry|scream|weep at|when|with|over,
    sick to my stomach,
    face on me,
    hurts to look at my|the bank|account|receipt,
    doing my head in,
    bit much,
    shocking service
"""

_COMPLAINT = f"""
    {_WEAK},
    too thick|dark|long|much|full|heavy|short|black|dramatic|bold|thin|curly|straight|bushy, far too|much, much too, bone to pick, all over the shop, stingy with|about, blind with rage|fury, bleeding money,
    choking on that|the|your price, burned by your, no hello|goodbye|sorry|apology|smile|tea|welcome|thank|explanation|refund|receipt|greeting, killed|kill|hurt|cost her|him|you|them|ye to smile|say|ask|listen|apologise|apologize|reply|wait|check,
    what|who charges|charge for|a|full, full whack, price rise|hike|increase|jump|list, price|prices went|gone|going|go|keeps|keep up|rising, standards|quality|service went|gone|slipped|dropped|slipping|down, gone downhill, downhill,
    gone|went up fifteen|ten|twenty|five|by|again|since|a, it's|its|was|thats an|a insult|liberty|disgrace|cheek|rip|con|farce|shambles|circus|nightmare|joke, insulting, insult to, rip|ripped off, con artist|artists|job, mortgage,
    bait and switch, my lawyer|solicitor, trading standards|ombudsman, report|reporting|reported it|you|her|this|them, last straw, first and last, had enough of, not before|after 9|8|9am|8am|10, text|texts|message|messages woke, woke me|the|us,
    so many|why messages|texts|reminders|so, too many messages|texts|reminders|emails, all these texts|messages|reminders, messages|texts|reminders|reminder for one|a, reminders come|arrive, one is enough, more than my mother|mum|mam|boss|bank|kids, cut it down,
    text|texted|texting me at 5am|6am|7am|midnight|dawn|6|5|night|stupid, wise up, get a grip, do better, sort it|that|yourself|yourselves|this|the|yer out|heating|music|place, need|needs to sort, needs a good hoover|clean|scrub|tidy|sweep, get aircon|heating|real,
    turn .. music|radio|telly|volume|heating|fan down|off|up, music|radio|playlist|speaker was|is|the|so, whoever picked, playlist, ears bleed, hear myself think, building work, banging next|the|all, adverts, drilling, noisy, deafening,
    smelled|smelt|stank|stinks|reeked|reeks|smell|smells of|like|in|off, hair on it|the|her, was|were|is|its filthy|grubby|manky|dusty|sticky|freezing|baltic|boiling|roasting|an, icebox, was|im|were|got roasted|frozen|boiled, sauna in, be cleaner|gentler|quieter|kinder|careful|consistent|nicer|honest|clear, rough hands|with|handed,
    heavy handed, ham fisted, cack handed, slab of meat, piece of meat, on that table|bed|chair, yanked|shoved|pushed|pulled|manhandled|jabbed my|me head|about|around|face|arm, bossed|ordered|pushed|hurried|rushed me? about|around|through, fobbed|fob|palmed me|you|her|us? off,
    shabby, treatment of, nobody|noone|no|not is|one|even even|giving|offered|answered|apologised|said|told|explained|cared, suck it up,
    sighed|laughed|snapped|shouted|huffed|tutted|rolled|moaned at|on|over me|my|her|us, laughed at my|me, commented on|about my, remarks|comments|comment about|on my, gossiping|gossiped|gossip|argue|argued|argued|moaned|chatted|talked about|with|on|over|through|the, on speaker, on her|his|the phone|mobile,
    lunch while|during, had|ate|eating|having her|his lunch|sandwich|dinner, was shaking, have a certificate|licence|license, even qualified|trained|certified|listen|look, a trainee, with the trainee|junior|apprentice|newbie|new, putting|put me with, felt pressured|pushed|bullied|robbed|cheated|silly|invisible|small|used|trapped|like|unwelcome,
    pressured into, robbed, cheated, conned, mugged off, done out, stabbed in the back, you give me this, give|gave|given me this|that|somebody|someone|cat|doll|spiders|strips, i said|asked|wanted|ordered|booked|chose|paid|showed .. you|u|ye|yous|she|he|came|got|get gave|did|got|give|out|put|went|different|cat,
    asked|ask for? natural|subtle|soft|short|brown|light|wispy|classic|small|simple, is not|isnt natural|subtle|soft|wispy|brown|black|what, wanted soft|subtle|natural|brown|short|simple|wispy|less|light, came in|for for|a subtle|natural, i said chocolate|brown|natural|soft|short|wispy|classic|doll|subtle|light,
    were|was|are meant|supposed|sposed|promised|told to|me be?, meant to be, you|she|ye|yous told me|us id|youd, i was told|promised|quoted|charged|left|ignored, promised me|us the|a discount|refund|free|slot, you|she|ye said youd|id|shed|wed, she said she|shed, she|he|you|ye|yous|nobody never called|rang|replied|answered|showed|apologised|apologized|listened|mentioned,
    so much for, thanks a bunch, cheers for that|nothing, some service|treatment|apology|discount|offer|guarantee|welcome|loyalty, no loyalty, wasnt|isnt|was not|is not|not good|worth|fair|right|honoured|acceptable|professional|it service|it|enough|on?, not as nice|good|full|long|neat|pretty|soft|fluffy|even as, worse since|every|now,
    better before|from|elsewhere|off, looked better, had better from, nicer|better lashes from|in|on|elsewhere, kitchen table, same as when, why pay|bother, what|wat i|did|am i? paid|paying|pay for, what am i, for that|this money|mess|lot|carry|price|rubbish, for THAT, for eight|ten|six|five lashes, quid|pound|pounds|euro|euros|dollars|bucks for that|this|it|what|these,
    pay that|this again|for|much, wouldnt pay, wouldnt|wont let a|my|anyone donkey|dog|again|touch, wouldnt recommend|send|go|wish|be back, money down the, down the drain|toilet|pan, nothing to show, my money|deposit|refund|receipt|invoice|discount back|yet|please|returned|is|was, i want my money, refund my|me|the|please, refund, deposit .. back|refund|returned|return, return of my deposit|money,
    gift card|voucher not|refused|declined|invalid|expired, guarantee honoured|honored|is|was, told valid|not|it|to, consistent, different price|prices|every|each, parking ticket|fine because|cos|cause|as, you overran|overran|ran|cancelled|canceled|forgot|lost|ruined|messed|mucked, cancelled|canceled|cancelling on me|us, third|second|fourth time now|in|you|the|running|this, hour late starting|opening|again|and,
    double booked me, ignored my|me|all, no reply|answer|response|word from|yet|for|in|since, patience is|wearing, been very? patient, wearing thin, ghosted, wheres|whens the|my apology|refund|manager|receipt, speak|talk to the|your|whoever manager|owner|boss, complain, complaint, reviews, be reading my review,
    look|looking|looks like basset|bush|sheep|cow|giraffe|ostrich|camel|alpaca|llama|horse|pantomime|panto|awnings|brackets|bats|slugs|mops|doormats, makes|make|made me look|feel like|tired|old|hard|cross|angry|cheap|silly|stupid|fat|bald|ill|sad|sick,
    like they were|are|my|someone put|done|drawn|glued|stuck|thrown|beginner|child|blind, like a beginner|robot|trainee, beginner did, toddler did, drawn on by, did them|it|this|the with|in|on your|eyes|the|a eyes|closed|bus|dark, were put on in,
    crime against, what were you thinking|at|on, what was she|he|i thinking|at, who signed, who checked, did nobody|noone|anyone|anybody check|look|notice|think|measure, bland, boring, beige, all style, no substance, as much as a brick, this aint it, aint it chief|hun|love, aint no way, a theyre a bit much, bit much, deleted it|that|them,
    one eye|side|is|looks|flicks .. other|one|the flat|eye|side|one|down|isnt|is, whys one eye|side|lash, both eyes look different, look like two different, dont match, mismatched, asymmetrical, asymmetric, wonky, lopsided, one flicks, longer|shorter|thicker|thinner|higher|lower|fuller|bushier than my|the|all|other|in|on right|left|rest|other|others?, is higher|lower|bushier|thinner|shorter|longer|flat|uneven,
    shorter than all, doing my head, does my head, in brackets, bushier, somebody elses eyes|face|lashes, wearing me, crying shame, cry at what, pain in my wallet, carry on at|with, theres no volume|curl|length|shape, no volume|curl in|at|to, dead straight, where is the curl|volume|length,
    wheres the curl|volume|length|fluff, not what we|i|you, arent|isnt|wasnt what we|i discussed|agreed|asked|wanted|booked|paid|ordered|expected|said, no offence but|tho|though|they, no hard feelings but, quite frankly, dont like|want|rate em|it|them, want em|them|it off|out|gone|fixed|redone|changed, take them off me, pay attention, chaotic, finish poor, the finish, front desk is|was, customer service,
    poor show, you people, you lot, yous need, yall need, hygiene, a disgrace, a shambles, farce, circus, unhelpful, unwelcome, hopeless, clueless, amateur, amateurs, incompetent, sloppy, slapdash,
    shocking|appalling|terrible|awful|poor|bad|dreadful|disgusting|abysmal|shoddy service|treatment|manners|attitude|job|work|show|finish|experience|communication, lets be honest it|they, ginger lmao|lol|i|when|and, embarrassed, mortified, so embarrassed, my weight, my accent, coloured tips, cold air in, tell your girl|staff|lady|ones, staff, standards, overpriced, over priced, waste, overcharged, never again, never going|coming|setting back|again|foot
"""

_FINE = """
    swooning, blinded by my own, lash fever, foaming at the mouth over, im hot now, would blink again, eyes are doing the talking, burning up the group,
    sight to behold, knocked it out|outta the|of, out the park, created a monster|menace, a menace now, blame you, hug|kiss|marry|squeeze|cuddle you, made my day|week|year|birthday|month|night|weekend|holiday|wedding, made an|a old|tired|happy lady|woman|bride|mum|mom|girl,
    some woman for, youve done it again, you did that, quality that|stuff|work|job, better than my|the|any|i|last marriage|last|ex|others|place|imagined|expected|before|mascara?, country mile, hold better, stopped me|us in|on|at|to the|supermarket|street|shop|town|ask, two strangers|people|women|ladies,
    heart eyes, clever thing|girl|hands|clogs|woman, big yes, put together, i look|looking|looked awake|alive|younger|rested|expensive|fresher|twenty|eighteen|21|25, have not been awake, like i did at|when|on, years off me, ten years off, taken years off, years younger, stunned|stunned the|my|them|him|her silence|inlaws|husband|room|everyone?, into silence,
    wasted in this, come to play, sharp enough to|cut, cut a man|glass|steel|bread, cheekbones, eyes sparkle|dance|pop|sing|twinkle, old eyes sparkle, mind blown, blew my mind, match|matched to the, to the millimetre|millimeter|mm, never had better, didnt|dont|havent budge|budged, they are all still here, sorcery, witchcraft,
    lost his|their place|train|words, passport photo, mugshot, jeans fit, baby deer, bambi, for once, my ego, ego has, dating apps, group chat, insufferable, eye lift, face lift, facelift, botox, had work|something done, asked about|where|who my|did|i|does eyes|lashes|them|got, very neat|natural|clean|pretty|tidy|even|soft|happy|satisfied|pleased, neat and clean,
    fully|completely|totally|very|really|so satisfied|happy|pleased|impressed|chuffed|delighted, nobody|noone|no can tell|one, what i was after|wanted|asked|dreamed|hoped, love how you, i got soft|exactly|what, feels weird being, feel human|alive, being this pretty, back to the mirror, mirror about, flirting|winking|waving|smiling at myself|me, driving in the sun, built in sunshades, sunshades, sore cheeks from, cheeks from smiling,
    tears at how, patients|clients|customers|pupils|colleagues|coworkers keep|keeps telling|saying|asking, kind eyes, its all you, thats all you, all down to you, you are gifted|talented|magic|class|brilliant, gifted, hands of gold|magic|an|a, magic hands, golden hands, fanx, fanks, ta ever, thankyou, obsessed, iconic, living my best, walking|strutting|floating|skipping home|taller, admired|admires|admire my|them, candles went out, wind when i blink,
    you are|youre a|an|the wizard|magician|genius|angel|star|queen|legend|marvel|wonder|treasure, treasure, keeper, never leaving, never going anywhere|elsewhere|back, anybody else near my, nobody else touches, no one else touches, telly|film|movie|tv|hollywood version|star of, version of me, looking|look like my mum|mom|nan in
"""

# Kind words that are no word on her lashes: wishes, weather, food, and what others are.
_VOCATIVE = """
    happy|merry|blessed eid|sunday|monday|tuesday|wednesday|thursday|saturday|weekend|diwali|hanukkah|ramadan|holi|vaisakhi|mothers|fathers|valentines|paddys|stpatricks|anniversary|hols|bank|hump|days|holidays|lunar|chinese,
    lovely|nice|gorgeous|beautiful|great|fine|glorious|grand|perfect weather|day|morning|evening|afternoon|sunset|sunrise|sunshine|out|drying|lunch|dinner|walk|meal|to|wee|lady|girl|fella|family|baby|pups|garden|time|film|match for|to|by|over|at|meet|chat|hear|see?,
    lunch|dinner|tea|meal|food|weather|holiday|party|wedding|cake|concert|film|trip|walk|sunset was|is|were nice|lovely|great|good|gorgeous|amazing|perfect, sister|mum|mam|mom|nan|dog|cat|son|daughter|husband|brother|baby|niece|friend|fella is|s? lovely|gorgeous|beautiful|grand|great|cute|amazing by|so?,
    give|send|sending her|him|them|all|my|our|you my|our? love|regards|best|hugs, love to all|everyone|the|your|her|him, my love to, all my love, says hello|hi|hiya|thanks, say hello|hi, poor pet|love|thing|soul|wee|lamb, wee soul, sure look|lookit it?, great aunt|uncle|granny|gran|auntie|nan, congrats on|to|and|the, congratulations on|to|and, well done on|to|in|passing|getting,
    not today thank|thanks, no thank you, no thanks, thanks but no, only messing|joking|kidding|winding, good evening|morning|afternoon|night ma|maam|madam|sir|all|ladies|girls|dear|love|pet|hun|team, pet satnav|whats|are|can|do, postcode|address love|hun|pet|babe|doll, mommy|mummy|daddy|mama i|we|im, cake|pandas|seven|eight|six|five of them|at|for|w,
    they arrived|came|hatched|landed, arrived seven|safe|home|this|today, puppies|pups|kittens|chicks|lambs|ducklings arrived|came|born, great|good|fine for the garden|crops|grass|ducks, lovely jubbly, good grief|god|lord|heavens|luck|riddance|day, my goodness|word|lord, thank god|goodness|heavens|christ, theyre fine i suppose|guess, fine i suppose|guess
"""

# A message of hers that went to the wrong place: she is the one meant all the same.
_ASTRAY = """
    was|were|is meant for|to my|the|another|our|himself|hubby, meant for|to my sister|brother|mum|mam|mom|husband|boyfriend|friend|mate|group|boss|partner|daughter|son|cousin, wrong chat|window|thread|group|convo, sent to the wrong, ignore me, pocket dial|text
"""

_NOT_STOP = """
    thanks|thank|ta|cheers you|u for the|your|yer reminder|message|text|reminders|heads, for the reminder|heads, more than my mother|mum|mam|bank|kids, years off me, taken years off, taken ten years off, money|deposit back, cant refund, putting|put me with,
    off full stop, write full stop, send it full stop, full stop no
"""

_BOOKING = """
    need infill|refill|fill|infills|refills|topup|tidy, fill|infill|refill please|pls|tmrw|asap|soon, fill me in on|at|this, what u|you|ye|have|has? got|going|free|left|available fri|friday|sat|saturday|sun|mon|monday|tue|tues|wed|weds|thu|thurs|tomorrow|this|next,
    tidy up on|this|next|before|monday|tuesday|wednesday|thursday|friday|saturday|please, top|topped|topping them? up before|on|this|next|for|please|tomorrow|friday|saturday, tidied|topped|filled up|in before|for|on, taken off before|on|this|tomorrow|please|today|soon,
    can|could|will|would you|u|ye fit|see|take|squeeze|have me|us early|earlier|sooner|before|in|tomorrow|today|friday|saturday, fix .. before|b4 my|the|prom|sat|friday|saturday|wedding|holiday, can|could i|we come back|in|over|round|down,
    when's|whens|when free|best|good|next|suits, want em|them off|out|gone today|tomorrow|asap|now, <day> after|before|around|at 1|2|3|4|5|6|9|10|11|noon ok|okay|good|free|work?, have the|a strays|old|rest|remaining taken, come tomorrow|today|friday for
"""

_QUESTION = """
    kindly suggest|guide|confirm|clarify|explain|inform, please suggest|clarify|explain|confirm, covered by the|your|ur|a guarantee|warranty|policy, coincidence, is that|this|it covered, did u|you get my|the, any idea why|what|how, do i leave|keep|bin|take, have a look|see when|at|on,
    whats it cost|for, could you tell, can you explain, explain why|how|what, how do i send|return|complain, which is it, when can i expect, is there any|a way you|to|of, whys|why do|does|is|are|did|would they|it|the|mine|my, does she|he|it|that even|have|need|work, are you shut|open|closed|about|in|around,
    can somebody|someone|anybody let|ring|call|tell|check, would you be wanting, should i be worried|worrying, maybe the, is there something
"""

_NOT_BOOKING = """
    what time do|does|are you|ye|u|yous|it|they|the|shop close|closed|open|shut|finish|start, when do you|ye|u close|open|shut, bins are|is|go, ugh mondays|tuesdays|sundays, late reply|replying|getting|night|response|with, for late reply, need to|i bring anything|bring|wear|eat|pay, do i need to bring, tell .. the|his|my wife|mum|husband|mam|brother|sister im|the|hes, for the boiler|gas|oven|car|washing,
    drivers|driver there|is|till|until, needs signing, free range|eggs|infill|fill i|any|this|for?, a free infill|refill|fill, double booked me, infill price|prices, price for|of an? infill|refill|fill, pallet|parcel|package|delivery|order|invoice for|to|on|is|at, at his|her|their|my dads|mums|nans|exs, my weekend was, your weekend, how was your weekend, in w|with the cake, funeral is|was|on,
    scaffold|scaffolding|skip|removal|bin|bins men|man|coming|down|goes|comes, coming down|off|out|up monday|tuesday|wednesday|thursday|friday, school run|sports|play|pickup, five minutes of|to answer|for a|chat|to, do you have 5|five|a few|10|ten min|minutes|mins|minute, be gentler|kinder|nicer|quieter, gentler next time, next time ask|please|dont|tell|be|maybe|less, every time i visit, one appointment wise, for one appointment, came in for|looking
"""

TOPICS = {
    "figure": _FIGURE,
    "complaint_weak": _WEAK,
    "complaint": _COMPLAINT,
    "fine": _FINE,
    "vocative": _VOCATIVE,
    "booking": _BOOKING,
    "question": _QUESTION,
    "notbooking": _NOT_BOOKING,
    "notstop": _NOT_STOP,
    "astray": _ASTRAY,
}
