"""The morning list: what waits for a person, worst first, and the promises that were not kept.

Reads, never writes. Nothing leaves the list but by a person's act, or because what it says is no longer so.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from functools import cached_property

from django.db.models import Max, Q, Value

from aftercare import facts
from aftercare.core.delivery import GONE
from aftercare.core.mornings import Waiting
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook, responsible
from aftercare.models import HELD_BY, URGENCIES, Flag, Heartbeat, Message, Reply
from aftercare.pages import promises
from aftercare.pages.promises import Unkept
from aftercare.pages.sheet import read_as
from studio.models import Service, Staff, Studio, Visit

STALE = timedelta(minutes=5)  # a sweep comes every second or so; after this the service is not at work


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
    def answered(self) -> list[Message]:
        """What she was answered since."""
        return [message for message in self.told if message.occasion == Occasion.ANSWER]

    @property
    def sent_since(self) -> list[Message]:
        """What else went to her since, as it was planned before she wrote."""
        return [message for message in self.told if message.occasion != Occasion.ANSWER]

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
class MorningList:
    """All that is open in a studio, before it is narrowed to one artist."""

    matters: Sequence[Matter]
    unkept: Sequence[Unkept]
    as_of: AsOf

    def __len__(self) -> int:
        return len(self.matters) + len(self.unkept)

    def of(self, staff_id: int, *, nobodys: bool) -> MorningList:
        """Narrow it to what is this artist's; ``nobodys``: and to what has no artist."""

        def hers(artist: Staff | None) -> bool:
            return nobodys if artist is None else artist.pk == staff_id

        return MorningList(
            [matter for matter in self.matters if any(hers(one) for one in _artists(matter))],
            [line for line in self.unkept if hers(line.artist)],
            self.as_of,
        )

    @property
    def artists(self) -> list[Staff]:
        """Whose lines stand on it, by name."""
        found = [line.artist for line in self.unkept]
        found.extend(artist for matter in self.matters for artist in _artists(matter))
        return sorted({artist for artist in found if artist}, key=lambda artist: artist.name)


def morning_list(studio: Studio, now: datetime) -> MorningList:
    """Read what is open in the studio, in a fixed number of queries."""
    flags = list(
        Flag.objects.filter(studio=studio, state__in=[Flag.State.OPEN, Flag.State.TAKEN])
        .select_related("taken_by")
        .order_by("opened_at", "pk")
    )
    found = _open(flags, studio, now)
    concerned = found.concerned
    replies = _replies(flags)
    failed, told = _messages(studio, flags, concerned, replies, now)
    ids = {client for clients in concerned.values() for client in clients}
    ids |= {client for _visit, client in found.visits + found.early}
    ids |= {message.client_id for message in failed if message.client_id}
    books = facts.load(ids, now)
    matters = [
        Matter(
            flag,
            [books[pk] for pk in concerned.get(flag.pk, []) if pk in books],
            replies.get(flag.pk, []),
            told.get(flag.pk, []),
            now,
        )
        for flag in flags
    ]
    matters.sort(key=lambda matter: (_rank(matter.flag.urgency), matter.flag.opened_at))
    unkept = promises.unkept(found.visits, failed, found.early, books, studio, now)
    return MorningList(matters, unkept, found.as_of)


def count(person: Staff, now: datetime) -> Waiting:
    """Count what waits for one person, as her own list opens: to an owner who treats nobody, all that is open."""
    everything = morning_list(person.studio, now)
    every = person.is_owner and not person.is_artist
    hers = everything if every else everything.of(person.pk, nobodys=person.is_owner)
    urgent = [matter for matter in hers.matters if matter.flag.urgency in HELD_BY]
    return Waiting(len(hers.matters), len(urgent), len(hers.unkept))


def _rank(urgency: str) -> int:
    return URGENCIES.index(urgency) if urgency in URGENCIES else URGENCIES.index("unread")


@dataclass(slots=True)
class _Open:
    """What the list is made from, by keys: pairs are of a visit and its client."""

    as_of: AsOf
    concerned: dict[int, list[int]] = field(default_factory=dict)  # by flag: its clients
    visits: list[tuple[int, int]] = field(default_factory=list)  # to look at
    early: list[tuple[int, int]] = field(default_factory=list)  # sets that may fail early


def _open(flags: Iterable[Flag], studio: Studio, now: datetime) -> _Open:
    """Find what is open, when the newest reply came, and when the service last looked at what is due. One query."""
    through = Flag.clients.through.objects.filter(flag__in=[flag.pk for flag in flags])
    newest = Reply.objects.filter(studio=studio).order_by().values("studio").annotate(at=Max("received_at"))
    every = promises.visits_to_look_at(studio, now).values_list(Value("visit"), "pk", "client_id", "starts_at")
    parts = (
        through.values_list(Value("flag"), "flag_id", "client_id", "flag__opened_at"),
        promises.early_sets(studio, now).values_list(Value("early"), "visit_id", "client_id", "made_at"),
        newest.values_list(Value("reply"), "studio", "studio", "at"),
        Heartbeat.objects.filter(name="sweep").order_by().values_list(Value("sweep"), Value(0), Value(0), "at"),
    )
    found = _Open(AsOf(now, None, None))
    for what, pk, client, at in every.union(*parts, all=True):
        if what == "flag":
            found.concerned.setdefault(pk, []).append(client)
        elif what == "visit":
            found.visits.append((pk, client))
        elif what == "early":
            found.early.append((pk, client))
        else:
            found.as_of = replace(found.as_of, **{what: at})
    return found


def _replies(flags: Iterable[Flag]) -> dict[int, list[Reply]]:
    rows = Reply.objects.filter(flag__in=[flag.pk for flag in flags]).defer("raw").select_related("line", "answers")
    found: dict[int, list[Reply]] = {}
    for reply in rows.order_by("received_at", "pk"):
        found.setdefault(reply.flag_id or 0, []).append(reply)
    return found


def _messages(
    studio: Studio,
    flags: list[Flag],
    concerned: dict[int, list[int]],
    replies: dict[int, list[Reply]],
    now: datetime,
) -> tuple[list[Message], dict[int, list[Message]]]:
    """Return the messages that failed, and what each flag's clients were told since they wrote. One query."""
    since = min((flag.opened_at for flag in flags), default=now)
    clients = {client for ids in concerned.values() for client in ids}
    numbers = {reply.from_address for found in replies.values() for reply in found}
    # An answer to a number that several share, or nobody known has, is nobody's: it is found by where it went.
    hers = Q(client__in=clients) | Q(client=None, staff=None, address__in=numbers)
    rows = Message.objects.filter(promises.failed() | hers & Q(handed_over_at__gte=since), studio=studio)
    messages = list(rows.select_related("visit").order_by("handed_over_at", "pk"))
    told = {
        flag.pk: [
            message
            for message in messages
            if message.state in GONE
            and message.handed_over_at is not None
            and message.handed_over_at >= flag.opened_at
            and _went_to(message, concerned.get(flag.pk, []), replies.get(flag.pk, []))
        ]
        for flag in flags
    }
    return [message for message in messages if promises.is_failed(message)], told


def _went_to(message: Message, clients: list[int], replies: list[Reply]) -> bool:
    if message.client_id is not None:
        return message.client_id in clients
    return any(message.address == reply.from_address for reply in replies)


def _artists(matter: Matter) -> list[Staff | None]:
    return [responsible(book) for book in matter.books] or [None]
