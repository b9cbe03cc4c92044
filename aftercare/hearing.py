"""Hearing: what providers called to say is taken apart, and goes where it belongs: receipts to the outbox, replies to
receiving. A callback goes away in the transaction that keeps what it said; one that cannot be understood stays.
"""

from __future__ import annotations

import logging
from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from django.core.exceptions import ImproperlyConfigured
from django.db import InterfaceError, OperationalError, transaction
from django.db.models import Q, QuerySet

from aftercare import lines, outbox, receiving
from aftercare.models import Line, StoredCallback
from aftercare.transports.base import Callback, ReceiptNote, ReplyNote, Transport, TransportError, storable
from studio.models import Studio

log = logging.getLogger(__name__)

BATCH = 200
FIRST_WAIT, GROWTH, LONGEST_WAIT = timedelta(minutes=1), 4, timedelta(hours=6)
MOST_TRIES = 10  # a day and more, in which settings can be mended; then only a person can do something about it
_AWAY = (OperationalError, InterfaceError)  # the database itself: no callback's fault


def read_waiting(now: datetime, *, stop: Callable[[], bool] = lambda: False) -> int:
    """Make something of every callback that waits, oldest first; return how many were understood."""
    understood, after = 0, 0
    while not stop():
        waiting = StoredCallback.objects.filter(Q(again_at=None) | Q(again_at__lte=now), waits=True, pk__gt=after)
        ids = list(waiting.order_by("pk").values_list("pk", flat=True)[:BATCH])
        if not ids:
            break
        understood += _read(ids, now)
        after = ids[-1]  # those that another process has in hand are not looked at again in this round
    return understood


def _read(ids: Sequence[int], now: datetime) -> int:
    try:
        return _understand(ids, now)
    except _AWAY:
        raise
    except Exception:  # one callback must not keep the others waiting: which one, shows each by itself
        log.exception("%d callbacks could not be read together", len(ids))
    return sum(_read_alone(pk, now) for pk in ids)


def _read_alone(pk: int, now: datetime) -> int:
    try:
        return _understand([pk], now)
    except _AWAY:
        raise
    except Exception as error:
        log.exception("callback %d could not be read", pk)
        for stored in StoredCallback.objects.filter(pk=pk):
            _put_off(stored, f"It could not be kept ({type(error).__name__}): see the service's log.", now)
        return 0


@dataclass(frozen=True, slots=True)
class NotUnderstood:
    """Calls of a studio's carriers that nobody could make anything of: how many, and what is wrong with the newest."""

    count: int
    problem: str = ""
    at: datetime | None = None


def not_understood(studio: Studio) -> NotUnderstood:
    """Return what a person has to look at. It says what is wrong, never what a client wrote."""
    newest = _kept(studio).order_by("-pk").first()
    return NotUnderstood(_kept(studio).count(), newest.problem, newest.received_at) if newest else NotUnderstood(0)


def read_again(studio: Studio) -> int:
    """Have the next sweep read them once more, as what was wrong has been mended; return how many."""
    return _kept(studio).update(tries=0, waits=True, again_at=None)


def _kept(studio: Studio) -> QuerySet[StoredCallback]:
    return StoredCallback.objects.filter(line__studio=studio).exclude(problem="")


@transaction.atomic
def _understand(ids: Sequence[int], now: datetime) -> int:
    """Take callbacks apart, keep what they say and let them go; put off those that cannot be understood."""
    held = StoredCallback.objects.select_for_update(skip_locked=True, of=("self",)).filter(pk__in=ids, waits=True)
    heard = _Heard()
    done: list[int] = []
    for stored in held.select_related("line__studio").order_by("pk"):
        problem = heard.take(stored)
        if problem:
            _put_off(stored, problem, now)
        else:
            done.append(stored.pk)
    for account, notes in heard.receipts.items():
        outbox.note_receipts(account, notes, now)
    StoredCallback.objects.filter(pk__in=done).delete()
    return len(done)


def _put_off(stored: StoredCallback, problem: str, now: datetime) -> None:
    """Have a callback tried again after a while, or leave it to a person."""
    stored.tries += 1
    stored.problem = storable(problem)[:400]
    stored.waits = stored.tries < MOST_TRIES
    stored.again_at = now + min(LONGEST_WAIT, FIRST_WAIT * GROWTH ** min(stored.tries - 1, 6))
    stored.save(update_fields=["tries", "problem", "waits", "again_at"])


@dataclass(slots=True)
class _Heard:
    """What the callbacks of one transaction say: receipts together by account, replies each to its line at once."""

    receipts: defaultdict[str, list[ReceiptNote]] = field(default_factory=lambda: defaultdict(list))
    transports: dict[int, Transport] = field(default_factory=dict)

    def take(self, stored: StoredCallback) -> str:
        """Take one callback; return what is the matter with it, '' for nothing."""
        callback = Callback(url=stored.url, headers=stored.headers, body=bytes(stored.body))
        try:
            transport = self._transport(stored.line)
            receipts, replies = transport.parse_receipts(callback), transport.parse_replies(callback)
        except (TransportError, ImproperlyConfigured) as error:
            return str(error)
        self.receipts[transport.account] += receipts
        return " ".join(filter(None, self._receive(stored, replies, transport.account)))

    def _receive(self, stored: StoredCallback, replies: Iterable[ReplyNote], account: str) -> Iterable[str]:
        for number, note in enumerate(replies):
            line = self._line(note.to_address, stored.line, account)
            if line is None:
                yield f"A text came in to {note.to_address}, which is no line's number here: set it on the line."
                continue
            receiving.receive(
                line,
                note.from_address,
                note.text,
                received_at=min(note.at or stored.received_at, stored.received_at),
                subject=note.subject,
                # Read again, as where another reply in it had no line, it must be the same reply.
                provider_ref=note.provider_ref or f"callback-{stored.pk}-{number}",
                automatic=note.automatic,
                raw=note.raw,
            )

    def _line(self, to_address: str, called: Line, account: str) -> Line | None:
        """Return the line that a text was sent to: of its number, on the account that brought it.

        Where the provider names none, or the line that it called at has no number of its own, it is that line's.
        """
        if not to_address:
            return called
        return lines.with_number(account, to_address, called=called) or (None if called.address else called)

    def _transport(self, line: Line) -> Transport:
        if line.pk not in self.transports:
            self.transports[line.pk] = lines.transport_of(line)
        return self.transports[line.pk]
