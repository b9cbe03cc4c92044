"""Asking those who wore a lot of adhesive how their eyes are, once a person has decided to.

Each is asked once a lot, in the owner's wording, in her own sending hours and never past a stop.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta

from aftercare import outbox
from aftercare.core.occasions import LOT, Occasion
from aftercare.models import Message
from studio.models import Adhesive, Visit

LAST = timedelta(days=3)  # after the act; later it would be asked out of the blue


def key(adhesive: Adhesive, client_id: int) -> str:
    """Return the key of the promise: once a lot and client.

    >>> key(Adhesive(pk=4), 9)
    'lot:4:check:9'
    """
    return f"lot:{adhesive.pk}:{Occasion.CHECK}:{client_id}"


def asked(adhesive: Adhesive) -> set[int]:
    """Return the clients who have been asked about this lot, or are going to be."""
    rows = Message.objects.filter(studio=adhesive.studio_id, key__startswith=f"lot:{adhesive.pk}:{Occasion.CHECK}:")
    return {message.client_id for message in rows.only("client_id") if message.client_id is not None}


def ask(adhesive: Adhesive, visits: Iterable[Visit], now: datetime) -> int:
    """Promise the question to the clients of these visits who have not been asked yet; return how many."""
    return outbox.promise(
        Message(
            studio_id=visit.studio_id,
            key=key(adhesive, visit.client_id),
            client_id=visit.client_id,
            visit=visit,
            occasion=Occasion.CHECK,
            kind=LOT,
            due_at=now,
            aim_at=now,
            no_later_than=now + LAST,
            planned_from=now,
        )
        for visit in visits
    )
