"""The table of what is never said to a client, in both languages.

It leans towards too much: a sentence that trips it can always be put another way, and a client who was told that all is
well may wait with an eye that should have been seen. The reasons: the NHS advice on red eyes (reviewed 2022-03-21) and
the American Academy of Ophthalmology's on extensions send her to be seen; formaldehyde was found in extension glues
(Amano, Sugimoto, Sugita, Cornea 2012); about a third of allergic reactions show only after two days (Uter and others,
Am J Contact Dermat 1996;7:231), so no test is "passed".
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum

HEALTH = frozenset({"patch_test", "care", "check", "answer", "caution"})
VISIT = frozenset({"prepare", "opt_in", "notice", "how_to_stop"}) | HEALTH
EVERYWHERE: frozenset[str] = frozenset()


_INSTRUCTS = r"use|take|apply|put|try|get|buy|but|then|usa|toma|aplica|pon|ponte|prueba|compra|pero|luego"


class Unless(Enum):
    """What lets a phrase stand, right before it or earlier in its sentence."""

    NOTHING = re.compile(r"(?!)")
    NOT_BEFORE = re.compile(
        r"(?:\b(?:not|never|cannot be|nunca|sin|no (?:es|son|esta|estan|se ve|se ven|parece|parecen))|n't) "
        r"(?:(?:a|an|the|be|look|feel|seem|un|una|ser|estar) )?$"
    )
    # "No mascara or oil" may stand; "if it does not stop, take …" and "no rest: use oil" may not.
    NO_BEFORE = re.compile(
        r"(?<!\bif )(?:\b(?:no|not|never|without|avoid|skip|nor|sin|evita|nunca|nada de|ni)|n't)\b(?!,)"
        rf"(?: (?:{_INSTRUCTS})\b)?(?:(?!\b(?:{_INSTRUCTS})\b).){{0,80}}$"
    )
    # What is owed for a visit informs, and is named before its amount; “only $40” advertises.
    OWED_BEFORE = re.compile(
        r"\b(?:deposit|balance|fee|charge[ds]?|owe|cash|missed|cancel\w*|due on the day|"
        r"deposito|senal|saldo|cargo|cobra\w*|efectivo|cancela\w*|debes)\b(?:(?!\b(?:only|just|from|solo|desde)\b).){0,60}$"
    )
    IF_BEFORE = re.compile(
        r"\b(?:if|whether|in case|unless|(?:do|does|did)(?: it| they| that| this)?|si|por si) "
        r"(?:you think |crees que )?$"
    )


@dataclass(frozen=True, slots=True)
class Phrase:
    """Something never said: its pattern on folded text, why, the cure, what lets it stand, where it is unwelcome."""

    pattern: re.Pattern[str]
    why: str
    cure: str
    unless: Unless = Unless.NOTHING
    occasions: frozenset[str] = EVERYWHERE


def _phrase(
    alternatives: str,
    why: str,
    cure: str,
    unless: Unless = Unless.NOTHING,
    occasions: frozenset[str] = EVERYWHERE,
) -> Phrase:
    """Make a phrase of alternatives, one a line, each a pattern of whole words."""
    patterns = "|".join(line.strip() for line in alternatives.strip().splitlines())
    return Phrase(re.compile(rf"(?<!\w)(?:{patterns})(?!\w)"), why, cure, unless, occasions)


PHRASES: tuple[Phrase, ...] = (
    _phrase(
        r"""
        normal(?:ly|es|mente)?
        safe(?:r|st)?
        safely(?! home)
        harmless(?:ly)?
        fine(?! (?:\w+ )?(?:lash|lashes|hair|hairs|mist|tip|tips|line|point))
        segur[oa]s?
        inofensiv[oa]s?
        inocu[oa]s?
        """,
        "It tells her that all is well, which nobody can know from here.",
        "Name the signs and what to do instead.",
        Unless.NOT_BEFORE,
    ),
    _phrase(
        r"""
        nothing to (?:worry|be worried) about
        no need to worry
        (?:not?|do not|don't) (?:to )?worry
        no worries
        no cause for (?:concern|alarm)
        all (?:clear|good|well)
        (?:is|are|all|you're) ok(?:ay)?
        (?:not|nothing|isn't) (?:\w+ )?serious
        no big deal
        all resolved
        nada (?:de|por) (?:que|lo que) preocuparse
        no te preocupes
        sin preocupaciones
        no pasa nada
        no es (?:nada|grave)
        todo (?:esta |va |ira |estara )?bien
        esta(?:s|ras|ra|n)? bien
        tranqui(?:la)?
        no hay (?:ningun )?(?:problema|peligro|de que preocuparse)(?! (?:con|para|si)\b)
        """,
        "It tells her that all is well, which nobody can know from here.",
        "Name the signs and what to do instead.",
    ),
    _phrase(
        r"""
        (?:it's|that's|they're|everything's|this is) (?:all |perfectly |totally )?(?:ok(?:ay)?|al(?:l )?right)
        (?:you|it|they|that|this|eyes?|everything|all)(?:'ll| will| should) be (?:ok(?:ay)?|al(?:l )?right)
        you(?:'re| are) (?:all )?(?:good|al(?:l )?right)(?! (?:to|at|for)\b)
        (?:everything|all|it|that|this|eyes?|lids?)(?: all)? looks? (?:good|ok(?:ay)?|al(?:l )?right)(?! on\b)
        nothing(?:'s| is)? (?:wrong|bad|dangerous)
        (?:it|that|this)(?:'s| is) (?:not|hardly) (?:\w+ )?dangerous
        (?:(?:it|that|this)(?:'s| is) )?probably nothing
        (?:is|are|it's|that's) (?:very |quite |pretty |so |really )?common(?! sense)
        (?:it|that|this)(?:'s not| is not| isn't) an emergency(?! (?:line|number|room|service))
        es (?:muy |bastante )?(?:comun|frecuente|habitual)
        no es (?:una )?(?:emergencia|urgencia)
        """,
        "It tells her that all is well, which nobody can know from here.",
        "Name the signs and what to do instead.",
        Unless.IF_BEFORE,
    ),
    _phrase(
        r"""
        wait and see
        wait (?:it out|a (?:day|bit|few days|couple of days))
        see how it goes
        give it (?:time|a (?:day|bit|few days|couple of days))
        (?:will|\w+'ll|should|may|usually|tends? to) (?:\w+ )?(?:settle|go (?:away|down)|calm down|clear up)
        (?:will|\w+'ll|should|may|usually|tends? to) (?:\w+ )?(?:wear off|disappear|be gone|heal)
        (?:will|\w+'ll|should|usually) (?:\w+ )?(?:feel|get) better(?! \w*(?:lash|result|retention))
        (?:will|\w+'ll|should) be better (?:soon|tomorrow|by|in an?|within)
        (?:it|this|that|they|redness|swelling|itching|itch|burning|irritation)(?: \w+)? go(?:es)? (?:away|down)
        (?:it|this|that|they|redness|swelling|itching|itch|burning|irritation)(?: \w+)? gets? better
        (?:usually|mostly|generally|always) (?:clears?|settles?|goes (?:away|down)|improves)
        clears? up (?:by itself|on its own|in an?)
        (?:no need (?:to|for)|(?:don't|do not) need)(?: \w+){0,4} (?:doctors?(?!')|hospital|er|eye care|urgent care)
        no (?:doctor|hospital) (?:is )?(?:needed|necessary)
        (?:it|this|that|they|these)(?: will|'ll| should| usually)(?: \w+)? (?:pass|clear|improve|get better)
        settles?(?: down)? (?:by itself|on its own|in an?)
        lids? (?:will )?part (?:by themselves|in 1)
        espera (?:a ver|y veras|unos dias|un dia)
        se (?:te |le )?(?:pasara|quitara|calmara|ira)
        ya (?:se )?(?:pasara|pasa|quita)
        se (?:te |le )?(?:pasa|quita|va)(?:ra)? (?:sol[oa]|en (?:un|unos|unas|dos|tres)|pronto|manana)
        se te va a (?:pasar|quitar)
        (?:mejorar(?:a|as|an)|(?:estaras|te sentiras) mejor)
        no (?:necesitas|hace falta|es necesario)(?: \w+){0,4} (?:medic[oa]|oculista|hospital|urgencias)
        dale (?:tiempo|unos dias|un dia)
        """,
        "It tells her to wait, and an eye may not be able to.",
        "Say when to see a doctor or an eye doctor instead.",
    ),
    _phrase(
        r"""
        (?:only|just|merely)(?: (?:an?|some|mild|little|slight|bit of))* (?:irritations?|irritated|reaction|redness)
        (?:only|just|merely)(?: (?:an?|some|mild|little|slight|bit of))* allerg(?:y|ic)
        you(?:'re| are)(?: \w+)? (?:allergic|infected|sensiti[sz]ed)
        you(?:'ve| have| got|'ve got)(?: an?)?(?: \w+)? (?:infection|allergy|conjunctivitis|pink ?eye|blepharitis|stye)
        (?:it|this|that)(?:'s| is)(?: (?:probably|likely))?(?: an?)? (?:allergy|allergic|infection|irritation)
        (?:it|this|that)(?:'s| is)(?: (?:probably|likely))?(?: an?)?(?: \w+)? (?:reaction|conjunctivitis|pink ?eye|stye)
        (?:looks?|sounds?|seems?)(?: like| to be)?(?: an?)?(?: \w+)? (?:allerg(?:y|ic)|infect(?:ed|ion))
        (?:looks?|sounds?|seems?)(?: like| to be)?(?: an?)?(?: \w+)? (?:irritat(?:ed|ion)|pink ?eye|stye)
        (?:looks?|sounds?|seems?)(?: like| to be)?(?: an?)?(?: \w+)? (?:conjunctivitis|blepharitis)
        you (?:may|might|could|must|probably|likely)(?: be| have)?(?: an?)?(?: \w+)? (?:allerg(?:y|ic)|infect(?:ed|ion))
        you (?:may|might|could|must|probably|likely)(?: have)?(?: an?)? (?:conjunctivitis|pink ?eye|blepharitis|stye)
        (?:solo|solamente) (?:es )?(?:una )?(?:irritacion|alergia|reaccion)
        eres (?:\w+ )?alergica
        tienes (?:(?:una|un) )?(?:\w+ )?(?:infeccion|alergia|conjuntivitis|blefaritis|orzuelo)
        es (?:probablemente )?una (?:alergia|infeccion|irritacion)
        (?:parece|sera|puede ser|suena a)(?: ser)?(?: una?)? (?:alergia|infeccion|irritacion|conjuntivitis|orzuelo)
        """,
        "It is a diagnosis, which only a doctor can make.",
        "Say what she noticed, and that a doctor or an eye doctor should look at it.",
        Unless.IF_BEFORE,
    ),
    _phrase(
        r"""
        anti-?histam\w+
        (?:cortico)?e?steroid(?:e?s)?|corticoides?
        (?:hydro)?cortisone|(?:hidro)?cortisona
        antibiotics?|antibioticos?
        ointments?|pomadas?|unguentos?
        painkillers?|pills?|tablets?|pastillas?
        ibuprofen|paracetamol|acetaminophen|aspirin|naproxen|cetirizine|loratadine|diphenhydramine
        ibuprofeno|acetaminofen|aspirina|naproxeno|cetirizina|loratadina|difenhidramina
        (?:eye|allergy|lubricating)[- ]?drops?|artificial tears|colirios?|gotas(?! de agua)
        (?:use|put|try|take|apply|some|the|with|your|a few) drops
        \d+ ?(?:mg|mcg|ml)
        allergy (?:medicines?|medications?|meds?)
        (?:use|take|apply|try|buy|put on)(?! any\b)(?: an?| some| your| the)?(?: \w+)? (?:creams?|gel(?! pads?))
        (?:use|take|try|buy|get)(?! any\b)(?: an?| some| your| the)?(?: \w+)? (?:medicines?|medications?|meds)
        saline|suero(?: fisiologico)?|(?:some|with|use|put|try|apply) honey|cucumbers?|pepino
        washcloths?|cold spoons?
        tea ?bags?|camomile|chamomile|bolsitas? de te|te (?:verde|negro)|manzanilla
        oils?(?![- ]free)|aceites?
        breast ?milk|leche materna
        aloe(?: vera)?|vaseline|vaselina|petroleum jelly
        (?:ice ?)?compress(?:es)?|ice ?packs?|compresas?|hielo
        """,
        "It is a medicine, a dose or a home remedy.",
        "Leave it out: a doctor or pharmacist says what to take. Rinsing with clean lukewarm water may be said.",
        Unless.NO_BEFORE,
    ),
    _phrase(
        r"""
        hypo[- ]?allergenic
        formaldehyde[- ]free
        (?:free (?:of|from)|no|without) formaldehyde
        hipoalergenic[oa]s?
        (?:sin|libres? de) formaldehido
        """,
        "Nobody can promise it: glue sold with such words has caused reactions all the same.",
        "Leave it out.",
    ),
    _phrase(
        r"""
        (?:take|taking|peel|pull|soak|pick|get|slide|remov\w+|dissolv\w+)(?: [\w',-]+){0,6} (?:at home|yourself)
        at home,?(?: [\w',-]+){0,3} (?:take|peel|pull|soak|pick|remove|dissolve)(?: \w+){0,3} (?:lashes|extensions|them)
        (?:quit|retir|despeg|arranc|remuev)\w+(?: [\w,-]+){0,6} (?:en (?:tu )?casa|tu misma|tu sola|por tu cuenta)
        """,
        "It says how to take lashes off at home.",
        "Say that lashes come off at the studio, or by a clinician in an emergency.",
        Unless.NO_BEFORE,
    ),
    _phrase(
        r"""
        pass(?:ed|es)?(?: \w+){0,4} (?:patch )?tests?
        tests?(?: \w+){0,3} (?:passed|cleared|negative)
        tests? (?:was|is|were|looks?|looked|came (?:back|out)) (?:all )?(?:clear|good|clean|ok(?:ay)?|al(?:l )?right)
        cleared for
        good to go
        (?:prueba|test)(?: \w+){0,4} (?:superad|aprobad|pasad|negativ)[oa]
        (?:pasaste|superaste|aprobaste) (?:la|el|tu)
        """,
        "A patch test is never passed: it can only have shown no sign so far.",
        "Say “no sign reported”, or leave it out.",
    ),
    _phrase(
        r"""
        [$£€] ?\d[\d.,]{0,12}
        \d[\d.,]{0,12} ?(?:[$£€]|usd|eur|gbp|dollars?|euros?|pounds?|dolares|pesos)
        """,
        "It is an advertisement in a message about a visit or about health, which needs another consent.",
        "Keep prices for the reminders. A deposit or a fee is named before its amount: “The deposit is $20”.",
        Unless.OWED_BEFORE,
        VISIT,
    ),
    _phrase(
        r"""
        \d+ ?(?:%|percent) (?:off|de descuento)
        discounts?|special offers?|coupons?|promo(?:tion)?s?(?: codes?)?|prices?
        book (?:now|today|here|online|your)
        (?:on|for|flash|big) sale
        (?:great|best|special) deals?
        gift (?:cards?|vouchers?)
        refer a friend
        free (?:fills?|sets?|upgrades?|gifts?|lift)
        gratis
        rebajas?
        tarjetas? (?:de )?regalo
        descuentos?|ofertas?|cupon(?:es)?|promocion(?:es)?|precios?
        reserva (?:ya|ahora|hoy|aqui|tu)
        """,
        "It is an advertisement in a message about a visit or about health, which needs another consent.",
        "Keep prices and offers for the reminders.",
        occasions=VISIT,
    ),
    _phrase(
        r"""
        https?://\S+
        www\.\S+
        \d+ ?(?:%|percent|por ciento)
        """,
        "A message about health carries neither links nor percentages.",
        "Leave it out.",
        occasions=HEALTH,
    ),
    _phrase(
        r"""
        (?:come|pop|drop|stop|swing) (?:in|by|over|back|round)
        come to (?:the studio|us)
        come (?:and )?see us
        (?:book|make)(?: an?)? (?:appointment|visit)s?
        (?:ven|pasate|acercate|pasa|vente)(?: \w+){0,2} (?:estudio|salon|aqui)
        (?:haz|pide|reserva) (?:una|tu) cita
        """,
        "A visit with the studio is not the answer to a sign in an eye.",
        "Send her to emergency eye care or a doctor; a person of the studio calls her.",
        Unless.NO_BEFORE,
        frozenset({"answer", "caution"}),
    ),
    _phrase(
        r"""
        eyes?|eye ?lids?|lids?|vision|ojos?|parpados?
        allerg\w+|alergi\w+|reactions?|reacted|reaccion(?:es)?|infect\w+|infeccion(?:es)?|irritat\w+|irritacion(?:es)?
        swell\w*|swollen|hinchad[oa]s?|hinchazon|itch\w*|picor(?:es)?|picazon|burning|ardor|sore|rash(?:es)?|redness
        symptoms?|sintomas?|patch[- ]?tests?|pruebas? de parche|sensitiv\w+|sensibles?|sensibilidad
        doctors?|medic(?:al|ation|ations|ine|ines|os?|as?|amentos?)|pregnan\w+|embaraz\w+|chemo\w*|quimio\w*
        """,
        "It is a word on health, and a screen with a notice to all of a day is read by others.",
        "Leave it out, or write to her alone.",
        occasions=frozenset({"notice"}),
    ),
)
SHORTENERS = re.compile(
    r"(?<![\w.])(?:bit\.ly|tinyurl\.com|t\.co|goo\.gl|ow\.ly|is\.gd|buff\.ly|rebrand\.ly|cutt\.ly|rb\.gy|t\.ly|shorturl\.at|"
    r"tiny\.cc|s\.id|v\.gd|bl\.ink|lnkd\.in|soo\.gd)(?![\w.-])",
    re.IGNORECASE,
)
