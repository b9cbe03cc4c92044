"""What is said of a thing, or of another part of her: the price hurts, her feet are swollen."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import COMMA, WORD, listed

_WIDE = listed("""
    sign:unwell sign:blood sign:irritated
    sign:pain sign:burning sign:rash sign:itching sign:swelling sign:redness sign:pain! sign:watering
    sign:redness!
""")
_POSSESSIVE = listed("both my the her his your our in mi la el las los mis su tu")
_OF_HERS = EYES | listed("lashes corner corners lashline waterline tearduct lagrimal comisura")
_AND = listed("and n y")
_BEFORE, _AFTER = 7, 6  # tokens within which the other part stands


_OF_THINGS = _WIDE | listed("sign:vision sign:vision! sign:sealed_eye! sign:light sign:poking sign:gritty")
_IS = listed("""
    is was are were goes go went looks look says say wont
    wouldnt doesnt dont hurts hurt made stings stung
    duele dolio pica pico arde ardio quema quemo sale salio salieron salen quedo quedaron
""")
_IN = listed("en con por")
_REACH = 4


def is_of_a_thing(page: Page, sign: Mark) -> bool:
    """Say whether the words are said of a thing: the price hurts, the page is blurry, the door won't open."""
    if sign.name not in _OF_THINGS:
        return False
    if _exclaims_at(page, sign):
        return True
    clause = page.clause[sign.start]
    for thing in page.named("scope:thing"):
        if page.clause[thing.start] != clause or not 0 <= sign.start - thing.end <= _REACH:
            continue
        if _IN & {token.word for token in page.tokens[max(0, thing.start - 2) : thing.start]}:
            continue  # "en el coche arde"
        following = {token.word for token in page.tokens[thing.end : sign.end]}
        if following & _IS and not _speaks_of_eyes(page, clause):
            return True
    return False


_EXCLAIMS = listed("ouch oof ow oww owch auch ay")
_MONEY = listed("""
    price prices cost costs bill bills fee fees total rent tax mot fine ticket overdraft deposit pounds quid dollars
    euros bucks much precio cuenta multa renta factura
""")


def _exclaims_at(page: Page, sign: Mark) -> bool:
    """Tax bill. Ouch. -- A cry in a sentence of its own, behind one about money and not about eyes."""
    here = page.sentence[sign.start]
    words = page.said(here)
    if not any(word in _EXCLAIMS for word in words) or len(words) > 2:
        return False
    before = {token.word for token, at in zip(page.tokens, page.sentence, strict=True) if here - 3 <= at < here}
    return bool(before & _MONEY) and not any(token.word in _OF_HERS for token in page.tokens)


def _speaks_of_eyes(page: Page, clause: int) -> bool:
    return any(token.word in _OF_HERS for token, where in zip(page.tokens, page.clause, strict=True) if where == clause)


def is_elsewhere(page: Page, sign: Mark) -> bool:
    """Say whether the words are about another part of her: her back, her feet, her purse."""
    if _are_tired_legs(page, sign) or _is_after_the_dentist(page, sign):
        return True
    if sign.name not in _WIDE or page.tokens[max(0, sign.start - 2)].word == "wish":
        return False  # "wouldn't wish this itch on my ex"
    clause = page.clause[sign.start]
    before = page.tokens[sign.start - 1]
    joined = clause - 1 if before.word in _AND else clause  # "my knee is swollen and throbbing"
    near = before.kind == COMMA and _is_of_a_limb(page, sign, clause - 1)
    near = near or any(
        page.clause[other.start] in (clause, joined)
        and not _runs_there(page, sign, other)
        and -_BEFORE <= other.start - sign.start <= _AFTER
        and _is_owned(page, other)
        and not _is_her_tool(page, other, sign)
        for other in page.named("scope:elsewhere")
    )
    return near and not _speaks_of_eyes(page, clause) and not _so_do_eyes(page, clause)


_FEW = 7  # words


def _so_do_eyes(page: Page, clause: int) -> bool:
    """My back hurts, and my eye too: what is said of the one is said of the other."""
    places = [place for place, where in enumerate(page.clause) if where == clause + 1]
    words = [page.tokens[place].word for place in places if page.tokens[place].kind == WORD]
    if not places or page.sentence[places[0]] != page.sentence[places[0] - 1] or words[:1] and words[0] not in _AND:
        return False
    signs = {mark.start for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks}
    return len(words) <= _FEW and bool(_OF_HERS & set(words)) and not signs & set(places) and not _WELL & set(words)


_WELL = listed("fine ok okay good grand perfect great lovely bien perfecto perfectos not no")


_LIMBS = listed("""
    ankle ankles knee knees foot feet leg legs toe toes wrist wrists elbow elbows hip hips shoulder shoulders rib ribs
    tobillo rodilla pie pies pierna piernas muneca codo
""")


def _is_of_a_limb(page: Page, sign: Mark, clause: int) -> bool:
    """I've done my ankle in, swollen like a melon: what follows a comma with nothing else between is of the same."""
    limbs = (one for one in page.named("scope:elsewhere") if page.clause[one.start] == clause)
    same = page.sentence[sign.start] == page.sentence[sign.start - 1]
    return same and any(page.tokens[one.start].word in _LIMBS and _is_owned(page, one) for one in limbs)


_TOOLS = listed("hand hands finger fingers nail nails knuckle knuckles fist fists cheek cheeks")
_BY_TOOLS = listed("sign:itching sign:watering")


def _is_her_tool(page: Page, part: Mark, sign: Mark) -> bool:
    """Sitting on my hands so I don't scratch; wet tracks down my cheeks: part of what is said of her eyes."""
    inside = sign.start <= part.start and part.end <= sign.end
    return inside and sign.name in _BY_TOOLS and page.tokens[part.end - 1].word in _TOOLS


_DOWN = listed("down onto over along por")
_DOWN_IT = 3  # tokens: "down both my cheeks"


def _runs_there(page: Page, sign: Mark, part: Mark) -> bool:
    """Tears run down my cheeks: they come from her eyes."""
    before = {token.word for token in page.tokens[max(0, part.start - _DOWN_IT) : part.start]}
    return sign.name == "sign:watering" and bool(_DOWN & before)


_LEGS = listed("legs knees piernas rodillas")
_SPORT = listed("""
    gym spin spinning squats lunges crossfit marathon workout pilates hike hiked sentadillas gimnasio maraton zumba
    burpees hiit hen dancing danced dancefloor disco festival stairs stilettos
""")


def _are_tired_legs(page: Page, sign: Mark) -> bool:
    """Did the spinning class, my legs are shaking: no faint."""
    said = {token.word for token in page.tokens[sign.start : sign.end]}
    return sign.name == "sign:faint!" and bool(said & _LEGS) and any(token.word in _SPORT for token in page.tokens)


_TOOTH, _OUT = listed("tooth teeth molar wisdom"), listed("out pulled extracted removed yanked")
_OF_FACE = listed("sign:swelling! sign:swelling sign:pain sign:pain!")


def _is_after_the_dentist(page: Page, sign: Mark) -> bool:
    """Had a tooth out, face like a football."""
    if sign.name not in _OF_FACE or page.said(page.sentence[sign.start]) & _OF_HERS:
        return False
    words = [token.word for token in page.tokens[: sign.start]]
    return any(word in _TOOTH and _OUT & set(words[place + 1 : place + 3]) for place, word in enumerate(words))


# Parts that need no "my" where a sentence begins with them; "back" and "hand" have other meanings there.
_PARTS = listed("""
    legs feet foot knees knee shoulders arms hands ankles thighs calves shins hips nose scalp stomach tummy belly
    piernas pies brazos manos hombros rodillas
""")


_BESIDE = listed("by near beside towards nearest")


def _is_owned(page: Page, part: Mark) -> bool:
    """Say whether a part is hers: "my hand", not "on the left hand side" nor "like a sunburn"; "legs are on fire"."""
    before = page.tokens[part.start - 1] if part.start else None
    if page.tokens[part.start].word == "nose" and _BESIDE & {
        token.word for token in page.tokens[max(0, part.start - 2) : part.start]
    }:
        return False  # "a bit of swelling by the nose": the corner of her eye
    if before is None or before.kind != WORD:
        sentence = page.sentence[part.start]
        return (
            page.tokens[part.start].word in _PARTS and not page.said(sentence) & EYES
        )  # "nose is itchy and so are my eyes"
    if before.word not in _POSSESSIVE:
        return False
    return part.end == len(page.tokens) or page.tokens[part.end].word != "side"
