"""Common words of English and Spanish, by which the two are told from each other and from the rest."""

from __future__ import annotations

from aftercare.core.reading.tokens import listed

ENGLISH = listed("""
    i im ive my me the a an and is are was were it its they theyre them this that these you your youre we so to
    of in on for with at not no dont cant doesnt isnt have has had be been do does did am will just but all very
    too from what how when if or can could would should get got out up off about there here more some any now
    today yesterday since after before love thanks thank please hi hey lol yes yeah hello good great fine ok
    okay left right eye eyes lid lids lash lashes red itchy swollen sore hurt hurts burning see feel look looks
    still one really little bit kinda like never only because she he her his our stop text texting wrong number
    as by new day night morning week nope same set help who u r ur n pls thx ty book appointment late fill
    tomorrow need want going think know swelling itching itch burns pain watery something nothing cannot hasnt
    havent wont gonna girl omg haha perfect gorgeous beautiful natural
""")
SPANISH = listed("""
    que de la el los las un una unos unas y o pero con por para mi mis me se te tu su lo le les no si sip ya muy
    mas como esta estan estoy tengo tiene hay es son fue era ayer hoy anoche ahora desde bien gracias hola ojo
    ojos parpado parpados pestanas izquierdo derecho pica pican arde arden duele duelen rojo rojos hinchado
    hinchados nada todo todos mucho mucha poco poquito cuando porque donde puedo quiero necesito cita buenas
    buenos dias tardes noches amiga reina quedaron encanta encantaron del al en sin ni tambien solo siento sigue
    usted ustedes ese eso esto estas aqui favor porfa jaja jajaja bendiciones perdon disculpa manana horas
    lagrimeo ronchas veo respirar abrir tragar garganta cara labios dolor comezon picazon q xq bn tqm ando
    traigo amaneci tantito nomas chica linda lindas hermosa hermosas hermoso perfecto perfectas cero otra otro
    hinchazon ardor picor ardia picaba enrojecimiento lagrima lagrimas lagana laganas bajo bajando mejorando quitando
    quito quita va van volvio tuve estuve estaba estaban tenia luego despues sus desperte miro dos tres perro perros gente duermo dormi senora doctora
""")
