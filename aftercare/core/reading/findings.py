"""What a page tells of her signs: which are current, nearly over, over or denied, and which only look like signs."""

from __future__ import annotations

from dataclasses import dataclass

from aftercare.core.reading import around, grading, hyperbole, others, seeming, shedding, story, times
from aftercare.core.reading.elsewhere import is_elsewhere, is_of_a_thing
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.scope import Standing, standing_of
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.words.tenses import PAST_WORDS, PRESENT_WORDS

# They grade a sign beside them and are none by themselves.
_GRADING = listed("sign:fever sign:headache sign:sickly sign:hospital! sign:agony")
_OF_LOOKS = listed("sign:burning sign:pain sign:swelling")  # "on fire (the good kind)"
_HABIT = listed("always usually normally siempre")
_CANT, _OPEN = listed("cant cannot wont"), listed("open abrir")
_OF_TODAY = PRESENT_WORDS | listed("like as same again this woke ive since still como igual otra desde sigo")
Stand = list[tuple[Mark, Standing]]


@dataclass(frozen=True, slots=True)
class Findings:
    """The marks of signs by how they stand; ``explained`` are those that look like current signs and are none.

    ``long_ago`` are whole clauses that tell only of years ago, and sentences that tell a story of others; ``of_others``
    clauses that tell of somebody else, and not of herself; ``around`` is what goes with the explained: "(no bumps)
    along the lash line".
    """

    current: list[Mark]
    near: list[Mark]
    over: list[Mark]
    denied: list[Mark]
    explained: list[Mark]
    long_ago: list[Mark]
    around: list[Mark]
    of_others: list[Mark]

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
    of_eyes, elsewhere = _signs(page)
    stand = _standings(page, of_eyes)
    denied = _with(stand, Standing.DENIED)
    current = [mark for mark in _with(stand, Standing.CURRENT) if not _is_taken_back(page, mark, denied)]
    near = _with(stand, Standing.NEARLY_OVER)
    explained = [mark for mark, standing in stand if standing not in _TOLD]
    return Findings(
        current=current,
        near=near,
        over=_with(stand, Standing.OVER, Standing.DENIED_NOW),
        denied=_with(stand, Standing.DENIED, Standing.DENIED_NOW),
        explained=[
            *page.named("topic:figure"),
            *shedding.marks(page),
            *seeming.shed_tears(page),
            *elsewhere,
            *explained,
        ],
        long_ago=[*_told_of_long_ago(page, current), *_of_long_ago(page, stand)],
        around=[*_around(page, stand, current), *around.bare_places(page, current)],
        of_others=others.clauses(page, current),
    )


_PLACED = {Standing.DENIED, Standing.DENIED_NOW, Standing.OVER, Standing.LONG_AGO}
_TOLD = {Standing.CURRENT, Standing.NEARLY_OVER}


def _around(page: Page, stand: Stand, current: list[Mark]) -> list[Mark]:
    """Return what goes with signs that are none now."""
    none = [(mark, standing) for mark, standing in stand if standing not in _TOLD]
    known = around.known_clauses(page, [mark for mark, _ in none])
    found = []
    if not current and around.accounted(page, known):
        found = [around.feared(page, mark) for mark, standing in none if standing is Standing.IMAGINED]
        found += [around.place_with(page, mark) for mark, standing in none if standing in _PLACED]
        found += [around.place_with(page, mark) for mark in page.named("scope:calm")]
    others = (mark for mark, standing in none if standing is Standing.NOT_HERS)
    found += [around.clause_of_another(page, mark, current, known) for mark in others]
    return found + around.clauses_of_others(page, current, known)


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


def _of_long_ago(page: Page, stand: Stand) -> list[Mark]:
    """Return the clauses of signs of long ago: "years back, before you opened, a tint sent me to hospital"."""
    told = []
    for clause in {page.clause[mark.start] for mark in _with(stand, Standing.LONG_AGO)}:
        places = [place for place, where in enumerate(page.clause) if where == clause]
        if not _OF_TODAY & {page.tokens[place].word for place in places}:
            told.append(Mark("scope:past", places[0], places[-1] + 1))
    return told


def _signs(page: Page) -> tuple[list[Mark], list[Mark]]:
    """Return the signs, and what looks like one and is of another part of her, or of a thing."""
    found = [mark for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    found += _left_open(page)
    found.sort(key=lambda mark: (mark.start, -mark.end))
    found = grading.with_glue(page, found)
    not_of_eyes = [
        mark
        for mark in found
        if is_elsewhere(page, mark) or is_of_a_thing(page, mark) or hyperbole.is_hyperbole(page, mark, found)
    ]
    found = [mark for mark in found if mark not in not_of_eyes]
    found = seeming.without(page, found)
    if page.marks.get("scope:good_kind"):
        found = [mark for mark in found if mark.name not in _OF_LOOKS]
    return found, not_of_eyes


def _left_open(page: Page) -> list[Mark]:
    """Take "cant open" with nothing behind it for her eye, where eyes are spoken of: "lids full of goo, cant open"."""
    words = [token.word for token in page.tokens]
    if not grading.EYES & set(words):
        return []
    ends = [place + 1 for place, word in enumerate(words) if word in _OPEN and place and words[place - 1] in _CANT]
    return [Mark("sign:sealed_eye!", end - 2, end) for end in ends if end == len(words) or not words[end].isalpha()]


def _standings(page: Page, found: list[Mark]) -> Stand:
    stand = [(mark, standing_of(page, mark, found)) for mark in found]
    gone = {mark.name: mark.start for mark, standing in stand if standing is Standing.DENIED_NOW}
    ended = {
        mark.name for mark, standing in stand if standing is Standing.CURRENT and _was_and_is_not(page, mark, stand)
    }
    return [
        (mark, Standing.OVER)
        if standing is Standing.CURRENT
        and (mark.name in ended or mark.name in gone and not _came_anew(page, mark, gone[mark.name]))
        else (mark, standing)
        for mark, standing in stand
    ]


def _came_anew(page: Page, mark: Mark, denied: int) -> bool:
    """You said it would no longer hurt. Day four and it hurts: what is told of now, sentences after a denial."""
    return page.sentence[mark.start] > page.sentence[denied] and not times.is_told_in_past(page, mark)


def _was_and_is_not(page: Page, mark: Mark, stand: Stand) -> bool:
    """It was sore. It is not sore now. -- They were pink when I left, the pink was gone by noon. -- It itches less."""
    if not times.is_told_in_past(page, mark):
        return False
    later = [(other, standing) for other, standing in stand if other.name == mark.name and other.start >= mark.end]
    denied = (other for other, standing in later if standing is Standing.DENIED)
    over = bool(later) and all(standing in (Standing.OVER, Standing.NEARLY_OVER) for _, standing in later)
    return over or any(times.is_told_of_now(page, other) for other in denied)


def _with(stand: Stand, *standings: Standing) -> list[Mark]:
    return [mark for mark, standing in stand if standing in standings]


def _is_taken_back(page: Page, mark: Mark, denied: list[Mark]) -> bool:
    """Define red? Kidding, they're not red. -- A question or a twisted denial, plainly denied afterwards."""
    twisted = any(one.start <= mark.start < one.end + 4 for one in page.named("scope:nonneg"))
    asked = page.sentence[mark.start] in page.asked()
    habit = bool(_HABIT & {token.word for token in page.tokens[max(0, mark.start - 4) : mark.start]})
    return any(
        other.name == mark.name and (habit or (twisted or asked) and other.start > mark.start) for other in denied
    )
