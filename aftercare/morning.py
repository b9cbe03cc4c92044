"""The morning list: what waits for a person, worst first, and the promises that were not kept.

Reads, never writes. Nothing leaves the list but by a person's act, or because what it says is no longer so.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import cached_property

from django.db.models import Max, OuterRef, Q, QuerySet, Subquery

from aftercare import facts
from aftercare.core.delivery import GONE, State
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Flag, Heartbeat, Message, Reply
from aftercare.sheet import day_bounds, read_as
from studio.models import Service, Staff, Studio, Visit

URGENCIES = ("emergency", "same_day", "unread", "watch", "none")  # worst first
AHEAD = timedelta(hours=72)  # a patch test is missed from here on
UNMARKED_AFTER = timedelta(minutes=30)
BEHIND = timedelta(days=14)  # unmarked visits, failed messages and unread tests older than that are on the cards only
UNHAPPY_FOR = timedelta(days=3)
STALE = timedelta(minutes=5)  # a sweep comes every second or so; after this the service is not at work
KINDS = ("no test", "not read", "not delivered", "unsure", "not marked", "unhappy")  # worst first
UNKEPT = (Occasion.CARE, Occasion.CHECK, Occasion.PATCH_TEST, Occasion.ANSWER)


@dataclass(frozen=True, slots=True)
class AsOf:
    """How fresh the list is."""

    now: datetime
    reply: datetime | None
    sweep: datetime | None

    @property
    def is_stale(self) -> bool:
        return self.sweep is None or self.now - self.sweep > STALE


@dataclass(frozen=True)
class Matter:
    """An open flag with all that helps to decide: her words, the visit before them, what she has been told."""

    flag: Flag
    books: Sequence[ClientBook]
    replies: Sequence[Reply]
    told: Sequence[Message]
    now: datetime

    @property
    def waiting(self) -> timedelta:
        return self.now - self.flag.opened_at

    @property
    def book(self) -> ClientBook | None:
        """The one client, where it can be only one."""
        return self.books[0] if len(self.books) == 1 else None

    @cached_property
    def last_visit(self) -> Visit | None:
        """The last done visit before she wrote."""
        if self.book is None:
            return None
        begun = [visit for visit in self.book.visits.values() if visit.status == Visit.Status.DONE]
        before = [visit for visit in begun if visit.starts_at <= self.flag.opened_at]
        return before[-1] if before else None

    @property
    def since_visit(self) -> timedelta | None:
        """How long after the end of that visit she wrote (never negative: some write from the chair)."""
        if self.last_visit is None:
            return None
        return max(timedelta(), self.flag.opened_at - self.last_visit.end)

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


@dataclass(frozen=True, slots=True)
class Unkept:
    """A promise not kept, of one of the KINDS, about a visit or a message."""

    kind: str
    book: ClientBook
    visit: Visit | None
    at: datetime
    why: str = ""
    message: Message | None = None
    test: Visit | None = None


@dataclass(frozen=True, slots=True)
class MorningList:
    """All that is open in a studio, before it is narrowed to one artist."""

    matters: Sequence[Matter]
    unkept: Sequence[Unkept]
    as_of: AsOf

    def __len__(self) -> int:
        return len(self.matters) + len(self.unkept)

    def of(self, staff: Staff, *, nobodys: bool) -> MorningList:
        """Narrow it to what is this artist's; ``nobodys``: and to what has no artist."""

        def hers(artist: int | None) -> bool:
            return artist == staff.pk or (nobodys and artist is None)

        return MorningList(
            [matter for matter in self.matters if any(hers(one) for one in _artists(matter))],
            [line for line in self.unkept if hers(_artist(line))],
            self.as_of,
        )


def morning_list(studio: Studio, now: datetime) -> MorningList:
    """Read what is open in the studio, in a fixed number of queries."""
    flags = list(
        Flag.objects.filter(studio=studio, state__in=[Flag.State.OPEN, Flag.State.TAKEN])
        .select_related("taken_by")
        .order_by("opened_at", "pk")
    )
    concerned = _concerned(flags)
    replies = _replies(flags)
    visits = list(_visits(studio, now).values_list("pk", "client_id"))
    failed = list(_failed(studio, now).select_related("visit"))
    ids = {client for clients in concerned.values() for client in clients}
    ids |= {client for _visit, client in visits} | {message.client_id for message in failed if message.client_id}
    books = facts.load(ids, now)
    matters = [
        _matter(flag, [books[pk] for pk in concerned.get(flag.pk, []) if pk in books], replies.get(flag.pk, []), now)
        for flag in flags
    ]
    matters.sort(key=lambda matter: (_rank(matter.flag.urgency), matter.flag.opened_at))
    unkept = [*_unkept_visits(visits, books, studio, now), *_unkept_messages(failed, books)]
    unkept.sort(key=lambda line: (KINDS.index(line.kind), line.at))
    return MorningList(matters, unkept, as_of(studio, now))


def as_of(studio: Studio, now: datetime) -> AsOf:
    """Return when the newest reply came and when the service last looked at what is due. One query."""
    sweep = Heartbeat.objects.filter(name="sweep").values("at")[:1]
    newest = Reply.objects.filter(studio=OuterRef("pk")).order_by().values("studio").annotate(at=Max("received_at"))
    row = Studio.objects.filter(pk=studio.pk).values_list(Subquery(newest.values("at")), Subquery(sweep)).get()
    return AsOf(now, *row)


def _rank(urgency: str) -> int:
    return URGENCIES.index(urgency) if urgency in URGENCIES else URGENCIES.index("unread")


def _concerned(flags: Iterable[Flag]) -> dict[int, list[int]]:
    through = Flag.clients.through.objects.filter(flag__in=[flag.pk for flag in flags])
    found: dict[int, list[int]] = {}
    for flag, client in through.order_by("client_id").values_list("flag_id", "client_id"):
        found.setdefault(flag, []).append(client)
    return found


def _replies(flags: Iterable[Flag]) -> dict[int, list[Reply]]:
    rows = Reply.objects.filter(flag__in=[flag.pk for flag in flags]).defer("raw").select_related("line", "answers")
    found: dict[int, list[Reply]] = {}
    for reply in rows.order_by("received_at", "pk"):
        found.setdefault(reply.flag_id or 0, []).append(reply)
    return found


def _visits(studio: Studio, now: datetime) -> QuerySet[Visit]:
    booked, done = Q(status=Visit.Status.BOOKED), Q(status=Visit.Status.DONE)
    near = booked & Q(starts_at__lte=now + AHEAD)
    unhappy = done & Q(mirror_check=Visit.MirrorCheck.UNHAPPY, starts_at__gte=now - UNHAPPY_FOR)
    return Visit.objects.filter(near | unhappy, studio=studio, starts_at__gte=now - BEHIND).order_by("starts_at", "pk")


def _failed(studio: Studio, now: datetime) -> QuerySet[Message]:
    rows = Message.objects.filter(studio=studio, state__in=[State.UNDELIVERED, State.UNSURE], occasion__in=UNKEPT)
    return rows.filter(due_at__gte=now - BEHIND, client__isnull=False).defer("text", "subject")


def _matter(flag: Flag, books: list[ClientBook], replies: list[Reply], now: datetime) -> Matter:
    told = [
        message
        for book in books
        for message in book.messages.values()
        if message.state in GONE and message.handed_over_at and message.handed_over_at >= flag.opened_at
    ]
    return Matter(flag, books, replies, told, now)


def _unkept_visits(
    visits: Iterable[tuple[int, int]], books: dict[int, ClientBook], studio: Studio, now: datetime
) -> list[Unkept]:
    today = now.astimezone(studio.zone).date()
    found: list[Unkept] = []
    for visit_id, client_id in visits:
        book = books.get(client_id)
        visit = book.visits.get(visit_id) if book else None
        if book is not None and visit is not None:
            found.extend(_unkept_visit(visit, book, today, now))
    return found


def _unkept_visit(visit: Visit, book: ClientBook, today: date, now: datetime) -> Iterable[Unkept]:
    if visit.status == Visit.Status.DONE:
        yield Unkept("unhappy", book, visit, visit.starts_at)
        return
    if visit.booked_end + UNMARKED_AFTER <= now:
        yield Unkept("not marked", book, visit, visit.starts_at)
        return
    if visit.starts_at > now and (why := book.tests_due.get(visit.pk)):
        yield Unkept("no test", book, visit, visit.starts_at, why)
    begin, end = day_bounds(today, book.studio.zone)
    if visit.is_set and begin <= visit.starts_at < end and (test := _unread_test(visit, book)):
        yield Unkept("not read", book, visit, visit.starts_at, test=test)


def _unread_test(visit: Visit, book: ClientBook) -> Visit | None:
    """Return the newest done patch test before the visit, if nobody has read it."""
    tests = [v for v in book.visits.values() if v.service == Service.PATCH_TEST and v.status == Visit.Status.DONE]
    before = [test for test in tests if test.starts_at < visit.starts_at]
    return before[-1] if before and read_as(before[-1]) == "not read" else None


def _unkept_messages(failed: Iterable[Message], books: dict[int, ClientBook]) -> list[Unkept]:
    found = []
    for message in failed:
        book = books.get(message.client_id or 0)
        if book is not None:
            kind = "not delivered" if message.state == State.UNDELIVERED else "unsure"
            at = message.handed_over_at or message.ended_at or message.due_at or message.planned_from
            visit = book.visits.get(message.visit_id or 0)
            found.append(Unkept(kind, book, visit, at, message.reason, message))
    return found


def _artist(line: Unkept) -> int | None:
    return line.visit.artist_id if line.visit else responsible(line.book)


def _artists(matter: Matter) -> list[int | None]:
    return [responsible(book) for book in matter.books] or [None]


def responsible(book: ClientBook) -> int | None:
    """Return whose client she is now: the artist of her latest visit, else of her next one."""
    kept = [v for v in book.visits.values() if v.status in (Visit.Status.BOOKED, Visit.Status.DONE) and v.artist_id]
    begun = [visit for visit in kept if visit.starts_at <= book.now]
    if begun:
        return begun[-1].artist_id
    return kept[0].artist_id if kept else None
