"""To whom a reply goes: to her artist as a matter, to the front desk as a wish, to both, or to nobody."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
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


# What tells of her health though it is no sign of an eye: conditions, what is done about them, a child on the way.
# Being "sick" or at "the doctor's" is what people say when they do not come, and no more than they would say aloud.
_OF_HEALTH = re.compile(
    r"\b(?:pregnan\w+|expecting a baby|breast ?-?feed\w*|miscarr\w+|ivf|chemo\w*|radiotherapy|cancer|tumou?rs?|"
    r"surger(?:y|ies)|operated on|(?:an|my|the|eye) operation|lasik|lasek|cataracts?|glaucoma|allerg\w+|asthma\w*|"
    r"diabet\w+|epilep\w+|seizures?|thyroid|alopecia|lupus|psoriasis|anti-?biotics?|steroids?|cortisone|"
    r"anti-?histamines?|accutane|isotretinoin|medications?|meds|hospital\w*|covid\w*|shingles|chicken ?pox|herpes|"
    r"migraines?|infect\w+|concussion|depress(?:ed|ion)|anxiety|diagnos\w+|biops\w+|hiv|"
    r"embaraz\w+|lactancia|dando (?:el )?pecho|amamant\w+|quimio\w*|radioterapia|c[aá]ncer|cirug[ií]as?|"
    r"operaci[oó]n|operaron|operad[ao]|cataratas?|al[eé]rgi\w+|asma|tiroides|antibi[oó]ticos?|cortisona|"
    r"medicaci[oó]n|medicamentos?|migrañas?|jaqueca|infecci\w+|varicela|depresi[oó]n|ansiedad|diagn[oó]stic\w+)\b",
    re.IGNORECASE,
)
_FOR_THE_DESK = frozenset({Wish.BOOKING, Wish.MOVE, Wish.CONFIRMED})

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


def beside(route: Route, words: str) -> Route:
    """Return the route with her artist on it where a wish about a booking tells of her health as well.

    >>> wish = Route(matter=False, wish=Wish.BOOKING)
    >>> beside(wish, "I'm pregnant, can I move Friday?").matter, beside(wish, "can I move Friday?").matter
    (True, False)
    """
    return replace(route, matter=True) if route.wish in _FOR_THE_DESK and tells_of_health(words) else route


def tells_of_health(words: str) -> bool:
    """Whether words that tell of no eye tell of her health: those are for her artist, and not for the front desk."""
    return _OF_HEALTH.search(words) is not None


def may_read(about: list[str], signs: list[str], negated: list[str], *, unread: bool) -> bool:
    """Whether the front desk may read the words: only where they were understood and hold nothing of health.

    >>> may_read(["booking"], [], [], unread=False), may_read(["booking", "irritation"], ["itching"], [], unread=False)
    (True, False)
    """
    return not (unread or signs or negated or {"irritation", "complaint"} & set(about))
