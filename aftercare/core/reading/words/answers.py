"""Short answers in English and Spanish: what stands for yes, no, a little, some part or time, better, worse, over."""

from __future__ import annotations

_EN_IT = "they|it|theyre|its"
_EN_NOT = "arent|isnt|dont|doesnt|havent|hasnt|wasnt|werent|didnt|aint"

ANSWERS = {
    "yes": f"""
        all three|two|four|3|2|4, not until|till|til today|now|yesterday|tonight|recently, not until|till|til this|last morning|night|evening|week, theyve|its|it|they? been like this|that|it, always been like this|that,
        course i am|do|have, yessir, yes maam|sir, algo si|sip, pues si|sip, tis, it is,
        yes, yep, yeah, ye, yh, yus, ja, yea, yeh, yup, ya, y, yess, yesss, yas, yass, aye, indeed, absolutely, correct,
        affirmative, mhm, uh huh, sure|course is|are|do|does|have, it sure is, definitely, certainly, of course, totally,
        {_EN_IT} do|does|are|is|did|have|has|was|were, theyre, there is|are|was|were, i do|am|have|did|was|think|guess|suppose,
        i think|guess|suppose|believe so, think|guess|suppose so, afraid so, im afraid so, unfortunately|sadly|regrettably,
        seems so, seems like it, looks like it, it|they seem|seems to, true, very much so, you bet, i would say so,
        all|both|each of it|them|those|these|three|2|3|4, all of the above, both|all yes, yes to both|everything|any, yes to all of?
        them|those|these|2|3|4|three?, all, both, everything, have i?, have done, have|ive had, i have had, i|ive got some|it|that|them|one, got some, i get it|that|some,
        i am|do have|get|feel it|that|some, the former, the latter, one of them|those|these, one or two of them|those, two of them|those,
        a couple of them|those, some of them|those|it|that, most of them|it, bits of it,
        sip, si, sii, simon, claro, obvio, aja, sipi, asi es, por supuesto, efectivamente, afirmativo, creo que si|sip, me temo que si|sip,
        me parece que si|sip, por desgracia, lamentablemente, desafortunadamente, desgraciadamente, si|sip tengo|tiene|hay|estan|esta|lo,
        si|sip lo estan|esta|tengo|he, tengo, todas las? anteriores?, todos los? anteriores?, todo eso, todo lo anterior?, ambas|ambos, las|los dos,
        una de ellas, uno de ellos, unas cuantas, si|sip a todo|todas|todos|ambas|ambos, he tenido, lo he notado, alguna|alguno, algunas|algunos, yo si|sip,
        en efecto, pues si|sip, la verdad que? si|sip, sip senora, que si|sip, eso si|sip, de hecho si|sip
    """,
    "no": f"""
        absolutely|definitely|certainly none|nothing|no|nope|zero, not one bit|thing|jot,
        ni tantito|tantita|poquito|pizca, cero, yeah nah, yeah no,
        no, nope, nah, nop, n, naw, na, none, negative, nothing, not really, not at all, not particularly|especially|remotely|in the slightest, neither, never, nada, zero, zilch, nil,
        noo, nooo, nuh uh, not a? one|thing|bit|sausage|jot, not a single one|thing, not in the least, none at all, none whatsoever, nothing whatsoever, nothing at all,
        none of it|them|those|these|that|the above|this, nothing of that|the kind|the sort, no such thing|luck, no sign|signs of? it|them|any|that|those?,
        not to my knowledge, not that i know|see|noticed of?, not that i can|could see|tell|feel, not that i have|ve noticed|seen|felt, not that im aware of?, not that im aware of?, not that ive noticed|seen|felt,
        not as far as i know|can tell|can see, not so far, not yet, not me, not today, not now, not i, not for me, not {_EN_IT}?, of course not, certainly|definitely|absolutely not,
        {_EN_IT}|i|ive|im|there|we? {_EN_NOT}, theyre|its|im|ive not, {_EN_IT}|i are|is|do|am|have|has|did|was not, there are|is none|nothing, i have|had|ve none, ive had none|nothing,
        i havent had|noticed|got|seen|felt|experienced|any? any|it|that|them|anything?, i have not had|noticed|got|seen|felt any|it|that|them?, i dont think|believe so, dont think|believe so,
        i think|hope|guess not, thankfully|luckily not|no|none, afraid|im not, im afraid not, cant say i have|do, cant say that i have|do, i cant say i have|do,
        neither of? them|those|these?, neither eye|one, still no|none|nothing|nope, no|none|nope to all|both|everything|any|each, no|none|nope to all|both|everything|any|each of? the? them|those|these|above|three|3|2|two,
        no to all|all of? 2|3|4|5|two|three|four|them|those, none of the? 2|3|4|two|three|four, all no|nos|nope, all of them no, both no, no x2|x3|x4, no times two|three, no across the board, triple no, no no, no no no, no and no,
        no issues|problems|trouble|complaints|concerns|worries|symptoms at? all?, no issue|problem|bother at? all?, all clear, all three no,
        nop nada, que va, para nada, nel, ninguno, ninguna, nanai, nunca, en absoluto, en lo absoluto, no no, no nada, no tengo nada|eso|ninguno|ninguna?, no he tenido nada|eso|ninguno|ninguna?, no lo estan|esta,
        no me he notado nada, no he notado nada, no noto nada, nada de eso|nada|esto, nada de lo anterior, ninguna de las? anteriores|tres|dos|3|2|ellas?, ninguno de los? anteriores|tres|dos|3|2|ellos?, no a todo|todas|todos|ambas|ambos, no a las|los tres|dos|cuatro|3|2|4, las|los tres|dos|cuatro|3|2|4 no, ninguna de las tres|3,
        todo|todas|todos no, creo que no, me parece que no, por suerte no, gracias a dios no, no hay nada|ninguno|ninguna?, no gracias, nada por ahora, nada hasta ahora, por ahora no|nada, hasta ahora no|nada, de momento no|nada, que yo sepa no, no que yo sepa, no estan|esta,
        tampoco, sin novedad|problemas|novedades, ni uno|una, ni una cosa ni la otra, nada que reportar
    """,
    "maybe": """
        maybe, possibly, perhaps, probably, might be, could be, kind of, sort of, sorta, kinda, ish, so so, yes and
        no, yes ish, quiza|quizas, tal vez, a lo mejor, puede ser, puede, probablemente, mas o menos, supongo, si y
        no, sip y no
    """,
    "unsure": """
        not sure, im not sure, unsure, i dont know, dont know, idk, dunno, no idea, hard to say|tell, cant tell, i
        cant tell, difficult to say|tell, who knows, no se, no estoy segura, no sabria, ni idea, no lo se, quien
        sabe, no sabria decir|decirle|decirte
    """,
    "some": """
        a? fair|decent|good|small|certain amount, the first|second|third|last|middle|second|latter one|two|thing, a?
        bit, bits, a? little, little bit, a? tad, a? touch, touch, tiny|wee|teeny bit|amount, slight, slightly,
        mild, mildly, minor, somewhat, some, a few, most, mostly, moderate, moderately, quite, quite a bit|lot,
        fairly, pretty, rather, very, very much, lots, loads, a? lot, tons, so much, really, really bad|badly,
        badly, terribly, severe, severely, massively, big time, a? ton, extremely, enough, plenty, a fair bit, more
        than a? bit|little, just about, ever so slightly, nothing
        major|serious|bad|much|terrible|crazy|drastic|dramatic|awful, nothing too bad|much|serious|major, not much,
        not very|too|so much|bad|badly|many, not that much|bad|badly, not a lot, not too|so|that? bad, hardly,
        hardly any|anything, barely, barely any|anything, scarcely, minimal, minimally, only just, next to nothing,
        not a great deal, not overly, not terribly|hugely|massively, not? more than usual|normal|expected|before, no
        more than usual|normal|expected, the usual, as expected, a hint, hint, a smidge, smidge, couple, a couple,
        one, in|of one of them, not entirely|completely|totally|fully|quite|all, not 100|100%, nearly all, more or
        less, partly, partially, un? poco, un? poquito, poquito, poquitito, poca, un? pelin, un? tantito, tantito,
        un? chin, una? pizca, algo, algo de eso, bastante, bastantes, mucho, muchisimo, mucha, demasiado, harto,
        caleta, ligeramente, leve, levemente, ligero, ligera, muy, muy poco|poquito|leve, apenas, casi nada, no
        mucho|mucha|tanto|demasiado|muy, poca cosa, nada grave|serio|fuerte, mas bien poco, un si es no es, ni
        tanto, no tanto, un monton, medio, la mayoria, casi todas|todos, unas|unos pocas|pocos, no del todo
    """,
    "part": """
        left, right, the left|right one|eye|side|lid|hand?, my left|right one|eye|side|lid, left|right
        one|eye|side|lid|only, both eyes|lids|sides, either side, each eye|side, one eye|side|lid, one of them|the
        eyes|my eyes, the top|bottom|upper|lower|inner|outer ones|lid|lids|corner|corners|part|side|edge|edges,
        top|bottom|upper|lower|inner|outer lid|lids|corner|corners|part|side, my? eyelid|eyelids|lids|lid|eye|eyes,
        in|at|round|around the corner|corners|middle|inside|outside|edges|edge, corner|corners, the other
        one|eye|side, the same one|eye|side|spot|place, same eye|one|side, one spot|place|bit|patch, el
        izquierdo|derecho, la izquierda|derecha, ojo izquierdo|derecho, del? lado izquierdo|derecho,
        izquierdo|derecho, izquierda|derecha, en? un ojo|lado, uno, los dos ojos, ambos ojos, el de arriba|abajo,
        parpado|parpados, en? el|los parpado|parpados, la comisura, en? la comisura|esquina, en? las
        esquinas|comisuras, el otro, el mismo
    """,
    "when": """
        sometimes, occasionally, on and off, off and on, now and then, now and again, from time to time, once in a
        while, at times, comes and goes, it comes and goes, in patches, on occasion, every now and then|again, every
        so often, once or twice, a few times, often, always, constantly, all the time|day|night, nonstop, in the
        morning|mornings|evening|evenings|night|daytime|wind|shower|sun|cold, first thing, at
        night|bedtime|work|times, this morning|evening|afternoon, tonight, today, last night, yesterday,
        mornings|evenings|nights, every|each morning|evening|night|day|time, most mornings|evenings|nights|days, end
        of the day, by the? evening|night, by the end of the day, overnight, lately, recently, since
        yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|then|last|my|the|this|day|i, since the
        visit|appointment|weekend|start|beginning|set|morning|fill|lashes, since my visit|appointment|set|fill,
        since i had them done, since i had them, since i left, since i got home|them, since last night|week|time,
        since this morning|afternoon, since day one|1|two|2|three|3, since i woke up, all week, straight away,
        from|for the start, for days, for two|three|2|3|a few|a couple days,
        when|if|whenever|once|after|before|while i blink|wake|touch|rub|sleep|work|cry|shower|drive|read|look,
        when|if|whenever|once|after|before|while i
        blink|wake|touch|rub|close|open|press|wash|sleep|work|cry|shower|drive|read|move|look|get
        it|them|up|down|my|eyes|eye|the|home|face|hard|tired|lids?, when|if|whenever im
        tired|outside|outdoors|inside|driving|working|reading|awake|cold|stressed|hot, when|if|whenever im on my
        phone|laptop|computer, on screens, at my screen|desk|computer, when|whenever i wake up, when i close my
        eyes, when i rub my eyes, when i touch it|them, when i wash my? face?, when i first wake|woke up, when i
        woke up, on waking, upon waking, after a? shower|showers|work|washing|sleep, by day, out in the
        wind|sun|cold, when its windy|cold|sunny|bright|dry, to the touch, to touch, if touched, when
        touched|washed|wet|outside, a veces, de vez en cuando, de a ratos, a ratos, por ratos, de rato en rato, por
        momentos, va y viene, a cada rato, siempre, todo el dia|tiempo, todos los dias, todas las noches|mananas,
        cada manana|noche|dia, en la manana|noche|tarde, en las mananas|noches|tardes, por la manana|noche|tarde,
        por las mananas|noches|tardes, al despertar, al levantarme, al despertarme, al amanecer, al parpadear, al
        cerrarlos|tocarlos|lavarme|abrirlos|tocarlo|cerrarlo|dormir, al cerrar los ojos, cuando
        parpadeo|despierto|duermo|lloro, cuando los? me? toco|cierro|abro|froto|tallo|lavo|levanto|despierto|rasco,
        cuando cierro los ojos, cuando me lavo la cara, si me? los? toco|tallo|froto|rasco, desde
        ayer|anoche|entonces|hoy|el|la|que, desde hoy, desde la cita|visita|manana|noche, desde esta manana|tarde,
        desde el lunes|martes|miercoles|jueves|viernes|sabado|domingo|principio, desde que sali|desperte|me, desde
        que me las puse|pusieron|hicieron|pusiste|hiciste|desperte|levante, desde hace dias, desde hace un|dos|tres
        dia|dias, hoy, hoy en la manana, esta manana|tarde|noche, anoche, ayer, ultimamente, de noche, de dia
    """,
    "goes_on": """
        still, still there|here|are|is|do|does|same|yes|yeah, still a? bit|little|some, still the same, still not
        great, it|they still is|are|do|does, it|they still hurt|hurts, same, the same, same as|like
        before|yesterday|always|ever|last|then|usual|monday|tuesday|wednesday|thursday|friday|saturday|sunday, the
        same as before|yesterday, same as last time|night|week, same again, same old?, same thing, as before, about
        the same, much the same, pretty much the same, no different, no change|changes, not changed, unchanged,
        hasnt|havent changed, nothing has|s changed, no better, no improvement, not any? better, not much better,
        not really any? better, isnt|arent any? better, no worse, not any? worse, not got worse, not worse, worse,
        a? bit|little|lot|much|even worse, getting|got|gotten|gets|going worse, its|theyre worse, its|theyre
        getting|got worse, worse now|today|than, worse than before|yesterday|ever|last, worse if anything, if
        anything worse, more, more and more, more so, more now|today|than, more than before|yesterday|ever, back,
        its|theyre back, back again|now|today, again, came back, its|theyre come back, started again, a?
        bit|little|tad|smidge better, slightly better, only slightly|little better, little by little, ongoing, yet,
        not gone, not gone yet, not better yet, persists, persisting, continues, continuing, todavia, todavia
        si|sip|no|un, aun, aun si|sip|no, sigo, sigo igual|asi|mal|peor|lo, sigue, siguen, sigue|siguen
        igual|asi|mal|peor, igual, igual que antes|ayer|siempre|la, lo mismo, lo mismo que antes|ayer, igualito,
        igualita, iguales, sin cambio|cambios, no cambia, no ha cambiado, no mejora, no ha mejorado, nada mejor, no
        mejor, peor, peores, cada vez peor|mas, mucho|aun|hasta peor, va|voy|van peor, va|voy|van a peor, va|voy|van
        empeorando, empeora, ha empeorado, empeoro, peor que ayer|antes|nunca, mas, mas que antes|ayer, otra vez, de
        nuevo, volvio, han vuelto, un poco|poquito mejor, ahi sigue|siguen, ahi va|van|voy
    """,
    "better": """
        better, much|lot|far|loads|heaps|way|alot better, better now|today|than, better than before|yesterday, a lot
        better, getting|got|gotten|feeling|feels|its|theyre better, its|theyre getting|got|much|feeling|a better,
        theyre a lot better, improving, improved, has|have improved, settling, settling down, calming down, calmed
        down, easing, easing off, going down|away, going, nearly|almost|mostly|practically
        gone|better|there|over|fine|cleared, less, less now|today|than, less and less, less than before|yesterday,
        healing, on the mend, fading, clearing, clearing up, mejor, mejor que ayer|antes, mucho|bastante mejor, ya
        mejor, ya estoy mejor, va|voy|van mejor, va|voy|van mejorando, mejorando, mejoro, ha mejorado, han mejorado,
        ya casi, ya casi nada|no|se, casi se quito|fue|paso, menos, menos que ayer|antes, cada vez menos, bajando,
        ya bajo, ya va bajando, ya va pasando, se me? esta quitando|pasando
    """,
    "over": """
        they|it? was|were|did|had but|and fine|ok|okay|good|better|gone|grand|settled|all? now|today,
        fine|ok|okay|good now but? was|were|before, completely|fully|totally|all cleared|gone|settled|healed, por
        completo, not since
        monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tue|tues|wed|thu|thurs|fri|sat|sun|yesterday|then|the,
        not since the weekend|first|start, not any? more, not anymore, no longer, no more, not no more, used to,
        gone, gone now|already|away|today|by, its|theyre|all|has|have gone, all gone now, passed, its|has passed, it
        passed, it went, it went away, went away, its|has|it stopped, stopped now, cleared, cleared up, all cleared
        up?, settled, settled now, all settled, over, all|its over, over now, all better, all better now, better now
        all, all back to normal, back to normal, resolved, subsided, it|they|has|have|s
        settled|cleared|subsided|resolved up?|down?, disappeared, sorted, sorted now, healed, at first, initially,
        in|at the beginning|start, to begin with, to start with, the first|1st
        day|night|evening|hour|couple|two|few|morning|hours|days|nights, on the first|1st day|night|evening, on|for
        day one|1, day one|1, for an|one hour|day|night|evening|morning, for a? day|bit|while|couple, for an hour or
        so|two, for a day or so|two, for a couple of? hours|days, for a few hours|days|minutes, for the first
        few|couple|two hours|days, first day|night|evening, first few|couple hours|days, on the day, that
        day|night|evening, the same day|night|evening, on that day, the day itself, earlier, before, previously,
        yesterday but not today|now, last night but not today|now, but not today|now|anymore, not now, straight
        after|afterwards, right after, just after, immediately after, ya no, ya no tengo|nada|hay, ya paso, ya se
        me? quito|fue|paso|pasaron|quitaron|fueron, se me? quito|fue|paso|pasaron|quitaron, ya se fueron, ya
        pasaron, ya nada, al principio, en un principio, el primer dia, la primera noche, el mismo dia, esa noche,
        ese dia, los primeros dias, las primeras horas, al inicio, antes si|sip, antes, ya estoy bien, ya bien, ya
        todo bien, ya esta|estan bien, ya esta|estan, ya quedo, ya me siento bien, desaparecio, un rato, un ratito,
        unas horas, ya desaparecio, pero ya
    """,
    "good": """
        they|it|theyre|its are|is|feel|feels|look|looks good|fine|great|ok|okay|perfect|grand|normal|lovely|well,
        my? eyes|lids are|feel good|fine|great|ok|okay|perfect, all|everything|everythings|alls
        good|fine|well|great|ok|okay|perfect|clear|normal|lovely|grand, good, fine, great, perfect,
        im|theyre|its|all|doing|feeling good|fine|great|perfect|ok|okay|well|grand|lovely, ok, okay, well, just
        fine, brilliant, lovely, normal, comfortable, all right, alright, happy, no problem, still
        fine|good|great|perfect, not bad, not bad at all, couldnt be better, never better, better than ever, never
        been better, feel fine|good|great, im all right|good, very good|well|comfortable|happy, all is
        well|good|fine, all perfect, bien, todo bien|perfecto|excelente|normal|tranquilo|ok, muy bien, perfecto,
        perfectos, perfectas, excelente, super bien, de maravilla, estoy bien, estan|esta bien|perfectos|perfecto,
        genial, de lujo, todo en orden, comodos, comoda, mejor que nunca, sin problema, feliz, contenta
    """,
    "bad": """
        bad, terrible, awful, horrible, horrid, rubbish, rough, poorly, not
        good|great|right|ideal|ok|okay|fine|well|comfortable|happy|brilliant|normal, not so|too|very|that|feeling
        good|great|well|comfortable, not doing well|good|great, they|it dont|doesnt|havent|hasnt|arent
        feel|felt|feeling comfortable|right|good|well|ok|okay|great|fine, dont|doesnt feel
        comfortable|right|good|well|ok|okay, not all right, could be better, been better, ive|theyve been better,
        theyve seen better days, meh, grim, dreadful, dire, uncomfortable, miserable, mal, muy mal, fatal, malisimo,
        regular, no muy|tan bien, no bien, no estan|esta|estoy bien, pesimo, pesima, incomoda, incomodos, horribles
    """,
    "thanks": """
        thanks, thank you, thanks|thank you so|very much, thanks|thank you for asking|checking|that|this,
        thanks|thank you for checking in|up, thanks a lot|million, thanks again, many thanks, muchas|mil|muchisimas
        gracias, gracias por preguntar|todo|escribir|avisar, ty, cheers, noted, will do, got it, understood,
        received, gracias, recibido, entendido, enterada, anotado, okey, oki, dale, vale, listo, bueno, k, kk, will
        keep an eye, great thanks, roger, copy, copied
    """,
    "arrival": """
        ill|i will be there, be there, will be there, see you|ya
        then|there|soon|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow, confirmed, confirm, i
        confirm, that|it works, works for me, that suits, suits me, see you at?, ahi estare|estoy, alli estare, nos
        vemos, confirmo, confirmado, confirmada, ahi nos vemos, por alla nos vemos, on my way
    """,
    "and": """
        and, but, or, also, just, only, oh, so, please, sorry, tbh, honestly, actually, really, though, well, hi,
        hello, hey, hiya, dear, love, hun, babe, lol, haha, x, xx, xxx, maam, sir, mam, i, its, they, it, is, are,
        in, on, of, the, my, to be fair, to be honest, if im honest, however, somehow, now, right now, at the
        moment, atm, rn, currently, thus far, so far, too, as well, then, there, was, did, had, been, were, tuve,
        hubo, glad|happy|pleased to say|report, im glad|happy|pleased to say|report, must say, i must say, i have to
        say, i would say, id say, say, for now, yet again, guys, girls, ladies, girl, doll, darling, pet, lovely,
        as, this, that, these, those, ones, one, at, to, with, for, a, an, you, your, again, please advise, y, pero,
        o, tambien, solo, solamente, nomas, nada mas, unicamente, e, la, el, los, las, verdad, la verdad, pues,
        hola, buenas, buenos dias, buenas tardes|noches, linda, amiga, hermosa, reina, nena, chica, porfa, por
        favor, perdon, jaja, jajaja, de, en, me, mi, mis, lo, eh, ahora, ahorita, ahora mismo, por ahora, hasta
        ahora, de momento, por el momento, la verdad es que, que, es que, senora, senorita, amor, corazon, carino,
        guapa, mija, un, una
    """,
}
# What a number, a word of order or "the rest" stands before in an answer to several questions.
LABELS = {
    "number": "number, question, num, nr, q, pregunta, numero, la, el, a, to, for, on, the, #, los, las, point, item, punto, opcion, option",
    "rest": """
        the? rest, the? others, the other two|ones|2|3|three, the other, everything else, anything else, all the
        others, all others, all the rest, all other, el resto, lo demas, los demas, las demas, las otras, los otros,
        la otra, las otras dos|2, las otras preguntas, los otros dos|2, todo lo demas, the remaining, the remaining
        ones|two
    """,
}
ORDERED = """
    first=1 1st=1 second=2 2nd=2 third=3 3rd=3 fourth=4 4th=4 fifth=5 5th=5 last=-1 final=-1
    primera=1 primero=1 segunda=2 segundo=2 tercera=3 tercero=3 cuarta=4 cuarto=4 quinta=5 ultima=-1 ultimo=-1
    one=1 two=2 three=3 four=4 uno=1 dos=2 tres=3 cuatro=4
"""
