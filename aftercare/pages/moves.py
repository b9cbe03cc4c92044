"""What a change of the rules would move, as its page lists it: by occasion, what goes away first."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from aftercare.core.timing import Occasion
from aftercare.pages.shown import OCCASIONS
from aftercare.planning.ahead import DAYS, Kind, Move, Moves

SHOWN, LISTED = 8, 200  # of one occasion: at once, and on asking; beyond them they are counted
SOON = timedelta(hours=1)
LAST = datetime.max.replace(tzinfo=UTC)
ORDER = (Kind.GOES, Kind.COMES, Kind.MOVES)


@dataclass(frozen=True, slots=True)
class Heap:
    """The moves of one occasion."""

    what: str
    lines: list[Move]
    rest: list[Move]
    counts: str
    more: int


def at_once(moves: Moves, now: datetime) -> list[Move]:
    """Return what leaves within the hour only by the change: once it is saved, nobody can take it back."""
    soon = now + SOON
    return [move for move in moves.found if move.after is not None and move.after <= soon < (move.before or LAST)]


def heaps(moves: Moves, apart: Sequence[Move] = ()) -> Iterator[Heap]:
    """Give them by occasion, in the order of the occasions; without those that are shown ``apart``."""
    keys = {move.key for move in apart}
    for occasion in Occasion:
        mine = [move for move in moves.found if move.occasion is occasion and move.key not in keys]
        if mine:
            mine.sort(key=lambda move: (ORDER.index(move.kind), move.at, move.key))
            counts = summary(Counter(move.kind for move in mine))
            yield Heap(str(OCCASIONS[occasion]), mine[:SHOWN], mine[SHOWN:LISTED], counts, len(mine) - LISTED)


def told(moves: Moves) -> str:
    """Say in one sentence what would move."""
    found = summary(Counter(move.kind for move in moves.found))
    if not found:
        return _("With this change no message of the next %(days)s days moves, goes away or is new.") % {"days": DAYS}
    return _("With this change, of the messages of the next %(days)s days %(found)s.") % {"days": DAYS, "found": found}


def summary(counts: Counter[Kind]) -> str:
    """Say how many move, go away and are new: "14 move, 3 go away, 2 are new"."""
    said = {
        Kind.MOVES: ngettext("%(n)s moves", "%(n)s move", counts[Kind.MOVES]),
        Kind.GOES: ngettext("%(n)s goes away", "%(n)s go away", counts[Kind.GOES]),
        Kind.COMES: ngettext("%(n)s is new", "%(n)s are new", counts[Kind.COMES]),
    }
    return ", ".join(words % {"n": counts[kind]} for kind, words in said.items() if counts[kind])
