"""How English denies, doubts, dates and ascribes: what stands around a sign and changes what it means.

After the published ideas of NegEx (Chapman and others 2001) and ConText (Harkema and others 2009): triggers, phrases
that only look like triggers, and words that end a scope. The lists are our own, for chat rather than for charts.
How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

SCOPE = {
    "no": """
        so much for the|that|those|all|my|your?, no sleep crust|sand|dust|gunk|gunge|goop|grit, nothing
        near|around|about|on|in|under|behind my|the|either eye|eyes|lid|lids|lash|lashes, not a grain|crumb|fleck
        of?, not so much as a|an|one, without so much as a|an, not even a|one, not the
        faintest|smallest|tiniest|littlest, nary|without|no|zero|never|nor|aint a|an|the|any|one?
        hint|trace|touch|tinge|whisper|suggestion|shred|drop|ounce|flicker|scrap|jot|iota|whiff|smidge|smidgen|speck|twinge|tickle|lick|bit
        of, not a|any|one
        hint|trace|touch|tinge|whisper|suggestion|shred|drop|ounce|flicker|scrap|jot|iota|whiff|smidge|smidgen|speck|twinge|tickle|lick|bit
        of, couldnt be any? less, nope|nah|nil|nay to|on, none of the, none of the|your|my|that|it, no more of|o
        that|the|this|those|it, no, zero, 0, without, w/o, nor, neither, not any, not a single, not one, not a,
        never any, nothing like, no sign{s/} of, free of, free from, absence of, denies, deny, denying, denied,
        negative for, nil, no more, not the slightest, none of, not even a, no trace of, nary a, hardly any sign, no
        kind of, no type of, nothing in the way of, zilch, nada, not an ounce of, not much of a
    """,
    "turned": """
        hasnt|havent|hadnt|isnt|arent|didnt|doesnt|dont|aint|wasnt|never gone|go|going|went|turn|turned|turning all?
        red|pink|puffy|swollen|blurry|cloudy|hazy|stringy|gooey|crusty|itchy|sore|bloodshot|watery|raw|lumpy|bumpy|hard|sticky|gunky|streaming|rosy|flaky|crimson|weepy|gritty|scratchy|tight|dry|teary|goopy|fuzzy|funny|manky,
        not gone|turned
        red|pink|puffy|swollen|blurry|cloudy|hazy|crusty|itchy|sore|bloodshot|watery|lumpy|bumpy|sticky|gunky|flaky|weepy
    """,
    "not": """
        where got, dem|them|it|me|eye|eyes|lid|lids|they|lash|lashes nah|nuh, nae, isnt|wasnt|arent because, not
        because, not|isnt as if|though, not that they|it|theyre|its|my|i|either|any, not, isnt, arent, wasnt,
        werent, dont, doesnt, didnt, hasnt, havent, hadnt, aint, never, nope not, wont, wouldnt, cant
        see|feel|find|notice|spot any|a, cannot see|feel|find|notice any|a, cant say
        ive|i|its|theyre|they|it|there|that, cannot say ive|i|that, couldnt see|feel|find any, nothing is, nothings,
        dont think i|ive|theres|there|they|we have|had|is|are|noticed|got|see|seen|feel? any, nothing, none of
        it|them|that, no longer, noone, nowhere, isn, not at all, not once, never once, not remotely, not in the
        least, neither of them|my|is|are, failed to
    """,
    "nonneg": """
        in the|at zero, wouldnt|dont|couldnt|wont|never wish this|that|it|these, wouldnt|dont|couldnt|never wish ..
        on|upon, turn|turned|turning|turns .. screen|phone|brightness|lights|telly|tv|monitor|laptop|tablet .. down,
        pulled|pull|pulling|drew|drawn|shut the? blinds|curtains|blind .. down, a no go, is|are a no,
        crying|weeping|tearing without crying|reason|being|feeling|any, not|arent|isnt|aint having a|the|much
        good|great|best|nice|lovely|fun, didnt|dont|doesnt|never really?
        like|love|agree|enjoy|appreciate|liking|loving|agreeing with|to|that|the|this|these|your|it|them, no more
        than|so, havent|hasnt|not|never|arent|isnt|dont|doesnt been|felt|feel|looked? the same|themselves|itself,
        sure|certain|positive you|u|this|it|its|theyre|i|they|that didnt|isnt|not|dont|havent|arent|wasnt,
        isnt|not|arent|aint|doesnt|didnt|wont making|make|made any|much|a|the|no? difference|dent|odds,
        isnt|arent|aint|not|wont|doesnt|dont|didnt touching|touch|touched|shifting|shift|cutting, i can do not,
        barely|hardly|scarcely see|open|read|look|stand|bear|touch|sleep|think|drive|blink|keep|focus|breathe|move,
        never known|felt|had|seen|experienced|suffered .. like it|this|that|these, never
        known|felt|had|seen|experienced .. this|so bad|badly|sore|much, nothing|none|neither|no|nowt ..
        takes|take|taking|touches|touch|touching|shifts|shift|shifting|budges|budge|helps|help|helping|eases|ease|easing|soothes|soothe|calms|calm|calming|stops|stop|relieves|relieve|brings|bring|settles|settle|reduces|reduce|dulls|dull|cures|kills|lifts|clears|fixes|sorts|cuts|lessens|quells|dents
        the|this|my|these|it|down|off|on|for|any, no|not|isnt|aint a|an|one|single?
        hour|minute|second|moment|day|night|morning|blink goes|passes|without|that|when|where|they|it|i,
        no|not|isnt|aint a|an|one|single? hour|minute|second|moment|day|night|morning|blink ..
        without|dont|doesnt|arent|isnt|that|havent, if it wasnt|werent|isnt for, were it not for,
        love|like|enjoy|happier|better|perfect|nicer|comfier .. if they|it|the|my ..
        didnt|werent|wasnt|dont|arent|isnt, if only .. didnt|werent|wasnt|wouldnt, not|never once
        did|has|have|does|do it|they|the|my .. stop|stopped|ease|eased|let|quit, hardly|barely|scarcely a|an
        day|hour|minute|moment|night|blink goes|passes|went? by? without, could|can|would be|do|use a?
        lot|bit|little|touch less|fewer, do|done with a? lot|bit? less|fewer, say|saying no to less|fewer|some,
        could do with less|fewer, thank|thanks|cheers|ta you? so? very? much? for
        the|that|this|my|these|your|giving, isnt|not that theyre|its|im|thats|my|the not|no|free|fine,
        arent|isnt|theyre|its|are|is|not exactly|quite|strictly|precisely|entirely not|without|free|un, not
        exactly|quite|strictly not|without|no, not unred|unswollen|unitchy|unsore|painless, no wait, no hang on, no
        hold on, no actually, no scrap that, no i lie, no tell a lie, so much for
        no|not|painless|calm|feeling|it|being, nothing near normal|right|ok|okay|fine|as, nothing is
        touching|shifting|denting|dulling|easing, gone|went|going pure|all|dead|bright|well|bit?
        red|pink|puffy|swollen|blurry|cloudy|hazy|stringy|gooey|crusty|itchy|sore|bloodshot|watery|raw|lumpy|bumpy|hard|sticky|gunky|streaming|rosy|flaky|crimson,
        wont|cant|couldnt|refuse|refuses|dont take|tolerate|stand|bear|accept|abide|have
        them|it|that|anything|my|contacts|contact|lenses|any, not|arent|isnt|dont|no|never longer?
        friends|mates|pals|speaking|talking|shrunk|shrinking, going to be wanting|rubbing|scratching|wiping|dabbing,
        itll|theyll|should|will be|b|have gone|clear|cleared|over|fine|better|normal by|tomorrow|soon,
        coming|comes|come and going|goes|go,
        keeps|keep|starts|running|crying|watering|weeping|leaking|streaming|tearing|dripping|going|blubbing .. on
        its|their|it own, its|itll dying down, having none of it|this|that, cant|couldnt|cannot
        hardly|barely|scarcely
        drive|walk|work|open|look|stand|stay|go|sit|watch|read|cook|sleep|eat|move|touch|think|bear|keep|do,
        swelled|swollen|swole|puffed|come|came|broke|broken|red|itchy|itching|rash|hives|spots|bumps|blotches|sore|burning|blotchy|puffy|spread
        up|out? all over and|now, gone|went|going|turned bright|dark|all|bit|really?
        brown|purple|orange|yellow|green|black|blue|grey|gray|dark|sticky|crispy|hard|wrong|funny|weird|numb|tight,
        eye|eyes|lid|lids are|is|have|has? nearly|almost|practically|basically|virtually
        gone|disappeared|vanished|closed|shut and|under|behind|in|with|cos|because|from, my eyes are
        nearly|almost|practically|basically gone, still going up, glue|adhesive|lashes|extensions|they|product
        just|still|only? settling in?, wont|not|never|doesnt|dont|didnt|wouldnt
        give|gives|giving|leave|let|ease|eases|pack|packs|letting over|in|off|up
        watering|itching|hurting|burning|stinging|streaming|running|throbbing?, wont|never|doesnt|dont|not
        give|gives over, not being able, no signal|internet|wifi|reception|service|battery at|on|out|in|here?,
        its|has|have|had|been gone|went|going on ever|all|since|for|and|too|a, gone|going
        downhill|backwards|haywire|bonkers|mad|mental|crazy, not even a crack|chink|slit|sliver|glimmer,
        wouldnt|couldnt know about|how|if|what|whether|as, blink blink .. gone, a|one|two|few|couple|quick
        blink|blinks .. its? gone|clear|clears|sharp, turn|turned|turning|put my|me|the
        phone|screen|telly|tv|laptop|monitor|dimmer right|way|all? down,
        brightness|volume|lamp|light|lights|blinds|curtains .. down, turned .. brightness|lights|lamp .. down,
        want|wants|need|needs .. stopped|gone|sorted|fixed, lying if i said|say ..
        wasnt|isnt|arent|werent|didnt|dont|doesnt|not|no, id be lying .. wasnt|isnt|arent|werent|didnt|dont|doesnt,
        hardly worth mentioning|a, barely worth mentioning|a, not worth mentioning, not make|making a fuss, cant say
        .. isnt|arent|doesnt|dont|wasnt, cant pretend .. isnt|arent|doesnt|dont|wasnt, no let up, no letup,
        zero|without let up|letup, no sign of .. going|stopping|easing|settling|shifting|budging|improving, no end
        in sight, havent|hasnt|not|didnt|wont|arent|isnt|never
        faded|fading|fade|shifted|lifted|moved|changed|improved|eased|budged|healed|recovered|subsided|resolved|passed|vanished|disappeared|gone,
        gone|went|goes|going|got right|straight in|into, gone|went|going|go|been|got|getting through ..
        tissue{s/}|box|boxes|pack|packs|hankies|kleenex|roll|drops|bottle, ceiling|sky|roof|walls .. coming|comin
        down|in, wont|doesnt|cant|dont|not|never dry up|out|off, so i|as? wouldnt|dont|wont|cant|didnt
        scratch|rub|claw|rip|pick|touch|itch, not me being, nothing says, nothing like .. to, dont exactly|quite
        love|enjoy, never a dull moment, wouldnt wish, wont|hasnt|havent|doesnt|dont|didnt quit|let, since
        yesterday|morning|night|evening only, wont be|b
        driving|able|sleeping|coming|in|there|going|working|at|making, wish|love|like i? could|to say|tell|report ..
        stopped|gone|better|over|cleared|settled|fine, wish i could say it|they|the|my, would love to say, not that
        .. arent|isnt|dont|doesnt, it isnt that, isnt that my|the .. arent|isnt|dont|doesnt, not so much .. as|more,
        not just, not merely, not simply, it doesnt|dont not, they dont|doesnt not,
        doesnt|dont|isnt|arent|didnt|hasnt not, isnt exactly not, arent exactly not, wouldnt say
        they|it|its|theyre|my|the <eye>? dont|doesnt|arent|isnt|not, wouldnt exactly say ..
        dont|doesnt|arent|isnt|not, wouldnt call it|them|this nothing|fine|comfortable|pleasant, could also? be
        less|better, would be lying if i said .. not|no|dont|doesnt|isnt|arent, lying if i said|told, hard to say ..
        not|isnt|arent|dont, not as if they|it dont|doesnt|arent|isnt, not for lack|want of, hardly the
        end|worth|worst, thought|hoped|told|said .. would be gone|over|better|settled|cleared,
        thought|hoped|expected .. gone|over|better by, cant honestly say .. not|isnt|arent|dont|doesnt, no matter
        how|what, no getting away from, no end of, no two ways, no luck, no joy, no change on|with, no difference,
        nothing for it, nothing i do, nothing shifts|touches|calms|soothes|eases, not a patch on, not shy, not the
        same, not before|until, not once a, no gas no, cant|cannot say .. arent|isnt|dont|doesnt|not, cant|cannot
        pretend .. arent|isnt|dont|doesnt|not|no, say they|it|my dont|doesnt|arent|isnt .. cause|because, lie n|and
        say .. dont|doesnt|arent|isnt|no|not, isnt not, arent not, wasnt not, isn't not, stand no
        light|sun|brightness, cant stand no, couldnt stand no, not saying they|it|theres|my|the
        dont|doesnt|isnt|arent|no|not, not saying they|it|there|my|eyes|lids <eye>? dont|doesnt|arent|isnt, cant say
        ive|theres|its|theyre|im no|not, cant say i have|dont|havent no|not|have|feel, cant say they|it
        dont|doesnt|arent|isnt, cant say there is|are|isnt no|not|any, not a day|night|hour|minute|moment goes by?
        without, no day|night|hour goes by? without, never without, not without, never had this|that|it|such|these,
        ive never had this|that|it, never felt this|like|so, thought itd be|go, thought it would be|go, should be
        gone, should have gone, shouldve gone, supposed to be gone, still not gone, will it go, will they go, hope
        it goes, hoping it goes, when does it go, when will it go, not that they|it dont|doesnt|arent|isnt, isnt
        that they|it dont|doesnt|arent|isnt, isnt that they|it, not that they|it, its not that it|they, werent fine,
        were fine until|till|before|at, was fine until|till|before|at, fine until, no use, no good now, not enough,
        cant tolerate, cannot tolerate, not the first time, not nice, not nothing, isnt nothing, not much help, not
        liking, not loving, dont wish to make|alarm|bother|worry, do not wish to make|alarm|bother|worry|complain,
        do not want to, do not like, not wanting to, no pressure, no hurry, not getting smaller|less, isnt getting
        smaller|less, not shifting, not normal for me, didnt eat, havent eaten, not doing much, not clearing, isnt
        clearing, arent clearing, doesnt clear, not happening, aint happening, blinking does nothing, does nothing,
        did nothing, do nothing, nothing happens, nothing happened, tried .. nothing, water nothing, no wonder, no
        doubt, no joke, no lie, not gonna lie, not going to lie, no cap, not only, not sure, no idea, dont know, do
        not know, didnt know, dont know if|why|what|whether|how, dont understand, didnt mention, no matter
        if|where|when|which|who|whether|the|i|they, not to mention, not happy with|about|that, not impressed, not
        pleased, dont like, dont love, didnt like, dont want to bother|worry|alarm|complain|be, dont want, dont
        wanna, didnt want, dont mean to, didnt mean to, didnt expect, wasnt expecting, not expecting, wasnt
        prepared, wasnt ready, dont remember, not one to complain|fuss|moan, not usually, not normally, isnt normal,
        arent normal, not normal, doesnt look normal|right|good, doesnt feel normal|right|good, isnt right, not
        right, isnt good, not good, not ok, not to scratch|rub|claw|itch,
        isnt|arent|aint|not|doesnt|wont|hasnt|havent dying|die|died|calmed|dimmed|shrunk|dried|let|given|giving|gone
        down|off|up|away|out|one|a, till|until|til|when|once|after they|theyve|its|it|the|that|cars|car
        have|has|had? passed|gone|past|driven, itll|theyll|will|should|shall|gonna|would|will it|they?
        be|b|have|been? away|off|history|done|out|settled|faded|a|back
        by|tonight|tomorrow|soon|in|before|thing|memory, right|all|straight|way down|up to|from my|the|me?
        toes|toe|feet|ankles|knees|legs|soles|scalp|hairline|ears, hasnt|havent|not shrunk|shrinking|shrank, nothing
        stops|helps|works|settles|relieves|cures|fixes|makes, no one|nobody|noone|never said|told|warned|mentioned
        me? it|they|itd|theyd|id, wont|cant|not|dont|didnt|wouldnt|gonna|going lie, not going|gonna to? lie,
        wont|cant|not pretend|deny|hide|sugarcoat, wont be lying, not okay, not fine, not great, isnt ok, isnt okay,
        no good, no thanks, no thank you, no problem, no worries, no biggie, no rush, no notes, no need, not to be
        dramatic|rude|that, not trying, not saying, not sleeping, didnt sleep, havent slept, couldnt sleep, cant
        sleep, hardly sleep, hardly slept, barely slept, no sleep, no help, not helping, doesnt help, didnt help,
        hasnt helped, dont help, isnt helping, isnt working, nothing helps|helped|works|worked|is helping|helping,
        dont touch, no relief, no better, not better, not any better, not getting better, isnt getting better, arent
        getting better, isnt better, arent better, not improving, isnt improving, not improved, hasnt improved,
        havent improved, hasnt gotten better, not cool, not cute, isnt cute, not ideal, not fun, no fun, isnt funny,
        wont stop, wont quit, doesnt stop, dont stop, didnt stop, hasnt stopped, havent stopped, isnt stopping, cant
        stop, cannot stop, couldnt stop, never stops, never stopped, not stopping, not stopped, not going away, isnt
        going away, wont go away, wont go, wont go down, hasnt gone away|down, havent gone away|down, didnt go
        away|down, not gone, isnt gone, hasnt gone, havent gone, hasnt budged, hasnt settled, hasnt calmed, hasnt
        cleared, hasnt eased, hasnt let up, wont let up, wont calm, wont settle, wont ease, doesnt go away, not
        going down, isnt going down, arent going down, not letting up, not easing, not settling, isnt settling, not
        over, not fading, isnt fading, never goes away, hasnt shifted, wont shift, wont budge, never felt, never
        been, never seen, never experienced, never happened, never used to, never this, never so, ive never, i have
        never, never before, not usual, not like me, isnt like me, wasnt like this, wasnt before, wasnt this, werent
        this, werent like, wasnt there, werent there, wasnt until, not until, not till, not like it
        isnt|doesnt|aint, not that it isnt|doesnt, not that they arent|dont, not like they arent|dont, never not,
        not not, cant say it isnt|doesnt|hasnt, cant say they arent|dont|havent, cannot say it isnt|doesnt, cant say
        its|theyre not, wouldnt say it isnt|doesnt, wouldnt say its not, isnt without, wouldnt say no, cant deny,
        cannot deny, not untrue, wouldnt say theyre not, its not nothing, not as if it isnt|doesnt, dont think
        this|that|these|the|its|i|you, cant be good|right|normal|healthy, not supposed to, isnt supposed to,
        shouldnt, shouldnt be, not meant to, no idea why, not only that, not getting any better, didnt have ..
        before, dont usually|normally, doesnt usually|normally, didnt use to, why isnt, why arent, not in a good
        way, not the good|cute|fun kind|way, not pretty, no filter, no makeup, dont judge, dont panic, dont freak,
        didnt tell|say|realize|realise|think, dont say, dont have time, dont have a|an appointment, no appointment,
        no time, no show, not dying, not drunk, not exaggerating, not being dramatic, not kidding, not joking, not
        even kidding, im not being, cant ignore, couldnt ignore, cant wait, cant even, cant touch, cant wear,
        couldnt wear, cant blink without, cant .. without, couldnt .. without, dont .. without, no mascara, no eye
        cream, no oil, not crying, never mind, nevermind, not bad, not too bad, not so bad, not that bad, no
        regrets, no complaints, no drama, no issues, no issue, no probs, no problems, no qualms, no question, no
        questions, not a problem, no trouble at all, didnt do anything, didnt rub, havent rubbed, havent touched,
        didnt touch, dont rub, no allerg{y/ies}, no makeup on, not pregnant, not contagious, cant tell if|whether,
        couldnt tell, not long, dont get me wrong, if not, or not, not yet, why not, not to worry, not sure if its,
        not sure whether, thought|hoped|hoping|expected|figured|assumed ..
        gone|better|over|settled|cleared|fine|normal by|now|already, thought it would|theyd|they .. gone, thought
        itd .. gone, didnt|dont|cant|wont|wouldnt|couldnt|doesnt|hardly|barely recognise|recognize, but nothing
        helps|works|happens, not the worst, not the best, dont feel good|well|right|great|ok|okay|myself|nice,
        doesnt feel nice|great|ok, not feeling good|well|great|right|myself, cant|cannot|couldnt|wouldnt|wont say
        its|theyre|it|they|my not|isnt|arent|doesnt|dont, no|any significant|real|big? change|improvement in|to the?
        swelling|redness|itching|itch|pain|burning|soreness|discharge|crust, not a? 1|one|single|an?
        inch|bit|part|patch|spot|square .. without, rather|prefer|wait|waiting|hold|leave|let ..
        went|goes|gone|settled|settles|calmed|calms|cleared|clears|healed|heals|subsided|subsides down|up?
        before|first, until|till|til .. goes|gone|settles|calms|clears|subsides|heals down|away|up?, without
        trying|asking|thinking|warning|fail|doubt|exaggerating|exaggeration|realising|realizing|knowing|meaning|wanting
    """,
    "returns": """
        up they|it|she came|went|came|puffed again|both, back up again, up again they|it|she came|went,
        walked|crept|marched|strolled|snuck|sneaked|waltzed|slid|rolled|wandered|crawled back in, up they came
        again, up it came again, came up again, come up again, up again, flared up again, flared again, started
        again, and again since, round two, second round, happening again, happened again, doing it again, back again
        now, same again, same again now, same thing again, same now, now it doesnt|wont|isnt|cant, now they
        dont|wont|arent|cant, and again now, again right now, again today
    """,
    "wrong": """
        spoke too soon, spoken too soon, i was wrong, i lied, take that back, take it back, i jinxed it, jinxed it,
        jinxed myself, famous last words, i stand corrected, correction, ignore that, ignore my last, ignore what i,
        disregard, scrap that, forget that, forget what i said, changed since, not true anymore, not true now, that
        was yesterday, that was then, that was before, thats changed, that has changed
    """,
    "but": """
        as im|my|ive, while my, whilst my, meanwhile my, but, however, though, although, tho, except, yet, just,
        only, apart, besides, aside, otherwise, because, cause, since, unless, until, till, if, which, instead, so,
        then, altho, thou, cept, when, while, whereas, still, rather, more of, more like, more a, spoke
    """,
    "subject": """
        my, the, i, im, ive, it, its, they, theyre, theyve, this, that, thats, there, theres, he, she, we, is, are,
        has, have, had, got, feels, looks, am, now, today, these, those, a, some, slight, little, left, right, one,
        both, bit, lots, tons
    """,
    "isnow": """
        but|though it|they|he|both now is|are|does|do|has|have|really?, but|though it|they|its|theyre|both|mine
        is|are|does|do|has|have|r really|certainly|definitely|sure? now|today|tonight, but they|it|theyre|its
        really|certainly|definitely is|are|does|do|has|have now
    """,
    "came": """
        and|but i|ive have|did|am|do, and|but it|they|this|mine does|did|do|has|have|is|are|really|still, and
        boy|my|oh does|do|did|is|are it|they, but not like|this|so|for|that|as, but this is|was|much|bad|hurts, not
        this much|bad|long|red|swollen|sore, but its|theyre|it|they
        been|lasted|still|worse|more|way|really|very|so|too|bright|huge|massive|now
    """,
    "unmet": """
        got none|nothing|neither|nowt, had none|neither|nowt, but|and theyre|its|it's|mine|all|they|it are|is?
        totally|absolutely|completely|perfectly? fine|grand|normal|perfect|clear|calm, theyre|its|it's|they're not,
        they|it are|is not, no it|they isnt|arent|didnt, still nothing|none|waiting|nowt, do|did|does they|it|i
        heck|hell|eck|chuff|thump, got neither, had neither, neither happened|came, like heck|hell, turns|turned out
        nope|no|not|never|nothing|none|they|it|im|i .. didnt|dont|doesnt|havent|hasnt|isnt|arent|wasnt|not|fine,
        turns|turned out nope|no|not|never|nothing|none, but|and no|nope|nah|nothing|none|not|nowt|zilch|nada,
        they|it|mine|i|she didnt|dont|doesnt|havent|hasnt|isnt|arent|wasnt|werent, there
        isnt|wasnt|arent|werent|aint one|any|none|anything, theres|there is|was|are|been|has|have? been?
        none|nil|zero, not this|these|that time|set|round|lot, these|those|yours|this
        havent|hasnt|didnt|dont|doesnt|arent, nope, nothing, nowt, never
        came|happened|did|materialised|arrived|showed, not a drop|bit|thing|sausage|peep|dot|one, didnt
        hurt|sting|burn|itch|swell|happen, havent, hasnt, no such
    """,
    "unseen": """
        is|are|was|were|at nil|zero|nonexistent|zilch|nada|negligible, non existent, nonexistent,
        didnt|havent|never|dont|hasnt get|had|have|got|see|seen it|any|that|them|those, isnt|wasnt|arent|werent any?
        part of it|this|that, isnt|wasnt|arent a thing|factor|feature, is|was|were|are not
        seen|present|there|noted|found|observed|noticed, has|have been? not seen|noted|observed, that|which|it?
        never came|happened|arrived|showed|materialised|materialized|appeared|started|turned, failed to
        materialise|materialize|appear|show|come, never materialised|materialized|came|happened|showed|appeared, not
        seen|present|noted, is|was absent, absent, is|was ruled out, ruled out, is|was negative
    """,
    "unless": """
        unless, except when, except if, except for when, only when, only if, only hurts when, except at, just when,
        apart from when, until i, till i
    """,
    "over": """
        only hung|stuck|lingered|stayed about|around|for|until|till, hung|stuck|lingered about|around|on for
        the|a|an|one|two|just|only first|hour|day|evening|night, nothing by|come|next,
        went|stopped|cleared|disappeared|vanished|lifted as soon as|i,
        went|stopped|cleared|disappeared|vanished|lifted the|once minute|moment|second|instant|i, but no more,
        but|and thats|its|it|that is? all? over|done|finished|past|passed now?, took
        a|an|one|two|about|till|until|the|half .. to calm|settle|clear|heal|ease|fade|go down|off|up|away, and|n
        thats|that all|it, not now, is|its|are|theyre|now|all|been dry now|today|again|since|by, dry today, cleared
        overnight, by bedtime|teatime|dinnertime|morning it|they|all was|were|had, lasted
        a|an|one|1|two|2|three|couple|few|about|maybe|roughly|barely|less|under|half of|a|than?
        day|days|hour|hours|night|nights|evening|morning|afternoon|week|weekend, was|were
        away|gone|down|dry|flat|over|fine|better in|within|inside a|an|about|no|under|the|two|half,
        clean|clear|calm|quiet|flat|nothing ever since, down|flat|gone|fine|normal|clear|dry|away again? the?
        next|following day|morning, flat|calm|quiet|gone|clear|clean|white|normal now|today|already, down now, bone
        dry today|now, is|are|was|were old news, past tense, thats|its|all|already|now|is|are ancient? history,
        but|and|or|it|they|n doesnt|dont|isnt|arent|hasnt|havent|didnt now|since|today|anymore, hasnt|havent|not
        since, today|now i can no|fine|again|perfectly|clearly|easily|without, woke|wake|woken up? to
        nothing|normal|calm|flat, cleaned|cleared|dried|emptied|sorted itself|themselves, out it|they
        came|popped|fell|floated|washed|slid|went, after leaving me|us, don
        pass|comot|commot|go|stop|clear|vanish|better, cant|cannot|couldnt|dont find|spot|see|feel|tell
        it|them|that|a any|no more|longer, dont|didnt|havent|hasnt|not|no need|needed|needing them|it|that|any|those
        now|since|anymore|after|today, took till|until|about|a|two|three|maybe|all|overnight .. to
        go|clear|settle|calm|fade|shift|ease|heal|drop|leave, threw|put|popped them|it|those back|away .. since,
        went|gone same|that|by|within|the day|night|evening|weekend|hour|morning, wore off, paid no mind since, gave
        over, cleared off, but|and it|they? isnt|arent|doesnt|dont now|anymore|today, it|they|that
        isnt|arent|doesnt|dont now|anymore|today, only .. the first|1st night|evening|day|hour|morning|afternoon,
        <day> nothing|nowt|grand|fine|nada|normal|flat|zilch|gone|better,
        grand|sound|normal|calm|dandy|champion|spot-on today|now|again|since|this, not a bother|problem|peep on
        me|them|it|now, havent|hasnt been since, history now, un puffed|swelled|swollen|pinked|reddened, not a
        hint|peep|murmur since|today|now, quiet since|now|again|today, perfect|fine|grand|normal|lovely|sound by
        <day>|morning|lunch|dinner|teatime|noon|midday, behind us|me|it now, thats|is|are|its|s all behind
        us|me|them, cant|couldnt find|see|spot|detect a trace|hint|sign|shadow|speck of it|that|them|anything,
        then|it|they|redness|itch|swelling|sting shut|packed|closed up shop, today|2day|now
        flat|normal|clear|calm|smooth|nowt|nada|zilch|nothing, and|n|then|den|now poof|pfft|zip|bye|puff, poof
        gone|vanished|over|by, was|were|is|are|became|now|theyre|its history, dead and buried, yesterdays|last weeks
        news, gone by sun|mon|tue|wed|thu|fri|sat|sunday|bed, sorted by
        sun|mon|tue|wed|thu|fri|sat|sunday|monday|tuesday|wednesday|thursday|friday|saturday|morning|lunch|bedtime|then|tea,
        for one|1 evening|night|afternoon|morning|hour only?, water under the bridge, a thing of the past, gave
        up|over|out and went|left, called it a day, threw in the towel, bowed out, had its day, burned|burnt itself
        out, ran out of steam, lost interest, upped and left|went, slunk|sloped|wandered off, got bored and
        left|went, signed off, clocked off, hung up its, down again|now|already by|before|at|after, back down
        by|after|before, settled|calm|flat|white again by|before,
        sting|stinging|burn|burning|itch|redness|swelling|soreness lasted as long as|until|till|about|only|all
        of|maybe|barely|a|an|one|two|ten|twenty|30|20|10|5, has|have been off|gone since, that was it,
        dry|clear|fine|white|calm|quiet|smooth|grand|good|perfect ever since, its|it's|thats over now|and, all over
        and|now, is|are smooth|clear|white|flat again, over and done, and that was that, end of|end of story,
        never|not came|come|been back|returned|reappeared since?, hasnt|havent|didnt|never
        come|came|returned|reappeared back?, packed|cleared itself? up when|by|before|in|after, poof gone|never, and
        poof, is|are|was|all past, is|are|all|now done with, finito, done and dusted, done n dusted, done and gone,
        kaput, buggered|sodded|bogged|naffed|jogged|toddled|trotted|shuffled|cleared off
        after|by|on|overnight|within|now|that|the|before, had|has|have gone by the, was the last of
        it|that|them|those, crystal? clear|sharp|perfect ever since, crystal clear now|again|after|since|by, dried
        out|off by|overnight|since, scarpered by|after|overnight, disappeared off, never to be seen|return, then not
        a drop|peep|thing|sausage|bother|trace|tear|bit|hint, not a drop|peep|thing|bother|trace since|after|now,
        flat as a? pancake|board|pancakes|anything, that was the end of it, and that was the end of, done with
        by|now|since, was|were done with, over it by|now, had|has|have|all? lifted by|overnight|since|before, youd
        never know|guess|have, never have known|guessed, youd|you|would never have known,
        one|thing|itch|swelling|redness gave up, gave up the ghost, lies|lying|lays|laying flat now|again|since,
        cooled off|down since|now|by|after|overnight, finished now, thats finished, packed in
        by|on|sunday|monday|tuesday|wednesday|thursday|friday|saturday|yesterday|overnight|itself, dried right? up,
        by monday|tuesday|wednesday|thursday|friday|saturday|sunday|morning|night|lunch|tea|then it|they
        had|was|were|has? finished|finish|ended|gone|cleared|stopped, it|they|that had|has|have|then? finished,
        that|it|they don? finish long time|already|now|since|by, finish|finished long time|liao|already,
        its|it's|its|theyre|they're|all|thats|is|are
        reet|reight|grand|sound|champion|mint|golden|sweet|sorted|bonza|tickety|good|alright|right|fine|well
        now|again|since|today, came|come good|sweet by|in|overnight|within|after|before|on|now|again, came|come
        right by|overnight|again|now, now? no more liao|already|now|le|lah, now no more|have, already no more, been
        straight|right|sweet|sound|sorted|golden|gravy|proper|grand|normal since|now|all|from|ever, now already
        no|not have|got, already no|not have|got|there|now|more, now|today is|its|are|it|they is|are?
        white|clear|ok|okay|normal|clean|good|fine|nothing|calm|flat, but|and already
        no|not|nothing|finish|finished|ok|okay|fine|good, has|have went, it|they|all has|have cleared|stopped,
        all|its|theyre|is|are? dried up now|look|since|by, well|fully|right|far|long away now|since|by, thats
        well|all|long|fully|right? away|gone now, was|were|it|they was? gone by the|time|when, by the ..
        news|time|end|evening|morning .. it|they|all was|were|had gone, had|has|have all gone, not|no a? bother
        on|out of, away by, left by morning|itself, unpuffed, unswollen, deflated, depuffed, de puffed, then that
        was it|that|all, and then it was over|gone|done|fine, cleared fully|entirely|by|before|overnight, sorted
        itself|themselves, slept it off, went overnight, out of the woods, none the worse, took itself off, then
        zilch|nowt|nada|nothing, went same night|day, stayed open since, tap turned itself off, turned itself off,
        clean as a whistle, sank back, smooth as, finished by|on|since|now, all finished, is finished, are finished,
        was finished by, = finished, ended monday|tuesday|wednesday|thursday|friday|saturday|sunday|by|on|yesterday,
        that ended, behaved itself|themselves, packed its bags, gone when i woke, gone when i got, back to
        human|normal|myself|regular, panic over, crisis over, drama over, lasted exactly, lasted all of, lasted
        about, dry by|sun|mon|tue|wed|thu|fri|sat, away by morning|evening|lunch|night|the, away now, near away,
        thats by, thats by with, e don stop|go|finish|clear|vanish, don stop since, after it has
        finished|gone|stopped, they|it went away, and then never again, then never again, were dry by, reduced
        fully|completely, has subsided|reduced|vanished fully|completely|entirely, okay na, ok na, okay na po, all
        okay|ok|fine na, flat again, is flat, gone flat, that is past, this is past, is past now, all in the past,
        wake up clean|clear|fine|normal, woke up clean|clear|fine|normal|grand|good, woke ..
        grand|fine|normal|clear|good|perfect, not a bother since, no bother since, all dried up, e don
        stop|go|finish|clear, don stop|finish|clear|vanish, come|came right? down fully|completely|totally, has|have
        come down, has come right down, settled down, now
        ok|okay|fine|good|normal|nothing|clear|clean|alright|grand|perfect already?, today
        ok|okay|fine|nothing|normal|clear|clean, and that was it|that|all, n that was it|that, that was that, that
        was the end of, it went off, aw|all fine|gone|good|right|clear now, since <day>
        fine|clean|clear|nothing|normal|good, since monday|tuesday|wednesday|thursday|friday|saturday|sunday ..
        clean|clear|fine|nothing|normal|good, sorted it, cleared it, did the job, did the trick,
        totally|completely|fully|entirely|all|long gone, has totally|completely|fully gone, day one only, day 1
        only, first day only, first night only, thats totally|completely|all|fully gone, cleared by, came and went,
        come and gone, been and gone, blew over, blown over, run its course, ran its course, in the clear, behind
        me, no longer there, not there any more, not since, never since, sorted after, sorted with, went with, eased
        by, out of my system, washed out, washed it out, back to their usual, back to its usual, white as, as white
        as, whiter than, good as gold, gone by bedtime|morning|lunch|dinner|breakfast|then|the, it was over, was
        over by|the|then, that quit bother{in/ing}, quit bother{in/ing}, thats all gone now, all gone now, thats
        gone now, then quit, it had all gone, had all gone, dried up soon|as|by|after|since, everything is
        okay|ok|fine|good|perfect|lovely now, now everything is okay|ok|fine|good|perfect, forgot it ever was, then
        fine, stopped on its own, by itself it went, passed by morning|evening|itself, were|was grand, by
        sunday|monday|tuesday|wednesday|thursday|friday|saturday|morning|lunch|evening they|it|all were|was
        fine|grand|good|gone|ok|normal, its away now, ceased, ceased entirely, has since ceased, has since gone, now
        finish, now finished, after is finish, is finish, finish now, clear since, all is good now, now all is
        good|well|fine|ok, nothing since, blinked it away, were|was|back totally|completely|all|back?
        normal|fine|gone|ok|okay|clear, were totally|completely|all normal|fine|gone|ok|clear, was
        totally|completely|all normal|fine|gone|ok|clear, packed it in, packs it in, fizzled out|away|by|on, petered
        out, dried up itself|by|on|after|fast|quick, past that|it|them now, shes apples, apples now, cleared itself,
        gone by
        tea|teatime|supper|noon|midday|bed|night|sunrise|dawn|then|the|monday|tuesday|wednesday|thursday|friday|saturday|sunday,
        one|two|five|ten|seven|nine|1|2|5|10|7|9 minute|hour|day|days|night|minutes wonder, flash in the pan, storm
        in a teacup, short lived, came and went|gone, nothing more came of it, blink and you miss|missed it,
        stopped|quit|ended|finished dead|short|altogether|completely|for good, havent|hasnt|didnt|not
        started|flared|happened|appeared|kicked|erupted|begun up|off? again|since|anymore,
        has|have|had|well|long|already|finally|since left the building|town, has|have|had|its|theyve done a
        runner|one, has|have|had|its|theyve said|waved goodbye|farewell|cheerio, taken|took a hike, taken|took
        themselves|itself off, has|have|had|its|theyve moved|checked|cleared|buggered|sodded|naffed|jogged out|off,
        worked|wriggled|wiggled|eased|slid|washed|popped|fell|came itself|its|themselves|their way|self?
        loose|out|free, dont|cant|cannot|not|couldnt feel anything|it|a|that|them|owt there|thing|one?
        any|anymore|now|since more?, it|they|that|all|has|have|had lifted|vanished|faded|disappeared|evaporated
        on|by|overnight|before|within|after|<day>, forgotten|forgot all? about it|them|they|that, id forgotten
        it|they|about, havent|hasnt|not|didnt|never|hadnt returned|reappeared|recurred|resurfaced,
        havent|hasnt|not|didnt|never|hadnt come|came|been back|again since?, that|the|this
        chapter|chapters|books|case|file|saga|episode|story is|are|s? closed|over|done|shut, chapter|case closed,
        woke|wake|waking|woken up|with already|all|totally|now|everything? ok|okay|fine|normal|good|grand,
        was|were|is|are away again? by|within|before|overnight, no sign of it|them|that|any
        all|since|now|today|for|after, smooth|clear|white|flat|comfy|calm|normal|soft|dry as? a? again|baby|babys
        as|since|today|now|bum|bottom?, smooth as a .. again, skin|lids|lid is|are|s|all|feels|back?
        smooth|clear|soft|flat again|now|as,
        bump|bumps|rash|spots|swelling|redness|flakes|crusts|crust|blotches|lumps .. have|has|had|are|is
        all|completely|totally|now|since|long gone, been? bone dry all|since|ever|now|from,
        feelings|feeling|sensation been|has|is|had|was been? gone, worked a treat .. gone, gone since,
        is|are|been|was|were finished|history|ancient|yesterdays you|now|thank|news, saw itself off, sodded off,
        buggered off, naffed off, totally normal, completely normal, totally clear, its fixed, so its fixed, fixed
        now, fixed itself, has quit, quit last|on|yesterday|after|by|itching|hurting|burning, is no more, no more
        now, sorted since, done now, cleared since, went back, nothing left, right now its fine, calm now, happy
        now, its all good, pretty much healed, finally gone, theyve gone, never happened again, hasnt happened
        since, disappear, are normal, is normal now, white again, white now, better since, gone, all gone, gone now,
        went away, goes away by?, gone away, went down, gone down, gone back, back to normal, back to my normal,
        normal now, fine now, good now, ok now, okay now, all good now, better now, alright now, all right now,
        great now, perfect now, all clear now, all fine now, totally fine now, cleared up, cleared, cleared right
        up, all clear, disappeared, vanished, subsided, resolved, over now, over with, its over, passed, has passed,
        worn off, died down, settled, has settled, have settled, only lasted ..
        minutes|mins|minute|hour|hours|seconds|night|evening|while|bit, lasted .. minutes|mins|minute, lasted ..
        hour|hours|seconds, nothing after|afterwards, today it|they isnt|arent, today theyre not, all good|fine
        since, calmed, calming down, dying down, calmed down, calmed right down, stopped, has stopped, stopped now,
        stopped by, no longer, not anymore, nothing now, nothing today, none now, none since, none today, healed,
        healed up, right as rain, good as new, fine since, fine after, fine ever since, good since, fine today, good
        today, ok today, okay today, normal today, better today, normal again, fine again, ok again, now im
        fine|good|ok|okay|great, now i am fine|good|ok|okay|great|well|better, now its fine|good|ok|okay|all|normal,
        now theyre fine|good|ok|okay|all|normal, now all good|fine|ok|normal, today all good|fine|ok, today
        its|theyre fine|good|ok|normal, its fine now, was fine after, only lasted, lasted only, lasted a|an|one|like
        day|hour|night|few, lasted like, sorted itself, sorted now, sorted itself out, back to myself, faded, faded
        away, recovered, all better, much better now, completely better, totally gone, its better, eased off, eased
        up, let up, came down, dropped, only the first|1st night|day|evening|morning|hour|few|couple, just the
        first|1st night|day|evening|morning|hour|few|couple, first|1st night|day|evening only, only that
        night|evening|day, just that night, only on day one, only at first, just at first, at first but, no issues
        since, no problems since, dried up, fine this morning, good this morning, fine by, normal by, gone by, all
        well now, im fine now, im good now, im ok now, they|theyre|its good now, didnt last, hasnt come back, not
        come back, hasnt returned, never came back, didnt come back, since gone, has gone, went after, went within,
        went by, out now, washed away, put right, is history, yesterday only, clear now, clear today, clear again,
        clear by, opened fine, blinked away, been fine, been good, been ok, been okay, been grand, grand now, grand
        since, sound now, not there anymore, isnt there anymore, arent there anymore, not there now, over before,
        over by, over in, over within, and thats it, thats done, and done, sorted by, settled by, gone after,
        cleared after, comfortable since, comfortable now, been comfortable, perfectly comfortable, disappeared
        by|after|within, have passed, has since passed, since passed, long gone, went off, went off
        by|after|overnight, ended, packed in, packed up, quit after, calmed by, no trace now, no sign of it now,
        back to regular|usual|normal|its|their|my|being|how, clean since, dry since, calm since, quiet since, normal
        since, perfect since, white since, comfy since, back to it, like nothing happened, as if nothing, nothing
        ever since, nothing to speak of, right again, back to white, on its own, by itself, went on its own, then
        nothing, and then nothing, then it left|stopped|went|quit|passed|cleared, it left, dry as .. since, day
        2|two|3|three nothing, the day of, day of only, everything is great|fine|good|perfect|normal|ok, everythings
        great|fine|good|perfect|normal|ok, all is well|good|fine|great, youd|you|would never|not have?
        known|know|guess|tell, youd never have known|guessed|thought, you wouldnt have?
        know|known|guess|guessed|tell, wouldnt have? known|know it|anything|there, like it never happened, as if
        it|nothing never? happened, not a trace left|by|now, no trace by|left|now, you could not tell|guess, couldnt
        tell now|today|by, dried up by|before|overnight|since, dried right up, then
        grand|fine|ok|okay|nothing|perfect|sound|normal|nowt|zilch, then all good|fine|grand, normal|flat|clear by?
        <day>, back to normal by? <day>
    """,
    "near": """
        80%|85%|90%|95%|97%|98%|99% away|gone|better|there|fine|back, nothing like
        last|yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|before|earlier|how|what|as, nothing
        like the first|other, nothing like it was, percent|% of what|how|left|it, per cent of what|left,
        1%|2%|3%|5%|10%|15%|20%|25%|30% of? it|the|that|my|left|still|remaining|there,
        70%|75%|80%|85%|90%|95%|98%|99% down|gone|better|less|back|there|of|cleared|healed|normal|faded,
        1|2|one|two|0.5|half out of|a 10|ten today|now,
        drying|quietening|quieting|fizzling|tapering|simmering|petering up|down|out|off|away,
        nearly|almost|practically clear|cleared|dry|white|settled, its|it|theyre|and|but slowly|gradually|steadily?
        easing|fading|settling|clearing|shrinking off|away|up|down?, going the right way, heading the right way, by
        the hour, fading fast, slight|little|tiny|faint|bit|trace
        puffiness|redness|pinkness|swelling|itch|soreness|itching|tenderness|dryness|pink|puff
        left|remaining|lingering, slight|slightly|faint|little|mild .. remaining|lingering, down by?
        half|thirds|two|most|loads|three since|today|from|now|already|on?, down by half|two, paler
        each|every|by|now, itches|burns|stings|hurts|waters|weeps|swells|leaks less, less
        red|itchy|puffy|sore|swollen|watery|pink|crusty than|now|today|each|every|by, half|quarter|third|fraction
        the|of size|what|yesterday|it, last blush|flush|gasp|echo|embers|knockings of, 90|95|80|85|99|98|75%
        back|better|there|normal|gone|clear, 90 percent|per cent back|better|normal, just|only one|a
        pink|red|tiny|little|small? thread|patch|spot|dot|streak|line|vein|bump left, way|far|much|lot|a|loads|bit
        fewer|milder|fainter|smaller|drier|flatter|softer|quieter|gentler|lighter than|now|today, fewer
        than|now|today, next to nothing, shrunk|shrunken|shrank to|right|down|a, shrinking by, down to
        barely|hardly|almost|a|just|one|half, nearly|almost|practically flat again?, you|u|ye told me|us to expect,
        like|as|what you told me|us, told me to expect, and|but|though|now its|it is|theyre easing, only|just the
        odd, odd tear|twinge|itch|sting|tickle|drip|prickle in|now|when, shrinking|fading|easing|lighter|paler by
        the hour|minute|day, down|off as i type|write|speak, nearly|almost|practically|virtually
        away|finished|done|over|gone|clear|there, just about finished|away|done|over, flattened out|off|down,
        softened a lot|loads|up|off, barely|hardly a bother|noticeable|visible|anything, most of the|it|them ..
        gone|flattened|cleared|faded|dried|healed, just|only a? smidge|smidgen|trace left|remaining, dregs, tail
        end, reducing, reducing day by day, reduced a lot|much, don dey go down, dey go down, remain small, remains
        small|little, packed its bags, last crumb, at the door, tint of, tint o, down to its last, almost packed,
        near away, on the retreat, shrinking, shrinking day, more or less gone, as good as gone, good as gone, to a
        whisper, almost|nearly|practically flat, almost|nearly|practically invisible, almost|nearly|practically
        unnoticeable, merest, suggestion of, paling, paler each|every|by, hint of, whisper of, ghost of, shadow of
        its|their, going down nicely|lovely|well|fast, nicely going down, only the merest, the merest, last of it,
        last of the, petering out, winding down, tailing off, on the wane, waning, a shadow of, half gone, three
        quarters gone, 90 percent, 90% gone, 80% gone, 95% gone, getting there, less today, less each, less every,
        less than yesterday, much less, almost not, almost not anymore, hardly notice, 95|90|80|85|99|98
        down|gone|better|cleared|there, nine tenths, very nearly down|gone|away, about done, just about
        gone|done|cleared|over, all but stopped|gone|cleared|over|disappeared, resolving, diminishing, dwindling,
        its fading, and fading, keeps fading, almost outta here, almost out of here, only a trace, just a trace, bit
        less each|every, each morning .. less, every morning .. less, each day .. less, every day .. less, less
        each|every day|morning|time|hour, a 1 now, like a 1 now, down to a 1, only a touch|tinge|tad|smidge|hint,
        just a touch|tinge|smidge|hint, basically|nearly|almost|mostly|practically over|finished|done, almost all
        gone, almost all gone down, nearly all gone, almost completely gone, paler than, as per your leaflet, much
        paler, paler, fainter, almost all cleared, 1 out of 10 now, most of it gone, most of .. gone, mostly
        cleared, getting lighter, getting smaller, is smaller now, smaller than yesterday|before|it|this, smaller
        today, getting less, less and less, not as bad, isnt as bad, not so bad as, basically healed, basically
        fine, basically normal, mostly better, mostly fine, whisper|shadow|ghost|hint|trace|touch|memory|suggestion
        left|remaining|remains, all but vanished|settled|finished|over, almost|nearly all gone|cleared|settled|down,
        more or less|almost|nearly|practically packed it in, calming down nicely|now|well|slowly|bit|by, mostly
        normal, nearly there, almost there, just a .. left, only a .. left, on the way out, lighter than, a lot
        calmer, calmer, way down, way less, lot less, not half as, half of what, half what, already better, bit
        less, better today, better now but, loads better, heaps better, tons better, not red red, is backing off,
        backing off, retreating, almost gone, nearly gone, mostly gone, basically gone, pretty much gone,
        practically gone, nearly cleared, almost cleared, going down, going away, goes down, coming down, getting
        better, is better, are better, bit better, little better, lot better, lots better, much better, way better,
        so much better, feeling better, looking better, looks better, improving, improved, improves, fading, easing,
        easing off, settling, settling down, subsiding, calming down, calming, clearing, clearing up, dying down,
        healing, on its way out, on the mend, less, lessening, lesser, wearing off, tapering, hardly, barely, hardly
        any, barely any, barely there, hardly there, scarcely, almost no, nearly no, almost none, barely noticeable,
        hardly noticeable, trace of, slight trace, tiny bit left, little left, bit left, a touch left, left over,
        faintly, ever so slight, a hint of, not as, isnt as, arent as, not nearly as, nowhere near as, not so much
        now|today, almost normal, nearly normal, almost back, nearly back, almost over, nearly over, almost better,
        nearly better, a fraction of, down a lot, better than yesterday, better than it was, better than before,
        better every day, better each day, better by the day, as expected, expected, youre said it would, just? like
        you said it, you said it|they|that would|might|could, you mentioned, you warned, youd said, all but
        gone|vanished|disappeared|cleared, wee bit left, touch left, gone right down, right down, gone down
        loads|lots|massively|considerably, on its last legs, last bit, faintest, and going, on its way, down to ..
        tenth|half|quarter|third|fraction, tenth of, fraction of, quarter of, nearly|almost|mostly|basically
        stopped|settled|quit|healed|faded, nearly|almost|practically|virtually away|vanished|disappeared|faded,
        once|twice a day now instead|rather, now instead of every|constantly
    """,
    "worse": """
        walked|crept|marched|strolled|snuck|sneaked|waltzed|slid|rolled|wandered|crawled back in, decided to stay,
        here to stay, hanging around, not leaving, refuses|refusing to go|leave|budge|shift, and they come back, and
        it comes back, comes straight back, keeps coming back, keep coming back, on and off, off and on, come and
        go, then back, back with a vengeance, round two, flared up again, started up again, still, worse, worsening,
        again, back, came back, coming back, comes back, returned, keeps, keep, wont, every time, spreading, getting
        worse, not gone, started, starting, came up, now, new, comes and goes
    """,
    "past": """
        that time years|yonks|ages|decades, the|that|a|this|my|some
        cheap|cheapo|chain|budget|dodgy|backstreet|rival|posh
        place|salon|studio|shop|girl|lady|tech|woman|kit|one|crowd, the|that|a|my|some
        previous|old|other|different|last place|salon|studio|shop|girl|lady|tech|woman|kit, the|that chain, the|that
        place|salon|studio|one|shop|girl|lady in town|my, a|another|some completely|totally? different
        girl|lady|tech|woman|place|salon|studio, a|another|some|my studio|salon|place|shop where i|they|she|my|you,
        home kit, diy kit, in|during lockdown|covid|quarantine, from my|when
        teens|childhood|youth|school|twenties|student|uni, at school|uni|college|primary|secondary
        like|about|maybe|over|when|i, once|back as|when|before a|an|i|my, hairdresser's|hairdressers|barber's
        bleach|dye|tint|colour|color, brow|nail|threading|makeup|spray lady|girl|bar|place|woman,
        years|yonks|ages|decades since|gone, 10|ten|5|five|3|4|6|7|8|9|12|15|20|two|three|four|2
        yrs|years|year|winters|summers|christmases ago|back|since, one|that winter|summer|spring|autumn
        when|long|in|back|years, when i was wee|small|tiny|knee|teeny|nobbut|yay|young, in the
        fifties|sixties|seventies, when i was about|around|maybe|like|only|roughly|bout|nearly?
        2|3|4|5|6|7|8|9|10|11|12|13|14|15|16|17|18|19|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen,
        at the age of, old story|stories, ancient history, years back, back in '?, in my
        teens|twenties|childhood|youth|teenage|uni, at|in school|uni|college|primary|secondary once, childhood, as
        an|a apprentice|toddler|youngster|schoolgirl|girl|teen|nipper|bairn|wean, in year|grade|class
        7|8|9|10|11|12|five|six|seven|eight|nine|ten, when i turned
        12|13|15|16|18|20|21|30|twelve|thirteen|fifteen|sixteen|eighteen|twenty, grew out of, i once
        had|went|got|did|tried|woke, back in the day, used to get|have|be|suffer, long time ago, decades ago, a
        lifetime ago, previous life, before i ever met, my prom|hen|wedding day back, had .. in
        january|february|march|april|june|july|august|september|october|november|december, back in
        january|february|march|april|may|june|july|august|september|october|november|december, when i was
        3|4|5|6|7|8|9|10|11|12|13|14|15|16|17|18|19|20|22|23|24|26|27|28|30, at age|aged, when i lived|worked, in
        the eighties|nineties|noughties, in 19{70/75/80/82/84/85/86/87/88/89/90/92/94/95/96/97/98/99},
        2019|2020|2021|2022|2023|2024|2025 i|was|when|after|at|in, in the|my old place|salon, at
        xmas|christmas|easter|halloween|thanksgiving, in 2012|2013|2014, the one who had that|the|an?
        awful|bad|terrible|horrible? reaction, place by the, in a past life, once upon a time, back home once, with
        the former, former salon|studio|place|tech, from another salon|studio|place|shop, at another
        salon|studio|place|shop, in 2015|2016|2017|2018|2019|2020|2021|2022|2023|2024|2025, at
        easter|christmas|xmas|thanksgiving, years|yrs ago a|an|some|this trainee|girl|place|salon, in
        january|february|march|april|may|june|july|august|september|october|november|december with you|ye|u
        one|a|some, last spring|autumn|fall|winter|summer|easter, normally by day, before all this, from another
        place, another place last, after the sets of, last year, years ago, year ago, a year ago, months ago, month
        ago, weeks ago, last time, the last time, last set, last fill, previous set, previous time, previously,
        first time i ever, first set i ever, my old|last|other|previous|former
        salon|tech|girl|lady|artist|place|studio, old tech, last place, other place, some other place, another
        salon|place|tech|studio|lady|girl, other salon|tech|lady|studio|girl, different
        salon|tech|place|lady|studio, when i was a|little|younger|pregnant|in|living|at|with|19|20|18|21|22|25, when
        i had them|mine|lashes, when i used, when i went to, used to, back in, in the past, once before, in
        20{10/11/12/13/14/15/16/17/18/19/20/21/22/23/24/25}, as a kid|child|teen|teenager, growing up, in college,
        long before you|your|this|these|any|i|we|me, well before you|your|this|these|i, way before
        you|your|this|these|i, years before you|your|this, before you touched|did|ever, the previous
        girl|lady|tech|woman|place|salon|one, previous girl|lady|tech|place|salon|artist, in
        2016|2017|2018|2019|2020|2021|2022|2023|2024|2025, 2016|2017|2018|2019|2020|2021|2022|2023|2024|2025, last
        january|february|march|april|may|june|july|august|september|october|november|december, long since
        sorted|gone|over|cleared|healed, market stall, that time in|at|with, in high school, a while ago|back, ages
        ago, way back, before i found|came|met|started, with someone else, somewhere else, last summer, last winter,
        last spring, last fall i, last christmas, before you, before i switched, the other salon,
        two|three|four|five|2|3|4|5|6|six|ten|10|couple|few of? years|months ago, donkeys years, back then, when i
        first started|tried|got, had hives|welts|rash|reaction|allergy|swelling|it|that|this once, once from|off
        a|eating|strawberries|nuts|prawns|shellfish|penicillin|antibiotics|kiwi|eggs|latex|wasp|bee
    """,
    "notpast": """
        went|threw|thrown|put|popped|stuck|shoved|going|get|got|go them|it|those|these? back in the|my|a,
        came|comes|come|coming|is|are|its|theyre|theyve|crept|creeping|started|straight|right back
        in|on|at|along|round my|the|me|both|one|each|it|them|those|that|this|left|right, when i was
        2|3|4|5|6|7|8|9|10|11|12|13|14|15|16|17|18|19|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen
        minutes|mins|minute|miles|streets|stops|doors|months|weeks, where .. used to be|sit|live,
        wasnt|werent|didnt|hadnt|isnt .. before you|u|i|the|my|this|your|ye,
        im|am|are|is|got|getting|get|be|being|become used to,
        walked|walking|walks|crept|creeping|marched|moved|strolled|slipped|snuck|sneaked|waltzed|rolled|wandered|crawled|swept|come|came|comes|coming|set|kicked|puffed
        back in, like|as|same when|how i had|was|got|did|used|were, like back when|in, like that time, like in my ..
        days, when|before|since|till|until|after i went to bed|sleep|work|town|the|school|class|my|get|wash, before
        you|u|ye|yous|anyone|anybody|ya
        ask|asks|asked|say|says|panic|panics|worry|start|starts|send|sends|call|ring|write|text|tell|shout|jump|freak|fret|go|nag|check|get|come|scold|lecture|do|did,
        come|comes|came|coming|be|is|are|been back in|within|after
        a|an|ten|five|10|5|20|few|couple|no|minutes|mins|hours|seconds|under|about, when i was 5|10|15|20|30|3|4
        min|mins|minutes|miles, like|as|than|since|same|from my|the|our|your last, like|as|than|since|same|from
        my|the|our|your other|old|previous, like|as|than|since|same|from last time, same as last, like the last
        time, like last year, as last year, just like last
    """,
    "if": """
        purely|just|only|merely|lets suppose|imagine|pretend|say, suppose|imagine for|purely|just, theoretically, in
        theory, hypothetical, purely|just out of curiosity, asking for a, if youd|you had|u had|id|i had|theyd|they
        had asked, once|whenever they|it|my .. if, when do i, at what point, in the event of, providing, provided,
        on the off chance, let us say, imagine, as long as, so long as, in which case, worst case, were i|they|it
        ever? to, were my .. to, had it|they|there|i been, supposing, supposing my, if ever, should it|they|my ..
        ever, if .. was to|were to, say if my, say my .. was to, say i got|get|have|had|wake, if they were to, lets
        say, what about if, assuming, were to react|swell|get, say my|the|i|they eyes|eye|lids|lid? did
        go|get|swell|react|burn|itch|flare, in the event of|that, were i|they to, should they|my|it|i .. ever
        get|go|become|start|swell|react|burn|itch|flare, should my eyes|lids|lid|eye
        get|go|become|start|swell|react|burn|itch|flare, some|any|the glue|adhesive|remover ever
        gets|got|went|goes|ran|drips|dripped, big if, what do you|ye|yous|they tell|say|do|advise to|with?
        clients|people|ladies|girls|women|customers, clients|anyone|ladies|customers who|that
        call|ring|say|get|have|come|react|complain, what if|happens they|it|my, hypothetically, if, in case, incase,
        what if, should i get|have|notice|develop|wake, suppose, whether, unless, should they|it|my, would they|it,
        when people, whenever someone, in the event, should anything, if i wake, if anything
    """,
    "notif": """
        lets|let just|only say|put, lets|let us just|only say|put,
        someone|somebody|people|everyone|everybody|boss|manager|colleague|colleagues|mum|mom|husband|partner|bf|he|she|they|customer|customers|driver|teacher|stranger|strangers|lady|man|friend|friends
        asked|asks|ask|keeps|keep asking? me? if|whether, if my|the|it|they|only|this|that .. would|could
        stop|quit|ease|settle|calm|pack|behave|shut, lying if i said|say, id be lying if, should|shouldnt
        they|it|my|the <eye>? be|feel|look this|so|that|still, if it wasnt|werent|isnt for, were it not for,
        love|like|enjoy|happier|better|perfect|nicer|comfier .. if they|it|the|my ..
        didnt|werent|wasnt|dont|arent|isnt, if only .. didnt|werent|wasnt|wouldnt, imagine
        going|having|rubbing|being|sitting|someone|somebody|sand|chopping|sticking|walking|staring|waking|crying|blinking,
        normal lang|po|ba|na|for my? .. if, is it|this|that usual|common|ok|okay if, as if, not sure if, idk if,
        dont know if, do not know if, wondering if, wonder if, normal if, ok if, see if, what does it mean if|when
        my|the|ur|your, does it mean something|anything if|when my|the, if this|that|the|my ..
        doesnt|dont|hasnt|isnt|wont|keeps|carries
        go|settle|stop|stopped|ease|eased|clear|calm|gone|better|improve|on|up,
        bad|serious|worrying|dangerous|weird|wrong|concerning if my|one|both ..
        is|are|feels|feel|looks|look|keeps|keep, even if, unsure if, if you look, if i close, if i touch, if i rub,
        if i press, if i look, if i blink, if i move, if you could, if possible, if thats ok, if thats okay, tell
        if, if not, if i open, if i lie, if anything its, if im honest, if im being honest, if you dont mind, if you
        can, if you have, dunno if, no idea if, curious if, concerned if, i suppose|spose|guess, id suppose, if i
        had .. id|i use|put|stick|rub|run|scratch|hold, id|i use|put|run .. on|over my lids|lid|eyes, if you
        mean|meant|are, if youre asking|after|wondering, if its .. you want|mean|meant,
        sorry|apologies|soz|sowwy|forgive|excuse|pardon me? if i|this|it|im|theres|its|i'm, should my
        throat|tongue|chest|lips|face|eye|eyes|lid|lids|vision .. feel|be|look|still
    """,
    "will": """
        you|u|she|they|leaflet|sheet|ye said|told|warned|mentioned|say me? they|it|my|there|that might|could|may
        be|get|feel|look|go, can|could|do|does|would|will you|u|people|anyone|someone|everyone|clients|women|ladies
        get|develop|suffer|experience a|an|any|some|really?
        pain|redness|itching|swelling|burning|soreness|itchy|sore|red|swollen|watery|rash|rashes|stye|styes|infection|infections|reaction|reactions|allergic|allergy|allergies|irritation|irritated|blisters|puffy,
        can|could|do|does person|people|someone|anyone|anybody|women be|become|get|develop|react, i|we
        always|usually|normally|often get, normal|usual during|while the|an appointment|application|treatment|set,
        says|reckons|swears|thinks|convinced|claims ill|id|youll|youd go|end|lose|wake, keeps|keep|kept
        saying|telling|warning|insisting me? ill|id|theyll|theyd|itll|itd, keeps|keep|kept
        saying|telling|warning|insisting me? i|they|it will|would|might|could, told|warned|promised me|us
        itd|theyd|id|itll|theyll, told|warned|promised me|us i|it|they would|might|will|could,
        stories|tales|posts|videos|threads|warnings about|of, scaring|frightening|spooking|terrifying|worrying me,
        thought|thinking|convinced|sure|certain|panicked .. theyll|itll|theyd|itd be|look|go|get|wake|swell|itch,
        scare stories, can|could|does|will|would|might a|an pollen|nut|latex|food|cat|dog|dust|seasonal allergy,
        can|could|does|will|would|might a stye|cold, how long after|before a|an|having|the?
        stye|infection|conjunctivitis|pinkeye|allergy|reaction|rash|cold, glue|adhesive|lashes|tint|lamp|fumes
        gives|give|causes|cause you|ya|yous|people|u|women|everyone, kept|keep waiting|bracing on|for,
        waiting|waited on|for the|a|some|that|any
        burn|sting|itch|swelling|redness|pain|puffiness|rash|reaction|drama|hives,
        says|say|said|reckons|swears|claims|heard the lash? glue|adhesive|tint|remover
        burns|stings|hurts|itches|swells|blinds|melts, pregnant|older|allergic|sensitive
        women|people|clients|skins|eyes react|swell|itch|burn|more|worse, that would|could|might be my|the luck,
        would a|an|the lift|removal|tint|fill|infill|patch|set|remover, does a|the lift|removal|patch, less
        than|more than extensions|a lift,
        scared|afraid|nervous|terrified|worried|convinced|petrified|frightened|feared|certain
        theyd|itd|id|youd|itll|theyll, thought id come|end|look|wake, say|suppose|supposing|if i|they|it|my did, say
        i|they|it ever|get|got|do, what would .. look|feel|be like, what would, would my eyes, why would my, how
        long is it normal, how long does|do|would, what does .. mean|look|feel, what do .. look|feel, what is|are
        meant by, what counts, what counts as, counts as, what does .. mean, whats the difference between, what is
        the difference between, tell the difference, how would i tell, how do you tell, how can i tell, half
        expecting, was half expecting, was fully expecting, fully expected, was waiting for, waiting for the, had
        visions of, thought i was going to, thought i was gonna, prepared myself for, bracing myself for, id tell
        you|ya|u if, i would tell you if, id let you know if, id say if, call us if, ready for, in fear of, for fear
        of, was told to expect, should i worry about, worry about redness|swelling|itching|irritation|burning|pain,
        how common, is .. common, common after, level for, pain level for, usually hurt|sting|itch|burn, normally
        hurt|sting|itch|burn, expect any, whats the pain, does .. hurt, removal hurt|sting|painful, less painful
        than, will it|they|that|this|my|the|there|i, would it|they, gonna, going to, your|you|ya|youre
        supposed|meant to burn|sting|hurt|itch,
        thought|expected|figured|reckoned|assumed|worried|scared|afraid|sure|convinced my|the|both
        eyes|eye|lids|lid|face|lips would|might|will|were|was, will|would|could|might|may|can|wont|wouldnt
        get|swell|react|burn|hurt|itch|cause|become|happen|sting|irritate|make|give, does it, does the, does this,
        does that, do they, do these, does removal, does a, does lash, do lash, do you get, do people|clients|most,
        can they|it|lashes|this, could they, scared of, afraid of, worried about getting, bracing to|for, braced to,
        was braced, bracing meself,
        figured|reckoned|assumed|guessed|presumed|imagined|convinced|certain|sure|positive|banking|betting|swore|prepared
        id|theyd|itd|ild|wed,
        figured|reckoned|assumed|guessed|presumed|imagined|convinced|certain|sure|positive|swore|prepared
        i|they|it|my .. would|was going|were going, certain|sure|convinced|positive|confident of a|an|some|the,
        swore they|it|id|theyd|itd|i, horror stories about|of, horror stories, heard stories|tales|rumours|rumors,
        id heard|read it|they|that|about|of, i had heard it|they|that|about|of, told itd|theyd|id, told it|they|i|me
        it|they would|might|could|will, warned itd|theyd|id, warned it|they|i would|might|could, dreaded that|the|a,
        dreading that|the, expected|expecting|expectin
        hamster|frog|panda|balloon|boxer|elephant|alien|chipmunk|hell|agony|torture|tears|drama|carnage,
        expected|expecting the worst, do|does|would getting|having|taking|removing|wearing|doing, ice pack|packs
        ready, ready|braced|prepared for the worst|onslaught, any chance|risk|odds|likelihood id|theyd|theyll|itd,
        what are the chances|odds|risks, odds|chances|likelihood of, how long|soon|fast|quick|quickly
        till|until|before|after|would|does|do a|an|any reaction|allergy|rash|flare, type|sort|kind|person
        whod|who|thatd|that would|could|might? flare|react|swell|itch, could|can|would|will|does|might|may|do
        that|this|those|swimming|chlorine|steam|sun|sweat|sauna|makeup|crying
        make|cause|leave|irritate|hurt|sting|burn|trigger|give|set, is a|an?
        stye|conjunctivitis|pinkeye|blepharitis|rash|pink eye? catching|contagious|infectious, scared id, scared i
        would|will|might|was, scared it would, worried id, worried i would|might, afraid id, afraid i would|will,
        nervous id, thought id, thought i would|might, thought they would, expected to, expecting to, was expecting,
        was bracing for, braced for, to avoid, to prevent, so i dont, so they dont, so it doesnt, risk of, chance
        of, chances of, signs of, prone to, tend to, known to, wouldnt want, hope i dont, hope it doesnt, hope they
        dont, hoping it doesnt, hope theres no, dont want any, what happens if|when, how do i know, how would i
        know, watch for, look out for, look for, what does, is it possible, side effects, side effect, used for,
        cream for, ok for, good for, safe for, best for, patch test for, mentioned on, leaflet, read that, read
        about, article, heard that, heard about, video about, tiktok about, post about, terrified of, dreading,
        supposed to feel, prepared for, would be, hate to, worried theyd|itd|id|they would|it would|they might|it
        might, scared theyd|itd|they would, thought theyd|itd, expected them to|it to, watch for like, anything i
        should watch for, do the lashes, does the glue|adhesive|remover, do the extensions, does glue,
        can|could|will|would|does|might the? glue|adhesive|remover|chlorine|steam|tint
        make|cause|give|burn|sting|irritate you|people|someone|somebody|eyes|them, make you go|feel, how
        soon|quickly would|will|does|do, do|does|will|can lashes|extensions make|cause|hurt|sting|burn
        your|ur|you|the|eyes|me?, is|would|will it be? painful|sore|uncomfortable|stingy
        having|getting|removing|taking, is|would|will it be? painful|sore|uncomfortable to get|have|remove|take,
        do|should i need|have|i to? be? worry|worried|concerned about
        swelling|redness|itching|reactions|pain|watering
    """,
    "notwill": """
        why does|do it|they|my|this|these|the|everything|one, how long will|should|might|until|before the|this|my
        itch|itching|redness|swelling|burning|stinging|soreness|pain|puffiness|watering|pinkness|irritation|discharge|crust,
        how long does|do this|my
        itch|itching|redness|swelling|burning|stinging|soreness|pain|puffiness|watering|pinkness|irritation|discharge|crust,
        how long|longer|much am i|we going|gonna to? be|keep|have, how long|longer|much are|is|will|do|does
        my|the|these <eye> going|gonna|keep|stay|still|be, best|good|safe for a|an|my|this eye|lid|eyelid
        that|which|when|like, going to the|my|a|an, waiting|waited|wait on|for the|it|this|my|that? .. to
        go|settle|stop|calm|ease|clear|fade|die|shift|pass|subside|drop|improve|leave|reduce|heal|come|be, going to
        .. er|hospital|doctor|drs|dr|gp|urgent|emergency|clinic|pharmacy|work|school|bed|sleep|see|call|ring, gonna
        .. er|hospital|doctor|dr, feel{s/}? .. going to .. faint|pass|throw, going to faint|pass|collapse|lose|die,
        gonna faint|pass|throw|lose|die, might be, may be, could be, might have, what does it mean if|when
        my|the|ur|your, should i worry|worried|concerned about the|this|my|these|that, should i be?
        worried|concerned about|by the|this|my|these|that, does|do|will|when|would the|this|my|it
        burning|itching|stinging|redness|swelling|itch|pain|puffiness|soreness|watering|crusting ever?
        eventually|ever|finally? end|stop|ease|go|settle|wear|calm|fade|leave,
        thought|figured|wanted|reckoned|decided i|id|ill|i'd|i'll better|should|just?
        say|mention|tell|let|ask|text|drop|give|flag|share|check|report|write|message|ring, just? thought id
        better|best|say|mention|tell|let|ask|text|drop|give|flag|share|check,
        ready|desperate|dying|praying|begging|longing for the|this|it .. to end|stop|go|be|ease|pass|settle|calm, no
        one|nobody|noone said|told|warned|mentioned me? it|they would|will|might, never|didnt say|tell|warn|mention
        me? it|they would|will|might, no one|nobody|noone said|told|warned|mentioned me? itd|theyd|id, never|didnt
        say|tell|warn|mention me? itd|theyd|id, may have, could have, gonna be sick, going to be sick, about to
        faint, feel|feels|feeling|felt like im|i|ill gonna|going|about, gonna|going|about
        drop|collapse|keel|fall|black, gonna be sick|drop|collapse|keel|black
    """,
    "other": """
        hed, she'd, he'd, shes|hes the|that one|lady|girl|client|woman|man, moggy, moggy's, moggies, my|our|the|a
        hen|goat|pigeon|duck|cockerel|rooster|donkey|gerbil|snake|piglet|foal|ewe|ram|hedgehog|fox|seagull|hens|goats|sheep|pigs|gecko's,
        hen|goat|pigeon has|had|is|he|she|got|with, guide dog, tomcat, bulldog, beagle, chihuahua, poodle's,
        dachshund, rescue dog|cat,
        colleague|coworker|neighbour|neighbor|client|patient|relative|cousin|aunt|uncle|sister|brother|customer|student|pupil
        of mine|ours|hers|his, pt told|said|says|asked, patient|patients told|said|says, one of my|our|the
        patients|students|girls|residents|clients|customers|kids, tita, tita's, tito, lolo, lola is|has|had|po,
        kuya, amma, appa, pikin, oga, granda, grandda, granda's, gramps, grandpa's, grandma's, grandad's, nan's,
        nana's, papa's, missus's, my|our|mi|la|el
        abuela|abuelo|tia|tio|prima|primo|hermana|hermano|suegra|roommate|vecina, childminder, childminder's,
        landlady, dentist's, new girl, the|a|one|that
        nurse|chap|bloke|dude|model|driver|delivery|barber|bouncer|usher|lodger, actor's, actress's, uncle's,
        auntie's, aunt's, cousin's, neighbour's, son's, hubby's, husband's, daughter's teacher|friend, bride's,
        groom's, bridesmaid's, flatmate, house mate, housemate's, dorm, bf's, gf's friend|mum, boss's, brother's,
        sister's, bestie's, mates's, half|most|all my|our|the
        class|office|ward|school|dorm|team|shift|house|street|gym has|have|is|are|got|had,
        client|girl|lady|woman|one|customer before|after|beside|behind me|us|mine, ate ko, papa ji, my
        papa|pops|stepdaughter|stepson, househelp, helper|maid has|is|got, my|our eldest|youngest|oldest|middle,
        twins, twins', student, student's, apprentice, trainee, intern, my|the model, postie, postman's, milkman,
        technician, technician's, the|my|her tech|artist's|tech's eye|eyes|lids|seemed|looked our|whole|my|his|her
        whole? office|school|nursery|class|ward|household|family has|have|had|got|is|are|all, in my|our|his|her
        family everyone|everybody|all|they, stepsister, stepbrother, stepmum, stepdad, stepson, godmother, godchild,
        landlady's, postman, plumber, waitress, waiter, bartender, chef, head chef, pot wash, kitchen porter, flat
        mate, usher, coach, matron, nurse next door, headmaster, headteacher, line manager, supervisor, foreman,
        gaffer, trainer, yoga teacher, physio, masseuse, villain, heroine, actress, actor, singer, my
        nan|gran|granny|auntie|uncle's, donkey, calf, calves eyes, lamb, lambs, cow, cows, parakeet,
        everyones|everybodys|peoples|strangers|their eyes|heads|jaws, everyones, everybodys, pup, pups, pup's,
        puppies, puppy's, kitty, kittens, kitten's, wee fella|fellas|fella's|lad|lads|boy|girl, young
        fella|lad|one|ones, wee ones, the weans|bairns|nippers|littlies, nipper, fellas, wains, sprog, sprogs,
        kiddies, lodger, tenant, landlord, boyfriends, daughters, girl|lady|woman|lad|fella|lass i
        sit|work|live|share|train|car|study with|beside|near|next|opposite, girl|lady|woman|lad|fella|lass
        from|in|at the|my next|work|office|desk|class|gym|school|accounts|reception|hr, my pt, pug, spaniel,
        labrador, hamster, rabbit, parrot, my patient, pets, budgie, tortoise, kitten, boyfriend's, nephews, nieces,
        my nail tech|girl, ex seen, ex saw, my ex seen|saw, sis in law, bro in law, lad, lads, lass, wean, bairn,
        bairns, ex, exes, colleague's, next door, niece's, nephew's, little brother|sister, small brother|sister,
        baby brother|sister, best man, bride, groom, oul lad|fella|one, himself,
        patient|patients|client|clients|friend|mate|pal|colleague|customer|cousin|neighbour|neighbor|lad|girl|lass|woman|man|nurse
        of mine|ours|my, my|our
        nans|grans|mums|moms|mams|dads|sons|sisters|brothers|hubbys|husbands|wifes|nanas|uncles|aunties|babys|grandads
        eye|eyes|lid|lids|face|cataract|cataracts, enemies, haters, rivals, an? ex came|went|texted|looked|bumped,
        trainee|apprentice elsewhere, herself, man upstairs, wee man's, flatmate's, in laws, mother in law's, father
        in law, goddaughter, godson, step daughter, step son, carer, old lady, old man, neighbor lady, wee one, wee
        man, wee lad, wee lass, little one, little ones, little man, grandkid, grandkids, grandbaby, grandbabies,
        neighbor's, hairdresser, my|a|another|one patient, my patients, girlfriends, friend of mine, friends of
        mine, mate of mine, my|our mam|mammy|mummy|daddy|da|mams, mams, mammys, mummys, daddys, my other half, other
        half, him indoors, her indoors, little|wee|own?
        boys|girls|lads|sons|kiddies|toddlers|nephews|nieces|grandsons eye|eyes|lid|lids|face|are|is, my|our
        little|wee|youngest|oldest|eldest|middle boys|boy|girls|girl, mare, stallion, pony, foal, goldfish, guinea
        pig, ferret, gecko, cockatoo, alpaca, goats, hens, chickens, terrapin, lizard, poodle, collie, terrier,
        greyhound, whippet, cousin of mine, coworker of mine, client of mine, relative, relatives, mother in law,
        sister in law, my ex, ex's, gfs, exs, grandchild, barista, instructor, babysitter, nanny, mothers, clients,
        babys, kiddo, kiddos, puppys, dogs, cats, sister, sisters, sis, mom, moms, mum, mums, mother, mama, ma, dad,
        dads, father, friend, friends, bestie, besties, bff, mate, mates, cousin, cousins, husband, hubby, husbands,
        boyfriend, bf, bfs, girlfriend, gf, daughter, son, sons, brother, brothers, aunt, auntie, aunty, uncle,
        niece, nephew, coworker, coworkers, colleague, colleagues, roommate, roomie, neighbor, neighbors, neighbour,
        neighbours, boss, kid, kids, baby, toddler, child, dog, cat, puppy, horse, grandma, grandmas, granny, nan,
        nana, gran, grandmother, grandad, grandpa, partner, wife, fiance, fiancee, wifey, girl at work, lady at
        work, client, customer, customers, stepmom, stepdaughter, mil, classmate, teacher, bridesmaid, bridesmaids,
        twin, he, she, shes, hes, her, his, him, hers, someone, somebody, people, others, everyone, everybody, they
        say, a girl, a lady, this girl, this lady, some girl, woman, that woman, man, guy, guys, chick, them girls,
        stranger, manager, tech's, maid of honor, missus, sil, grandson, granddaughter, flatmates, housemate,
        coworker's, pal, pals, homegirl, homie, girl|lady|woman|person|client next|beside|opposite|in
    """,
    "self": """
        client|customer hat on, as a client|customer|punter, speaking as a client|customer,
        send|sent|sending|asked|told|got|made|begged my|the
        mate|friend|husband|hubby|wife|partner|boyfriend|girlfriend|mum|mom|mam|dad|sister|brother|son|daughter|neighbour|neighbor|colleague
        to|out|down|round|over, not|arent|isnt|no longer? friends|mates|pals, these|this
        eye|eyes|lid|lids|eyelid|eyelids, its just|only they|theyre|its|mine|the|that, its just|only that, just that
        they|theyre|its|mine|it, only thing|issue|problem|snag, one thing is, me and my?
        mum|mom|mam|sister|sis|friend|mate|bestie|daughter both|are|have|got, us both|two, on|off|by|aboard
        a|the|my|this? coach, coach trip|station|party|tour|journey, i had|birthed|pushed|popped|delivered
        two|three|four|five|2|3|4? kids|babies|children|weans|twins,
        dog|dogs|kid|kids|baby|toddler|cat|cats|children|weans|wean|bairns|horse|hens|husband|man|boys|girls
        walked|fed|bathed|collected|settled|dropped|asleep|sorted|snoring|packed, school run done, mines, mines
        is|are|has|still|day, that client|customer, one of those|your clients|customers|people, with me its|it
        is|it, now its me|my|mine, this time its my|me|mine, for me its|it is, mine is|are|has|have, i just|only, my
        one|other|poor|good|bad|two|2|own|wee|top|bottom|whole eye|eyes|lid|lids|eyelid|eyelids|face|side, me
        eye|eyes|lid|lids|left|right|face|throat|lips|tongue|chest, mi eye|eyes|lid|lids|face|throat|chest, ma
        eye|eyes|lid|lids|face|lips|throat, meself, maself, client hat on, my|the client hat, with my? client hat,
        like|says|said|goes|saying|asked|asks|asking .. your|ur|yer eye|eyes|lid|lids|face|lips,
        took|take|taking|drove|driving|drive|walked|walking|walk|fed|feeding|collected|collecting my|the
        kid|kids|son|daughter|toddler|baby|dog|cat|mum|mom|dad|sister|brother|husband|wife|partner|boyfriend|friend|niece|nephew|grandson|granddaughter|child|children|puppy|horse,
        picked|picking|dropped|dropping up|off? my|the
        kid|kids|son|daughter|toddler|baby|dog|cat|mum|mom|dad|sister|brother|husband|wife|partner|boyfriend|friend|niece|nephew|grandson|granddaughter|child|children|puppy|horse,
        playing with|feeding|holding|hugging|cuddling my|the
        kid|kids|son|daughter|toddler|baby|dog|cat|mum|mom|dad|sister|brother|husband|wife|partner|boyfriend|friend|niece|nephew|grandson|granddaughter|child|children|puppy|horse,
        kid|kids|son|daughter|toddler|baby|dog|cat|mum|mom|dad|sister|brother|husband|wife|partner|boyfriend|friend|niece|nephew|grandson|granddaughter|child|children|puppy|horse
        stuck|poked|jabbed|scratched|hit|kicked|elbowed|headbutted|smacked|licked|rubbed|threw,
        kid|kids|son|daughter|toddler|baby|dog|cat|mum|mom|dad|sister|brother|husband|wife|partner|boyfriend|friend|niece|nephew|grandson|granddaughter|child|children|puppy|horse
        accidentally|just stuck|poked|jabbed|scratched|hit|kicked|elbowed|headbutted|smacked, like someone|somebody,
        as if someone|somebody, as though someone|somebody, my
        eye|eyes|lid|lids|eyelid|eyelids|left|right|lash|lashes|lip|lips|face|throat|tongue|chest|whole|skin|vision|sight|upper|lower|inner|outer,
        rabbit|rabbits|bunny|pug|bulldog eyed|eyes, i|im .. scare|scared you|u, mine, i am, im, ive, i have, i had,
        i got, i cant, i cannot, i feel, i felt, i woke, i keep, i can, i think, i still, i do, myself, on me, to
        me, i was, for me, i look, i, me, ur girl, yours truly, two|2
        husbands|hubbies|boyfriends|wives|mums|moms|dads|bosses|mothers|fathers|partners, someone|somebody|sb|smb
        left|put|poured|tipped|threw|thrown|rubbed|turned|thumped|kicked|poked|breathed|breathes|wiped|wipes|smeared|stuck|drew|painted,
        put|tied|taped a|my|some|the? sock|socks|mittens|gloves|mitts over|on my|me, my|me
        eyeballs|lashline|specs|glasses|contacts, my
        neck|mouth|breathing|head|gums|airway|airways|windpipe|gullet|lungs|breath|voice|body|pupil|pupils|cornea|eyeball|jaw|cheek|cheeks
    """,
    "proxy": """
        mam|mama|mother|nanay|kapatid|anak|asawa|ate po? ito ni, client nyo|ninyo|niyo|nyu po?, you|u|ye
        glued|lashed|treated|saw|tinted|lifted|worked her|him|on, you did his|her
        brows|lashes|set|lift|tint|extensions|eyes, with|by yourselves|yous, her|his
        brother|sister|husband|wife|mother|mum|friend|cousin dey write|text|type|talk, her|his
        brother|sister|husband|wife|mother|mum|friend|cousin here|speaking|writing|texting|typing, me to
        text|message|write|contact|email|ring|call you|ye|yous|the, on her|his|my wifes|mums|sisters phone, using
        his|my wifes phone, bf|gf|hubby|fiance|fiancee|fella|bloke|flatmate|housemate|cousin|niece|nephew|missus
        here|writing|texting|typing|speaking, the one you|u|ye lashed|did|treated|saw|glued|lifted|worked, you
        lashed her|my, the one you had in, was|were|been in|on your|ur|yer
        chair|bed|couch|salon|studio|place|shop|table, sat in your chair, you had her in your, done .. with|by|at
        yourselves|yerselves|yous, was|were with yourselves|yourself|yous, came away from yours|you, came home from
        yours|you, an hour after yours, mum|mums|mom|moms|mam|mams|nan|nans|gran|grans|wife|wifes|daughter|daughters
        had|has|got hers|them done at|with|by you|yours, you did my daughters|sons|mums|moms|sisters|wifes
        lashes|eyes|set|lift, mummy|mammy|mama|amma here|this|speaking|writing, mum|mom|mam|mummy|mammy this side,
        daughters|sons|wifes lashes at your, got her|them done with|at you|your|yours, was|were with you|ye|yous
        this|today|yesterday|on|at|earlier|last, had her|his eyes done with you|ye|yous, was in with
        you|ye|yous|u|yas, were in with you|ye|yous|u, in with you|ye|yous at|on|last|yesterday|for,
        mam|mum|mom|mother|dad|father|sister|husband|wife|partner|daughter|son|aunt|auntie|carer|nan|granny
        here|writing|texting|messaging|typing|speaking, mother|father|mum|mam|mom|dad of ..
        writing|here|messaging|texting, asked me to say|tell|let|write|message|text|contact, she|he asked me to, she
        didnt want me to write|text|message|say, didnt want me to write|text|message, writing on behalf, writing for
        my, messaging for my, texting for my, writing instead of, cant type herself|himself, cant text
        herself|himself, typing this for, shes the client, is the client, is your client, your client, hes the
        client, who had the lashes done, who got the lashes, you did her|his lashes, had her lashes done with|by|at,
        mam here, mum here, mom here, mother here, dad here, husband here, sister here, daughter here, son here,
        partner here, boyfriend here, wife here, roommate here, friend here, writing for her|him|me|them, texting
        for her|him|me|them, typing for her|him|me, on behalf of, on her behalf, from her phone, using her phone,
        shes asked me to, asked me to text|write|message, this is ..
        mum|mom|mother|husband|sister|daughter|partner|boyfriend|wife|roommate, its ..
        mum|mom|mother|husband|sister|partner|boyfriend here|writing|texting|typing, im her
        mum|mom|mother|husband|sister|daughter, wife|daughter|mum|mom|sister|husband cant|cannot .. her|his eyes,
        after|since your appointment, since you did|done her, you did her eyes, wont|doesnt|didnt|too|not
        tell|want|wants|shy|like|bother|ask|text|write|message .. herself|himself|themselves, she|he|daughter|son ..
        is|was too|so? shy|embarrassed|scared|polite|busy|proud|stubborn to? tell|text|say|write|ask|message|bother
    """,
    "toolong": """
        but|and its|it's|thats|it been? two|three|four|five|six|2|3|4|5|6|several|few days|weeks|week|nights,
        but|and two|three|four|five|six|2|3|4|5|6|several|few days|weeks|nights, but|and this|that|so
        long|much|bad|badly|many|red|sore|swollen
    """,
    "foundnone": """
        theres|there|there's is|are|was? none|nothing|nowt, there isnt|arent|wasnt any|one|a|none,
        found|find|finding|saw|see only|just?
        none|nothing|nowt|zero|zilch|nada|gorgeous|perfection|perfect|two|white|lashes
    """,
    "metoo": """
        mine are|is|r doing|at|playing it|the|same, mine has|have been at it, mine has|have
        started|caught|got|gone|done, is|its|thats|am me|i, mine too|also|likewise|aswell|followed,
        doing|did|do|does the very? same on|in|to|with|at my|mine, caught myself doing|scratching|rubbing|at,
        thats|this|that is? how|what my|mine|i eye|eyes|lids|lid|look|looks|am, caught my|our|his|her|the|their
        toddler|sons|kids|husbands|babys|dogs|cats|daughters|toddlers|childs|partners|boyfriends|sisters, mine
        have|has|are|is|do|did|does too|also|now|aswell|started|joined, mine as well, mine the same, mine joined in,
        so|as are|is|do|does|did|have|has mine, so am|have|do|did i, and|now|so me too|now|and|as, me now and all,
        same with|for me|mine, same here, now ive|i|im|its|mine caught|got|me|have|turn|gone|doing|the, now its my
        turn, guess who caught|has|got it|them, guess whos next, i caught|copped|picked it, ive caught|copped|got
        it|some|the, passed|gave|given it to me, passed it on to me, i think i copped|caught|have, my turn now, im
        next, now my|mine, hit me too
    """,
    "minefine": """
        mine are|is|feel|feels|look|looks|have|has been? all? totally|perfectly?
        fine|ok|okay|grand|perfect|good|great|calm|normal|clear|lovely|alright, im|ive had|been?
        fine|none|okay|ok|grand|nothing
    """,
    "minenot": """
        mine havent, mine hasnt, mine dont, mine doesnt, mine didnt, mine arent, mine isnt, mine werent, mine never,
        i dont have one|it|any|that, i havent, i dont have
    """,
    "work": """
        work|works|working|clean|cleaning|temp|temping|volunteer|job|shift|shifts|desk|reception in|at|for an|a|the?
        optician's|optometrist's|opticians|optometrists|vet's|vets|veterinary|kennels|cattery|specsavers|dermatologist's,
        im|i'm|am an|a? actor|actress|extra|stuntwoman|optom|orthoptist|ophthalmic, teach|teaching
        reception|nursery|swimming|biology|year, first aid course|training|refresher|class|dummy|dummies,
        nurse|doctor|surgeon|sister on|for|in eyes,
        nurse|doctor|work|works|working|job|cleaner|clean|porter|receptionist|student|volunteer|intern|temp|shifts
        in|on|at|for an|the|a?
        eye|eyes|ophthalmology|optician{s/}|opticians|optometry|ophthalmic|vet|vets|vet's|kennel{s/}|rescue|shelter|cattery|dermatology|burns|allergy
        ward|hospital|clinic|unit|department|casualty|surgery|practice|shop?, eye
        ward|casualty|nurse|hospital|clinic .. all day|week|night, im|i'm|am|as a|an|the?
        optician|optometrist|ophthalmologist|vet|veterinarian|dermatologist, vet|veterinary
        nurse|tech|assistant|student|receptionist, do|doing|did
        stage|film|sfx|special|theatre|theatrical|halloween|zombie|horror makeup|make|effects, makeup artist ..
        set|shoot|film|show|play, special effects makeup, zombie walk|run|film|makeup|extra, play|playing a|the
        corpse|zombie|witch|vampire|patient|ghost|victim|monster|beast|boxer, fake|stage|latex|prosthetic|painted
        blood|scar|scars|bruise|bruises|wound|wounds|black|lids|eye|eyelids, face painting, in latex, all
        paint|makeup|greasepaint, halloween makeup|look|costume, train|training|teach|teaching first aid|aiders,
        textbook|lecture|slides|exam on|about|of .. eye|eyes, revising|studying|study for ..
        exam|finals|optometry|nursing, i work|working with
        dogs|cats|kittens|horses|patients|animals|puppies|babies|toddlers
    """,
    "tale": """
        hope|hoping|pray|praying your|ur|yer|that ..
        better|heals|clears|settles|settled|mends|ok|okay|goes|gone|recovers|improves, hope|hoping your|ur|yer
        stye|sty|eye|eyes|hand|back|foot|head|cough|cold|tummy|arm|leg|infection, hows your|ur|yer poor?
        stye|sty|eye|eyes|hand|back|cough|cold|tummy|head|burn|infection, how is|are your|ur|yer poor?
        stye|sty|eye|eyes|hand|back|cough|cold|tummy|head|burn|infection, get well soon, feel better
        soon|hun|babe|love, speedy recovery, your|ur|yer poor eye|eyes|hand|face|thing|love|pet, sorry to hear
        about|your|ur|you, sorry you were|are|r|had|got, you poor thing|love|pet, sorry about your|ur
        eye|eyes|hand|stye, you said you|youd|you'd|u had|an|a|once|got, is|are the|that|your
        technician|artist|tech|girl|receptionist|model|dog ok|okay|better|alright, watching|watched the|a|some|that
        programme|program|documentary|news|drama|episode, saw|seen on the? news|telly|tv|insta|tiktok, in
        your|ur|the reel|story|video|post|advert|ad, horror|hospital drama|film|show, read|reading|reads
        a|the|some|this|that thread|article|post|story|stories|forum|blog|book about|on|of|by|where|from, in
        the|a|that|this|my film|movie|show|series|episode|book|novel|play|documentary|panto|soap|podcast|audiobook,
        film|movie|show|series|episode|book|novel|documentary|podcast about|with|where,
        clip|vid|video|reel|tiktok|youtube where|about, saw|seen|watched|watching a|the|this|one|some
        vid|video|clip|reel|tiktok|film|movie|documentary|post|thread, read|reading it? about|of|in ..
        paper|magazine|article|forum|blog|book|novel|thread, on
        facebook|insta|instagram|tiktok|reddit|youtube|telly|tv|netflix|mumsnet a|some|one|this|there
        girl|woman|lady|bride|person|post|story|was, the villain|heroine|detective|killer|character|baddie, horror
        film|movie|story|stories, urban legend|myth, scrolling|looking pics|photos|at|through of? ..
        pics|photos|pictures|stories|allergies|reactions
    """,
    "dream": """
        dreamt, dreamed, had a|the|this|my dream|nightmare, in my|the|a dream|nightmare, nightmare
        that|where|about|in, bad dream, woke from a dream|nightmare, weird|mad|funny|strange dream
    """,
    "moving": """
        watched|watching .. on the plane|telly|tv|sofa|train|coach|netflix, hen do, cried laughing, stand up,
        karaoke, film, movie, cinema, rom com, romcom, weepie, wedding, vows, ceremony, the speech|speeches, first
        dance, funeral, wake for, onion, onions, shallots, leeks, laughed, laughing, laughter, comedian, comedy,
        hysterics, giggles, goodbye at|to, airport, graduation, finale, last episode, christening, baptism, ballad,
        musical, concert, soppy, popcorn, reunion, proposal, proposed, scan photo|picture, sonogram, lion king, up
        the movie, titanic, the notebook
    """,
    "history": """
        asked about|for my? history|allergies|conditions, so you|u|ya know my history, form|card|sheet|questionnaire
        wanted|asked|asks|needs, for my|the|your file|records|history|notes, only|just mentioning|mention|telling
        you|u|it? because|as|since|cos|cuz, i mention it as|because|since, thats my history, wanted to know
        everything
    """,
    "calm": """
        whites of my|both? eyes are|look|is white|clear|normal|fine, <eye> <be>
        all|perfectly|completely|totally|still|both?
        normal|white|clear|healthy|calm|happy|themselves|fine|grand|good|perfect, <eye>
        normal|white|clear|fine|perfect|ok|okay|grand, not a
        peep|murmur|whisper|squeak|tingle|twinge|flicker|complaint from|on|in|out, not so much as a|an
        tingle|twinge|itch|flicker|tickle|murmur|twitch|hint, nothing in|on|near|wrong|with|around
        my|either|both|the? <eye>, both? peepers|eyeballs present|happy|fine|grand|good|perfect and? correct?,
        eyeballs|peepers are|is|look happy|fine|grand|delighted|thriving|good|chuffed, everythings|everything
        tickety|hunky|dandy|rosy|peachy|hunkydory boo|dory?, in|with|from either|neither|both eye|eyes
    """,
    "good_kind": "good kind|way|sense|type, cute kind|way, best way|kind, in a good way",
    "before": """
        asking before i|we book|come|commit, before i book|commit, havent|hasnt|not had mine|them|it|any done yet,
        havent|hasnt had mine|them|my|any lash{es/}|set|eyelashes? done yet, not been in yet, havent been in|to you
        yet
    """,
    "wept": """
        eyes streaming|watering|wet|streamed|watered from|with laughing|laughter|giggling|joy, laughed|laughing so
        hard .. cried|tears|streaming|wept|crying, laughed|laughing till|til|until ..
        cried|tears|streaming|wept|crying, balled|bawled|cried|sobbed|wept|blubbed my eyes? eyes out,
        balled|bawled|cried|sobbed|wept|blubbed my eyes out, bawled|cried|sobbed|wept|blubbed
        at|over|through|during|all|like, ugly cried|crying|cry, proper cried, survived|survive ..
        crying|tears|sobbing|funeral|wedding|film|movie
    """,
    "report": """
        warned|warn|warns me|us about|of|that, to ask, rang|phoned|called|texting to ask, keeps asking, told me
        it|they|that|its|theyd, call|calling|calls|called|naming|nicknamed|nicknaming me,
        colleague|friend|partner|mate|husband|sister|doctor|optician|optom|pharmacist .. look|check|examine|peek,
        had .. look, insisted, drag, dragged, drove me, taking me, says one of my|says my, noticed my, had to
        read|drive|guide|lead|carry, says, said, say, saying, thinks, thought, think, told, tells, noticed, notices,
        pointed, asked, asks, asking, worried, reckons, swears, sees, saw, looked, drove, driving, taking, took,
        took me, bringing, helped, helping, commented, mentioned, joked, texting, typing, writing, laughed, loves,
        love, loved, wants, insists, made me, makes, making, convinced, suggested, had to, gave, give, giving, keep
        telling, keeps telling, keeps saying, keep saying, concerned, who is a, whos a, is a nurse, is a doctor, is
        a pharmacist, sent me, a nurse, freaked, panicking, screamed, called, looks at me, teasing, teased, staring,
        teases, rang, fetched, goes|went|like|all
        why|what|whats|omg|wtf|oh|your|ur|you|u|babe|girl|mate|is|are|have|jesus|blimey|eek, clocked, spotted
        my|that|it|the, shouted, yelled, gasped, shrieked, double take, pulled me aside, whispered, flagged it|my,
        pointed out, googled, facetimed, swore
    """,
    "thing": """
        price, prices, cost, costs, bill, fee, total, purse, wallet, ego, pride, app, website, site, page, pdf,
        form, link, attachment, file, document, email, door, gate, car, boot, engine, music, playlist, queue,
        parking, traffic, bed, chair, couch, lamp, glasses, camera, photo, photos, pic, pics, picture, video, map,
        calendar, envy, invoice, receipt, quote, surcharge, deposit, tip, balance, voucher, tube, train, elevator,
        shutters, station, tin, lid of the, envelope, parcel, window of the, letter, jealousy, comments, reviews,
        competition, toast, dinner, oven, kettle, boiler, candle, bag, box, bottle, jar
    """,
    "elsewhere": """
        ankles, elbows, wrists, shin, shins, calf, forearm, forearms, thigh, heel, heels, armpit, armpits, sole,
        soles, back, foot, feet, knee, knees, leg, legs, wallet, pocket, bank, purse, stomach, tummy, belly, butt,
        bum, shoulder, shoulders, hip, hips, wrist, finger, fingers, hand, hands, arm, arms, tooth, teeth, ankle,
        ear, ears, nails, toe, toes, heart, soul, feelings, ribs, hair, nose, muscles, abs, jaw, cheeks, spine,
        thumb, period, cramps, calves, thighs, elbow, scalp, sunburn, sunburnt, engine, plants, garden, pan, boiler,
        shoe, shoes, cuticle, cuticles, glutes, hamstrings, quads, neck, throat, patience
    """,
}
