"""What a reading of a reply consists of. The words are those by which replies are labelled."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Urgency(StrEnum):
    """How soon someone must act."""

    EMERGENCY = "emergency"
    SAME_DAY = "same_day"
    WATCH = "watch"
    NONE = "none"


class Topic(StrEnum):
    """What a reply is about, in the order in which a reading names them."""

    STOP = "stop"
    START = "start"
    HELP = "help"
    WRONG_PERSON = "wrong_person"
    IRRITATION = "irritation"
    FINE = "fine"
    RETENTION = "retention"
    BOOKING = "booking"
    COMPLAINT = "complaint"
    QUESTION = "question"
    OTHER = "other"


class Sign(StrEnum):
    """What she tells of her eyes or herself."""

    REDNESS = "redness"
    SWELLING = "swelling"
    ITCHING = "itching"
    BURNING = "burning"
    PAIN = "pain"
    WATERING = "watering"
    DISCHARGE = "discharge"
    RASH = "rash"
    LIGHT = "light"
    GRITTY = "gritty"
    VISION = "vision"
    BREATHING = "breathing"
    GLUE_IN_EYE = "glue_in_eye"
    SEALED_EYE = "sealed_eye"
    HIVES = "hives"
    FAINT = "faint"
    POKING = "poking"


class Side(StrEnum):
    """The side that she names."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing found, and the span of the original text behind it: ``text == reply[start:end]``."""

    finding: str
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Reading:
    """What a reply says. ``language`` is "en", "es", another language's code where it is known, or "und".

    ``unread`` means that a person must read it, because the software cannot with confidence; the rest is then its
    best guess.
    """

    urgency: Urgency
    about: tuple[Topic, ...]
    signs: tuple[Sign, ...]
    negated: tuple[Sign, ...]
    side: Side | None
    language: str
    unread: bool
    why: tuple[Finding, ...]
