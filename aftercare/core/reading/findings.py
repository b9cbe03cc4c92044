"""What a page tells of her signs: which are current, nearly over, over or denied, and which only look like signs."""

from __future__ import annotations

from dataclasses import dataclass

from aftercare.core.reading import grading, story, times
from aftercare.core.reading.elsewhere import is_elsewhere, is_of_a_thing
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.scope import Standing, standing_of
from aftercare.core.reading.tokens import ASK, listed
from aftercare.core.reading.words.tenses import PAST_WORDS, PRESENT_WORDS

# They grade a sign beside them and are none by themselves.
_GRADING = listed("sign:fever sign:headache sign:sickly sign:hospital! sign:agony")
_OF_LOOKS = listed("sign:burning sign:pain sign:swelling")  # "on fire (the good kind)"
_HABIT = listed("always usually normally siempre")
_STUCK = ("stuck", "stick", "glue", "gum", "pegad", "pego")
_SHUT = listed("""
    open opens opening shut closed cant cannot couldnt unable wont prise pry prying abrir abro abre abren abrirlo
    abrirlos puedo cerrado cerrados despegar despegarlos adhesive pegamento
""")
_CANT, _OPEN = listed("cant cannot wont"), listed("open abrir")
_OF_TODAY = PRESENT_WORDS | listed("like as same again this woke ive since still como igual otra desde sigo")
_NEAR = 6  # words
Stand = list[tuple[Mark, Standing]]


@dataclass(frozen=True, slots=True)
class Findings:
    """The marks of signs by how they stand; ``explained`` are those that look like current signs and are none.

    ``long_ago`` are whole clauses that tell only of years ago, and sentences that tell a story of others.
    """

    current: list[Mark]
    near: list[Mark]
    over: list[Mark]
    denied: list[Mark]
    explained: list[Mark]
    long_ago: list[Mark]

    @property
    def told(self) -> list[Mark]:
        """The signs there are: current and nearly over."""
        return [*self.current, *self.near]

    @property
    def telling(self) -> bool:
        """Whether there is a current sign, and not only what grades one."""
        return any(mark.name not in _GRADING for mark in self.current)


def sort_out(page: Page) -> Findings:
    """Return the signs of a page by how they stand."""
    of_eyes, of_others = _signs(page)
    stand = _standings(page, of_eyes)
    current = [mark for mark in _with(stand, Standing.CURRENT) if not _is_taken_back(page, mark, stand)]
    near = _with(stand, Standing.NEARLY_OVER)
    explained = [mark for mark, standing in stand if standing not in (Standing.CURRENT, Standing.NEARLY_OVER)]
    return Findings(
        current=current,
        near=near,
        over=_with(stand, Standing.OVER, Standing.DENIED_NOW),
        denied=_with(stand, Standing.DENIED, Standing.DENIED_NOW),
        explained=[*page.named("topic:figure"), *of_others, *explained],
        long_ago=_told_of_long_ago(page, current),
    )


def _told_of_long_ago(page: Page, current: list[Mark]) -> list[Mark]:
    """Return what only tells of years ago, or a story: "had a bad do with lash glue back in 2017"."""
    told = []
    of_others = story.sentences(page) - {page.sentence[mark.start] for mark in current}
    for where in of_others:
        places = [place for place, sentence in enumerate(page.sentence) if sentence == where]
        told.append(Mark("scope:tale", places[0], places[-1] + 1))
    for clause in {page.clause[mark.start] for mark in page.named("scope:past")}:
        places = [place for place, where in enumerate(page.clause) if where == clause]
        words = {page.tokens[place].word for place in places}
        if (
            words & PAST_WORDS
            and not words & _OF_TODAY
            and not any(page.clause[mark.start] == clause for mark in current)
        ):
            told.append(Mark("scope:past", places[0], places[-1] + 1))
    return told


def _signs(page: Page) -> tuple[list[Mark], list[Mark]]:
    """Return the signs, and what looks like one and is of another part of her, or of a thing."""
    found = [mark for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    found += _left_open(page)
    found.sort(key=lambda mark: (mark.start, -mark.end))
    found = grading.with_glue(page, found)
    others = [mark for mark in found if is_elsewhere(page, mark) or is_of_a_thing(page, mark)]
    found = [mark for mark in found if mark not in others]
    found = [mark for mark in found if not _is_stuck_by_discharge(page, mark, found)]
    found = [mark for mark in found if not _comes_up_in_spots(page, mark, found)]
    found = [mark for mark in found if not _is_shut_at_will(page, mark) and not _is_a_search(page, mark)]
    found = [mark for mark in found if not _is_blind_by_swelling(page, mark, found)]
    found = [mark for mark in found if not _is_shed_tears(page, mark) and not _is_tap_water(page, mark)]
    found = [mark for mark in found if not _is_cooking(page, mark)]
    if page.marks.get("scope:good_kind"):
        found = [mark for mark in found if mark.name not in _OF_LOOKS]
    return found, others


def _is_shed_tears(page: Page, mark: Mark) -> bool:
    """Bawled my eyes out in these, streaming, and not one moved: tears of a feeling."""
    if mark.name != "sign:watering":
        return False
    shed = (one for one in page.named("scope:wept") if not one.start or page.tokens[one.start - 1].word not in _AS_IF)
    return any(page.sentence[one.start] == page.sentence[mark.start] for one in shed)


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
_ONIONS = listed("onion onions cebolla cebollas")
_COMPARES = listed("like as if feels feel felt of though id como si smarting it theyre")


def _is_cooking(page: Page, mark: Mark) -> bool:
    """Chopped six onions for a biryani; but not: like chopping onions."""
    words = [token.word for token in page.tokens[max(0, mark.start - 3) : mark.end]]
    return words[-1] in _ONIONS and mark.name == "sign:burning" and not _COMPARES & set(words) and not _has_eyes(page)


def _has_eyes(page: Page) -> bool:
    return any(token.word in grading.EYES for token in page.tokens)


_SPOTS = listed("sign:rash sign:hives sign:hives!")


def _comes_up_in_spots(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """My lid is coming up in spots: a rash, and no swelling."""
    words = [token.word for token in page.tokens[mark.end - 1 : mark.end + 1]]
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


_SHUTS = listed("shut close closed")
_SCREWS = listed("screw screwing squeeze squeezing scrunch scrunching squint squinting shutting closing")


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


_AS_IF = listed("like though if ive i id as been")


def _left_open(page: Page) -> list[Mark]:
    """Take "cant open" with nothing behind it for her eye, where eyes are spoken of: "lids full of goo, cant open"."""
    words = [token.word for token in page.tokens]
    if not grading.EYES & set(words):
        return []
    ends = [place + 1 for place, word in enumerate(words) if word in _OPEN and place and words[place - 1] in _CANT]
    return [Mark("sign:sealed_eye!", end - 2, end) for end in ends if end == len(words) or not words[end].isalpha()]


def _is_stuck_by_discharge(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Stuck together with goo when she wakes: discharge, and no eye that will not open."""
    if mark.name != "sign:sealed_eye!" or _SHUT & {token.word for token in page.tokens}:
        return False
    if not any(token.word.startswith(_STUCK) for token in page.tokens[mark.start : mark.end]):
        return False
    near = range(mark.start - _NEAR, mark.end + _NEAR)
    goo = (other for other in found if other.name == "sign:discharge" and other.start in near)
    return any(page.sentence[other.start] == page.sentence[mark.start] for other in goo)


def _standings(page: Page, found: list[Mark]) -> Stand:
    stand = [(mark, standing_of(page, mark, found)) for mark in found]
    gone = {mark.name for mark, standing in stand if standing is Standing.DENIED_NOW}
    gone |= {
        mark.name for mark, standing in stand if standing is Standing.CURRENT and _was_and_is_not(page, mark, stand)
    }
    return [
        (mark, Standing.OVER if standing is Standing.CURRENT and mark.name in gone else standing)
        for mark, standing in stand
    ]


def _was_and_is_not(page: Page, mark: Mark, stand: Stand) -> bool:
    """It was sore. It is not sore now. -- They were pink when I left, the pink was gone by noon."""
    later = [(other, standing) for other, standing in stand if other.name == mark.name and other.start >= mark.end]
    denied = (other for other, standing in later if standing is Standing.DENIED)
    over = bool(later) and all(standing is Standing.OVER for _, standing in later)
    told = times.is_told_in_past(page, mark)
    return told and (over or any(times.is_told_of_now(page, other) for other in denied))


def _with(stand: Stand, *standings: Standing) -> list[Mark]:
    return [mark for mark, standing in stand if standing in standings]


def _is_taken_back(page: Page, mark: Mark, stand: Stand) -> bool:
    """Define red? Kidding, they're not red. -- A question or a twisted denial, plainly denied afterwards."""
    twisted = any(one.start <= mark.start < one.end + 4 for one in page.named("scope:nonneg"))
    asked = any(
        token.kind == ASK and where == page.sentence[mark.start]
        for token, where in zip(page.tokens, page.sentence, strict=True)
    )
    habit = bool(_HABIT & {token.word for token in page.tokens[max(0, mark.start - 4) : mark.start]})
    return any(
        standing is Standing.DENIED
        and other.name == mark.name
        and (habit or (twisted or asked) and other.start > mark.start)
        for other, standing in stand
    )
