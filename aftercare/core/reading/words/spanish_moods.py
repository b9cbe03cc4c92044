"""Spanish for extensions that fall, for what displeases and pleases, and for what only sounds like a sign there.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "pelon": "pelon pelona pelones pelonas peloncita peloncito calvo calva calvos calvas calvito",
    "mechon": "abanico abanicos racimo racimos mechon mechones manojo manojos grupito grupo tira hilera fila tanda",
    "seva": """
        cayo cayeron caen cae caido caida cayendo solto soltaron sueltan soltando despego despegaron despegan despegando
        vino vinieron fue fueron salio salieron desprendio desprendieron volo volaron volando zafo zafaron aflojo aflojaron
    """,
}

_BALD = """
    ojo|ojos|lado|esquina|esquinita|derecho|izquierdo|izq|der quedo|esta|anda|estan|quedaron|va|medio todo|toda|medio|como? <pelon>|pelado|pelada|peladito|peladita|pelados,
    medio|casi|todo ojo|lado <pelon>|pelado|peladito, <pelon>|pelado|peladito en|de la|el|las|un esquina|esquinas|rabillo|punta|medio|centro|lado,
    <pelon> el|la|los|del? parpado|ojo|ojos|lado, cachito|pedazo|pedacito|parte|espacio <pelon> en|del|arriba? el|la? parpado|ojo|medio,
    <mechon> entero|entera|completo|completa, <mechon> de|del pestanas|parpado|ojo,
    <seva> las|unas|todas|algunas del rabillo|ojo|lado|parpado|medio, <seva> las|unas de la|las|el|abajo|arriba orilla|esquina|punta|medio?,
    faltan|falta|quedan pestanas|varias|pocas|unas en|del los|el|mi? dos|ambos|ojo|ojos|lado|medio,
    juntaron|juntan|pegaron|amontonaron todas|entre en|ellas|si un? pegote|grumo|bola|una?, llevo|llevaron tres|dos|unas|varias|cuatro|media pestanas
"""

_FIGURE = """
    ciega|ciego|roja de|con rabia|coraje|envidia, pegan|topan|chocan|rozan en|con|contra los|las|mis lentes|gafas|anteojos|cejas,
    poca|pocas|mucho|mucha|pura pestana, endurece la|el|mi mirada|cara|gesto|expresion, se me fue el|la? internet|senal|luz|wifi|red|saldo|tren|bus|camion|micro,
    derecho|izquierdo lo|la|las hizo|hicieron|dejo|dejaron, ojos|mirada de muneca|gato|gata|ardilla, color|negro|tono no|muy es|va|oscuro|pega el|con?
"""

_SHEDDING = """
    <pelon>|hueco|huecos|huequito .. ojo|ojos|parpado|lado|esquina izquierdo|derecho|izq|der?, parpado|ojo|ojos|lado .. <pelon>|vacio|hueco, <seva> .. <mechon>|pestanas .. ojo|parpado|lado,
    faltan|perdi|quedan .. pestanas|varias|mitad .. ojo|ojos|lado, faltan|quedan pestanas
"""

_RETENTION = f"""
    {_BALD}, {_SHEDDING},
    cayendose, cayendoseme, despegandose, soltandose, desprendiendose, volandose, yendose, me|le|se van|estan|fueron volando|soltando|yendo|todas,
    anda|andan|esta|estan cayendo|cayendose|soltandose|despegandose|volando, me|le faltan|falta las|varias|unas|pestanas|algunas|tres|dos|muchas,
    cada dia|vez|noche hay|tengo|quedan|son menos, cuantas quedan|me, quedan|queda|sobreviven ocho|diez|seis|siete|nueve|cinco|cuatro|contadas|tantitas,
    perdi|pierdo|perdio|perdimos un|una|la|media|casi|como|todo|varias|tres|dos mitad|manojo|puno|monton|<mechon>|docena|hilera,
    se caigan|caigan tantas|tan|muchas|mucho, hoyo|hoyito|hoyos|claros|hueco|huequito|pelon en|entre la|las|el|mi|mis, calvicie, alopecia,
    <mechon> se|me vino|fue|cayo|despego|solto, vino|fue abajo entera|toda|completa, se me? vino|vinieron|salio|fueron un|una|unas|todas|el,
    se llevo|llevaron unas|dos|tres|varias|cuatro|media pestanas, se me? cruzan|cruzaron|enredan|enredaron|juntaron|amontonan|viraron|voltearon,
    no se peinan|dejan|acomodan, desparpajadas, desgrenadas, alborotadas, torcidos, alambritos, viradas, para|pa los lados, patas arriba, pal|para otro lado,
    ya dieron lo, ya cumplieron, acabaron las pestanas, se me acabaron, aflojaron, flojas, aflojando, mas .. toalla|almohada que,
    gallina|pollo|pollito|pajaro desplumad{{a/o}}, desplumad{{a/o/as}}, perro con sarna, escoba vieja, no me? duro|duraron|duran ni|nada, no duro|duraron ni,
    encontre|encontro|encontraron|aparecio|amanecieron una|dos|tres|varias|unas? pestana|pestanas, pestana|pestanas en la|el|mi|su barba|cara|cafe|sopa|cama|sabana|plato,
    mas vacio|vacia|pelado|ralo, no queda|quedan|quedo nada|ninguna|ni, casi no|ya me? queda|quedan|tengo, despegaron solas, se me abrieron, perdi pestanas
"""

_COMPLAINT = """
    timo, vaya timo|estafa|robo, que robo, robo total, esperaba|esperabamos mas|otra|algo|mejor, me prometieron|juraron|dijeron|aseguraron que|el|un, mentiros{a/o/as/os},
    me|nos hablo|hablaron|trato|trataron|contesto|contestaron|miro feo|mal|como|horrible|golpeado, sin saludar|avisar|disculparse|decir|preguntar, ni gracias|hola|perdon|buenas dijo|dijeron|me?,
    mala cara|gana|leche|educacion, no me|nos escucha|escucho|escucharon|pela|pelo|hizo caso?, le|les|te dije|pedi natural|que|marron|algo|un|una|corto .. puso|hizo|hicieron|pusieron|pusiste,
    se ven|parecen|quedaron|son de plastico|mentira|muneca|muerte|payaso, como de muerta|payasa|carnaval|circo, sin gracia, sali peor|igual|llorando|decepcionada, peor de como|que,
    me veo rara|fatal|horrible|vieja|fea|ridicula|mal|cansada, no soy yo, un ojo|lado mas .. que|q el otro, asimetric{as/o/a/os}, no va|van|pega|pegan con mi|mis,
    falta higiene|de higiene, falta de higiene|respeto|profesionalismo|atencion, sucio, sucia, ruidoso, ruidosa, musica a todo|tope, todo volumen, cafe|te estaba frio|horrible,
    camilla|silla|cama me|esta|estaba dejo|mato|dura|incomoda, hecha polvo, que bronca|coraje|rabia|verguenza|decepcion|asco|mal|barbaridad|descaro, da|dio|daba coraje|rabia|verguenza|pena|cosa,
    mandan|mandas|llegan tantos|demasiados|muchos|mil mensajes|recordatorios|textos, tantos mensajes, mensajes como|cada, ya cansa|cansan, cansada|harta de,
    llevo .. pidiendo|esperando|reclamando, le|les reclame, reclame, mi|el dinero de|devuelto vuelta, quiero mi dinero|plata|lana, devuelvan|devuelveme|regresen, cobran por|hasta,
    mucho cuento, poca pestana, para lo que|q, con lo que sale|cuesta|cobran|pague, lo que sale|pague, endurece, no es|era el|la|lo que|q elegi|pedi|queria|quedamos|dijimos,
    no quiero pelear pero, cambien|cambiaron a la chica, como si .. favor, llego|llegaron tarde con|y|la, pelear, servicio was|pesimo|malo|horrible, nunca more, aparte me|y siento,
    factura ya, pidiendo la factura, no me parece, que me las repongan|arreglen, apenas el|las, hagan bien, sin un peso, yo que te|los recomendaba, duraban un mes, para ser sincera, asi quedaron
"""

_FINE = """
    parezco de veinte|quince|treinta|portada|revista|novela|otra, que barbaro|barbara|trabajazo|manos|belleza|nivel|trabajo, casi le|me da|dio algo, sali|salgo|ando flotando|volando|brincando,
    chuleo|chulearon|chulean hasta|todos|todas|mucho?, me las chuleo|chulearon|chulean|envidian|elogian|elogiaron, mejor trabajo|inversion|set|decision que|de?, se nota la|tu|el mano|trabajo|calidad,
    quiere|quieren las|unas|los mismas|iguales|asi, siguen igualitas|impecables|perfectas|como, buen trabajo, esas|tus|manos manos? valen|de|son oro|santa|angel, quede como nueva|otra|de|una,
    me quito|quitaste|quitaron diez|anos|como, anos de encima, mas joven, rejuveneci, no dejan|paran de decirme|preguntar|chulear
"""

_VOCATIVE = """
    feliz ano|navidad|dia|lunes|martes|miercoles|jueves|viernes|sabado|domingo|cumple|cumpleanos|fin|semana|pascua|fiestas|noche|tarde|viaje, felices fiestas|pascuas,
    buenas|buenos noches|tardes|dias disculpe|disculpa|perdon?, que descanses|descansen|duermas|sigas|te linda|bien|hermosa|reina|bonito|mejores?, fijate que, bendiciones reina|mi|linda,
    ni gracias|bien, era para mi, saludos a la|el|tu|su|todos, gracias a dios, de gracias
"""

_BOOKING = """
    me las? puedes|podes|podrias|puede|pueden emparejar|arreglar|retocar|rellenar|quitar|reponer|peinar|acomodar manana|hoy|el|esta|antes?, puedo pasar|ir|llegar|caer manana|hoy|el|ahorita|esta, turno|cita|espacio|hueco para|el, dame cita|turno|hora, me las repongan|repongas
"""

_QUESTION = """
    me cobras|cobran|cobraras|cobrarian el|la|lo|un|por, hasta que hora, a que hora abren|cierran, estan abiertos|abiertas|cerrados, el|mi cupon|vale|bono vence|sirve|vale|caduca, quien habla|llama|escribe, es normal que, que onda, por que se|me|las, como sigue|esta, hay algo|guagua|bus|estacionamiento, asi se quedan, me explican|explicas
"""

_NOT_SIDE = """
    mas .. que|q el|la izquierdo|derecho|izq|der|izquierda|derecha, menos .. que|q el|la izquierdo|derecho|izq|der
"""

_LEFT = """
    ojo|lado|parpado zurdo, el zurdo
"""

_NOT_STOP = """
    lista del|de super|mandado|compras|invitados|precios, mi dinero|plata|lana de vuelta, dinero de vuelta, gracias por el|los|la mensaje|recordatorio|aviso|mensajes
"""

TOPICS = {
    "figure": _FIGURE,
    "shedding": _SHEDDING,
    "bald": _BALD,
    "retention": _RETENTION,
    "complaint": _COMPLAINT,
    "fine": _FINE,
    "vocative": _VOCATIVE,
    "booking": _BOOKING,
    "question": _QUESTION,
    "notside": _NOT_SIDE,
    "left": _LEFT,
    "notstop": _NOT_STOP,
}
