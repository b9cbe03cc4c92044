"""One draft of a wording as its editor shows it: as it would arrive, what is wrong with it, and what it costs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from decimal import Decimal

from aftercare import letterhead, versions
from aftercare.core import segments
from aftercare.core.fields import BLOCKS, Facts, Field, Value
from aftercare.core.wordcheck import Problem, blocks_saving
from aftercare.lines import lines_of
from aftercare.models import Letterhead
from aftercare.pages import link_fit, recipients, served
from aftercare.pages.link_fit import LinkFit
from aftercare.versions import Slot
from aftercare.wording import Finder, WordingError, Words, compose, longest, problems
from studio.models import Client, Studio

MONTH = timedelta(days=30)


@dataclass(frozen=True, slots=True)
class Draft:
    """What stands in the editor. Of a caution, ``body`` is '' while its own words stand, and ``added`` goes below."""

    subject: str
    body: str
    added: str = ""

    def words(self, slot: Slot) -> Words:
        """Return it as the wording that it would be."""
        if slot.is_caution:
            return versions.caution(slot, self.body, self.added)
        return Words(self.subject, self.body, slot.language)


@dataclass(frozen=True, slots=True)
class Bubble:
    """One segment of an SMS as pieces of text, and whether each is what makes it dear."""

    pieces: tuple[tuple[str, bool], ...]


@dataclass(frozen=True, slots=True)
class Spot:
    """A character that makes a text dear, where it stands in what was typed (from 1; 0: it comes with a value)."""

    character: str
    cheaper: str | None
    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Cost:
    """What this text cost in the last thirty days, had it been as long as it is now."""

    sent: int
    segments: int
    price: Decimal | None
    currency: str
    in_its_place: int = 0  # of less exact words, or another language's, to those whom it is for

    @property
    def texts(self) -> int:
        return (self.sent + self.in_its_place) * self.segments

    @property
    def money(self) -> Decimal | None:
        return None if self.price is None else self.price * self.texts


@dataclass(frozen=True, slots=True)
class Preview:
    """A draft as it arrives, with all that is wrong with it; ``words`` is None where it cannot be filled in."""

    problems: tuple[Problem, ...]
    words: Words | None = None
    measure: segments.Measure | None = None
    bubbles: tuple[Bubble, ...] = ()
    spots: tuple[Spot, ...] = ()
    plainest: str = ""  # the body spelled so that it costs least, where that is another
    cost: Cost | None = None
    link: LinkFit | None = None
    letter: letterhead.Letter | None = None
    values: tuple[tuple[str, Field, Value], ...] = ()

    @property
    def blocked(self) -> bool:
        return blocks_saving(self.problems)

    @property
    def to_mend(self) -> tuple[Problem, ...]:
        """What stands in the way of saving it."""
        return tuple(problem for problem in self.problems if not problem.warning)

    @property
    def room(self) -> int:
        """How many letters more fit before it is charged as one text more."""
        return segments.room(self.words.body, self.measure.segments) if self.words and self.measure else 0

    @property
    def costs_more(self) -> bool:
        """Whether it would be charged as fewer texts without the characters that make it dear."""
        if self.words is None or self.measure is None or not self.measure.dear:
            return False
        return segments.measure(segments.plainest(self.words.body)).segments < self.measure.segments


def preview(studio: Studio, slot: Slot, draft: Draft, client: Client | None, now: datetime) -> Preview:
    """Fill a draft in, for a client of the studio or with the longest names there are, and find what is wrong."""
    words = draft.words(slot)
    find = _with_draft(studio, slot, words)
    found = check(slot, draft, find)
    known = recipients.values_for(studio, slot, client, find, now)
    if blocks_saving(found):
        return Preview(found, values=known)
    try:
        given, filled = _filled(studio, slot, words, client, find, now)
        link = link_fit.look(studio, recipients.message_of(slot), _carrying(slot, words, find), given, find, now)
    except WordingError:
        return Preview(found, values=known)
    if slot.channel == "email":
        head = letterhead.of(studio)
        return Preview(found, filled, letter=_letter(filled, studio, head), values=known)
    measured = segments.measure(filled.body)
    source = draft.added if slot.is_caution and not draft.body else draft.body
    plain = segments.plainest(source)
    return Preview(
        found,
        filled,
        measured,
        tuple(_bubbles(filled.body, measured)),
        tuple(_spots(measured, source)),
        plain if measured.dear and plain != source else "",
        cost(studio, slot, measured, now),
        link,
        values=known,
    )


def check(slot: Slot, draft: Draft, find: Finder) -> tuple[Problem, ...]:
    """Return all that is wrong with a draft; of words that are added to a caution, where in these it is."""
    words = draft.words(slot)
    found = problems(slot.occasion, slot.kind, slot.step, slot.channel, slot.language, words, find)
    if not slot.is_caution:
        return found
    fixed = replace(draft, added="").words(slot).body
    return tuple(_in_addition(problem, fixed, slot.channel) for problem in found)


def _in_addition(problem: Problem, fixed: str, channel: str) -> Problem:
    """Count a place behind the fixed words from where the added ones begin."""
    last = fixed.count("\n") + 1
    if channel == "email":
        line, lines = problem.line - last - 1, problem.lines - last - 1
        return replace(problem, line=line, lines=lines, part="added") if problem.line > last else problem
    width = len(fixed) - (fixed.rfind("\n") + 1) + 1  # with the space that joins the two
    lines = problem.lines - last + 1
    if problem.line > last:
        return replace(problem, line=problem.line - last + 1, lines=lines, part="added")
    if problem.line == last and problem.column > width:
        column = problem.column - width
        before, wrong, after = problem.around
        shown = (before[len(before) - min(len(before), column - 1) :], wrong, after)
        return replace(problem, line=1, column=column, lines=lines, around=shown, part="added")
    return problem


def composed(studio: Studio, slot: Slot, draft: Draft, client: Client | None, now: datetime) -> Words:
    """Return a draft filled in. Raises WordingError."""
    words = draft.words(slot)
    return _filled(studio, slot, words, client, _with_draft(studio, slot, words), now)[1]


def _with_draft(studio: Studio, slot: Slot, words: Words) -> Finder:
    in_force = versions.finder(studio)

    def find(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        meant = versions.candidates(occasion, kind, step, channel, slot.language)
        return words if slot in meant[-1:] else in_force(occasion, kind, step, channel, language)

    return find


def _carrying(slot: Slot, words: Words, find: Finder) -> Words:
    """Return the wording that is shown: of a block, that of the message which it goes into."""
    if slot.occasion not in BLOCKS:
        return words
    about = recipients.message_of(slot)
    return find(about.occasion, about.kind, about.step, about.channel, about.language)


def _filled(
    studio: Studio, slot: Slot, words: Words, client: Client | None, find: Finder, now: datetime
) -> tuple[Facts, Words]:
    about, words = recipients.message_of(slot), _carrying(slot, words, find)
    if client is not None:
        hers = recipients.facts_for(about, client, now)
        return hers, compose(words, hers, find)
    every = longest(about.occasion, about.kind, about.step, about.channel, about.language, words)
    given = [recipients.of_studio(one, studio) for one in every]
    filled = [(one, compose(words, one, find)) for one in given]
    if about.channel == "email":
        return max(filled, key=lambda one: len(one[1].body))
    costs = [(segments.measure(one.body), facts, one) for facts, one in filled]
    return max(costs, key=lambda cost: (cost[0].segments, cost[0].units))[1:]


def _bubbles(text: str, measured: segments.Measure) -> Iterator[Bubble]:
    dear = {place for one in measured.dear for place in range(one.place, one.place + len(one.character))}
    start = 0
    for segment in segments.split(text):
        yield Bubble(tuple(_pieces(segment, {place - start for place in dear})))
        start += len(segment)


def _pieces(segment: str, dear: set[int]) -> Iterator[tuple[str, bool]]:
    begin = 0
    for place in range(1, len(segment) + 1):
        if place == len(segment) or (place in dear) != (begin in dear):
            yield segment[begin:place], begin in dear
            begin = place


def _spots(measured: segments.Measure, source: str) -> Iterator[Spot]:
    """Say where each dear character was typed; the first time of each will do."""
    for character in dict.fromkeys(one.character for one in measured.dear):
        cheaper = next(one.cheaper for one in measured.dear if one.character == character)
        place = source.find(character)
        before = source[: max(place, 0)]
        line, column = (before.count("\n") + 1, place - before.rfind("\n")) if place >= 0 else (0, 0)
        yield Spot(character, cheaper, line, column)


def cost(studio: Studio, slot: Slot, measured: segments.Measure, now: datetime) -> Cost | None:
    """Return what it would have cost in the last thirty days; None for a block, which goes within others."""
    if slot.occasion in BLOCKS:
        return None
    own, since = versions.newest(studio), now - MONTH
    sent, instead = served.sent(studio, slot, own, since), served.sent_in_its_place(studio, slot, own, since)
    line = lines_of(studio)["sms"]
    return Cost(sent, measured.segments, line.price, line.currency, instead)


def _letter(words: Words, studio: Studio, head: Letterhead | None) -> letterhead.Letter:
    return letterhead.lay_out(words, studio, head, logo=letterhead.as_data(head))
