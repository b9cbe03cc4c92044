"""To whom a reply goes: to her artist as a matter, to the front desk as a wish, to both, or to nobody."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from aftercare.core.reading import Reading, Topic, Urgency


class Wish(StrEnum):
    """What the front desk is asked for."""

    BOOKING = "booking"
    CONFIRMED = "confirmed"
    MOVE = "move"
    FORGET = "forget"  # for the owner
    MAY_CANCEL = "may_cancel"
    WRONG_PERSON = "wrong_person"


@dataclass(frozen=True, slots=True)
class Route:
    """``matter``: her artist sees it. ``wish``: the front desk does. ``rests``: the number is not hers, and rests."""

    matter: bool
    wish: Wish | None = None
    rests: bool = False


_ABOUT_BOOKING = frozenset({Topic.BOOKING, Topic.FINE})
_NOBODY_HERE = frozenset({Topic.WRONG_PERSON, Topic.STOP, Topic.OTHER, Topic.COMPLAINT})


def of_words(reading: Reading) -> Route:
    """Return where a reply in her own words goes.

    Her artist sees all but what was understood as nothing but a booking, or as from somebody who is not meant.
    """
    about = frozenset(reading.about)
    plain = reading.urgency is Urgency.NONE and not reading.unread and not reading.signs
    if plain and Topic.WRONG_PERSON in about and about <= _NOBODY_HERE:
        return Route(matter=False, wish=Wish.WRONG_PERSON, rests=True)
    if Topic.BOOKING not in about:
        return Route(matter=True, wish=Wish.WRONG_PERSON if Topic.WRONG_PERSON in about else None)
    return Route(matter=not (plain and about <= _ABOUT_BOOKING and not reading.negated), wish=Wish.BOOKING)


def may_read(about: list[str], signs: list[str], negated: list[str], *, unread: bool) -> bool:
    """Whether the front desk may read the words: only where they were understood and hold nothing of health.

    >>> may_read(["booking"], [], [], unread=False), may_read(["booking", "irritation"], ["itching"], [], unread=False)
    (True, False)
    """
    return not (unread or signs or negated or {"irritation", "complaint"} & set(about))
