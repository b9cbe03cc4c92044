"""How people say in Spanish what ails their eyes: Mexico, the Caribbean, Colombia, the River Plate, Spain.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "ojo": """
        ojo ojos ojito ojitos parpado parpados parpadito parpaditos ojazo vista eye eyes lid lids lagrimal
        lagrimales pestaña pestana ojillo izquierdo derecho izq
        vistas
    """,
    "goma": """
        pegante pegantes pegamento pegamentos goma cola adhesivo removedor remover acetona primer solvente quimico
        quimicos tinte glue adhesive pega disolvente oxigenada producto bonder resistol liquido kola
    """,
    "cara": """
        cara rostro labio labios lengua boca garganta cachetes cuello trompa jeta mejillas bemba hocico morros
        morro bembas
    """,
    "hinch": """
        hinchad{o} hinchada hinchado hinchados hinchadas hinchadita hinchadito hinchaditos hinchaditas hincho hinchó
        hinchando hincha hinchan hincharon inflamado inflamada inflamados inflamadas inflamo inflamando inflama
        inflamaron inflamadito inflamaditos hinchazon inflamacion hinchadisima hinchadisimo hinchadisimos
        hinchadisimas hinchadota hinchadote
        infla inflao inflada inflado infladas inflados inflando inflo inflaron
    """,
}

SIGNS = {
    "redness": """
        encarnad{o/a/os/as}, sonrosad{o/a/os/as}, ensangrentad{o/os}, en carne viva, venita{s/}
        roja{s/}|rota{s/}|marcada{s/}|reventada{s/}, venas|venitas .. <ojo>, <ojo> .. venas|venitas, capilares, como
        semaforo, como si hubiera fumado, se me puso|pusieron color|como jitomate|tomate|fresa, irritadit{os} y
        roj{os}, ando|estoy|estaba|este|parezco|como fumado|fumada|pacheco|pacheca|grifo|drogada|drogado,
        inyectad{a/o/os}, <ojo> .. inyectad{a/o/os}, color de los ojos .. rojo, sombrita|manchita|rastrito|hilito
        roja|rojo|rosa|rosada|rosado|rosita, ojos de conejo, de conejo, colora de los ojos, colorados, coloradas,
        colorao, coloraos, color guinda, guinda, roj{o/a/os/as}, rojit{o/a/os/as}, rojiz{o/a/os/as},
        rojisim{o/a/os/as}, enrojecid{o/a/os/as}, enrojecimiento, enrojece{n/}, enrojecieron, enrojecio,
        enrojecimientos, colorad{o/a/os/as}, coloradit{o/a/os/as}, coloraditos, rojez, rojeces, rojeses,
        rosad{o/a/os/as}, rosadit{o/a/os/as}, rosit{a/as}, irritad{o/a/os/as} y rojos, como tomate{s/}, inyectados,
        sanguinolento, eritema, <ojo> rosa, rosas los ojos, como conejo, como mariguan{o/a}, como marihuan{o/a},
        rojote{s/}, rojos rojos
    """,
    "redness!": """
        rojo oscuro, rojos oscuros, rojo sangre, muy oscuro el rojo, sangre en .. <ojo>, <ojo> .. sangre, <ojo> ..
        lleno de sangre, derrame .. <ojo>, <ojo> .. derrame, rojo vino, rojo intenso oscuro, granate, <ojo> ..
        sangrando, derrame, color
        guinda|cereza|tinto|vino|granate|borgona|bordo|betabel|remolacha|ladrillo|ciruela|sangre|rubi, rojo
        guinda|cereza|tinto|vino|granate|betabel|remolacha|ciruela|rubi, <ojo> .. como
        vino|sangre|granate|betabel|remolacha|cereza|tinto, rojo .. como vino|sangre
    """,
    "swelling": """
        abotargad{o/a/os/as}, esponjad{o/a/os/as} el|los|del|de|mi <ojo>, <ojo> ..
        esponjad{o/os}|achinad{o/os}|abombad{o/os}|abultad{o/os}|bofo|bofos, achinad{o/os} los|el|mis <ojo>,
        tumefact{o/os}, parpado{s/} .. caid{o/os}, <ojo> .. el|al doble, el doble de grande, crecid{o/os} .. <ojo>,
        <ojo> .. crecio|crecieron|crecido, amaneci .. ojos chiquitos|chinos|gordos, chichon,
        pelota|pelotita|bola|bolota en|de .. <ojo>, deshinch{o/aron/a/an}, desinflam{o/aron/a/an}, ha|han
        hinchado|inflamado, bolsita{s/} arriba|encima|abajo|debajo|en|del, <ojo> ..
        sapo|sapos|rana|bollo|bollos|empanada|empanadas, se me? hace|hizo una bolsa|bolsita|bola|bolita|pelota,
        <ojo> .. inflo|inflado|inflados|inflaron|inflamo|inflamaron, gordit{o/os} el|los|del? <ojo>, <ojo> ..
        gordit{o/os}, se me ve|ven gordit{o/os}, hincharse, hincharseme, hinchandose, hincharme, hinchandome,
        hinchandoseme, inflamarse, inflamarseme, inflamandose, inflamandoseme, amaneci de sapo, de sapo, parece
        empanada|sapo|pelota|globo|ciruela|uva, como empanada|ciruela|uva, pepita en .. <ojo>, pelotita en .. <ojo>,
        bolita dura, bolita en .. <ojo>, bolita .. parpado, bola dura, una bolita en, pepita .. parpado, bolita ..
        <ojo>, bolita que tenia en, hinchazoncita, hinchadit{a/as/o/os}, <ojo> .. botado, botado .. ojo, saliendo
        para fuera, hinchad{o/a/os/as}, hinchadit{o/a/os/as}, hinchadisim{o/a/os/as}, hinchazon, hinchason, a
        hinchar{se/me/}, me hinchar{a/an/ia/ian}, se hinchar{an/a}, inchad{o/a/os/as}, inchazon, inchason,
        hinch{o/a/an/aron/ando/aba}, inflamad{o/a/os/as}, inflamadit{o/a/os/as}, inflamacion,
        inflam{o/a/an/aron/ando}, inflamasion, abotagad{o/a/os/as}, abultad{o/a/os/as}, abultamiento, edema, bolsas,
        <ojo> .. bolita, bulto, orzuelo, perrilla, como sapo, como globo{s/}, como boxeador{a/},
        hinchadot{e/a/es/as}, hinchaba, infladit{o/a/os/as}, inflad{o/a/os/as}, chinit{o/os} de lo, <ojo>
        gord{o/os}, como pelota{s/}, hinchazones, hinche, inflo
    """,
    "swelling!": """
        labio|labios|boca|lengua|cara|jeta|trompa|bemba como|parece|parecen .. picado|picaron|pico ..
        abeja|abejas|avispa|avispas|mosquitos|hormigas, boca|labio|labios|cara .. hubiera{n/} picado, picado ..
        abejas|avispas .. labio|labios|boca|cara, labio|lengua .. me? toca .. nariz|barbilla|menton, lengua .. no ..
        entra|cabe|cierra .. boca, no me entra|cabe en la boca, lengua .. hizo|puso|volvio
        enorme|gigante|gorda|grande|doble, labio|labios|boca|cara|lengua como
        morcilla|morcillas|chorizo|chorizos|salchicha|salchichas|almohada|almohadas|flotador|flotadores|neumatico|globo|globos|pan|panes|llanta|llantas|butifarra,
        labios .. se me? inflaron|hincharon, <ojo> .. botado, botado para|pa fuera|afuera, saliendo para|pa
        fuera|afuera, mas salido que, <ojo> .. salido para|pa fuera, labios .. pato, <cara> .. <hinch>, <cara> ..
        enorme|gigante|deforme|gorda|gordos, cara .. irreconocible, no me reconozco, <hinch> .. <cara>, angioedema,
        <ojo> .. saltado{s/}, se me salta{n/} .. <ojo>, se me sale{n/} .. <ojo>, <ojo> .. salido{s/}, toda la cara
        .., se me sale{n/} el|los|mi|mis|este|un|del|de? <ojo>, deform{e/ada}, <cara> .. como globo|pelota, <cara>
        .. deformad{o/a/os/as}, cara .. monstruo, <cara> .. el doble, se me salen los ojos, ojo salid{o/ito}, <cara>
        ..
        gordisim{o/a/os/as}|gord{o/a/os/as}|gordot{e/a/es/as}|enorme{s/}|inmens{o/a/os/as}|gigante{s/}|grandot{e/a/es/as}|grandisim{o/a/os/as},
        no me cabe{n/} .. boca, no me cabe la lengua, lengua .. no .. cabe, no puedo cerrar la boca, no siento los
        labios|la lengua|la boca|la cara, se me durmio|duerme .. cara
    """,
    "itching": """
        picoteo, rasquera, rascadera, come como|hormigas, me comen los <ojo>,
        quiero|queria|quisiera|necesito|provoca|dan|muero rascarme|rascar|restregarme|tallarme, me restriego, me
        restrego, sobarme|sobo los|el <ojo>, me trae|tiene loca la? comezon|picazon|picor, ha|han picado,
        frotandome, restregandome, tallandome, rascando y rascando, rasca que rasca, dale a rascar{me/}, picadera,
        rasquinita, comezoncita, picazon|comezon|picor|rasquina molesta|molesto|incomoda|horrible|terrible en ..
        <ojo>, me pica hasta|todo|toda, cosquillit{a/as/ita/itas} en|muy|leve|ahi|por|todavia|tantit{o}, una
        cosquillita, cosquillita, picarme, picandome, rascarme, rascandome, rascarmelos, rascandomelos, pique{n/},
        picar, de picar, rasca, rascas, me rasco, comezoncit{a}, picazoncit{a}, picor{cito/}, picazon, picason,
        comezon, comeson, comezonsita, picor, picores, prurito, rasquina, me pica{n/}, me
        pic{o/aba/aban/aron/ando/azon}, me .. picando, pican, pica, picando, pico mucho, picaba, picaban, picaron,
        rascar, rascando, rascarmelo, rasco, piquina, piquiña, escozor y picor, hormigueo en .. <ojo>, cosquilleo,
        cosquillas
    """,
    "burning": """
        quemor, fogaje, ardentia, me abrasa{n/}, flamea{n/}, me|le echaron|echara|echaran|hubieran
        chile|limon|jabon|alcohol|acido|shampoo, como recien cortada? cebolla, echan humo, chisporrotea{n/},
        prendid{o/os} fuego|candela, me hierve{n/} .. <ojo>, <ojo> .. hierve{n/}, <ojo> .. hirviendo, hirviendo ..
        <ojo>, ha|han ardido|quemado, <ojo> .. en|como brasas|llamas|fogon, ardedera, quemadera, fueguit{o/os}
        en|dentro|por, me escose{n/}, <ojo> .. escose{n/}, candelita, candela en|por el|los, aji en|parpados, como
        si tuviera aji|chile|limon|jabon|arena caliente, me puse aji|chile|limon|picante, pica|arde como chile, aji
        en los parpados|ojos, picante en los ojos, arderme, ardiendome, quemarme, quemandome, escocerme,
        escociendome, escocerse, escueza{n/}, escuece, escociera, arde, arden, ardor, ardores, ardia, ardian, ardio,
        ardieron, ardiendo, ardido{s/}, ardid{o/a/os/as}, ardorcito, me quema{n/}, quema, queman, quemando,
        quemazon, quemason, quemaba{n/}, quemadura, quemad{o/a/os/as}, escuece{n/}, escocia{n/}, escozor, escosor,
        escociendo, como chile, como con chile, como fuego, en llamas, ardencia, ardensia, me enchila{n/},
        enchilad{o/os}, caliente{s/} .. <ojo>, <ojo> .. caliente{s/}, como jabon, como cebolla, resquemor,
        ardorsito, arda, ardan, prendidos los ojos, arder, quemar, enchilosos, escocer
    """,
    "pain": """
        me late{n/} .. derecho|izquierdo, derecho|izquierdo .. me late, puntada{s/} en|de|al|cada|que, tiron{/es}
        en|del|de el|los? <ojo>, tirante{s/} los|el <ojo>, <ojo> ..
        tirante{s/}|tenso{s/}|pesad{o/os}|cansad{o/os}|magullad{o/os}|sentid{o/os}, tirantez, pesadez en|de, presion
        en|dentro|detras .. <ojo>, hincada{s/}, hincon{/es}, jincon{/es}, magullad{o/os}, machucad{o/os}, como si me
        hubieran pegado|golpeado|dado, sentidito|sentiditos, me molesta{n/} al|cuando, me incomoda{n/} al|mucho, me
        palpita{n/}, palpita{n/} .. <ojo>, <ojo> .. palpita{n/}, <ojo> .. pulsa{n/}, pulsa{n/} .. <ojo>, ha|han
        dolido|molestado, <ojo> .. late{n/}|retumba{n/}, sensible{s/} al parpadear, sensibilidad al tacto|tocar|en,
        de sensibilidad, me truena{n/} .. <ojo>, dolerme, doliendome, me duele .. <ojo>, duele .. <ojo>, al
        cerrarlo, espinita y, duele{n/}, duelen, dolor, dolores, dolia, dolian, dolio, dolieron, dolorcito,
        dolorid{o/a/os/as}, doliendo, adolorid{o/a/os/as}, adoloridit{o/a/os/as}, doloros{o/a/os/as}, molestia{s/}
        al, punzada{s/}, punza{n/}, punzando, late el ojo, me late{n/} .. <ojo>, <ojo> .. late, sensible al tacto,
        sensibles al tacto, lastimad{o/a/os/as}, lastima{n/}, resentid{o/a/os/as}, lastimando, dolorsito, duela{n/},
        dueln, doler, dolorcillo, me molesta{n/} .. <ojo>, molesta .. <ojo>, hincon{es/}, adolorido, dolida
    """,
    "pain!": """
        llorando|lloro|llore|gritando|chillando a gritos|mares|moco|grito, <ojo> .. insoportable, ni con
        dos|tres|una pastillas|pastilla .. afloja|baja|quita|cede|calma, mirar|girar|mover ..
        suplicio|tortura|martirio|infierno|tormento|agonia, suplicio|tortura|martirio mirar|mover|girar, cada
        que|vez giro|muevo|volteo|miro .. duele{n/}|punzada|dolor, cuchill{o/os/ada}|punal|puñal|daga|taladro|clavo
        .. dentro|adentro|clavad{o/a} .. <ojo>, duele|dolor .. del uno|1 al diez|10, del uno|1 al diez|10 ..
        duele|dolor, un dolor de parto, peor que parir, al mirar para|pa los lados me duele, cuando muevo el <ojo>,
        mirar para|pa .. lados|lado .. duele, duele .. no puedo dormir, dolor .. no duermo|dormi, me duele tanto
        que, duele tanto, duele un monton, duele un monton que, duele demasiado, dolor .. demasiado, dolor ..
        inmenso, dolor .. extremo, duele muchisimo, duelen muchisimo, duele feisimo, duele bien feo, duele
        horriblemente, dolor .. gritar, dolor .. .. insoportable, dolor no se lo deseo, no se lo deseo a nadie, no
        lo soporto, dolor .. no pude dormir, dolor .. matando, dolor insoportable, insoportable .. dolor, dolor ..
        insoportable, duele .. insoportable, duele horrible, no aguanto .. dolor, no aguanto, no soporto .. dolor,
        no soporto, dolor .. no aguanto, dolor .. horrible, dolor .. fuertisimo, dolor fuertisimo, dolor muy fuerte,
        muy fuerte .. dolor, dolor terrible, dolor .. terrible, dolor .. brutal, dolor tremendo, dolor intenso,
        dolor .. intensisimo, dolor intensisimo, muchisimo dolor, dolor severo, me muero de|del dolor, muriendo
        de|del dolor, rabiando de dolor, llorando de|del dolor, lloro de|del dolor, gritando de dolor, dolor .. 10
        de 10, dolor .. 9 de 10, dolor de 10|9, duele al mover, duele cuando muevo, duele mover .. <ojo>, me
        duele{n/} .. mover|muevo, dolor al mover, dolor atroz, dolor .. no me deja dormir, duele{n/} muchisimo,
        dolor espantoso, dolor .. 10/10, duele{n/} .. no puedo ni, dolor .. cuchillo, como cuchill{o/ada/adas},
        dolor bestial, dolor .. bestial, inaguantable, dolor agudisimo, duele cañon, me mata el dolor, retorciendo,
        miro|mirar|mirando|muevo|mover|giro|girar|volteo|voltear .. lados|lado|arriba|abajo ..
        punzada|dolor|duele|tiron|calambre|clava
    """,
    "watering": """
        <ojo> .. humed{o/os}|mojad{o/os}|vidrios{o/os}|empapad{o/os}, vidrios{o/os} .. <ojo>, lagrimita{s/}
        que|sola|solas|todo, corre|ruedan|escurren .. lagrima|lagrimas, sale|salen|salia|brota|brotan
        agua|aguita|lagrimas, lagrimal .. tapado|abierto, rimel corrido .. lagrimas|llorar, un grifo|llave los|mis
        ojos, ha|han llorado|lagrimeado, lloren, paquete|caja|rollo|rollos de
        clinex|klinex|kleenex|kleenes|panuelos|papel|servilletas, clinex .. <ojo>, moquea{n/}
        aguita|agua|transparente, escurriendo, escurre{n/} .. lagrimas|agua, llora y llora, lloran y lloran, <ojo>
        .. no se me? seca{n/}, no se me seca{n/} los|el <ojo>, lagrimeadera, lagrimadera, lloradera, chorreadera,
        moqueadera de? ojos, no para{n/} de chorrear|gotear|escurrir|lagrimear, lloraban, lloraba,
        mejilla{s/}|almohada|cachete{s/}|cuello|blusa|manga empapada{s/}|mojada{s/}, <ojo> .. chorrea|gotea|escurre
        agua|solo|todo, chorrea agua, llave que gotea, ojo .. gotea|goteando|llave|canilla|grifo, canilla, es una
        canilla|llave, se me va en agua, chorreando agua, llorarme, lagrimearme, llorandome, lagrimeandome,
        chorreandome, llorand{o}, lloraron, aguadit{o/os}, llore .. solo, me lloraron, lagrimal .. agua, agua me
        sale, me salen lagrimas, lloros{o/a/os/as}, llorosit{o/os}, llorando, me llora{n/}, llora .. <ojo>, lloran,
        <ojo> .. llora{n/}, lagrimeo, lagrimea{n/}, lagrimeando, lagrima{s/}, lagrimos{o/os}, agua .. <ojo>, <ojo>
        .. agua, lloro de los|un|el ojos|ojo, lloro del ojo, me lloro un|el ojo, aguad{o/os}, me sale agua, sale
        agua, sale|salen|salia|salian el|la|las|una|un|mucha|pura? agua|lagrima|lagrimas, salen lagrimas,
        aguos{o/os}, aguosito{s/}, chorrea{n/}, lloriquea{n/}, lagrimeaban, me lloraba{n/}, lagrimean, lagrimear,
        lagrimeaba, me lagrimea{n/}, no paran de llorar, no para de llorar, llorar, un mar de lagrimas, llave
        abierta, derraman lagrimas, lloron{/a/es/as}, lloroncit{o/os}
    """,
    "discharge": """
        pitarra{s/}, pitarros{o/os}, supuracion, lama amarilla|verde, gelatina en|de .. <ojo>,
        cosa|cosita|liquido|baba|nata blanca|amarilla|verde|espesa|espeso|pegajosa|pegajoso, nata .. <ojo>,
        hilos|hilitos de moco|baba, amanec{i/en/e} .. costra|costras|pegajos{o/os}|laganas, pus en,
        pasta|costra|crema|baba|moco|gelatina|goma|pus|cosa|agua
        amarilla|amarillenta|amarillo|verde|verdosa|blanca|blancuzca|pegajosa|espesa, pasta ..
        pestanas|ojos|ojo|lagrimal, me? limpio y vuelve|sale|aparece, lagana{s/}, legana{s/}, lagañas,
        laganos{o/a/os/as}, leganos{o/a/os/as}, chinguina{s/}, pitana{s/}, secrecion, secresion, secreciones, pus,
        costra{s/}, costrita{s/}, moco{s/} .. <ojo>, moco en, mocos, supura{n/}, supurando, pegajos{o/a/os/as},
        liquido amarill{o/ento}, amarillento{s/}, materia, cosa amarilla, chele{s/}, lagaña, lagañitas, laganitas,
        leganitas, verdos{o/a/as/os}, pegados de, exudado, flujo, segregando, me sale algo amarillo, sale liquido,
        liquidito, cheles, magana{s/}, baba, costroso, costrosos, lagaa
    """,
    "rash": """
        cuartead{o/a/os/as} .. parpado|parpados|piel, piel|parpado|parpados ..
        cuartead{o/a/os}|ajad{o/a/os}|agrietad{o/a/os}|levantada|descamada|pelandose|escamosa|escamosos,
        escamosit{o/a}, costritas en el|la parpado|piel, barros en, granitos|granito|puntitos|espinillas
        en|arriba|alrededor|debajo .. <ojo>, rash en|alrededor|arriba|por .. <ojo>|cara|piel, eccema,
        erupcionad{o/a}, pelando la|mi pielcita|piel, pielcit{a} .. pela|pelando|cae|cayendo, se me pela|pelan, se
        me pelo, piel .. pelo|pelando|pelada|cayendo, me pelo, se pelo, sarpullido, salpullido, erupcion,
        erupciones, granit{o/os}, grano, granos, bolitas, ampolla{s/}, ampollit{as}, descama{n/}, descamando,
        descamad{o/a/os/as}, descamacion, despelleja{n/}, despellejando, pelando, se me pela{n/}, se pela{n/},
        pelandose, pelad{o/a/os/as}, cascarit{a/as}, escam{a/as}, resec{o/a/os/as}, reseca, piel seca, dermatitis,
        manchas, manchit{as}, eczema, alergia en la piel, espinilla{s/}, erupsion, brotad{o/a}, me brot{e/o}, brote,
        brotes, agrietad{o/a/os/as}, costras secas, puntitos, barrito{s/}, salpullid{a/o}, pellejitos, caspa,
        caspita, resequedad
    """,
    "light": """
        molestia{s/} .. luz|sol|claridad|luces, luz .. molestia{s/}, entrecerrar|entrecierro .. luz|sol,
        pantalla|luz|luces|sol|foco|focos|lampara|celular|tele|telefono|claridad|ventana ..
        tapar|taparme|tapo|taparlos|cubrir|cubrirme|cubro|esconder|esconderme|meterme ..
        cobija|manta|sabana|almohada|mano|manos|toalla|ojos|cara, me? tengo que tapar|cubrir|esconder con|bajo
        la|el|las|una cobija|manta|almohada|manos|sabana|toalla, me molesto .. .. luz, molesto .. luz, molestaba ..
        luz, prendo la luz, enciendo .. luz, luz me muero, luz .. .. molesta{n/}, luz .. .. duele{n/}, no puedo ni
        mirar .. ventana, mirar la ventana, luz de la .. molesta, claridad .. molesta|mata|duele, molesta ..
        claridad, me pega la luz, me da la luz .. arde|duele|molesta, sol .. arde|duele, molesta{n/} ..
        luz|sol|luces, molesta{n/} .. la claridad, luz .. molesta{n/}, luces .. molesta{n/}, sol .. molesta{n/}, sol
        .. lastima, fotofobia, sensible{s/} .. luz|sol, sensibilidad .. luz|sol, luz .. duele{n/}, duele{n/} ..
        luz|luces, luz .. lastima, lastima .. luz, no aguanto .. luz|sol, no soporto .. luz|sol|luces|claridad, luz
        .. mata, luz .. insoportable, luz .. quema, luz .. arde, arde{n/} .. con la luz, luz .. hace daño|dano, no
        tolero .. luz, no puedo ver .. luz, la luz .. me cala, me cala la luz, cala .. luz, cala .. sol, no puedo
        mirar .. luz, encandila{n/}, me encandilo, deslumbra{n/}, me hiere la luz, luz .. hiere, pantalla ..
        molesta|duele, lentes oscuros adentro, cortinas cerradas, a oscuras, no puedo .. con la luz
    """,
    "gritty": """
        mugrita{s/} en|dentro, mugre en .. <ojo>, como resec{o/os} .. <ojo>, <ojo> .. resec{o/os}|secos|sequitos,
        resequedad en los <ojo>, como papel de? lija, lija .. <ojo>, siento como? un?
        mugre|mugrita|basura|basurita|piedra|arenita|grano, arenita en los|el|mi|mis dos? <ojo>, siento arenita,
        arenita en, piedrita{s/}, como piedrita{s/}, basurit{a}, vidrito{s/}, vidriecitos, arenilla{s/}, arena, como
        arena, arenos{o/a/os/as}, basurita{s/}, basura en .. <ojo>, como tierra, tierrita, tierra en,
        raspos{o/a/os/as}, raspa{n/}, raspan, sequedad, <ojo> sec{o/os}, secos .. <ojo>, como vidrio{s/}, polvo en,
        raspando, rasposit{o/os}, aspero{s/}, como lija, carraspera en
    """,
    "poking": """
        pinchandome, clavandoseme, enterrandoseme, me toca el|los <ojo>, me chuza{n/}, me rasguna{n/}, me raspa
        el|los <ojo>, pelito|pestana|punta|pelo que me? toca|roza|estorba, me roza{n/} el|los <ojo>, que me
        pinche{n/}, me pinche{n/} nada|algo, me estorba algo|una, se me mete{n/} una|la|las pestana{s/},
        cosita|cosa|pelito|basurita|puntita|algo que me
        raspaba|picaba|pinchaba|punzaba|molestaba|raspa|pincha|punza|clavaba, puntit{a}|punta
        clavada|enterrada|encajada, siento una? puntit{a}, espinita, me estuviera picando por dentro, picando por
        dentro, pica por dentro, piedrita, pelito me pica, un pelo me pica, pincha{n/}, pinchan, pinchazo{s/},
        pinchando, pinchaba, se me clava{n/}, clavad{o/a/os/as}, clava{n/}, clavando, me pica una pestana, pica
        una|un pestana|pelo|pelito, espina, pestana .. me pica, encajad{o/a/os/as}, encaja{n/}, encajando, algo en
        .. <ojo>, algo dentro .. <ojo>, algo adentro .. <ojo>, algo atorado, algo metido, metid{o/a} en .. <ojo>,
        jala, jalan, jalando, tira{n/} .. parpado, tironea{n/}, picotea{n/}, puya{n/}, puyando, hinca, hincan, ojo
        .. tuviera algo, cuerpo extrano, piquete{s/}, me picotea, picandome el ojo, picandome el globo, algo ahi,
        una pestana dentro, pelo dentro, pestana adentro, enterrad{a/as/o}, me entierra, me pincho, pellizca{n/}
    """,
    "vision!": """
        miro|mirando dos de todo|cada, dos de todo, veo|miro doble|dobles, a oscuras del|de ojo|un, ojo .. a
        oscuras, como si .. apagado|apagaran|apagaron .. foco|luz|bombilla, cortina|telon|persiana|velo|manto|sombra
        gris|negra|negro|oscura|oscuro .. mirada|vista, bajara{n/}|cayera|subiera .. cortina|telon|persiana,
        relampaguit{os}|chispit{as}|rayit{os}|destellit{os}|lucecit{as}|flashecit{os} ..
        ojo|orilla|lado|esquina|borde, veo .. humo|niebla|neblina|nube|nubes|nublado|borroso|empanado .. no se
        quita, veo como con humo, con humo, vista .. humo, como humo, veo ..
        doble|negro|oscuro|luces|manchas|destellos|sombras|halos, vista .. doble|oscura, se me nublo toda, vista ..
        perdid{a/o}, no se ve nada, ojo .. no ve, veo .. por la mitad, media vista, no veo .. ojo, casi no veo, veo
        todo, no veo, no veo nada|bien|casi, no puedo ver, no alcanzo a ver, perdi la vista|vision, perdiendo la
        vista|vision, veo doble, vision doble, vista doble, doble vision, veo dos, veo
        lucecitas|destellos|luces|luce|chispas|chispitas|rayos|rayitos|manchas|puntos|puntitos|moscas|sombras|sombra|negro|oscuro|halos|ondas|ondulado|todo,
        destellos, me quede cieg{a/o}, quedando cieg{a/o}, cieg{a/o}, ceguera, lineas onduladas, ondulad{o/as/os},
        se me fue la vista, se me va la vista, se me oscurec{e/io} .. vista|vision|ojo, se me apag{o/a} la vista|el
        ojo, moscas volantes, sombra en .. <ojo>, mancha negra, una cortina, una sombra, no distingo, no enfoco, se
        oscurecio, veo menos, veo mal, veo raro, veo chueco, flashazos, fogonazos, no miro nada|bien, no miro, miro
        doble, vision .. oscura, oscura la vision, tunel, velo .. <ojo>, un velo, no logro ver
    """,
    "vision": """
        borros{o/a/os/as}, nublad{o/a/os/as}, nubl{a/an/o}, empanad{o/a/os}, vista cansada, como neblina, neblina,
        veo como .. niebla|neblina, niebla, nublosa, nubladita, nubladit{o/a/os}, nuboso, opac{o/a}, vision mala,
        nublazon
    """,
    "breathing!": """
        bola|nudo|piedra|pelota|tapon|algo en|atorado|atorada la|mi garganta|gaznate, no me baja|pasa|entra ni ..
        agua|saliva|comida, no .. coger|agarrar|tomar|jalar aire, no puedo coger|agarrar|tomar|jalar aire, sin poder
        respirar|tragar, asfixio, me asfixio, no me llega aire, falta respiracion, respirar .. dificil|mal|feo,
        tragar .. dificil, trago mal, no trago, garganta .. hinchada|inflamada|cierre, lengua ..
        rara|gorda|grande|pesada, labios .. adormecid{os}, cosquilleo .. lengua|labios, lengua .. cosquilleo,
        hormigueo .. lengua|labios|boca, ahogo, garganta .. cerradita, garganta .. apretadita, pito .. pecho, pecho
        .. pito, silbidito, me falta aire, respirar .. pito, pica la garganta, me pica .. garganta, garganta ..
        pica, garganta .. rara|raro, voz .. rara, respiro .. dificil, trabajo para respirar, ahogando, no me entra
        .. aire, no entra .. aire, no pasa .. aire, me entra poco aire, respirando .. mal, apretad{o/ito} ..
        pecho|garganta, cerrazon .. pecho|garganta, garganta .. cerro, no puedo respirar, no respiro, no respiro
        bien, cuesta .. respirar, cuesta .. tragar, dificil respirar, dificultad .. respirar, dificultad .. tragar,
        dificultad respiratoria, problema{s/} .. respirar, trabajo respirar, me cuesta .. aire, falta .. aire, me
        falta el aire, falta de aire, sin aire, me ahogo, me estoy ahogando, se me cierra .. garganta, cerrando ..
        garganta, cierra .. garganta, garganta .. cerrad{a/o}, garganta .. cierra, garganta .. cerrando, garganta ..
        apretada, se me cerro .. garganta, nudo .. garganta, no puedo tragar, no puedo pasar saliva, silbido ..
        pecho, silba .. pecho, me silba, pecho .. silb{a/ido/ando/idos}, pecho .. apretad{o/ito}, pecho .. aprieta,
        aprieta .. pecho, opresion .. pecho, pecho .. cerrad{o/ito}, presion .. pecho, pecho oprimido,
        hormigue{a/o/an} .. lengua|labios|boca, lengua .. hormigue{a/o/ando}, lengua .. dormid{a/o}, lengua ..
        adormecida, boca .. hormigueo|dormida|adormecida, labios .. dormidos|hormiguean|hormigueo,
        asfixi{a/o/ando/andome}, sofoc{a/o/ada/ando}, sibilancia{s/}, anafilaxia, choque anafilactico, shock
        anafilactico, respirar me cuesta, respiro mal|con, jadeando, agitada .. aire, tragar .. cuesta, me pica la
        garganta y la lengua, lengua .. pica, pica la lengua, lengua .. trapo|estropajo|corcho|plastico|carton,
        cuesta .. pasar .. saliva|comida|agua|bocado, amarrado .. pecho|garganta, pecho .. amarrado, respiro ..
        trapo|popote|almohada, salbutamol, ventolin, nebuliz{ar/aron/arme/ador}, ahorcando .. cuello|garganta, manos
        .. cuello|garganta
    """,
    "in_eye": "en|al|dentro el|los|mi|mis|del <ojo>, al <ojo>",
    "glue_in_eye!": """
        acetona|pegamento|removedor|adhesivo|pegante|goma|primer .. me cayo|entro|salpico|escurrio|metio
        adentro|dentro, me cayo|entro adentro .. quema|arde|pica|duele, me cayo adentro, cayo pegante, pegante ..
        <ojo>, me cayo .. <ojo>, me entro .. .. <ojo>, liquido .. <ojo>, me salpic{o/aron}, cayo .. <goma> .. <ojo>,
        cayo <goma>, me cayo .. <goma>, <goma> .. en|dentro|adentro|al .. <ojo>, entro .. <goma>, me entro ..
        <goma>, metio .. <goma>, se metio .. <goma>, <goma> .. me entro, <goma> .. cayo, <goma> .. se me metio,
        <goma> .. salpico, salpico .. <goma>, salpico .. <ojo>, gota de <goma>, gotita de <goma>, chorreo .. <goma>,
        <goma> .. escurrio, escurrio .. <goma>, cayeron .. <goma>, entra <goma>, cayendo <goma>, <goma> .. toco ..
        <ojo>, se me fue .. <goma>, se me fue .. .. <ojo>, <goma> al? <ojo>, se me fue <goma>
    """,
    "sealed_eye!": """
        sin poder abrir|despegar|separar .. <ojo>, sin poderlo|poderlos abrir, no he podido abrir .. <ojo>, no puedo
        ni abrirlos|abrirlo|abrirme, ni abrirlos, no puedo .. abrirlos|abrirlo, no hay forma de
        abrirlo|abrirlos|abrir, no despega{n/}, no se despega{n/}, parpados .. pegados, imposible abrirlo|abrirlos,
        pestanas de arriba .. abajo, no puedo abrir .. .. <ojo>, lo siento pegado, los siento pegados, cerrado
        completamente, no lo abro, no los abro, no me puedo abrir, no puedo abrir .. <ojo>, no puedo abrirl{o/os},
        no lo puedo abrir, no los puedo abrir, no puedo ni abrir, no abre, no abre{n/} .. <ojo>, <ojo> .. no
        abre{n/}, <ojo> .. no se abre{n/}, no se me abre{n/}, no me abre{n/}, no se abre{n/}, no logro abrir, no
        consigo abrir, <ojo> .. pegad{o/os}, <ojo> .. pegadit{o/os}, pegad{o/os} .. <ojo>, pegaron .. <ojo>, pego ..
        <ojo>, <ojo> .. sellad{o/os}, sellad{o/os}, <ojo> .. cerrad{o/os}, parpados pegados, se me pegaron los
        parpados|ojos, despegar .. <ojo>|parpados, no puedo despegar, cuesta abrir .. <ojo>, imposible abrir
    """,
    "swollen_shut!": """
        inflo|infla|hincho|hincha|inflado|hinchado tanto que .. no|ni abre|abro|puedo|veo, <ojo> ..
        inflo|hincho|inflaron|hincharon .. ya? no|ni .. abre|abro|abren, tan hinchad{o/os}|inflad{o/os} que .. no|ni
        .. abre|abro|abren|puedo, cerraron .. <ojo> .. <hinch>, cerraron .. <ojo>, se me cerro .. <ojo>, se me
        cerraron, cerro .. <ojo>, <hinch> .. no puedo abrir, <hinch> .. no abre, <hinch> .. cerrad{o/os},
        cerrad{o/os} .. <hinch>, <hinch> .. no lo abro, <hinch> .. no se abre, cerro de lo hinchado, cerrado por la
        hinchazon
    """,
    "hives": "roncha{s/}, ronchit{a/as}, urticaria, habones, habon, ronchon{es/}, ronchota{s/}",
    "hives!": """
        urticaria|ronchas|sarpullido|salpullido|habones
        generalizada|generalizadas|generalizado|regadas|regado|dondequiera|parejo, ronchas .. parejo|dondequiera,
        ronchas .. todo|toda|todos|cuerpo|brazos|panza|piernas|pecho|espalda|barriga|cuello, urticaria ..
        todo|toda|cuerpo|brazos, llen{a/o} de ronchas|urticaria|granos|sarpullido, sarpullido ..
        todo|cuerpo|brazos|pecho, ronchas por|x tod{o/as}, cuerpo .. ronchas, cuerpo .. urticaria, picazon en todo
        el cuerpo, me pica todo el cuerpo, enroncha{da/do/}, habones .. todo|cuerpo
    """,
    "faint!": """
        desplomar{me/se/nos}, me desplome, desmayar{me/se}, sigo|estoy|sigue|seguia viendo todo? negro, me ha?
        encontrado|encontro|hallaron|encontraron .. en el suelo|piso, redonda al suelo|piso, me dio la palida|un
        yeyo|yeyo|el yeyo|sirimba|una sirimba|chungo|jamacuco|telele|bajon, me tuvieron que|q
        levantar|recoger|sostener|agarrar|cargar, levantar|levantaron|recogieron del|de suelo|piso, me voy|fui|iba
        al|pal|para piso|suelo, se me fue|va|iba el? mundo, casi me voy al|pal|de piso|suelo|boca, me maree .. cai,
        me cai redonda|redondo, desmayar, me siento desmayar, voy a caer, me caigo, casi me caigo, me falla{n/} ..
        piernas, piernas flojas, sudando frio, palida y, veo estrellitas, se me va la cabeza, me va la cabeza,
        cabeza .. vueltas, desmay{o/e/a/ada/ado/ando/aba/arme}, me desmaye, desmayarme, casi me desmayo, mareos,
        mareo, maread{a/o/ita/ito}, me mareo, mareando, desvanec{i/io/er/imiento/iendo}, desvanecida, me voy a caer,
        se me baja la presion, se me bajo la presion, todo da vueltas, todo me da vueltas, me da vueltas, perdi el
        conocimiento, perdi el sentido, sincope, colapse, sudor frio, patatus, soponcio, vahido{s/}, me voy de lado
    """,
    "injury!": """
        rasgun{o/e/aron} .. <ojo>, <ojo> .. rasgunado, cornea rayada|raspada|lastimada|danada|herida|rota|cortada,
        corte en .. <ojo>, cort{e/o/aron} .. <ojo>, pinza{s/} .. <ojo>, con la pinza, con las pinzas, me pico .. con
        .. pinza, herida en .. <ojo>, <ojo> .. herida, perfor{o/ado/ada}, ulcera, me lastimo .. con la pinza
    """,
    "pupil!": """
        nina del ojo .. grande|grandota|enorme|chica|chiquita|distinta|dilatada, lo negro ..
        grande|grandote|enorme|mas|gigante, un ojo dilatado, solo ojo dilatado, ojo .. dilatado, ojos .. dilatado,
        circulo negro .. grande|enorme|mas, bolita negra .. grande|enorme|mas, pupila .. .. ..
        grande|dilatada|diferente|chica|distinta|enorme|otra, pupila, pupila ..
        grande|dilatada|diferente|chica|distinta|enorme, pupilas .. diferentes|desiguales|distintas|tamano, una
        pupila, pupilas desiguales
    """,
    "irritated": """
        molestia{s/}, algo no anda|esta|va bien, incomod{os} los|mis|del|de <ojo>, <ojo> .. incomod{os},
        irritad{o/a/os/as}, irritadit{o/a/os/as}, irritacion, irrita{n/}, irrito, irritaron, irritando, reaccion,
        alergia, alergic{o/a/os/as}, reaccione, infeccion, infectad{o/a/os/as}, conjuntivitis, sensible{s/} ..
        <ojo>, <ojo> .. sensible{s/}, <ojo> .. rar{o/os}, <ojo> .. mal, mal .. <ojo>, <ojo> .. fe{o/os}, <ojo> ..
        fatal
    """,
    "fever": "fiebre, calentura, temperatura, escalofrios, febril",
    "hot_lid": "<ojo> .. caliente{s/}, caliente{s/} .. <ojo>",
    "headache": "dolor de cabeza, duele la cabeza, cabeza .. explota|revienta|duele, migrana, jaqueca",
    "sickly": """
        arcadas, arcada, nauseas, nausea, ganas de vomitar|devolver, vomitando, vomite, estomago revuelto, asco al
        estomago, devolviendo, vomit{o/os/ando/e/ar}, ganas de vomitar, me devuelvo, asco, guacareando
    """,
    "hospital!": """
        voy al hospital, voy a urgencias, voy a emergencias, estoy en urgencias, estoy en emergencias, estoy en el
        hospital, camino al hospital, camino a urgencias, me llevan al hospital, ambulancia, llame al 911, epipen,
        adrenalina
    """,
}
