"""A client's own page about one visit: what to do before or after it, and what to do when an eye is in trouble."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, time
from functools import cached_property

from django.utils.translation import gettext

from aftercare import texts
from aftercare.core import answering, fields, say
from aftercare.core.fields import Facts
from aftercare.core.ticks import Asks
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Flag, Message, Reply
from aftercare.wording import Finder
from studio.models import Client, Service, Studio, Visit

PREPARED = frozenset(Service) - {Service.OTHER}
CARED = PREPARED - {Service.CONSULTATION}
CARED_DAYS = 21  # after that what to do in the first days only hides what matters


@dataclass(frozen=True, slots=True)
class Part:
    """Some lines of a text: a paragraph, or the points of a list."""

    lines: Sequence[str]
    is_list: bool


@dataclass(frozen=True, slots=True)
class Emergency:
    """What stands first on every page of hers: in a sentence, whom to call, and step by step."""

    short: str
    number: str
    parts: Sequence[Part]


@dataclass(frozen=True)
class HerPage:
    """One visit as its client sees it."""

    visit: Visit
    book: ClientBook
    language: str
    now: datetime
    find: Finder

    @property
    def studio(self) -> Studio:
        return self.book.studio

    @property
    def is_ahead(self) -> bool:
        return self.visit.status == Visit.Status.BOOKED and self.visit.starts_at > self.now

    @property
    def is_done(self) -> bool:
        return self.visit.status == Visit.Status.DONE

    @property
    def is_off(self) -> bool:
        return self.visit.status in (Visit.Status.CANCELLED, Visit.Status.MISSED)

    @property
    def service(self) -> str:
        """The studio's own name for it, else the plain one in her language."""
        facts = Facts(
            studio="", occasion="prepare", kind=self.visit.service, service=self._own_name, language=self.language
        )
        return str(fields.values(facts)["service"])

    @property
    def _own_name(self) -> str:
        plain = self.visit.service_name.casefold().replace("-", " ").split()
        return "" if plain == self.visit.service.replace("-", " ").split() else self.visit.service_name

    @property
    def day(self) -> str:
        return say.day(self._start.date(), self.language)

    @property
    def hour(self) -> str:
        return say.hour(self._start.time().replace(second=0, microsecond=0), self.language, self.studio.region)

    @property
    def hours(self) -> dict[str, str]:
        """When she can wish to be written to: its name, and in words."""
        noon, five = (say.hour(time(hour), self.language, self.studio.region) for hour in (12, 17))
        return {
            "": gettext("any time within the studio’s hours"),
            "morning": gettext("in the morning, until %(hour)s") % {"hour": noon},
            "afternoon": gettext("in the afternoon or evening, from %(hour)s") % {"hour": noon},
            "evening": gettext("in the evening, from %(hour)s") % {"hour": five},
        }

    @property
    def days_since(self) -> int:
        """Full days on the studio's calendar since the visit."""
        return (self.now.astimezone(self.studio.zone).date() - self._start.date()).days

    @property
    def _start(self) -> datetime:
        return self.visit.starts_at.astimezone(self.studio.zone)

    @property
    def is_held(self) -> bool:
        """Whether somebody has to speak with her before she comes."""
        return self.is_ahead and self.book.on_hold

    @cached_property
    def instructions(self) -> Sequence[Part]:
        """What to do before the visit, or after it; nothing where a person has to speak with her first."""
        occasion = Occasion.CARE if self.is_done else Occasion.PREPARE
        told_of = CARED if self.is_done else PREPARED
        is_time = self.is_ahead or (self.is_done and self.days_since <= CARED_DAYS)
        if self.visit.service not in told_of or self.book.on_hold or not is_time:
            return ()
        body = texts.for_page(occasion, self.visit, self.book, self.language, self.now, self.find)
        return parts_of(_without_greeting(body.split("\n\n"), self.book.client.first_name, self.studio))

    @cached_property
    def emergency(self) -> Emergency:
        return emergency(self.book.client, self.language, self.find)

    @cached_property
    def signs(self) -> Sequence[Part]:
        """The signs that are not normal and what to do, in full."""
        return parts_of(texts.caution(self.book.client, self.language, "email", self.find).split("\n\n"))

    def answer(self, kind: str, flag: Flag | None, language: str) -> str:
        """Return the words of an answer as they go out by text, in their full spelling."""
        message = Message(
            studio=self.studio,
            client=self.book.client,
            occasion=Occasion.ANSWER,
            kind=kind,
            flag=flag,
            language=language,
            channel="sms",
        )
        return texts.for_message(message, self.book, self.now, self.find, on_page=True).body

    def answers(self, kind: str, flag: Flag | None, written: str) -> list[str]:
        """Return an answer in the page's language, and in that of her words where it is another."""
        wanted = dict.fromkeys([self.language, *answering.languages(written, self.language)])
        return [self.answer(kind, flag, language) for language in wanted] if kind else []

    def has_asked(self, asks: Asks, replies: Iterable[Reply]) -> bool:
        """Whether she has asked for it on this page since the visit last changed."""
        since = (self.visit.changed_at or self.visit.created_at).replace(microsecond=0)  # replies come in whole seconds
        return any(
            reply.ticked.get("asks") == asks
            and reply.ticked.get("visit") == self.visit.pk
            and reply.received_at >= since
            for reply in replies
        )


def emergency(client: Client, language: str, find: Finder) -> Emergency:
    """Return what stands first on every page of hers."""
    number = texts.emergency_number(client)
    return Emergency(
        texts.caution(client, language, "sms", find),
        number,
        _steps(texts.caution(client, language, "email", find)),
    )


def _steps(text: str) -> Sequence[Part]:
    """Of the whole caution, what is to be done at once: its first list."""
    return [part for part in parts_of(text.split("\n\n")) if part.is_list][:1]


def parts_of(paragraphs: Iterable[str]) -> Sequence[Part]:
    """Part a text into paragraphs and lists, whose lines begin with a hyphen."""
    found: list[Part] = []
    for paragraph in paragraphs:
        lines: list[str] = []
        listed = False
        for line in paragraph.strip().split("\n"):
            is_point = line.startswith("- ")
            if is_point is not listed and lines:
                found.append(Part(lines, listed))
                lines = []
            listed = is_point
            lines.append(line.removeprefix("- ") if is_point else line)
        if any(lines):
            found.append(Part(lines, listed))
    return found


def _without_greeting(paragraphs: Sequence[str], first_name: str, studio: Studio) -> list[str]:
    """Take off what an e-mail begins and ends with: a line that greets her, and one that is the studio's name alone."""
    kept = list(paragraphs)
    if kept and "\n" not in kept[0] and first_name in kept[0] and kept[0].rstrip().endswith((",", "!", ":")):
        kept = kept[1:]
    while kept and not _says_anything(kept[-1], studio):
        kept = kept[:-1]
    return kept


def _says_anything(paragraph: str, studio: Studio) -> bool:
    rest = paragraph.replace(studio.name, "").replace(studio.phone or "\0", "")
    return any(character.isalnum() for character in rest)
