"""How Spanish denies, doubts, dates and ascribes; see `english_scope`.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

SCOPE = {
    "calm": """
        parpados|ojos|ojitos estan|se|los|las? ven|veo|tengo? normales|normal|blancos|bien|perfectos|sanos|tranquilos|limpios|como siempre?
    """,
    "no": """
        ningun{o/a/}, sin, ni, nada de, cero, 0, tampoco, ni siquiera, ausencia de, libre de, ni un, ni una, ni
        tantit{o/a}, niega, cero cero
    """,
    "not": """
        no es? porque, no vaya{n/s} a pensar que, no, nunca, jamas, ni me|se|los|las|lo|un|una|tantito|siquiera, ya
        no, no he, no han, no ha, no tengo, no hay
    """,
    "nonneg": """
        en|a|desde|bajo|de cero, ya va|van un|una|dos|tres|cuatro|cinco|seis|varios|varias|2|3|4|5|6|7
        dia|dias|horas|semana|semanas|noches, no se? le|lo|la|los|las? deseo|desearia|deseo|deseria .. nadie|ni, no
        duermo|descanso|vivo|trabajo|rindo, no pego|pegue el? ojo, no puedo|pude|podia
        concentrarme|trabajar|leer|manejar|estudiar|abrirlos|abrirlo|maquillarme, no hay
        dia|noche|hora|momento|rato|vez|manana|minuto que no?, nada me|le|lo|la|los|las?
        quita|calma|baja|alivia|ayuda|funciona|para, ningun{a/o/} .. me|le|lo|la?
        quita|calma|baja|alivia|ayuda|funciona, ni
        con|poniendo{le/me}|durmiendo|lavando{los/me}|tomando|echando{me/le}|aunque|asi ..
        baja{n/}|quita{n/}|calma{n/}|alivia{n/}|cede{n/}|para{n/}|mejora{n/}, ni durmiendo|asi se? me?
        quita{n/}|baja{n/}|calma{n/}, no me encuentro|hallo|sentia|senti|veo muy? bien|normal|yo, ni
        dormir|comer|trabajar|abrir|abrirlos|abrirlo|ver|salir|hablar|pensar|manejar|estudiar|tocarme
        puedo|pude|he|me|quiero|aguanto|logro, no es
        piropo|halago|cumplido|elogio|chiste|juego|cuento|mentira|exageracion|drama|invento, no hay
        manera|forma|modo de, no hay dios que, no doy mas|abasto, no la cuento, no hay pomada|gota|gotas que, ni
        dormi|duermo|descanso|trabajo|pude|puedo|descanse|pegue, no anda{n/}|ando|va{n/} muy? bien, mentiria si ..
        dijera|digo que? no, no te|le|les voy a mentir|enganar, para que|pa que te|le|les? voy a decir que no, no
        hicieron|hizo|hacen|sirvio|sirvieron|sirven|sirve|funciono|funcionaron|ayudaron|ayudan|resulto nada|para|pa,
        no me hizo|hicieron|hacen|ha|han hecho? nada|efecto, no se me? secan|seca|cierran los|el? ojos|ojo, no me
        puedo|pude dormir|concentrar|trabajar|estar, no puedo negar, no niego, no voy a negar, no se me
        quiere|quieren, no hay quien|quien aguante|duerma|pueda, no soy yo, no termina|terminan|acaba|acaban de
        irse|quitarse|bajar|pasar|sanar|cerrar|curar, si no fuera|fuese|fueran por, de no ser por, si no me|los|las
        ardieran|picaran|dolieran|lloraran|molestaran, bien menos|excepto|salvo el|la|los|mi|uno|un|por|que, todo
        menos el|la|los|mi|uno|un|que, sin dormir|pegar|parar|descanso|tregua|poder|dejar, ya van|va
        dos|tres|cuatro|cinco|2|3|4|5|6|varios|unos|como|casi dias|noches|semanas|horas|tres, ya no
        sube|abre|abren|veo|ve|ven|enfoca|respiro|alcanza|cierra, ya no
        quise|pude|puedo|quiero|aguanto|soporto|se|me?
        manejar|conducir|leer|ver|salir|dormir|trabajar|mas|abrir|que, no veas como|que|lo, no sabes
        como|que|lo|cuanto, no te imaginas como|que|lo|cuanto, no te puedes imaginar, no ayuda, parpadear no, no es
        que no, no vea{s/} lo, no te digo, ni te cuento, ni te digo, sin
        senal|internet|datos|bateria|saldo|wifi|tiempo|querer|dormir|duda|falta|cobertura|luz|agua|trabajo|avisar|gafas|lentes,
        ayuda, no|ni lo|la|los|las? soporta{n/}|aguanta{n/}|tolera{n/}|banca{n/}, no se despega{n/}, no me|nos
        entra{n/}|caben|cabe ni?, no pasa .. dia|noche|hora sin, ni un dia|noche sin, no hay dia sin, no puedo decir
        que no, no es que no me duela|pique|arda, no hace nada, no me hace nada, no se desinflama{n/}, no se
        deshincha{n/}, y nada, no aguanto, no soporto, no puedo, no puedo dormir, no dormi, no he dormido, no he
        podido, no pude, no pude dormir, no deja{n/} de, no me deja{n/} de, no me deja{n/}, no para{n/} de, no me
        para{n/} de, no para{n/}, no se me quita{n/}, no se quita{n/}, no me quita{n/}, no se me ha quitado, no se
        me quito, no se va{n/}, no se me va{n/}, no se me baja{n/}, no se me pasa, no se pasa, no me baja{n/}, no
        baja{n/}, no ha bajado, no se baja, no se me ha bajado, no mejora{n/}, no ha mejorado, no han mejorado, no
        ha pasado, no cede, no se calma{n/}, no se me calma{n/}, no es normal, no esta normal, no esta bien, no
        estan bien, no estoy bien, no me siento bien, no esta bonito, no me gusta, no me gusto, no me gustaron, no
        se si, no se que|porque|por|cuanto, nose si|que, no quiero, no queria, no se preocupe, no te preocupes, no
        hay problema, no pasa nada, no te molestes, no mas, no solo, no solamente, no digo que no, no me aguanto, no
        funciona, no me sirve, no me ayuda, no dejo de, no paro de, no dejan, no sabia, no entiendo, no veo, no
        abre{n/}, no se abre{n/}, no respiro, no manches, no mames, no inventes, no puedo creer, no habia, no me
        habia pasado, nunca me habia pasado, nunca habia, nunca me pasa, nunca me pasaba, antes no, no era, no eran,
        no tenia, no estaba, no me pasaba, no tengo cita, no hagas caso, no exagero, no es broma, no miento, no creo
        que sea normal, no creo que este bien, no hay manera, no hay forma, no hay dia, no sin, no por nada, como
        no, a que no, no es nada lindo, no enfoco, no distingo, no miro, no logro, no alcanzo, no me pude, no te
        asustes, nada mas, no mas que, ni modo, ni idea, nunca mas, no llego, no voy, no podre
    """,
    "returns": """
        asi amaneci|ando|estoy|me|sigo|desperte, lo mismo me|tengo|traigo|ahora, y ahora yo|me|a, igualito
        ando|estoy|amaneci, y hoy yo|me|amaneci, me esta pasando otra vez, otra vez lo mismo, otra vez igual, me
        pasa otra vez, y ahora otra vez
    """,
    "wrong": """
        hable muy pronto, hable antes de tiempo, me equivoque, mentira, retiro lo dicho, me retracto, olvida lo que
        dije, miento, no es cierto, eso fue ayer, eso era ayer
    """,
    "but": """
        de lo, de lo que, de tan, de tant{o/a}, de puro|pura, lo que sip|si, en cambio, mas bien, a cambio, fuera de
        eso, quitando eso, salvo eso, eso sip, y a mi, a mi se me, y yo si, y yo ando|estoy|tengo|sigo|amaneci,
        pero, sino, aunque, excepto, salvo, solo, solamente, porque, pues, si, desde, cuando, mas que, nomas,
        unicamente, eso si, hasta, apenas
    """,
    "subject": """
        el, la, los, las, mi, mis, me, se, tengo, tiene, tienen, esta, estan, hay, es, son, un, una, unos, unas,
        ahora, hoy, tenia, siento, amaneci, amanecio, traigo, muy, mucho, mucha
    """,
    "unless": """
        solo cuando, solo si, a menos que, excepto cuando, nada mas cuando, nomas cuando, solo al, mas que cuando,
        salvo cuando, salvo si
    """,
    "over": """
        esa|ese|aquella|mismo|misma|primer|primera noche|dia|tarde|rato nomas|solamente|unicamente,
        esa|ese|aquella|mismo|misma|primer|primera noche|dia|tarde|rato nada mas, ya estaba|estaban|andaba
        bien|mejor|como, duro|duraron hasta|dos|tres|unas|unos|como|toda|todo|media, ya?
        dejo|dejaron|paro|pararon|terminaron|termino de llorar|picar|arder|doler|molestar|lagrimear|supurar,
        bajo|bajaron con hielo|agua|el|la|solo|sola|rapido|luego|despues|manzanilla|compresas, hoy nada, hoy ya
        nada|no, se me bajo|bajaron|quito|quitaron|paso con|solo|sola|rapido|enseguida|al, ha|han
        desaparecido|cedido|pasado|bajado|cesado|sanado, un dia|noche|rato|ratito|tarde y
        paro|pararon|ya|listo|adios, y paro|pararon|ceso|cesaron, ya todo?
        limpio|limpios|seco|secos|blanco|blancos|normal|normales|sanos, despues|luego|despues ya? nada mas, una|un
        noche|dia|tarde|rato|ratito|ratico|hora nomas|solamente|unicamente|nada, ya todo bien, ya no hizo|hace
        falta, ya no me? hizo|hicieron|hacen falta, se me desinflamo|desincho|deshincho, ayer mismo|ya se, ya re?
        bien|tranquilos|perfectos|normales, hoy ya? esta|estan|amanecio|amanecieron|anda|andan
        blanco|blancos|blanquito|blanquitos|limpio|limpios|seco|secos|bien|normal|normales, ahora ya? esta|estan
        blanco|blancos|limpio|limpios|secos, al despertar|levantarme|amanecer|rato|dia|llegar ya?
        nada|bien|normal|limpio|limpios, agua pasada, cosa del pasado, quedo en el pasado, ya es|son historia, la
        primera noche|tarde nada mas|nomas|solamente, solo|nomas|unicamente la primera noche|tarde, nada mas la
        primera noche|tarde, el primer dia nada mas|nomas|solamente, nada mas el primer dia, a la
        hora|rato|manana|tarde|noche ya|estaban|estaba? estaban|estaba|nada|secos|seco|bien|normal|normales, desde
        entonces todo|nada|bien|perfecto|perfectas, ya secos|seco, y despues nada, ya esta|estan|estuvo
        blanco|blanca|blancos, del <dia> paso|pasaron, de ayer|anoche paso|pasaron, un|una rato|noche|dia|tarde y?
        paso|pasaron, amaneci|amanecio|amanecieron|desperte sin
        problema|problemas|nada|molestia|molestias|dolor|rastro|ardor|picor|picazon, ya sin
        problema|problemas|molestia|molestias|rastro|nada, desde el? <dia>
        secos|seco|bien|nada|normal|normales|perfectos|perfecto|tranquilos, ya? se me?
        borro|borraron|curo|curaron|compuso|compusieron|alivio|aliviaron|sano|sanaron|esfumo|esfumaron|desvanecio|desvanecieron|arreglo|arreglaron|deshincho|deshincharon|desinflamo|desinflamaron|desirrito|desirritaron|desinflo|desinflaron,
        ya se me? secaron|cerraron|limpiaron|limpio|aclararon|blanquearon, ayer|anoche|antier|antes y ya,
        ayer|anoche nada mas|nomas|solamente, un rato|ratito|dia y ya, una noche|tarde y ya|adios|listo,
        la|una|uno|el|esa que me pinchaba|picaba|molestaba|tocaba|raspaba|jalaba|punzaba|estorbaba ya? se
        cayo|salio|solto|acomodo|quito|fue, se acomod{o/aron} sol{ita/a/as/o/itas}, ya se acomod{o/aron},
        gotas|compresas|suero|hielo|manzanilla|lagrimas|colirio|pomada|crema me? lo|la|los|las|le?
        quitaron|quito|calmaron|calmo|bajaron|bajo|aliviaron|alivio, resuelto|resueltos|resuelta|superado|superada
        desde|ya|hoy|ayer, ya resuelto|resuelta|superado, paro|pararon|ceso|cesaron|se quito ese|el|al mismo?
        dia|noche|rato, cedio con|la|al|a|en|sola|solo, cesaron, hoy normal|blanco|blancos|ya? normal, ya
        quedaron|quedo blancos|blanco|limpios|normales|bien, solo la primera|el primer|esa noche|dia|rato|tarde y,
        ni rastro de, no queda ni? rastro|nada|ninguna, se me quito con|en|a, ya se me quitaron|quito|fueron|fue, ya
        volvieron|volvio|regresaron a la normalidad|normal, no volvio|volvieron|regreso|regresaron a? nada?|mas?,
        nunca mas volvio, no me volvio, nomas|nada|solo|solamente|unicamente mas? la|el|esa|ese|por?
        noche|tarde|manana|madrugada|rato|dia del|de|siguiente? <day>, ya los? tengo|vi|veo|siento
        blancos|limpios|normales|bien|perfectos|secos, ya amanecieron|amanecio|amaneci|estan|estaban|quedaron
        blancos|blanco|blanquitos|limpios|limpio|sequito|sequitos|seco|secos|normales|normal|bien|perfectos|perfecto|como
        si|de lo mas|sanos, y luego ya, luego ya nada|no|bien, de ahi|ahi en|pa adelante
        limpio|limpios|nada|bien|normal, de ahi en adelante, pero ahora re? bien|perfecto|todo|impecable, ahora re
        bien, re bien todo, todo re bien, ya ..
        desirrito|desirritaron|deshincho|deshincharon|desinflamo|desinflamaron|destapo|aclaro|aclararon|blanquearon,
        se me desirrito, ya estan blancos|limpios, al otro dia nada|limpio|limpios|normal|bien|ya, al dia siguiente
        nada|limpio|limpios|normal|bien|ya, ya estaba|estaban|esta|estan|amaneci|amanecio
        normal|normales|perfecto|perfectos|limpio|limpios|deshinchado|deshinchados, se fue|paso|quito|bajo al?
        solo|sola|rato|enseguida, despues se acabaron|acabo|quito|fue, se acabaron, se acabo, amanecieron
        bien|perfectos|normales|limpios, amanecio bien|perfecto|normal|limpio, ahora esta|estan todo|todos|todas?
        joya|bien|perfecto|ok|genial|barbaro, todo joya, ahora todo joya|bien|perfecto|ok, ya se bajo|bajaron, but
        now todo bien, luego nada, dos dias y ya, un dia y ya, y ya paso, ya no hay nada, ya par{o/aron} de
        arder{me/}|picar{me/}|doler{me/}|llorar{me/}|molestar{me/}, dej{o/aron} de
        arder{me/}|picar{me/}|doler{me/}|llorar{me/}|molestar{me/}, ya no volvio|regreso|molesto|paso|ha vuelto,
        amaneci|desperte|amanecio|amanecieron|desperto|amanece
        bien|normal|blanco|blancos|limpio|limpios|deshinchad{o/a/os/as}|desinflamad{o/a/os/as}|como si
        nada|nueva|perfecta, deshinchad{o/a/os/as}, desinflamad{o/a/os/as}, se
        deshincharon|deshincho|desinflamo|desinflamaron, ya se me fue|fueron|quito|paso|bajo|quitaron, se fue
        con|sola|solo|sin, se fueron con|solas|solos, se me fue con, se quito con|sola|solo, se le|les paso|quito,
        hoy se le|les paso, hoy ya esta|estan bien|normal|normales, ya ni rastro, ni rastro ya, ya ni me acuerdo, ya
        se les|le|me|te quito|quitaron, ya se normaliz{o/aron}, se normaliz{o/aron}, se corto solo|sola, se cortaron
        solos|solas, despues se corto, primeras horas nomas|nada, ya normalizaron, ya baj{o/aron}, se baj{o/aron}
        sol{o/a/os/as}, baj{o/aron} sol{o/a/os/as}, duro poquito|poco, duraron poquito|poco, ya se fue|fueron
        sol{o/a/os/as}, se desinflamo completita|completito|toda|todo|por completo, se desinflamo, desinflamo,
        completita, ya se me quito todo, ya no hay, se seco todito, ya estoy perfectamente, ya estoy
        super|perfecta|normal|mejor|tranquila|excelente|de, ya se seco, se seco, ya no salio, nada mas despues, de
        ahi nada, de ahi nada mas, esa noche nomas, ya no mas, hoy ya no, ya ni, ya cerro, ya sano, ya estan
        perfectos|perfectas, ya lo pude abrir, ya los pude abrir, ya abrio, ya abre, se abre bien, con agua .. se me
        abre, se me abre, ya se abrio, ya se deshincho, deshinchado, ya desinflam{o/ado/ados}, desinflamado, ya?
        salio|salieron|cayo|desprendio sola|solas|solo|solos, no he|hemos vuelto a
        sentir|sentirla|sentirlo|sentirlas|sentirlos|tener|tenerlo|notar|notarlo|ver|picar|arder, desde
        entonces|ahi|ese nada|bien|limpio|perfecto, nada de nada desde, se habia|habian
        quitado|ido|bajado|pasado|calmado|deshinchado, ya se habia|habian, ya nada, luego se fue|quito|paso, al rato
        se fue|quito|paso|me, deshincho, amaneci perfecta, ahora perfecto, ya me calmo, quedo atras, sumio, ya paso,
        ya se me paso, se me paso, se paso, ya se fue, ya se fueron, se fue, se fueron, se me fue, se me fueron, ya
        se quito, se quito, se me quito, se me quitaron, ya se me quito, se quitaron, ya no, desaparecio,
        desaparecieron, se me bajo, ya bajo, ya se bajo, bajo del todo, ya esta bien, ya estan bien, ya estoy bien,
        ya esta normal, ya estan normales, ya ando bien, ahora bien, ahora todo bien, ahora estoy bien, ahora esta
        bien, hoy bien, hoy todo bien, hoy ya, ya todo normal, todo bien ahora, todo normal ahora, ya perfecto, ya
        perfecta, ya amaneci bien, amanecio bien, amaneci bien, amaneci normal, ya amaneci normal, amanecio normal,
        amanecieron normales, solo el primer dia, nomas el primer dia, solo la primera noche, nomas la primera
        noche, el primer dia nada mas, el primer dia nomas, la primera noche nomas, solo al principio, solo ese dia,
        solo ayer, solo esa noche, se resolvio, se calmo, se me calmo, se calmaron, ya mejor, ya estoy mejor, ya me
        siento bien, ya se normalizo, como si nada, ya cedio, se curo, duro poquito|poco|un|solo|nada, ya sin,
        despues nada, ya quedo, ya quede bien, ya los tengo bien, ya tranquila, ya tranquilo, y listo, me funciono,
        hoy perfecta, hoy perfecto, hoy normal, ya cero
    """,
    "near": """
        que ya? se me? va|van|esta yendo|quitando|borrando, casi
        normal|normales|limpio|limpios|blanco|blancos|secos|seco, casi se me? quita|quito|borro|borra|va|fue, ya
        casi se me? borro|quito|fue|va, queda|quedan|quedo|tengo una|un?
        pizca|pelin|nadita|rastro|resto|poquitin|tantito|chin|chispa|sombra, una pizca, un pelin, casi como
        siempre|antes|nuevo|nueva|nuevos, casi en su|el|de, hoy casi, casi normal|normales|bien|blanco|blancos,
        como|lo que me avisaste|aviso|dijiste|dijo|advirtio|advertiste, y cada dia menos, apenas|queda una|un
        sombrita|rastro|rastrito|hilito|manchita|tono, falta un|muy|bien? pelin|poquito|poco|nada para que|pa, ya
        practicamente|prácticamente limpio|bien|normal|blanco|nada, practicamente limpio|normal|bien|nada, hoy menos
        que|q ayer, menos que|q ayer, cada dia un? poco? menos, lo esperable, lo normal y, muy leve, hoy ya? casi
        nada, ya casi nada de, apenas se nota, queda|quedan un? poco|poquito|apenas, cada dia menos, cada dia mejor,
        mejor cada dia, va de salida, ya casi nada, casi nada ya, ya ni se nota, casi ni se nota, ayer era peor,
        ayer estaba peor, va para abajo, ya va para abajo, se esta yendo, esta cediendo, va cediendo, va pasando, se
        va bajando, se me va pasando, va disminuyendo, ya bajando, ya mejor que, minima, un pelin ya, poquito nada
        mas y va, casi no, casi nada, ya casi, casi se, casi ni, cada vez menos, mejorando, va mejor, van mejor,
        esta mejor, estan mejor, va bajando, van bajando, esta bajando, bajando, se va quitando, se esta quitando,
        se me esta quitando, ha bajado, ya bajo mucho, ya bajo bastante, menos, disminuyendo, ha mejorado, han
        mejorado, mejoro, mucho mejor, mejor que ayer, un poco mejor, poco a poco, apenas, apenitas, se va yendo, se
        me va quitando, se va pasando, se me esta pasando, ya va, ya van, ya poquito, ya poco, queda poquito, queda
        un poquito, queda poco, queda nada, ya menos, no tan, no tanto, no tanta
    """,
    "worse": """
        sigue, siguen, sigo, aun, todavia, peor, empeora{n/}, empeorando, otra vez, de nuevo, volvio, volvieron,
        regreso, cada vez mas, cada vez peor, sigue igual, va y viene, ahora me, hoy me, ahorita me, empezo,
        empezaron, salio|salieron|aparecio|aparecieron otro|otra|otros|otras
    """,
    "past": """
        la otra vez, la vez anterior, las otras veces, otras veces, la|las|los de mi|otro|otra|antes|siempre|aquel
        barrio|pueblo|casa|lado|salon?, las de antes, los de antes, la|el de mi barrio|pueblo|cuadra|calle, la otra
        estilista|chica|tecnica|lashista|muchacha|senora|profesional, antes con|cuando
        las|los|el|la|otra|otras|otro|me|iba|usaba, antes usaba|tenia|iba|con, antes me ponia|hacia|daban|daba,
        antes de conocerte|conocerlas, del|el verano|invierno|mes|ano|salon|lugar|sitio pasado|anterior, cuando
        estaba|andaba|estuve embarazada|prenada|casada|soltera|chiquita|morra, en la secu|secundaria|primaria|prepa
        me, en el kinder, en otra|otro epoca|vida|pais|ciudad, de morra|morrita|chamaquita|peque|pequena, en
        2009|2010|2011|2012|2013|2014|2015|2016|2017|2018, alla por el|2015|2016|2017|2018|2019, de
        chavala|chavalilla|cria|adolescente|jovencita|estudiante|joven, cuando tenia
        seis|siete|ocho|nueve|diez|once|doce|trece|catorce|quince|6|7|8|9|10|11|12|13|14|15|16|17|18|20, en el
        colegio|cole|instituto|secundaria|prepa|liceo, a los
        6|7|8|9|10|11|12|13|14|15|16|17|18|seis|siete|ocho|nueve|diez|once|doce|quince anos, historia vieja, cuento
        viejo, en los noventa|ochenta, en mis tiempos, de pequena|pequeno|nina|nino siempre|me, hace siglos|mil,
        hace como|casi|mas|unos? .. ano|anos|meses, hace cinco|seis|siete|ocho|diez|cuatro|tres anos, aquella
        vez|ocasion, del otro sitio|salon|lugar, otro sitio, en el otro sitio, de
        chiquita|pequena|chiquilla|pequeno|chamaca, de mas joven, cuando chica|nina|pequena|chiquita, en otro
        salon|lugar|estudio, con la otra, la navidad pasada, el verano pasado, el invierno pasado, en
        2019|2020|2021|2022|2023|2024|2025, el ano pasado, ano pasado, hace ano{s/}, hace un ano, hace dos anos,
        hace meses, hace un mes, la vez pasada, vez pasada, la ultima vez, ultima vez, antes con otra, otra chica,
        otra muchacha, otro salon, otro lugar, otra parte, otra lashista, otra tecnica, otro estudio, otra senora,
        una vez, en otro, en otra, con otra, mi antigua, mi anterior, la anterior, cuando era, hace tiempo, hace
        mucho, tiempo atras, anos atras, meses atras, en mi pais, de chica, de nina, en el otro
    """,
    "notpast": """
        ni una sola? vez, ni una vez, de una vez, una vez mas|que, otra vez una vez, de una buena? vez, a como era,
        como antes, ya .. una vez, como la vez pasada, igual que|a, como la otra vez, como el ano pasado, como la
        ultima vez, misma que
    """,
    "if": """
        si una|uno es|tiene|fuera|fuese|sufre, si alguien es|tiene, si eres|sos|es|fuera|fuese alergica|alergico, en
        caso de que|haber|tener, cuanto es normal, es normal que dure, por si acaso, si algun dia, si .. llegara{n/}
        a, llegara a, en caso de que, si acaso me, si me llega a, y si soy|tengo|me|se|las|los|amanezco, si manana,
        si llego a, si llegara{n/} a, si soy, suponiendo, si despues, si me, si se, si los, si las, si el, si la, si
        llega{n/}, si pasa, si tengo, si siento, si amanezco, por si, en caso, si hay, si mi, si alguna, que pasa
        si, si un, si yo, si luego, si por, si algo, si alguien, si duele, si pica{n/}, si arde{n/}
    """,
    "notif": """
        preguntan|pregunta|preguntaron|pregunto si, si no fuera|fuese|fueran por, si no me|los|las
        ardieran|picaran|dolieran|lloraran|molestaran, ver si me|las|los|se|te|le|puedo|pueden|podrian|podemos, no
        se si, nose si, no estoy segura si, como si, normal si, ver si, a ver si, incluso si, aun si, si me toco, si
        cierro, si parpadeo, si me tallo, si abro, si puedes, si puede, no se si el
    """,
    "will": """
        puede|puedes|pueden|podria|podrian
        dar|causar|provocar|hinchar|hincharme|hincharse|irritar|irritarse|quedar|quedarte|quedarse|salir|pegar|pegarse|quemar|cegar,
        puede|puedes|pueden|podria|podrian te? dar|quedar, sintomas|senales|signos de, cuanto tarda en
        salir|dar|aparecer, le|les van a salir|dar|arder|picar|hinchar, y si amanezco|despierto, y si se me|le,
        dice|dicen|jura|cree|asegura|insiste que me? voy|vas|va|van|vamos a, dice|dicen|jura|insiste en? que me voy
        a, voy a quedar|acabar|terminar ciega|ciego|sin, juraba que iba|me|se|los|las|iban, jure que iba|me,
        dice|dicen|dijo|cuenta|cuentan que el|la|las|los pegamento|pegante|goma|adhesivo|pestanas|cola
        suelta|sueltan|quema|queman|irrita|irritan|arde|arden|pica|pican|deja|dejan ..
        ciega|ciego|alergia|quema|irrita|arde?, dice|dicen que el pegamento|adhesivo|pegante suelta y
        quema|irrita|arde, le|te|les|nos puede|podria|pueden|va|suele dar|causar|hacer|producir|provocar, iba a
        amanecer|despertar|salir|terminar|quedar|acabar, esperaba|esperando el|la|un|una|los|las?
        ardor|picazon|hinchazon|enrojecimiento|roncha|ronchas|dolor, historias|cuentos|videos de, me
        mete|metia|metian|meten miedo, es normal que
        piquen|arda|ardan|duela|duelan|lloren|llore|lagrimeen|molesten|moleste|raspe|raspen, duele
        quitar{las/la/selas}, duelen al quitar, duele al quitar, duele ponerselas|ponerlas|ponermelas|quitarmelas,
        duele la remocion|el retiro|el retoque|mucho ponerse, va a, podian, podia, van a, me va a, me van a, se va
        a, podria, podrian, puede que, pueden, da alergia, dan alergia, causa, causan,
        escuece|duele|arde|pica|molesta|escocer cuando|al las|te|las?
        pones|ponen|poner|ponerlas|quitar|quitarlas|aplicas|aplican|hacen|ponertelas, seguro
        lloro|llorare|lloramos|llore, voy|vamos a llorar, seguro lloro, provoca, para que no, para evitar, evitar,
        prevenir, miedo de, miedo a, miedo que, pense que, crei que, pensaba que, pensé que, temia, riesgo, es
        normal que pique, sirve para, duele el|la
        proceso|procedimiento|retoque|relleno|retiro|remocion|aplicacion|lifting|laminado|tinte|tratamiento|extension|prueba,
        duele ponerse, duele quitarse, duele cuando las|te|se, duele ponerselas, duele quitarselas
    """,
    "notwill": """
        puede que se? me? este|esten|haya|hayan|sea|sean|tenga|tengan|ande, puede que ya, me duele el|la, me duelen
        los|las, me dolio el|la, me sigue doliendo el|la, puede que tenga, puede ser, van a explotar, va a explotar,
        voy a desmayar, va a reventar
    """,
    "other": """
        mi
        bestie|maestra|alumna|vecinita|senora|pareja|chavo|morra|carnala|carnal|manita|tata|nona|yaya|nana|patrona|colega|hijastra|gemela|melliza|bisnieta|abuelo|compadre|cunadito|novio|suegro|concuna,
        mi companera|companero|amiguita|hermanito|hermanita|sobrinito|primito|nietecito|nietito, mi hijo|hija
        mayor|menor|chica|chico, los ninos, mis hijos|hijas|hermanas|amigas|primas|alumnos|ninos|tias, mi|la
        empleada|enfermera|recepcionista|cajera|doctora, bebe, mi
        bebita|bebito|chiquito|chiquita|chamaco|chamaca|flaco|viejo|viejita|abuelito|roommate, la gente, le|les
        pica|pican|arde|arden|duele|duelen|llora|lloran|molesta|molestan .. a mi|la|su|el|una|un|mis|los|las|otra, a
        mi|una|la|su|otra nieta|nietas|amiga|vecina|cunada|suegra|tia|prima|clienta|companera, una|la|otra
        companera|clienta|chica|muchacha|morra, el gato|perro|caballo, mi gata|perra, se le, se les, en mi
        familia|casa|oficina|trabajo todas|todos|todo, a la|el que le
        pica|arde|duele|molesta|lloran|llora|pican|arden es, al que le pica|arde|duele|pican|arden|lloran es, se
        le|les .. a mi|la|su|una|un|el|mis
        hermana|hermano|mama|papa|companera|companero|amiga|amigo|prima|primo|hija|hijo|suegra|suegro|vecina|vecino|tia|tio|abuela|abuelo|cunada|sobrina|clienta|jefa|jefe|novia|novio|comadre|perro|perra|gato|gata|muchacha|senora|nieta,
        mi|el|la|un|una|su al?
        cunado|tio|suegro|sobrino|vecino|esposo|jefe|paciente|companero|abuelo|papa|gatita|gatito|caballo|yegua|perico|conejo|conejito|cotorro|tortuga|burro|
        vaca|gallo|gallina|doctora|maestra|maestro|muchacha|muchacho|senora|senor|clienta|roommate|cuata|compa|bisabuela|madrastra,
        al|del caballo|perro|gato|conejo|perico|vecino|jefe|nino|bebe|abuelo, a una?
        companera|companero|muchacha|clienta|senora|amiga, a mi|su
        mama|papa|hijo|hija|nene|nena|roomie|hermana|hermano|perro|gata|gatita|abuela|abuelita|esposo|tia|tio|prima|suegra,
        muchacha de la|al, la otra chica|muchacha, esas|estas personas, mi nene, mi nino, mi nina, mi cuate, el
        perro, la perra, al perro, al gato, mi vecino, el vecino, mi jefa, mi profe, el profe, la profe, mi
        entrenador, la villana, el malo, la mala, la protagonista, mi suegra|suegro|nuera, mi ahijado, mi primita,
        mi compa, los de mi, las de mi|la oficina|trabajo, mi gata|gato, mi caballo, la yegua, mi loro, gente
        de|con|que, personas|clientas|alguien con|de|que, a ella|ellas|ellos, la jefa, cuñis, el nene, crio, cria,
        crios, crias, nene, nena, nenes, el peque, la peque, los peques, chiquillo, chiquilla, chavo|chava de,
        la|una chica|senora|muchacha de|del|que, gata, gatita, gatito, perra, paciente, pacientes, mi suegra, amiga
        mia, cuñado, cunado, mi ex, hermana, hermanas, mama, mami, madre, papa, padre, amiga, amigas, amigo, prima,
        primo, esposo, marido, novio, novia, la|el que esta|anda|tiene|trae .. es mi|su|la|el|nuestra, hija, hijo,
        hermano, tia, tio, sobrina, companera, companeras, companero, vecina, jefa, abuela, abuelita, suegra,
        cunada, clienta, clientas, nina, nino, perro, perrita, perrito, gato, ella, el senor, una senora, una chica,
        una muchacha, alguien, ellas, ellos, comadre, nuera, ahijada, cuñada, hijita, hijito, jefe, suegro, yerno,
        nieta, madrina, roomie, esposa
    """,
    "self": """
        las|los dos andamos|estamos|tenemos|traemos|amanecimos, ambas|ambos|nosotras
        andamos|estamos|tenemos|traemos|amanecimos, andamos con, amanecimos, traemos, tuve, anduve, estuve, ahora
        soy yo, soy yo la|el, que|si alguien conteste|responda|ayude|atienda|lea|llame|venga|me|vea|este|pueda|por,
        alguien me|ahi|aqui|puede|que|por|contesta|responde, a mi se me, a mi me, y a mi, es que me, solo que me, lo
        unico es|que, mi ojo, mis ojos, mi parpado, mis parpados, me, yo, estoy, tengo, mi izquierdo, mi derecho,
        mio, mios, a mi, siento, amaneci, traigo, mi cara, mi vista, mis labios, mi lengua, ando, sigo
    """,
    "proxy": """
        fue|estuvo|vino|va|viene contigo, usted|ustedes|tu|ud? la|lo atendio|atendiste|atendieron|atiende, la|lo
        atendio|atendiste|atendieron usted|ustedes|tu|hoy|ayer|hace, le pusiste|puso|pusieron|hiciste|hizo|hicieron
        las pestanas, se las puso|pusiste|pusieron|hizo|hiciste|hicieron usted|ustedes|tu|hoy|ayer|hace, estuvo con
        usted|contigo|ustedes, fue con usted|contigo|ustedes, sus pestanas se las, te|le|les escribe por mi|ella,
        escribo por, le escribo por, te escribo por, soy la mama|hija|hermana|prima|amiga|madre de, soy el
        esposo|novio|hijo|marido de, soy su mama|hija|hermana|esposo|madre|marido|novio|amiga, de parte de, le
        escribe la|el, te escribe la|el, te escribe su, le escribe su
    """,
    "unseen": """
        no|nunca|jamas aparecio|llego|vino|salio|existe|existio|aparecieron|llegaron, no la|lo|las|los
        vi|veo|tuve|tengo|he, brill{a/o} por su ausencia
    """,
    "came": """
        pero no tanto|tan|asi|como|por, y si|sip que? me|se|lo|pica|arde|duele|hincharon|pusieron, pero esto|esta
        es|ya|muy, pero no se me quita|quitan|pasa
    """,
    "unmet": """
        no aparecio|llego|vino|salio, nunca aparecio|llego|vino|salio|la|lo vi|tuve?, no hay, no hay
        ninguna|ninguno, esta|estas vez|veces no, ahora no, contigo no, hoy no, nada que ver, y nada, ni ahi, ni
        cerca, ni por asomo, pero ni, ni de lejos, de eso nada, que va, pero no|nada|ninguna|ninguno|cero, y
        no|nada|ninguna, resulta que no, resulto que no, al final no|nada, no fue asi, no paso, no me paso, nunca
        paso, para nada
    """,
    "toolong": "pero ya? llevo|van|son|es dos|tres|cuatro|cinco|2|3|4|5|6|varios|muchos|mucho, pero tanto|tan|tantos",
    "foundnone": "no hay, no habia, no encontre, no encuentro, no vi nada|ninguna|ningun, y nada",
    "metoo": """
        soy yo, ahora a mi, ahora yo, y ahora|hoy|ya a? mi|yo, y a mi tambien|igual, a mi tambien|igual, yo
        tambien|igual, los|las mios|mias tambien|igual, amaneci igual, me contagio|pego|contagiaron|pegaron, ya me
        dio|contagio|pego, me toco a mi, ahora sigo yo, ya los traigo|tengo yo, hoy me
        pican|pica|arden|arde|duelen|duele|lloran a, a mi me pican|arden|duelen|lloran tambien
    """,
    "minefine": "los mios|las mias estan|andan|van bien|perfectos|perfectas|normales, yo estoy|ando|voy bien|perfecta",
    "minenot": "a mi no, yo no, los mios no, las mias no",
    "report": """
        diria, dirian, decia, decian, me? han|habian dicho, manejar, manejo, tuvo que, tuvieron que, me tuvo que, me
        tuvieron que, me esta llevando, dice, dijo, dicen, dijeron, cree, piensa, me dijo, pregunta, pregunto, noto,
        vio, me llevo, me lleva, me trajo, opina, preguntaron, asustad{o/a}, preocupad{o/a}, ama, encanta{n/},
        encanto, encantaron, reconocio, me ve, me vio, mira, quiere, es enfermera, es doctora, es doctor, es medico,
        es enfermero, escribe, escribo
    """,
    "wept": """
        lagrimas .. lindas|bonitas|bellas|hermosas|felicidad|emocion|alegria|preciosas,
        vengo|venia|venir|salgo|sali|salir|saliendo de llorar, llorar de|en|como un|una
        velorio|entierro|funeral|boda|risa|alegria|emocion|felicidad|pelicula,
        llore|llorando|lloramos|lloro|llora|lloraron de|en risa|alegria|emocion|felicidad|la|el|mi|un|una
        boda|pelicula|peli|cine|novela|serie|despedida|velorio|funeral|entierro|graduacion|concierto|misa?, hecha un
        mar|magdalena|rio|fuente, a moco tendido, como una? magdalena
    """,
    "moving": """
        cebolla, cebollas, pelicula, peli, cine, boda, velorio, funeral, entierro, novela, votos, despedida,
        graduacion, carcajadas, risa, bautizo, concierto, serie
    """,
    "work": """
        trabajo|trabaja|turno de|como enfermera|auxiliar|camillera|recepcionista|asistente|tecnica en|de,
        limpio|limpiando en una|la? optica|oftalmologia|veterinaria, trabajo con
        gatos|perros|animales|ninos|bebes|caballos|mascotas, trabajo en ..
        oftalmologia|oculista|veterinaria|veterinario|optica|quemados, soy
        oftalmologa|oculista|veterinaria|optometrista, hago|haciendo maquillaje de|para
        cine|teatro|terror|zombis|zombies|efectos, maquillaje de
        terror|zombi|zombie|caracterizacion|halloween|efectos|teatro, sangre falsa|de mentira, hago de
        muerta|cadaver|bruja|zombi, todo maquillaje|pintura
    """,
    "tale": """
        vi|lei|mire en internet|tiktok|redes|facebook|youtube|insta|instagram|noticias|google que, lei que, lo lei,
        salio en las noticias, que te mejores, que se mejore, que te recuperes, pronta recuperacion, espero que te
        mejores|sigas|estes, como sigues|sigue|sigas de|del|tu|su, como va tu|su, siento lo de tu|su, en la|una|esa
        peli|pelicula|serie|novela|telenovela, en un video|libro|capitulo|documental, vi|viendo un|una
        video|pelicula|peli|documental|serie, la villana|protagonista|asesina, lo|la lei|leyo en ..
        revista|periodico|foro|libro
    """,
    "dream": """
        sone, un sueno, una pesadilla, en el|mi sueno
    """,
    "history": """
        para|por la|mi|el|su|tu ficha|historial|expediente|formulario|registro, te lo cuento|aviso|digo por|para, se
        lo cuento|aviso|digo por|para
    """,
    "thing": """
        cobro, tarifa, billetera, tarjeta, feed, boleta, ticket, mensualidad, piropo, selfie, selfies, portero,
        porton, local, precio, precios, cuenta, factura, costo, cartera, bolsillo, pagina, enlace, link, app, foto,
        fotos, video, puerta, carro, coche, musica, trafico, cama, silla, envidia, comentarios, liga, archivo,
        imagen
    """,
    "elsewhere": """
        espalda, pie, pies, pierna, piernas, rodilla, cintura, panza, estomago, barriga, bolsillo, cartera, muela,
        muelas, diente, brazo, mano, manos, hombro, cuerpo, oido, alma, corazon, bolsa, nariz, pelo, cabello,
        cadera, regla, menstruales, colicos, unas, codo, tobillo, cola, cuello, quincena, billetera, uñas, cuadril,
        lomo, gluteos, barbilla, menton, frente, tobillos, dedo, dedos, rodillas
    """,
}
