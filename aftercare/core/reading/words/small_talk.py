"""English and Spanish that is plainly small talk: greetings, weather, meals, parcels, the telephone, the family.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

_ENGLISH = """
    saying hi|hello|hiya, say hi|hello to, hi there, hiya, hey there, hello there|again|stranger|love|pet|dear|all, morning all|love|hun|girls|ladies, good morning|evening|night|afternoon, nighty night, night night, sleep well, sweet dreams, god bless, take care, safe home|travels|trip|journey, long time no,
    brb, ttyl, gtg, g2g, bbl, back now|soon|shortly|later|in, talk later|soon|tomorrow, chat later|soon|tomorrow, catch up later|soon, ring|call|text|ringing|calling you|ye|u|back|ya in|later|back|when|after|tonight|tomorrow|soon, ill ring|call|text, missed your call, missed call, cant talk, on another call, in a meeting|call|class|lecture, at the till|checkout, up a ladder, on the phone|bus|train|loo|tram|road,
    battery dead|dying|died|low|flat|is, phone died|dead|was|is, no signal|credit|battery|wifi|data, new phone|number, my phone, got your voicemail|letter|message|text|card|email|parcel|note, ill read it, sorry for not|late|slow replying|reply|answering, late reply, just seen|saw|got|woke this|your|it|up, only seen|saw|got this|it,
    kettle is|s|on|boiled, tea made, dinner is|s|on|ready|in|burnt, roast in, whats for dinner|tea|lunch, pint|pints|loaf|milk|bread|eggs|butter|spuds|crisps|biscuits|sugar of|and|from|for|needs|today, a loaf, semi skimmed, ham no, olives, toastie, sandwich|sandwiches, takeaway, pizza, cake at|in|for|was,
    raining|snowing|hailing|pouring|drizzling|freezing|lashing|bucketing|chucking|pissing|teeming cats|stair|it|down|here|again|outside|buckets|sideways, its raining|snowing|baltic|roasting|boiling|windy|foggy|sunny|perishing|warm|mild, weather is|s|here|today|eh|forecast, snow is|s|up|on|drifts, degrees here|outside|today|already, cold as|out, melting|freezing here|out|in, sunset, sunrise, rainbow, thunder, stormy,
    your mum|mom|mam|dad|nan|granny|sister|brother|husband|baby|kids|dog|cat|puppy|auntie .. feeling|doing|keeping|well|better|ok|home|settled|on, hope your|the .. ok|well|better|mend|fun|good|grand|soon|great, hope you|ye got|had|have|are|enjoy|enjoyed, regards to, my best to, give .. my love|best|regards, saw your|you mum|mam|sister|brother|van|dog|husband|at|in|on|yesterday, your van, waved at|like,
    bins are|out|day|go, binmen, invoice attached|enclosed, find attached, attached the|is|are|please, kindly settle, settle within, parcel|package|delivery|courier|pallet|boxes|order|driver is|for|at|here|arrived|came|left|with|there|will, needs signing, sign for, leave it|them with|at|in|by next|the|reception|front|porch, boiler, plumber, scaffold, milkman, window cleaner, free range, raffle, survey, sponsor, jumble,
    happy birthday|anniversary|sunday|friday|new|xmas|christmas|easter|eid|diwali, merry christmas|xmas|eid, congrats, congratulations, good luck, best of luck, sorry for your loss, condolences, rest in peace, funeral is, my condolences,
    only messing|joking|kidding, just messing|joking|kidding, ha ha, haha|lol|lmao|hehe|lmfao same|ok|right|no|yes|true|brilliant|good, ah right|ok|sure|no|well|here, oh right|ok|well|sure|really|wow, fair enough|play, no worries|bother|rush|hurry|probs, okey dokey|doke, okie dokie, righto, roger, will do, got it|ya|you|that, noted, understood, sure thing|look, uh huh, no way, i know right, guess who|what, youll never guess, never guess who,
    id forget my head, screwed on, my bad, mistake|typo sorry|soz, predictive, autocorrect, autocorrected, siri, dictation, full stop, new line|paragraph, voice to text, pocket, cat sat|walked on, toddler|kid|son|daughter|baby had|got|has|sent|pressed my|the|a|it|that, its me again|from|susan|the, who won, match on, whats the score, the game|match|film|telly last|on|tonight|was,
    ask|tell|check|let him|her|himself|herself|me check with|i|that|the, check with himself|herself|him|her|my, let me check, bring|bringing the|a|your charger|cake|crisps|wine|dog|kids|chairs, see you tonight|sunday|later, on my way|me, home now|soon|safe, home in, running for the
"""

_SPANISH = """
    saludos a|para|desde, hola vecin{a/o}|chicas|chic{a/o}|tod{as/os}|amiga|mi, buenos|buenas dias|tardes|noches, que descanses|descansen, feliz ano|navidad|dia|lunes|martes|miercoles|jueves|viernes|sabado|domingo|cumple|noche|tarde, como sigue|esta|anda|va tu|su|la|el mama|papa|hija|hijo|bebe|abuela|marido|perro|gato|familia, como estas|esta|andas|amaneciste,
    te|le|les llamo|marco|escribo|cuento|aviso|leo|digo en|luego|al|mas|ahorita|cuando|manana, luego|ahora|ahorita|despues te|le llamo|cuento|leo|marco|escribo|digo|aviso, se me descargo|murio|apago|acabo el|la telefono|cel|celular|bateria|pila, estaba|ando|estoy dormida|manejando|trabajando|cocinando|en, perdon|sorry estaba|la|por|mija|el|apenas, apenas vi|veo|lo,
    lista del super|mandado, en el super|mercado|banco|trafico|bus|metro|trabajo, garrafas|garrafon|paquete|pedido|cajas|factura|recibo, llego tu|el|la|su paquete|pedido|courier|recibo|cartero, era para mi|el|la|otra|otro, fijate que, que calor|frio|lluvia|dia hace|esta|tan|mas?, esta|anda lloviendo|nevando|granizando, llueve|nieva a|mucho|aqui, internet, wifi,
    que le vaya|te, un abrazo, abrazos, bendiciones, dios la|te bendiga, provecho, buen provecho|dia|fin|viaje|finde, jajaja|jaja ok|si|no|dale|bueno|ay, ok|okay jajaja|jaja|pues|gracias|dale|listo
"""

TOPICS_ENGLISH, TOPICS_SPANISH = {"chat": _ENGLISH}, {"chat": _SPANISH}
