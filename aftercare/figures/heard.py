"""What clients wrote, and how long it took until a person had it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from django.db.models import Min, OuterRef, Subquery

from aftercare.core.occasions import Occasion
from aftercare.core.waits import Wait, within
from aftercare.figures.grouped import Span
from aftercare.models import HELD_BY, Message, Reply
from studio.models import Visit

OTHERS = "other"
URGENCIES = (*HELD_BY, OTHERS)  # of the figures, worst first


@dataclass(frozen=True, slots=True)
class Matter:
    """One matter: how urgent, whose client's, from when it waited, and when a person had it (None: not yet)."""

    urgency: str  # one of URGENCIES
    artist: int | None
    since: datetime
    had_at: datetime | None


@dataclass(frozen=True, slots=True)
class Heard:
    """The replies of a span by channel, and the matters that they opened."""

    replies: Counter[str]
    matters: list[Matter]


def heard(span: Span) -> Heard:
    """Read the replies that came in the span from people, standard words such as STOP left out. One query.

    A matter waits from the first reply that opened it; an urgent one from when it became so. A person has it who takes
    it, answers or closes it. It is the artist's who did the client's last visit before.
    """
    before = Visit.objects.filter(client=OuterRef("client"), status="done", starts_at__lte=OuterRef("received_at"))
    own = Message.objects.filter(flag=OuterRef("flag"), occasion=Occasion.ANSWER, written_by__isnull=False)
    answered = own.order_by().values("flag").annotate(at=Min("handed_over_at")).values("at")
    rows = Reply.objects.filter(
        studio=span.studio,
        received_at__gte=span.since,
        received_at__lt=span.until,
        automatic=False,
        command="",
    ).annotate(treated_by=Subquery(before.order_by("-starts_at").values("artist")[:1]), answered_at=Subquery(answered))
    if span.artist is not None:
        rows = rows.filter(treated_by=span.artist)
    told = ("urgency", "opened_at", "urgent_since", "taken_at", "closed_at")
    replies: Counter[str] = Counter()
    matters: dict[int, Matter] = {}
    for channel, artist, answered_at, flag, urgency, opened_at, urgent_since, *acts in rows.order_by(
        "received_at", "pk"
    ).values_list("line__channel", "treated_by", "answered_at", "flag", *(f"flag__{name}" for name in told)):
        replies[channel] += 1
        if flag is not None and opened_at >= span.since and flag not in matters:
            urgent = urgency in HELD_BY
            since = urgent_since if urgent else opened_at
            had = [at for at in (answered_at, *acts) if at is not None and at >= since]
            matters[flag] = Matter(urgency if urgent else OTHERS, artist, since, min(had, default=None))
    return Heard(replies, list(matters.values()))


def wait(matters: Iterable[Matter], share: float, now: datetime) -> Wait | None:
    """Return the hours within which a person had ``share`` of them; None without any."""
    waits = [(matter.had_at or now) - matter.since for matter in matters]
    over = [matter.had_at is not None for matter in matters]
    return within([one.total_seconds() / 3600 for one in waits], over, share) if waits else None
