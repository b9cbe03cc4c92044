"""What pages show of the questions before a visit: how they stand for a visit, what she answered, what to do now."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from aftercare import consulting, facts, texts, versions
from aftercare.core import consultation
from aftercare.core.consultation import BY_KEY, Answer
from aftercare.core.reading import Reading, Urgency
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.forms.consultation import ASKED, SAID, SIGN_NAMES
from aftercare.models import Consultation, Flag, Message
from aftercare.pages.hers import Part, parts_of
from studio.models import Client, Visit

ANSWERED, DECLINED, WITHDRAWN, NOT_YET = "answered", "declined", "withdrawn", "not yet"


@dataclass(frozen=True, slots=True)
class State:
    """How the questions stand for one visit. What was answered is not in it, only how much of it wants a look."""

    name: str
    at: datetime | None = None
    to_look_at: int = 0
    changes: int = 0


@dataclass(frozen=True, slots=True)
class Told:
    """One answer as it is shown; ``before`` is what she answered last time, where that was something else."""

    what: str
    said: str
    words: str
    look: bool = False
    doctor: bool = False
    before: str = ""


@dataclass(frozen=True, slots=True)
class FirstAid:
    """What she is told at once where an eye is not well now. ``reached``: her artist is told, too."""

    words: str
    reached: bool

    @property
    def parts(self) -> Sequence[Part]:
        """The words in paragraphs and lists."""
        return parts_of(self.words.split("\n\n"))


def state_of(visit: Visit, book: ClientBook) -> State | None:
    """Return how the questions stand for a visit; None where they are not asked for it and were not answered."""
    row = next((one for one in reversed(book.filled) if one.visit == visit.pk), None)
    if row is None:
        return State(NOT_YET) if consulting.is_asked_for(visit, book.now) else None
    if row.withdrawn_at is not None:
        return State(WITHDRAWN, row.withdrawn_at)
    if not row.agreed:
        return State(DECLINED, row.at)
    return State(ANSWERED, row.at, row.to_look_at, row.changes)


def newest_of(book: ClientBook, ahead: Sequence[Visit]) -> State | None:
    """Return how the questions stand for her next visit; without one, for the last that she answered them for."""
    states = (state_of(visit, book) for visit in ahead)
    found = next((state for state in states if state is not None), None)
    if found is not None or not book.filled:
        return found
    last = book.visits.get(book.filled[-1].visit)
    return state_of(last, book) if last is not None else None


def told(row: Consultation, before: Consultation | None = None) -> list[Told]:
    """Return her answers, those that a professional should look at first."""
    answers, earlier = consulting.answers_of(row), consulting.answers_of(before)
    look = set(consultation.to_look_at(answers))
    doctor = set(consultation.for_a_doctor(answers))
    differs = set(consultation.changed(earlier, answers)) if before is not None else set()
    order = sorted(answers, key=lambda key: (key not in look, _place(key)))
    found = [
        Told(
            what=_name(key),
            said=_said(answers[key]),
            words=answers[key].words,
            look=key in look,
            doctor=key in doctor,
            before=_in_short(earlier.get(key, Answer())) if key in differs else "",
        )
        for key in order
    ]
    dropped = [key for key in differs if key not in answers]
    found += [Told(_name(key), str(SAID[""]), "", before=_in_short(earlier[key])) for key in dropped]
    return found


def in_short(row: Consultation) -> list[Told]:
    """Return what she said before, for her: all but how her eyes were then, which is asked anew."""
    answers = consulting.answers_of(row)
    lasting = [key for key in sorted(answers, key=_place) if not (key in BY_KEY and BY_KEY[key].now)]
    return [Told(_name(key), _said(answers[key]), answers[key].words) for key in lasting]


def asks_a_doctor(answers: dict[str, Answer]) -> list[str]:
    """Return what of her answers is worth her doctor's word before she comes, as the questions call it."""
    return [_name(key) for key in consultation.for_a_doctor(answers)]


def _name(key: str) -> str:
    return str(ASKED[key].short) if key in ASKED else key


def _place(key: str) -> int:
    return list(BY_KEY).index(key) if key in BY_KEY else len(BY_KEY)


def _said(answer: Answer) -> str:
    signs = ", ".join(str(SIGN_NAMES[sign]) for sign in answer.signs if sign in SIGN_NAMES)
    said = str(SAID.get(answer.said, answer.said))
    return f"{said}: {signs}" if signs else said


def _in_short(answer: Answer) -> str:
    return f"{_said(answer)} ({answer.words})" if answer.words else _said(answer)


def first_aid(
    found: Reading, kind: str, *, client: Client, language: str, flag: Flag | None, reached: bool, now: datetime
) -> FirstAid:
    """Return what to do at once, in the words that an answer of this kind would have by text.

    Where her artist was not reached no words promise that anybody calls.
    """
    if not kind or (not reached and found.urgency is not Urgency.EMERGENCY):
        return FirstAid(texts.caution(client, language, "email", versions.finder(client.studio)), reached)
    book = facts.load([client.pk], now)[client.pk]
    draft = Message(
        studio=client.studio,
        client=client,
        flag=flag,
        occasion=Occasion.ANSWER,
        kind=kind,
        channel="email",
        language=language,
    )
    return FirstAid(texts.for_message(draft, book, now, on_page=True).body, reached)
