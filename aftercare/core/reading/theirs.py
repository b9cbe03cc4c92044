"""What is another's by what is said of it: whom a wasp stings, whose eyes a teller tells of, a puppy's."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed

DOES = listed("""
    poked jabbed scratched hit kicked elbowed headbutted smacked licked rubbed threw stuck
""")
_BEFALLS = DOES | listed("stung bit pecked clawed whacked punched slapped clonked")
_ME = listed("me myself us i in")


def befalls_another(page: Page, sign: Mark, others: list[Mark]) -> bool:
    """A wasp stung the postman on the eyelid."""
    places = [place + 1 for place in range(sign.start, sign.end) if page.tokens[place].word in _BEFALLS]
    return any(0 <= one.start - place <= 1 and page.tokens[place].word not in _ME for place in places for one in others)


_MAY_BE_CLIENTS = listed("daughter wife missus girlfriend gf niece granddaughter client hija esposa novia sobrina")
_POSSESSIVE, _THEY_HAVE = listed("her his their"), listed("shes hes ella ellas ellos")
_EYE = 3  # words from "her" to "lids"


def are_the_tellers_own(page: Page, nearest: Mark, others: list[Mark]) -> bool:
    """My mam said her eyes are streaming: those of whoever says it, unless that may be the client herself."""
    word = page.tokens[nearest.start].word
    after = {token.word for token in page.tokens[nearest.end : nearest.end + _EYE]}
    if nearest.end != nearest.start + 1 or not (word in _THEY_HAVE or word in _POSSESSIVE and EYES & after):
        return False
    where = page.sentence[nearest.start]
    before = [one for one in others if one.start < nearest.start and page.sentence[one.start] == where]
    said = {token.word for one in before for token in page.tokens[one.start : one.end]}
    return bool(before) and not said & _MAY_BE_CLIENTS


_ANIMALS = listed("""
    dog cat puppy kitten horse pony hamster budgie parrot goat hen moggy perro perra perrita perrito gato gata gatita
    gatito caballo yegua
""")


def is_an_animals(page: Page, nearest: Mark) -> bool:
    """Puppy has red eyes, vet says allergy."""
    return bool(_ANIMALS & {token.word for token in page.tokens[nearest.start : nearest.end]})
