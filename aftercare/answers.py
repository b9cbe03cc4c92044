"""A person's own answer to a client: where it goes, what it says exactly, and the promise of it.

It goes as it was written, to where she wrote from; a wording of the owner's may be what its writer started from.
"""

from __future__ import annotations

import copy
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils.translation import gettext as _

from aftercare import facts, outbox, texts
from aftercare.core import neversaid, paging, pasthours, say, segments
from aftercare.core.fields import in_a_text
from aftercare.core.neversaid import Finding
from aftercare.core.occasions import Occasion
from aftercare.core.reach import Purpose, reach
from aftercare.facts import ClientBook
from aftercare.lines import lines_of
from aftercare.models import Flag, Line, Message, Reply, Stop
from studio.models import Client, Staff, Studio

LONGEST = 1530  # letters: ten segments; what is longer is a telephone call
OWN, WARNED = "own", "own_warned"  # kinds: a person's words; those that she sent although she was warned of some
# The owner's wordings that a person may start from, see templates/messages/answer.
STARTS = ("ask_more", "will_call", "come_in", "same_day", "seen_today", "breathing", "chemical", "sealed", "sight")


@dataclass(frozen=True, slots=True)
class Road:
    """Where an answer goes; ``closed`` says why it cannot, '' that it can. ``subject`` is an e-mail's."""

    channel: str
    address: str
    line: Line | None
    closed: str = ""
    subject: str = ""


@dataclass(frozen=True, slots=True)
class Look:
    """An answer as it would leave: its exact words, what it costs as a text, what is never said in it, and the hours
    that it promises although they are past."""

    text: str
    measure: segments.Measure | None
    warnings: tuple[Finding, ...]
    past: tuple[str, ...] = ()

    @property
    def is_warned_of(self) -> bool:
        return bool(self.warnings or self.past)

    @property
    def costs_more(self) -> bool:
        """Whether it is charged as more texts because of letters that are dear."""
        if self.measure is None or not self.measure.dear:
            return False
        return segments.measure(segments.plainest(self.text)).segments < self.measure.segments

    @property
    def cheaper(self) -> str:
        """The same in the cheap alphabet, where that is another text; else ''."""
        if self.measure is None or not self.measure.dear:
            return ""
        found = segments.cheaper(self.text)
        return found if found != self.text else ""


def roads(studio: Studio, client: Client | None, reply: Reply | None, now: datetime) -> list[Road]:
    """Return where an answer can go, where she wrote from last first; one that she has stopped says so."""
    found: dict[str, Road] = {}
    if reply is not None and reply.from_address:
        found[reply.line.channel] = Road(reply.line.channel, reply.from_address, reply.line)
    if client is not None:
        lines = lines_of(studio)
        book = facts.load([client.pk], now)[client.pk]
        for channel, address in _addresses(book):
            found.setdefault(channel, Road(channel, address, lines.get(channel)))
    stopped = set(
        Stop.objects.filter(lifted_at=None, address__in=[road.address.lower() for road in found.values()]).values_list(
            "line_id", "address"
        )
    )
    subject = texts.own_subject(client.language if client else "", studio)
    return [
        _closed(replace(road, subject=subject if road.channel == "email" else ""), stopped) for road in found.values()
    ]


def _addresses(book: ClientBook) -> Iterable[tuple[str, str]]:
    """Her choice first. Without a consent to texts on record she gets an answer by text only where she wrote by one."""
    way = reach(book.contact, Purpose.VISITS)
    if way.channel:
        yield way.channel, way.address
    if book.contact.email:
        yield "email", book.contact.email


def _closed(road: Road, stopped: set[tuple[int, str]]) -> Road:
    if road.line is None:
        return replace(road, closed=_("The studio has no line for this."))
    if (road.line.pk, road.address.lower()) in stopped:
        why = _("She wants no texts: call her.") if road.channel == "sms" else _("She wants no e-mails: call her.")
        return replace(road, closed=why)
    return road


def start_from(kind: str, road: Road, studio: Studio, client: Client | None, flag: Flag | None, now: datetime) -> str:
    """Return one of the owner's wordings as it would read to her, to be changed and sent as one's own words.

    Of an open matter it says by when a person calls: the moment that she was told before; once that is past, a new one.
    """
    book = facts.load([client.pk], now)[client.pk] if client is not None else None
    draft = Message(studio=studio, client=client, occasion=Occasion.ANSWER, kind=kind, channel=road.channel)
    if flag is not None:
        draft.flag = copy.copy(flag)  # what is on record changes only once she is told
        draft.flag.call_by = _call_by(flag, studio, now)
    return texts.for_message(draft, book, now).body


def _language(client: Client | None, studio: Studio) -> str:
    return say.language_of(client.language if client else "", studio.language)


def _call_by(flag: Flag, studio: Studio, now: datetime) -> datetime:
    if flag.call_by is not None and flag.call_by > now:
        return flag.call_by
    return paging.call_by(now, facts.rules_of(studio), studio.zone)


def look(text: str, road: Road, studio: Studio, now: datetime) -> Look:
    """Return an answer as it would leave. A text says who writes: carriers' rules want it, and so does she."""
    words = text.replace("\r\n", "\n").strip()
    named = in_a_text(studio.name)
    if road.channel == "sms" and named.casefold() not in words.casefold():
        words = f"{named}: {words}"
    found = (*neversaid.find(words, Occasion.ANSWER), *neversaid.find_shorteners(words))
    past = tuple(pasthours.find(words, now.astimezone(studio.zone)))
    return Look(words, segments.measure(words) if road.channel == "sms" else None, found, past)


@transaction.atomic
def send(
    text: str,
    road: Road,
    *,
    studio: Studio,
    client: Client | None,
    flag: Flag | None,
    token: str,
    warned: bool,
    by: Staff,
    now: datetime,
) -> bool:
    """Promise the answer, due now; return whether it is new: the same ``token`` twice is one message.

    ``warned``: its writer was shown what is wrong with it, and sends it all the same. Whoever answers an open matter
    has it, and she is owed the call by the moment that the answer says.

    Raises ValidationError for no words, too many, a road that is closed, or a warning that was not confirmed.
    """
    seen = look(text, road, studio, now)
    if not text.strip():
        raise ValidationError({"text": _("Write what is to be sent.")})
    if len(seen.text) > LONGEST:
        raise ValidationError({"text": _("It is too long for a message: shorten it, or call her.")})
    if road.closed or road.line is None:
        raise ValidationError(road.closed or _("The studio has no line for this."))
    if seen.is_warned_of and not warned:
        raise ValidationError({"text": _("Look at what is wrong with it, and send it again if you mean it.")})
    about = f"flag:{flag.pk}" if flag is not None else f"client:{client.pk if client else 0}"
    promised = outbox.promise(
        [
            Message(
                studio=studio,
                key=f"{about}:{Occasion.ANSWER}:{OWN}:{token[:40]}",
                client=client,
                flag=flag,
                occasion=Occasion.ANSWER,
                kind=WARNED if seen.is_warned_of else OWN,
                own_words=seen.text,
                written_by=by,
                channel=road.channel,
                line=road.line,
                address=road.address,
                due_at=now,
                planned_from=now,
            )
        ]
    )
    if flag is not None:
        opened = Flag.objects.filter(pk=flag.pk, state=Flag.State.OPEN)
        opened.update(state=Flag.State.TAKEN, taken_by=by, taken_at=now)
        by_when = _call_by(flag, studio, now)
        if say.moment(by_when.astimezone(studio.zone), _language(client, studio), studio.region) in seen.text:
            Flag.objects.filter(pk=flag.pk).update(call_by=by_when)
    return bool(promised)
