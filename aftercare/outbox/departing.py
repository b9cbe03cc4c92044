"""The journal: which claimed messages may still go, and that they are about to, written before the first byte leaves.

On PostgreSQL all of it is one statement: while it runs nothing leaves, so that each way there and back counts.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from django.core.serializers.json import DjangoJSONEncoder
from django.db import connection, transaction
from django.db.models import Max

from aftercare.core import delivery, segments
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Message, Stop
from aftercare.outbox import rows
from aftercare.outbox.handing import Parcel
from studio.models import Client, Studio

Columns = dict[str, tuple[Any, list[Any]]]  # by name: a field that says of which type they are, and the values

_ASKED = ("lease", "as_of", "heeds", "lowered")  # beside what is written
_ATTEMPT = {
    **{"message": "id", "number": "number", "line": "line", "provider": "provider", "reference": "reference"},
    **{"started_at": "began", "key": "key", "likeness": "likeness", "key_until": "key_until"},
}
_MESSAGE = {
    **{"state": "state", "reason": "reason", "line": "line", "channel": "channel", "address": "address"},
    **{"subject": "subject", "text": "text", "segments": "segments", "rehearsed": "rehearsed", "worded": "worded"},
    **{"handing_over_at": "began", "lease_until": "until"},
}


def depart(parcels: Sequence[Parcel], now: datetime, at: datetime, patience: int) -> set[int]:
    """Write down that these claimed messages are about to be handed over, as far as they may; return their ids.

    One may not that is no longer the caller's own; whose client's records have changed since it was judged by them,
    or are ahead of her plan; whose studio has gone live or back since; whose address has said stop. Commit before the
    first byte leaves. ``now`` is when the tries began; ``at`` is the moment by the database's clock, by which leases
    are; ``patience`` is in seconds: how long an answer may take before a crash is taken for granted. Raises
    IntegrityError, with nothing written, where a try stands already.
    """
    if not parcels:
        return set()
    columns = _columns(parcels, now, at, patience)
    going = _in_one(columns) if connection.vendor == "postgresql" else _one_by_one(columns)
    for place, parcel in enumerate(parcels):
        if parcel.message.pk in going:
            for name, column in _MESSAGE.items():
                setattr(parcel.message, rows.field(Message, name).attname, columns[column][1][place])
    return going


def _columns(parcels: Sequence[Parcel], now: datetime, at: datetime, patience: int) -> Columns:
    numbers = _next_numbers(parcels)
    messages = [parcel.message for parcel in parcels]
    journaled = delivery.advance(State.CLAIMED, Event.JOURNAL).value

    def of(model: type[Message | Attempt | Client | Stop], name: str, values: list[Any]) -> tuple[Any, list[Any]]:
        return model._meta.get_field(name), values

    return {
        "id": of(Message, "id", [message.pk for message in messages]),
        "lease": of(Message, "lease_until", [message.lease_until for message in messages]),
        "as_of": of(Client, "revision", [parcel.as_of for parcel in parcels]),
        "heeds": of(Message, "rehearsed", [parcel.heeds_stops for parcel in parcels]),
        "lowered": of(Stop, "address", [parcel.address.lower() for parcel in parcels]),
        "number": of(Attempt, "number", [numbers.get(message.pk, 1) for message in messages]),
        "provider": of(Attempt, "provider", [parcel.provider for parcel in parcels]),
        "reference": of(Attempt, "reference", [parcel.reference for parcel in parcels]),
        "key": of(Attempt, "key", [parcel.key for parcel in parcels]),
        "likeness": of(Attempt, "likeness", [parcel.likeness for parcel in parcels]),
        "key_until": of(
            Attempt,
            "key_until",
            [at + timedelta(seconds=parcel.key_lifetime) if parcel.key else None for parcel in parcels],
        ),
        "state": of(Message, "state", [journaled] * len(parcels)),
        "reason": of(Message, "reason", [""] * len(parcels)),
        "line": of(Message, "line", [parcel.line.pk for parcel in parcels]),
        "channel": of(Message, "channel", [parcel.channel for parcel in parcels]),
        "address": of(Message, "address", [parcel.address for parcel in parcels]),
        "subject": of(Message, "subject", [parcel.subject[:200] for parcel in parcels]),
        "text": of(Message, "text", [parcel.text for parcel in parcels]),
        "segments": of(Message, "segments", [_segments(parcel) for parcel in parcels]),
        "rehearsed": of(Message, "rehearsed", [parcel.rehearsed for parcel in parcels]),
        "worded": of(Message, "worded", [parcel.worded for parcel in parcels]),
        "began": of(Message, "handing_over_at", [now] * len(parcels)),
        "until": of(
            Message,
            "lease_until",
            [at + timedelta(seconds=patience + parcel.receipt_wait) for parcel in parcels],
        ),
    }


def _segments(parcel: Parcel) -> int | None:
    """Return those of a text; of an e-mail those before it: the text that it follows has been paid for."""
    return segments.measure(parcel.text).segments if parcel.channel == "sms" else parcel.message.segments


def _next_numbers(parcels: Sequence[Parcel]) -> dict[int, int]:
    """Number the next try of each message that was tried before."""
    tried = [parcel.message.pk for parcel in parcels if parcel.message.handing_over_at is not None]
    if not tried:
        return {}
    last = Attempt.objects.filter(message__in=tried).order_by().values_list("message").annotate(last=Max("number"))
    return {message: number + 1 for message, number in last}


def _may_go(given: str) -> str:
    """Return the SQL that tells which of ``given`` may go.

    State and lease are asked for in words that no index answers to: what is claimed looks like little to PostgreSQL
    whenever its statistics are from a quiet hour, and all of it would be read for each message.
    """
    same = "IS NOT DISTINCT FROM" if connection.vendor == "postgresql" else "IS"
    return f"""
        SELECT m.id FROM {given}
        JOIN {rows.table(Message)} m ON m.id = given.id
        JOIN {rows.table(Studio)} s ON s.id = m.studio_id
        LEFT JOIN {rows.table(Client)} c ON c.id = m.client_id
        WHERE m.state || '' = 'claimed' AND m.lease_until {same} given.lease
        AND (s.live_since IS NULL) = given.rehearsed
        AND (given.as_of IS NULL OR (c.revision = given.as_of AND c.planned_revision >= c.revision))
        AND NOT (given.heeds AND EXISTS (
            SELECT 1 FROM {rows.table(Stop)} t
            WHERE t.lifted_at IS NULL AND t.line_id = given.line AND t.address = given.lowered
        ))
        ORDER BY m.id"""


def _in_one(columns: Columns) -> set[int]:
    types = ", ".join(f"%s::{rows.kind(field)}[]" for field, _ in columns.values())
    attempt = {**{field.name: "%s" for field in rows.written(Attempt)}, **_in_given(_ATTEMPT)}
    defaults = [field.get_default() for field in rows.written(Attempt) if field.name not in _ATTEMPT]
    statement = f"""
        WITH given ({", ".join(columns)}) AS (SELECT * FROM unnest({types})),
        going AS ({_may_go("given")} FOR UPDATE OF m),
        noted AS (
            INSERT INTO {rows.table(Attempt)} ({rows.columns(rows.written(Attempt))})
            SELECT {", ".join(attempt.values())} FROM given JOIN going USING (id)
        )
        UPDATE {rows.table(Message)} SET {_changes()} FROM given JOIN going USING (id)
        WHERE {rows.table(Message)}.id = given.id RETURNING {rows.table(Message)}.id"""
    given: list[Any] = [*(rows.prepared(*column) for column in columns.values()), *defaults]
    return {pk for (pk,) in rows.fetch_prepared(statement, given)}


def _in_given(names: Mapping[str, str]) -> dict[str, str]:
    return {name: f"given.{column}" for name, column in names.items()}


def _changes() -> str:
    fields = [(rows.field(Message, name), place) for name, place in _in_given(_MESSAGE).items()]
    return ", ".join(f"{rows.quoted(field)} = {place}" for field, place in fields)


def _one_by_one(columns: Columns) -> set[int]:
    asked = {name: rows.prepared(*columns[name]) for name in ("id", *_ASKED, "line", "rehearsed")}
    places = ", ".join(f"json_extract(value, '$[{place}]') AS {name}" for place, name in enumerate(asked))
    given = json.dumps(list(zip(*asked.values(), strict=True)), cls=DjangoJSONEncoder)
    with transaction.atomic():
        with connection.cursor() as cursor:
            cursor.execute(_may_go(f"(SELECT {places} FROM json_each(%s)) AS given"), [given])
            going = {pk for (pk,) in cursor.fetchall()}
        chosen = [place for place, pk in enumerate(columns["id"][1]) if pk in going]
        if chosen:
            told = {name: [values[place] for place in chosen] for name, (_, values) in columns.items()}
            rows.add(Attempt, {name: told[column] for name, column in _ATTEMPT.items()}, spare=False)
            rows.change(Message, {"pk": told["id"]}, {name: told[column] for name, column in _MESSAGE.items()})
    return going
