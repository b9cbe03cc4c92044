"""`list_messages --studio SLUG --json`: every message of a studio, one JSON object a line."""

from __future__ import annotations

import json
from argparse import ArgumentParser
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

from django.core.management.base import BaseCommand

from aftercare import facts, texts, versions
from aftercare.core.delivery import GONE, State
from aftercare.facts import ClientBook
from aftercare.management.arguments import add_now, add_studio, moment, studio_named
from aftercare.models import Message
from aftercare.wording import Finder
from studio import clock
from studio.models import ClientRef, Studio, VisitRef

BATCH = 500  # clients whose messages are rendered at a time


class Command(BaseCommand):
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
            self.stdout.write(json.dumps(row, ensure_ascii=False) if options["json"] else _line(row))

    def _rows(self, studio: Studio, now: datetime) -> Iterator[dict[str, Any]]:
        visit_refs = _references(VisitRef, "visit_id", studio)
        client_refs = _references(ClientRef, "client_id", studio)
        to_clients = Message.objects.filter(studio=studio).exclude(client=None)
        known = list(to_clients.order_by().values_list("client_id", flat=True).distinct())
        find = versions.finder(studio)
        total = len(known)
        for start in range(0, total, BATCH):
            self.stderr.write(f"rendering: {start:,} of {total:,} clients")
            ids = known[start : start + BATCH]
            books = facts.load(ids, now)
            for message in Message.objects.filter(studio=studio, client__in=ids):
                row = _row(message, visit_refs, client_refs)
                yield {**row, "text": _text(message, books.get(message.client_id or 0), now, find)}


def _references(model: type[VisitRef] | type[ClientRef], column: str, studio: Studio) -> dict[int, str]:
    """The book's reference of each visit or client: the one heard first."""
    rows = model._default_manager.filter(studio=studio).order_by("-pk").values_list(column, "reference")
    return dict(rows.iterator(2000))


def _row(message: Message, visit_refs: dict[int, str], client_refs: dict[int, str]) -> dict[str, Any]:
    visit, client = message.visit_id, message.client_id
    return {
        "visit": visit_refs.get(visit, f"visit-{visit}") if visit else None,
        "client": client_refs.get(client, f"client-{client}") if client else None,
        "occasion": message.occasion,
        "step": message.step,
        "edition": message.edition,
        "channel": message.channel or None,
        "due_at": _moment(message.due_at),
        "state": message.state,
        "reason": message.reason or None,
    }


def _text(message: Message, book: ClientBook | None, now: datetime, find: Finder) -> str | None:
    """As it was, once it has been handed over; until then as it would be now."""
    if State(message.state) in GONE:
        return message.text
    if book is None or not message.channel:
        return None
    return texts.for_message(message, book, now, find).body


def _moment(at: datetime | None) -> str | None:
    return f"{at.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}" if at else None


def _order(row: dict[str, Any]) -> tuple[str, str, int, int]:
    return (row["visit"] or "", row["occasion"], row["step"], row["edition"])


def _line(row: dict[str, Any]) -> str:
    state = f"{row['state']}: {row['reason']}" if row["reason"] else row["state"]
    what = f"{row['occasion']} {row['step']}"
    return "  ".join((f"{row['due_at'] or '-':20}", row["visit"] or "-", what, row["channel"] or "-", state))
