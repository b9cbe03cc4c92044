"""The front desk's list: what clients ask about their bookings, with no word on health. Reads, never writes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.db.models import OuterRef, QuerySet, Subquery

from aftercare.core import routing
from aftercare.core.ticks import Ticked
from aftercare.facts import ClientBook
from aftercare.models import Reply, Wish
from aftercare.pages.ticks import suits_in_words
from studio.models import Studio, Visit


@dataclass(frozen=True, slots=True)
class Wished:
    """One standing wish. ``words`` are hers where they hold nothing of health and were understood, else ''."""

    pk: int
    kind: str
    reply: Reply
    book: ClientBook | None
    words: str
    now: datetime

    @property
    def suits(self) -> str:
        """When another day would suit her, as she ticked it on her page."""
        return suits_in_words(Ticked.kept(self.reply.ticked)) if self.reply.ticked else ""

    @property
    def is_by_button(self) -> bool:
        """Whether she pressed a button on her page and wrote no word beside it."""
        return bool(self.reply.ticked) and not self.reply.text

    @property
    def next_visit(self) -> Visit | None:
        """The visit that it is most likely about."""
        visits = self.book.visits.values() if self.book else ()
        ahead = [v for v in visits if v.status == Visit.Status.BOOKED and v.booked_end > self.now]
        return ahead[0] if ahead else None


def with_wishes(replies: QuerySet[Reply]) -> QuerySet[Any]:
    """Have each reply bring along its standing wish, if it has one: ``wish`` and ``wish_kind``."""
    standing = Wish.objects.filter(reply=OuterRef("pk"), seen_to_at=None).order_by("pk")
    return replies.annotate(wish=Subquery(standing.values("pk")[:1]), wish_kind=Subquery(standing.values("kind")[:1]))


def standing(studio: Studio) -> QuerySet[Wish]:
    """Return the wishes that nobody has seen to."""
    return Wish.objects.filter(studio=studio, seen_to_at=None)


def wished(reply: Any, book: ClientBook | None, now: datetime) -> Wished:
    """Put together what the front desk sees of a reply that `with_wishes` read."""
    reading = reply.reading
    readable = routing.may_read(
        reading.get("about", []),
        reading.get("signs", []),
        reading.get("negated", []),
        unread=reading.get("unread", True) and reply.wish_kind not in (Wish.Kind.CONFIRMED, Wish.Kind.MAY_CANCEL),
    )
    hidden = reply.wish_kind != Wish.Kind.WRONG_PERSON and routing.tells_of_health(reply.text)
    return Wished(reply.wish, reply.wish_kind, reply, book, reply.text if readable and not hidden else "", now)
