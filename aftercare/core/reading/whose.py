"""Whose a sign is."""

from __future__ import annotations

import itertools

from aftercare.core.reading import theirs
from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.proxies import is_grave, is_written_for_her
from aftercare.core.reading.tokens import WORD, listed

_HIS = listed("he hes his him")  # nobody at the studio; of an alarm it may be a client that somebody writes for
PRONOUNS = listed("he she shes hes her his him hers el ella ellas ellos se le les")


def persons(page: Page) -> list[Mark]:
    """Return the words for others; "she" without anybody named before is the artist, who has no signs."""
    named: list[Mark] = []
    graver = is_grave(page)
    for mark in page.named("scope:other"):
        if (
            _is_herself(page, mark)
            or _is_spoken_to(page, mark)
            or _is_likeness(page, mark)
            or _is_one_of_us(page, mark)
            or _is_told(page, mark)
        ):
            continue
        words = {token.word for token in page.tokens[mark.start : mark.end]}
        if named or not words <= PRONOUNS or words <= _HIS and not graver:
            named.append(mark)
    return named


def _is_herself(page: Page, mark: Mark) -> bool:
    """I'm a teacher; as a mother; as a second year optom student."""
    before = [token.word for token in page.tokens[max(0, mark.start - _TITLE) : mark.start]]
    named = not _OWNED & set(before) and any(one in _I_AM and then in _A for one, then in itertools.pairwise(before))
    return (named or bool(_I_AM & set(before[-2:]))) and page.tokens[mark.start].word not in _SOME_WOMAN


_A, _OWNED = listed("a an una un"), listed("and my his her their our whose but with y mi su")
_TITLE = 6  # tokens
_I_AM = listed("im am as soy")
_SOME_WOMAN = listed("woman girl lady man guy")  # "I'm the woman who comes out in a rash"


_SO, _DO = listed("so neither nor"), listed("is are was were does did do has have would will can could")


def _is_one_of_us(page: Page, mark: Mark) -> bool:
    """Me and mum both have red eyes; obsessed with them, and so was my sister: what follows is not hers alone."""
    if any(own.start < mark.start and mark.end <= own.end for own in page.named("scope:self")):
        return True
    before = [token.word for token in page.tokens[max(0, mark.start - 3) : mark.start]]
    return any(first in _SO and then in _DO for first, then in itertools.pairwise(before))


_ALL, _TELLING = listed("everyone everybody anyone people"), listed("tell told telling show showed showing recommend")


def _is_told(page: Page, mark: Mark) -> bool:
    """I tell everyone about you but there is a bit of stinging: it is not everyone's."""
    before = page.tokens[mark.start - 1].word if mark.start else ""
    return before in _TELLING and page.tokens[mark.start].word in _ALL and mark.end == mark.start + 1


_LIKENESS = 3  # tokens before the other one in which "like a" stands


def _is_likeness(page: Page, mark: Mark) -> bool:
    """Shaking like a wet dog; pale as a bride: nobody else is there. Like my sister's: somebody is."""
    words = [token.word for token in page.tokens[max(0, mark.start - _LIKENESS) : mark.start]]
    return any(first in ("like", "as") and then in ("a", "an", "some") for first, then in itertools.pairwise(words))


_HELLO = listed("bestie besties sis bro mate ma pal hun nena tia mama mami amiga amigo amigas comadre mija")
_HELLO_WITH_COMMA = listed("sister brother auntie aunty aunt mum mom prima hermana hermano madre nan") | _HELLO
_CALLS = listed(
    "shame ag oh hey yo yoh ey nah yeah aw aww ah come damn jeez sheesh hell cheers ta eish haibo nice lovely thanks "
    "sorry no yes ok"
)
_WHOSE = listed("my mine his her hers our their your a an the this that one another some mi mis su sus tu una un la el")


def _is_spoken_to(page: Page, mark: Mark) -> bool:
    """Bestie they are so cute; no itching at all, ma; tía, no veas."""
    tokens = page.tokens
    if mark.end - mark.start > 1 or mark.start and tokens[mark.start - 1].word in _WHOSE:
        return False
    word = tokens[mark.start].word
    if word in ("man", "girl", "guys") and mark.start and tokens[mark.start - 1].word in _CALLS:
        return True
    opens = not mark.start or tokens[mark.start - 1].kind != WORD
    closes = mark.end == len(tokens) or tokens[mark.end].kind != WORD
    if word in _HELLO and (opens or closes):
        return True
    return word in _HELLO_WITH_COMMA and closes


_THEIRS = listed("hers theirs")
_SEEING = listed("saw seen noticed clocked spotted")


def _is_compared(page: Page, place: int) -> bool:
    """Say whether "ever" stands there: "my patient had the worst one I ever saw" is not about her."""
    return 0 <= place < len(page.tokens) and page.tokens[place].word == "ever"


_HOPES, _YOURS = listed("hope hopes hoping espero ojala saludos"), listed("your yours ur yer tu tus su sus")


def _is_asked_after(page: Page, mark: Mark, sign: Mark) -> bool:
    """Hope your mum's ok, woke up and can't see out the right: what follows the kind wish is her own."""
    clause = page.clause[mark.start]
    words = {token.word for token, where in zip(page.tokens, page.clause, strict=True) if where == clause}
    return bool(words & _HOPES and words & _YOURS) and page.clause[sign.start] != clause


def _does_to_another(page: Page, own: Mark) -> bool:
    """My toddler poked dad in the eye: not her."""
    return page.tokens[own.end - 1].word in theirs.DOES and any(
        0 <= one.start - own.end <= 1 for one in page.named("scope:other")
    )


_SAYS = listed("says said say reckons thinks told")
_SEES_ME = _SEEING | listed("met hugged kissed passed at")
_AND_WENT = listed("went goes turned became was got looked")


def _is_seen_by_another(page: Page, own: Mark) -> bool:
    """Ex saw me and went red: the one who sees goes on."""
    words = [token.word for token in page.tokens[max(0, own.start - 1) : own.end + 2]]
    return (
        len(words) == 4
        and words[0] in _SEES_ME
        and words[1] in ("me", "us")
        and (words[2] in ("and", "then") and words[3] in _AND_WENT)
    )


_POSSESSIVE = listed("her his their")
_PARTS = listed("face eyes eye cheeks chin nose head")


def _is_theirs_behind(page: Page, sign: Mark, others: list[Mark]) -> bool:
    """Tears streaming down his face, where he was named before."""
    words = [token.word for token in page.tokens[sign.end : sign.end + 2]]
    behind = len(words) == 2 and words[0] in _POSSESSIVE and words[1] in _PARTS
    return behind and any(mark.start == sign.end for mark in others)


def _is_theirs_within(page: Page, mark: Mark, sign: Mark) -> bool:
    """Couldn't open her eyes for a week; an alarm only where it is of the past, as the client may be meant."""
    if sign.name.endswith("!") and not page.marks.get("scope:past"):
        return False
    return mark.end < sign.end and page.tokens[mark.start].word in _POSSESSIVE and mark.end == mark.start + 1


_TURN = [
    ["now", "its", "me"],
    ["now", "its", "mine"],
    ["now", "its", "my"],
    ["now", "me", "too"],
    ["ahora", "soy", "yo"],
]
_EYE_OF_HERS = EYES | listed("left right one")


def _is_hers_after_all(page: Page, sign: Mark) -> bool:
    """Usually my cat has runny eyes, now it's me; she's swole, my eyelid I mean; wouldn't wish this on my ex."""
    words = [token.word for token in page.tokens]
    if any(words[place : place + 3] in _TURN for place in range(sign.end, len(words) - 2)):
        return True
    if any(mark.start < sign.start and "wish" in words[mark.start : mark.end] for mark in page.named("scope:nonneg")):
        return True
    return any(
        words[place : place + 2] == ["i", "mean"]
        and words[place - 1] in _EYE_OF_HERS
        and "my" in words[place - 3 : place]
        for place in range(sign.end + 1, len(words) - 1)
    )


def _is_hers_too(page: Page, sign: Mark) -> bool:
    """My aunt had the same once: hives all over, and that is how I woke today."""
    return any(
        mark.start >= sign.end and page.sentence[mark.start] == page.sentence[sign.start]
        for mark in page.named("scope:returns")
    )


def is_another_persons(page: Page, sign: Mark) -> bool:
    """Say whether a sign is told of somebody else: "my aunt had hives once"."""
    sentence = page.sentence[sign.start]
    if is_written_for_her(page) or _is_hers_too(page, sign):
        return False
    if any(mark.start <= sign.start < mark.end and _does_to_another(page, mark) for mark in page.named("scope:self")):
        return True
    nearest: Mark | None = None
    others = [mark for mark in persons(page) if not _is_asked_after(page, mark, sign)]
    if _is_theirs_behind(page, sign, others) or theirs.befalls_another(page, sign, others):
        return True
    own = [
        mark
        for mark in page.named("scope:self")
        if not any(one.start < mark.start and mark.end <= one.end for one in others)
        and not _is_compared(page, mark.end)
        and not _is_seen_by_another(page, mark)
    ]
    for mark in sorted((*others, *own), key=lambda one: one.start):
        in_sign = mark.name == "scope:self" and mark.start < sign.end and mark.end - mark.start > 1  # "in my eye"
        in_sign = in_sign or mark.name == "scope:other" and _is_theirs_within(page, mark, sign)
        if page.sentence[mark.start] == sentence and (mark.start <= sign.start or in_sign):
            if mark.start == sign.start and mark.name == "scope:other":
                continue
            if nearest is None or mark.start > nearest.start or mark.end > nearest.end:
                nearest = mark
    if nearest is None or nearest.name == "scope:self" or _is_hers_after_all(page, sign):
        return False
    if page.tokens[nearest.start].word in _THEIRS and nearest.end == nearest.start + 1:
        return True  # "she reckons hers burned"
    if theirs.is_an_animals(page, nearest):
        return True
    if not sign.name.endswith("!") and theirs.are_the_tellers_own(page, nearest, others):
        return True
    return not any(
        page.sentence[mark.start] == sentence
        and mark.start < sign.start
        and mark.end >= nearest.start - 1
        and not (page.tokens[mark.start].word in _SAYS and mark.end == nearest.start - 1)  # "vet says the cat's got …"
        and not any(_is_seen_by_another(page, own) for own in page.named("scope:self") if own.start == mark.end)
        and not _is_compared(page, mark.start - 1)
        and not (mark.start < nearest.start and page.tokens[mark.start].word in _SEEING)  # "saw a woman whose eyes …"
        for mark in page.named("scope:report")
    )
