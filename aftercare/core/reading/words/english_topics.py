"""What English replies are about, beside signs; "…_weak" phrases count only where no sign is told. And the sides.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

TOPICS = {
    "complaint_weak": """
        worst, horrible, terrible, awful, hate, hated, ugly, uneven, too much, too heavy, so heavy, heavy lashes,
        feel heavy, price, expensive, pricey, upset, annoyed, annoying, messy, crap, shit, not great, not good
        enough, didnt even, joke, wasted, charged, supposed to be, meh, poor, not even on, look like a, was cold,
        was late, so loud, fix it, fix this, fix them, wonky, cost me, hate them, hate it, hate how, held up,
        cheeky, ridiculous, not okay with, stiff, steep, not full
    """,
    "booking_weak": """
        appointment, appointments, slot, slots, late, traffic, parking, booked, booking, available, confirm,
        confirmed, works for me, on my way, on the way, be there, same time, opening, openings, attend, come in,
        what time, schedule, fill on, next visit, next appointment, come by today, is sound, held up, leaving now, a
        fill, my fill, infill, my infill, cancel, almost there, nearly there, scheduling, in three weeks please,
        coming in, be late, parked, held up in, held up at, half 3 is sound, there, call you later, apt, appoint,
        next fill, need a fill, train late
    """,
    "notlost": """
        put|use|wear|sleep|sleeping|slept|lie|lying|apply|rub|tan|cream|oil|mask|thing|spf|sunscreen|products|serum|water
        .. on my face, ready to shed, say|mean|means|word|term|called|by shed|shedding,
        someone|somebody|he|she|uncle|groom|bride|dad|mum|mate fell|fall in|into|out|off|over|down, fell|falling
        in|into a|the|love hedge|pool|pond|river|bush|love?, have|need to come off|out, all gone
        by|and|before|now|since, by .. it had all gone, bald one|head|man|guy|dad|husband,
        poky|pokey|jabby|stabby|scratchy one .. fell|came|dropped out|off, come|came|take|taking off my|the
        contacts|contact|lenses|pill|meds|tablets|tube|bus|motorway, came|come|comes|coming out in|with
        red|hives|spots|rash|lumps|welts|blotches|a, in bits from|after|since, whenever|when|if|next|time you|u|ye
        have|get|got|find|see a|any? gap|gaps, minding|mind the gap, came|come|comes|coming|broke|break|breaking out
        in a|an|spots|hives|rash|bumps|lumps|blotches|welts|itchy|red|big,
        lightning|alarm|alarms|flashes|sparks|lights|fireworks|zigzag|camera|sirens .. going|went|goes off,
        leave|let them to? fall|come out|off, till|until they fall|come off|out, or can i just? leave|let,
        make|makes|making them|lashes|extensions shed|fall|drop, would|will|does|could that|it|this make them
        shed|fall|drop|twist
    """,
    "retention": """
        like a tree in|during fall|autumn|winter|november|october, thinned|thinning
        so|out|down|already|much|to|badly|loads|right|a, less|fewer n|and less|fewer
        lash|lashes|each|every|like|left|daily|on, less n|and less like, growing them|em back, left|right
        one|side|eye be|is|has|been|keeps? ghosting|ghostin|ghosted me?, dropped|dropping|drop like flies,
        soldiers|survivors|stragglers left|standing|remain|remaining, count as of .. left, more on my .. than on,
        full u turn, done a u turn|runner, fifth|sixth|fourth|third|tenth one this|today|since, wee funeral for|to,
        losing|loosing the|my inner|iner|outer|corner|middle ones|lashes, a? bit sparse, coming away, looking
        sparse|patchy|thin|gappy, lash|lashes in|on the|my
        sink|bath|bathtub|shower|pillow|towel|bed|keyboard|desk|floor|soup|tea, lashes left, pinged|pinging|pings
        off|out, chunk|clump|bunch|handful|cluster .. off|out|gone|missing, came|come|comes|coming away with|on
        the|my tissue|pad|brush|spoolie|cotton|towel, <some> came|come|comes|coming away, teeth missing, comb with,
        gap toothed, dropping like, falling like, like leaves in autumn|fall, curls|curl
        dropped|gone|went|fell|straight, lost their|its? curl, one after another .. leaving, leaving me one|by, one
        by one, jumping off, making a break, making a run, gone awol, going awol, awol, running away from, bidding
        farewell, said goodbye, down to .. left, moult, moulted, molted, like autumn, like a moulting|molting, more
        lashes on my|the .. than, on the pillow, on my cheek{s/}|face|jumper|keyboard, lost
        nine|eight|seven|eleven|twelve|thirteen|fifteen|twenty|dozen, lost like <some>, pointing at my|the|heaven,
        half of em, pointing .. nose|ceiling|cheek|floor, lash{es/} .. sideways, all sideways, one .. sideways,
        dropping like flies, .. came out in the shower|sink, came out in|with|already|when|after|overnight, come out
        already|in|when|with|overnight, coming out already|in|when|with|everywhere|overnight, half .. em|them|these
        .. gone|out|off, half of em gone, lose 2|3|4|5|6|7|10|a a? day, losing .. a day, lose .. a day, losing
        2|3|4|5|10, only lost one|two|a, lost one|two|2|3|a couple?, on my pillow, lash{es/} .. loose, lash{es/} ..
        bent, bent lash, few .. bent, jumped ship, ran away, abandoned ship, thin|thinner already, half my set, not
        holding on, hardly any lashes, whats left of them, one side .. gone, already gappy, retention is, fell out,
        fall out, falls out, falling out, fallin out, fallen out, fell off, fall off, falls off, falling off, fallin
        off, fallen off, falling, came off, come off, comes off, coming off, come out, comin off, comin out, popped
        off, pop off, popping off, shed, shedding, sheds, sheddin, lost
        half|a|like|some|most|all|about|so|lots|tons|loads|many|several|two|three|four|five|a
        few|around|2|3|4|5|6|7|8|10|12|15|20 .. lash{es/}?, losing them|lashes|so|a lot|lots|half|some, lost ..
        lash{es/}, losing .. lash{es/}, lash{es/} missing, missing lash{es/}, missing some|a few|a bunch|quite,
        came|come|coming off|out|away? in my hand|hands|fingers|fingertips|palm|towel|flannel|pillowcase, lost
        nobbut|about|maybe|just|only|barely <some>|two|three|four|2|3|4, had more lashes than me, more lashes than
        me, on the flannel|towel|pillow last|this|already, gap, gaps, gappy, gappin, sparse, patchy, bald, balding,
        bald spot, bare, thinning, thinned, thin on, stuck to|on my|her|the
        cheek|face|pillow|hand|arm|chin|phone|sheet|sheets|jumper|collar|sleeve, <some> gone|missing|off|out
        from|on|in|already|so one|my|the|left|right|far, 11|13|14|16|17|18|19|25 gone|missing|off|left|fell|lost,
        found|find|finding one|two|three|another|some|loads|lashes|lash|them|em|a in|on|all my|the|over,
        one|two|three|another|some|loads|half|few flew|landed|floated|plopped|ended|wound off|in|into|up|on|down,
        bite out of, took|taken|has|had|having a bite|chunk out, moth eaten, moths got|been|have|at, mice|mouse|rats
        been|at|got|nibbled|chewed, nibbled|chewed|eaten by, hole|gap|space|patch in my|the left|right?
        set|row|side|corner, big|massive|huge|great bare|empty|bald bit|patch|spot|bits,
        facing|pointing|going|sticking every|all|different|whichever which? direction|directions|way|ways, all over
        the|my duvet|pillow|pillows|sheets|sofa|bed|floor|sink, lashes|extensions are? going|go|goes|gone|went
        away|bye|missing|awol, lashes|extensions are? leaving|escaping|running|fleeing|vanishing|disappearing,
        left|leaving|leave the building|chat|party|group|premises, wind|breeze|fan|blew took|blew ..
        off|left|away|out, full|a|done|complete you turn, done|did|doing a|full u|you turn,
        going|getting|gone|goes|went|gettin|goin thin|thinner|gappy|bald|patchy|sparse, about|around|like|roughly
        <some> missing|gone|left|out, <some> have|has|had|already|just? come|came|fallen|popped|pinged|slid|dropped
        off|out|away, coming|come|came away one|on|both|in|from side|the|each|bits|clumps?,
        melted|singed|frazzled|burnt|burned|fried|scorched the|my|half|all? ends|tips|fans|lashes,
        hole|holes|space|spaces|bald|empty patch|spot? in|at the|my?
        middle|centre|center|corner|corners|row|line|set|lashes|lashline, count .. on one hand|fingers, count whats
        left, ends|tips|fans|lashes melted|singed|frazzled|curled|frizzed|scorched|went|gone, curled up
        funny|weird|wrong, lose|losing|lost this|that|so many, sliding|slid|slipping|slipped off|out
        in|one|two|like|as, in pairs, <some> left on|in one|my|each|the|either|left|right, hardly|barely|scarcely
        any left|remaining|there|on|to, glued with hopes|prayers|spit|wishes|nothing, hopes and prayers, growing
        sideways|down|up|wonky|inward|inwards, flew off|away|out, look|looks|looking like a?
        plucked|moulting|molting|bald|balding|threadbare, threadbare, gone awol|walkies|missing, half gone, half ..
        lash{es/} .. gone, nearly all gone, all gone already, almost all gone, lashes .. gone, theyre gone, hardly
        any left, barely any left, few left, not many left, none left, only .. left on, only have .. left, down to
        .. lashes, retention, didnt last, arent lasting, not lasting, dont last, didnt hold, not holding, arent
        holding, isnt holding, wont stay, not staying, arent staying, didnt stick, not sticking, dont stick, lasted
        .. days|day|week|weeks, lasted like, lasted maybe, twisted, twisting, twist, twists, wonky, crossing,
        crossed, criss cross, crisscross, crisscrossed, pointing down|up|sideways|every|in|the|different, sticking
        up|out|straight|sideways, turned round|around|sideways, flipped, flipping, drooping, droopy, droop, wilting,
        clumping, clumped, lifting at, lifting, lifted off, unraveling, unravelling, pillow .. lashes, pillow ..
        full, pulled out, pulled one, pulled a few, pulled off, rubbed off, ripped out, lash{es/} everywhere,
        dropped out, dropped off, half empty, half of them, less than half, look uneven now, one side .. shorter,
        grown out, growing out, grew out, outgrown, hanging on by, hanging off, loosening, molting, moulting,
        jumping ship, abandoning, abandoned, missing from, missing on, missing in, disappearing, deserted, dropped a
        few, spiking out, gone .. crooked, went crooked, crooked, lost
        loads|lots|tons|heaps|dozens|several|some|a|about|like, wrong way, lost <some>, lost
        like|about|around|maybe|at <some>, <some> .. <shed> ..
        off|out|in|on|already|when|after|overnight|today|yesterday, <some> .. <shed>, <shed> out|off .. <some>,
        keep|keeps falling|dropping|coming|shedding|popping, havent|hasnt|didnt|not|dont
        last|lasted|lasting|stay|stayed|hold|held, lasted <some> days|day|hours, fell in|into|off|out, only lasted,
        <some> of .. ones .. gone|off|out|missing, <some> of the|my left|right? .. gone|missing, single one ..
        budged, look like a plucked, cross over each other, crossing over each other, crisscross{ing/ed}, twisted
        round|around each other, shed a|the load|lot|bunch|few|handful|ton, gap .. drive .. through, gap .. could ..
        through, falling falling, fall fall
    """,
    "booking": """
        get|have these|them|those|mine|my lashes? took|taken|removed|soaked|whipped off?
        <day>|today|tomorrow|asap|tonight|sooner, like|want|need|love these|them|those|mine|my lashes?
        removed|off|out please|asap|today|tomorrow|<day>, please? can|could|may i come|pop|nip|swing|drop|call|stop
        by|in|over|round|past|down this|today|tomorrow|tonight|after|before|on|now|<day>, five|ten|any|got|have
        minutes|time|slots|gap|space for me today|tomorrow|tonight|<day>, got any|a
        slots|gaps|spaces|mornings|afternoons|evenings|space|slot|gap, can|could|may i|we
        have|nab|grab|get|take|bag|snag|do|keep the|that? <day>|<clock>|half|quarter|last|first|earlier|later,
        leaving the|my? house|work|home|office|gaff now|in|shortly, cant find the|your
        door|place|entrance|salon|building|shop|street|studio|bell|buzzer, outside
        x|now|love|hun|waiting|when|whenever, can|could i|we|you shift|swap|leave|postpone|delay|rearrange|move
        it|that|this|mine|things till|until|a|to|for|by?, something|somethings has|is|s? come|came up, not
        going|gonna|able to? manage|come|make|be able, yes|yep|yeah to <clock>|<day>|<nth>|the, have|need|will|got
        to rearrange|reschedule|postpone, rearrange, <clock>
        works|suits|is|please|instead|then|perfect|grand|good|fine|ok|okay|lovely|it, oclock
        is|works|suits|please|instead|then|grand|good|fine|perfect, that|this|the time|day|one|slot|date
        suits|works|does, ill|id definitely|happily|gladly? take|have|grab|keep the|that? <clock>|<day>|<nth>, eta
        <clock>, a|an|the <clock>, push|bump|shift|move|put|change it|me|us|mine to|till|back|until
        <clock>|<nth>|<day>|1|2|3|4|5|6|7|8|9|10|11|12|noon, reserve me|us|a|the|for|my|one|two|three|four|five|six,
        to reserve, reservation, book|reserve|take|do|want|make|prefer|decline|skip|miss|swap|cancel|hold|keep the?
        <nth>, would|does|could|will the <nth>, is the <nth>
        ok|okay|free|good|any|possible|available|taken|still|too|gone, on|for|by|before|after|till|until|about the
        <nth> please|instead|then|if|work|suit|or|at|and, any chance|anything|something|space|room|slot|hope
        on|for|around|about|of the? <nth>, swap us|me|them|our|days|with|round, which|what
        days|dates|times|slots|day|date|mornings|evenings have|do|are|is|can|would|suit|suits|you, when|how soon
        could|can|would|might|will you|u|ye|yous fit|see|do|take|have|squeeze|get|slot, when else, what|how about
        <day>|next|another|first|last|later|earlier|half|after, how|what about the
        <day>|<nth>|bank|week|weekend|following|next|other|holiday, whats|what the? latest|earliest|soonest|next
        you|youd|u|i|id|time|day|one, is|are there a|any|still?
        <clock>|slots|slot|space|spaces|gap|gaps|opening|earlier|later|evenings|mornings|appointments|cancellations,
        have you|u|ye anything|space|room, you|u|ye have|got space|room, anything|something|slot|space
        between|before|after|around|for|next|this|at|on <day>|<nth>|now|eid|christmas|xmas|easter|diwali|new|the,
        im|am i|we still|definitely|def|booked|down|in? with you at|on|for|tomorrow|today|next, still
        in|on|booked|down for, checking|check i|im|if|were|we|its|my .. in|on|down|booked|at|for
        <day>|<clock>|noon|the, fit|squeeze|slot|pop my|a|another|in my?
        neighbour|neighbor|friend|mate|mum|mom|sister|cousin|daughter|colleague|boss|nan|bridesmaid in, i
        must|have|need|hate|want to? decline|postpone|bail, its a no|pass for|from|this|on|today|tomorrow,
        not|isnt|wont|cant be? happening|making|make|manage|managing it|the|my|today|tomorrow|tonight, gonna|going
        to not? make the|my|it|today|tomorrow, wont|cant|not|cannot be? in|along|around|coming|there|over
        today|tomorrow|tonight|this|till|until|for|after|now, ill|so|gonna|will|must|have to? pass on|for|this
        tonight|today|tomorrow|<day>|time|one, im out for|of tonight|today|tomorrow|<day>|this,
        leave|forget|scratch|bin|drop|ditch|park|pause|shelve the|my|our
        infill|fill|refill|appointment|appt|<day>|booking|set|<nth>, leave|skip|drop <day>
        please|for|and|till|until|this, skip|ill <day> top|fill|infill|appointment, leave it|that|mine|them
        till|until|for now|another|a|<day>|next|after, cant|couldnt|cannot face
        lashes|it|coming|the|my|tomorrow|today, sorry about our|my|the
        <clock>|<day>|12|11|10|9|8|1|2|3|4|5|6|7|appointment|slot|visit, spare you|yous|ye, what|which day ill|i|we
        can|could|manage|make, give me|us 5|10|15|20|25|30|five|ten|fifteen|twenty|half|another|a|until|till
        minutes|an|ten|few|minute|<clock>|hour, half|an|hour an? hour|bit after|later|earlier|behind, slept
        in|through|past, overslept, overlay, missed my stop|alarm|exit|turn|connection, wrong
        bus|train|stop|street|day|days|address|postcode|platform, days|dates|weeks|times
        wrong|mixed|muddled|confused, thought it was|is
        tomorrow|today|next|yesterday|monday|tuesday|wednesday|thursday|friday|saturday, locked|lock myself|me|us
        out, locksmith, puncture, flat tyre|tire|battery, waiting on|for|in the|a?
        tow|aa|rac|recovery|locksmith|plumber|boiler|engineer|delivery|taxi|uber|cab|ferry|boiler|electrician,
        boiler|gas|sky|delivery man|mans|guy|engineer|men here|late|still|hasnt|not|due,
        road|roads|street|bridge|motorway|tunnel|pass is|are|s|all? blocked|closed|shut|flooded|up, snowed in,
        snow|ice|flood|floods|storm|cyclone|hurricane|typhoon|blizzard|flooding warning|alert|so|and
        cant|were|im|we, crawling along, walking back now, jogging|running|walking|legging the|it rest|there|over,
        flight|train|tube|bus|tram|ferry|metro|plane home|back|from|line? is|was|been|has|s?
        delayed|cancelled|canceled|suspended|diverted|packed|late|stuck|down, car|van|motor|bike|truck|wheels|engine
        wont|is|has|got|broke|conked|died|get|s start|broken|down|dead|clamped|towed|out|on|flooded|wash|bust, bump
        in the car, car accident, we|ive|weve|had had? a? bereavement, bereavement,
        take|strike|scratch|cross|pull|knock me|us|mine off|out|from of? the|for?
        <day>|<nth>|<clock>|diary|calendar|schedule|rota|book|slot|then, i|we|and|id wish|want|like|love|need to
        reserve|gift|treat, gift|treat my|her|him|the .. lashes|lash|lift|set|fill, treat for my
        mum|mom|wife|sister|daughter|friend, gift for my|her|a, do|see|take|lash me|us and|plus my|the|her|a, me
        and|plus|+ my|the|2|3|4|5|two|three|four mum|mom|sister|cousin|friend|mates|bridesmaids|mother|girls ..
        together|both|want, ten|two|three|four|five|six|eight|all of us want|need|getting|coming|for, us|me
        both|two|three|four in|together|done|for, + 1|2|3|4|5, bride and, bridal party|trial|booking, my
        hens|hen|wedding|prom is|s? <nth>|<day>|next|this|on, add a|an|on brow|brows|tint|lift|tidy|wax|lower|bottom
        .. on|to|with|for, drop|switch|change|downgrade|upgrade me|us|mine|it|my from|to|down|up ..
        set|fill|infill|classic|classics|hybrid|natural|volume|lift, whenever|when you|u|ye have|can|get|got
        one|a|me|us|space, set|fill|infill|removal|lift whenever|asap|soon|next|please,
        mornings|evenings|weekends|afternoons only|best|suit|better|work, prefer|rather
        evening|evenings|morning|mornings|afternoon|afternoons|weekend|weekends|after|before|later|earlier|<day>|<clock>,
        do with an|a|half hour|bit|later, im|am on|back lates|earlies|nights|shift|call|days .. so|till|until,
        before then or not|after, not till|until spring|summer|autumn|winter|after|the|payday|next|<day>,
        till|until|after|at|on payday|pay|wages day|i|come|comes|in?, havent|dont|no|hardly have|got? the|any?
        money|cash|funds|spare this|till|until|for|right|now, spent|spend the|my lash money|fund|cash,
        wages|payroll|salary|pay|bonus came|messed|late|is|are|through .. this|month|so|full|set|fill, catch|see
        you|u|ye|yous next|another|a|when|after|once|in week|month|time|other|theyre|weeks|were|im|its, so|but|and
        lashes|mine|it|i|tomorrow|<day> will|must|has|have|is to? wait, the week|day|month after|before
        is|works|suits|please|instead|maybe, put it|me|us|that off|back till|until|to|by|a, i am
        outside|downstairs|here|inside|there|late, im outside|downstairs|round|across|below, bang on time, hold
        it|that|the|my|one for|till|until|please|slot|space|place, holding it|that|the|my slot|for|place|spot, yes
        coming, coming now|yes, put you out if i|we came|come, would it .. if i|we came|come, you'd|youd do
        me|us|my|her|a, stay in|off|home .. doctor|days|fortnight|week, doctor|doc|dr|gp says|say|said|told ..
        stay|rest|bed|off|walk|in, no lashes|salon|lash <day>|today|tomorrow|tonight|for|till|until|this, on bed
        rest, housebound, keeping me|him|her in, wont|not|cant get|getting|got there|out, wont|not|cant get|getting
        to you|ye|yous, wont|cant|not make 1|2|3|4|5|6|7|8|9|10|11|12|1.30|2.30|3.30|4.30|noon, cant do our|the|my
        <day>|1|2|3|4|5|6|1.30|2.30|3.30|4.30|5.30|9.30|10.30|11.30, best move|leave|shift|change it|us|mine,
        leave|push|give it a|another|until|till|for week|fortnight|month|weekend|bit, moving to the, no chance
        of|for the? today|tomorrow|morra|tonight|<day>, another|other day please|pls|instead|ok|sorry|then, some|any
        other day, miss other day, sorry about today|tonight|tomorrow|this, sorry miss, skip
        tonight|today|tomorrow|the, can|could we rearrange|reshuffle|reorganise|swap, can i swap, half an hour late,
        quarter|half of|an hour late|behind, there by|for half|quarter|ten|1|2|3|4|5|6|7|8|9|10|11|12|five|six, ill
        be in for|at half|quarter|1|2|3|4|5|6|7|8|9|10|11|12, running|run late|behind|over, ran over, overran,
        clinic|appointment|meeting|physio ran|overran|running over?, on for
        1|2|3|4|5|6|7|8|9|10|11|12|one|two|three|four|five|six|seven|nine|ten, still on for, keep <day>,
        fill|rebook|reschedule after, wont be there|in|coming|over, cant come till|until|over|in, see|c you|u|ya
        when|wen im|i, whatevers left for, any <day>, postpone, free earlier|later|now, new slot|time|date, shorter
        appointment|slot, sliver|crumb|scrap|inch of <day>|space|room, is
        1|2|3|4|5|6|7|8|9|10|11|12|8am|9am|10am|11am|noon|1pm|2pm|3pm|4pm|5pm a thing|possible|free|taken|gone, put
        the kettle on, two|2|one|three|3|five|5 streets|stops|doors|minutes|mins away, can|could i
        pull|come|roll|swing|turn|show up early|a, pull up a? lil|bit|little early|late|earlier, works lock|book|put
        it|me in, lock it in, lock in, any other <day>|morning|afternoon|evening|day|time, make it
        ten|quarter|half|five|twenty|1|2|3|4|5|6|7|8|9|10|11|12, late i might, might be late, bring forward
        the|my|our, bring .. forward, push back my|the|our, push .. back to|a|till, missed|misd|miss the|my
        ferry|bus|train|tram|tube|connection|lift, next ones|one at|in quarter|half|ten|five|twenty, satnav|gps
        has|had|sent|took|is, alarm never|didnt went|go|off, on my way with, rain check, raincheck,
        5|five|10|ten|2|two|3|three min|mins|minutes, still good for <day>|noon|later|the, hold up for, late small,
        go slow for, hold up on the, double booked myself, suits me|us better|best, suit me|us better|best,
        end|start|beginning|middle of the|next month|week suits|works|is, outside for my|the, scrap the|my|that
        <day>|appointment|slot, running late, running .. late, only|just leaving now|home|work|the, im|i only
        leaving, whichever you|youve|u .. free|got, whatever you|youve|u .. free, whatevers free|after|next|going,
        buzzer|bell|door is|isnt|not|dead|broken, whichever is|suits|works, can we move, could we move, can you
        move, can u move, move me, bump me to, bump|push|shift me|mine|my to|till|until|back|later|earlier, i would
        like to come, would like to come, id like to come, like to come one|again|next|in|on, place for|to ..
        remove|removal|fill, when you have place, have place for, when|what .. free for, fit her|him|us|me|them in,
        can she come, bring her in, poke me if, give me a shout if, shout if, let me know if ..
        slot|space|opens|cancels|comes|frees, if .. slot|space|spot .. opens|comes|frees, slot opens, i will be
        late, b there, be there at|10|in|for, ill keep|take
        fri|friday|monday|tuesday|wednesday|thursday|saturday|sunday|the, keep
        fri|friday|mon|tue|wed|thu|sat|monday|tuesday|wednesday|thursday|saturday, im the .. appointment, im the
        2|3|4|5|9|10|11|12, think more like, more like 2|3|4|5, stuck behind, behind a tractor|bus|lorry, bus
        broke|is|never|didnt, bus is late|behind|stuck, train .. cancelled|delayed|stuck, cant come, cannot come,
        cant make, stop by .. for .. infill|fill|refill|removal, for the infill|fill|refill|removal, free ako,
        can|could|may|might i|we have|get|take|grab|do|want a|an|another|any|the
        early|earlier|late|later|evening|morning|lunch|lunchtime|afternoon|weekend|different?
        slot|appointment|space|time|spot|place, <day> is|are|will? off|out|cancelled|no|impossible
        im|i|so|now|then|sorry?, cancel me, cancel|move|change|shift|swap me please|pls|plz|in|to|out, wont|cant|not
        be in|there|able|coming tomorrow|tmrw|tmw|today|<day>|tonight|at|then, wont|cant|not
        manage|make|do|get|reach|attend <day>|today|tomorrow|it|at|4|5|3|2|1|noon|half|the, have
        to|going|need|gonna|must|will|gotta to? skip|miss|drop|bail <day>|on|my|the|this|it|tomorrow|today,
        might|may|will|gonna|going|could to? be late|delayed, keep my|the|our|your
        booking|slot|appointment|space|spaces|place|one, keep two|three|four|five|2|3|4 spaces|slots|places|seats,
        see you|u|ye on the|on|next|this
        <day>|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|3rd|1st|2nd|4th|5th|14th,
        can|could do the|a
        <day>|3rd|1st|2nd|4th|5th|6th|7th|8th|9th|10th|11th|12th|14th|15th|20th|fourteenth|first|second|third|tenth,
        push|move|shift|bump|bring|put|swap|change my|the|her|our|it|own
        infill|infills|refill|fill|set|lashes|slot|one|time|own|3|4|5|2|1
        back|up|forward|on|over|to|till|until|earlier|later|by, the one|first|time you offered, go back to the, swap
        back, nobody|noone .. took|taken it|that, take|fix|make|get|give|need|wish appointment|appt
        for|on|at|my|me?, sat|sitting|stood|standing|waiting|parked outside|downstairs|upstairs|out the|at?
        front|back?, rung|rang|ringing|pressed|pressing|buzzed the? bell|buzzer|doorbell, on my|the way
        tell|now|to|in|dont|running, running|like|about running|like|about fifteen|ten|five|twenty|15|10|20
        behind|late|over, patch|fix|sort|redo it|them|that <day>|tomorrow|today, come in and show, ill be there
        with|by|at|in|for, be there with bells, closed the whole? street|road|bridge|motorway, turn|turned|turning
        round|back because|cos|as|i, i can do <day>|morning|afternoon|evening|after|before, give appointment, kindly
        give, kindly book, kindly fix, come in for the patch|a, patch test on|for|any|this|next, come for the
        patch|a, other slot|time|day|date, different slot|time|day|date, removed tomorrow|today|asap|this, take them
        off tomorrow|today|this, squeeze us|her in, any gaps on|this|next|today|tomorrow|in, gap in your|the
        diary|book|day, can we do .. instead, could we do, can we switch|move|swap|change|push, do
        monday|tuesday|wednesday|thursday|friday|saturday|sunday, instead of the, same time .. weeks, in
        three|two|2|3 weeks please, i need a fill, need another fill, lash appointment, come by
        today|tomorrow|at|on|this, swing by, pop by, pop in, drop in, half 3 is sound, is sound, squeeze .. in, got
        space, any space, any room, any chance of a, any chance .. slot|appointment|tomorrow|today|saturday|friday,
        any cancellations, whats available, when are you free|open|next, when r u free|open, when is your next,
        whens your next, next available, soonest, earliest you, got a wedding .. need, im in for, put me in for, get
        me in, i am late, gonna be 5|10|15|20 minutes, 5|10|15|20|five|ten|fifteen|twenty minutes
        late|away|out|behind, leaving now, just leaving, almost at, nearly at, bus .. late, train .. late, car
        broke, flat tire|tyre, got held up, held up at|in, held up, be there in, c u there, see ya
        then|there|at|tomorrow, see you then|there, yes ill be there, yes i will be, yes to
        friday|saturday|monday|tuesday|wednesday|thursday|tomorrow, count me in, book, booked, booking, bookings,
        rebook, rebooked, rebooking, reschedule, rescheduled, rescheduling, resched, re schedule, schedule
        me|my|another|a|an|for, scheduling, cancel, cancelled, canceled, cancelling, canceling, cancellation,
        cancellations, appointment, appointments, appt, appts, apt, apts, appoint, apptmt, appointmnt, slot, slots,
        opening, openings, availability, available, availabilities, avail, spot open|left|for|on|this|next, spots
        open|left|for|on|this|next|available, any spots, a spot, squeeze me, fit me in, fit in, get in
        sooner|earlier|before|this|on|next|for|with, pencil me, put me down|in, put me on, move
        my|it|the|me|to|our|us|today|tomorrow|mine|friday|fridays|mondays|tuesdays|thursdays|wednesdays|saturdays,
        leave it till|until|til|for|to|a the|next|after|new|another|bit|week|month|while, will|ill
        ring|call|book|message|text|phone|be in|in|after|once|next|when|when|touch
        january|february|march|april|may|june|july|august|september|october|november|december|the|new|im|i|money|in,
        confirm|check|change|move|cancel|have|make my|our|the|a reservation|reservations|booking,
        put|pencil|book|squeeze|slot|fit|stick|pop
        her|him|us|me|mum|mom|nan|sister|daughter|friend|mate|cousin|bestie down|in for|on|at, put|pencil my
        mum|mom|nan|sister|daughter|friend|mate|cousin|bestie down|in, can|could|will|would you see|fit|take me|us
        today|tomorrow|tonight|now|asap|this|on|sooner|earlier, can|could|may|might i|we
        swap|switch|change|move|slide|push|bump|nudge|scoot|shift to
        <day>|half|quarter|1|2|3|4|5|6|7|8|9|10|11|12|noon|later|earlier, as planned, have to|gonna|going
        to|must|might|may|will|gotta skip|miss|bail|pass|duck my|the|our|on|out|today|this|tomorrow|it, skip|miss
        9.15|9.30|10.30|11.30|12.30|1.30|2.30|3.30|4.30|5.30, bit|little|few|touch|tad|smidge
        behind|late|delayed|tardy, running behind, wont|cant|not make
        9|10|11|12|1|2|3|4|5|6|7|9am|10am|11am|12pm|1pm|2pm|3pm|4pm|5pm|6pm|7pm|it|today|tomorrow|tonight, be with
        you|ye|yous at|in|for|by|around|about|soon|shortly|asap, walking it, half|quarter
        past|to|four|five|six|three|two|one|ten|eleven ok|okay|alright|instead|please, next week|month
        ok|okay|alright|good|instead|please, ready to book|come, gonna be about|around|like|half|quarter, all of us
        come|in, she wants in, another slot|go|time, see|c|cya u|you|ya in 2|3|4|two|three|four|a|few couple?
        wks|weeks|week|wk, knock <day> on the head, do the week after|before, next free
        fill|infill|gap|one|hour|time|refill, moved to the|next <day>?, cant|cannot do
        1|2|3|4|5|6|7|8|9|10|11|noon|mornings|afternoons|evenings|nights, put|slot|pop|stick|squeeze|pencil|fit|book
        me down|in? for|with|on|at the|a|after|mon|tue, slot me|us in, is|are .. still mine|ours, <day> <day>?
        noon|morning|afternoon|midday? is|works good|grand|fine|perfect|great, okay|ok|good|grand|yes|happy|fine
        for|to|with the?
        1.15|1.30|2.15|2.30|2.45|3.15|3.30|3.45|4.15|4.30|4.45|9.15|9.30|9.45|10.15|10.30|10.45|11.15|11.30|11.45|12.15|12.30|5.15|5.30|5.45,
        drop|lose|release|free up? my|the <day> slot|appointment|spot|place, last|first slot on|of, rebook
        me|us|mine for|after|before, shift|move my <day> fill|slot|appointment|one, move me up|forward|back|to,
        like|prefer|want <day> instead, whenever you have|get|got a gap|space|minute|slot|mo, wrong
        entrance|door|floor|building|buzzer, which|what door|floor|entrance|buzzer|building, bring my .. along,
        gap|space before|on|this|next friday|monday|tuesday|wednesday|thursday|saturday|sunday|week, move ..
        appointment|appt|fill|visit, change my|the|our .. time|day|date|appointment|appt|to, push .. back, pushed
        back, push it back, push my, postponed, swap my|to|the|days, switch my|to|days|the time, earlier time, later
        time, earlier slot, later slot, come earlier|later|in|on|at|by, come in, coming in, coming at, come see you,
        can i come, can you do, can you fit, can u do, could you do, could u do, do you have ..
        free|open|anything|time|space|room|slot|on|for|any, do u have ..
        free|open|anything|time|space|room|slot|on|for|any, have you got .. free|anything|room|space|a, got
        anything|any, anything free|open|available|this|next, anything on|for <day>, something free|open, anything
        tomorrow|saturday|sunday|monday|tuesday|wednesday|thursday|friday, are you free|open|working, r u free|open,
        are u free|open, you free|open, u free|open, free on, free this|next|tomorrow|at, late, be late, gonna be
        late, im late, be there, on my way, omw, otw, on the way, almost there, nearly there, stuck in traffic,
        traffic, parking, parked, im outside, im here, just parked, pulling up, mins away, minutes away, mins late,
        minutes late, lost .. way, cant make it, cannot make it, wont make it, not gonna make, not going to make,
        cant do .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|today|then|that, see you
        at|on|then|tomorrow|thursday|friday|saturday|sunday|monday|tuesday|wednesday|next|soon|there|thurs|tues|fri|sat,
        see u at|on|then|tomorrow|thursday|friday|saturday|sunday|monday|tuesday|wednesday|next|soon|there, c u
        at|on|then|tomorrow, cu then|tomorrow|at, cya then|tomorrow, confirm, confirmed, confirming, confirms, ill
        be there, i will be there, works for me, that works, that time works, time works, fill
        on|at|next|this|before|for|tomorrow|please|in|appt|friday|saturday|monday|tuesday|wednesday|thursday|soon|asap,
        infill on|at|next|this|before|for|please|appointment, refill
        on|at|next|this|before|for|please|appointment|soon, a fill, my fill, my infill, my refill, need a fill, due
        a fill, due for, an infill, next fill, next infill, next refill, next appointment, next visit, full set
        on|for|before|in, new set before|on|for, removal on|for|appointment, waitlist, wait list, waiting list, no
        show, come with me, bring my friend, for two, back to back, same time next, same time, same day and time,
        same slot, standing appointment, keep my, deposit, dentist appointment, what time, what times, wheres my,
        ill take, ill take the, the 3pm, stay off work, make an appointment, set up, sign me up, lock me in, put me
        in, slide me in, still good for, are we still, we still on, not coming, take a rain check, double booked,
        unable to attend, unable to come, unable to make, attend, c u
        tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|at, 10|5|15|20 minutes tops, give my spot
        away, dont give my spot, give .. spot away, see me on|at|tomorrow|this|next, mover me,
        monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|morning|afternoon works|suits, works for,
        broke my, in bed with, come down with, at the hospital with my, so cant come|drive|make, gotta cancel, need
        to cancel, have to cancel, next time please, would|could|does|how|what about? .. <day> ..
        suit|work|do|be|ok|free|possible, <day> .. instead|suit|suits|work|works|any good, can|could|shall we
        do|say|make, lets do|say|make, put .. off till|until, move|push|shift|switch|swap|change|bump ..
        <visit>|<day>, on the books, get on .. books,
        need|want|like|wanna|after|book|get|have|schedule|arrange|fancy a? <visit> ..
        asap|soon|on|before|this|next|for|in|please|<day>, need|want|like a|an <visit>, take my spot|slot|place, at
        the door, its locked, on the bus|train|tube|road|motorway|tram|metro, make it .. regular, a regular <day>,
        fix .. <day>, free .. <day>, <day> .. free, any .. <day>, got anything, till|until <day>, for <day> please,
        <day> at, miss my <visit>|appointment, cant make <day>|it|my|today, bailed, sitter .. cancelled, im running,
        be there .. at|by|for, see you .. <day>
    """,
    "notbooking": """
        how much|many|long is|are|for|does|do|would|was a|an|the|your? infill|fill|refill|removal|set,
        price|prices|cost|costs|rate|rates of|for|on a|an|the|your|my? infill|fill|infills|fills|refill|removal,
        do|does a|an|the? infill|fill|infills|fills|refills cost,
        got|validate|any|have|free|about|is|need|street|nearby|disabled|paid|u|you|public|pay|metered parking,
        parking
        fine|fines|ticket|tickets|permit|permits|meter|space|spaces|machine|app|free|nearby|for|behind|spot|spots|situation,
        what time do|does|did .. lock|locks|close|closes|open|opens|shut|shuts|finish,
        daughter|son|baby|toddler|mum|mom|friend|sister|husband|partner|dog|kid|kids|child|little come|sit|wait with
        me and|while|or|if, do|are|will you|ye|u open|opening|closed|closing|shut|working on?
        bank|easter|christmas|boxing|new|public|good|holidays, full|the|hot|strong|bright|blazing|midday sun at|on,
        any chance of a|an|some
        loyalty|student|discount|refund|receipt|voucher|gift|sample|spoolie|freebie|photo|copy|leaflet|tip|link|recommendation,
        for two|three|four|five days|weeks|hours|months|nights, on the tram|bus|train|tube|plane|ferry|metro,
        stop|stopped|stops|stopping|halt traffic, on my way to|from pick|collect|get|the|a|work|home|school|my,
        nearly|almost didnt book, only booked|book cuz|because|cos|cause|coz|as, on my|the way home|back, way home
        from|on, on the bus|train|tube|tram|metro home|back|today|yesterday, come|came|coming down with a|an
        severe|bad|serious|terrible|acute, could|can you do
        pastel|pink|blue|purple|red|brown|green|glitter|coloured|colored|colour|color|rainbow|ombre|wispy|wispies|cat|doll|anime|manga|shorter|longer|natural,
        on the parking|traffic|money|price, late reply|reply, for late|slow reply|replying|response, late
        fee|fees|night|nights|cancellation, cancellation|cancelation|deposit fee|policy|charge|rules, whens|when
        my|is|was? infill|fill|next|appointment|appt|refill due|needed, what times my next|one, what time is my
        next|one, whens my next, when is my next, whens my infill|fill, when is my infill|fill, is there parking,
        selfies|photos|pics|reading|sat|sitting|stood|standing|woman|lady|girl|man|fella|lad|kid on the
        bus|train|tube|tram|metro|motorway, if i stop|stopped by|in|at, month|months|week|weeks old,
        three|3|two|2|four|4|six|6 month|week old, for the week|weekend so|and, parking at|near|by|like,
        where|whats|hows|free the? parking, not cancelling, not canceling, if i cancel|cancelled|canceled,
        appointment reminder
    """,
    "question": """
        anything else|more i can|should|could, wondered|wonder|wondering if|whether|what i|theres|it
        should|could|can|need|is|was, cream|drops|ice|antihistamine again|too|instead or, is|are
        sunscreen|spf|suncream|sunblock|retinol|serum|cleanser|wipes|toner|eyeliner|liner|concealer|shampoo|vaseline|falsies|goggles|eyedrops|contacts|lenses|running|hot|facials|facial|massage|botox|waxing|threading|moisturiser|moisturizer|foundation
        ok|okay|alright|safe|fine|allowed|bad|good|permitted|yet|near|around|on|with, if one|it|they|some|a
        falls|fall|comes|come off|out|loose, does|do|will|would|can
        sweat|water|rain|makeup|mascara|steam|chlorine|oil|sun|heat|sauna|sunscreen|crying|sleeping|sex|retinol|spf
        mess|ruin|affect|melt|hurt|kill|damage|loosen|wreck|break|bother|matter|shed, wats|wots|wuts|wat|wot|whats
        is? the diff|difference|point|price|damage|plan|deal, is it
        true|right|correct|ok|bad|safe|legal|normal|possible that|u|you|if|to|im|i, may she|he|they|one|we,
        hypothetical for you, what would you|u say|do|tell|suggest|advise|recommend to|if|about, any chance you|u|ye
        know|remember|could|can, any idea where|when|what|which|how|if, how much for|is|are|would|r, how mcuh, how
        muhc, which buzzer|bell|door|floor|unit|entrance|number is|do|are, which one is it,
        wee|quick|small|silly|daft|random|stupid query|question|ask, could do with a? receipt|invoice|copy,
        need|want a receipt|invoice, yay or nay, thoughts on|about, ring any bells, hold up or|in, last
        in|through|at .. or, will they|it hold up, can my dog|puppy|labrador|baby|toddler|kid|mum|mom|friend
        come|sit|wait|join, have a look for me, left my
        keys|phone|purse|scarf|glasses|coat|umbrella|jacket|ring|charger, keys are|might|could under|on|at, does the
        voucher|card|gift, voucher .. run|runs out, voucher .. expire{s/}, still valid, tell me again
        what|how|when|where, remind me what|how|when|where|which, wanting to know, does it shut|close|open, can
        go|use|wear|swim|wash|do|put|eat .. or not, or not ah|leh|lah|meh, ok|okay|safe|alright|fine|good
        on|near|around|with the|my|these lids|lid|lashes|eyes|lashline|eyelids, yeah or nah, now what, wetin i go
        do, wetin i go, ok lang ba, okay lang ba, pwede ba,
        antihistamine|piriton|cetirizine|claritin|benadryl|drops|ice yeah|yes|ok|okay|maybe|then, is that|this
        your|the|ur glue|adhesive|remover|fault|stuff, does that|it matter, is she|he old|young enough, old enough,
        kindly tell|guide|suggest|inform|advise|say, howd i, what do you|u charge, wants to know do|does|if|can|is,
        resend|send it|me|again .. please, is parking free|ok|easy|hard, do you|u guarantee, how do|would|d i fish,
        is there a|any number|line, would an|a antihistamine|tablet|cream, you|u|ye|do have|give|offer|got a?
        discount|discounts|vouchers|voucher|gift|parking|wifi, what time you|do|are you|ye|u? close|open|shut, are
        ye|you|u open, do ye|you|yous do|sell|offer|take, can i|she|we|he swim|go|wear|use|still|shower|bathe|sauna,
        can she|he|we|they, help me decide|choose|pick, what should she|he|they, is this ye|you or,
        please|kindly|pls share|send|forward .. bill|invoice|receipt|details, ok if|to i? stop|pop|come|grab,
        alright if i, had anyone|anybody else, do i bring, do i keep, what size|kind|brand|type, what now, or what
        do, is that|this the? usual|usual|normal|ok|okay|bad|right|allowed|like|covered, what do you
        think|reckon|suggest|advise|recommend, what else can|should|could i|we, has|have|did|does
        anyone|anybody|others else? said|had|has|have|get|got|mention, how much is|are|would|for|it|do, tell me
        how|what|which|if|when|whether|is, why|how is|are|do|does|did|has|have|come
        there|my|the|it|this|they|i|one|both|everything, is feeling|having|seeing|getting ..
        normal|usual|ok|okay|common, is there someone|somebody|anyone|a|any|anything|something|some, do you|ye|u
        do|offer|sell|take|come|have|stock|use|accept|work|open, would you come|do|take|recommend|charge, is
        your|ur|the parking|studio|shop|salon|place still|open|free, was it|that|i stupid|wrong|ok|okay|bad|silly, a
        me thing or a glue thing, me thing or, lashes or|is flu|hayfever|hay|cold|allergies|dust,
        calamine|ice|drops|water|antihistamine|cream|ointment|bandage|pharmacy|hospital|doctor or what, from the
        fumes|glue|lashes|adhesive or, lmk, where do i, which .. better, how many weeks|days, will ye|you need, do
        ya need, is it catching|contagious|ok|okay|normal|safe|bad, am i being dramatic|silly|daft|paranoid, or am i
        being|just, can hayfever|hay|pollen|sweat|sun|chlorine, hypothetically ..
        have|can|will|would|do|does|should, have i ruined|killed|broken|wrecked|damaged, what means, kindly
        advise|advice|guide, what do you|ye reckon, what to do about|with|abt, tell me what|wot, is it correct,
        correct like this, go swim or not, or not ah, can or not, can or cannot, wondering is|are|if|about|whether,
        just wondering, allergy or, normal or, allergic or, is your glue|adhesive|remover, is the
        glue|adhesive|remover, what counts as, what counts, is that of interest, should my, is that usual, is this
        usual, is it usual, would it be safe, ought i, owt to worry about, anything to worry about, nothing to worry
        about?, what cream, which cleanser, how to take it out, how to, from the glue|lashes|fumes|remover, is that
        from, is this from, can you fix, could you fix, help??, are .. ok|okay|alright|good|bad with|for|on
        these|them|lashes, is .. bad|ok|okay|good for them|lashes|these, is it ok or, ok or nah, or nah, ok or, what
        i do, what do, is it bad if, is losing, can i still, still get lashes, should i be worried, be worried,
        should i worry, does that mean, makes sense call, call me when, call me, ring me, can you call, let me know,
        any ideas, do i exfoliate, is that a thing, a thing, or am i, can i
        pull|take|put|use|wear|wash|swim|go|still|get|have|wait|come, must i, do i just, would that be from, how do
        you, is there a, is there any, is there anything, are there any, what if, how bad, who do i call, do i come,
        do i go, is he tripping, whats this, what is this, what are these, know if, or should i, ok to start, should
        we, im asking, just asking, wondering when, just wanted to ask, wanted to ask, wanted to know, want to know,
        curious about, puzzled by, confused about, send|resend|forward|email .. receipt|invoice|bill
        to|again|please|over, whats|what the|is? diff|difference|diffs between, diff between,
        will|would|does|do|can|could the|my|your|hot|this glue|bond|adhesive|lashes|bonds|yoga|sauna
        go|get|turn|melt|come|hold|survive|cope|loosen|last, what|which oil|cleanser|remover|mascara|cream
        can|cant|should|do i, does it shut|close|open at|on|early|before, does the|my voucher|card|gift,
        can|could|may my|a|the mate|friend|mum|sister|pal|partner|hubby watch|wait|sit|stay|come|join, are
        you|ye|yous|u shut|closed|open|off|in on|over|at|for|this|during, am i allowed, are we allowed,
        does|do|will|would|can|could sunscreen|spf|oil|chlorine|steam|sweat|makeup|moisturiser|vaseline|sunblock
        muck|mess|ruin|affect|loosen|damage|melt|break|hurt, whats the latest|earliest|soonest|longest, how
        long|much do|does|would|will they|it|these, is it catchin|catching|contagious|bad|ok|okay|alright|allowed
        2|to|for|if|that, yes or no, yay or no, yes or nah, bad idea or, allowed or, ok or no, did|have|had i|we
        leave|left|forget|forgotten|drop|dropped|lose a|my|the, wheres|where is|are|was it|that|they|this from,
        whats the
        drill|procedure|protocol|process|deal|story|difference|craic|wifi|code|password|catch|plan|policy|score|verdict|damage|limit|maximum|minimum,
        whats your
        drill|procedure|protocol|process|policy|cancellation|fee|wifi|address|number|hours|insta|instagram, any
        trick|knack|secret to, or no cold|ice|hot?, is anything|something in, what
        colour|color|shade|brand|make|model|glue|curl are|is|was|were|did|do, what gives, whats going on, whats up
        with, is there parking|wifi|a, are you doing|offering|still|running, you still do|doing|offer|got, is
        it|that|this a worry|problem|concern|issue, cancellation fee, whats happening with, is
        swimming|sauna|makeup|mascara|yoga|swimming|steam|crying ok|okay|allowed|fine|safe|bad|yet, is
        5|6|7|8|9|10|4|3|2|five|six|seven|eight|nine|four|three|two weeks too, are they|these|lashes
        meant|supposed|allowed|ok|normal, do you do the|a|any|those|that, student discount|price|rate|rates, have a
        look|check|gander, can you check|look|see if, whens|when is my? next?
        infill|fill|next|appointment|appt|refill due|needed|again, what times my, whens my, when is my, what time is
        my, have a spare, whats safe|best|good|ok to|for|with, you open|closed|shut|working
        bank|good|easter|christmas|boxing|new|sunday|monday|holiday, how
        big|small|far|strong|thick|late|early|old|bad|tight is|are|do|does|can|would, who
        is|does|makes|made|did|sells|supplies the|your|those, are these|they|the|those lashes?
        waterproof|vegan|silk|mink|reusable|synthetic|permanent|removable|cruelty, is a|an .. a
        problem|issue|risk|nono|no, which .. best|better|safest, which|what one|ones|kind, would you|ye
        have|mind|keep|say|know, have you a|any|got, what were you|we saying|on|telling|talking, can you have|take a
        look|gander, left my .. can|could|did|have, explain, name of the glue, whats in, ingredients, what do i do,
        what should i do, what do i do now, wat do i do, wat do, what to do, what can i do|use|put|take, what should
        i use|put|take, should i, shld i, shud i, do i need, do i have, do i
        go|come|take|wash|remove|see|call|leave|wait, can i, am i allowed|able|supposed|ok|okay, may i, could i, is
        it ok|okay|safe|normal|fine|bad|alright|possible|supposed|too|allowed|all right|worth|necessary|meant, is
        this ok|okay|normal|fine|bad|supposed|an|a|serious|meant|allergic, is that ok|okay|normal|fine|bad|supposed,
        are they|these supposed|meant|normal, is it normal, that normal, this normal, it normal, is .. normal, is ..
        safe, is .. ok to, how do i, how can i, how long, how often, how much, how soon, how many, how would i, how
        should i, how come, when can i, when should i, when do i, when will it|they|the|this, when is it|ok, which,
        what
        kind|type|brand|size|curl|length|style|glue|cleanser|shampoo|product|mascara|is|are|was|were|did|does|happens|if|about|s|about|would,
        whats the best|best|that|the, why is|are|do|does|did|my|they|would|am, does it|this|that|the, do they|you
        sell|recommend|know|think|have a, do u sell|recommend|know|think, are you able to tell, did you use, did u
        use, will it|they|this|my|i, would it|they|a|you recommend, any
        advice|tips|suggestions|recommendations|idea|ideas|thoughts|recs, advice, thoughts, please advise, advise,
        what do you think|recommend|suggest, what do u think|recommend|suggest, do you think, u think, reckon, let
        me know what|if|how, tell me what|how|if, wondering if|what|how|whether, wonder if, ok to, okay to, safe to,
        allowed to, can they|you tell|send|recommend|check|remind|look|take|call|ring|explain, could you
        tell|send|recommend|check|remind|look|call|ring|explain|please, can u
        tell|send|recommend|check|remind|look|call, help me, pls help, please help, need help, help pls|please,
        normal, is it bad, is that bad, is this bad, where can i|do, who do, whats, question, quick question,
        curious, mind if, do you ship, do u ship, do you do, do you offer, do you take, do you accept, do you have
        the, your address, whats your, what is your, can someone, could someone, cld u, can we, do i, do you, do we,
        does it, does this, is it, are they, is there, can you tell, how do, when do, where do, whom do, why do, is
        that an issue, is this an issue, is that a problem, an issue, what dissolves, what gets, all right to,
        alright to, cool if, any chance you, which curl, in purple|brown|colour|color|blue, come in
        purple|brown|colour|color|blue|different, where are you, located, hold up in, would it be, might i, could i
        ask, how much is|for|are|does|do|would|will|to|it, wetin|wey be .. price|cost, how much una|you|u dey?
        charge
    """,
    "smalltalk": """
        hows your|the|yer|ur little|wee|new|poor|big?
        baby|babies|mum|mom|mam|dad|nan|gran|kitten|puppy|dog|cat|pup|exam|exams|holiday|holidays|trip|wedding|move|leg|knee|kids|boys|girls|son|daughter|sister|brother|husband|fella|hubby|house|garden,
        how is|was|are|were|did|has|hows|s your|the|yer|ur little|wee|new|poor|big?
        baby|babies|mum|mom|mam|dad|nan|gran|kitten|puppy|dog|cat|pup|exam|exams|test|holiday|holidays|holliers|trip|wedding|move|gig|party|leg|knee|back|foot|hand|weekend|christmas|birthday|honeymoon|kids|boys|girls|son|daughter|sister|brother|husband|fella|hubby|interview|marathon|race|course|driving|house|garden|show|concert|match|date|surgery|op,
        did|has|have|is your|the|yer|ur little|wee|new|poor?
        baby|babies|mum|mom|mam|dad|nan|gran|kitten|puppy|dog|cat|pup|kids|boys|girls|son|daughter|sister|brother|husband|fella|hubby|man|partner|boyfriend
        get|got|have|has|had|pass|passed|settle|start|started|find|found|like|enjoy|arrive|come|born|sleeping|walking|better|still|ok|okay|doing|keeping|going,
        did you|ye|u ever? finish|watch|see|catch|survive|enjoy|win|pass|get the|that|your|to|away|through|any?
        box|match|game|film|show|series|race|exam|test|holiday|sun|episode|final|concert, got a name yet, had a name
        yet, how are you keeping|doing|getting, hows|how life|tricks|things|business treating|with|your?, how was
        vegas|spain|paris|ibiza|tenerife|greece|crete|dubai|mexico|your|bali|portugal
    """,
    "complaint": """
        gave|got|did|done|put|given me|them? a|the? .. when i|id said|asked|wanted|ordered|requested|showed, i|id
        said|asked|wanted|ordered|requested for? a|the?
        doll|natural|wispy|cat|light|soft|fluffy|volume|classic|hybrid|brown .. got|gave|but,
        better|nicer|straighter symmetry|lashes|work|sets|jobs|curls .. on|from a|an|my
        potato|doll|donkey|camel|muppet|scarecrow|cow|horse|kid|toddler, ive|i|i've seen|had|got|bought better|nicer
        .. on|from|at|in a|an|the|my, what my niece|kid|toddler|nan|daughter|cat|dog|sister|cousin
        does|could|can|would|do in|with|blindfolded|for|at, aint|isnt|not|arent
        wispy|natural|wispies|volume|classic|subtle|what|cat .. broom|brush|spider|caterpillar|this|these|its|i, is
        a|are|look|looks|like? a? broom|brooms|toothbrush|scrubbing|caterpillars, bedside manner|manners of
        a|an|like, manner of a|an|like, smelled|smelt|smells|stank|stinks|reeked|reeks of|like
        cigs|smoke|ciggies|cigarettes|fags|garlic|onion|onions|sweat|booze|bo|ashtray|weed|coffee|fish, at
        that|this|these price|prices|money|cost, im|i am
        cross|livid|fuming|furious|raging|gutted|seething|unimpressed, spoke|talked|treated|speaking|talking to|at
        me like|as i|im|id, like i was|were 5|five|6|six|a|an child|kid|toddler|naughty|idiot?, sit still like,
        better lashes on a, never again, want them|it|these? changed|redone|off again?, rush|rushed job, expected
        more, dont look nothing like, nothing like the pic|picture|photo|pics, i said no
        glitter|colour|color|drama|volume|spikes, one side is|are longer|shorter|thicker|fuller|lower|higher, paid
        to not|look, seen quicker, felt|feel
        small|stupid|silly|ignored|judged|rushed|dismissed|awkward|unwelcome|uncomfortable
        after|about|when|in|while|tbh, listened to at all, didnt|dont feel listened|heard|welcome, bit|felt|very|so
        rushed, conveyor|conveyer belt, factory line, pound shop, dollar store|tree|shop, pantomime dame, drag queen
        .. not, dont|doesnt|didnt match each|the other, not matching, bit miffed, was|am
        miffed|peeved|gutted|fuming|livid|raging, had a go at me, told me off, bit much tbh|honestly|really, not in
        the|a good way, said no to .. twice, asked for .. got|gave, wanted .. left as|with, more broom than, week of
        groceries, sick about it|the, cat has more, more going on, laughed .. not, lopsided, lop sided,
        expected|expecting better|more, underwhelmed, underwhelming, can|could barely|hardly tell ive|i,
        cant|couldnt tell ive|i, doesnt|dont|didnt look any different, no different from|than|to before|when|normal,
        too full on, look|looks permanently|constantly|perpetually shocked|surprised|startled|scared, conveyor belt,
        production line, cattle market, done without the|that|being|listening|hearing, expensive mistake, well spent
        .. not, price hike, put your prices up, prices have gone up, not worth the|it|a, waste of money|time, not at
        all|very|one bit|bit|really|exactly? satisfied|happy|pleased|impressed|amused with|by|about, not satisfied,
        get|got|has|have|had|gave|with attitude|an? attitude, mins|minutes|min|hour|hours late
        starting|taking|calling|seeing, started .. late, not so much as a|an, without so much as, what i object to,
        i object to, object to being, spoke|spoken|talked|talking to|down my|me|to, didnt|dont|not appreciate,
        startled|surprised|shocked|constipated owl|possum|meerkat|rabbit|doll, brought tears .. price|bill|cost, min
        wait, minutes? wait|waiting to, kept me waiting, daft price, rip off, ripoff, overcharged, charged me|for ..
        never|neither|didnt, not cute for|at, owe|owes me an?|my refund|apology|money|explanation|sorry,
        want|need|demand|deserve|expect an|a|my? refund|apology|money back?, she|he|they|you|u|girl never
        rinsed|washed|apologised|apologized|checked|asked|warned|told|showed, told me to
        blink|just|suck|stop|get|ignore|wait|calm|relax|sleep, paid|paying|pay .. to be
        in|left|get|have|lose|pain|worst, one|1|zero|0|two|2 star|stars, shame about, nobody|noone|no one
        told|warned|said|mentioned me|us|about|that|it|you, should|shouldve say|said|be|have
        so|been|warned|told|written? on the|us|me, heavy handed, a bit sharp with|to, was|were|is|are
        sharp|rude|off|short|snappy|cold|curt with me|us, not paying for that|this|it|them, i told
        her|him|that|them|the girl|lady|tech|one? twice|i|about|before|three, hearing from me,
        charged|charging|charge me|us for|extra|twice|double the|bottom|a|something, never had|got|asked|ordered
        bottom|the|any? lashes|extras, stood|waited|waiting|sat outside|in|there|for .. minutes|hours|hour ..
        and|then|like, for the same price, shorter set, new girl|tech|lady was|is|did, supposed to be
        black|brown|natural|wispy|short|long|even|c|d|hybrid, not your best, is steep, not even a
        sorry|apology|hello|thank, hour|minutes|mins late and|with|not|no, going that thick|long|heavy|dark, until
        your glue, what am i paying|spending, i said so at the time, n|and i? look half asleep, look like ..
        panto|pantomime|hooker|barbie|bratz|goth|muppet, come out like, panto, never asked for, charged extra, asked
        for natural .. not|and|came|come|got, wasnt cheap, paid all that, hurts my soul how|that, not the
        style|shape|length|curl i, isnt the style|shape|look, not even the style|shape|length|curl, she was
        rude|short|late|cold|distracted|rough, was on her|his phone, chewed gum, chewing gum, was rough, rough with,
        business model, amazing business model, love how u|you charged|kept|rushed, loved paying, love paying, cost
        .. fortune, for what i got, for what they are, for what it is, price is eye watering, is eye watering, eye
        watering for, half asleep, burnt a hole in .. not, best pleased, not best pleased, less than impressed, less
        than thrilled, wouldnt recommend, would not recommend, wont be recommending, what a let down, robbed,
        daylight robbery, shape is wrong|awful|off, dont like the shape, not a patch, paid full price, left|right is
        .. longer|shorter, way longer, quit texting me, for free, not cute, fix it for free, do not suit me, dont
        suit me, doesnt suit me, not shown a mirror, bad taste in my mouth, was promised, i was promised, promised
        .. got, not what was promised, i paid, paid .. for this|that|these, for that price, for this price, for the
        price, it took .. hours, took three|four|3|4|5|five hours, was freezing|cold|dirty|loud|filthy|smelly|late,
        music .. loud, so loud, waited forty|thirty|20|30|40|45|50|60|an|over|half|twenty|ages, made to wait,
        pantomime, look like a, looking like a clown|spider|muppet|cow|panda|doll|drag|raccoon|muppet|tart, come out
        looking, not being funny but, dealing with your, booking site, ignored me, didnt listen, didnt even, was on
        the phone, talked over, chatting the whole, hurried, my money, a joke, joke, false advertising, not like the
        photo|picture|pic, nothing like the photo|picture|pic, nothing like i asked, not what we agreed|discussed,
        wonky, wonk, wispies not, hacked, hack job, patchy job, one eye .. bigger|longer|fuller|different, one side
        .. shorter|longer, so heavy, heavy lashes, feel heavy, too heavy, droopy eyes, sparse set, thought id get,
        supposed to be, bare minimum, no apology, never apologi{zed/sed}, kept waiting, ages waiting, wasted,
        charged, cost me, costs too, so expensive, went up again, cheeky, cheek of, disappointed, disappointing,
        disappointment, unhappy, not happy, tip|tipping screen|machine|prompt|options|reader, starting|starts at
        20|25|30 percent|%, sick in the head, sick to death of, sick of being|paying|waiting|your, sick and tired
        of, rung|ringing|called|calling|phoned at|in|during work, curl|colour|color|length|shape|style is|was|are
        wrong|off|loose|brown|different, daylight robbery my|that|this|honestly|so|for|mate|guy|pal|hun|love, online
        .. till|desk|counter|door|salon, for the card, card fee|charge|surcharge|payments,
        pure|dead|proper|all|well|so|really|totally|bit|completely|gone|sitting|looking
        wonky|squint|squinty|skewwhiff|lopsided|uneven|crooked hen|hun|babe|pal|mate|love|and|one|the|like|on, extra
        for what|the|a|that, wasnt|isnt|not what i showed|sent|picked|pointed, barely|hardly|never looked|glanced
        up, collapsed|fainted|died at the bill|price|cost|total, brought a|tears? tear|tears to, like an?
        icebox|fridge|freezer|oven|sauna in|and|so, blaring|blasting|deafening, quid|pounds|dollars|bucks|euro|euros
        i? expected|expect|thought|wouldve|want, one side|eye|set is noticeably|much|way|clearly|visibly|loads
        bigger|longer|fuller|shorter|thicker|different|heavier, bed|chair|table gave|gives|given me a|my|bad,
        told|said you|u|ye|her no|not|nothing glitter|drama|dramatic|spikes|colour|long|thick|heavy,
        chatting|gossiping|gabbing|yapping|talking to|with her|your|the .. whole|entire|time, skewwhiff, skew whiff,
        side|sides|one|lash|lashes|wans up|sits|sitting to|tae|at|near my|ma|me|the eyebrow|brow|eyebrows|forehead,
        not what we|i|you had|have? agreed|discussed|talked|booked|arranged|decided|spoken,
        photo|pic|picture|reference shows|showed|has something|much|far|more|different, picked|chose .. eyesore,
        asked for cat|fox|doll|natural .. got|and, printed|print so|too small|tiny, nobody|no one|noone
        told|mentioned|warned me|us about|of|that, not as|so dark|black|long|full|thick|curly|natural as|like
        i|we|you|the, sour|bad|bitter|nasty|funny taste, rub|rubs|rubbed|rubbing me|us up? the wrong, thats not
        right, for that money, might as well not|have, neednt have bothered, not have bothered, wish i hadnt
        bothered, far|way|much too|to chunky|bulky|full|big|bold|clumpy|wispy|bushy|spiky|long|short|thick|heavy,
        like im|i wearing a|two|fake|false|doormats|curtains|a fringe, fell|fall|falling asleep halfway|doing|on,
        did you fall asleep, halfway through and|then, doll and the others|other|ones, fed up with|of
        paying|being|waiting|getting|your, was|were|been
        snappy|snippy|sharp|abrupt|dismissive|curt|stroppy|moody|offhand|frosty|short|snotty with|to|towards,
        nobody|no one|noone|never|not once offered|asked|checked|listened|apologised|apologized|greeted, what i had
        in mind, not what i had|pictured|imagined|hoped|discussed, completely|totally|entirely|wildly different
        length|lengths|size|sizes|shape|curl|style, ive|have|had had? better from|off|in|elsewhere, kit off
        amazon|ebay|shein|temu, better from a|the? kit|chemist|boots|amazon, longer|slower than you|u
        said|promised|quoted, cheek|nerve|gall|audacity|brass neck to|of, gone up again, put up again|your,
        bit|very|rather|so|too steep|dear|stiff, look|looks like ..
        broom|brush|mop|rake|bristles|hedge|hedgehog|scarecrow|doormat|spider|tarantula, lost a bet, mortified,
        mortifying, humiliated, humiliating, ashamed of|to|sending|yourself|yourselves, should be ashamed, disgrace,
        disgraceful, appalling, appalled, was|is criminal, piss take, taking the piss|mick|michael|p, cant even|ever
        reply|answer|return|ring|pick|be, wont even reply|answer, loyal client|customer|clients,
        0|1|2|3|4|zero|one|two|three|four out of 10|ten|five|5, money returned|refunded|back, want|like my money,
        displeased, still cross|annoyed|fuming|angry|livid|raging, nice|lovely|charming|great manners, paid extra,
        got half, getting half, charging|charge for the late|fee, late fee, should like an explanation|apology,
        demand an|a, an eyesore, bit of an eyesore, hands like sandpaper|ice,
        breathes|breathed|coughs|coughed|sneezed|burped on|all me|over, has cold|rough|freezing hands, trainee
        has|was|is|did, isnt happy, upset, annoyed, annoying, angry at, furious, livid, pissed, ticked off, not
        impressed, unimpressed, not pleased, dissatisfied, unsatisfied, not what i
        asked|wanted|ordered|expected|paid, isnt what i asked|wanted, wasnt what i asked|wanted|expected, not the
        look|style|length|curl, asked for .. got, i asked for, i wanted natural|wispy|short|long|light|something,
        hate, hated, hate them, hate it, hate how, dont like, dont love, do not like, didnt like, not loving, not
        feeling, not a fan, not keen, ugly, awful, terrible, horrible, horrid, dreadful, worst, rubbish, crap,
        crappy, trash, garbage, shit, shite, shitty, sloppy, messy, uneven, wonky set, botched, butchered, ruined,
        spider legs, spidery, spiders, spider, caterpillar{s/}, broom, brooms, clown, drag queen, cheap looking,
        look cheap, looks cheap, fake looking, look fake, looks fake, so fake, too long, too short, too thick, too
        thin, too dark, too much, too dramatic, too curly, too sparse, too natural, too expensive, too pricey,
        overpriced, over priced, ripped off, scam, robbery, wasted my money, not worth, isnt worth, wasnt worth,
        refund, refunded, money back, want my money, charged me|too|extra|twice|double|for, charge for, price went
        up, price .. up, expensive, pricey, steep, rude, unprofessional, rushed, rushed through, rushing, careless,
        made me wait, waited .. minutes|hour|hours|mins, waited an hour, on your phone, on her phone the|whole,
        dirty, filthy, never coming back, wont be back, wont be coming back, not coming back, not going back, wont
        return, going elsewhere, find someone else, find another, somewhere else next time, complain, complaint, bad
        review, leave a review, leaving a review, one star, 1 star, shame on, not good enough, not okay with, not
        acceptable, unacceptable, ridiculous, joke of a, poor, poorly done, poor job, bad job, lousy, shoddy,
        letdown, let down, unfair, not fair, regretting, regret
        it|this|these|them|coming|getting|booking|paying|going|that i came, embarrassing, embarrassed, half assed,
        half arsed, mediocre, meh, not great, could be better, expected better, thought they would be, thought theyd
        be, lacking, not symmetrical, one side .. longer|thicker|fuller|different|shorter, dont match, doesnt match,
        not even on, arent even, look stupid|silly|ridiculous|weird, look like a clown|spider|doll|drag|cartoon,
        wrong curl|length|style|set|color|colour, not as full, not full, thanks for nothing, wow thanks, wow thx,
        stubby, clumpy, stiff, fix them, fix this, fix it, redo, re do, what did i pay for, for that money|price,
        expected them to be, state of me, state of them, heavier than, longer than id|i, thicker than id|i, touch
        heavy, bit heavy, touch long, bit long, bed .. ache|hurt, bed .. uncomfortable, was sharp with, was short
        with, was rude, snapped at me, gave me a headache, receptionist, feel|feels|look|looks like ..
        curtain|rods|brooms|brush|spider|spiders|twigs|wires|plastic|doll|clown|cheap|bats|caterpillars, look
        dumb|stupid|silly|ridiculous|awful|bad|weird|fake|cheap|rubbish|daft, mid, kinda mid, so mid, not what i|we
        showed|asked|ordered|wanted|paid|agreed|booked, nothing like what, slapdash, eye watering
        price|bill|cost|amount, charging me, i wanted .. not, wanted .. curl, look surprised, look permanently
        surprised
    """,
    "left": """
        outer|inner|top|bottom|upper|lower|centre|center|middle|far left, left
        eye|lid|eyelid|side|one|upper|lower|inner|outer|corner|lash|lashes|lashline|eyelash|eyebrow|eyes|only|pupil|cornea|brow|cheek|top|bottom,
        my left, the left, on left, on my left, eye left, lid left, side left, l eye, l lid, l side, eye l, lefty,
        left is|was|has|hurts|itches|burns|looks|feels|stings|started|still|got, left's, lefts, os, left hand side,
        left ones, just left, just the left, in left, only left, left red|swollen|puffy|itchy|sore, both left, hers
        left, his left, left upper, left .. is|was fine|ok, left lids|uns
    """,
    "right": """
        outer|inner|top|bottom|upper|lower|centre|center|middle|far right, are eye|lid|eyelid|upper|lower, right
        eye|lid|eyelid|side|one|upper|lower|inner|outer|corner|lash|lashes|lashline|eyelash|eyebrow|eyes|only|pupil|cornea|brow|cheek|top|bottom,
        my right, the right, on right, on my right, eye right, lid right, side right, r eye, r lid, r side, eye r,
        righty, right is|was|has|hurts|itches|burns|looks|feels|stings|started|got, right's, rights, od, right hand
        side, right ones, just the right, in right, only right, right red|swollen|puffy|itchy|sore, right upper,
        right lids|uns
    """,
    "both": """
        in|on|with|for|wrong either|neither of them|em, both, both eyes|lids|eyelids|sides|of, either
        <eye>|side|one, each <eye>|side, neither eye|lid|side, two eyes, 2 eyes, l and r, left and right, right and
        left, l & r, ou, bilateral, bilaterally, left or right, two|2 of my eyes|lids, two|2
        red|itchy|sore|puffy|swollen|pink|watery|streaming|burning and? red|itchy|sore|puffy|swollen|pink|watery?
        eyes|lids, right or left, 2 lids, two lids, each of
    """,
    "notside": """
        book|fit|do|see|take|squeeze|have|get us|them|you both, right now, right away, right back, right after,
        right before, right as, right here, right there, right on, right
        time|place|person|way|choice|length|curl|amount|thing|number|size|ones
        for|look|shape|style|up|then|by|round|down|out|off|through|across|into, all right, thats right, just right,
        not right, is right, are right, was right, be right, feel right, feels right, look right, looks right, isnt
        right, doesnt look right, right as rain, alright, mr right, the right
        way|time|place|choice|length|curl|amount|thing|number|size|look|shape|style|person|set|answer|direction|day|one
        for me|to, left me, left the|my
        salon|house|place|work|studio|bag|jacket|purse|phone|scarf|keys|charger|glasses|umbrella|coat|card, i left,
        both my|her|his? thighs|arms|legs|hands|knees|wrists|ankles|shoulders|feet, eye|eyes|lid|lids|its|theyre
        right sore|red|itchy|swollen|puffy|bad|painful|state|mess|by|at|next|along|where, the right
        number|person|place|time|day|way|direction|thing|size|shade|length, right way|direction|number, left a
        review|tip|message|voicemail, left you, left u, left over, left off, whats left, none left, any left, few
        left, have left, got left, trace .. left, lashes left, days left, spots left, bit left, little left, redness
        left, swelling left, just left, left on, left after, left on both, left in, left them, left it, left at,
        when i left, we left, since i left, left there, left home, right on time, human rights, left behind, slots
        left, what is left, half left, lefton, 10 left, 5 left
    """,
}
