"""What clauses tell of somebody else alone: "the parrot pecked my nephew near his eye"."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.proxies import is_written_for_her
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.told_on import MAY_BE_CLIENTS
from aftercare.core.reading.whose import PRONOUNS, persons

_HERSELF = listed("i im ive ill id me my mine myself we our us yo mi mis me mio mios tengo estoy siento traigo")
_COMPARES = listed("like as than wish como que")
_NEAR = 5  # words before somebody in which a comparison stands


def clauses(page: Page, current: list[Mark]) -> list[Mark]:
    """Return the clauses that tell of somebody else and nothing of herself: "the parrot pecked his eye".

    Of whoever may be a client, of what others say to her, and of what others are only compared with, none.
    """
    if is_written_for_her(page) or MAY_BE_CLIENTS & {token.word for token in page.tokens}:
        return []
    taken = {page.clause[mark.start] for mark in (*current, *page.named("scope:self", "scope:report"))}
    found = []
    told_of = [mark for mark in persons(page) if _is_told_of(page, mark) and not _is_compared(page, mark)]
    for clause in dict.fromkeys(page.clause[mark.start] for mark in told_of):
        places = [place for place, where in enumerate(page.clause) if where == clause]
        said = {page.tokens[place].word for place in places}
        owned = _HERSELF & said - _OWNER_OF_OTHERS
        if clause not in taken and not owned and not _speaks_of_these_eyes(page, places):
            found.append(Mark("scope:others", places[0], places[-1] + 1))
    return found


_AT_HAND = listed("these this both either each estos este ambos")


def _speaks_of_these_eyes(page: Page, places: list[int]) -> bool:
    """Kids run away screaming when they see these eyes."""
    return any(page.tokens[place].word in EYES and page.tokens[place - 1].word in _AT_HAND for place in places[1:])


def tell_of_eyes(page: Page, clauses: list[Mark]) -> bool:
    """Say whether it is their eyes, or what ails them, that is told of: "the parrot pecked my nephew near his eye"."""
    signs = [mark for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    for clause in clauses:
        said = {token.word for token in page.tokens[clause.start : clause.end]}
        if said & EYES or any(clause.start <= mark.start < clause.end for mark in signs):
            return True
    return False


_OWNER_OF_OTHERS = listed("my mi our")  # "my horse has a bad eye"; her own eye is a mark of herself


_ONE_OF_THEM = listed("my our the a an his her their that this one some mi mis el la los las un una su al del")


def _is_told_of(page: Page, person: Mark) -> bool:
    """Say whether a word for somebody is more than a turn of speech: "my mate", "she", and not "shame man"."""
    before = page.tokens[person.start - 1].word if person.start else ""
    return person.end - person.start > 1 or before in _ONE_OF_THEM or page.tokens[person.start].word in PRONOUNS


def _is_compared(page: Page, person: Mark) -> bool:
    return bool(_COMPARES & {token.word for token in page.tokens[max(0, person.start - _NEAR) : person.start]})
