"""The fields that a wording may use, and how the facts of one message become their values."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from datetime import date, datetime

from aftercare.core import say

Value = str | int | bool | None
"""None is a fact that is not there: it prints nothing and counts as false in an ``if``."""

LONGEST_VALUE = 80  # a name longer than this is cut: nobody is called so, and it would eat the message

SERVICE_NAMES = {
    "en": {
        "full_set": "full set",
        "fill": "fill",
        "removal": "removal",
        "patch_test": "patch test",
        "touch_up": "touch-up",
        "lift": "lash lift",
        "consultation": "consultation",
        "": "visit",
    },
    "es": {
        "full_set": "set completo",
        "fill": "relleno",
        "removal": "retiro",
        "patch_test": "prueba de parche",
        "touch_up": "retoque",
        "lift": "lifting",
        "consultation": "consulta",
        "": "visita",
    },
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What one message is about. Whether she is sensitive is a health note and has no place in a text, so not here.

    ``kind`` is the visit's service ("full set" or "full_set"), or for an answer or an alert its kind ("breathing").
    ``starts_at``, ``booked_at`` and ``call_by`` are on the studio's wall clock, said as in its ``region``. ``country``
    is where she says she is, whose emergency number is named; '' is the studio's. ``service`` is the studio's own name
    for the service.
    """

    studio: str
    studio_phone: str = ""
    language: str = "en"
    region: str = ""
    country: str = ""
    channel: str = "sms"
    occasion: str
    kind: str = ""
    step: int = 0
    moved: bool = False  # the edition is above 1
    first_name: str = ""
    artist: str = ""
    service: str = ""
    starts_at: datetime | None = None
    minutes: int | None = None
    first: bool = False
    waiver_due: bool = False
    under_18: bool = False
    wears_lenses: bool = False
    dry_hours: int | None = None
    window: tuple[date, date] | None = None  # for a reminder: None is soon
    booked_at: datetime | None = None
    call_by: datetime | None = None
    page: str = ""  # the address of her own page about the visit
    record: str = ""  # the address of the page with what is kept about her
    visit_ahead: bool = False  # she has a visit booked, and is on hold until a person has spoken with her
    link: str = ""
    questions: str = ""  # the page with the questions before her visit; '' where there is nothing to answer
    as_of: datetime | None = None  # as the next two on the studio's wall clock
    last_reply: datetime | None = None
    last_sweep: datetime | None = None
    open_flags: int = 0
    urgent_flags: int = 0
    promises: int = 0


@dataclass(frozen=True, slots=True)
class Field:
    """One field for the editor: what it is, in a sentence; an example; where it may be used (nowhere named: all)."""

    meaning: str
    example: str
    occasions: frozenset[str] = frozenset()

    def serves(self, occasion: str) -> bool:
        """Say whether a wording for the occasion may use the field."""
        return not self.occasions or occasion in self.occasions


STAFF = frozenset({"alert", "morning_list"})
BLOCKS = frozenset({"caution", "how_to_stop"})
_BOOKED = frozenset({"prepare", "patch_test"})
_DUE = frozenset({"fill_due", "full_set_due"})
_VISIT = _BOOKED | _DUE | {"care", "check"}
_TOLD = _VISIT | {"notice"}
_CLIENT = _TOLD | {"opt_in", "answer"}
_CLIENT_OR_BLOCK = _CLIENT | BLOCKS
_ANSWER = frozenset({"answer", "caution"})
_LIST = frozenset({"morning_list"})
_PICTURE = "So"  # Unicode's "other symbols": emoji, stars, the sign of a trade mark
_BESIDE = frozenset("\ufe0e\ufe0f\u200d").union(map(chr, range(0x1F3FB, 0x1F400)))  # what joins and tints pictures

FIELDS: dict[str, Field] = {
    "studio": Field("Your studio's name.", "Wrenfield Lash Room"),
    "studio_phone": Field("Your studio's telephone for clients.", "+1 555 010 0199", _CLIENT_OR_BLOCK),
    "first_name": Field("Her first name.", "Mia", _CLIENT_OR_BLOCK),
    "artist": Field("The artist of the visit.", "Ada", _CLIENT_OR_BLOCK),
    "service": Field("Your own name for the service.", "volume full set", _TOLD),
    "day": Field("The visit's day, on your studio's clock.", "Tuesday 9 March", _TOLD),
    "hour": Field("The visit's hour, on your studio's clock.", "2:30 pm", _TOLD),
    "minutes": Field("How many minutes are booked.", "180", _VISIT),
    "step": Field("Which of the messages for this occasion it is: the first is 0.", "0", _VISIT),
    "moved": Field("For an if: the visit has moved since she was last told.", "yes", _BOOKED),
    "first": Field("For an if: she has had no set with you yet.", "yes", _VISIT),
    "waiver_due": Field("For an if: she has not signed the waiver.", "yes", _VISIT),
    "under_18": Field("For an if: she is under 18.", "yes", _VISIT),
    "wears_lenses": Field("For an if: she wears contact lenses.", "yes", _VISIT),
    "dry_hours": Field("How many hours to keep the lashes dry, from the adhesive that was used.", "24", _VISIT),
    "window": Field("The days between which the next visit would be best.", "between Tue 9 and Mon 15 June", _DUE),
    "booked_day": Field(
        "The day of the visit that she has booked, where it is later than those days; empty where none is.",
        "Tuesday 23 June",
        frozenset({"fill_due"}),
    ),
    "questions": Field(
        "The page with the questions before her visit; empty where she has answered them.",
        "https://…",
        frozenset({"prepare"}),
    ),
    "caution": Field(
        "The caution: signs that are not normal and what to do. It is fixed and cannot be left out.",
        "Burning, pain or glue in an eye: rinse first …",
        frozenset({"care", "check", "answer"}),
    ),
    "how_to_stop": Field("How she stops these messages.", "Reply STOP to end texts", _CLIENT),
    "emergency_call": Field(
        "The emergency number of her country.", "911 or your local emergency number", _CLIENT_OR_BLOCK
    ),
    "emergency_care": Field("Where she gets emergency eye care.", "emergency eye care (ER)", _CLIENT_OR_BLOCK),
    "poison_line": Field("The poison line of her country, where there is one.", "1-800-222-1222", _CLIENT_OR_BLOCK),
    "call_by": Field("By when a person calls her.", "Tuesday 9 March, 10:00 am", _ANSWER),
    "visit_ahead": Field(
        "For an if: she has a visit booked, which waits until somebody spoke with her.", "yes", _ANSWER
    ),
    "page": Field(
        "Her own page about this visit: what to do, how to tell you of her eyes, the calendar entry. Within "
        "an “if page” it is left out of a text that it would make dearer than two.",
        "https://…/v/4Kx9aTq0ZbLmEr",
        _VISIT,
    ),
    "record": Field(
        "Her own page with what you keep about her: she asked for it.",
        "https://…/d/4Kx9aTq0ZbLmEr",
        frozenset({"answer"}),
    ),
    "link": Field("The page that opens what this is about.", "https://…", STAFF),
    "as_of": Field("When the list was counted.", "7:31 am", _LIST),
    "last_reply": Field("When the newest reply came in; empty where none has.", "6:12 am", _LIST),
    "last_sweep": Field("When the service last looked at what is due.", "7:30 am", _LIST),
    "open_flags": Field("How many clients have something open.", "3", _LIST),
    "urgent_flags": Field("How many of them are urgent.", "1", _LIST),
    "nothing_open": Field("For an if: nothing is open.", "yes", _LIST),
    "promises": Field("How many other lines wait, such as a test in time or a visit to mark.", "2", _LIST),
}


def kind_of(name: str) -> str:
    """Return a kind as wordings' files name it: "patch test" and "touch-up" are patch_test and touch_up."""
    return name.strip().lower().replace(" ", "_").replace("-", "_")


def values(facts: Facts) -> dict[str, Value]:
    """Return every field's value but ``caution`` and ``how_to_stop``, which are wordings themselves."""
    language = say.subtag(facts.language) or "en"
    visit: dict[str, Value] = {"day": None, "hour": None}
    if facts.starts_at is not None:
        visit["day"] = say.day(facts.starts_at.date(), language)
        visit["hour"] = say.hour(facts.starts_at.time(), language, facts.region)
    name = in_a_text if facts.channel == "sms" else _plain
    return {
        "studio": name(facts.studio),
        "studio_phone": _plain(facts.studio_phone) or None,
        "first_name": name(facts.first_name) or None,
        "artist": name(facts.artist) or None,
        "service": name(facts.service) or _service_name(kind_of(facts.kind), language),
        **visit,
        "minutes": facts.minutes,
        "step": facts.step,
        "moved": facts.moved,
        "first": facts.first,
        "waiver_due": facts.waiver_due,
        "under_18": facts.under_18,
        "wears_lenses": facts.wears_lenses,
        "dry_hours": facts.dry_hours or None,  # an if takes 0 for a number, and "dry for 0 hours" says nothing
        "window": _window(facts, language),
        "booked_day": say.day(facts.booked_at.date(), language) if facts.booked_at else None,
        "emergency_call": say.emergency_call(language, facts.country or facts.region),
        "emergency_care": say.emergency_care(language, facts.country or facts.region),
        "poison_line": say.poison_line(facts.country or facts.region) or None,
        "call_by": say.moment(facts.call_by, language, facts.region) if facts.call_by else None,
        "visit_ahead": facts.visit_ahead,
        "page": "".join(facts.page.split()) or None,
        "record": "".join(facts.record.split()) or None,
        "link": "".join(facts.link.split()) or None,
        "questions": "".join(facts.questions.split()) or None,
        "as_of": _seen_from(facts.as_of, facts, language),
        "last_reply": _seen_from(facts.last_reply, facts, language),
        "last_sweep": _seen_from(facts.last_sweep, facts, language),
        "open_flags": facts.open_flags,
        "urgent_flags": facts.urgent_flags,
        "promises": facts.promises,
        "nothing_open": not (facts.open_flags or facts.promises),
    }


def _seen_from(at: datetime | None, facts: Facts, language: str) -> str | None:
    """Say an hour of the list's own day, and of another day its date too."""
    if at is None or facts.as_of is None:
        return None
    if at.date() == facts.as_of.date():
        return say.hour(at.time(), language, facts.region)
    return say.moment(at, language, facts.region)


def _window(facts: Facts, language: str) -> str | None:
    if facts.window is not None:
        return say.between(*facts.window, language)
    return say.soon(language) if facts.occasion in _DUE else None


def _service_name(kind: str, language: str) -> str:
    names = SERVICE_NAMES.get(language, SERVICE_NAMES["en"])
    return names.get(kind, names[""])


def in_a_text(name: str) -> str:
    """Return a name as it stands in an SMS: without pictures. A name of nothing else stays.

    One of them would make the whole text UCS-2: two and a half times as dear, and in an emergency longer than two.
    """
    plain = _plain(name)
    if plain.isascii() or not any(unicodedata.category(character) == _PICTURE for character in plain):
        return plain
    letters = "".join(c for c in plain if unicodedata.category(c) != _PICTURE and c not in _BESIDE)
    return " ".join(letters.split()) or plain


def _plain(text: str) -> str:
    """Return ``text`` on one line, its spaces collapsed, without control or invisible characters, cut if endless."""
    if text.isascii() and text.isprintable() and "  " not in text and len(text) <= LONGEST_VALUE:
        return text.strip()
    seen = "".join(" " if c.isspace() or unicodedata.category(c) == "Cc" else c for c in text)
    return " ".join("".join(c for c in seen if _is_shown(c)).split())[:LONGEST_VALUE].rstrip()


def _is_shown(character: str) -> bool:
    # The two joiners shape letters in some scripts; other format characters turn a text around or hide in it. A lone
    # surrogate cannot be sent.
    return character in "\u200c\u200d" or unicodedata.category(character) not in ("Cf", "Cs")
