"""Messages of a span: where they stand, by which channel, what they cost, and why some did not go or arrive."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from django.db.models import Case, CharField, Count, F, Q, QuerySet, Sum, Value, When
from django.db.models.functions import Coalesce

from aftercare.core.delivery import State
from aftercare.figures.grouped import Groups, Span, grouped
from aftercare.models import Message

FAILED = (State.UNDELIVERED, State.UNSURE)
EXPLAINED = (*FAILED, State.WITHHELD)
ENDED = (State.DELIVERED, State.UNDELIVERED)  # what the road has told of


@dataclass(frozen=True, slots=True)
class Row:
    """Messages that are alike: how many, and the segments of their texts that a carrier charges."""

    occasion: str
    state: str
    channel: str
    rehearsed: bool
    why: str  # of those that did not arrive, may not have, or were withheld
    messages: int
    segments: int


def traffic(span: Span) -> list[Row]:
    """Count the messages to clients whose moment lies in the span; of an artist, those about her visits. One query.

    What was rehearsed left for no carrier, so it has no segment to be charged, but in the demo studio, where all is
    pretended.
    """
    reason = Case(When(state__in=EXPLAINED, then=F("reason")), default=Value(""), output_field=CharField())
    alike = ("occasion", "state", "channel", "rehearsed")
    rows = _messages(span).annotate(why=reason).values(*alike, "why").order_by()
    charged = None if span.studio.is_demo else Q(rehearsed=False)
    counted = rows.annotate(messages=Count("pk"), cost=Coalesce(Sum("segments", filter=charged), 0))
    return [
        Row(occasion, state, channel, rehearsed, why, messages, segments)
        for occasion, state, channel, rehearsed, why, messages, segments in counted.values_list(
            *alike, "why", "messages", "cost"
        )
    ]


def failures(span: Span) -> Groups:
    """Sum up by channel the messages that the road has told of: 1 where one did not arrive. One query."""
    ended = _messages(span).filter(state__in=ENDED, rehearsed=False)
    rows = ended.annotate(who=F("client"), road=F("channel")).values("who", "road", "state")
    failed = f"CASE WHEN state = '{State.UNDELIVERED.value}' THEN 1.0 ELSE 0.0 END"
    return grouped(rows, {"road": ("road",)}, value=failed)


def _messages(span: Span) -> QuerySet[Message]:
    """Return those whose moment lies in the span; of one that has none, or was withheld, it is its aim.

    The moment of a withheld one is when it could go should nothing hold it any more: it is ahead until it is too late.
    """
    due = Q(due_at__gte=span.since, due_at__lt=span.until)
    aimed = Q(aim_at__gte=span.since, aim_at__lt=span.until)
    # Each state is named, so that the index by state and moment serves.
    at_its_moment = due & Q(state__in=[state for state in State if state is not State.WITHHELD])
    at_its_aim = aimed & (Q(state=State.WITHHELD) | Q(state__in=list(State), due_at=None))
    rows = Message.objects.filter(at_its_moment | at_its_aim, studio=span.studio, client__isnull=False)
    return rows if span.artist is None else rows.filter(visit__artist=span.artist)


def total(rows: Iterable[Row]) -> tuple[int, int]:
    """Return how many messages they are, and how many segments."""
    some = list(rows)
    return sum(row.messages for row in some), sum(row.segments for row in some)
