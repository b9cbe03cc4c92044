"""Spanish signs told without the sign's name; see `english_doings`."""

from __future__ import annotations

from aftercare.core.reading.words.spread import spread

_WORDS = {
    "parpadito": "ojo ojos ojito ojitos parpado parpados",
    "bicho": "lagartija lagarto vibora culebra cocodrilo iguana gallina pollo pavo elefante naranja",
    "erizo": "erizo cactus puercoespin nopal alfiletero cepillo agujita agujitas",
    "golpazo": "codazo codazos punetazo punetazos trompada trompadas madrazo cachetada patada patadas golpazo combo",
    "embarra": "aji chile jabon limon shampoo champu vinagre cebolla mentol alcohol vaporub crema pimienta sal",
    "mirada": "lentes gafas anteojos",
}

_DOINGS = {
    "itching": """
        se me va|van la|las mano|manos sola|solas? .. <parpadito>, ganas de meterme|meter|meterle el|los|las
        dedo|dedos|unas|mano|manos, unas|dedos|manos en el|los|mis <parpadito> todo|toda|siempre|a cada,
        bichitos|bichos|hormigas|hormiguitas|insectos|aranas|pulgas|gusanos
        caminando|caminar|caminaran|caminan|corriendo|andando|paseando, mano|manos|dedo|dedos
        pegada|pegadas|metida|metido|metidos al|a|en el|los|la? <parpadito>, dale que dale, me tapo|amarro|siento
        las manos, rascando|tallando|restregando|frotando todo|toda el|la dia|noche, <parpadito> .. como perro con
        pulgas, pulgas en .. <parpadito>, mosquito|mosquitos|zancudo|zancudos .. <parpadito>, me?
        vuelvo|vuelve|vuelven|traen|trae|tienen loca .. rascar|rascarme|tallarme|picazon
    """,
    "redness": """
        pregunta|preguntan|preguntaron|piensan|creen|cree|parece|parezco ..
        llore|llorado|llorando|fume|fumado|fumando|desvele, ojo|ojos inyectado|inyectados, <parpadito> como
        brasas|brasa, preguntan|pregunto|pregunta|preguntaron|dicen|creen|cree|piensan|parece|parezco ..
        cruda|crudo|peda|borracha|fumada|mariguana|marihuana|trasnochada|desvelada, parece que|como
        nade|nado|estuve|sali .. cloro|alberca|piscina|pileta, como si .. nadado|nadara ..
        cloro|alberca|piscina|pileta, como si ..
        fumad{o/a}|trasnochad{o/a}|desvelad{o/a}|tomad{o/a}|borrach{o/a}|fiesta|parranda|farra|juerga|rumba, si
        estuve|estaba|andaba|habia fumando|fumada|tomando|de fiesta, creen|cree|piensan|piensa|dicen que ..
        fumada|fumo|fume|tome|drogada|pacheca|marihuana, lo blanco ..
        rosa|rosado|rosita|rojo|rojito|colorado|sandia|tomate, blanco del ojo .. rosa|rosado|rojo|color,
        conejit{a/o} por|de|con los? ojos, semaforo en alto|rojo, color sandia|tomate|fresa|cereza
    """,
    "swelling": """
        <parpadito> .. me pesa{n/}, me pesa{n/} los|el <parpadito>, monstruo .. <parpadito>, un ojo mas
        cerrado|chico|pequeno|chiquito|gordo|grande que, <parpadito> ..
        abultad{o/os/a}|esponjad{o/os}|regordete{s/}|rellenit{o/os}, abultad{o/os} .. <parpadito>, <parpadito> no
        me|se|le? baja{n/}|desinflama{n/}|deshincha{n/}, como|de|ojitos
        hamster|sapito|ranita|boxeador|boxeadora|pez|pescado, <parpadito> ..
        conchas|bollos|donas|molletes|mantecadas|hamster, parezco|parece|parecia
        boxeador|boxeadora|sapito|hamster|inflada
    """,
    "watering": """
        la paso|ando|estoy|vivo secandome|limpiandome|secando|limpiando .. <parpadito>|lagrimas, secandome los|el
        <parpadito>|lagrimas, <parpadito> .. escurre{n/}|escurriendo|chorre{a/an/ar/ando/o}|destila{n/}|babea{n/},
        escurre{n/}|escurriendo|chorre{a/an/ando}|destila{n/} .. <parpadito>, lagrima|lagrimas|lagrimon|lagrimones
        afuera|suelta|sueltas|viva|facil|corriendo, gasto|gastando|gaste|llevo|voy|usando|uso ..
        panuelos|panuelo|kleenex|klinex|servilletas|rollo, gotas|goterones|gotitas por la|mi|los?
        cara|cachetes|mejillas, tanto? goteo, ojo{s/} .. gote{a/an/ando/o}, goteando .. ojo{s/},
        rimel|maquillaje|delineador|sombra se me|nos va|corre|cae|escurre|despinta|derrite|fue|corrio,
        rimel|maquillaje|delineador .. escurrido|corrido|chorreado, me corre{n/} por la|las|los
        cara|mejillas|cachetes
    """,
    "discharge": """
        lagrimal{es/} .. amarill{o/a}|blanc{o/a}|baba|lleno|llenos|cosa, algodon|panuelo|almohada|toalla|pad
        sale|salio|amanece|amanecio|quedo|queda amarill{o/a}|verde|suci{o/a}|pegajos{o/a}, cosa
        amarilla|verde|blanca|pegajosa, despego|despegarme|despegar .. pestanas .. agua|manana|tibia
    """,
    "light": """
        cierro|cerrar|cerre|cerrando|bajo|tapo las|todas|la|las cortinas|persianas|ventanas|ventana|cortina, no
        aguanto|soporto|banco el|la|salir dia|calle|afuera|ventana|claridad,
        persiana|persianas|cortina|cortinas|baja|bajas baja|bajas|cerrada|cerradas|abajo todo|toda|desde, con la|las
        persiana|persianas|cortina|cortinas baja|bajas|cerrada|cerradas|abajo, dos pares de <mirada>, <mirada>
        oscuros|oscuras|de .. casa|adentro|dentro|noche|manejo|manejar|encima|super, no puedo|salgo|aguanto sin
        ellos|ellas|lentes|gafas|anteojos, no banco|aguanto|soporto|tolero|resisto ni? la|el|las|los?
        lampara|luz|luces|proyector|pantalla|foco|focos|sol|tele|celular|claridad, <parpadito> no|ni lo|la|los|las?
        soporta{n/}|aguanta{n/}|tolera{n/}|banca{n/}, apago todo|las|la|toda, apag{o/ue/uen/a/ar} ..
        proyector|pantalla|foco|luz|luces|lampara, celular|celu|pantalla|tele|foco me pega|cala|lastima|mata|tumba
        .. <parpadito>, pega en los ojos
    """,
    "poking": """
        <erizo> en|dentro|adentro|por .. <parpadito>|pestana|pestanas, haciendo de <erizo>|aguja|alfiler|espina,
        como si trajera|tuviera|traigo .. basurita|pelusa|pestana|astilla, <erizo> .. <parpadito>
    """,
    "burning": """
        como si me|le|se? hubiera|hubieran|hubiese|haya .. tocado|echado|puesto|untado|caido|frotado .. <embarra>,
        como cuando te|me|se cae|cayo|entra|entro|mete <embarra>, despues|luego de cortar|picar|tocar|pelar
        <embarra>, parece que me? puse|eche|cayo|unte|pusieron|echaron <embarra>
    """,
    "pain": """
        <golpazo> .. <parpadito>, cada|con parpadeo|pestaneo .. ay|grito|mueca|dolor|lagrima, saca|sacan un
        ay|grito|alarido, ni|no me|te? los? lo? puedo|deja|dejo|dejan|dejo tocar|rozar, no|ni me los|lo puedo|dejo
        ni? tocar|rozar
    """,
    "rash": """
        piel de <bicho> .. <parpadito>, <parpadito> .. de <bicho>, <parpadito> .. piel de <bicho>, cae|cayendo la|el
        pielecita|pielcita|cascarita|pellejito|piel, cascaritas|escamitas .. <parpadito>, <parpadito> ..
        cascaritas|escamitas
    """,
    "gritty": "sensacion de arena|arenita|arenilla|tierra|polvo|piedritas, siento|tengo arenita|arenilla|tierrita",
    "unwell": """
        ya estoy|ando|sigo mejor|bien|perfecta del|de ojo|los ojos?, se me
        desinflamo|desinflamaron|deshincho|desincho|deshincharon|calmo|calmaron|desirrito|desirritaron ..
        <parpadito>|izquierdo|derecho, <parpadito> .. se desinflamo|deshincho|calmaron|calmo
    """,
    "vision": "lente|vidrio|espejo|parabrisas empanado .. parpadeo|limpia|limpio",
    "irritated": """
        algo le|me|les pasa|paso|pasando .. <parpadito>, algo tiene|tienen mi|mis|el|los <parpadito>, ni con
        hielo|agua|gotas|colirio|compresas|manzanilla, calor en los|el|mis|mi <parpadito>, ojos|ojo
        raros|raro|mal|fatal, que le|me|les|tiene|tienen|tengo pasa|pasan|paso|esta? a|en|al|con mi|mis|el|los|este?
        <parpadito>, <parpadito> .. pero? no esta{n/} bien|normal|normales, no esta{n/} bien mi|mis|el|los
        <parpadito>, me traen|trae|tienen|tiene loca los|el|mis|mi <parpadito>,
        cuchara|cucharas|cucharitas|compresas|compresa|toallita fria|frias|frio|frios|helada|heladas|congeladas, me
        puse|pongo|poniendo|ponerme hielo|hielos|pepino|pepinos|manzanilla|compresas|te .. <parpadito>, que te|me
        paso|hicieron|hiciste en los|el|tus|mis ojos|ojo
    """,
}

DOINGS = spread(_DOINGS, _WORDS)
