"""What Spanish replies are about, figures of speech, praise, stops and the sides.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "sufre": """
        duele duelen arde arden ardiendo pica pican quema queman sangran lloran llorando lloro llore tiembla tiemblan
        hinchada hinchado inflada inflado ciega ciego borrosa borrosas roja rojo rojas rojos colorada muero desmayo desmaye maree
        mareada temblando lagrimas irritada rojisimos rojisimo cieguita hormiguea hormiguean cosquillea ahogo
    """,
    "elogio": """
        bonita bonitas lindas linda bellas bella hermosa hermosas guapa guapas divina divinas preciosa preciosas
        belleza hermosura orgullo felicidad emocion alegria amor envidia celos likes piropo piropos halagos cumplidos
        risa coraje rabia bronca impotencia verguenza nervios desvelo fotos aplausos
    """,
    "cosa": """
        feed insta instagram tiktok facebook whatsapp bolsillo cartera billetera tarjeta arroz frijoles pollo comida
        cena pan torta tortilla tortillas cafe leche curiosidad envidia ego orgullo
    """,
    "aviso": """
        mensaje mensajes mensajito mensajitos promocion promociones promo promos publicidad propaganda oferta ofertas spam
        notificacion notificaciones alerta alertas anuncio anuncios recordatorio recordatorios aviso avisos texto
        textos sms correo correos whatsapps wasaps encuesta encuestas boletin
    """,
    "manda": """
        mandar mandarme mandes manden mande manda mandando enviar enviarme envies envien envie enviando escribir escribirme
        escribas escriban escriba escribiendo contactar contactarme contactes contacten contacte molestar molestarme molesten
        molestes moleste llamar llamarme llames llamen llame textear textearme texteen mensajear mensajearme mensajeen
        notificar notificarme notifiquen avisar avisarme avisen spamear spameen buscar buscarme busquen hablar hablarme hablen
        insistir insistan insistiendo mandeis escribais envieis recordarme
    """,
    "sacar": """
        sacar sacarme saquen saquenme sacame saqueme quitar quitarme quiten quitenme quitame quiteme borrar borrarme borren borrenme
        borrame borreme eliminar eliminarme eliminen eliminenme eliminame elimineme bajar bajarme bajenme bajame
        remuevan remuevanme tachen tachenme tachame desapunten desapuntame borradme quitadme sacadme
    """,
    "invisto": """
        hora dia mensaje enlace horario cita boton pagina direccion numero entrada puerta correo foto
        comprobante opcion transferencia pago disponibilidad espacio problema diferencia resultado anuncio letrero timbre
        recibo agenda calendario lugares cupo sentido motivo razon caso
    """,
    "lista": "lista listas contactos agenda base sistema telefono celular cel whatsapp numero registro grupo difusion",
    "fecha": """
        lunes martes miercoles jueves viernes sabado domingo manana hoy semana mes tarde quincena siguiente otro otra proxima
        proximo noche ahorita 15 20 28 30
    """,
}

TOPICS = {
    "figure": """
        no me|te|le|nos digas|diga|digan|digais, alergic{a/o} al
        latex|niquel|polen|polvo|pescado|gluten|mani|cacahuate|marisco|metal|camaron|perfume|huevo|aguacate|sol|acrilico,
        alergic{a/o} a la
        penicilina|aspirina|nuez|leche|lactosa|soya|soja|plata|bisuteria|henna|picadura|abeja|lana|fresa|dipirona,
        alergic{a/o} a los
        mariscos|frutos|gatos|perros|acaros|camarones|cacahuates|antibioticos|metales|pescados|guantes|perfumes|huevos,
        alergic{a/o} a las nueces|abejas|avispas|picaduras|fresas|almendras|sulfas|curitas, alergia al
        latex|niquel|polen|polvo|gluten|mani, alergia a la|los|las
        penicilina|mariscos|nueces|abejas|aspirina|gatos|perros|leche|picaduras|frutos, que es|son
        el|la|los|las|un|una? blefaritis|conjuntivitis|queratitis|orzuelo|perrilla|chalazion|cianoacrilato|uveitis,
        puede|puedes|pueden|podria uno|una|alguien? ser|dar|dar{te/le}|salir alergic{a/o}|conjuntivitis|orzuelo{s/},
        puerta|casa|letrero|carro|coche|bolsa|caja|liston|sillon|toldo|pared|camion|blusa|vestido|falda
        rosa|roj{o/a}|rosad{o/a}, pelar|pelo|pelando|pele
        papas|patatas|cebolla|cebollas|ajo|zanahorias|fruta|mangos|camarones, ojo|ojos cerrados|cerrado ..
        recomiendo|vuelvo|confio|voy, recomiendo|vuelvo|confio|voy|iria .. con? los? ojos cerrados, abrir y cerrar
        de ojos, no|ni pegue|pego|pegar|pegado|pegamos el? un? ojo|ojos|pestana, mal de ojo, buen ojo,
        echar|echa|echale|echame|eche|echo|hecho un|el ojo, echarle|echar un? ojo, ojos que no ven, dichosos los
        ojos, ojo de aguila|halcon|loca, cuatro ojos, quitan|quita|quitar|quitaban|quito los|el ojo|ojos de encima,
        ojo por ojo, comer|comen|come con los ojos, queme|quemo|quemando|quemarme|quema las pestanas, pestanas
        quemadas estudiando, parte|partio|duele|dolio|dolor el|en|del alma, me duele|dolio
        decir|decirte|decirles|irme|dejarte|dejarlas|quitarmelas|despedirme|perderme|no, duele la
        verdad|despedida|distancia|ausencia, dolor ajeno, dolor de cabeza
        con|el|la|para|conseguir|encontrar|estacionar, picada|pique|picado|piquen|engancho con la|el|esa|esta|mi
        serie|novela|juego, me pico el bichito|mosquito|zancudo|bicho, pica|pican la|el|las|los
        comida|salsa|chile|ceviche|tacos|sopa|mosquitos|zancudos|moscos, al que le pique, quien se pica, se|te pica
        pica, rascandome|rascarme|rasco|rascando la|el|las panza|barriga|bolsillo|guata|huevos|bolas|cabeza|espalda,
        hincha|hinchan|hincharme|hinches|hinchar las|los pelotas|bolas|huevos|ovarios|cojones, hincha de, no
        hinches, lagrimas de cocodrilo, pano de lagrimas, la llorona, ahogada|ahogado|ahogo|ahogandome en|de|con
        trabajo|deudas|pendientes|tareas|un|vaso|exámenes|examenes, soga|agua al cuello, hasta el cuello, nudo en la
        garganta .. emocion|felicidad|alegria|despedida, no cabe|quepo en el|mi pecho, no la|lo|los|las trago,
        tomar|dar|darme|toma un respiro, sin respiro, marea|mareo|mareada|marean con|de tanto|tanta|tantos|tantas,
        me marea el|la|tanto|ese trafico|gente|papeleo|cuenta|camion, no veo|miro|encuentro
        el|la|los|las|mi|tu|su|ninguna|ningun|tus|sus <invisto>, no los|las|te|lo|la veo hace|desde|hasta|nunca,
        hace un? calor que|y, me quemo|queme con el|la sol|plancha|sarten|horno|comal|aceite|cafe|playa, quemada
        del|por el sol, quemadura de sol, quemo|queme el|la|los arroz|pollo|comida|cena|frijoles|mano|lengua|cafe,
        rojos|roja|rojo|rojas como|de mi|el|la|los bolso|vestido|carro|bolsa|zapatos|labial|blusa|outfit|unas,
        vestido|labial|blusa|outfit|bolso|carro|tacones|cabello|pelo|unas roj{o/a/os/as}|rosad{o/a/os/as}|rosa, ojos
        rojos en|de la|las foto|fotos|selfie, pestanas|extensiones hinchadas|inflamadas, cita a ciegas, ciega de|por
        amor|amores, a ciegas, no me quejo, sin aire en|acondicionado, aire acondicionado, faltan|falta
        manos|tiempo|dinero|plata|palabras, se me cae|caia la cara de, cara de pocos, duele|dolor .. garganta ..
        de|por tanto? gritar|cantar|hablar|reir, alergic{a/o} al?
        latex|polen|polvo|gatos|perros|mariscos|camaron|aspirina|niquel|perfume|penicilina, me|se|le|te? <sufre> ..
        de|lo|con lo|la|tan|tanto|tanta|tantos|tantas|puro|pura? <elogio>, me|se|le|te? <sufre> de <elogio>,
        me|se|le|les arde{n/}|quema{n/}|pica{n/}|quemo|ardio|duele{n/} el|la|los|las|mi|mis? <cosa>, se me esta?
        quema{ndo}|pasa|pega el|la|los <cosa>, le|les quema{n/} la mirada, hirvio|hierve|hierven|hirviendo ..
        sangre, sangre hirviendo|hierve|caliente, casi me|te|se deja|dejas|dejan|quedo ciega|ciego, ciega|ciego
        estaba|estuve|andaba|fui .. cuando|al, garganta de|por tanto gritar|cantar|hablar|bailar|reir, garganta ..
        de|por tanto? gritar|cantar|hablar, vista cansada de siempre|toda|nacimiento|por,
        rojos|rojo|hinchados|hinchado|colorados|irritados|irritado no los|lo veo, picazon|comezon|ronchas|picaduras
        es|son de|por el|los|un|unos mosquitos|zancudos|mosquito|zancudo, picadura|picaduras de
        mosquito|zancudo|mosquitos|zancudos, no abre{n/} .. portero|porton|puerta|timbre|reja|puertas|negocio, me
        dejaste|dejas|dejo|dejan sin aire|aliento|respiracion|habla|palabras, dolor|dolores de
        muela|muelas|espalda|barriga|panza|rodilla|rodillas|regla|ovarios|pies|huevos|corazon|codo, lagrimas con|por
        el|la cobro|precio|cuenta|factura|costo, fue|fueron|era|es|sera|seria|sea el|la|por|del? <goma>, no me
        cae{n/} bien, ojos en blanco de|por|cuando, llore|lloro|llorado|lloramos en|por el|la|mi
        velorio|boda|entierro|funeral|pelicula|telefono, me lloraba por|al telefono, me vio|vieron y le|les
        ardio|arde|dolio|pico, pestaneando como|a, olas del mar, cayo|caiga gordo|gorda|mal|bien la|el|esa|ese?, se
        me fue|corto|va|iba el aire|aliento de|con|por la|lo
        emocion|linda|lindas|felicidad|risa|impresion|bellas|guapa, sin aire de lo|la emocion|lindas|bellas|risa,
        ojos vemos, en un abrir y cerrar, de locura, una locura, que locura, locuras,
        arden|arde|ardiendo|ardo|muero|mueren de celos|envidia|rabia|curiosidad|ganas,
        pique|picar|picando|picaba|pico medio|un|una|dos|tres|la|el|las|unas? kilo|kilos|de?
        cebolla|cebollas|ajo|verdura|carne|tomate|de? .. cebolla|cebollas|ajo|verdura|carne|tomate,
        picar|pique|picando|pico cebolla|cebollas|ajo|verdura|carne|tomate, tiemblan las piernas ..
        spinning|gym|sentadillas|clase, alergica a los|las?
        lunes|madrugar|mananas|hombres|cocinar|trabajo|trabajar|cuentas, veo dos|tres|2|3 de menos|mas, llevo .. sin
        abrir el|la|los|mi|tu insta|instagram|mensaje|correo|whatsapp|cel|app|link, cayo el pegamento al|en
        piso|suelo|pelo|mesa|ropa|blusa|camisa, a oscuras con|por|en el|la|mi apagon|casa|cuarto|sala, apago la luz
        en|de la? casa, se fue la luz, te quemas en|con|al|bajo|por, como cuando te quemas, casi me|se
        desmayo|desmaya|caigo|muero|infarto|da .. cuando|al me? vi|vio|vieron|ver|verme|vernos|precio|espejo, me
        desmayo de lo? lind{as/os/a}|bonit{as}|hermos{as}|divin{as}|amor|emocion, que dolor de
        belleza|hermosura|lindura|guapa|cuerpo, se me cae|caia|caen la baba, la baba con|por|de, babeando, estan que
        arden esas|las|estas|mis pestanas|miradas|fotos, estan que arden .. mama|reina|nena|amiga, que arden
        esas|estas, mensajes|mensajitos|recordatorios|textos .. me? irritan|cansan|duelen|enferman|pican, no paso
        nada raro|malo|grave|nuevo|mas, no me? paso nada, me ardio fue? el bolsillo, ardio fue el bolsillo, vista
        cansada la de|del, me arde la cara de, rizar|rizarlas con enchinador, enchinador, se me sale|salia el
        corazon, romper corazones, por poco se va de espaldas|culo, se fue|va de espaldas|nalgas, duele|duelen
        los|las? cachetes|mejillas|cara|boca de tanto? sonreir|reir|reirme, de lagrimas el precio|costo,
        precio|costo|cuenta .. llorar|lagrimas|dolio|duele|infarto, me dolio la cartera|el bolsillo|pagar,
        dorm{ir/i/ia/imos/iendo} boca abajo|arriba, duermo|duerma boca abajo|arriba, boca abajo|arriba, para|por la?
        resequedad|sequedad, para los ojos secos, no es|por el aire|viento|polvo, o sea que no es, estacion|parada
        .. cerrada, que bonit{o/os} ojo{s/}, que lind{o/os} ojo{s/}, bonitos ojos, precio me dejo
        ciega|sin|temblando|llorando, me dejo ciega el precio, ciega con el precio, en caso de que salga, en caso
        de, estan que arden jaja|fuego|puro, puro fuego, estan de fuego, estan fuego, de infarto, me duele no
        haber|ir|poder|tener, me duele haber, duele|duelen no haber|verme|verte|pagar, me arde la envidia|cara de,
        arde de envidia, ojos de envidia, me muero de envidia, morir de amor, ciega de amor, te arde la, arden de
        envidia, picadas de envidia, rojas de envidia, verdes de envidia, roja de coraje|pena|envidia, me pica la
        curiosidad, pica la curiosidad, me pico el gusanito, lloro de felicidad|emocion|alegria|risa, llore de
        felicidad|emocion|alegria|risa, llorando de felicidad|emocion|alegria|risa, llorar de
        felicidad|emocion|alegria|risa, duele el bolsillo, ojo de la cara, un ojo de la cara, arde troya, ciego de
        amor, me ardio el precio|bolsillo|la cuenta, ardio el precio|bolsillo|la cuenta, pica la envidia|curiosidad,
        me pica la envidia, pica de envidia, como me veo, como se me ven, como hubiera llorado, no aguanto las?
        ganas, no aguanto la emocion, no aguanto mas? para, ya no aguanto por, me duele cancelar{te/les/}|faltar, me
        duele no poder, me duele tener que, cieg{a/o} sin .. lentes|gafas|anteojos, cieg{a/o} sin
        lentes|gafas|anteojos, huele a quemado, olia a quemado, olor a quemado, arde la cara de, cara de verguenza,
        ojo clinico, sin aire acondicionado, prueba de alergia, prueba de parche, test de alergia, disculpe{n/} la
        molestia, disculpa la molestia, perdon{e/} la molestia, sin molestar, no es molestia, me arde pagar, arde
        pagar, espero, de verdad arde, que molestia, ojo al, ojo con, que padre, me muero de amor, me muero, muero,
        morir de, para morirse, alfombra roja, vestido rojo, labial rojo, labios rojos, vino tinto, unas rojas,
        tacones rojos, semaforo rojo, luz roja, en rojo, numeros rojos, vestido rosa, labial rosa, unas rosas, cruz
        roja, blusa roja, bolsa roja, bolsa rosa, caperucita roja, ardo en deseos, arde .. envidia, arde{n/} ..
        envidia, ardid{a/as/os} .. envidia, me? ardio|ardieron|arde|dolio|duele|pico|quemo|lastimo|irrito
        el|la|tu|su|ese|esa precio|precios|cuenta|tarifa|costo|cobro|bolsillo|cartera|ticket|factura, no me?
        gust{o/a/aron/an} como|cómo me? veo|miro|quedo|quedaron|quedan|ven|queda|veia, no me? gust{o/a/aron} como
        me|se veo|ve|ven, alergica|alergico a medio|todo|casi|cuanta|mil|tantas mundo|mundo|cosa|cosas|todo|lo,
        alergica|alergico a todo, con|tengo|traigo el|la agua|soga|trabajo al|hasta el? cuello, agua al cuello,
        hasta el cuello de|en|con trabajo|pendientes|deudas|chamba, el|la|los|las? del|de ojo|ojos
        malo|rojo|rojos|hinchado|mal|pachucho es|era|son|fue mi|una|el|la,
        traigo|tengo|parecen|parece|cree|piensa|que? aranas|mariposas|abanicos|alas|escobas|plumas en los|mis ojos,
        salieron|saltaron|cayeron|salian|salen las|unas lagrimas de la|pura|pura?
        emocion|felicidad|alegria|risa|gusto, opero|operaron|operan de la|los|las vista|ojos|cataratas,
        pelicula|serie|novela triste|romantica|llore, vi|viendo una|la pelicula|serie|novela ..
        llore|lloraba|lloramos, me queme|corte|lastime|quebre|rompi|torci la|el|un|una
        mano|dedo|pie|pierna|brazo|muneca|tobillo .. no puedo manejar|conducir|escribir|ir, hecha|hecho un mar de
        lagrimas, mar de lagrimas, rimel de|por|corrido .. suelo|piso, saliendo|salgo|sali del|de
        hospital|trabajo|turno|guardia|consultorio, turno de enfermera|noche|guardia|urgencias, ojeras que|hasta
        me|el? llegan|suelo|piso, me|les|nos|le entra|entre|entro|cae|caiga agua|jabon|shampoo|champu|sudor|arena
        en|cuando|a|al el|la|los|mi? ducha|ojo|ojos|alberca|bano|regadera, estan ardidas, me arde el bolsillo,
        ardiendo de envidia, la cosa arde, lloro de felicidad, lloro de alegria, llorando de
        felicidad|alegria|emocion|risa, llore de felicidad|emocion|alegria|la, lloro de la emocion, lagrimas de
        felicidad|alegria|emocion, me hizo llorar, me hicieron llorar, llore en la boda, llore toda, llorar en la
        boda, llore viendo, lloro .. emocion, lloro .. boda, llore .. boda, llore a mares, llorando ..
        emocion|boda|pelicula|novela|alegria|felicidad, duele pagar, me dolio pagar, dolio el precio, dolio ..
        precio, dolio .. cartera, me duele el bolsillo|codo, me duele la cartera|cara, duele la cara de,
        dolio|duele|dolieron|duelen mas|menos? la|el? cuenta|precio|factura|pagar|ticket, lo unico
        hinchado|rojo|inflamado|irritado|adolorido .. ego|orgullo|cartera|bolsillo|corazon|cabeza, unico que|q me?
        arde|duele|pica|lloro|llora .. ego|orgullo|cartera|bolsillo|corazon|envidia, un|el|mi|una? ojo|lado mas
        cargado|tupido|lleno|poblado|largo|denso que el|la? otro|otra, semaforo|semaforos en rojo,
        cepillito|cepillo|labial|color|estuche|cepillitos|bolsito|tono|frasquito|parche|parches
        rosado|rosa|rojo|roja|rosados|rosas|rojos|coloradito, arden|arde|pican|pica|comen|come las|la|los
        ganas|ansias|manos|curiosidad|lengua por|de, me arden|arde|pican|pica|comen|come las|la|los
        ganas|ansias|manos|curiosidad|lengua, cara|caras roja|rojas|colorada|coloradas de la?
        verguenza|pena|risa|vergüenza, roja|rojo|colorada|colorado de la|pura|tanta? verguenza|pena|risa, ciega
        con|por el flash, me quede ciega con|por el flash, me siento|senti
        estafada|enganada|timada|robada|decepcionada, pies|manos|tobillos|piernas|dedos|rodillas
        hinchados|hinchadas|hinchado|hinchada,
        mantita|manta|cobija|toalla|silla|bata|pared|paredes|luz|caja|libreta|agenda rosa|roja|rojo|rosas,
        despegan|caen|sueltan|danan|arruinan|estropean|mojan con|las|por|si? ..
        lagrimas|llorar|llanto|llorando|lloro, agujetas, ojo que, a ojo, de ojo, duele{n/} de lo|tan bonit{a/as},
        duele verte, dolor de codo, duele lo bonit{a/as}, duele .. bolsillo|cartera, dolor de bolsillo, dolor de
        cabeza conseguir|agendar|el, dolor en el bolsillo, quitan el aliento, quita el aliento, me quitaron el
        aliento, me quedo sin aliento, sin aliento, de quitar el aliento, quede sin palabras, me dejaron sin aire,
        sin aire de, no puedo respirar de lo|la|tan, no respiro de lo, ahogo en un vaso, me ahogo en trabajo|deudas,
        me desmayo de lo|la|amor, casi me desmayo de lo|la, casi me desmayo cuando vi, casi me desmayo al ver, me
        desmaye de lo|cuando|al, desmayo con|de amor, desmaye al ver, desmayo de la, casi me desmayo .. precio,
        quede ciega de, me quede ciega con, amor ciego, no veo la hora, no veo el dia, no veo la diferencia, no veo
        el, no veo hora, no veo .. mensaje, no veo .. link, no veo .. horario, no veo ninguna, no veo que, no veo
        por que, no veo espacio, no veo disponible, veo que, veo todo lindo, no te veo, no me veo sin, nos vemos,
        pegada al|a la|a mi, pegadas todavia, pegado al|a la|a mi, pegadas, siguen pegadas, bien pegadas, bien
        pegaditas, pegado a, se pegaron bien, sellado con, sellador, me hierve la sangre, fiebre de, hinchada de
        orgullo, hinchado de orgullo, hinchada de amor, hincha .. orgullo, cabeza hinchada, se me hincha el pecho,
        el corazon, como inflan los precios, precios inflados, inflan, inflado el precio, grano de arena, al grano,
        ve al grano, roja de vergüenza|verguenza, me puse roja, se puso roja, rojo de envidia, colorada de, pica
        pica, picante, picosito, picoso, comida picante, salsa .. pica, chile .. pica, la salsa, pico de gallo, pico
        y, las 3 y pico, y pico, picadura de, arena de la playa, en la arena, playa y arena, arena, caliente el,
        cafe caliente, agua caliente, clavada con, clavadisima, clavada en, jala pues, jalo, me jala, jalamos, jala
        .. sabado|domingo, tira la casa, clavo, espinas, mareada de tanto, mareo en el barco|carro|bus, me marea el,
        manchas de rimel, reaccion de mi|la|todos, la reaccion .. esposo|novio|marido|mama|familia|amigas|gente,
        alergica a trabajar|madrugar|los lunes|levantarme|los|las|gatos|la penicilina, alergica al
        trabajo|compromiso|gimnasio, alergia a los lunes, ojitos pizpiretos, no abre{n/} ..
        link|pagina|app|archivo|mensaje|enlace|local|salon, no abre .. hasta|los, no abren, a que hora abre{n/},
        abre{n/} .. lunes|domingo|sabado, cerrado el|los, cara de, caras, en la cara, lindas en la cara, ojo rojo en
        .. foto, rojos en la foto, salir con ojos rojos, foto .. borrosa, borrosa la foto, foto sale|salio borrosa,
        nublado .. dia, dia nublado, esta nublado, cielo nublado, nublado afuera, sensacion, brotar, brote de, me
        falta tiempo, me falta, veo todo lindo|bonito|bien|divino|perfecto, precio .. dolio|duele|arde|ardio,
        borrosa la pantalla|foto|imagen, pantalla .. borrosa, me veo|miro borros{a/o}|roja|rojo|hinchada|hinchado ..
        foto|selfie|video|videollamada, salgo|sali|salimos borros{a/o/as}|roja|rojo|hinchada .. foto|selfie|video,
        foto|selfie|video .. borros{a/o}, me? quede|quedo? cieg{a/o/as} de
        tanta|tanto|amor|felicidad|emocion|belleza|alegria, que dolor pagar|gastar|el|de precio|bolsillo|cartera,
        que dolor pagar, duele el bolsillo|precio|alma, me duele el bolsillo|codo|alma
    """,
    "fine": """
        ni me acuerdo que las|los llevo|tengo|traigo|uso, ni las|los siento, de lo a gusto, quede|quedo dormida, que
        gusto, un gusto contigo, sonadas, de ensueno, matadora, chimba{s/}, que|una chimba, subidon,
        locura|barbaridad de trabajo|pestanas, bellas, que manos|mano tienes|tenes|tiene, enganchad{a/o}, las adoro,
        adoro, felices, cumplidos, regalazo, te felicita{n/}|felicito, igual me gustan, me gustan
        mucho|un|tanto|cada|como, le gustaron tanto|mucho, son|estan una
        preciosidad|belleza|cosita|locura|maravilla, que calidad, aguantaron enteras, soy otra, parezco otra, me
        quitaron|quitaste|quito diez|10|anos|cinco|veinte, quede|salgo|ando
        matadora|preciosa|divina|linda|bella|diosa|top, todas quieren|preguntan, dios me la|te|lo bendiga, de lo
        lindas|bonitas, es un sol, encantadisim{a/o}, me|te quedaron super|sonadas|increibles|preciosas|brutal,
        super contenta|feliz|linda|lindas, contentisim{a/o}, valio la pena, lo estoy y mucho, chulean, las chulean,
        me las chulean, muy agradecida, volveria mil, regreso feliz, ojazos, estan para|pa comerselas|morirse, ojos
        de impacto, como nuevos, todo tranqui|chill|relax|piola|tranqui, blanquitos, no lo puedo creer, las puntas
        .. amo, ni siento|sienten que, no siento nada, como si no trajera|tuviera|llevara nada, nada que
        reportar|decir, bacan{es}, de lujo, me vuelven|tienen loca, lo mejor que, de otro nivel|planeta, nivel dios,
        mil|muchos puntos, no me las quito|quitaria, las amo, rechulas, perronas, chidas, cuca{s/}, monisimas,
        preciosura{s/}, de locura, una locura, dura|duras|durisimas esas|tus|las|mis|nena|mami, tas|estas|andas
        dura|durisima|matadora, me rio|miro sola|sola|todo, me miro y me, que pasada, hinchada|llena de orgullo, con
        estos ojazos, quede|ando|estoy ciega de amor, se me cae la baba, que dolor de belleza, me
        dejaste|dejo|dejaron matadora|de infarto|reina|diva|divina|espectacular|de revista|como|bella|bellisima,
        romper corazones, son un vicio, no puedo parar|dejar de mirarme|verme|verlas|mirarlas|tomarme, se me sale el
        corazon, estoy chocha|enamorada|en las nubes, duermo como un? bebe|angel|tronco|lirón|liron, se va|fue de
        espaldas .. vio|verme, arde la cara de tanto, de tanto piropo|halago|cumplido, casi me|se desmayo|desmaya ..
        vi|vio|verme, que bueno que|yo voy|vengo contigo, bueno que voy contigo, menos mal que, las mias
        estan|quedaron impecables|perfectas|divinas|intactas, impecable{s}, valio cada|la, valieron cada|la, parezco
        modelo|artista|famosa|reina|muneca, dice que parezco, no me han picado, ni un dia .. picado|molestado, ni
        las siento, no se me ha caido ni, divinas, preciosas, de diez, un diez, brutales, de infarto, de muerte
        lenta, todo el mundo me, todas me preguntan, me preguntan donde, feliz con, contenta con, fascinada,
        enamorada, puro fuego, que arden, estan que arden, dejaste
        guapisima|hermosa|divina|bella|preciosa|lindisima|como reina, guapisima, ando matando, regia{s/}, nada raro,
        por ahora nada, no tengo nada, ando perfecta, ando bien, chingon{as/es/a/}, todo el mundo me pregunta,
        tuanis, pura vida, la mera mera, sana y salva, de pelos, de poca, al cien, al 100, cheverisim{as/o},
        mamacita, estoy perfecta, todo en su lugar, ni una se ha caido, no se ha caido ninguna, no se me ha caido
        ninguna, sin perdida, cero perdida, firmes, firmecitas, buena onda, muy profesional, ole, flipo, flipando,
        de puta madre, se pasaron, te pasaste, pasaste, te luciste, la rompiste, una bomba, un exito, exito,
        bakan{es/as/a}, la raja, filete, macanud{as/a/o}, barbaras, buenardas, me encanta{n/}, me encanto, me
        encantaron, encantada, encantado, encantadisima, encanto, encantan, encanta, fascinad{a/o}, me
        fascin{a/an/o/aron}, me fasino, amo, ame, amé, amo mis, enamorad{a/o}, enamore, hermos{a/as/o/os},
        hermosisim{as/a/o/os}, bell{a/as/o/os}, bellisim{as/a/o/os}, preci{osa/osas/oso/osos}, precioso,
        lind{a/as/o/os}, lindisim{as/a/o/os}, bonit{a/as/o/os}, bonitisim{as/a/o/os}, divin{a/as/o/os}, divis,
        espectacular{es/}, spectacular, increible{s/}, perfect{o/a/as/os/amente}, perfectisim{as/o}, excelente{s/},
        genial{es/}, maravill{osa/osas/oso/a/as/ada}, maravilloso, chevere{s/}, chid{o/as/a/os}, padre,
        padrisim{o/as/a}, sin aliento cuando|al me? vi|verme|ver, estan|quedaron de
        muerte|infarto|impacto|revista|pelicula|miedo, pero valio|valieron|vale, loc{a/o} de
        felicidad|alegria|amor|contenta|gusto, me tienen|tiene loca|enamorada|encantada|feliz|contenta|maravillada,
        las mias intactas|perfectas|impecables|firmes|como, chul{as/a/o/os}, chulisim{as/o/a}, chulad{a/as},
        bacan{o/as/es/a}, brutal{es/}, mortales, lujo, quede hecha una reina|diosa|muneca|princesa, son una
        cucada|pasada|monada|preciosidad|hermosura|maravilla, amaneci como nueva|nuevo, quede como reina|nueva, todo
        divino, que monada, estan de diez, mil amores, pestanones, pestanazas, pestanotas, mirandome, mirarme en el
        espejo, no paro|dejo de mirarme|verme|admirarme, me paso el dia, quede guapisima|hermosa|divina|preciosa,
        son una nube|pluma, una nube, ni una se ha|me, ni una se ha soltado|caido|movido, no puedo decir que no,
        joya{s/}, fenomenal, estupend{o/as/a}, guap{a/as/isima}, guay, mola{n/}, super bien, super lindas, super
        bonitas, todo bien, todo super bien, todo muy bien, todo perfecto, todo excelente, todo genial, todo
        tranquilo, todo en orden, todo ok, todo okey, todo normal, todo lindo, todo super, todo good, todo nice,
        todo de lujo, todo chido, todo marcha, todo joya, todo va, todo cool, todo de maravilla, de maravilla, de
        10, sin problema{s/}, sin problemas, ningun problema, cero problema{s/}, 0 problemas, sin novedad{es/}, sin
        molestias, ninguna molestia, cero molestia{s/}, ningun malestar, sin malestar, sin reaccion, ninguna
        reaccion, sin irritacion, bien gracias, bien bien, muy bien, estoy bien, estamos bien, me siento bien, me
        siento genial|super|perfecta|divina|hermosa|reina|guapa|preciosa, bien, van bien, va bien, vamos bien, van
        perfectas, van super, siguen perfectas|intactas|lindas|bien|igual|hermosas|todas|completas, intact{a/as/o},
        como nuevas, como el primer dia, completas, completitas, ni una se, gracias, muchas gracias, mil gracias,
        grasias, grax, grcs, gracias por, te agradezco, agradecid{a/o}, bendicion{es/}, dios te bendiga, dios la
        bendiga, saludos, muchisimas gracias, besos, besitos, feliz, content{a/o/isima/as}, satisfech{a/o}, todos
        me, me chulean, me chulearon, piropos, halagos, la mejor, las mejores, eres la mejor, sos la mejor, sos una
        genia, eres una artista, artista, genia, crack, maga, eres una reina, reina, diva, me siento una,
        recomendad{isima/o/a}, recomend{ar/e/ada/ando}, te recomiendo, te recomende, quedaron, me quedaron, quedo,
        quedaron super, quede encantada, quedé, quede feliz, lucen, se ven, me veo, ni se sienten, no se sienten, no
        las siento, comod{a/as/o/isimas}, livian{as/itas}, ligeras, ligeritas, naturales, natural, super naturales,
        bien lindas, bien bonitas, tqm, tkm, top, wow, guau, ay que, que
        lindas|bonitas|hermosas|bellas|preciosas|bellezas|chulas|divinas, belleza, bellezas, espectacularidad, un
        amor, mil corazones, mil likes, me late, me laten, buenisim{o/as/a}, fantastic{o/as/a/os}, ganas de verlas,
        me muero de ganas, llore de la? emocion, lloro de la? emocion, sin palabras
    """,
    "vocative": """
        le|les fue|queda|quedaron|quedo|salio|salieron super|muy|tan?
        perfecto|divino|bien|genial|lindo|lindas|divinas|bellas|preciosas|hermosas|bonitas, ese
        dia|principio|ayer|primero|antes todo bien, te|les dije que todo bien, gracias a dios, quedo|quede|quedaron
        con los|el|la|un|una? ojos|ojo|parpados|parpado|cara, una nube en el|su|la, quedaron super|muy|bien|todas?
        disparejas|mal|feas|chuecas|tiesas|raras|horribles, quedaron
        disparejas|mal|feas|chuecas|tiesas|raras|horribles|duras,
        hola|holi|oye|hi|ay|buenas|buenos|disculpa|perdon|amiga|gracias|porfa
        linda|hermosa|bella|preciosa|reina|guapa|bonita|divina|corazon|chula
    """,
    "thanks": """
        gracias, muchas gracias, mil gracias, grasias, grax, gracias por, te agradezco, agradecid{a/o},
        bendicion{es/}, dios te bendiga, saludos, muchisimas gracias, besos, besitos, bien, quedaron, me quedaron,
        quedo, se ven, me veo, natural, reina, artista, completas, amo, feliz, lucen, padre, quedé, quede feliz, que
    """,
    "notlost": """
        hay|tienes|tenes|tiene|teneis|otro|un|algun|abre|abrio hueco|huequito|huecos|espacio|espacios,
        hueco|espacio|huequito para|el|la|esta|este|manana|hoy, hacen|haces|hace lifting, se me
        salieron|salen|salio|caen|cayeron .. lagrimas|lagrima, se me cayo el|la
        cel|celular|telefono|cafe|cara|baba|mundo, ni una se me? ha|cayo|movio|solto, por si? se despegan|caen, se
        despegan con|si
    """,
    "notbooking": """
        ya llegue a la|mi|casa, cumple|cumpleanos|regalo atrasado, me late, late un, puedo ir al?
        temazcal|gym|sauna|spa|mar|rio|gimnasio|piscina|playa|alberca|cine|concierto|jacuzzi, cuanto|cuánto
        sale|cuesta|vale|cobras|cobran|esta|es|dura .. relleno|retoque|turno|set, tengo cita con el|la
        doctor|doctora|dentista|oculista, dejarte el pago, la hora de, a toda|cualquier hora, cada hora, a ultima
        hora, una hora y, duro una|dos hora|horas, cambiaste la hora
    """,
    "complaint_weak": """
        horrible, horribles, fea, feas, fatal, exageradas, cara, espere, molesta con, pesimo, desastre, caro
    """,
    "booking_weak": """
        cita, citas, hora, lugar, turno, afuera, confirmo, nos vemos, retoque, relleno, trafico, agenda, horario
    """,
    "plain": """
        ojos bien? blancos|blanquitos|clarit{os}, ojos|parpados estan|siguen|andan|se ven? como siempre|antes|si
        nada|nuevos|normales, veo perfecto|perfectamente|clarito|nitido|super, ningun problema con|en los|mis|el|mi
        ojos|parpados|ojo|parpado|pestanas, no me|nos han|ha|dan|da|dieron dado?
        lata|guerra|problemas|problema|molestias|molestia|lio|guerrilla, ojo|ojos esta|estan|muy|bien|siguen?
        san{o/os}|tranquil{o/os}|limpi{o/os}|descansad{o/os}, nada que reportar|contar|lamentar|quejarme|decir, sin
        queja|quejas|nada, nunca mejor, de lo mas bien, me revis{o/aron} y ..
        bien|tranquilo|sano|perfecto|normal|limpio, super contenta|feliz|lindas|bonitas|bellas,
        estoy|ando|sali|quede contenta|feliz|encantada|fascinada, las adoro, sonadas, muy|bien|super|re
        lindas|bonitas|bellas, lindas lindas, estan lindas|bonitas|preciosas|divinas|hermosas, quedaron|quedan
        super|sonadas|re, quede|salgo preciosa|linda|divina|encantada|bien, ella|yo quedo|quede contenta|feliz,
        impecable, las mias preciosas, los mios preciosos, todas me las chulean, muy agradecida, que regalazo,
        bonitas pero, me gustan, los|las mios|mias|mis ojos? descansando|tranquilos|tranquilas, las mias|mis
        pestanas? intactas|divinas|perfectas|impecables|como si nada|firmes, ni se
        despeinaron|movieron|inmutaron|despeinan|mueven, y yo divina|tranquila|feliz|regia|como si nada, amaneci con
        todas, todas en su lugar|sitio|puestas|puestecitas, ni una en la almohada, sali premiada, me las
        chulean|envidian, se mueren de envidia, quien me las hizo, que ojazos, ya estoy super bien, ya estoy
        perfectamente, estoy super bien, feliz con mis pestanas, ando feliz, ya todo super|perfecto|normal, todo
        super, me encantan, las amo, yo ando perfecta, regia, me quedan regias, me queda regia, pestanas
        bellisimas|hermosas|lindas|bellas|divinas|preciosas, ya todo bien, ya estoy bien, todo bien ahora, ahora
        todo bien, ahora estoy bien, ahora bien, hoy todo bien, ya estan bien, ya esta bien, ya esta todo bien, por
        lo demas .. bien|perfecto|todo|perfectas, lo demas bien|perfecto, hoy bien, amaneci bien, amaneci normal,
        todo bien, todo perfecto, todo normal, ya ando bien, ya me siento bien, estoy bien, quedaron
        lindas|bonitas|hermosas|preciosas|divinas|bellas|perfectas|espectaculares|super|bien|padrisimas|chulas, me
        quedaron lindas|bonitas|hermosas|preciosas|perfectas|divinas|bellas, se ven
        lindas|bonitas|hermosas|preciosas|divinas|bellas|perfectas|increibles|super, hoy perfecta, hoy normal
    """,
    "retention": """
        se me?
        volaron|volo|vuelan|aflojaron|afloja|aflojan|fueron|van|perdieron|tuercen|tuercieron|torcio|cruzan|arrancan|arrancaron|salen|pelaron|barrieron
        un|una|unas|unos|dos|tres|cuatro|cinco|varias|algunas|como|de|casi|par|diez, ya? volaron
        un|dos|tres|varias|unas, todas flojas, flojas, flojitas, me faltan|falta
        unas|dos|tres|como|varias|pestanas|cuatro, me falta un|una pestana, faltan unas|dos|tres|varias, van
        diez|dos|tres|cinco|ocho|varias|como fuera|menos|caidas|ya, ya van diez|dos|tres|cinco|varias,
        quede|estoy|quedo|quedan calva|pelada|pelona|calvita|peladita, calva de, hoyo|hoyos|hoyito|claros|clarito
        en|por, se me tuercen, se tuercen, perdi|perdido dos|tres|una|un|cuatro|cinco|varias|como, no retienen, no
        agarran, no pegan, no aguantaron|aguantan nada|ni|dos|tres|una, se fueron
        dos|tres|cinco|cuatro|varias|unas|un|como|todas|solas, doblada, toda|todas
        doblada|dobladas|chueca|chuecas|virada|viradas|torcida|torcidas|paradas, una virada|chueca|doblada|torcida,
        cruzan|enredan|montan unas con|sobre, ralito|ralitas|ralita|raleadas, dejo|voy|ando
        dejando|tirando|regando|botando? pestanas, regando pestanas, pestanitas|pestanas en la|mi|el
        cara|almohada|cama|bolsa|lavabo|ducha|toalla|brasier|sabana, adios tres|dos|cinco|a pestanas, adios
        pestanas, la mitad de las|mis, a|con la mitad, ni la mitad, parezco gallina, gallina desplumada, desplumada,
        pierdo una|dos|tres|como|varias, se dio|dieron la|de vuelta, las que se me? fueron|cayeron|soltaron|volaron,
        se me fueron, duraron nada|poquisimo|un|lo, se me caian, mira{n/} pa|para|al el? cielo|techo|lado|arriba,
        rellenar las que, se zafa{n/}, ya perdio el|su efecto, caigan al dia, se me estan yendo, yendo de a poquito,
        se me vino|vinieron un|el|los|unos|varios|medio|entero|una abanico|abanicos|racimo|mechon|tira|fila, en el
        algodon|la almohada|el lavabo|la toalla|el cepillo, se me
        enredaron|enredan|enroscan|doblaron|torcieron|chuecaron, como alambre{s/}, solo|nomas|apenas me?
        sobreviven|quedan|sobreviv{en/ieron}|resisten, bailaban|bailan|andan|andaban|quedaron suelt{as}, ya
        bailaban, no duran, no me duran, no duraron, me duraron nada|poco|dos|tres, hueco enorme|grande|tremendo,
        hueco en, se viro, se me viro, se doblo, se me doblo, se chueco, enderece, endereza, ralit{as/a/os}, se me
        empezaron a caer, se me empiezan a caer, empezaron a caer{se/}, se me cayeron, huecos en, tengo un hueco,
        tengo huecos, no quedaba ninguna, no me queda ninguna, ya casi no tengo, quedan pocas, me quedan pocas, se
        me estan cayendo, no me duraron, duraron nada, pelon{a/as}, se me caen, caen solas, se me cayo, se me han
        caido, se estan cayendo, se caen, se cayo, se cayeron, caido, caidas, cayendo, cayeron, se me esta cayendo,
        se me cae, perdi .. pestan{a/as}, perdi como|varias|la|muchas|algunas|unas, perdiendo .. pestan{a/as},
        perdiendo, hueco{s/}, casi no me? quedan|queda|tengo, me quede|quedo|quedan con?
        dos|tres|cuatro|cinco|seis|pocos|pocas pelos|pelitos|pestanas|contados|contadas, pelos contados, en la
        funda|almohada|sabana|sabanas, apunta|apuntan al|a|pa|para la|el? cielo|techo|piso|arriba|abajo|nariz|lado,
        quedan|quedaron tres|cuatro|cinco|pocas|poquitas|contadas, hueco|huecos|hoyo|hoyos|claro|claros
        enorme|grande|gigante|feo|en las|las|el|la|mis|del, abriendo|haciendo huecos|hoyos, peine viejo,
        huequit{o/os}, espacios, espacios vacios, calva{s/}, pelona, pelonas, pelon, peladita, vaci{o/os}, se me?
        torcio|torcieron|doblo|doblaron|giro|giraron|volteo|voltearon|chueco una|unas|varias|dos|tres|todas,
        apunta{n/} para|pa|hacia adentro|dentro|abajo|lado|arriba, se quedo|quedaron en la
        toalla|almohada|funda|ducha|regadera|sabana|cara, quedo|quedaron en la toalla|almohada|funda,
        torcid{a/as/o}, chueca{s/}, chuecas, dobladas, doblad{a/as}, volteada{s/}, volteadas, cruzad{as/a}, para
        abajo, de lado, despegad{a/as/o/aron}, despegando, se me despeg{o/aron/an/a}, se despega{n/}, despegaron,
        despeg{o/an}, duraron .. dias|nada|poco, me duraron .. dias|nada|poco, duraron, ya no tengo pestanas, me
        quedan como|pocas|tres|dos|4|5|3|2|10|poquitas|unas, me quedan .. pestanas, se me solt{o/aron}, sueltas,
        soltando, retencion, ralas, ralitas, raleadas, sin pestanas, en la almohada, mitad de, la mitad se, se
        sal{en/io/ieron}, se me salieron, se me salen, se zafaron, se zafan, zafando, zaf{o/aron}, se me zafaron, se
        me zafan, cae{n/} mucho, caeron, tumbaron, arranque, arrancado, se desprend{en/ieron/io}, desprendiendo,
        abiertas, enredad{as/a}, mudando
    """,
    "booking": """
        se me|nos complico|atraveso|cruzo|junto|presento, no voy a alcanzar|llegar, me surgio algo|un|una, me salio
        algo|compromiso|viaje, me|nos reserv{as/an/a/e/en} un|una|el|la|para|lugar, reserv{a/ar/o/ame/e/eme/enme},
        lo|la|las|los dejamos|pasamos|movemos|corremos|cambiamos|hacemos para|pa|pal|hasta|el|otro,
        reprogram{amos/ar/ame/o/eme}, reagend{amos/ame/eme}, que|cual dia{s/}
        hay|tienes|tiene|puedes|puede|queda|tendrias|pueden, abres|abren|atienden|trabajas|trabajan los?
        domingo{s/}|sabado{s/}|lunes|feriados|festivos, todavia|aun|sigo|alcanzo a? alcanzo|llego|llegar|tiempo,
        mejor|hasta|pa|para|espero la? quincena|cobre|pague{n}|semana|mes|proxim{a/o}, d{ame/eme/enme}
        media|un|unos|10|15|20|cinco|diez|quince|veinte|chance|otra hora|minutos|ratito|minutitos|cita|fecha, no
        ire|vamos|iremos|paso|llegamos, no voy a? manana|hoy|el|la|al|a ir|poder|llegar|retoque|cita, asi no
        voy|puedo ir|vamos, l{e/o/a} quiero|quisiera|queria|voy a? regalar, regalar{le/les}? un|unas|una|el
        set|pestanas|sesion|cita|retoque, me|nos viene|queda|acomoda|va|sirve
        genial|bien|perfecto|mejor|super|de|ideal|el|la, nos|me|les puede|puedes|podria|podrias|pueden
        maquillar|poner|hacer|atender|recibir|meter, me quede dormida|dormido|tirada|tirado|sin|atorada|varada
        gasolina|coche|luz|carro?, se me|nos descompuso|poncho|averio|daño|dano|murio|paro|varo|pincho el|la|una
        carro|coche|llanta|moto|camioneta|auto|bateria, hay|hubo
        bloqueo|marcha|choque|paro|manifestacion|accidente|derrumbe|inundacion en|de, se inundo|inundaron
        la|las|el|mi calle{s/}|casa|avenida, ando|estoy|quede cort{a/o}|sin|apretada|quebrada|bruja de?
        dinero|lana|plata|varo|guita|luz, fallecio|murio mi|un|una, velorio|funeral|entierro hoy|manana|del|el, se
        me|nos enfermo|enfermaron mi|el|la|los, no puedo este|esta|ese|esa dia|semana|mes|lunes|viernes|sabado|vez,
        quitamelas, quitenmelas, quitemelas, retiramelas, retirenmelas, sacamelas, saquenmelas, me las
        quitas|retiras|sacas|remueves, cuando me|nos las|la arreglas|rellenas|retocas|quitas|pones, me las|la
        arreglas|emparejas|rellenas el <fecha>, me atraso|demoro|tardo unos?, me mueves|cambias|pasas|corres
        al|para|pa, si me las|la|los pueden|puede|puedes|podrian|podrias quitar|retirar|remover|sacar, confirmo
        el|la|lo|manana|hoy|mi|para|que|asistencia|cita|turno|hora|entonces|sin|contigo, sip|si|te confirmo, voy
        por|a|pal|para mi|el|un retoque|relleno|cita|turno,
        quiero|queria|quisiera|necesito|pido|pedir|pedire|pediria|ocupo|ando|busco la|mi|una|un|otra|el?
        cita|turno|hora|retoque|relleno|lugar|espacio|hueco, voy
        tardisimo|tardecito|corriendo|lenta|retrasada|demorada, llego
        5|10|15|20|25|30|cinco|diez|quince|veinte|media tarde|despues|minutos|min|hora, te|me
        agendo|agendas|apuntas|anotas|apuntes|agendes en|para|el|la|otra|de|a,
        agendame|agendeme|apuntame|apunteme|anotame|anoteme|ponme|pongame|metame|meteme a|el|la|pa|para|en|otra,
        puedes|podes|puede|podras|podra|pueden a las|el|la|manana|hoy, nos vemos en|el|la|manana|pronto|a <fecha>,
        nos vemos en|el|a tres|dos|una|4|15|las, asi que sip voy|ahi|nos, sip voy|ire|va|vamos
        el|la|manana|hoy|a|al, voy|ire|paso|vengo el <fecha>, el <fecha> voy|paso|llego|vengo|estoy|ahi,
        dame|deme|denme turno|cita|hora|lugar|espacio|chance, hazme|haceme|hagame
        lugar|hueco|huequito|espacio|campo, me revisas|reciben|recibes|checas|ven <fecha>|hoy|a,
        reprogram{o/a/amos/ar/arla/ame/emos}, reagend{amos/a/arla/ame}, te veo el|en|manana|la|para,
        guardame|guardeme|reservame el|la|un|una|para|lo, cancela|cancelen|cancele|canceleme|cancelenme
        mi|la|por|y|lo|porfa, cancelen mi cita, muevela|mueveme|movela|moveme|corrermela|correme|cambiame|cambieme
        la|mi|el|para|al|pa|lo, no me muevan|mueva|cambien|cambies|cancelen|quiten la|mi|de, te|le cancelo, no hace
        falta la|mi cita|revision, salgo pitando|volando|ya|ahorita|para, buscando
        parking|estacionamiento|aparcamiento, me he dormido, me quede dormida, no canceles, me esperas, ella sip va,
        lo|la|las dejamos para|pal|en, quiero ir, quiero que me vean|veas|revisen|revises, me lo|la|las pasas
        al|para, otra chica|muchacha la proxima, cambio de planes, cambiame la, pasame al|para|a|pal,
        aparteme|apartame, hora urgente, te caigo, pa las|el|la <fecha>, mejor la|el|voy|te|nos|otro|lo|para
        proxima|otra|siguiente|lunes|martes|miercoles|jueves|viernes|sabado|domingo|veo|vemos|dia|dejamos, mejor voy
        el, mejor te veo, otra|otro fecha|dia|hora|semana por|porfa|porfis|mejor|si, nos vemos la|el
        otra|proxima|otro|siguiente, reagendamos, reagendemos, reagendeme, me|nos
        cambia|cambian|muevan|mueve|mueven|movemos la|mi|el hora|cita|dia|turno,
        mueveme|muevame|muevanme|cambiame|cambieme|agendame|agendeme la|mi|para|al|el|manana?, me agenda|agendas
        manana|el|para|otro, lo dejamos para, lo|la|las|los? cancelo|cancelen|cancele lo|la|mi|el, hay que
        mover|cambiar|cancelar, no llego a, llego tarde o, voy|ando .. tarde, no puedo ir, para otro dia, llego|yego
        tardisimo|tardecito|tardon, va pisando huevos|guevos, la|lo|las pasamos|movemos|corremos|cambiamos
        pal|para|al|a, reservadme|reservame|resérvame|apartame|apuntadme|apuntame|anotame|agendame|ponedme|guardame,
        pal|para otro|el otro|proximo mes|dia|semana, no voy a ir siempre, siempre no voy|puedo|ire, necesito|quiero
        que|q me? las|me quiten|retiren|saquen, que me las quiten, tienes|tenes|tiene|hay hueco|huequito|huecos,
        llego a las|tipo|como, llego en, llego tarde, llego un poco, voy tarde, voy retrasada, voy con retraso,
        pasame al|para|a, me pasas al|para, mejor pasame|el|para, me cambias, me mueves, muevela|mueveme al|para|a,
        cambiame|cambiala al|para|a, no alcanzo a llegar, no voy a poder, no podre ir|llegar|asistir, no puedo
        ir|llegar|asistir, otro hueco|espacio|horario|dia, me das otro|otra, un huequito, un espacito,
        tenes|tienes|tiene|teneis lugar|hueco|espacio|turno|algo, hay lugar|hueco|espacio|turno, me
        agendas|apartas|anotas|apuntas|agendan, agendame, apartame, apuntame, anotame, reagendar, mover mi, se me
        hizo tarde, ando atrasada, estoy atrasada, me lo|la|las cambias,
        lunes|martes|miercoles|jueves|viernes|sabado|domingo no puedo, no puedo el
        lunes|martes|miercoles|jueves|viernes|sabado|domingo, me muevo para, me muevo pal, se me paso el turno|la
        cita|cita, algo para hoy, hay algo para, algo para el|manana|mañana, se me cruzo, saliendo tarde, voy
        saliendo, pasar manana a, puedo pasar manana|hoy|el|a, paso manana|hoy|el|a las, llego tipo, llegando tarde,
        voy a llegar, ando en el trafico, me agendas, me das cita|turno|hora, dame cita|turno|hora, sacar
        cita|turno|hora, quiero cita|turno|hora|retoque|relleno, necesito cita|turno|retoque|relleno|hora,
        quitar{me/melas} .. cita, podemos cambiar, podemos mover, la cambio, la muevo, no alcanzo, cita, citas,
        sita, cita para, agendar, agenda, agendo, agendarme, agendad{a/o}, reagendo, reservar, reserva, reservacion,
        reservame, turno, turnos, turnito, hora, horario, horarios, disponible, te|le puedo
        caer|llegar|ir|visitar|ver hoy|manana|el|ahorita|ya, puedo caerte|ir|pasar hoy|manana|ahorita|el, cuando
        me|las? las|la? puedes|podes|podrias|pueden rellenar|arreglar|retocar|poner|atender|ver|quitar|hacer,
        muev{anme/eme/ame/anos} la|mi|el? cita|turno|hora, cambi{enme/eme/ame} la|mi|el? cita|turno|hora,
        cancel{enme/eme/ame} la|mi|el? cita|turno|hora, tienes|tienen|tenes|tendras|tendran|hay algo?
        lugar|espacio|hueco|turno|algo|cupo|chance el|para|hoy|manana|este|esta?,
        pedir|pedirte|sacar|agendar|apartar|reservar un? turno|cita|hora|lugar|espacio, me puedes|podrias|das|pueden
        dar? otro|otra dia|hora|fecha|turno, quede de ir, sip voy el
        sabado|domingo|lunes|martes|miercoles|jueves|viernes, mas tardecito|tarde|temprano porque|el|si,
        baj{an/en/ame/enme} de la lista del sabado|domingo|lunes|martes|viernes, mejor el
        domingo|lunes|martes|miercoles|jueves|viernes|sabado, se puede
        adelantar|mover|cambiar|atrasar|pasar|correr|recorrer la|el|mi, adelantar|atrasar|recorrer la|mi
        mia|cita|hora, me sacas una hora|cita|turno, atascada|atorada|atascado en, no llego me, que
        puerta|piso|timbre|entrada, puedes|puede|podrias|podes|pueden mover|cambiar|pasar|correr|recorrer
        pal|pa|para|al|a|la|el, me|nos las|la|los rellenas|quitas|retocas|haces antes|manana|hoy|el|este, me|nos
        las|la|los? puedes|podrias quitar|retirar|rellenar|retocar manana|hoy|antes|el|este|a, confirmo|confirmado
        el|para|lo para|la lunes|martes|miercoles|jueves|viernes|sabado|domingo,
        reservame|resérvame|apartame|guardame|anotame|apuntame|agendame el|un|una|para|la|lo, pasar|mover|cambiar mi
        retoque|cita|relleno, lo|la|las pasamos|movemos|cambiamos|dejamos|corremos al|para|a|pal, llego
        tantito|tarde|despues|luego|mas, tantito despues|tarde, un poco|poquito tarde|despues|mas, el
        uber|taxi|camion|metro se, ese dia porfa|por|no, disponibles, disponibilidad, lugar, espacio para, espacio
        el, tienes espacio, tiene espacio, hay espacio, cupo, cupos, huequito para|el, un huequito para, tienes
        hueco, hay hueco, tenes lugar|turno, tienes lugar, tienes libre, tienes algo|campo|chance, tiene campo,
        campo el|para, cambiar .. cita|hora|dia|turno, cambiar la|mi|para, cambiamos, mover .. cita|turno, mover
        la|mi, moverla, cambiarla, cancelar .. cita|turno|mi|la|lo, cancelarla, cancelo, cancelamos, cancelame,
        cancela mi, posponer, aplazar, pasar mi cita, pasarla para, pasamos para, pasar para, retoque, retoques,
        relleno, rellenos, llegar tarde, retrasad{a/o}, retraso, demorad{a/o}, atrasad{a/o}, minutos tarde, llego ..
        minutos, ya voy, voy en camino, en camino, voy llegando, estoy llegando, ya llegue, ya mero llego, trafico,
        tranque, taco en, trancon, tapon, atorada en, estacionad{a/o}, estacionando, afuera, estoy afuera, confirmo,
        confirmad{a/o/isimo/isima}, confirmar, confirmada, ahi estare, ahi estoy, alli estare, ahi nos vemos, nos
        vemos, te veo el|mañana|manana|a, la veo, no podre ir, no voy a llegar, no llego, no podre llegar, no podre
        asistir, aparta|aparto|apartar, me anotas, ponme, me pones el, me puedes poner, quisiera ir, puedo ir
        el|mañana|manana|a, me atiendes, me puedes atender, atenderme, puedes el, podes el, podrias el, para el
        lunes|martes|miercoles|jueves|viernes|sabado|domingo, set nuevo para, mantenimiento, tu direccion, a que
        hora, cambio de hora, te caigo el|a, casi llego, ya casi llego, me urge
    """,
    "question": """
        eso|esto que es|sera|significa, que es eso|esto, que me? recomienda{n/s/}, te|le|les mando
        foto|fotos|video|imagen, me la|las|lo|los repones|arreglas|reponen|cambias, diganme|digame|dime|decime|dinos
        que|como|si|cuanto|donde, cuentame|expliqueme|explicame|dime por|como|que, a que hora
        abren|cierran|atienden, cuanto|cuánto por|sale|seria|vale|me, hay garantia|descuento|promo|cursos,
        das|dan|dictan cursos|curso|clases, hacen|haces lifting|cejas|laminado|diseno|unas, aceptan|acepta
        tarjeta|transferencia|efectivo, a nombre de quien, me pasas tu|el|la|tus, que|cual
        espuma|shampoo|champu|jabon|cepillo|cepillito|rimel, lo emparejas, lo anoto, mandame|pasame|mande|comparteme
        la|tu direccion|ubicacion, no encuentro el|la|su local|direccion|salon|lugar, eso se pega|contagia|quita,
        puedo seguir, vale la pena ir|que, sirve una|un|el|la, usais, teneis, pueden venir, es contagioso, hice mal,
        me preocupo o, se puede{n/} hacer, llevo la cara|efectivo, hasta cuando sirve|vale|dura, deje mis
        llaves|lentes|gafas|cosas|anteojos, te fijas porfa, no se si puedo|se puede|debo, puedo meterme al|en,
        venden|vendes|vende|tienen|manejan el|la|los|las|un|una|de?
        cepillo|cepillito|shampoo|champu|espuma|producto|productos|limpiador, cada cuanto|cuánto
        toca|hay|se|me|debo|retoque|retocar|vengo|voy, cuanto deben|deberian|debe|duran aguantar|durar, que pasa,
        las dana|danan, le hace dano, cuanto sale|cuesta|vale|cobras|cobran|seria, me alcanza, quiere
        saber|preguntar si|cuanto|cuando, tienes|teneis|tienen|tiene|hay uno|una|otro|otra?
        distinto|distinta|diferente|alternativa, decime si|que, dime si, me puedo
        meter|banar|maquillar|poner|duchar, me pasas|das|mandas la direccion|ubicacion, la direccion porfa, la
        ubicacion porfa, cual es la direccion|ubicacion, donde quedan|estan|es, que|k precio tiene|tienen, cuanto
        cuesta|sale|cobras|cobran|vale|es, en cuanto sale|esta, que onda con, puedo
        banarme|nadar|entrar|dormir|maquillarme|ponerme, es normal que, se pueden|puede mojar, cada cuanto, sera
        por, sera el|la|alergia|normal|que, es verdad, dimelo what i do, dime que, que sera, solo pregunto,
        aguantan|aguanta|resisten|resiste|soportan|sobreviven el|la|al|una|un|en
        gym|gimnasio|agua|sudor|alberca|piscina|mar|playa|sauna|lluvia|clase|vapor|calor, cuando
        vence|caduca|expira|sirve, vale|bono de regalo, puedo entrar|meterme|ir|pasar al|a el|la?
        temazcal|sauna|vapor|alberca|jacuzzi|mar|gym|gimnasio|playa|rio, aceptan|reciben|toman
        tarjeta|transferencia|efectivo|tarjetas|zelle|bizum, pregunto, quiero preguntar, usan el mismo, usan algo,
        ustedes usan, hay algun, me lo puedo, me las puedo, lo puedo, las puedo, puedo quitar, a donde voy, voy al
        doctor, que tan, hasta cuando, con que, que jabon, se vale, esta bien que, es grave, me preocupo, debo
        preocuparme, que hago, q hago, que puedo hacer|usar|tomar|ponerme, que debo, que me pongo, que me echo, que
        me recomiendas, que recomiendas, que me aconsejas, puedo
        usar|echarme|ponerme|lavar|lavarme|mojar|mojarlas|dormir|ir
        al|nadar|meterme|banarme|tomar|maquillarme|quitar|quitarme|pintarme|entrar|hacer|aplicar|correr|depilarme|llorar|rizarlas|peinarlas,
        puedo pintarme|delinearme|ponerme|usar|echarme|pasarme, que rimel|mascara|delineador|champu|crema, son a
        prueba de|resistentes al, si o no, le pongo|echo|hago .. o que, o que, sera de|normal|por|que|eso, cuanto
        sale|cuesta|cobras|por|es|son|vale|seria, aceptas|aceptan tarjeta|transferencia|efectivo, nos haces|me haces
        descuento|precio, se lo doy|digo|paso o, quisiera saber, me la|lo|las|los guardas|guardan|apartas|traes, a
        quien llamo|aviso|escribo, ayuda que, qué me echo|pongo|tomo, que le pongo|echo|unto|doy, le puedo
        meter|cortar|poner|echar|pasar, tienen|teneis|tenéis|tienes|hay
        bono|bonos|promo|promocion|descuento|paquete|paquetes, se paga suelto|aparte, de que marca|color|tono|donde,
        la atenderias|atienden|atenderian, hay problema con|si, se puede{n/}, se pueden, puedo, es normal, son
        normales, sera normal, es malo, esta bien si, es bueno, como hago, como las, como me, como se, como puedo,
        como le, como limpio|lavo|cuido|quito|peino, cuando puedo, cuando me|las puedo, cuanto, cuantos, cuantas,
        cuanto cuesta|dura|tiempo|vale|sale|cobras, que
        tipo|marca|producto|curva|largo|pegamento|shampoo|jabon|onda, cual, cuales, por que, porque se, debo,
        deberia, tengo que, hay que, que significa, me puedes decir|ayudar|recomendar|mandar|explicar|pasar|enviar,
        me podrias decir|ayudar|recomendar|mandar|explicar|pasar, puedes decirme|ayudarme|mandarme|recomendarme,
        consejo, consejos, recomendacion, algun consejo|tip, tips, duda, una duda, pregunta, una pregunta, una
        consulta, consulta, me preguntaba, queria saber, quiero saber, sabes si, normal, aceptas, aceptan, haces,
        hacen, tienen, cobran, donde, que usaste, ayudame, ayuda por favor, ayudenme, a que se debe, sera que, sera
        alergia
    """,
    "complaint": """
        un rinon, costaron|costo|cobraron|cobraste|pague un|el|los rinon|triple|doble|dineral|ojo|ojos, pague el
        triple|doble, trabajo tan|muy|mas malo|feo|pobre|chafa|cutre, encima de|encima
        caro|cara|caras|insisten|me|cobran, me parecieron|parecio|parece
        caras|caro|cara|carisimo|carisimas|mal|pesimo|fatal|una tomadura, tomadura de pelo, me
        ignoraste|ignoraron|ignoro|dejaron|dejaste esperando|hablando|plantada, me ignoraste, me ignoraron, no son
        lo que|como, no es lo que hablamos|pedi|quedamos, no como|igual la|a foto, muy|tan|bien|super
        brusca|brusco|tosca|seca|grosera, brusca, me tuviste|tuvieron|tuvo
        2|3|4|dos|tres|cuatro|horas|una|esperando, contesta|contesten|conteste el|los telefono|mensajes|mensaje, ir
        al pedo, en vano, salon|local estaba cerrado, color|tono feo|horrible|equivocado|distinto, mas
        largo|larga|corto|corta|tupido|cargado que el|la otro|otra, no me hallo, no me siento yo, me
        trataron|trataste|trato mal|feo|pesimo|como, feas, feo sip|si, que precios, no vuelvo a
        recomendar|ir|volver|pisar, no recomiendo, no las recomiendo, me da una? rabia|coraje|bronca,
        que|tremenda|una decepcion, me dijiste que aguantara, te dije que|durante .. jalaba|dolia|prisa|apuro, me
        rompieron el corazon, efecto gallina|plumero|escoba, esperaba mas|otra, te creia mas, no
        cumplieron|cumpliste, sin avisar{me/}, me cambiaste|cambiaron la hora|cita, no tenias ganas, fatal
        la|el|su|tu, pareciendome|parecio fatal, con ese trato, llenas|llenan de mensajes, pesimo|mal|malisimo
        servicio|trato|gusto|rollo, me dejo|dejaste|dejaron temblando|en la calle|pobre, la culpa es de, es por mi
        culpa, no puede ser asi, eso no puede ser, no me gusto que, no se vale, jamas vuelvo, para esto|eso me|mejor
        las|lo|yo|me hago|hacia|hago|pongo|ponia, con pegamento escolar|blanco|resistol|de, mejor me las
        hago|hacia|pongo yo|sola, se me hizo carito|caro|cara, carito pa como, nadie me|nos
        atendio|contesto|respondio|hace, ardio .. el? bolsillo, que precio tan|mas salado|caro|alto, que manera de
        atender|tratar|trabajar, que barbaridad de, nadie me|nos atiende|contesta|responde|ayuda, no
        hizo|hicieron|haces|hacen caso, la verdad pesimo|pesima|fatal|mal|horrible, pesimo|pesima
        servicio|trabajo|atencion|experiencia, parezco drag|payaso|travesti|tarantula|payasa|vaca, pedi .. y? sali
        con|asi, quiero hablar con la|el duena|dueno|encargada|gerente|jefa, me las
        amontono|amontonaste|amontonaron|encimo|encimaron, sin orden, ojo de la cara .. no dur{an/aron/o}, sali con
        cuatro|4|tres|3|dos pelos, mensajes .. me? irritan, bien|muy|super sangron{a/}, sangrona, mala
        cara|gana|onda, de mala gana, cobrado|cobraste|cobraron|costado un ojo, ni se notan, parecen de
        plastico|mentira|muneca, un ojo de la cara .. y ni|parecen|duran|no, estuvo con el celular|telefono|movil,
        con el celular todo, en el celular todo, las pague caras, un ojo de la cara, de ojo de la cara, ni de
        chiste, no era lo que, no fue lo que, no es lo que pedi, queria mas, las queria mas|menos, no quedo ninguna,
        me cobraron de mas, cobraron de mas, que carero, carisim{o/a/as}, me dejaron esperando, me dejo esperando,
        me atendio mal, me trato mal, mal atendida, muy mala atencion, mala atencion, mal servicio, pesimo servicio,
        con prisas, a las carreras, chuecas, disparejas, desparejas, muy caro, carisimo, carisima, carero, careros,
        salio caro, me salio caro, tan caro, fraude, un fraude, dineral, grosero, grosera, ni me saludo,
        descontent{a/o}, mas corta que, mas larga que, quedo mas corta|larga, verguenza salir, me da verguenza,
        pague .. y ya, carisimas, insatisfecha, mediocre, fatal, no me la esperaba asi, no me esperaba, una
        decepcion, mal puestas, no estan parejas, no quedaron parejas, un desastre, desastre, descuidad{a/o}, a
        medias, no es justo, abus{o/an}, no volvere, silla|camilla|cama estaba|esta
        dura|durisima|incomoda|horrible|sucia, hacia un? frio|calor|ruido, precio subio|subieron|sube,
        subio|subieron el|los|sus precio|precios, ni avisaron|avisan|avisaste|aviso, no vuelvo, me arrepiento,
        perdida de tiempo|dinero, tirar el dinero, tirado el dinero, no me gust{o/a/an/aron}, no me gustaron, no me
        encant{an/a/o/aron}, no me convenc{e/en/io/ieron}, me pasaron|pase|atendieron|atendio .. minutos|hora|media
        despues|tarde|despues, una quedo|salio chueca|mal|torcida, quedaron muy
        largas|cortas|gruesas|cargadas|pesadas, me cobraste|cobraron|cobro mas|de, estoy
        molesta|enojada|inconforme|decepcionada, no contestaste|contestaron|contestan, cuarenta|treinta|media|una
        minutos|hora despues|tarde, hable y hable, lo que pague|cobras|cobran|cuesta|cobraste, no se|lo vale, asi no
        vale, tiesas, quedaron tiesas|duras|chuecas|disparejas|raras|feas|mal, como cepillo|escoba|alambre|escobeta,
        ni siquiera me|las, y encima quedaron|me|las, mas cargado|cargada|tupido|lleno que el|la, para lo
        que|cobras, no me convencen|convence, estafada|enganada|timada|robada, largo|curva|estilo|tono|color|diseno
        que acordamos|quedamos|pedi|hablamos|queria, seca|seco|cortante|borde|antipatica|pesada conmigo, nadie me|se
        ofrecio|saludo|atendio|disculpo|aviso, me tuvieron esperando, las he tenido mejores, decepcionad{a/o},
        decepcion, decepcionante, molesta con, enojad{a/o/isima}, insatisfech{a/o}, inconforme, feisimas, fe{as/a/o}
        me, quedaron mal, quedaron feas, quedaron horribles, quedo mal, quedaron chuecas, mal hech{o/as/a}, mal
        trabajo, pesimo, pesima, pesim{as/os}, horribles, disparej{as/o/os/a}, desparej{as/o/a}, muy largas, muy
        cortas, muy cargadas, muy gruesas, muy pesadas, muy tupidas, demasiado
        largas|cortas|gruesas|pesadas|cargadas|tupidas|tupido|exageradas|largo|caro|oscuras, exageradas, no es lo
        que, no eran, pedi natural|naturales|algo|otra|cortas|largas, te pedi, le pedi, yo pedi, yo queria, estafa,
        robo, un robo, me cobr{aste/aron/o/o}, cobraste, cobraron, cobran mucho, reembolso, devolucion,
        devuelv{an/eme/e/as}, mi dinero, mi plata, maleducada, mal trato, mala actitud, me hiciste esperar, me
        hicieron esperar, esperando .. hora, espere .. hora, espere, me dejaste esperando, apurada, a la carrera, de
        prisa, nunca mas vuelvo, no regreso, queja, reclamo, reclamar, quejarme, mala resena, patas de arana,
        aranas, arana, parecen escobas, escoba, parezco payas{o/a}, payaso, me dejaste, me dejaron, no estoy
        content{a/o}, no estoy conforme, no quede content{a/o}, no quede conforme, no quede satisfecha, no estoy
        feliz, sucio, falta de respeto, falsas, se ven falsas, se ven feas, no parejas, arreglar, arreglen,
        arreglalas, mala calidad, no vale, no valio, una mas larga, muy caras, estan caras, esta caro
    """,
    "stop": """
        no molest{en/es/e} mas, no necesito|ocupo|requiero que me? <manda>, voy a
        denunciar|reportar|reportarlos|denunciarlos|bloquear|bloquearlos, anul{en/a/e/ar} mi|la suscripcion, no
        sigan|sigas|siga <manda>, no|nunca|jamas|tampoco me|nos vuelvan|vuelva|vuelvas a <manda>, que no me|nos
        <manda> mas|nunca|otra|tanto|ustedes,
        dejen|deja|deje|dejes|dejad|paren|para|pare|parad|cesen|cese|corten|eviten|evita|eviteme|abstenganse|terminen
        de|con? <manda>, abstenganse de, <sacar> .. lista|listas|contactos|base|sistema|difusion|registro, <sacar>
        mi|este|el numero|telefono|celular|contacto|cel|movil, <sacar> mis datos, <sacar> de ahi|aqui|sus|todo,
        quiero|quisiera|prefiero|pido|solicito|exijo|agradeceria|ruego|deseo no recibir|seguir,
        quiero|quisiera|prefiero|pido|solicito|exijo|agradeceria|ruego|deseo dejar de recibir|estar,
        pido|solicito|exijo|agradeceria|ruego|quiero|prefiero que? no|ya|nunca? me|nos <manda>,
        pido|solicito|exijo|agradeceria|ruego|quiero que dejen|paren|cesen|me borren|saquen|quiten|eliminen,
        favor|porfa|porfavor|please de? no <manda>, se acabaron los <aviso>, fin de|a los <aviso>, como|donde me?
        salgo|doy|quito|borro|desuscribo|cancelo .. baja|lista|<aviso>, quiero|quisiera salir|salirme de
        la|su|esta|sus, me salgo de la|su|esta|sus, los|les|te voy a?
        reportar|reporto|denunciar|denuncio|bloqueo|bloqueare|bloquee, reporto|reportar|marco|marcar como|por spam,
        es spam, pierdan|pierde|olviden|olvida mi|este numero|telefono, borren este contacto|numero,
        olvidense|olvidate de mi, no cuenten conmigo para mas?, no autorizo|acepto|permito|consiento ..
        <aviso>|<manda>|numero|datos, revoco|retiro mi|el permiso|autorizacion|consentimiento, no mas|more
        textos|textitos|msj|mensajeo, unsubscribe, take me off la lista, baja definitiva, cancelar|anular|quitar la
        suscripcion|los|mis <aviso>|suscripcion, me? cansaron|aburrieron|hartaron con|de .. <aviso>, estoy|me tienen
        harta|harto|cansada|aburrida|hasta .. <aviso>, no me interesa|interesan saber|recibir|seguir|nada|sus|mas,
        ya no soy clienta|cliente .. <aviso>|<manda>, ya? no quiero|deseo|necesito|ocupo mas?
        sus|tus|tanto|tanta|tantos|tantas|estos|esas? <aviso>, no me interesa{n/} sus|tus|mas|las|los? <aviso>, stop
        con|a|de|los|las .. <aviso>, basta de|con tanto|tanta|tantos|tantas|los|las? <aviso>, no mas <aviso>, ni
        un|una <aviso> mas, salgan|salganse|salte|salganme de mi <lista>, tengo suficientes <aviso>, no quiero|deseo
        .. <aviso>, no me lleguen|llegue|sigan|caigan|caiga .. <aviso>, que no me
        lleguen|llegue|mande|manden|escriban|molesten mas|tantos|estos, dejen|deja|dejar de
        bombardear{me/}|saturar{me/}|hostigar{me/}|acosar{me/}|fastidiar{me/}|joder|llenarme,
        borrar|borrarme|quitarme|sacarme|eliminarme|bajarme de|del sus|su|la|tu|esta|esa? <lista>,
        sacame|sacanme|saquenme|saqueme|saquen|bajame|bajenme de .. <lista>, saquenme, no me llenen|llenes ..
        <aviso>, desactiven|desactiva|desactivar .. <aviso>, quiten|quita|quitar .. numero|telefono de ahi|la|su,
        suspendan|suspender|cancelar|cancelen .. <aviso>, hasta aqui con .. <aviso>, me tienen
        harta|harto|cansada|hasta .. <aviso>, alto|paren|parenle|parale|ya con|a sus|tus|los|las? <aviso>, estan
        bloqueados, los bloquee, no autorizo .. <aviso>|numero, corten con, corten los|las, corta con ..
        mensajes|sms, basta de, basta con, basta che, basta ya, ya basta, ya estuvo .. mensajes, no sigan, no sigas,
        no insistan, no insistas, dejen de, deja de mandar|escribir|enviar|mandarme|escribirme|enviarme, dejenme en
        paz, dejame en paz, dejenme tranquil{a/o}, no molest{en/es/e}, no quiero volver a recibir|saber|leer,
        salgan|sal|salga|salganse de mi telefono|celular|bandeja|cel|vida, stop con|a|de los|las|estos|tanto
        recordatorios|mensajes|avisos|textos|mensaje, ya? no quiero|necesito|deseo mas?
        promociones|promos|ofertas|publicidad|spam|propaganda|notificaciones, cort{enla/ala/enle/ale/adla/alo/enlo}
        ya? con|de|por|che?, par{enle/enla/ale/ala/adle/enlo} ya?, ya? no le|les|nos
        mand{en/es/e}|escrib{an/as/a}|env{ien/ies/ie}|llam{en/es/e}|text{een/ees}|habl{en/es/e}, tampoco|nunca|jamas
        me|nos|le mand{en/es/e}|escrib{an/as/a}|env{ien/ies/ie}|llam{en/es/e}|habl{en/es/e}|contact{en/es/e}, no
        me|nos habl{en/es/e} mas|nunca|por|ni, ya no me habl{en/es/e}, no
        enviar|mandar|escribir|contactar|llamar|molestar|insistir mas|nada|nunca, agradec{ere/eria/eremos}
        no|que|si|dejaran|dejen|dejar .. enviar|mandar|escribir|contactar|llamar|mensajes, les|le|te
        agradec{ere/eria/eremos} no|dejar|que no, no me|nos interesa|gusta|apetece seguir recibiendo|recibir, seguir
        recibiendo esto|estos|mensajes, para que ya? no me|nos lleg{uen/ue}|mand{en/es}|escrib{an/as}, que no me|nos
        lleg{uen/ue}, ya no quiero que me lleg{uen/ue}, no quiero que me lleg{uen/ue}, no necesito|quiero|hace|es
        que me|falta est{en/an}|anden .. escribiendo|mandando|avisando|recordando|texteando,
        desactiv{en/a/e/ar/enme/ame} los|estos|las|mis mensajes|avisos|recordatorios|notificaciones|alertas,
        apag{uen/a/ue} los|las mensajes|avisos|recordatorios|notificaciones, que ya no le|les
        mand{en/es/e}|escrib{an/as/a}|llam{en/es/e}, no le mand{en/es/e} nada|mas, no me escrib{an/as/a}
        ni|por|nunca, quit{ame/enme/eme/adme} de|por|ya, sac{ame/enme/eme/adme} de|por|ya, borr{ame/enme/eme/adme}
        de|por|ya, sal{ir/irme} de esta|la|su lista|grupo, dejame tranquil{a/o}, quitamel{os/as}, quitenmel{os/as},
        quitamelos, quitenmelos,
        quiteme|quitenme|quitame|saquenme|sacame|saqueme|borrenme|borrame|borreme|eliminenme|eliminame|elimineme
        de|del|de la|mi, denme|dame|deme de baja, darme de baja, dar de baja, quiero darme|salirme de, de baja por
        favor|porfa, cancelen los|estos mensajes|avisos|recordatorios, cancelar los|estos
        mensajes|avisos|recordatorios, paren de, paren con, paren ya, pare de, para de mandar|escribir|enviar, no
        mas mensajes|mensajitos|avisos|recordatorios|sms|textos|correos, ni un mensaje mas, no quiero
        mas|recibir|que me|sus|tus .. mensajes|escriban|manden|avisos|recordatorios|textos|contacten|sms|correos, no
        quiero recibir, no deseo recibir|mas, no me manden, no me mandes, no me envien, no me envies, no me
        escriban, no me escribas, no me contacten, no me contactes, no me llamen, no vuelvan a
        escribir|mandar|contactar|molestar|escribirme|mandarme, no vuelvas a
        escribir|mandar|contactar|escribirme|mandarme, prefiero no recibir, preferiria no recibir, preferiria que no
        me, prefiero que no me, sin mensajes por favor|porfa, ya no manden|mandes|escriban|escribas|envien|envies,
        ya no me manden|mandes|escriban|escribas|envien|envies, ya no quiero ..
        mensajes|recibir|avisos|recordatorios|textos|sms, dejar de recibir, dejar de recibirlos, no necesito ..
        mensajes|avisos|recordatorios|textos|sms, no hace falta que .. escriban|manden|escribas|mandes|avisen|sigan,
        les agradeceria que no me|volvieran|siguieran, te agradeceria que no me, los voy a bloquear, voy a bloquear,
        los bloqueo, bloqueo este|el|su numero, borra|borren|elimina|eliminen|quita|quiten mi
        numero|telefono|contacto|celular|movil|datos, sacar mi numero, fuera de la lista, me
        sacan|sacas|quitan|quitas|borran|borras de, harta|harto de .. mensajes|sms|textos, cansada|cansado de ..
        mensajes|sms|textos, dejad de, no me mandeis, no me escribais, parad de, quitadme, borradme, dadme de baja,
        no escriban, no manden, cesen, desuscribir{me}, desuscribeme, desuscribanme, anular la suscripcion, no
        autorizo, retiro mi consentimiento, revoco mi consentimiento, no quiero saber mas de|nada ustedes|por,
        borren mi telefono|numero, borra mi telefono|numero, suficiente no quiero, que ya no quiero, ya no quiero
        saber, de baja, basta de mensaj{es/itos}, dejar de textear|escribir|mandar|enviar|molestar|contactar, no
        contactar{me/}, favor de no .. contactar{me/}|escribir|mandar|enviar, ya estuvo bueno de mensajes, ya estuvo
        de mensajes, ya no me interesa .. mensajes|recibir, no me interesa recibir, no me interesa{n/} .. mensajes,
        estuvo bueno de, ya no me envi{en/es/e}, no me texte{e/en/es}, sin mensajes, cero mensajes, no mas
        recordatorios, no mas mensajitos, ya no mas mensajitos, no me busquen, no me sigan, ya no me text{een/ees},
        me pueden dejar de, puedes dejar de, pueden dejar de, podrian dejar de, no doy permiso, olvid{en/a/ense/ate}
        .. numero, dame de baja, denme de baja, deme de baja, mejor ya? no me
        escribes|escriban|mandes|mandas|manden|envies|envias, ya no me escribes|mandas|envias, que ya no me
        escribas|mandes|escriban|manden, podemos dejar los mensajes, sin tanto mensaje, ya no mas mensajes, den de
        baja, me doy de baja, baja por favor, date de baja, no me escrib{an/as/a/ais} mas, ya no me escrib{an/as/a},
        no me escrib{an/as/a}, no me mand{en/es/e}, no me mand{en/es/e} mas, ya no me mand{en/es/e}, ya no
        mand{en/es/e}, no mand{en/es/e} mas, no me env{ien/ies/ie}, no me env{ien/ies/ie} mas, ya no me
        env{ien/ies/ie}, no env{ien/ies/ie} mas, dej{en/a/e/es/ad} de escribir{me/}, dej{en/a/e/es/ad} de
        mandar{me/}, dej{en/a/e/es/ad} de enviar{me/}, dej{en/a/e/es/ad} de molestar{me/}, dej{en/a/e/es/ad} de
        mensajear{me/}, dej{en/a/e/es/ad} de textear{me/}, dejen de texting, deja de texting, par{en/a/e} de
        mandar{me/}|escribir{me/}|enviar{me/}, par{en/a/e} con los mensajes, basta de mensajes, no mas mensajes, no
        quiero mas mensajes, no quiero mensajes, no quiero sus mensajes, no quiero estos mensajes, no quiero que me
        escrib{an/as/a}|mand{en/es/e}|env{ien/ies/ie}|contact{en/es}, ya no quiero ..
        mensajes|recibir|textos|recordatorios|que, no deseo .. mensajes|recibir|textos, ya no deseo,
        quit{en/a/ame/enme/e/eme} .. lista, quit{ame/enme/eme} de, quiten mi numero, quita mi numero, quitar mi
        numero, sac{ame/enme/ame/a/ar/arme} de .. lista, saquen mi, sacame, saquenme de, elimin{en/a/ame/enme/ar/e}
        .. numero|lista|contacto|datos, elimineme, eliminenme, borr{en/a/ame/enme/e/ar} ..
        numero|lista|contacto|datos, borrame, borrenme, no me contact{en/es/e}, no me llam{en/es/e}, no me
        molest{en/es/e}, no molestar, no me text{een/ees}, cancel{en/a/ar} ..
        mensajes|suscripcion|textos|recordatorios, cancelar suscripcion, desuscrib{ir/irme/eme/anme}, anular
        suscripcion, bloque{ar/o/are/ando} .. numero, te bloqueo, ya paren, stop mensajes, alto a los mensajes, no
        mas textos, ya no mas textos, no mas por favor, dejeme en paz, deje de mandar, no vuelvan a escribir{me/},
        no me vuelvan a, ya no manden, ya no escriban, stop ya, stop por favor, stop please ya, stop porfa, parale a
        los mensajes, parenle, no sigan mandando, no sigas mandando, no quiero mas
        mensajitos|mensajes|textos|recordatorios|msj|msjs|sms|correos|avisos
    """,
    "notstop": """
        no me manden|mandes|pongan|pongas a|con otra|otro|la, no me llam{es/en/e} ahorita|hoy|estoy|tan|al,
        borrame|borreme|quitame|sacame|quitenme|saquenme|saqueme la|mi|el|un|una?
        cita|turno|hora|pestanas|extensiones|mia, dejen|deja|deje|dejes|paren de
        usar|poner|cobrar|cancelar|cambiar|hacer|jalar|arder|picar|moverme|moverla, sacame turno|cita|hora, no
        dejen|dejes|deje|paren de <manda>, no me? <manda> .. hasta|antes|despues|ahora|todavia|tan|temprano|noche,
        prefiero|quiero que me <manda>, quiero recibir, no quiero mensaje de, no me dejen|dejes sin <aviso>, no es
        que no me moleste{n/}, no me molesta{n/}, no me deja{n/} de, no deja de, basta de sol|agua|rimel, no me
        manden foto, deja de picar|arder|doler|llorar, paren de picar|arder|llorar, no me dej{es/en/e/eis} de
        mandar|enviar|escribir|avisar|recordar, no dej{es/en/e/eis} de
        mandar|enviar|escribir|avisar|recordar{me/}|avisarme|mandarme|enviarme|escribirme, me di|dieron|puse|dimos
        de baja sin|por querer|error|accidente|equivocacion, di de baja sin|por,
        quitame|quitenme|sacame|borrame|bajame de la|tu agenda|cita|turno, par{e/o/amos} de
        usar|comer|fumar|ir|ponerme|tocar|tocarme|tocarlas|rascar|rascarme|frotar|frotarme|llorar|correr|trabajar|dormir|quitar|quitarme|echar|echarme|lavar,
        no dejes|dejen|pares|paren de mandar{me/}|escribir{me/}|avisar{me/}|enviar{me/}|recordar{me/}, no paro|dejo
        de, no me escrib{as/an/a} hasta, no me mand{es/en/e} hasta, no me llam{es/en/e} hasta, no me escrib{as/an/a}
        ahora, me? di|dimos|doy|dado de baja del|de|en
        rimel|maquillaje|gimnasio|gym|trabajo|netflix|la|el|las|los|mis, quit{ame/enme/eme} de las|los|la|el
        1|2|3|4|5|6|7|8|9|10|11|12|lista de espera|lunes|martes|miercoles|jueves|viernes|sabado|domingo, de la lista
        de espera, no me quit{en/es/e}|sa{quen/ques/que}|borr{en/es/e}|elimin{en/es/e} de, por|al|a|via mi?
        correo|mail|email|whatsapp|wasap|wpp|e|otro en|mejor|vez|lugar|porfa|por|y|numero, en vez|lugar de
        sms|mensaje|mensajes|texto|textos|llamar|llamada, prefiero|mejor|quiero|pueden|puedes|podrian que? me
        escrib{an/as/a}|mand{en/es/e}|avis{en/es/e}|contact{en/es/e}|escribir|mandar al|por|a|en|antes,
        prefiero|mejor que me escrib{an/as}|mand{en/es}|avis{en/es}, pare|deje|paren|dejen|parar|dejar de
        llorar{me/le}|picar{me/le}|arder{me/le}|doler{me/le}|molestar{me/le} el|los|la|tanto|mi?, no me
        mandaste|mando|mandaron|llego|llegan|ha|escribiste|escribio|avisaste|avisaron|recordaste|contestaste|contesto|contestaron|respondiste,
        deje|dejo|deje el|un|tu|mi mensaje|recado|audio, paren|pares|parad de subir|cobrar|crecer|caer{se/},
        quit{amelas/enmelas/emelas}
        el|la|hoy|manana|lunes|martes|miercoles|jueves|viernes|sabado|domingo|cuando|este|esta, no quiero|necesito
        mas volumen|largas|largo|curva|curvas|grosor|cita|citas, quitar{me/} las|mis|estas pestanas|extensiones,
        quit{enme/ame/eme} las|mis|estas pestanas|extensiones, no me manden? la|el ubicacion|direccion|pin|link,
        manda{me/nme} un? mensaje|texto|whats cuando|si|al, pare|deje|paren|dejen de
        llorarme|picarme|arderme|dolerme|lagrimear|moverse|caerse|girarse|torcerse,
        mande|puse|escribi|envie|di|pulse stop|baja|alto sin|por querer|error|accidente, no
        paran|para|dejan|deja|paro|dejo de
        chulear{me/las}|preguntar{me/}|decir{me/}|mirar{me/las}|ver{me/las}|felicitar{me/}, ya no mas
        rimel|mascara|maquillaje|postizas, adios al? rimel|mascara|maquillaje|postizas|pestanas|pegamento,
        borr{a/en/e} mi|el|ese|lo mensaje|anterior|ultimo|que, para el, para la, no me baja, la hinchazon baja, de
        baja calidad, baja de, mas baja, de baja por maternidad, de baja laboral, estoy de baja, tan temprano, de
        madrugada, tan tarde, antes de las, despues de las
    """,
    "start": """
        reanud{en/ar/ame/a} .. mensajes|recordatorios|textos, otra vez los mensajes|recordatorios, de nuevo los
        mensajes|recordatorios, lo cancele sin querer, los pare sin querer, me di de baja sin querer, fue sin
        querer, activ{enlos/alos/enmelos/amelos/en/a/ame/enme} otra|de vez|nuevo, mande|puse|escribi|envie|pulse
        stop|baja|alto sin|por querer|error|accidente, vuelvan|vuelve a activar{los/me/}, me gustaria volver a
        recibir, quiero volver a recibir, volver a recibir, quiero recibir .. mensajes, suscribirme, suscribeme,
        volver a suscribir{me/}, vuelvan|vuelve|volver|vuelvas a
        avisarme|mandarme|escribirme|recordarme|meterme|incluirme|apuntarme|suscribirme|enviarme,
        vuelves|vuelven|volver|puedes|pueden a? meter|incluir|apuntar|anadir|agregar|suscribir ..
        avisos|lista|mensajes|recordatorios, quiero volver a recibir|estar, me di de baja sin|por
        querer|error|accidente|equivocacion, activame|actívame otra|de vez|nuevo, activ{en/ar/ame} ..
        mensajes|recordatorios, mandenme de nuevo, vuelvan a mandar{me/}
    """,
    "deceased": """
        ya? fallecio|murio mi|la|el|ella, mi mama|papa|esposa|hermana|abuela|tia|madre ya? fallecio|murio, ella ya
        fallecio|murio
    """,
    "wrong_person": """
        no soy|somos paola|daniela|maria|ana|laura|sofia|carla|andrea|lucia|rosa|karen|jessica|fernanda, soy un|una
        senor|senora|hombre de, no me pongo|puse|hago pestanas, no pedi ninguna, numero|telefono es de otra|otro|mi,
        duena|dueno de este numero|telefono|celular, soy su hijo|hija|nieta|nieto|marido yo, no soy clienta|cliente,
        jamas he ido, no he ido nunca, soy el del gas|agua|cable|internet, aca|aqui no es, se equivoco de, no es
        este numero, soy el|la viud{o/a} de, ella|el ya no esta, cel|celular|telefono|chip|numero|linea lo?
        compre|comprado usado|nuevo|de|hace, yo no me hago pestanas|unas|nada, no me hago pestanas, esto|aqui|este
        es|somos un|una|el|la
        taller|oficina|ferreteria|restaurante|consultorio|tienda|farmacia|negocio|carniceria|empresa|panaderia|colegio,
        equivocado|equivocada bro|amigo|hermano|compa|wey|mano|jefe, de donde sacaron|saco|sacaste mi|este, yo
        jamas|nunca he ido|fui|pise|estado, no soy soy su|el|la
        tio|tia|hermano|hermana|mama|papa|marido|esposo|hijo|hija|primo, ya no es de ella|el|esa, numero ya no es,
        este numero|telefono|celular|movil ya no, yo no soy, se equivoca, se equivoca usted, se ha equivocado, te
        has equivocado, se han equivocado, os habeis equivocado, se confundieron, se confundio de, te confundiste,
        no es el numero de, este celular|numero|telefono no, no soy la|el|esa|ese, equivocad{o/a} de, ella ya no
        tiene este, ya no tiene este cel|celular|numero|telefono, no soy .. ella ya no, yo no soy
        esa|esta|maria|ella, no soy maria|ana|rosa|la|esa|ella|quien, no soy su clienta|cliente, no se de que|quien,
        no conozco a, aqui no es, no fui yo, mal numero, no es aqui, numero equivocado, numero incorrecto,
        equivocad{o/a} de numero, numero equibocado, persona equivocada, se equivoc{o/aron} de, se equivoco, se
        equivocaron, te equivocaste, esta equivocad{a/o}, estas equivocad{a/o}, esta mal el numero, no soy
        lupita|paola|carmen|lucia|sofia|fernanda|daniela|laura|karla|claudia|gabriela|veronica|patricia|alejandra|andrea|brenda|monica|silvia|rosario|guadalupe|teresa|martha|leticia|elena|diana|valeria|camila|isabel|adriana|marisol|yolanda|juana|luisa|paula|natalia,
        soy su|el hermano|esposo|marido|novio|hijo|papa, busca|buscaba|buscas|buscan|buscaban a otra
        persona|chica|senora|mujer, a otra persona, soy hombre|senor|varon|el taxista|plomero|electricista, se
        equivoco|equivocaron|equivocaste de numero|persona|contacto, quien es, quien eres, quien sos, quien habla,
        quien escribe, no la conozco, no lo conozco, no los conozco, no te conozco, aqui no vive, aqui no hay
        ninguna, este numero no es, no es su numero, no es mi numero, no es el numero, nunca fui, nunca he ido, no
        uso pestanas, no tengo pestanas, soy hombre, equivocacion, no es conmigo, quien me escribe, quien me habla,
        no es ella
    """,
    "auto": """
        enviado desde mi, enviado desde el, enviado desde outlook, fuera de la oficina, respuesta automatica,
        mensaje automatico, estoy de vacaciones hasta, no estoy disponible, me encuentro fuera, estoy manejando, de
        licencia, regreso el
    """,
    "photo": "foto, imagen, video, audio, nota de voz, archivo, adjunto, sticker",
    "yes": """
        si, sii, sip, simon, claro, ok, vale, okey, oki, dale, poquito, un poco, un poquito, algo, mas o menos,
        tantito, ambas, obvio, aja, todas, todos, bueno, listo, sipi
    """,
    "no": """
        no, nop, nel, nada, ninguno, ninguna, para nada, nope, nanai, nunca, noo, nop nada, que va, no no
    """,
    "please": """
        por favor, porfa, porfavor, xfa, hola, gracias, buenas, tardes, dias, noches, buenos, pues, linda, amiga,
        hermosa, reina, si, jaja, jajaja
    """,
    "left": """
        ojo izquierdo, izquierd{o/a}, izq, el izquierdo, la izquierda, lado izquierdo, ojo izq, izqierdo,
        isquierd{o/a}, izkierdo, izqui, izquierdito
    """,
    "right": """
        ojo derecho, derech{o/a} .. <ojo>, el derecho, lado derecho, la derecha, ojo der, parpado derecho, der, del
        derecho, mi derecho, derechito, del lado derecho, en el derecho, derecho me, derecho esta, parpado der, solo
        derecho, ojo derech{o}, derecho, ojo derecho al|a|todo|me|se, el derecho al
    """,
    "both": """
        ambos, ambas, los dos, los 2, las dos, las 2, dos ojos, 2 ojos, los dos ojos, los 2 ojos, ojos los dos, cada
        ojo, en ambos, ambos lados, ninguno de los dos, ningun ojo, de los dos, a los dos, ls dos, en los dos, en
        ninguno
    """,
    "notside": """
        derecho a, derecho al, todo derecho, tengo derecho, siga derecho, las dos de la, a las dos, a las 2, las 2
        de, nos vemos los dos, los dos estamos, las dos semanas, los dos juntos
    """,
}
