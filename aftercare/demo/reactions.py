"""The demo's reactions on record, all released since: more after its bad lot than after the others."""

from __future__ import annotations

import random
from datetime import datetime, timedelta

from aftercare.demo.year import BAD_LOT
from studio.models import SETS, Reaction, Studio, Visit

AFTER_THE_BAD_LOT, AFTER_OTHERS = 16, 4
RELEASED_AFTER = timedelta(days=3)
TOLD = [
    (["itching", "swelling"], "both", "Both lids itchy and puffy in the morning, better by the evening."),
    (["redness", "watering"], "left", "Left eye red and watery the next day."),
    (["itching"], "", "Itchy along the lashes for two days."),
    (["burning", "redness"], "both", "Stinging and red that night; she saw her eye doctor."),
    (["rash"], "right", "A flaky patch on the right lid."),
]


def write(studio: Studio, before: datetime, pick: random.Random) -> None:
    """Write them for sets that ended well before ``before``, one a client."""
    sets = Visit.objects.filter(
        studio=studio, service__in=SETS, status=Visit.Status.DONE, starts_at__lt=before - 2 * RELEASED_AFTER
    ).select_related("adhesive")
    rows = list(sets.order_by("pk"))
    pick.shuffle(rows)
    left = {True: AFTER_THE_BAD_LOT, False: AFTER_OTHERS}
    told: set[int] = set()
    for visit in rows:
        bad = visit.adhesive is not None and visit.adhesive.lot == BAD_LOT
        if left[bad] and visit.client_id not in told:
            left[bad] -= 1
            told.add(visit.client_id)
            _write(visit, pick)


def _write(visit: Visit, pick: random.Random) -> None:
    signs, side, words = pick.choice(TOLD)
    at = visit.end + timedelta(hours=pick.randrange(14, 60))
    Reaction.objects.create(
        client_id=visit.client_id,
        visit=visit,
        at=at,
        words=words,
        by=visit.artist,
        signs=signs,
        side=side,
        released_at=at + RELEASED_AFTER,
        released_by=visit.artist,
        clinician_consulted=Reaction.Consulted.YES if "doctor" in words else Reaction.Consulted.NOT_KNOWN,
        test_first=False,
    )
