"""What goes with words that are explained: the place that is named with them, the clause about somebody else.

Of "no bumps along the lash line" the second opinion would else see "no, along the lash line"; of "our pug has one red
eye" that there is an eye.
"""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.proxies import is_written_for_her
from aftercare.core.reading.tokens import COMMA, WORD, listed
from aftercare.core.reading.whose import persons

_PLACES = EYES | listed("""
    left right izquierdo derecho
    lash lashline line corner corners side sides waterline rim rims edge edges whites lashes middle slightest least
    comisura comisuras esquina esquinas lado lados pestanas borde medio
""")
_LEADS = listed("""
    in on along around round near under at of to by from off within across over inside above below in the a an my me
    mine either both each one left right upper lower top bottom inner outer end bit part going all whatsoever skin very
    en la el los las de del mis mi por sobre izquierdo derecho izquierda derecha ambos dos cada un una lado
    como unas unos varias dos tres cuatro cinco seis like about two three four five six seven
""")
_LINKS = listed("""
    are r is look looks looked feel feels felt were was been have has havent hasnt isnt arent dont doesnt not no didnt
    wasnt werent at all even a bit my the both left right either neither one or nor and any still not so far much
    no esta estan se me tengo tiene los las mis el mi ni siento nada
""")
_ON_THE_WAY = _LINKS | _LEADS | listed("going getting looking already")
_FURTHEST = 9  # words before or after
_BARE = listed("""
    gap gaps gappy bald balding bare sparse patchy thin thinning thinner hole holes hueco huecos rala ralas ralo ralos
    pelona pelonas pelado pelada calva calvas missing clump handful few half couple crossed twisted crooked lost fallen
    cayeron caen cae caido caida
""")

_ACCOUNTED = listed("""
    topic:fine topic:plain topic:figure topic:booking topic:question topic:complaint topic:thanks topic:wrong_person
    topic:stop scope:unmet scope:work scope:tale scope:past scope:calm
""")
_SOME_WORDS = 4  # of fewer a clause tells nothing: "love them", "lol anyway"


def known_clauses(page: Page, explained: list[Mark]) -> set[int]:
    """Return the clauses of which the rules know what they say."""
    asked = page.asked()
    clauses = {clause for clause, where in zip(page.clause, page.sentence, strict=True) if where in asked}
    return clauses | {page.clause[mark.start] for mark in (*page.named(*_ACCOUNTED), *explained)}


def accounted(page: Page, known: set[int]) -> bool:
    """Say whether every clause says something that the rules know, so that nothing else can be of the same eye.

    "Lids aren't swollen, one of them feels like a coal": what the coal is in, only the first clause tells.
    """
    words: dict[int, int] = {}
    for token, clause in zip(page.tokens, page.clause, strict=True):
        words[clause] = words.get(clause, 0) + (token.kind == WORD)
    return all(clause in known or count < _SOME_WORDS for clause, count in words.items())


def place_with(page: Page, mark: Mark) -> Mark:
    """Return the mark with the part of the eye that is named before or after it: "lids are not swollen"."""
    return Mark(mark.name, _start_of_place(page, mark), _end_of_place(page, mark))


def _end_of_place(page: Page, mark: Mark) -> int:
    end = mark.end
    for place in range(mark.end, min(len(page.tokens), mark.end + _FURTHEST)):
        token = page.tokens[place]
        if token.kind != WORD or page.clause[place] != page.clause[mark.end - 1]:
            break
        if token.word in _PLACES:
            end = place + 1
        elif token.word not in _LEADS:
            break
    return end


def _start_of_place(page: Page, mark: Mark) -> int:
    start = mark.start
    for place in range(mark.start - 1, max(-1, mark.start - 1 - _FURTHEST), -1):
        token = page.tokens[place]
        if token.kind != WORD or page.clause[place] != page.clause[mark.start]:
            break
        if token.word in _PLACES:
            start = place
        elif token.word not in _ON_THE_WAY:
            break
    return start


def bare_places(page: Page, current: list[Mark]) -> list[Mark]:
    """Return the places where lashes are missing: "a gap in the middle of my left eye"; nothing beside a sign."""
    clauses = {page.clause[mark.start] for mark in current}
    found = []
    for mark in page.named("topic:retention"):
        if page.clause[mark.start] in clauses:
            continue
        said = {token.word for token in page.tokens[mark.start : mark.end]}
        if not (_BARE & said or _LASHES & page.said(page.sentence[mark.start]) and not _went_in(page, mark)):
            continue
        start, end = _start_of_place(page, mark), _and_more_places(page, _end_of_place(page, mark))
        found += [
            Mark(mark.name, first, last) for first, last in ((start, mark.start), (mark.end, end)) if first < last
        ]
    return found


_LASHES = listed("lashes extensions extension fans fan ones cluster clusters spikes pestanas extensiones")


def _went_in(page: Page, mark: Mark) -> bool:
    """Some lashes came off in my eye: where they went, and not where they are missing."""
    return bool({"in", "into"} & {token.word for token in page.tokens[mark.end - 1 : mark.end + 1]})


def _and_more_places(page: Page, end: int) -> int:
    """Return the end of a clause behind that only names places: "crossed over each other, both eyes"."""
    place = end
    while place < len(page.tokens) and page.tokens[place].kind == WORD and page.clause[place] == page.clause[end - 1]:
        place += 1
    if place == len(page.tokens) or page.tokens[place].kind != COMMA:
        return end
    last = place + 1
    while last < len(page.tokens) and page.tokens[last].kind == WORD and page.tokens[last].word in _LEADS | _PLACES:
        last += 1
    closes = last == len(page.tokens) or page.tokens[last].kind != WORD
    return last if closes and last > place + 1 else end


_FEARS = listed("thought expected figured convinced sure dreaded scared afraid worried braced bracing pense crei temia")


def feared(page: Page, mark: Mark) -> Mark:
    """Return an imagined sign with all that was imagined: "thought I'd come out looking like a boxer".

    What is only asked stays, where she does not say that all is well: "does the burning end eventually".
    """
    clause = page.clause[mark.start]
    heads = [one for one in page.named("scope:will", "scope:if") if page.clause[one.start] == clause]
    heads = [one for one in heads if one.start <= mark.start]
    fears = any(_FEARS & {token.word for token in page.tokens[one.start : one.end]} for one in heads)
    if not fears and not page.named("topic:fine", "topic:plain"):
        return mark
    placed = place_with(page, mark)
    return Mark(mark.name, min([placed.start, *(one.start for one in heads)]), placed.end)


_HERSELF = listed("i im ive me mine myself id ill we yo mio mios mias conmigo me tengo")


def clause_of_another(page: Page, mark: Mark, current: list[Mark], known: set[int]) -> Mark:
    """Return the mark with what its clause tells of somebody else: "our pug has one red weepy eye".

    Not where she goes on about herself in words that the rules do not know: "with me it's the whole face".
    """
    clause = page.clause[mark.start]
    if any(page.clause[one.start] == clause for one in current) or is_written_for_her(page):
        return mark
    own = {
        page.clause[place] for place, token in enumerate(page.tokens) if token.word in _HERSELF and place > mark.start
    }
    if own - known:
        return mark
    persons = [one.start for one in page.named("scope:other") if page.clause[one.start] == clause]
    return _to_the_end(page, Mark(mark.name, min([mark.start, *persons]), mark.end)) or mark


def _to_the_end(page: Page, mark: Mark) -> Mark | None:
    """Return the mark up to the end of its clause, None where that tells of herself."""
    end = mark.end
    while end < len(page.tokens) and page.clause[end] == page.clause[mark.start] and page.tokens[end].kind == WORD:
        end += 1
    told = {token.word for token in page.tokens[mark.start : end]}
    return None if told & _HERSELF else Mark(mark.name, mark.start, end)


def _sentence_of(page: Page, mark: Mark) -> Mark | None:
    """Return the mark up to the end of its sentence, None where that speaks of eyes again, or of herself."""
    end = mark.end
    while end < len(page.tokens) and page.sentence[end] == page.sentence[mark.start]:
        end += 1
    told = {token.word for token in page.tokens[mark.end : end]}
    return None if told & (_HERSELF | EYES | _OWNED) else Mark(mark.name, mark.start, end)


_OWNED = listed("my mi mis")
_OPENING = 2  # tokens of a clause within which the other one stands: "and our pup's eyes"


def clauses_of_others(page: Page, current: list[Mark], known: set[int]) -> list[Mark]:
    """Return clauses that open with somebody else and tell of an eye: "our pup's eyes haven't opened yet"."""
    if current or is_written_for_her(page):
        return []
    own = {page.clause[place] for place, token in enumerate(page.tokens) if token.word in _HERSELF}
    if own - known:
        return []
    found = []
    for person in persons(page):
        clause = page.clause[person.start]
        first = page.clause.index(clause)
        if person.start - first > _OPENING or any(
            page.clause[one.start] == clause for one in page.named("scope:report")
        ):
            continue
        whole = _to_the_end(page, Mark("scope:other", first, person.end))
        if whole is not None and EYES & {token.word for token in page.tokens[whole.start : whole.end]}:
            found.append(_sentence_of(page, whole) or whole)
    return found
