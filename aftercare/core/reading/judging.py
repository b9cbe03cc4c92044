"""What an answer means under the question that it answers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from aftercare.core.reading.answers import Says
from aftercare.core.reading.questions import Asks, Item
from aftercare.core.reading.values import Topic, Urgency

# Her answer is about her eyes or how she is; of the second, "no" tells of trouble.
OF_SIGNS = {Asks.SIGNS, Asks.ALARMS, Asks.WELL, Asks.GONE, Asks.EITHER, Asks.WARNING}
NO_IS_TROUBLE = {Asks.WELL, Asks.GONE, Asks.EITHER}
_ORDER = tuple(Urgency)


@dataclass(frozen=True, slots=True)
class Judged:
    """How urgent an answer is and what it is about; ``unread`` where a person must look."""

    urgency: Urgency
    about: frozenset[Topic]
    unread: bool = False


def _judged(topic: Topic, urgency: Urgency = Urgency.NONE, *, unread: bool = False) -> Judged:
    return Judged(urgency, frozenset({topic}), unread)


TODAY = _judged(Topic.IRRITATION, Urgency.SAME_DAY)
_NOW = _judged(Topic.IRRITATION, Urgency.EMERGENCY)
WATCH = _judged(Topic.IRRITATION, Urgency.WATCH)
FINE = _judged(Topic.FINE)
BOOKING = _judged(Topic.BOOKING)
COMPLAINT = _judged(Topic.COMPLAINT)
PERSON = _judged(Topic.OTHER, unread=True)
_ABOUT_EYES = {
    Says.YES: TODAY,
    Says.SOME: TODAY,
    Says.WORSE: TODAY,
    Says.BAD: TODAY,
    Says.BETTER: WATCH,
    Says.OVER: WATCH,
    Says.NO: FINE,
    Says.GOOD: FINE,
    Says.COMING: BOOKING,
}
_MEANS: dict[Asks, dict[Says, Judged]] = {
    Asks.SIGNS: _ABOUT_EYES,
    Asks.ALARMS: {
        **_ABOUT_EYES,
        **dict.fromkeys((Says.YES, Says.SOME, Says.WORSE, Says.BETTER, Says.BAD), _NOW),
    },
    Asks.WARNING: {**_ABOUT_EYES, Says.THANKS: FINE},
    Asks.WELL: {**_ABOUT_EYES, Says.YES: FINE, Says.NO: TODAY, Says.OVER: TODAY},
    Asks.GONE: {**_ABOUT_EYES, Says.YES: WATCH, Says.GOOD: WATCH, Says.NO: TODAY},
    Asks.EITHER: {**_ABOUT_EYES, Says.YES: PERSON, Says.NO: PERSON},
    Asks.STATE: {**_ABOUT_EYES, Says.YES: PERSON, Says.NO: PERSON},
    Asks.LIKING: {
        Says.YES: FINE,
        Says.GOOD: FINE,
        Says.NO: _judged(Topic.COMPLAINT),
        Says.BAD: _judged(Topic.COMPLAINT),
        Says.SOME: _judged(Topic.FINE, unread=True),
        Says.COMING: BOOKING,
    },
    Asks.VISIT: dict.fromkeys((Says.YES, Says.NO, Says.GOOD, Says.COMING, Says.THANKS), BOOKING),
    Asks.MESSAGES: {Says.NO: _judged(Topic.STOP)},
    Asks.RETENTION: {
        **dict.fromkeys((Says.YES, Says.SOME, Says.WORSE), _judged(Topic.RETENTION)),
        Says.NO: FINE,
        Says.GOOD: FINE,
    },
}
_OF_EYES = OF_SIGNS - {Asks.WARNING}


def deciding(asks: Sequence[Asks]) -> Asks:
    """Return what her answer answers: the last question about her eyes, else the last one, else a warning."""
    for wanted in (_OF_EYES, set(_MEANS) - {Asks.WARNING, Asks.VISIT, Asks.STATE}, set(_MEANS)):
        if found := [one for one in asks if one in wanted]:
            plain = [one for one in (Asks.VISIT, Asks.WARNING) if one in found]
            return plain[0] if plain else found[-1]
    return Asks.NOTHING


def of_one(says: Says, asks: Sequence[Asks]) -> Judged | None:
    """Return what one answer means; None where nothing quoted asks for one, or the words speak for themselves."""
    asked = deciding(asks)
    if asked is Asks.NOTHING:
        return None
    if asked is Asks.VISIT and Asks.WARNING in asks:  # "your infill is on Thursday. Tell us if your eyes are red"
        judged = _MEANS[Asks.WARNING].get(says, PERSON)
        agreed = says in (Says.YES, Says.COMING, Says.THANKS, Says.GOOD)
        return Judged(Urgency.NONE, BOOKING.about, unread=says is Says.YES) if agreed else judged
    judged = _MEANS[asked].get(says, PERSON)
    last = [one for one in asks if one not in (Asks.WARNING, Asks.STATE)][-1:]
    elsewhere = bool(last) and asked in _OF_EYES and last[0] not in _OF_EYES
    if elsewhere and says is Says.COMING:
        return BOOKING
    # "Any redness? Are you happy with them?" -- "No.": to which of the two is for a person to say.
    return Judged(judged.urgency, judged.about, unread=True) if elsewhere and judged is FINE else judged


def of_numbers(numbers: Mapping[int, Says], items: Sequence[Item]) -> Judged:
    """Return what answers by number mean; without the questions any yes may be to a sign."""
    found, liked = [], False
    for number, says in numbers.items():
        asks = items[number - 1].asks if 0 < number <= len(items) else Asks.SIGNS
        if asks in (Asks.NOTHING, Asks.WARNING):
            asks = Asks.SIGNS
        liked = liked or asks is Asks.LIKING and says in (Says.YES, Says.GOOD)
        if (
            says is not Says.NO or asks in OF_SIGNS or asks is Asks.LIKING
        ):  # no wish to book, no lash lost: nothing to tell
            found.append(_MEANS[asks].get(says, PERSON))
    if not found:
        return FINE
    urgency = min((one.urgency for one in found), key=_ORDER.index)
    about = frozenset().union(*(one.about for one in found))
    kept = about - {Topic.OTHER} or about
    told = kept & {Topic.IRRITATION, Topic.RETENTION}
    if Topic.COMPLAINT in kept or told and not liked:
        kept -= {Topic.FINE}
    unread = urgency is Urgency.NONE and (not items or any(one.unread for one in found))
    return Judged(urgency, kept, unread)
