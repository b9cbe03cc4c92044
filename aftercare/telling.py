"""One word to those who are booked on a day, by a person's act: an artist is ill, the water is off, all is late.

It is about their visits, so it goes by the consent for those, never past a stop and within the sending hours. Whom it
cannot reach before her visit is named with her number, to be called.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils.translation import gettext as _

from aftercare import facts, outbox, texts, versions
from aftercare.core import say, segments
from aftercare.core.hours import DAY, moment, next_open
from aftercare.core.occasions import Occasion, Reason
from aftercare.core.timing import whole_seconds
from aftercare.core.wordcheck import Problem, blocks_saving
from aftercare.facts import ClientBook
from aftercare.models import Message
from aftercare.wording import Finder, WordingError, Words, problems
from studio.models import Client, Staff, Studio, Visit

LONGEST = 600  # letters of one's own words; what is longer is a telephone call


@dataclass(frozen=True, slots=True)
class One:
    """One of those booked: when it would leave and how it reads; or why she is to be called instead."""

    visit: Visit
    client: Client
    channel: str = ""
    leaves: datetime | None = None
    text: str = ""
    why: str = ""  # not by a message
    told: Message | None = None  # the last word that she has had, or is to have, on this visit

    @property
    def measure(self) -> segments.Measure | None:
        return segments.measure(self.text) if self.channel == "sms" and self.text else None


@dataclass(frozen=True, slots=True)
class Look:
    """Who would be told and who is to be called, in the order of the day."""

    tell: tuple[One, ...]
    call: tuple[One, ...]
    problems: tuple[Problem, ...] = ()

    @property
    def texts(self) -> int:
        return sum(one.channel == "sms" for one in self.tell)

    @property
    def charged(self) -> int:
        """How many texts they are charged as."""
        return sum(one.measure.segments for one in self.tell if one.measure)

    @property
    def mails(self) -> int:
        return len(self.tell) - self.texts

    @property
    def samples(self) -> list[One]:
        """The first that goes by each channel."""
        first: dict[str, One] = {}
        for one in self.tell:
            first.setdefault(one.channel, one)
        return list(first.values())

    @property
    def is_blocked(self) -> bool:
        return blocks_saving(self.problems)


def booked(studio: Studio, day: date, now: datetime, artists: Collection[int] | None = None) -> list[Visit]:
    """Return the visits of a day that are still ahead, the earliest of each client; of ``artists`` if any are."""
    begin, end = moment(day, 0, studio.zone), moment(day + DAY, 0, studio.zone)
    rows = Visit.objects.filter(studio=studio, status=Visit.Status.BOOKED, starts_at__gte=begin, starts_at__lt=end)
    rows = rows.filter(starts_at__gt=now)
    if artists is not None:
        rows = rows.filter(artist__in=artists)
    first: dict[int, Visit] = {}
    for visit in rows.order_by("starts_at", "pk"):
        first.setdefault(visit.client_id, visit)
    return list(first.values())


def source(text: str, studio: Studio) -> str:
    """Return a person's own words as a wording: it says who writes and how to stop, as every message does."""
    words = " ".join(text.split())
    if not words:
        return ""
    if "{{ studio }}" not in words:
        words = f"{{{{ studio }}}}: {words.removeprefix(studio.name).lstrip(' :')}"
    return words if "{{ how_to_stop }}" in words else f"{words} {{{{ how_to_stop }}}}"


def check(words: str, studio: Studio) -> tuple[Problem, ...]:
    """Return what is wrong with one's own words, as the owner's wordings are checked; () for the owner's wording."""
    if not words:
        return ()
    if len(words) > LONGEST:
        return (Problem(1, 1, _("It is too long."), _("Shorten it, or call her.")),)
    language = say.language_of(studio.language)
    return problems(Occasion.NOTICE, "", 0, "sms", language, Words("", words))


def look(studio: Studio, visits: Iterable[Visit], words: str, now: datetime) -> Look:
    """Return who would be told how and when, in ``words`` (a wording; '' is the owner's), and who is to be called."""
    found = check(words, studio)
    readable = "" if blocks_saving(found) else words
    every = list(visits)
    books = facts.load({visit.client_id for visit in every}, now)
    find = versions.finder(studio)
    ones = [_one(visit, books[visit.client_id], readable, find, now) for visit in every]
    return Look(tuple(one for one in ones if not one.why), tuple(one for one in ones if one.why), found)


def _one(visit: Visit, book: ClientBook, words: str, find: Finder, now: datetime) -> One:
    told = [m for m in book.messages.values() if m.occasion == Occasion.NOTICE and m.visit_id == visit.pk]
    last = max(told, key=lambda message: message.pk, default=None)
    way = book.reach
    if way.reason is not None:
        return One(visit, book.client, why=way.reason, told=last)
    leaves = next_open(whole_seconds(now), book.rules.hours, book.facts.zones, visit.starts_at)
    if leaves is None:
        return One(visit, book.client, why=Reason.TOO_LATE, told=last)
    draft = _message(visit, words, now)
    draft.channel = way.channel
    try:
        text = texts.for_message(draft, book, now, find).body
    except WordingError as error:
        return One(visit, book.client, why=str(error), told=last)
    return One(visit, book.client, way.channel, leaves, text, told=last)


def _message(visit: Visit, words: str, now: datetime) -> Message:
    return Message(
        studio_id=visit.studio_id,
        client_id=visit.client_id,
        visit=visit,
        occasion=Occasion.NOTICE,
        own_words=words,
        about_start=visit.starts_at,
        aim_at=now,
        no_later_than=visit.starts_at,
        planned_from=now,
    )


@transaction.atomic
def tell(seen: Look, words: str, *, token: str, by: Staff, now: datetime) -> int:
    """Promise the word to those who would be told; return how many are new: the same ``token`` twice is one word each.

    Raises ValidationError for words that may not go.
    """
    if seen.is_blocked:
        raise ValidationError(_("Mend what is wrong with the words first."))
    return outbox.promise(_promises(seen, words, token, by, now))


def _promises(seen: Look, words: str, token: str, by: Staff, now: datetime) -> Iterator[Message]:
    for one in seen.tell:
        message = _message(one.visit, words, now)
        message.key = f"visit:{one.visit.pk}:{Occasion.NOTICE}:{token[:40]}"
        message.channel, message.due_at, message.written_by = one.channel, one.leaves, by
        yield message
