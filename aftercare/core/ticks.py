"""What a client ticks on her own page, as a reading like that of a reply: the same signs, the same urgency.

A tick means what the plain sentence with it means to the reader of replies (`SENTENCES`, which the tests hold side by
side), so that it is the same whether she ticks, writes or texts. With free words beside the ticks the worse counts.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any, Self, TypeVar

from aftercare.core.reading import Reading, Side, Sign, Topic, Urgency

Word = TypeVar("Word", bound=StrEnum)


class Tick(StrEnum):
    """What can be ticked, the worst first."""

    BREATHING = "breathing"
    FAINT = "faint"
    HIVES = "hives"
    IN_EYE = "in_eye"
    WILL_NOT_OPEN = "will_not_open"
    SIGHT = "sight"
    SEVERE_PAIN = "severe_pain"
    INJURY = "injury"
    PUPIL = "pupil"
    PAIN = "pain"
    LIGHT = "light"
    RED = "red"
    SWOLLEN = "swollen"
    DISCHARGE = "discharge"
    RASH = "rash"
    BURNING = "burning"
    ITCHING = "itching"
    WATERING = "watering"
    GRITTY = "gritty"
    POKING = "poking"
    FEVER = "fever"
    SICK = "sick"
    INFECTION = "infection"  # these two are asked before a visit alone
    UNWELL = "unwell"
    NOTHING = "nothing"


EMERGENCIES = tuple(Tick)[: tuple(Tick).index(Tick.PUPIL) + 1]
OTHERS = tuple(Tick)[len(EMERGENCIES) : tuple(Tick).index(Tick.SICK) + 1]

SIGNS = {
    Tick.BREATHING: Sign.BREATHING,
    Tick.FAINT: Sign.FAINT,
    Tick.HIVES: Sign.HIVES,
    Tick.IN_EYE: Sign.GLUE_IN_EYE,
    Tick.WILL_NOT_OPEN: Sign.SEALED_EYE,
    Tick.SIGHT: Sign.VISION,
    Tick.SEVERE_PAIN: Sign.PAIN,
    Tick.PAIN: Sign.PAIN,
    Tick.LIGHT: Sign.LIGHT,
    Tick.RED: Sign.REDNESS,
    Tick.SWOLLEN: Sign.SWELLING,
    Tick.DISCHARGE: Sign.DISCHARGE,
    Tick.RASH: Sign.RASH,
    Tick.BURNING: Sign.BURNING,
    Tick.ITCHING: Sign.ITCHING,
    Tick.WATERING: Sign.WATERING,
    Tick.GRITTY: Sign.GRITTY,
    Tick.POKING: Sign.POKING,
    Tick.INFECTION: Sign.SWELLING,
}
SENTENCES = {
    Tick.BREATHING: "I have trouble breathing.",
    Tick.FAINT: "I feel faint.",
    Tick.HIVES: "I have hives all over.",
    Tick.IN_EYE: "Glue got into my eye.",
    Tick.WILL_NOT_OPEN: "My eye will not open.",
    Tick.SIGHT: "My sight has changed.",
    Tick.SEVERE_PAIN: "I have severe pain in my eye.",
    Tick.INJURY: "My eye was injured.",
    Tick.PUPIL: "One pupil is bigger than the other.",
    Tick.PAIN: "My eye hurts.",
    Tick.LIGHT: "Light hurts.",
    Tick.RED: "My eye is red.",
    Tick.SWOLLEN: "My lid is swollen.",
    Tick.DISCHARGE: "There is discharge in my eye.",
    Tick.RASH: "I have a rash on my lid.",
    Tick.BURNING: "My eye burns.",
    Tick.ITCHING: "My eye itches.",
    Tick.WATERING: "My eye is watering.",
    Tick.GRITTY: "My eye feels gritty.",
    Tick.POKING: "A lash pokes my eye.",
    Tick.FEVER: "I have a fever.",
    Tick.SICK: "I have a headache and feel sick.",
    Tick.INFECTION: "I have an eye infection or a stye now.",
    Tick.UNWELL: "Something is wrong with my eye now.",
    Tick.NOTHING: "I notice nothing.",
}


class Since(StrEnum):
    """Since when."""

    TODAY = "today"
    YESTERDAY = "yesterday"
    DAYS = "days"
    WEEK = "week"


class Asks(StrEnum):
    """What else she can ask for on her pages, each by a button."""

    CONFIRM = "confirmed"
    MOVE = "move"
    FORGET = "forget"
    NOT_ME = "wrong_person"


class Suits(StrEnum):
    """When another day would suit her."""

    WEEKDAYS = "weekdays"
    SATURDAYS = "saturdays"
    SUNDAYS = "sundays"
    MORNINGS = "mornings"
    AFTERNOONS = "afternoons"
    EVENINGS = "evenings"


_TOPICS = {
    Asks.CONFIRM: Topic.BOOKING,
    Asks.MOVE: Topic.BOOKING,
    Asks.FORGET: Topic.OTHER,
    Asks.NOT_ME: Topic.WRONG_PERSON,
}


@dataclass(frozen=True, slots=True)
class Ticked:
    """What she ticked on one of her pages. ``asks`` is set where it was not the question about her eyes."""

    ticks: frozenset[Tick] = frozenset()
    side: Side | None = None
    since: Since | None = None
    lenses: bool = False
    language: str = "en"  # of the page as she saw it
    asks: Asks | None = None
    suits: frozenset[Suits] = frozenset()
    visit: int | None = None  # whose page it was

    @property
    def is_about_her_eyes(self) -> bool:
        """Whether it answers how her eyes are; else it is one of the other wishes of `Asks`."""
        return self.asks is None

    @classmethod
    def kept(cls, row: Mapping[str, Any]) -> Self:
        """Read what `to_keep` wrote; what is unknown by now is left out."""
        return cls(
            ticks=frozenset(known(Tick, row.get("ticks", ()))),
            side=next(iter(known(Side, [row.get("side")])), None),
            since=next(iter(known(Since, [row.get("since")])), None),
            lenses=bool(row.get("lenses")),
            language=str(row.get("language", "en")),
            asks=next(iter(known(Asks, [row.get("asks")])), None),
            suits=frozenset(known(Suits, row.get("suits", ()))),
            visit=row.get("visit"),
        )

    @property
    def sentences(self) -> str:
        """What she ticked, in plain English words for the record; '' where nothing was ticked."""
        said = [SENTENCES[tick] for tick in Tick if tick in self.ticks]
        if said and self.side is not None:
            said.append(f"Eye: {self.side}.")
        return " ".join(said)

    def to_keep(self) -> dict[str, Any]:
        """Return it as JSON can hold it; never empty, as an empty one stands for a reply that came by a line."""
        return {
            "ticks": [str(tick) for tick in Tick if tick in self.ticks],
            "side": self.side and str(self.side),
            "since": self.since and str(self.since),
            "lenses": self.lenses,
            "language": self.language,
            "asks": self.asks and str(self.asks),
            "suits": [str(one) for one in Suits if one in self.suits],
            "visit": self.visit,
        }


def reading_of(ticked: Ticked) -> Reading:
    """Return the reading of the ticks alone."""
    ticks = ticked.ticks - {Tick.NOTHING}
    signs = {SIGNS[tick] for tick in ticks if tick in SIGNS}
    if ticked.asks is not None:
        about: tuple[Topic, ...] = (_TOPICS[ticked.asks],)
    else:
        about = (Topic.IRRITATION,) if ticks else (Topic.FINE,)
    return Reading(
        urgency=_urgency(ticks, signs),
        about=about,
        signs=tuple(sign for sign in Sign if sign in signs),
        negated=(),
        side=ticked.side,
        language=ticked.language,
        unread=False,
        why=(),
    )


def together(ticked: Ticked, written: Reading | None) -> Reading:
    """Return the reading of her ticks and her words: the worse of the two, and of both as if she had said them at once.

    What she ticks she does not deny, whatever her words were taken to say. Where her words were not understood, a
    person has to read them all the same. ``written`` is None where she wrote none; without a tick her words stand
    alone.
    """
    base = reading_of(ticked)
    if written is None:
        return base
    if not ticked.ticks and ticked.asks is None:
        return replace(written, side=_side(ticked.side, written.side), language=_language(ticked, written))
    ticks = ticked.ticks - {Tick.NOTHING}
    signs = {*base.signs, *written.signs}
    urgencies = [written.urgency, base.urgency, *([_urgency(ticks, signs)] if ticks else [])]
    about = {*base.about, *written.about}
    if Topic.IRRITATION in about:
        about -= {Topic.FINE}
    return replace(
        written,
        urgency=min(urgencies, key=tuple(Urgency).index),
        about=tuple(topic for topic in Topic if topic in about and (topic is not Topic.OTHER or len(about) == 1)),
        signs=tuple(sign for sign in Sign if sign in signs),
        negated=tuple(sign for sign in written.negated if sign not in signs),
        side=_side(ticked.side, written.side),
        language=_language(ticked, written),
    )


def _language(ticked: Ticked, written: Reading) -> str:
    return ticked.language if written.language == "und" else written.language


def _urgency(ticks: Collection[Tick], signs: Collection[Sign]) -> Urgency:
    """As the reader judges the same said in words (after NHS, "Red eye", reviewed 21 March 2022)."""
    red_and_worse = Sign.REDNESS in signs and Sign.LIGHT in signs
    hurts_and_sick = Tick.SICK in ticks and (Sign.REDNESS in signs or Sign.PAIN in signs)
    hot_and_swollen = Tick.FEVER in ticks and Sign.SWELLING in signs
    if red_and_worse or hurts_and_sick or hot_and_swollen or any(tick in EMERGENCIES for tick in ticks):
        return Urgency.EMERGENCY
    return Urgency.SAME_DAY if ticks else Urgency.NONE


def _side(ticked: Side | None, written: Side | None) -> Side | None:
    """Both where ticks and words disagree: neither eye is to be overlooked."""
    if ticked is None or written is None or ticked == written:
        return ticked or written
    return Side.BOTH


def known(kind: type[Word], given: Collection[Any]) -> list[Word]:
    """Return those of the ``given`` words that are of this kind, in their order; others are left out."""
    words = {str(one) for one in kind}
    return [kind(one) for one in given if one in words]
