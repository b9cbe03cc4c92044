"""The questions before a visit: which there are, what an answer calls for, what changed, what tells of an eye now.

The software shows and never decides. Which answers a professional should look at, and which are worth a doctor's word
first, is common practice of the trade, no source; what is asked of eyes now follows NHS, "Red eye" (reviewed 21 March
2022), and the American Academy of Ophthalmology on extensions (anyone with infection or irritation sees a doctor).
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from aftercare.core import reading
from aftercare.core.reading import Urgency
from aftercare.core.ticks import Tick

VERSION = 1
"""Of the questions below: raised when one is added, dropped or asked in other words."""

YES, NO, UNKNOWN = "yes", "no", "unknown"
NOW = "eye_now"
INFECTION = "eye_infection"
LENSES = "lenses"
LONGEST = 500  # characters of her words to one question


@dataclass(frozen=True, slots=True)
class Question:
    """One question: ``safety`` ones cannot be switched off.

    ``look``: a professional should look at any answer but no. ``doctor``: her doctor's word comes first. ``now``: it is
    asked anew each time, and anything but no is a sign.
    """

    key: str
    safety: bool = True
    look: bool = True
    doctor: bool = False
    now: bool = False


QUESTIONS: tuple[Question, ...] = (
    Question(NOW, now=True),
    Question(INFECTION, now=True),
    Question("surgery", doctor=True),
    Question("glaucoma", doctor=True),
    Question(LENSES, look=False),
    Question("reactions", doctor=True),
    Question("acrylate", doctor=True),
    Question("latex"),
    Question("tape"),
    Question("asthma"),
    Question("fits", doctor=True),
    Question("chemotherapy", doctor=True),
    Question("lash_loss", safety=False, doctor=True),
    Question("pregnancy", safety=False, doctor=True),
    Question("retinoids", safety=False),
    Question("serum", safety=False, look=False),
    Question("lie_flat", safety=False),
)
BY_KEY = {question.key: question for question in QUESTIONS}
CAN_BE_OFF = tuple(question.key for question in QUESTIONS if not question.safety)

_TICKS = {
    "redness": Tick.RED,
    "swelling": Tick.SWOLLEN,
    "pain": Tick.PAIN,
    "discharge": Tick.DISCHARGE,
    "light": Tick.LIGHT,
    "vision": Tick.SIGHT,
    "itching": Tick.ITCHING,
    "watering": Tick.WATERING,
}
SIGNS = tuple(_TICKS)
_URGENT = (Urgency.EMERGENCY, Urgency.SAME_DAY)


@dataclass(frozen=True, slots=True)
class Answer:
    """What she answered to one question: yes, no, unknown or '' (not answered), which signs, and in her words."""

    said: str = ""
    words: str = ""
    signs: tuple[str, ...] = ()

    @property
    def is_blank(self) -> bool:
        """Whether she has said nothing to it."""
        return not (self.said or self.words or self.signs)


Answers = Mapping[str, Answer]


@dataclass(frozen=True, slots=True)
class Filled:
    """One time that she answered before a visit, without what she answered: how much of it wants a look."""

    visit: int
    at: datetime
    agreed: bool
    withdrawn_at: datetime | None
    to_look_at: int
    changes: int


def asked(off: Collection[str]) -> tuple[Question, ...]:
    """Return the questions of a studio that has some switched off; those on safety are asked all the same."""
    return tuple(question for question in QUESTIONS if question.safety or question.key not in off)


def kept(answers: Answers) -> dict[str, dict[str, object]]:
    """Return answers as what JSON can hold."""
    return {
        key: {"said": answer.said, "words": answer.words, "signs": list(answer.signs)}
        for key, answer in answers.items()
        if not answer.is_blank
    }


def read_kept(rows: Mapping[str, Mapping[str, object]]) -> dict[str, Answer]:
    """Return answers that were kept; those to questions that are asked no more, too."""
    return {key: _read(row) for key, row in rows.items()}


def _read(row: Mapping[str, object]) -> Answer:
    signs = row.get("signs")
    return Answer(
        str(row.get("said", "")),
        str(row.get("words", "")),
        tuple(map(str, signs)) if isinstance(signs, Sequence) else (),
    )


def to_look_at(answers: Answers) -> list[str]:
    """Return the questions whose answers a professional should look at: any but a plain no."""
    return [key for key, answer in answers.items() if _asks_a_look(BY_KEY.get(key), answer)]


def _asks_a_look(question: Question | None, answer: Answer) -> bool:
    if answer.is_blank or (question is not None and not question.look and answer.said != UNKNOWN):
        return False
    return answer.said != NO or bool(answer.words)


def for_a_doctor(answers: Answers) -> list[str]:
    """Return the questions whose answers are worth a doctor's word before she comes."""
    found = (key for key, answer in answers.items() if answer.said in (YES, UNKNOWN))
    return [key for key in found if key in BY_KEY and BY_KEY[key].doctor]


def changed(before: Answers, after: Answers) -> list[str]:
    """Return the questions to which she says something else than last time.

    How her eyes are now is no change of hers, as it is asked anew each time; nor is a plain no to a question that she
    was not asked then.
    """
    every = dict.fromkeys([*after, *before])
    lasting = (key for key in every if not (key in BY_KEY and BY_KEY[key].now))
    return [key for key in lasting if before.get(key, Answer(NO)) != after.get(key, Answer(NO))]


def ticks(answers: Answers) -> frozenset[Tick]:
    """Return what she told of her eyes now, as she would have ticked it on her page; nothing where they are well."""
    now, infection = answers.get(NOW, Answer()), answers.get(INFECTION, Answer())
    found = {_TICKS[sign] for sign in now.signs if sign in _TICKS}
    if not found and now.said in (YES, UNKNOWN):
        found = {Tick.UNWELL}
    if infection.said in (YES, UNKNOWN):
        found.add(Tick.INFECTION)
    return frozenset(found)


def says_well(answers: Answers) -> bool:
    """Whether she says that nothing is wrong with her eyes now."""
    return all(answers.get(key, Answer()).said == NO for key in (NOW, INFECTION))


def own_words(answers: Answers, more: str) -> Iterator[str]:
    """Give her own words that may tell of an eye that is not well now.

    Those to the questions on that; of her lenses and at the end what is read as urgent. The other questions ask for
    what once was, which the reader may take for now. Where she says that nothing is wrong now there are none: whether
    words that read otherwise are about now, she was asked (see `reads_urgent`).
    """
    if says_well(answers):
        return
    for key in (NOW, INFECTION):
        if words := answers.get(key, Answer()).words:
            yield words
    yield from reads_urgent([answers.get(LENSES, Answer()).words, more])


def reads_urgent(every: Iterable[str]) -> list[str]:
    """Return those words that read as if an eye were not well now."""
    return [words for words in every if words and reading.read(words).urgency in _URGENT]
