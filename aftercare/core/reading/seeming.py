"""Words that seem to name a sign and name none, or another one: tears at a film, tap water, an eye shut at will."""

from __future__ import annotations

from aftercare.core.reading import grading
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed


def without(page: Page, found: list[Mark]) -> list[Mark]:
    """Return the signs without those that only seem to be."""
    for seems in (_is_stuck_by_discharge, _comes_up_in_spots, _is_blind_by_swelling, _is_blind_by_tears):
        found = [mark for mark in found if not seems(page, mark, found)]
    alone = (
        _is_no_lack,
        _is_not_unclear,
        _is_shut_at_will,
        _is_a_search,
        _is_shed_tears,
        _is_tap_water,
        _is_cooking,
        _is_hungover,
        _is_a_shade_of,
        _is_like_a_splinter,
        _comes_up_red,
    )
    return [mark for mark in found if not any(seems(page, mark) for seems in alone)]


_STUCK = ("stuck", "stick", "glue", "gum", "pegad", "pego")
_SHUT = listed("""
    open opens opening shut closed cant cannot couldnt unable wont prise pry prying abrir abro abre abren abrirlo
    abrirlos puedo cerrado cerrados despegar despegarlos adhesive pegamento
""")
_NEAR = 6  # words


def _is_stuck_by_discharge(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Stuck together with goo when she wakes: discharge, and no eye that will not open."""
    if mark.name != "sign:sealed_eye!" or _SHUT & {token.word for token in page.tokens}:
        return False
    if not any(token.word.startswith(_STUCK) for token in page.tokens[mark.start : mark.end]):
        return False
    near = range(mark.start - _NEAR, mark.end + _NEAR)
    goo = (other for other in found if other.name == "sign:discharge" and other.start in near)
    return any(page.sentence[other.start] == page.sentence[mark.start] for other in goo)


_AS_IF = listed("like though if ive i id as been")


def _is_shed_tears(page: Page, mark: Mark) -> bool:
    """Bawled my eyes out in these, streaming, and not one moved: tears of a feeling."""
    if mark.name != "sign:watering":
        return False
    beside = (one for one in shed_tears(page) if not (mark.start <= one.start and one.end < mark.end))
    return any(page.sentence[one.start] == page.sentence[mark.start] for one in beside)  # not: "wept through the news"


def shed_tears(page: Page) -> list[Mark]:
    """Return the words that tell of tears of a feeling."""
    return [one for one in page.named("scope:wept") if not one.start or page.tokens[one.start - 1].word not in _AS_IF]


_SHUT_EYE = listed("sign:swollen_shut! sign:sealed_eye!")
_BY_NOW = listed("but now today still pero ahora hoy ya")  # "was stuck shut, but now I can't see out of it"
_CANT_SEE = (["cant", "see"], ["see", "out"], ["no", "veo"], ["not", "see"], ["barely", "see"])


def _is_blind_by_swelling(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Shut tight like a clam, can't see out of it: what is shut sees nothing, and that is no trouble of sight."""
    words = [token.word for token in page.tokens[mark.start : mark.start + 2]]
    return (
        mark.name == "sign:vision!"
        and words in _CANT_SEE
        and any(
            other.name in _SHUT_EYE
            and other.end <= mark.start
            and page.sentence[other.start] == page.sentence[mark.start]
            and not any(token.word in _BY_NOW for token in page.tokens[other.end : mark.start])
            for other in found
        )
    )


_FOR = listed("for through with from thru")
_TEARS = listed("tears tear dabbing wiping watering streaming water crying weeping leaking goo gunk gloop lagrimas")
_BY_TEARS = 4  # words from what she cannot see to what is in the way


def _is_blind_by_tears(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Can't see my knitting for dabbing: tears are in the way, where they are told as a sign."""
    if mark.name != "sign:vision!" or not any(other.name in _OF_TEARS for other in found):
        return False
    after = [token.word for token in page.tokens[mark.end - 1 : mark.end + _BY_TEARS]]
    return any(first in _FOR and _TEARS & set(after[place : place + 3]) for place, first in enumerate(after))


_OF_TEARS = listed("sign:watering sign:discharge")

_WATER = listed("water agua")
_WASHES = listed("""
    with warm cold tap hot cool lukewarm rinse rinsed rinsing wash washed washing flush flushed flushing splash splashed
    bathed con eche lave enjuague enjuagando lavado lavando tibia fria
""")
_WASHING = 4  # words before the water


def _is_tap_water(page: Page, mark: Mark) -> bool:
    """Rinsed my eye under water; can't prise it open even with warm water."""
    last = mark.end - 1
    if mark.name != "sign:watering" or page.tokens[last].word not in _WATER or last == mark.start:
        return False
    before = range(max(0, last - _WASHING), last)
    return any(page.tokens[place].word in _WASHES for place in before if page.sentence[place] == page.sentence[last])


_ON_THE, _CAME_OUT = listed("on over along the my both left right"), listed("salido salidos saliendo")
_OF_ONIONS = ("sign:burning", "sign:watering")
_ONIONS = listed("onion onions cebolla cebollas")
_COMPARES = listed("like as if feels feel felt reminds kind sort though id como si smarting it theyre")


def _is_cooking(page: Page, mark: Mark) -> bool:
    """Chopped six onions for a biryani; but not: like chopping onions."""
    words = [token.word for token in page.tokens[max(0, mark.start - 3) : mark.end]]
    return words[-1] in _ONIONS and mark.name in _OF_ONIONS and not _COMPARES & set(words) and not _has_eyes(page)


def _is_a_shade_of(page: Page, mark: Mark) -> bool:
    """My left eye is just a shade pinker: no shade over what she sees."""
    after = page.tokens[mark.end].word if mark.end < len(page.tokens) else ""
    shade = mark.name == "sign:vision!" and page.tokens[mark.end - 1].word == "shade"
    return shade and (after.endswith("er") or after in ("more", "less", "too"))


def _is_like_a_splinter(page: Page, mark: Mark) -> bool:
    """It's like a splinter in my lid: so it feels."""
    before = [token.word for token in page.tokens[max(0, mark.start - 2) : mark.start]]
    return mark.name == "sign:injury!" and before in (["like", "a"], ["like", "an"], ["como", "una"], ["como", "un"])


_COLOURS = listed("red pink bloodshot rosy")


def _comes_up_red(page: Page, mark: Mark) -> bool:
    """Eyelids came up red last night: no swelling."""
    words = [token.word for token in page.tokens[mark.end - 1 : mark.end + 1]]
    return mark.name == "sign:swelling" and words[0] == "up" and bool(_COLOURS & set(words[1:]))


_HANGOVER = listed("hangover hangovers resaca cruda")
_THINKS = listed("think thinks thought thinking reckon reckons assumed asked cree creen piensa piensan")


def _is_hungover(page: Page, mark: Mark) -> bool:
    """Blinds down and shades on, massive hangover: no word of eyes, nor of a likeness."""
    near = page.said(page.sentence[mark.start])
    return (
        mark.name == "sign:light"
        and bool(_HANGOVER & near)
        and not (_COMPARES | _THINKS) & near
        and not _has_eyes(page)
    )


def _has_eyes(page: Page) -> bool:
    return any(token.word in grading.EYES for token in page.tokens)


_SPOTS = listed("sign:rash sign:hives sign:hives!")


def _comes_up_in_spots(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """My lid is coming up in spots: a rash, and no swelling."""
    words = [token.word for token in page.tokens[mark.end - 1 : mark.end + 1]]
    if mark.name not in ("sign:swelling", "sign:swelling!"):
        return False
    spots = [other for other in found if other.name in _SPOTS]
    if mark.name == "sign:swelling" and words[:1] == ["up"] and _led_by_spots(page, mark, spots):
        return True
    if mark.name == "sign:swelling!" and words[0] in _CAME_OUT:
        return any(0 <= other.start - mark.end <= 1 for other in spots)  # "en los párpados me han salido granitos"
    if mark.name != "sign:swelling" or words not in (["up", "in"], ["out", "in"]):
        return False
    return any(other.start <= mark.end < other.end for other in spots)


def _led_by_spots(page: Page, mark: Mark, spots: list[Mark]) -> bool:
    """Rash on the lid came up Saturday."""
    return any(
        0 < mark.start - other.end <= len(_ON_THE)
        and all(token.word in _ON_THE for token in page.tokens[other.end : mark.start])
        for other in spots
    )


_LACKS = listed("falta faltan falto cuesta cuestan aprieta cierra ahoga")
_UNCLEAR = listed(
    "borroso borrosa borrosos doble dobles nublado nublada manchas luces destellos moscas mal raro puntos sombras"
)


def _is_no_lack(page: Page, mark: Mark) -> bool:
    """No me falta el aire: a denied lack of air, and no want of it."""
    words = [token.word for token in page.tokens[mark.start : mark.start + 3]]
    return mark.name == "sign:breathing!" and words[0] == "no" and bool(_LACKS & set(words[1:]))


def _is_not_unclear(page: Page, mark: Mark) -> bool:
    """No veo borroso ni doble: that she does not see at all is no part of it."""
    words = [token.word for token in page.tokens[mark.start : mark.end + 1]]
    return mark.name == "sign:vision!" and words[:2] == ["no", "veo"] and len(words) > 2 and words[2] in _UNCLEAR


_SHUTS = listed("shut close closed")
_SCREWS = listed(
    "keep keeping kept press pressing pressed force forcing hold holding screw screwing squeeze squeezing scrunch "
    "scrunching squint squinting shutting closing"
)


def _is_shut_at_will(page: Page, mark: Mark) -> bool:
    """It pokes the lids whenever I shut them; I screw my eyes shut."""
    words = [token.word for token in page.tokens[mark.start : mark.end]]
    if mark.name != "sign:sealed_eye!" or words[-1] not in _SHUTS:
        return False
    before = {token.word for token in page.tokens[max(0, mark.start - 2) : mark.start]}
    return words[-2:-1] == ["i"] or bool(before & _SCREWS)


def _is_a_search(page: Page, mark: Mark) -> bool:
    """Can't see any bumps: she looked for them, and sees."""
    if not mark.name.startswith("sign:vision"):
        return False
    ends = {one.end for one in page.named("scope:not") if one.start == mark.start and one.end > mark.end}
    return any(other.start in ends for name, marks in page.marks.items() if name.startswith("sign:") for other in marks)
