"""Everyday wordings of signs, alarms, what is over and what only sounds like one, judged as replies are labelled."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read

TODAY = """
    i look like i went ten rounds with a boxer, right side only
    my lids feel tight and puffy
    feels like someones rubbed chilli in them
    they sting like mad in the shower
    lashes stuck together with yellow goo when i wake
    i cant stop scratching at them
    my waterline is raw
    little bumps along my lash line
    skin around my eyes is peeling
    dry flaky patch under the right eye
    like an eyelash is stuck under the lid but theres nothing there
    theres a scratchy feeling every blink
    wind makes them stream
    sunlight hurts a bit today
    headlights were dazzling and hurt last night
    whites of my eyes are pink
    bloodshot since yesterday
    veins in my eye are really showing
    tender to touch on the outer corner
    throbbing behind my eyelid
    my eye aches
    kinda sore tbh
    left eye feels heavy and swollen
    puffed up like a marshmallow
    its weeping a lot
    got a stye coming i think
    one of the fans is digging in
    the tape left my under eye red raw
    feels hot and itchy along the band
    my eyelids are burning up
    tengo los ojos como tomates
    me arden un buen
    se me hinchó el párpado derecho
    me lloran los ojos
    amanecí con los ojos pegados de lagañas
    siento como arenita
    me duele al tocar
    tengo ronchitas en el párpado
    me molesta la luz
    me pica muchísimo el izquierdo
    traigo el ojo rojo
    se me está pelando la piel del párpado
    me pincha una pestaña
    los párpados me queman
    my eyelid's gone all lumpy
    got a blister on my lid
    skin's cracking at the corner of my eye
    eye feels bruised
    lids feel like sandpaper
    everything stings when i put drops in
    it hurts to close my eyes
    blinking is uncomfortable
    my eyes keep welling up
    constant tears
    tissue in hand all day with these eyes
    eyes are glassy and pink
    pinkish ring around the eye
    it's gone red along where the glue is
    lash line looks inflamed
    angry looking lid
    my left eye isn't happy, all red
    eye's a bit angry today
    lids look swollen like i've been crying
    bags under my eyes doubled in size overnight
    one eye smaller than the other cos its puffy
    looks like a bee got me on the eyelid
    allergic reaction i think, eyes itching like crazy
    feels tingly and itchy at the roots
    driving me mad with the itch
    want to claw my eyes out
    scratchy and dry
    gravelly feeling
    something in my eye that wont come out
    a bit of fibre or something stuck in there
    end of a lash is jabbing my eyeball
    one extension is curling into my eye
    there's crust in my lashes every morning
    yellow stuff in the corner
    stringy mucus
    gooey eyes
    weeping yellowy liquid
    sensitive to light since the appointment
    have to wear sunglasses inside
    screens are hurting my eyes
    vision slightly smeary but clears when i blink
    hazy for a sec then fine when i blink
    stinging a lot, is that ok?
    ouch ouch ouch, left eye
    eyes feel super hot
    burny feeling
    sore lids, both
    sharp twinge when i look up
    my eye is pulsing
    a dull ache behind the eye
    pinching feeling at outer corner
    pulling sensation and it hurts
    flaky lids
    dandruff on my eyelids
    scaly red patch
    spots on my eyelid
    a whitehead on the lash line
    eyelid twitching and red
    traigo un ojo bien irritado
    me raspa al parpadear
    tengo comezón en los ojos
    los ojos me rascan
    me late el párpado y duele
    tengo bolsas hinchadas
    me salió un granito en el párpado
    veo medio nublado pero parpadeo y se quita
    me lastima la luz del sol
    me escuecen los ojos
    tengo los ojos llorosos
    ojo izquierdo colorado
    párpado inflamado
    me molesta al cerrar el ojo
    tengo secreción amarilla
    se me despelleja el párpado
    siento un pinchazo
    me punza el ojo
    ardorcito todo el día
"""

NOW = """
    i cant see out of my left eye
    my vision has gone dark on one side
    everything is double
    seeing flashes of light since this morning
    it's all blurry and won't clear
    throat feels like its closing up
    im wheezing and my chest is tight
    my tongue is swelling
    lips are huge and tingly
    my whole face is swollen
    hives everywhere, arms legs tummy
    i fainted after i got home
    glue got in my eye and it burns
    remover dripped into my eye
    nail glue in my eye help
    my eye is glued shut
    cant open either eye
    swollen shut this morning
    worst pain of my life in my eye
    unbearable pain, cant cope
    one pupil is bigger than the other
    my eye is bulging
    it hurts to move my eye
    i stabbed my eye with the tweezers
    eye is bleeding
    red eye and the light is agony
    red eye with a splitting headache and vomiting
    swollen hot lid and a fever
    my eye is so dark red its almost black
    no veo nada con el derecho
    veo doble
    se me cierra la garganta
    no puedo abrir el ojo
    me cayó removedor en el ojo
    se me hinchó toda la cara
    me desmayé
    tengo ronchas en todo el cuerpo
    un dolor insoportable en el ojo
    me entró pegamento
    veo borroso y no se quita
    tengo fiebre y el párpado caliente e hinchado
    me falta el aire
    tengo la lengua hinchada
    me piqué el ojo con las pinzas
    can hardly breathe right now
    struggling to catch my breath
    throat is tight
    lips swelling up fast
    face is ballooning
    covered in welts head to toe
    nearly passed out
    collapsed at work
    feel like im going to pass out, eyes swelling
    can't see properly out of one eye at all
    there's a black spot in my vision
    lost sight in my left eye for a minute
    seeing double
    wavy lines in my vision
    everything's foggy and blinking doesn't help
    sudden floaters and flashes
    acetone splashed in my eye
    some primer went in my eye and its burning
    superglue in my eye
    they glued my lids together, cannot separate
    eyelids sealed
    eye wont open at all
    swollen so bad my eye is closed
    agony
    pain is off the scale
    screaming in pain here, my eye
    pupils are different sizes
    eyeball sticking out
    hurts when i move my eye side to side
    mascara wand went in my eye and it's bleeding
    eye is deep red like blood
    red eye, cant bear light
    bad headache, vomiting, red eye
    fever and hot swollen eyelid
    en urgencias, no veo
    me ahogo
    se me inflamó la lengua
    perdí la vista un momento
    veo manchas negras y destellos
    me cayó acetona en el ojo
    ojo cerrado de la hinchazón, no abre
    dolor horrible que no aguanto en el ojo
    una pupila más grande
    se me salta el ojo
    me duele mover el ojo
    ojo rojo y la luz me mata
    calentura y párpado hinchado
"""

OVER = """
    was red but not anymore
    they were itchy the first night, fine since
    had a bit of swelling sunday which went by monday
    the burning only lasted ten minutes
    stung going home, gone by teatime
    puffiness has all but disappeared
    soreness nearly gone now
    a little pink at first, cleared up on its own
    woke up puffy but it went down after an hour
    itching stopped after i brushed them
    no longer watering, phew
    eyes ran a bit in the salon, nothing after
    had some grittiness the first day, settled
    it was tender yesterday, today it isnt
    slight redness that faded overnight
    the swelling has come right down
    redness almost gone
    only a touch pink now
    they did itch a bit but that's passed
    felt scratchy day one, grand now
    was sore to touch for a day, back to normal
    less itchy every day
    not nearly as red as yesterday, basically gone
    tuve rojo el primer día pero ya no
    me picaban pero ya se me pasó
    estaban hinchados y ya bajaron
    ya casi no me arde
    el ardor duró poquito, ya estoy bien
    la irritación ya se fue
    amanecí hinchada pero se bajó solo
    ayer me lloraban, hoy ya no
    ya se me quitó lo rojo
"""

NO_SIGN = """
    no redness, no swelling, nothing
    not itchy at all
    zero irritation so far
    they don't hurt
    no pain thankfully
    eyes feel fine
    haven't had any reaction
    nothing to report
    my sister had swollen eyes after hers
    what should i do if they get itchy?
    is redness common?
    last year i reacted to a different glue
    these lashes are killer
    i'm crying they're so beautiful
    my boyfriend is blind to it lol
    to die for
    hot stuff
    sick lashes girl
    the price stung a bit haha
    it was painless
    no burning this time
    didn't sting like last time
    can you see me sooner?
    see you friday
    i can see a gap on the left
    one fell off on the right
    red lipstick looks great with them
    my eyes were watering from laughing
    sore loser haha my friend is jealous
    light fluffy set please
    do you have pink ones
    sin molestias
    no me pican ni nada
    cero rojo
    no me arde
    ¿es normal que piquen los primeros días?
    si se me hinchan qué hago?
    a mi hermana se le hincharon
    el año pasado me dio alergia
    me muero, están divinas
    me encantan, lloré de la emoción
    qué bonito ojo
    they don't itch at all which is a first
    any redness? nope
    not a single sting this time
    didn't even feel it
    never had an issue with swelling
    my old salon always left me red, you never do
    my friend got itchy from hers
    i'd tell you if they hurt lol
    can lashes cause itching?
    should i worry if i get a red eye?
    does the glue sting when it dries?
    is there a risk of swelling?
    the remover burned last time at another place
    i used to get pink eye a lot as a kid
    hay fever makes my eyes itch every spring anyway
    allergic to cats so eyes are always like this
    red carpet ready!
    these are on fire
    burning question: do you do brows?
    pain in the bum to get parking
    itching to see you again
    my heart hurts to cancel
    sore throat so need to move my appt
    poked my head in but you were busy
    feeling swell
    i'm blind without my glasses so will squint
    hot date tonight
    heavy traffic
    no me pica ni tantito
    ni rojo ni nada
    cero molestias
    ¿y si me pica qué hago?
    a mi prima le ardieron los suyos
    me arde la envidia jaja
    qué dolor de cabeza el tráfico
    estoy ciega sin lentes jaja
    mi hijo tiene conjuntivitis, puedo ir?
"""


def lines(text: str) -> list[str]:
    return [line.strip() for line in text.strip().splitlines()]


@pytest.mark.parametrize("text", lines(TODAY))
def test_a_sign_is_told_in_many_words(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


@pytest.mark.parametrize("text", lines(NOW))
def test_so_is_what_must_be_acted_on_now(text: str) -> None:
    assert read(text).urgency is Urgency.EMERGENCY


@pytest.mark.parametrize("text", lines(OVER))
def test_what_is_over_or_nearly_is_watched(text: str) -> None:
    assert read(text).urgency is Urgency.WATCH


@pytest.mark.parametrize("text", lines(NO_SIGN))
def test_what_is_denied_asked_somebody_elses_or_a_figure_of_speech_is_no_sign(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.unread) == (Urgency.NONE, False)
