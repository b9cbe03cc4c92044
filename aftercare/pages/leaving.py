"""What would leave within some hours, as its page counts it: by occasion and channel, and what the texts would cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal

from django.db.models import Avg, Count, QuerySet
from django.utils.functional import Promise

from aftercare import planning
from aftercare.core.wordcheck import MANY_SEGMENTS
from aftercare.lines import lines_of
from aftercare.models import Message
from aftercare.pages.shown import OCCASIONS
from studio.models import Studio

LATELY = timedelta(days=30)


@dataclass(frozen=True, slots=True)
class Kind:
    """Messages of one occasion: how many by text and by e-mail, and as how many texts the former will be charged."""

    what: str | Promise
    sms: int
    email: int
    texts: float

    @property
    def total(self) -> int:
        return self.sms + self.email


@dataclass(frozen=True, slots=True)
class Leaving:
    """All of them."""

    kinds: Sequence[Kind]
    price: Decimal | None
    currency: str

    @property
    def sms(self) -> int:
        return sum(kind.sms for kind in self.kinds)

    @property
    def email(self) -> int:
        return sum(kind.email for kind in self.kinds)

    @property
    def total(self) -> int:
        return self.sms + self.email

    @property
    def texts(self) -> int:
        """As how many texts they will be charged, about."""
        return round(sum(kind.texts for kind in self.kinds))

    @property
    def money(self) -> Decimal | None:
        return None if self.price is None else self.price * self.texts


def leaving(studio: Studio, now: datetime, hours: int) -> Leaving:
    """Count them. A text that is not written yet is taken to be as long as the last of its kind were. Two queries."""
    rows = planning.leaving_within(studio, now, hours).order_by()
    counted = rows.values_list("occasion", "channel").annotate(n=Count("pk"))
    found: dict[str, dict[str, int]] = {}
    for occasion, channel, n in counted:
        by_channel = found.setdefault(occasion, {})
        by_channel["email" if channel == "email" else "sms"] = n
    length = _lengths(studio, now)
    line = lines_of(studio).get("sms")
    kinds = [
        Kind(words, one.get("sms", 0), one.get("email", 0), one.get("sms", 0) * length.get(occasion, MANY_SEGMENTS))
        for occasion, words in OCCASIONS.items()
        if (one := found.get(occasion))
    ]
    return Leaving(kinds, line.price if line else None, line.currency if line else "")


def _lengths(studio: Studio, now: datetime) -> dict[str, float]:
    """Segments of the texts of each occasion that left lately, on average."""
    left: QuerySet[Message] = Message.objects.filter(
        studio=studio, channel="sms", segments__isnull=False, handed_over_at__gte=now - LATELY
    )
    return dict(left.order_by().values_list("occasion").annotate(Avg("segments")))
