"""Spanish put together: a part of her with what it does, what she can no longer do, what it looks or feels like.

The Spanish for `english_frames`. How phrases are written: `aftercare.core.reading.phrases`.
"""

from __future__ import annotations

CLASSES = {
    "dia": "lunes martes miercoles jueves viernes sabado domingo",
    "molido": """
        vidrio vidrios cristal cristales tierra tierrita polvo arena arenilla azucar sal aserrin ceniza cenizas
        gravilla piedritas piedras migas migajas talco cemento grava
    """,
    "hormiga": """
        hormigas hormiguitas hormiguero bichos bichitos piojos pulgas lana plumas pluma mosquitos zancudos
        ortigas ortiga
    """,
    "sopla": """
        respirar respiro respira respirando respiracion jalar jalo aire oxigeno resuello resollar aliento inhalar
    """,
    "cuesta": """
        cuesta costando cuestan costo trabajo trabajito batallo batallando dificil dificultad apenas poco falta faltan
        faltando mal corta corto cortado cortito agitada agitado rapido rapida pitido pito silbido chiflido ruido
        puedo podemos logro alcanza alcanzo llega entra pasa
    """,
    "hinchar": "hinchar hincharse hincharme hinchandose inflamar inflamarse inflar inflarse hinchandoseme",
    "via": "garganta pecho pulmon pulmones traquea cogote gaznate bronquios",
    "aprieta": """
        cierra cerrando cerrada cerrado cerrandose cerrandoseme cerrandome cerro aprieta apretada apretado apretadito apretandose apretando
        oprime oprimido oprimida opresion presion pesado pesada peso chifla chiflando silba silbando pita pitando
        truena ronca inflamada inflamado hinchada hinchado nudo bola tapada tapado estrecha estrechando angosta
        ahorca ahorcando rara raro dormida pica
    """,
    "boca": "lengua boca labio labios paladar encias trompa",
    "dormida": """
        dormida dormido dormidos adormecida adormecidos adormecido hormiguea hormiguean hormigueo hormigueando
        cosquillea cosquilleo cosquillean pica pican entumida entumidos entumecida entumecidos rara raros gruesa
        gorda pesada anestesiada anestesiados
    """,
    "rostro": "cara rostro labio labios lengua boca cachetes trompa jeta mejillas cabeza cuello",
    "redondo": """
        globo globos pelota balon sandia calabaza monstruo hamster sapo pez luna pan elefante desconocida ardilla
    """,
    "vista": "vista vision",
    "borra": """
        borrosa borroso nublada nublado nubla nublo oscura oscuro oscurecio oscurece doble rara raro mal perdida
        perdiendo perdi fue va yendo apaga apago apagando empanada opaca cansada turbia turbio torcida chueca
        fallando falla falta menos bajo bajando limitada mitad
    """,
    "leer": "leer letras letra pantalla celular cel telefono letreros letrero placas placa semaforo numeros tele caras cara",
    "nopuede": "cuesta apenas casi imposible trabajo batallo",
    "abre": "abrir abrirlo abrirlos abro abre abren abrirse despegar despegarlo despegarlos despega despegan separar",
    "horror": """
        horrores horrible horriblemente insoportable infernal brutal bestial mortal espantoso atroz terrible
        tremendo fuertisimo muchisimo demasiado intenso intensisimo inaguantable barbaro cañon canon salvaje feisimo
    """,
    "duele": "duele duelen dolor dolores doliendo punzada punzadas",
    "cae": """
        cayo cayeron callo cae metio meti metieron entro entraron salpico salpicaron escurrio chorreo gotea
        goteo derramo llego resbalo tiro echaron echo
    """,
    "ojillo": "izquierdo derecho izq ojo ojos ojito ojitos parpado parpados parpadito parpaditos",
    "hinchon": """
        empanadilla empanadillas albondiga albondigas pan panes bollo bollos ranas uva uvas morcilla morcillas
        chorizo papa papas almohada almohadas almohadilla cojin cojines bolillo bunuelo bunuelos pez croqueta
        croquetas arepa arepas pera peras nuez melocoton masa
        sapo sapos rana globo globos boxeador boxeadora pelota pelotas empanada empanadas salchicha salchichas huevo
        huevos ping pescado golpe golpeada madreada panda bolsa bolsas tamal tamales pambazo chino chinos chinita
        sandia ciruela ciruelas puñetazo punetazo abeja mapache
    """,
    "rojizo": """
        cereza cerezas remolacha betabel camaron camarones langosta langostas cangrejo gambas gamba sandia
        sandias ladrillo rabano rabanos marihuano mariguano pimiento granada frambuesa salmon
        jitomate jitomates tomate tomates conejo conejos marihuana mota fumada grifa pacheca desvelada cruda borracha
        vampiro diablo semaforo sangre fresa fresas
        guinda cereza cerezas betabel remolacha ladrillo
    """,
    "quema": """
        chile chiles limon jabon shampoo champu cebolla alcohol vinagre cloro acido fuego lumbre brasa brasas vaporub
        menta jalapeno habanero salsa sal lava mentol
    """,
    "granito": "arena arenita tierra tierrita piedritas piedrita polvo vidrio vidrios basura basurita lija migajas sal",
    "clavo": "aguja agujas alfiler alfileres espina espinas clavo clavos pelo pelito alambre astilla pestana pelusa",
    "claridad": """
        luz luces sol claridad foco focos pantalla lampara faros brillo brillito resplandor flash flashes celu
        destello sol solazo lamparita bombilla bombillo farol
    """,
    "moleste": """
        molesta molestan molestando lastima lastiman duele duelen cala calan mata matan hiere hieren arde arden quema
        queman encandila fastidia tortura ciega pega pegan friega
    """,
    "lente": "lentes gafas anteojos",
    "dentro": "adentro dentro casa oficina trabajo escuela cuarto cama tienda noche",
    "roncha": "ronchas roncha ronchitas urticaria habones granos bolas sarpullido manchas enronchada",
    "cuerpo": """
        cuerpo brazos piernas panza pecho espalda cuello pies patas manos barriga guata torso piel pies cabeza
    """,
}

FRAMES = {
    "breathing!": """
        comida|agua|saliva|bocado|nada .. a medio camino, se me queda|quedan
        atorada|atascada|atorado|atascado|atravesada|a medio, comida|agua|saliva .. no baja|pasa|entra|me baja|me
        pasa, tengo que escupir|escupirla|escupirlo, garganta ..
        soga|lazo|cuerda|mano|manos|apretaran|ahorcaran|ahorcara|estrangulan|cerrara, me
        ahorcan|ahorcara|estrangulan|aprietan .. garganta|cuello, trago|tragar .. vidrio|piedra|pelota|bola, como
        una pelota|bola|piedra|nuez .. garganta, lengua .. alfileres|agujas|hormigas|calambre|corriente, ni la?
        saliva|agua|comida .. pasa|baja|trago|puedo, saliva|agua .. no .. pasa|baja, ni trago|pasa|puedo tragar, me
        ahoga, me quedo sin voz, no me entra, no me sale la voz, aire .. no .. entra|llega|alcanza, como si ..
        apretaran .. cuello|garganta|pecho, me aprietan .. cuello|garganta, no .. <sopla>, <cuesta> .. <sopla>,
        <sopla> .. <cuesta>, <via> .. <aprieta>, <aprieta> .. <via>, <boca> .. <dormida>, <dormida> .. <boca>, no ..
        pasa .. agua|saliva|comida, no .. pasa nada por|al la? garganta|tragar, no .. tragar, trabajo .. tragar,
        tragar .. duele|trabajo|cuesta, como popote, me ahog{o/aba/ando}, quedo sin aire, siento ahogo, me ahorca,
        no me salen .. palabras, inhalador .. no|nada, chifl{a/ando/ido} .. respir{o/ar}, no ..
        pasar|tragar|trago|paso ni? .. saliva|agua|comida|nada, no puedo ni? pasar|tragar, silbido{s/} .. pecho,
        pecho .. silbido{s/}
    """,
    "swelling!": """
        cara entera|completa|toda hecha|como|igual un|una globo|balon|pelota|sandia, lengua ..
        gorda|gordisima|enorme|inflada|hinchada, lengua .. hablo .. borracha|raro|trabada, <hinchar> .. <rostro>,
        <rostro> .. <hinchar>, lengua .. gorda|gordisima|no me cabe|se me pone gorda|gruesa|enorme, no me cabe en la
        boca, cachetes .. inflados|inflada|infla|hinchados, cara .. infla|inflada|hinchadisima, labios ..
        hinchadisimos|inflados, morros|bemba|jeta|labios|labio|boca|lengua|trompa|hocico ..
        doble|triple|grandes|grandotes|grandota|enorme|enormes|gigante|gigantes|inflada|inflados|infla|inflo|inflando|inflandose|hinchada|hinchados|globo|salchichas|cauchos|llantas,
        doble|triple de grandes|grande|gruesos|grueso .. labios|morros|boca|lengua, labios|morros|boca|bemba|cara
        como si me hubiera picado|inyectado, pica de avispa .. boca|bemba|labios|cara, no me reconozco, cara de
        globo, cara .. luna, <rostro> .. como .. <redondo>, <rostro> .. el doble, no me
        reconozco|reconoci|reconocen|reconocia, <rostro> .. <hinch>, <hinch> .. <rostro>, ojo .. fuera de lugar, me
        inyectaron .. labios, labios .. inyectado|inyectados|pato|inyectaron, <rostro> .. parece{n/} .. <redondo>,
        <rostro> .. inflando|inflados|inflaron|inflado|inflada, inflando|inflaron|inflados .. <rostro>,
        face|lips|lip|tongue .. <hinch>, <hinch> .. face|lips|lip|tongue
    """,
    "vision!": """
        veo|veia|vi|viendo|miro dos|2|tres
        carriles|semaforos|luces|caras|personas|carros|coches|dedos|letras|lunas|postes|faros|pantallas|lineas|perros|gatos|cosas|de|imagenes|focos
        .. donde|cuando nomas|solo|solamente? hay|habia|es|deberia, veo|veia|viendo dos|2 de todo|cada,
        veo|miro|viendo como|todo|las|los .. ondas|ondulado|olas|temblando|torcido|chueco|doble|dobles|duplicado, se
        me? duplica{n/}|dobla{n/} las|los|la letras|imagen|luces|caras, veo|miro
        menos|poco|apenas|poquito|oscuro|gris|puro|borrones .. de un|del|con ojo, no distingo|reconozco las|los|la
        caras|letras|colores|gente, perdi|perdiendo|pierdo la? vista|vision, se me fue|va|esta yendo la
        vista|vision, no veo de|por|con un|el|mi|ese|este ojo|izquierdo|derecho, un ojo no me? ve|sirve,
        letras|lineas|renglones|palabras|cosas|paredes|objetos ..
        mueven|bailan|ondulan|tuercen|juntan|brincan|tiemblan|separan|borran|doblan,
        relampago|relampagos|destello|destellos|rayos|chispas|chispazos|fogonazos|flashazos|flashes|lucecitas ..
        ojo|vista|esquina|lado, veo|viendo|como|unos|unas
        relampagos|destellos|rayos|chispas|chispazos|fogonazos|flashazos|flashes|lucecitas|moscas|telaranas|manchas|puntos,
        cortina|telon|velo|sombra negra .. ojo|vista, pecera, como bajo el? agua, vidrio empanado|esmerilado, todo
        .. ondea|ondula|se mueve|baila|tiembla|chueco|torcido, dos de cada|todo, cada .. veo dos, veo dos de, veo
        como por|con|a traves .. nata|vaselina|leche|agua|humo|nube, nada enfoca|enfocado, no me enfoca{n/}, todo
        borroso, tuvo que leerme, me leyeron, como mirar|ver por|a traves .. vidrio|vaso|agua|vaselina|cortina, de
        un ojo no, de un lado no veo, me falta un pedazo, media cara no, <vista> .. <borra>, se me .. la <vista>, no
        .. leer, no veo .. <leer>, no distingo .. <leer>, veo .. doble|dos|manchas|sombras|negro|oscuro|luces, todo
        .. doble|borroso|oscuro|nublado, perdi .. <vista>, deje de ver, no .. veo, dej{e/o} de ver, como .. vidrio
        empanado|sucio|esmerilado, no puedo manejar, deje de manejar, tela .. <ojillo>, nube .. <ojillo>, mancha ..
        <vista>|medio|centro, veo|viendo|miro|mirando|ver ..
        doble|doblado|dos|manchas|sombras|negro|oscuro|destellos|lucecitas|rayos|chispas, todo .. negro|oscuro ..
        <ojillo>, <ojillo> .. todo negro|oscuro
    """,
    "pain!": """
        me parte|revienta|estalla|explota la cabeza .. ganas de vomitar|devolver, <duele> .. no se
        aguanta|soporta|tolera, <duele> .. no se quita con nada, no se aguanta|soporta .. <duele>,
        vomite|vomitar|vomito|vomitando del? dolor, <ojillo> .. que me? explota|revienta|estalla, me
        explota|revienta|estalla .. el|los <ojillo>, me retuerzo .. <duele>, me retuerzo del? dolor, <duele> .. ni
        con ibuprofeno|paracetamol|pastillas|nada|calmantes .. calma|quita|baja|pasa|cede|alivia, ni con
        ibuprofeno|paracetamol|calmantes .. <duele>, <duele> .. no le|se lo? deseo|desearia, no lo|la|los|las|me|me?
        lo? aguanto|soporto|resisto .. duele|dolor|ojo|ojos, duele|duelen|dolor .. no ..
        aguanto|soporto|resisto|puedo, me lo quiero arrancar, quiero|quisiera arrancarme|arrancarmelo ..
        ojo|ojos|dolor, arrancar .. dolor, arrancar .. ojo|ojos, me esta matando|mata .. dolor|ojo, dolor ..
        matando, ojo|ojos .. esta|estan matando, duele|duelen|dolor .. horrores, al mover|moverlo|moverlos ..
        duele|dolor|ojo, mover los ojos .. duele|dolor, me duele mirar|mover|girar .. lado|arriba|abajo|ojo|ojos,
        peor dolor, dolor .. vida, duele|duelen|dolor|doliendo|molesta|molestan|punza
        ojo|ojos|izquierdo|derecho|parpado|mucho|bastante|este|el? izquierdo|derecho|mucho|bastante? al|cuando|si
        lo|los? mover|moverlo|moverlos|muevo|girar|girarlo|girarlos|voltear|mirar|giro, me
        duele|duelen|molesta|molestan .. al mover|moverlo|moverlos|girarlo|girarlos|mirar|voltear, <duele> ..
        <horror>, <horror> .. <duele>, <duele> .. no .. vivir|dormir|deja|aguanto|soporto|puedo ni, matando ..
        <duele>, <duele> .. matando|mata|lloro|llorando|gritar|gritando|vomitar, lloro|llorando|gritando .. <duele>,
        peor que .. parto|parir, <duele> .. pastillas .. nada|no, pastillas .. no .. <duele>, <duele> .. mover ..
        <ojillo>, mover .. <ojillo> .. <duele>, agonia, <duele> .. no me deja|dejan, <duele> .. no .. vivir
    """,
    "glue_in_eye!": """
        se me fue|fueron .. <goma>, <goma> .. se me? fue|fueron .. <ojo>, fue .. <goma> .. al|dentro|adentro, <cae>
        .. <goma> .. <ojo>, <goma> .. <cae> .. <ojo>, <cae> .. <goma>, <goma> .. se me <cae>, <cae> .. gota ..
        <ojo>, <cae> .. gotita .. <ojo>, gota|gotita .. adentro|dentro .. <ojo>, <goma> .. adentro|dentro .. <ojo>,
        me eche .. <goma>, <goma> .. en .. globo, tengo <goma> en .. <ojo>
    """,
    "sealed_eye!": """
        no hay manera|forma|modo de que? se? abra|abran|abrir|abrirlo|abrirlos|despegar|despegarlo|despegarlos, no
        .. <abre> .. <ojillo>, <ojillo> .. no .. <abre>, <nopuede> .. <abre>, no puedo|logro|consigo|alcanzo <abre>,
        no lo|los|me|le puedo|logro|consigo <abre>, no me <abre>, <ojillo> ..
        pegado|pegados|sellado|sellados|soldado|soldados, <ojillo> .. cerrado completamente|totalmente
    """,
    "swollen_shut!": """
        <hinch> .. no .. <abre>|ver, <hinch> .. cerrado|cerrados|cerro|cerraron, <ojillo> .. cerrado de .. <hinch>,
        tan <hinch> .. no .. <abre>
    """,
    "injury!": """
        corte|cortada|tajo|herida|raja|rajada|perforacion|agujero .. en el|mi? ojo|globo|cornea|parpado,
        tijera|tijerita|tijeras|pinza|pinzas|rama|cuchilla|navaja|aguja .. ojo|globo|cornea,
        clavo|clavaron|clavada|clavado|enterrada|enterro|enterrado|encajo|encajada|incrustada|ensarto|metio ..
        globo|cornea, clavo|enterro|encajo|ensarto .. en el ojo, globo del ojo, ojo .. sangra|sangrando|sangre, me
        corte .. ojo, me rasgue|rasguno|rasgune|arano .. ojo|cornea, se me fue la tijera|tijerita|pinza, <ojillo> ..
        sangra|sangrando|sangre, pinza|pinzas|tijera|tijeras .. <ojillo>, <ojillo> .. pinza|pinzas|tijera|tijeras,
        rasgun{o/e} .. <ojillo>|cornea, me picaron .. <ojillo>, me lastimaron .. <ojillo>
    """,
    "blood": "sangra, sangra, sangrando, sangro, sangre",
    "bulging!": """
        ojo|ojos .. salton|saltones|saltado|saltados|brotado|brotados|botado|botados, se me sale|salen|salio
        el|los|mi|mis|este|un|del|de? ojo|ojos|todo, como que se me sale|salen, ojo|ojos .. hacia|para|pa afuera,
        ojo|ojos .. salido|salidos|abultado, ojo .. salido|saltado|saliendo|afuera
    """,
    "faint!": """
        ando|voy|vengo|estoy|sigo|me desvaneciendo|desmayando|mareando|desplomando, desvaneciendo, me cai|caigo|cae
        .. bano|suelo|piso|ducha|regadera|cocina|calle|pasillo|cama, se me va|fue|iba el conocimiento|sentido, me
        voy pal|para|al el? piso|suelo, voy pal piso|suelo, se me van|va|apagan|apaga|fue|fueron las|la luces|luz,
        veo|vi lucecitas|estrellitas|estrellas, se me mueve el piso|suelo, todo .. da|me vueltas|da, casi me
        caigo|desplomo, me desplome, me cai redonda, se me doblan|doblaron las piernas, me quede ida, sudor frio,
        amaneci en el piso|suelo, desperte en el piso|suelo, despert{e} .. tirada, me encontr{o/aron} ..
        piso|suelo|tirada, me fui al piso|suelo, cai al piso|suelo, se me apagaron las luces, me voy pa|para el
        suelo, blackout, casi me desmayo|caigo, me voy a desmayar|caer, todo .. vueltas, me dio ..
        vahido|mareo|desmayo|patatus|soponcio, se me fueron las fuerzas, se me doblan .. piernas, me tuve que
        sentar|agarrar|acostar .. piso|suelo, me tiemblan .. piernas, veo lucecitas y me, vi negro|estrellas, me
        puse palida|blanca
    """,
    "hives!": """
        <roncha> .. <cuerpo>, <roncha> .. todas partes|todos lados, <cuerpo> .. <roncha>, <roncha> .. de pies a
        cabeza, de pies a cabeza, me llene .. <roncha>, llena de <roncha> .. toda
    """,
    "pain": """
        como un? golpecito|golpe|moreton|cardenal|morado, un 1|2|3|4|5|dos|tres|cuatro|cinco de 10|diez, me trae
        loca el dolor, me tiene loca el dolor, punzaditas, pinchacitos, como golpeado, como machucado,
        amoratad{o/a}, moretead{o/os/a}, molesta{n/} al toca{r/rlo/rlos}, molesta{n/} al parpadear, como
        moretead{o/os}
    """,
    "redness!": """
        blanco .. <ojillo> .. rojo oscuro|sangre, <ojillo> .. puro|pura sangre, rojo como sangre, <ojillo> .. color
        .. vino|sangre
    """,
    "swelling": """
        los|lo siento|noto|veo gord{o/os/itos}|inflad{o/os}|hinchad{o/os}, <ojillo> ..
        como|parecen|parece|hecho|hechos .. <hinchon>, como|hecha .. <hinchon> .. <ojillo>, bolsas
        tremendas|enormes|terribles|gigantes|horribles, bolsas .. debajo|bajo .. <ojillo>, unas bolsas, <ojillo> ..
        caido{s/}|pesado{s/}|gordo{s/}|gordito{s/}, <ojillo> .. mas chico|chiquito|pequeno que, un ojo mas .. que el
        otro, <ojillo> .. como .. <hinchon>, como .. <hinchon> .. <ojillo>, parece .. golpe|pegaron|golpearon,
        parezco .. <hinchon>, me dieron .. golpe|madriza|puñetazo, <ojillo> .. chiquito .. <hinch>, amaneci ..
        <hinch>, <ojillo> .. parece{n/} .. <hinchon>, lo|los tengo|traigo gord{o/os/ito/itos}, <ojillo> ..
        gord{o/os/ito/itos}
    """,
    "redness": """
        <ojillo> .. como|parecen|parece|color|de .. <rojizo>, como .. <rojizo> .. <ojillo>, color|colorados como
        <rojizo>, <ojillo> .. hechos un? <rojizo>, <ojillo> .. como .. <rojizo>, parezco .. <rojizo>, <ojillo> ..
        encendid{o/os}
    """,
    "itching": """
        no es que no me? pique|piquen, como|siento .. <hormiga> .. <ojillo>, <hormiga> .. <ojillo>, <ojillo> ..
        <hormiga>, ganas de
        rascarme|rascarmelos|rascar|arrancarme|arrancarmelos|arrancarmelas|restregarme|tallarme|frotarme, me
        tallo|restriego|froto .. <ojillo>, no paro|dejo de rascarme|tallarme|restregarme|frotarme, comezon, no paro
        de rascar{me/}, ganas de rascar{me/los}, rascandome, me rasco, me tallo, tallarme, tallando, quiero
        arrancar{melas/me}, dan ganas de arrancar
    """,
    "burning": "como .. <quema>, <quema> .. en los? <ojillo>, me enchil{o/e/aron}, me echaron .. <quema>",
    "gritty": """
        media|toda la? playa en <ojillo>, trajera|traigo|tuviera|tengo .. playa|desierto en .. <ojillo>, me
        raspe{n}, me? raspa{n}|raspando .. <ojillo>|adentro|cuando|al, sensacion|sensaciones|siento|tengo|traigo ..
        <molido>, como .. polvillo|polvito|tierrilla|pelusa|serrin .. <ojillo>, sensacion de cuerpo extrano,
        polvillo|polvito|tierrilla|serrin dentro|adentro|en, como .. <molido> .. <ojillo>, <molido> molido|molida,
        como si|con|tuviera .. <molido>, <molido> en|dentro .. <ojillo>|adentro, como .. <granito>, <granito> .. en
        el|los? <ojillo>, <ojillo> .. <granito>, siento arena|tierra|piedritas|granitos|polvo
    """,
    "poking": """
        no es que no me? pinche|pinchen, me pinche{n}, me pinchen, me toca|topa|roza|rosa|raspa en? el|los|la
        ojo|ojos|parpado, pelito|pelo|pestana|algo|hilito ..
        picando|picandome|pinchando|pinchandome|clavando|clavandome|clavado|atravesado|adentro,
        picandome|pinchandome adentro|dentro|por, como .. <clavo>, <clavo> .. en el|los|mi <ojillo>, algo .. en
        el|mi <ojillo>, algo .. adentro|dentro|metido|clavado|atorado, traigo algo .. <ojillo>,
        pestana|pelo|pelito|algo .. pica|picando|pincha|pinchando|raspa|raspando .. <ojillo>, pestana .. picando
    """,
    "watering": """
        panuelo{s/} .. <ojillo>, <ojillo> .. panuelo{s/}, con el panuelo todo, me caen|salen|corren|ruedan ..
        lagrimas, lagrimas solas, lagrimas sin querer, como una|un llave|grifo|fuente|cascada|rio, llora
        solo|sola|solito, no para{n/} de llorar|lagrimear, no paro de llorar|lagrimear, lagrimeo, lagrimeando,
        chorro|chorros .. lagrimas|agua, kleenex, ando llorando sin, agua .. todo el dia
    """,
    "discharge": """
        pegote{s/}, pegostio, lagañudo, laganud{o/a/os/as}, amanec{i/en} .. pegad{o/os/as}, despego con agua,
        moquito{s/}, amarill{o/ito} en la esquina|esquinita, baba .. <ojillo>, <ojillo> .. babos{o/os}, moquea{n/},
        <ojillo> .. moco{s/}, costra{s/} .. pestana{s/}, pegosteos{o/a/os/as}, pegostre, pegost{e/es}
    """,
    "rash": """
        descarapel{a/an/ando/ado/andose}, despellej{o/ando/andose/ado}, se me cae la piel, se .. cayendo la piel,
        piel .. papel|lija|escamas, pellejo{s/}, piel .. <ojillo> .. seca|reseca|aspera|pelando|rugosa, <ojillo> ..
        reseco|resecos|aspero|asperos|pelando, <ojillo> .. granos|bolitas|ronchita
    """,
    "light": """
        no es que no me|se? moleste|molesten|lastime|cale|calen|hiera .. luz|luces|sol, <claridad> .. <moleste>,
        <moleste> .. <claridad>, no .. ver|mirar|aguanto|soporto|tolero|puedo .. <claridad>, <lente> .. <dentro>,
        <lente> .. sol .. <dentro>, como vampiro
    """,
    "unwell": """
        no estan|esta|andan|anda .. bien|normales|normal .. <ojillo>, <ojillo> .. no estan|esta|andan|anda|se
        sienten|siente|ven|ve bien|normales|normal, alergic{a/o} a las|estas|esas|lo|algo|eso|esto|el|la
        pestanas|extensiones|que|pegamento|adhesivo|goma, alergic{a/o} a algo|eso|esto, dio|dando|tengo|tuve|hizo
        alergia|reaccion .. <goma>|pestanas|extensiones|producto, me dio|da|esta alergia|reaccion, reaccion rara,
        algo .. mal .. <ojillo>, algo .. raro .. <ojillo>, alergia al? <goma>, alergic{a/o} al? <goma>, me
        cayo|cayeron mal .. pestanas|<goma>, <ojillo> .. no .. bien
    """,
}
