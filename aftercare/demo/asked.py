"""What the demo's clients answered before their next visits: most have, some have not yet, one lets nothing be kept."""

from __future__ import annotations

from datetime import datetime, timedelta

from aftercare import consulting, upkeep
from aftercare.consulting import Sent
from aftercare.core.consultation import NO, QUESTIONS, UNKNOWN, YES, Answer
from studio.models import Studio, Visit

AHEAD = timedelta(days=4)
BEFORE = timedelta(days=20)  # the time before, of those who had answered then, too
NOES = {question.key: Answer(NO) for question in QUESTIONS}
# By turns: what she answers other than no, and the look she wishes; None has not answered yet.
TOLD: list[tuple[dict[str, Answer], str] | None] = [
    (
        {"tape": Answer(YES, "red marks under the eyes, gone the next day"), "lenses": Answer(YES)},
        "natural, like last time",
    ),
    ({"lenses": Answer(NO)}, ""),
    None,
    ({"asthma": Answer(YES, "hay fever in June"), "serum": Answer(YES, "most nights")}, "a little longer outside"),
    ({"glaucoma": Answer(YES, "drops for dry eyes"), "latex": Answer(UNKNOWN)}, ""),
    ({}, "wet look"),
    None,
]
DECLINES = 6  # every sixth of them lets nothing be kept
HAD_ANSWERED = 3  # every third of them had answered before an earlier visit


def write(studio: Studio, now: datetime) -> None:
    """Have them answer before ``now``, and their cards and the plan follow."""
    ahead = Visit.objects.filter(
        studio=studio, status=Visit.Status.BOOKED, starts_at__gt=now, starts_at__lt=now + AHEAD
    ).select_related("client__studio")
    for number, visit in enumerate(ahead.order_by("starts_at", "pk")):
        told = TOLD[number % len(TOLD)]
        if told is None:
            continue
        if number % HAD_ANSWERED == 0:
            _send(visit, {}, "", now - BEFORE, once="demo-before")
        _send(visit, told[0], told[1], now - timedelta(hours=2), agreed=number % DECLINES != DECLINES - 1)
    upkeep.catch_up(now, studio=studio)


def _send(
    visit: Visit, told: dict[str, Answer], style: str, at: datetime, *, agreed: bool = True, once: str = "demo-now"
) -> None:
    client = visit.client
    client.refresh_from_db()
    unsigned = client.waiver_signed_on is None and not client.under_18
    sent = Sent(
        once=f"{once}-{visit.pk}",
        language=client.language or "en",
        agreed=agreed,
        agreed_words=f"{client.studio.name} may keep my answers about my health.",
        answers={**NOES, **told},
        style=style,
        signed_name=client.name if unsigned else "",
    )
    consulting.submit(visit=visit, client=client, sent=sent, now=at)
