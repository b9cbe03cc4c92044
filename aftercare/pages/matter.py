"""One open matter, with all that helps to decide: her words, the visit before them, what she has been told."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import cached_property

from django.db.models import QuerySet

from aftercare.core import outcomes
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import HELD_BY, Flag, Message, Reply
from aftercare.pages.sheet import read_as
from studio.models import Reaction, Service, Visit


def pages_about(flag_ids: Collection[int]) -> QuerySet[Message]:
    """Return the pages to staff about these matters that have gone."""
    pages = Message.objects.filter(flag__in=flag_ids, occasion=Occasion.ALERT)
    return pages.filter(staff__isnull=False, handed_over_at__isnull=False)


@dataclass(frozen=True)
class Matter:
    """An open flag with all that helps to decide: her words, the visit before them, what she has been told."""

    flag: Flag
    books: Sequence[ClientBook]
    replies: Sequence[Reply]
    told: Sequence[Message]
    now: datetime
    paged: frozenset[int] = frozenset()  # the keys of those of the staff who were told of it

    @property
    def since(self) -> datetime:
        """Since when it waits: as urgent as it is."""
        return self.flag.urgent_since if self.flag.urgency in HELD_BY else self.flag.opened_at

    @property
    def waiting(self) -> timedelta:
        return self.now - self.since

    @property
    def newest_first(self) -> list[Reply]:
        """What she wrote, the newest first: it says how she is now."""
        return list(reversed(self.replies))

    @property
    def call_is_late(self) -> bool:
        """Whether she was told that a person calls her by a moment that has passed, and nobody has this."""
        by = self.flag.call_by
        return by is not None and by < self.now and self.flag.state == Flag.State.OPEN

    @property
    def to_try_again(self) -> bool:
        """Whether it is time to try again: she could not be reached before."""
        return self.flag.try_again_at is not None and self.flag.try_again_at <= self.now

    def comes_in_on(self, day: date) -> bool:
        """Whether any of those whom it may be from has a visit ahead that day, on the studio's clock."""
        visits = (visit for book in self.books for visit in book.visits.values())
        booked = (visit for visit in visits if visit.status == Visit.Status.BOOKED and visit.booked_end > self.now)
        return any(visit.starts_at.astimezone(self.flag.studio.zone).date() == day for visit in booked)

    @property
    def earlier_reactions(self) -> list[Reaction]:
        return [one for one in self.book.reactions if one.at < self.flag.opened_at] if self.book else []

    @property
    def may_be_closed_with_others(self) -> bool:
        """Whether nothing in it is about anybody's health."""
        topics = [topic for reply in self.replies for topic in reply.reading.get("about", ("irritation",))]
        return not outcomes.is_about_health(self.flag.urgency, topics)

    @property
    def answered(self) -> list[Message]:
        """What she was answered since, what a person wrote and has not left yet included."""
        return [message for message in self.told if message.occasion == Occasion.ANSWER]

    @property
    def sent_since(self) -> list[Message]:
        """What else went to her since she wrote last, as it was planned before."""
        wrote = self.replies[-1].received_at if self.replies else self.flag.opened_at
        return [
            message
            for message in self.told
            if message.occasion != Occasion.ANSWER and message.handed_over_at and message.handed_over_at >= wrote
        ]

    @property
    def book(self) -> ClientBook | None:
        """The one client, where it can be only one."""
        return self.books[0] if len(self.books) == 1 else None

    @cached_property
    def calls(self) -> list[tuple[str, str]]:
        """Whom a person can call: first names and numbers. '' names whoever wrote from a number that is not hers alone.

        That number is the nearest to who it was; where they wrote by e-mail, each has her own.
        """
        writing = self.newest_first[0].from_address if self.newest_first else ""
        if self.book is None and writing.startswith("+") and "@" not in writing:
            return [("", writing)]
        return [(book.client.first_name, book.client.mobile) for book in self.books if book.client.mobile]

    @cached_property
    def last_visit(self) -> Visit | None:
        """The last done visit before she wrote."""
        if self.book is None:
            return None
        begun = [visit for visit in self.book.visits.values() if visit.status == Visit.Status.DONE]
        before = [visit for visit in begun if visit.starts_at <= self.since]
        return before[-1] if before else None

    @property
    def since_visit(self) -> timedelta | None:
        """How long after the end of that visit she wrote what is urgent (never negative: some write from the chair)."""
        if self.last_visit is None:
            return None
        return max(timedelta(), self.since - self.last_visit.end)

    @cached_property
    def next_visit(self) -> Visit | None:
        if self.book is None:
            return None
        booked = [v for v in self.book.visits.values() if v.status == Visit.Status.BOOKED and v.starts_at > self.now]
        return booked[0] if booked else None

    @cached_property
    def last_test(self) -> Visit | None:
        if self.book is None:
            return None
        tests = [v for v in self.book.visits.values() if v.service == Service.PATCH_TEST]
        done = [v for v in tests if v.status == Visit.Status.DONE]
        return done[-1] if done else None

    @property
    def last_test_read(self) -> str:
        return read_as(self.last_test) if self.last_test else ""
