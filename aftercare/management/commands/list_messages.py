"""`list_messages --studio SLUG --json`: every message of a studio, one JSON object a line."""

from __future__ import annotations

import json
from argparse import ArgumentParser
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

from aftercare import facts, texts, versions
from aftercare.core.delivery import GONE, State
from aftercare.facts import ClientBook
from aftercare.management.arguments import add_now, add_studio, moment, studio_named
from aftercare.management.base import PromisingCommand
from aftercare.models import Message
from aftercare.wording import Finder, WordingError
from studio import clock
from studio.models import ClientRef, Studio, VisitRef

BATCH = 500  # clients whose messages are rendered at a time


class Command(PromisingCommand):
    help = "List a studio's messages: what goes to whom, when, by which channel, and why or why not."

    def add_arguments(self, parser: ArgumentParser) -> None:
        add_studio(parser)
        add_now(parser)
        parser.add_argument("--json", action="store_true", help="one JSON object a line (else a plain table)")

    def handle(self, *args: Any, **options: Any) -> None:
        studio = studio_named(options["studio"])
        now = moment(options["now"]) or clock.now()
        rows = sorted(self._rows(studio, now), key=_order)
        for row in rows:
            self.stdout.write(json.dumps(row) if options["json"] else _line(row))

    def _rows(self, studio: Studio, now: datetime) -> Iterator[dict[str, Any]]:
        named = _References(studio)
        find = versions.finder(studio)
        messages = Message.objects.filter(studio=studio, staff=None)
        known = list(messages.exclude(client=None).order_by().values_list("client_id", flat=True).distinct())
        total = len(known)
        for start in range(0, total, BATCH):
            self.stderr.write(f"rendering: {start:,} of {total:,} clients")
            ids = known[start : start + BATCH]
            books = facts.load(ids, now)
            for message in messages.filter(client__in=ids):
                yield _row(message, named, self._text(message, books.get(message.client_id or 0), now, find))
        for message in messages.filter(client=None):  # answers to a number that several share, or that nobody has
            yield _row(message, named, self._text(message, None, now, find))

    def _text(self, message: Message, book: ClientBook | None, now: datetime, find: Finder) -> str | None:
        """As it was, once it has been handed over; until then as it would be now."""
        if State(message.state) in GONE:
            return message.text
        if book is None or not message.channel or (message.visit_id and message.visit_id not in book.visits):
            return None
        try:
            return texts.for_message(message, book, now, find).body
        except WordingError as error:
            self.stderr.write(f"{message.key} cannot be rendered: {error}")
            return None


class _References:
    """The book's references of a studio's visits and clients."""

    def __init__(self, studio: Studio) -> None:
        self.visits: dict[int, str] = {}
        self.said: dict[int, str] = {}  # visit -> the client as the book names her on it
        self.clients: dict[int, list[str]] = {}
        visits = VisitRef.objects.filter(studio=studio).order_by("-pk")  # of several the one heard first
        for visit, reference, client in visits.values_list("visit_id", "reference", "said__client").iterator(2000):
            self.visits[visit], self.said[visit] = reference, client
        clients = ClientRef.objects.filter(studio=studio).order_by("pk")
        for client, reference in clients.values_list("client_id", "reference").iterator(2000):
            self.clients.setdefault(client, []).append(reference)

    def visit(self, message: Message) -> str | None:
        visit = message.visit_id
        return self.visits.get(visit, f"visit-{visit}") if visit else None

    def client(self, message: Message) -> str | None:
        """The one heard first; of a client with several, as after a merge, the one that stands on the visit."""
        if not message.client_id:
            return None
        hers = self.clients.get(message.client_id, [f"client-{message.client_id}"])
        said = self.said.get(message.visit_id or 0, "")
        return said if said in hers else hers[0]


def _row(message: Message, named: _References, text: str | None) -> dict[str, Any]:
    return {
        "visit": named.visit(message),
        "client": named.client(message),
        "occasion": message.occasion,
        "step": message.step,
        "edition": message.edition,
        "channel": message.channel or None,
        "due_at": _moment(message.due_at),
        "state": message.state,
        "reason": (message.reason or None) if message.state != State.PLANNED else None,
        "text": text,
    }


def _moment(at: datetime | None) -> str | None:
    return f"{at.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}" if at else None


def _order(row: dict[str, Any]) -> tuple[str, str, int, int, str]:
    return (row["visit"] or "", row["occasion"], row["step"], row["edition"], row["client"] or "")


def _line(row: dict[str, Any]) -> str:
    state = f"{row['state']}: {row['reason']}" if row["reason"] else row["state"]
    what = f"{row['occasion']} {row['step']}"
    return "  ".join((f"{row['due_at'] or '-':20}", row["visit"] or "-", what, row["channel"] or "-", state))
