"""What came of a matter, as a person puts it when she closes it. The software never decides which."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum


class Outcome(StrEnum):
    """What came of it."""

    MISREAD = "misread"  # the software read a sign in it where there is none
    OVER = "over"  # she says that it is over
    TOLD_DOCTOR = "told_doctor"  # advised to see a doctor
    SAW_DOCTOR = "saw_doctor"  # she says that a doctor saw her
    COMING_IN = "coming_in"  # to be looked at
    REMOVED = "removed"  # the lashes are off
    NOT_REACHED = "not_reached"  # stays open: to be tried again
    ANSWERED = "answered"
    BOOKED = "booked"
    NOTED = "noted"


ABOUT_HEALTH = (
    Outcome.OVER,
    Outcome.TOLD_DOCTOR,
    Outcome.SAW_DOCTOR,
    Outcome.COMING_IN,
    Outcome.REMOVED,
    Outcome.MISREAD,
    Outcome.NOT_REACHED,
)
NOT_ABOUT_HEALTH = (Outcome.ANSWERED, Outcome.BOOKED, Outcome.NOTED)
# After these she still wears the set, and is asked once more the next day.
ASKS_NEXT_DAY = frozenset({Outcome.OVER, Outcome.TOLD_DOCTOR, Outcome.SAW_DOCTOR, Outcome.COMING_IN})
A_REACTION = ASKS_NEXT_DAY | {Outcome.REMOVED}


def is_about_health(urgency: str, topics: Iterable[str]) -> bool:
    """Whether anything in a matter is about somebody's eyes, or may be; ``topics`` are those read in its replies."""
    return urgency != "none" or "irritation" in set(topics)


def offered(urgency: str, *, tells_a_sign: bool) -> tuple[Outcome, ...]:
    """Return the outcomes that a matter can be closed with, the likeliest first.

    What is urgent is closed with nothing but what came of her eyes.
    """
    if urgency in ("emergency", "same_day"):
        return ABOUT_HEALTH
    if tells_a_sign or urgency == "watch":
        return (*ABOUT_HEALTH, *NOT_ABOUT_HEALTH)
    return (*NOT_ABOUT_HEALTH, Outcome.NOT_REACHED, *(one for one in ABOUT_HEALTH if one is not Outcome.NOT_REACHED))


def goes_on_record(urgency: str, outcome: Outcome, *, tells_a_sign: bool) -> bool:
    """Whether it is put on her record as a reaction unless a person says otherwise."""
    if outcome not in A_REACTION:
        return False
    return urgency in ("emergency", "same_day") or (tells_a_sign and outcome is not Outcome.OVER)
