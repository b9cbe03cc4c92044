"""The journal: which claimed messages may still go, and that they are about to, written before the first byte leaves.

On PostgreSQL all of it is one statement: while it runs nothing leaves, so that each way there and back counts.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from functools import cache
from typing import Any

from django.core.serializers.json import DjangoJSONEncoder
from django.db import connection, transaction
from django.db.models import Max, Model

from aftercare.core import delivery, segments
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Message, Stop
from aftercare.outbox import rows
from aftercare.outbox.asking import Asking
from aftercare.outbox.handing import Parcel, Told
from studio.models import Client, Studio

_GIVEN: dict[str, tuple[type[Model], str]] = {  # what is told of each message, and which field says its type
    **{"id": (Message, "id"), "lease": (Message, "lease_until"), "as_of": (Client, "revision")},
    **{"heeds": (Message, "rehearsed"), "lowered": (Stop, "address"), "number": (Attempt, "number")},
    **{"provider": (Attempt, "provider"), "reference": (Attempt, "reference"), "key": (Attempt, "key")},
    **{"likeness": (Attempt, "likeness"), "key_until": (Attempt, "key_until"), "state": (Message, "state")},
    **{"reason": (Message, "reason"), "line": (Message, "line"), "channel": (Message, "channel")},
    **{"address": (Message, "address"), "subject": (Message, "subject"), "text": (Message, "text")},
    **{"segments": (Message, "segments"), "rehearsed": (Message, "rehearsed"), "worded": (Message, "worded")},
    **{"began": (Message, "handing_over_at"), "until": (Message, "lease_until")},
}
_OF_A_PARCEL = (
    *("id", "lease", "as_of", "heeds", "lowered", "provider", "reference", "key", "likeness", "line", "channel"),
    *("address", "subject", "text", "segments", "rehearsed", "worded"),
)
_OF_THE_MOMENT = tuple(name for name in _GIVEN if name not in _OF_A_PARCEL)
_ASKED = ("id", "lease", "as_of", "heeds", "lowered", "line", "rehearsed")
_ATTEMPT = {  # the fields that are written, by their columns in what is given
    **{"message": "id", "number": "number", "line": "line", "provider": "provider", "reference": "reference"},
    **{"started_at": "began", "key": "key", "likeness": "likeness", "key_until": "key_until"},
}
_MESSAGE = {
    **{"state": "state", "reason": "reason", "line": "line", "channel": "channel", "address": "address"},
    **{"subject": "subject", "text": "text", "segments": "segments", "rehearsed": "rehearsed", "worded": "worded"},
    **{"handing_over_at": "began", "lease_until": "until"},
}

Columns = dict[str, Sequence[Any]]  # of equal length, by the names of _GIVEN


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
    if connection.vendor == "postgresql":
        going = {pk for (pk,) in rows.fetch_prepared(_statement(), _given(parcels, columns))}
    else:
        going = _one_by_one(columns)
    _bring_up_to_date(parcels, columns, going)
    return going


class Departures:
    """As :func:`depart`, beside other work: a portion is sent to PostgreSQL, and its answer asked for later.

    One portion at a time, and each in a transaction of its own.
    """

    def __init__(self) -> None:
        self._asking = Asking(_statement())
        self._parcels: Sequence[Parcel] = ()
        self._columns: Columns = {}

    def begin(self, parcels: Sequence[Parcel], now: datetime, at: datetime, patience: int) -> None:
        """Have these written down, of which there is one at least; the arguments are those of :func:`depart`."""
        self._parcels, self._columns = parcels, _columns(parcels, now, at, patience)
        self._asking.ask(_given(parcels, self._columns))

    def fileno(self) -> int:
        """Return the descriptor at which there is something to read once they are."""
        return self._asking.fileno()

    def are_written(self) -> bool:
        """Whether :meth:`end` would not have to wait."""
        return self._asking.has_answer()

    def end(self) -> set[int]:
        """Return the ids of those that may go, once they are written down. Raises as :func:`depart`."""
        going = self._asking.answer()
        _bring_up_to_date(self._parcels, self._columns, going)
        return going

    def close(self) -> None:
        """End the connection."""
        self._asking.close()


def _bring_up_to_date(parcels: Sequence[Parcel], columns: Columns, going: set[int]) -> None:
    for place, parcel in enumerate(parcels):
        if parcel.message.pk in going:
            for attribute, column in _written_to_a_message():
                setattr(parcel.message, attribute, columns[column][place])


@cache
def _written_to_a_message() -> list[tuple[str, str]]:
    return [(rows.field(Message, name).attname, column) for name, column in _MESSAGE.items()]


def ready(parcel: Parcel) -> None:
    """Work out beforehand what a parcel is journaled with: less is left to do as it leaves, by who has the road."""
    parcel.told = _told(parcel)


def _told(parcel: Parcel) -> Told:
    message = parcel.message
    values = {
        "id": message.pk,
        "lease": message.lease_until,
        "as_of": parcel.as_of,
        "heeds": parcel.heeds_stops,
        "lowered": parcel.address.lower(),
        "provider": parcel.provider,
        "reference": parcel.reference,
        "key": parcel.key,
        "likeness": parcel.likeness,
        "line": parcel.line.pk,
        "channel": parcel.channel,
        "address": parcel.address,
        "subject": parcel.subject[:200],
        "text": parcel.text,
        "segments": _segments(parcel),
        "rehearsed": parcel.rehearsed,
        "worded": parcel.worded,
    }
    told = tuple(values[name] for name in _OF_A_PARCEL)
    return Told(told, tuple(map(rows.element, told)) if connection.vendor == "postgresql" else ())


def _columns(parcels: Sequence[Parcel], now: datetime, at: datetime, patience: int) -> Columns:
    numbers = _next_numbers(parcels)
    told = zip(*[_told_of(parcel).values for parcel in parcels], strict=True)
    return {
        **dict(zip(_OF_A_PARCEL, told, strict=True)),
        "number": [numbers.get(parcel.message.pk, 1) for parcel in parcels],
        "key_until": [at + timedelta(seconds=parcel.key_lifetime) if parcel.key else None for parcel in parcels],
        "state": [delivery.advance(State.CLAIMED, Event.JOURNAL).value] * len(parcels),
        "reason": [""] * len(parcels),
        "began": [now] * len(parcels),
        "until": [at + timedelta(seconds=patience + parcel.receipt_wait) for parcel in parcels],
    }


def _told_of(parcel: Parcel) -> Told:
    return parcel.told or _told(parcel)


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


def _may_go(given: str, wanted: str) -> str:
    """Return the SQL that finds what is ``wanted`` of those of ``given`` that may go.

    State and lease are asked for in words that no index answers to: what is claimed looks like little to PostgreSQL
    whenever its statistics are from a quiet hour, and all of it would be read for each message.
    """
    same = "IS NOT DISTINCT FROM" if connection.vendor == "postgresql" else "IS"
    return f"""
        SELECT {wanted} FROM {given}
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


def _given(parcels: Sequence[Parcel], columns: Columns) -> list[Any]:
    """Return what the one statement is asked with, in PostgreSQL's own writing."""
    told = zip(*[_told_of(parcel).elements for parcel in parcels], strict=True)
    arrays = dict(zip(_OF_A_PARCEL, map(rows.array_of, told), strict=True))
    arrays |= {name: rows.array_of(map(rows.element, columns[name])) for name in _OF_THE_MOMENT}
    return [*(arrays[name] for name in _GIVEN), *_defaults()]


@cache
def _defaults() -> list[Any]:
    return [field.get_default() for field in rows.written(Attempt) if field.name not in _ATTEMPT]


@cache
def _statement() -> str:
    """Return the one statement.

    Those that go are read once, with all that is written of them: as it is planned for few of them, joining them to
    what is given a second time would compare each with each.
    """
    types = ", ".join(f"%s::{rows.kind(rows.field(*field))}[]" for field in _GIVEN.values())
    attempt = {**{field.name: "%s" for field in rows.written(Attempt)}, **_of_going(_ATTEMPT)}
    changes = [f"{rows.quoted(rows.field(Message, name))} = {place}" for name, place in _of_going(_MESSAGE).items()]
    messages = rows.table(Message)
    return f"""
        WITH given ({", ".join(_GIVEN)}) AS (SELECT * FROM unnest({types})),
        going AS ({_may_go("given", "given.*")} FOR UPDATE OF m),
        noted AS (
            INSERT INTO {rows.table(Attempt)} ({rows.columns(rows.written(Attempt))})
            SELECT {", ".join(attempt.values())} FROM going
        )
        UPDATE {messages} SET {", ".join(changes)} FROM going WHERE {messages}.id = going.id RETURNING {messages}.id"""


def _of_going(names: Mapping[str, str]) -> dict[str, str]:
    return {name: f"going.{column}" for name, column in names.items()}


def _one_by_one(columns: Columns) -> set[int]:
    places = ", ".join(f"json_extract(value, '$[{place}]') AS {name}" for place, name in enumerate(_ASKED))
    asked = [rows.prepared(rows.field(*_GIVEN[name]), columns[name]) for name in _ASKED]
    given = json.dumps(list(zip(*asked, strict=True)), cls=DjangoJSONEncoder)
    with transaction.atomic():
        with connection.cursor() as cursor:
            cursor.execute(_may_go(f"(SELECT {places} FROM json_each(%s)) AS given", "m.id"), [given])
            going = {pk for (pk,) in cursor.fetchall()}
        chosen = [place for place, pk in enumerate(columns["id"]) if pk in going]
        if chosen:
            told = {name: [values[place] for place in chosen] for name, values in columns.items()}
            rows.add(Attempt, {name: told[column] for name, column in _ATTEMPT.items()}, spare=False)
            rows.change(Message, {"pk": told["id"]}, {name: told[column] for name, column in _MESSAGE.items()})
    return going
