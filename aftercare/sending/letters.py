"""Letters: claimed messages that may go, written and addressed, with all that they were judged by."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from aftercare import calendars, letterhead, outbox, texts, unsubscribing, versions
from aftercare.core import answering, calendar_file, delivery
from aftercare.core.occasions import KEEPS_ITS_LINE
from aftercare.core.reach import Purpose, reach
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.lines import lines_of
from aftercare.models import Letterhead, Line, Message, Reply, Stop
from aftercare.outbox import Parcel
from aftercare.sending import introductions
from aftercare.sending.introductions import First
from aftercare.sending.roads import Road, Roads
from aftercare.texts import Count
from aftercare.transports.base import Enclosure, Outgoing
from aftercare.wording import Finder, Words
from studio.models import Studio

URGENT_RECEIPT_WAIT = 60  # seconds: answers and alerts are better heard twice than later
_MESSAGE_ID = re.compile(r"<[!-;=?-~]+@[!-;=?-~]+>")  # printable, no space: nothing of hers makes another header


@dataclass(slots=True, eq=False)
class Sender:
    """A studio with its lines, its wordings in force and the head of its letters."""

    studio: Studio
    lines: dict[str, Line]  # by channel
    find: Finder
    head: Letterhead | None

    @classmethod
    def of(cls, studio: Studio) -> Sender:
        return cls(studio, lines_of(studio), versions.finder(studio), letterhead.of(studio))

    def line_of(self, message: Message) -> Line:
        """Return the line that an answer or an introduction is bound to, for others the studio's for their channel."""
        bound = message.occasion in KEEPS_ITS_LINE
        return message.line if bound and message.line else self.lines[message.channel]


@dataclass(slots=True, eq=False)
class Letter:
    """A parcel with all that it was judged by."""

    parcel: Parcel
    book: ClientBook | None
    road: Road
    sender: Sender
    revision: int | None  # of the client when her facts were read
    laid_out: letterhead.Letter  # an e-mail's two forms; of an SMS the text alone

    @property
    def message(self) -> Message:
        return self.parcel.message

    @property
    def outgoing(self) -> Outgoing:
        parcel = self.parcel
        return Outgoing(
            reference=parcel.reference,
            channel=parcel.channel,
            address=parcel.address,
            sender=parcel.line.address,
            sender_name=self.sender.studio.name,
            subject=parcel.subject,
            text=self.laid_out.text,
            html=self.laid_out.html,
            enclosures=self.laid_out.enclosures,
            headers=self._headers,
            key=parcel.key,
        )

    @property
    def _headers(self) -> dict[str, str]:
        """What an e-mail carries beside its words: a way out for clients; and that a machine answers (RFC 3834, 5)."""
        if self.parcel.channel != "email":
            return {}
        answers = self._answering if self.message.occasion == Occasion.ANSWER else {}
        if self.message.staff_id is not None:
            return answers
        return {**unsubscribing.headers(self.parcel.line, self.parcel.address), **answers}

    @property
    def _answering(self) -> dict[str, str]:
        """A person's answer stands below what it answers (RFC 5322, 3.6.4); a machine's says that it is one."""
        if not self.message.own_words:
            return {"Auto-Submitted": "auto-replied"}
        hers = Reply.objects.filter(line=self.parcel.line, from_address__iexact=self.parcel.address)
        last = hers.order_by("received_at", "pk").values_list("provider_ref", flat=True).last() or ""
        return {"In-Reply-To": last, "References": last} if _MESSAGE_ID.fullmatch(last) else {}

    @property
    def first(self) -> First | None:
        """What makes it the possible first text to its number; None where no introduction goes ahead of it."""
        if self.parcel.channel != "sms" or self.message.client_id is None:
            return None
        if self.message.occasion in introductions.NEEDS_NONE:
            return None
        return First(self.message, self.parcel.line.pk, self.parcel.address, self.parcel.rehearsed)

    @property
    def other_channel(self) -> str:
        """The channel still open to her if this one refuses, or ''."""
        if self.book is None or self.message.occasion not in delivery.FALLS_BACK:
            return ""
        return reach(self.book.contact, Purpose.VISITS, avoid=self.parcel.channel).channel


def write(
    message: Message,
    address: str,
    sender: Sender,
    book: ClientBook | None,
    revision: int | None,
    roads: Roads,
    now: datetime,
    count: Count | None = None,
    until: datetime | None = None,
) -> Letter:
    """Write a message by its channel. Raises what the wording or the line's transport raises.

    ``until``: from then on it must be judged anew.
    """
    rehearsed = sender.studio.in_rehearsal
    line = sender.line_of(message)
    words = texts.for_message(message, book, now, sender.find, count)
    road = roads.of(line, rehearsed=rehearsed)
    parcel = Parcel(
        message=message,
        line=line,
        provider=road.transport.account,
        channel=message.channel,
        address=address,
        subject=words.subject,
        text=words.body,
        rehearsed=rehearsed,
        reference=outbox.new_reference(),
        worded=words.source,
        receipt_wait=_receipt_wait(message, road),
        as_of=_as_of(message, revision),
        heeds_stops=heeds_stops(message),
        until=until,
    )
    letter = Letter(parcel, book, road, sender, revision, _laid_out(message, words, sender, book))
    if road.transport.key_lifetime:
        parcel.key_lifetime, parcel.likeness = road.transport.key_lifetime, letter.outgoing.likeness
        parcel.key = outbox.key_of(message, parcel.likeness, parcel.reference)
    outbox.ready(parcel)
    return letter


def _as_of(message: Message, revision: int | None) -> int | None:
    """Return the revision that her records must still have. Answers go regardless, and what is to nobody on record."""
    if message.client_id is None or message.rank == 0:
        return None
    return -1 if revision is None else revision  # she was deleted meanwhile


def _receipt_wait(message: Message, road: Road) -> int:
    """Return for how many seconds a receipt is waited for, if nobody knows whether it left."""
    wait = road.transport.receipt_wait
    return min(wait, URGENT_RECEIPT_WAIT) if message.rank == 0 else wait


def _laid_out(message: Message, words: Words, sender: Sender, book: ClientBook | None) -> letterhead.Letter:
    if message.channel != "email":
        return letterhead.Letter(words.body, "", ())
    laid_out = letterhead.lay_out(words, sender.studio, sender.head)
    visit = book.visits.get(message.visit_id or 0) if book is not None else None
    if message.occasion != Occasion.PREPARE or visit is None:
        return laid_out
    visit.studio = sender.studio
    # As of when it was planned: a second try of the same letter is the same letter.
    file = calendars.of_visit(visit, message.planned_from, words.language or sender.studio.language)
    enclosed = Enclosure(name=calendar_file.FILE_NAME, media_type=calendar_file.MEDIA_TYPE, content=file)
    return replace(laid_out, enclosures=(*laid_out.enclosures, enclosed))


def stops(addresses: Iterable[str]) -> set[tuple[int, str]]:
    """Return which of these numbers and addresses said stop, by line."""
    asked = {address.lower() for address in addresses} - {""}
    return set(Stop.objects.filter(lifted_at=None, address__in=asked).values_list("line_id", "address"))


def heeds_stops(message: Message) -> bool:
    """Tell all others from the confirmation of a stop, and from what to do at once in an emergency that she tells of.

    Those two alone go after a stop. That holds for staff, too: whoever pages takes another road, see `facts.ways`.
    """
    return not (message.occasion == Occasion.ANSWER and message.kind in answering.AFTER_A_STOP)


def is_stopped(parcel: Parcel, stopped: set[tuple[int, str]]) -> bool:
    """Whether it does not go, as its address said stop to its line."""
    return parcel.heeds_stops and (parcel.line.pk, parcel.address.lower()) in stopped
