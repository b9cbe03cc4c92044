"""English praise, thanks, and that all is well.

"thanks" is too weak to count beside another topic; "plain" always counts.
How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

PRAISE = {
    "vocative": """
        still on|in|good for|with|at, all? good|grand|set|fine|perfect|sound|happy|great for|with|at|on the?
        <day>|<nth>|<clock>|then|half|noon|two|three|four|five, <day>|<clock>|<nth>|oclock|noon
        is|works|suits|so|would|s be? perfect|grand|great|fine|good|lovely|ideal|perfectly|sound|brilliant|fab,
        after|before|week|time|then|day|evening|morning|afternoon is
        grand|perfect|fine|good|great|lovely|ideal|sound|works, bang on time, staying put, fine for|with
        <day>|<clock>, sorry about, catch you, sick as|like, moving house, all fine but, so grateful if,
        said|asked|wanted|ordered|requested|booked for? doll|natural|wispy|cat|light|soft|fluffy|volume|classic,
        drama queen|queens, at|the|a|our goat he|she|had|has|at|is|and|was, love|lovely
        notes|letters|letter|note|bites|island|actually, lovely hands .. and|but, real|dead|proper|very|how cute
        not|combo?, everything looks like|wavy|blurry|weird|hazy|foggy|double|funhouse, good luck,
        speeding|parking|library|a|huge|small fine, fire drill|alarm|engine|door|extinguisher|brigade|station|exit,
        please love|hun|babe|darling|lovely|gorgeous, my|his|her|their|our|a bestie|besties,
        appointment|surgery|op|operation|scan|interview|driving|test|exam went fine|ok|okay|well|great|good, nice
        lashes|job|work|words dont|doesnt|wont|isnt|but, would|could|should star in, thanks to a|the|my, im fine
        with|about, grand old, all good things, lovely job for, fine line, hes|shes|he's|she's|theyre|dogs|cats?
        grand|fine|ok|okay|better now, not bad for a, feel fine about, for the love of,
        hi|hey|hello|hiya|thanks|thank|ta|cheers|sorry|morning|evening|afternoon|ok|okay|right|no|yes|ah
        love|lovely|gorgeous|beautiful|queen|doll|star|angel|darling, love
        so|can|could|just|im|ive|is|are|do|will|whats|when no|not?, loved|love paying|waiting|being|getting
        charged|ripped|rushed?, love how you|u|ye|yous|they charged|charge|took|rushed|ignored|forgot, cute how,
        great how, nice how, lovely how, ate the|my|our|his|her|it|something breakfast|lunch|dinner|leaflet?, top
        lid|lids|corner|lip, going down lovely|nicely|well|grand, goin down lovely|nicely|well|grand, so? happy to
        go|come|wait|pay|move|do|take|book|try, as? good as gone, happy|merry
        christmas|xmas|new|diwali|easter|birthday|eid|holidays|halloween|thanksgiving|friday|monday, say|said all
        fine|good|ok but, all the best, best of luck|wishes, he|she|hes|shes dead|gone love, now|please|off
        love|lovely|darling ta|thanks|x|cheers|please, no bother|trouble|problem|problems|hassle|issue|issues
        breathing|swallowing|seeing|opening, im good|fine|ok|okay|grand on|for|without|thanks no, no thanks|thank
        you? i|to|im, the class, good friday, yoga|aqua|spin|pilates|dance|gym|art|lash class, stop being lovely,
        would be lovely|nice|great|good|perfect|ideal|grand, very displeased, class at|on, wispy set, the wispy,
        this end, for the week, still on are, was|were lovely|fine|perfect|grand|good and|for|until|till, lovely and
        red|pink|swollen|sore|puffy
    """,
    "fine": """
        is|are|was|theyre|these|its|feel|feels|feeling|sheer|absolute|pure|total|utter
        a|an|like|absolute|pure|sheer?
        joy|dream|delight|treat|godsend|revelation|bliss|heaven|heavenly|perfection|miracle, just compliments,
        nothing but compliments, only compliments, you|u were|was|are|r so? gentle|lovely|careful|kind|amazing, like
        a million|billion|trillion dollars|dollar|bucks|quid|pounds|euros|rupees, million dollar|dollars|bucks, like
        royalty|a|an? celebrity|celeb|movie|princess|boss|diva, like ive|i|id won the? lottery|lotto, if looks could
        kill, asked|asks|asking|askin|ask|wondering|demanding who|where did|does|done|did
        my|em|them|these|your|ur|i|my, who did em|them|my|ur|your, hit|hitting|hittin on ..
        cuz|because|cos|bc|thanks, im|am so|really? into it|them|these|this|em, enough said, do|pay it|that all?
        again|twice|double|happily, bored the|my whole|entire|office|family|husband|group|friends .. with|about, cut
        off an|my arm|leg|finger before|rather, before id|i have|let|give|take|lose these|them|em off, ticket to
        heaven, my|his|her man|fella|boyfriend|bf|husband|hubby|wife|mum said|says|went|goes|was|just|like
        damn|wow|woof|oof|phwoar|phwoar|swooned|speechless|jesus, came out a|an|like|looking ..
        saturday|goddess|star|bombshell|weapon|siren|queen, put a price on this|that|these|it|them, worth every|the
        penny|cent|pence|money|hours, told|telling the|my? whole|entire group|chat|office|family|street|salon ..
        address|name|number|about, wifi|world|traffic|room gets|got|goes|stops|stopped
        faster|stops|quiet|silent|when, woke up like this, baby|babies laughed|clapped|patted|stroked|touched
        them|my?, vegas, film|movie star, passed me round|around like, bless ya|your cotton socks, goated, lost for
        words, no words just, keep winking at, resting glam, looked up from his|her phone, got carded, glue is
        witchcraft, expensive look, giving expensive, giving rich|luxury|money, all calm|quiet|good|well on the
        eye|lash|eyes front, nothing to report captain|boss|sir, much obliged, obliged to you, bless ya|ye|yous, so
        glad i|we came|come|go|went|chose|found|picked, glad i came|come|go|went to you, glad i found you, no
        dramas, no drama, take a bow, ruined mascara, ruined me for, spoiled me for, favourite|favorite set|lashes,
        mascara for me forever, pure magic, clean bill, lids|eyes|skin .. usual|normal
        color|colour|size|selves|self, usual colour|color|size|selves|self|shape, nothing to report, usual colour
        and size, 11|12|15|20|50|100|1000 out of 10|ten, eleven out of ten, ten outta ten, 10|11|100 outta 10|ten,
        seeing|breathing|winking|blinking perfectly|fine|normally, kind of you to check|ask|text|message|see, good
        of you to check|ask|text|message, nice|sweet|lovely of you to check|ask|text|message, ta
        duck|love|hen|pet|hun|chick|chuck|doll|babe|mate, cheers duck|love|hen|pet|hun|mate|pal|doll, thanks
        duck|hen|pet|chuck, pure class, class altogether, are|theyre class, lashes are
        mint|lush|fab|ace|unreal|banging|immaculate, lashes ate, they ate, absolutely ate, eating everyone up,
        chuffed to bits, chuffed with, tickled with, made up with, not half bad, holding up a treat, holding up
        lovely|great|well|beautifully, came|went to you a|an cynic|sceptic|skeptic, forgot they|i had|were
        them|there|on?, forgot i was wearing, witchcraft, sorcery, black magic, not a lash out of place, not one out
        of place, not a hair out of place, remain immaculate, are immaculate, still nearly|almost full, sab
        badhiya|theek|thik, bahut acha|sundar|accha, koi dikkat nahi, stopped me .. to? ask, stopped by strangers,
        asked who did, who gave you permission, adores them, is thrilled with, thrilled to bits, valio cada|la,
        photograph so? well|good|lovely|gorgeous, look|looks so? unreal|insane|mint|class|lush|peng|leng|fab, still
        look mint|class|perfect|fab|amazing, set is unreal|insane|mint|class|lush|fire, everyone|everybody ..
        admired|admiring|loves|loved|asking|asked|obsessed|jealous them|where|who|about|me?, gave you|u|ye five|5
        stars|star, five|5 stars, do look well|good|lovely|great, made|make the photos|pictures|pics, was all over
        me where|asking|about, wouldnt|would not swap|change them|it, work|job is so|very? neat|clean|sharp|crisp,
        best ive|set|i ever|have|ive, mornings are|take|twice|half|so .. long|easier|shorter|quicker, no more
        mascara|makeup, quit mascara, got asked|ided|id'd for id, train of thought, asked for your|ur
        card|number|details|name|insta, keep catching myself, catching myself in, not a single one has|have
        shifted|moved|budged|fallen|dropped, put when she saw, mascara for me ever, still all there|in|on,
        look|looking fresh as, fresh as a daisy, been a problem in, hasnt been a problem, never been a problem, have
        not been a problem, tens across, tens tens, shook, noticed straight away, spoiled me, spoilt me, cannot go
        back to mascara, cant go back to mascara, no going back, not bad at all, not too shabby, high praise, queens
        were gagging, were gagging, stopped traffic, stop traffic, bus stop is shook, blinking .. shook, stunned ..
        best, bride was raging|jealous, raging with jealousy, mistaken for, carded, ten years younger, years
        younger, years off me, asked who did|does, who did them, who does mine|them|your, who did my, who done,
        wheres she|ye been all my, where have you been all my, put that on your wall, came through it like, like
        soldiers, not one casualty, from start to finish, confidence through the roof, in bits .. laughing, cannot
        fault, cant fault, couldnt fault, faultless, no faults, unreal altogether, lovely job, whopper job, sweet
        as, good as gold, sick as, hits different, understood the assignment, ate and left no, left no crumbs,
        giving main character|princess|goddess|barbie|rich|expensive|doll|life|everything, main character energy,
        its giving, snatched my, wig snatched, rent free, clean girl, slay, whole slay, a slay, atee, atee down,
        devoured, no notes, chefs kiss, didnt even feel it|them|a, didnt feel a thing, not a thing wrong, nothing
        amiss, nothing is amiss, nothing to complain about, sight for sore eyes, gobsmacked, sore from laughing,
        glued to my front camera, itchin to show, itching to show, eating no crumbs, no crumbs, theyre eating,
        bussin, sick lashes, are sick, are so sick, asymptomatic, nicely done, held up, jaw hit the floor, jaw
        dropped, nothing so far, nothing yet, nothing going on, nothing like that, so far nothing, so far so, ten
        out of ten, 10 out of 10, 10 of 10, lie to say i dont love, pretty much perfect, no crumbs left, still going
        strong, staying on, stay on, going strong, best ive had, best ones, obsesseddd, in heaven, feel like ..
        celebrity|model|bride, dreams, goddess, baddie, bad bitch, slayyy, flawless, ten stars, beyond happy, so
        worth, chuffed, dead chuffed, buzzing, class act, ace job, sublime, magnificent, fab job, you rock, u rock,
        ur amazing, youre amazing|the best|a star|a gem|an angel|a genius, you are amazing|the best|a star|an
        angel|a genius, star, gem, angel, legend, proper lush, proper job, looking like a snack, main character,
        feeling myself, cant stop taking selfies, everyone is asking, everybody .. asking|asks|noticed|loves, got ..
        compliments, no itch no, no fuss, no bother at all, not a bother, no bother, right as rain, tickety boo,
        customer for life, client for life, no bad reaction, smooth sailing, happy days, good vibes, sits well,
        comfy as, super full, full and fluffy, full still, all there, all still there, all in place, every single
        one, not lost a|one|any, havent lost a|one|any|single, hasnt lost, none lost, not one fallen, not one has
        fallen, zero fallout, no fallout, no shedding, no gaps, love, loves, loved, loving, luv, luvv, lovin, lov,
        lovely, adore, adoring, obsessed, obsessing, gorgeous, gorg, gorgeousness, beautiful, beautifully, beaut,
        stunning, stunner, perfect, perfection, perfecto, perfectly, amazing, amaze, amazeballs, awesome, fabulous,
        fab, fantastic, brilliant, brill, wonderful, come|comes|came with a health|warning|government, should be
        illegal|banned|outlawed|criminal, burning|green|sick|dying|seething|ill|raging with? envy|jealousy|jealous,
        living for it|this|them|these|that, my ego, only|just|bar|except my? ego, none|not one|nothing have|has
        gone|fallen|dropped|budged|moved|shifted|come|left, survived
        hot|two|three|everything|it|yoga|gym|swimming|sauna|everest|the|a, nothing can|could|will
        stop|shift|touch|budge these|them|those|my, lashes slap, these|they|absolutely|proper slap
        but|so|hard|omg|honestly, lashes|they absolutely slap, shes apples, apples now, jaw|jaws
        hit|dropped|hitting|on, camera roll, supermodel, like a supermodel, eyes|lids|they behaving|behaved,
        behaving themselves|itself|nicely|beautifully, zero|no|nil drama|dramas|fuss|aggro|hassle|grief|faff, cool
        as a? cucumber, as white as milk|snow|pearls, feel|feels|feeling|felt like|as|though|if? i
        have|had|got|ive|im|am wearing? nothing on|there|at, feel|feels like nothing on|there, open|opened|opening
        like curtains|normal|clockwork|dream, open and shut like|fine|normally, the way i
        screamed|yelled|squealed|gasped|shrieked when, screamed|squealed|shrieked when i saw|looked, bit of
        alright|allright, dont you dare change|stop|touch|switch, only one|glue|brand|place|girl ive ever?
        got|gotten|had on|along|luck with, whatever that glue is dont, not one|ONE|a shifted|budged|moved|strayed,
        like|love them|these|it|em so much|that|very, such volume|length|curl|fullness, my? compliments to
        your|the|you, clear as day|crystal|anything|glass,
        stabbed|killed|slain|slayed|knocked|wiped|floored|decked|dropped|flattened|assassinated|murdered out?
        two|three|half|several|a|four|every|all|five .. blink|bar|men|lads|office|room|accountants|pub|vicar|queue,
        one|single blink|bat|flutter|wink, knocked out two|three|four|half|several|the, hands|fingers
        should|need|needs|must be? insured|insuring|insurance, insure those|your|her|them hands|fingers, lethal
        and|in|i|weapons|lashes|on|with, are lethal|deadly|dangerous|illegal|weapons and|in|lol|i|omg|babe|xx?, dont
        you? ever stop doing|making|being|what, killer lashes|set|fans|curl, literally|absolutely|pure deadly, jaw
        is|was|hit on? the? floor|deck|ground, wet|peed myself|meself|my when|at|laughing, heart
        stopped|skipped|melted|sang|exploded|burst when|at|over, lost my breath when|at|seeing, take my eyes off
        myself|them|these|me, theyre|they|these are? everything, eyes|eyeballs|peepers|lids are|is|look
        happy|delighted|thriving|chuffed, present and correct, not a|one lash
        lost|moved|gone|shed|down|dropped|missing, asked|carded for id|proof, couldnt|cant|wont stop staring|looking
        at?, not a peep|murmur|tingle|twinge, not so much as a tingle|twinge|itch|flicker, popped out of my head, by
        my own beauty, they are unreal, actual|audible gasp, dying over|here the? how|curl|length|them, everythings
        tickety|dandy|rosy, inflict|inflicting|doing|do|does|did damage|numbers, take|have an eye out, id thank
        them|you|her, id|i would|will perish|die|cry|riot if|without?, whistled|wolf at|whistled|whistles, been
        whistled, hold you|u|ye responsible|accountable, been|are a|no|any problem|trouble|bother in|with
        either|both|my, only thing|part|bit not suffering|hurting|aching|sore|broken|dying today|is|was|on|that,
        best nap|sleep|kip|snooze|rest ive|i|in|since|all, what is|kind this|of sorcery|witchcraft|magic|wizardry,
        catch|caught|catching myself stroking|touching|admiring|smiling|grinning|staring|fluttering|batting,
        they|these are? lekker, lekker hey|lashes|set|work|job|man|hoor, know|knows where to look,
        barista|bartender|waiter|driver|bouncer|postman|cashier gave|let|comped|upgraded|offered me|us, free|fre
        oat|coffee|drink|drinks|cake|upgrade|pint|latte, its the lashes|lashs|eyelashes|fans, cured me of, committed
        a murder|crime|felony, no panda eyes, fluffy as|and|like, still fluffy|full|perfect, hasnt|havent left the
        mirror|bathroom|selfie, one good feature, survived the|your remover|onions|kitchen|tent|festival, breathing
        normal|fine|ok|okay|grand|easy, no tightness, they look brand|like new, woke up looking like a|an, looking
        like a bond|cover|pin|weather|bollywood|hollywood girl|star|up, behaving
        impeccably|perfectly|beautifully|nicely|themselves|well, all is as it should, as it should be, as they
        should be, lashes sit|hold|stay and|so|well|nicely|perfectly|tight, didnt|didn't|dont|havent
        budge|budged|shift|shifted, havent|hasnt|didnt had|need|needed to? reach|use|touch for? the? drops, like
        a|an fairytale|fairy|disney|hollywood|absolute|proper|actual?
        princess|queen|goddess|bride|model|duchess|empress|starlet|celeb|celebrity|mermaid|siren,
        nicest|prettiest|best|loveliest|finest|comfiest lashes|set|pair|ones ive|i|id ever? owned|had|worn|seen|got,
        hand on heart the, look|looks|looked|looking|feel|feels like? a million|billion dollars|bucks|quid|pounds,
        dream to wear|look|have, an? absolute? dream to, keeping it|them forever, glam as ever|always|usual,
        holding|sitting|lasting lovely|beautifully|like|perfectly, set|curl|shape|length|lashes is|are|was
        so|very|bang? spot on, curl|shape|length|set .. spot on, i do love the, that pretty i, they|theyre that
        pretty|gorgeous|natural|good, well|too worth the|every money|penny|cent, theyre worth the money,
        sweet|lekker|cracking|belting|top|class|grand|lovely|smashing|mint set|job, set ate|slayed|slays, girl you
        ate, hundred|thousand|million out of ten|10, to die for, every time i pass|see|catch|walk, pass a mirror,
        past a mirror|shop|window, got supermodel|movie|model, nothing stops|fazes|moves these|them, took my breath,
        on cloud, happy as larry|a|clams|clam|pigs|pig, first class, everything is first, it was|its been bliss,
        been bliss, bliss from, butterfly eyes, light as air|a|feathers, nonstop compliments, blown away,
        wonderfully, great, excellent, superb, exquisite, marvelous, marvellous, terrific, divine, delighted,
        delightful, thrilled, over the moon, made up, very happy, so happy, super happy, really happy, happy with,
        happy as, im happy, pleased, well pleased, well happy, impressed, satisfied, content, ecstatic, fire,
        slay{s/ed/ing}, ate, u ate, you ate, serving, iconic, queen, goat, 10/10, 100/10, 11/10, 5 stars, five
        stars, 100%, a+, a plus, on point, on fleek, snatched, bomb, dope, lit, cute, cutest, pretty, wow, wowed,
        omg, killed it, killing it, nailed it, smashed it, crushed it, outdone yourself, work of art, artist,
        talented, talent, wizard, magic, magician, genius, miracle worker, lifesaver, life saver, best lashes, best
        set, best ever, the best, best decision, best money, game changer, life changing, compliment{s/ed},
        complements, everyone loves, everyone .. asking, so jealous, jealous, turning heads, head turner, cant stop
        staring|looking|smiling|admiring|taking|batting|blinking|touching, couldnt be happier, couldnt be better,
        cant complain, no complaints, no regrets, zero regrets, no issues, no issue, no problem{s/}, no problemo, no
        probs, no worries at all, no trouble, no reaction{s/}, no irritation, not any irritation, no side effects,
        no concerns, nothing wrong, nothing bad, nothing to complain, nothing weird, nothing out of, nothing
        unusual, nothing at all, nope nothing, all good, all gud, all is good, all is well, all well, all fine, all
        ok, all okay, all clear, all great, all perfect, its all good, everythings
        good|fine|great|ok|okay|perfect|lovely, everything is good|fine|great|ok|okay|perfect|lovely|well,
        everything good|fine|great|ok|okay|perfect, everything looks|feels, so far so good|gud, doing
        great|good|well|fine|ok|okay|amazing|fab|grand, going great|good|well|fine|strong, feel
        great|good|fine|amazing|fab|perfect|lovely|natural|comfortable|comfy|weightless|light|normal|ok|okay, feels
        great|good|fine|amazing|natural|comfortable|comfy|normal|ok|okay, feeling
        great|good|fine|amazing|fab|myself|normal|ok|okay, look
        great|good|fine|amazing|fab|natural|lush|full|fluffy|perfect|nice|fresh|lovely|normal|ok, looks
        great|good|fine|amazing|fab|natural|lush|full|perfect|nice|lovely|normal|ok, looking
        great|good|fine|amazing|fab|natural|lush|full|fresh|fluffy|nice, still
        full|perfect|intact|fluffy|flawless|good|great|going|fresh|on|in, still look|looks|looking
        good|great|full|perfect|fluffy|amazing|fresh|new|lovely|nice|cute|gorgeous|brand, holding
        up|strong|well|great|good, hold up, holding on, lasting, lasted well, staying put, stayed put, stayed on,
        good as new, brand new, like new, like the day, settled in, settled nicely, settled well, comfy,
        comfortable, weightless, forget im wearing|theyre|they, forgot i, cant feel them, cant even feel, dont feel
        them, barely feel them, hardly feel them, dont even feel, hardly know, lush, luscious, fluffy, wispy,
        dreamy, natural, grand, grand job, sound, lush job, class, spot on, fine ta, fine
        thanks|thank|thx|ty|here|cheers, im fine, am fine, im good, im grand, im well, doing fine, theyre fine,
        theyre good, theyre great, they are fine|good|great|lovely, its fine, its good, its great, eyes fine, eyes
        ok, eyes good, eyes are fine|good|great|ok|okay|normal|happy|perfect|clear, lids ..
        fine|normal|good|ok|grand, fine, good, great job, good job, nice job, nice work, great work, well done, good
        stuff, nice, very nice, really nice, so nice, thank you, thanks, thank u, thankyou, thanx, thx, ty, tysm,
        tyvm, tks, thnx, thnks, cheers, ta, much appreciated, appreciate it|you|u, appreciated, grateful, bless you,
        bless u, god bless, xoxo, good thanks, all good thanks, hooray, yay, yess, yesss, worth it, worth every
        penny, worth every, comfortable and, recommending, recommend you|u, recommended you, will recommend, telling
        everyone, sent you, tell all my friends, feel like a new woman|person, feel like a million, like a movie
        star, like a princess, like a queen, feel like a queen, felt like a queen, so confident, feel so
        pretty|beautiful, confidence, best present, dead gorgeous, knockout, bang on, mint, peng, leng, bangin,
        banging, boss, class job, unreal, insane, lashes lashing, lashing, bestie, vibes, mwah, in love, fluttery,
        flutter, dolly, doll, glam, classy, elegant, tasteful, subtle, just right, just what i wanted, exactly what
        i wanted, exactly what i asked, as expected, good to go, hunky dory, peachy, fine and dandy, tip top, a ok,
        aok, ace, smashing, smashed, cracking, belter, stoked, hyped, vibing, sleek, sensational, dazzling, glowing,
        fresh, good so far, fine so far, ok so far, okay so far, convert, hats off, tickled pink, right as, happy
        camper, thumbs up, hubby loves, no allergic reaction, cloud nine, cloud 9, top notch, first rate, sorted,
        clear as a bell, so glad i go to you, glad i go to you, glad i come to you, most becoming, becoming, like a
        film star|movie star|model|princess|queen, free drink, getting .. compliments, turned heads, not a one,
        flirting with myself, hot stuff, nothing out of the ordinary, nothing untoward, nothing abnormal, nothing
        different, nothing new to report, survived the, survived my, survived a, yas, yasss, yass, yessir, feel a
        thing, dont feel a thing, cant wait for my next, cannot wait for my next, cant wait to come back, wants your
        number, wants your details, asked where i got|get|had, asking where i got|get, where i got em|them|my|these,
        looking at myself, look at myself, in the mirror, in shop windows, nothing is there, nothings there, like
        nothing, like theyre not there, never felt prettier|better|so, prettier, feel pretty|beautiful|amazing,
        everyone|everybody|people|coworkers|friends noticed, rolling in, not lost one, holding strong, hands down,
        not even a tingle|twinge|tickle, nothing to see here, all white and, white and happy, not one budged, didnt
        budge
    """,
    "thanks": """
        thank you, thanks, thank u, thankyou, thanx, thx, ty, tysm, tyvm, tks, thnx, thnks, cheers, ta, much
        appreciated, appreciate it|you|u, appreciated, bless you, god bless, god bless you, thanks so much, thank
        you so much, thanks for asking|checking|the|your, thank you for asking|checking|the|your, please, fine,
        good, nice, sorted, sound, okay, hot, fire, pretty, great, boss, class, omg, wow, magic, fresh, artist,
        perfect, doll, ate, lasting, unreal, insane, natural, look good, mint, vibes, light, subtle, clear,
        grateful, no worries at all
    """,
    "plain": """
        lids|eyes|eyelids are|look|back? their|the|at normal|usual|same size|colour|color|selves|self|shape,
        eyes|lids|eyelids grand|mint|lush|sound|sweet|dandy|tip|tickety, eyes|lids look|are|feel|looking the same
        as|like ever|always|before|normal|usual, havent|hasnt|didnt|never need{ed/}|used|touched|had the|any|my|a?
        drops|antihistamine|antihistamines|ice|painkillers|paracetamol|piriton|cream, no need for|of the|any|my|a?
        drops|antihistamine|antihistamines|ice|painkillers|piriton|cream, nothing|nuttin|nutn|nuffin|nowt
        wrong|amiss with|wid|wi, they|it|lashes dont|doesnt|havent|hasnt|never|arent|isnt|didnt
        bother|bothered|bothering|trouble|troubled|troubling me|us|my, never better, never been better,
        nothing|zero|nowt|naught|little|nought to moan|whinge|complain|grumble|gripe|fuss about?, signed me off,
        clean bill of health, eye|eyes health|exam|test|check|checkup was|is|all? fine|good|clear|perfect|normal,
        lids|cornea|corneas|conjunctiva and? lids? healthy, eyes open|opened|opening clean|easy|fine|clear|normally,
        wake|woke|waking clear|clean eyed, cant complain, mine are|were having a|the? day|week|night off, sleep like
        a baby in, mine are? grand|perfect|immaculate|intact|flawless, built|made like a? tank|rock, as good as the
        day, best windscreen wipers, lashes|lash|set still?
        immaculate|intact|flawless|unbothered|unmoved|untouched|pristine, not one|a single lash?
        moved|budged|shifted|fell|dropped|lost, lashes? didnt|havent|never moved|budged|budge|move|flinch|shift,
        look|looks|looking mint|lush|class|unreal|peng|fab|fabulous|ace|mega|stunning|gorgeous|lovely|amazing,
        favourite|favorite set|lashes ever|yet|so?, lashes .. super|so pretty|cute|good|full|gorgeous, they are
        super|so pretty|cute|good, they ate, this set ate, obsessed, love .. lashes, love the lashes|look|set|them,
        love them, otherwise .. love|perfect|happy, lashes are so|really|super, totally fine now, all is well, all
        well, they look amazing|unreal|gorgeous|perfect|beautiful|lovely|fab, all good now, fine now, good now, ok
        now, okay now, normal now, all fine now, all well now, im good, im fine, now i am good|fine|ok|okay|well,
        now im good|fine|ok|okay|well, otherwise fine|good|great|perfect|happy|all, back to normal, right as rain,
        good as new, all clear now, perfect now, great now, everything else is|fine|great|good, apart from that ..
        good|great|fine|love, other than that .. good|great|fine|love|perfect, all better, been fine, been good,
        everything|all is? now? first class, everything is? now? rosy|dandy|golden|gravy|apples|hunky|tickety,
        everything is? now? tip top, shapes|shape is? stunning|gorgeous|lovely|perfect|unreal, stunning xx|x, adore
        them|these|it|em, lashes slap, theyre unreal|stunning|gorgeous, delighted with them|it|these, look|looks
        amazing|unreal|incredible but|and|though, fine since, good since, fine today, all good, everything is
        fine|good, everythings fine|good, feel{s/} fine now, lashes are great|good|fine|nice|pretty|perfect, lashes
        look great|good|nice|pretty|perfect|natural, they look great|good|nice|pretty|perfect|natural, look
        great|good|nice|so pretty, looks great|good|nice, theyre perfect|pretty|great, they are
        perfect|pretty|great|nice, happy now, pretty lashes, so pretty, the set is perfect|great|fire|pretty, great
        set, perfect set, nice set, great job, good job, nice job, nice work, great work, theyre fire, so cute,
        grand now, grand since, theyre|they are|its nice|pretty|lovely|cute|beautiful|gorgeous|good but, love em,
        love em but, lashes are great
    """,
}
