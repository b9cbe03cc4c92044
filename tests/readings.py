"""Clients whose sets were seen again and again, for tests of what is forecast of them."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from studio.models import Client, Studio, Visit
from tests.people import NOW, make_client, make_visit


def done(client: Client, days_ago: float, share_left: float | None = None, **fields: Any) -> Visit:
    """A set of hers that was done so many days before the present, with what was left of the one before."""
    facts = {"service": "fill", "status": "done", "starts_at": NOW - timedelta(days=days_ago), "share_left": share_left}
    return make_visit(client, **{**facts, **fields})


def make_worn(
    studio: Studio, name: str = "Mia", *, every: int = 20, share: float = 60, fills: int = 4, last: float = 3, **of: Any
) -> Client:
    """A client with a full set and some fills, each set seen at the next; she has the last one on."""
    client = make_client(studio, name, **of)
    done(client, last + fills * every, service="full set", minutes=180)
    for fill in reversed(range(fills)):
        done(client, last + fill * every, share)
    return client


def in_days(days: float, now: datetime = NOW) -> datetime:
    return now + timedelta(days=days)
