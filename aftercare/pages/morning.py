"""The morning list: what waits for a person, worst first, and the promises that were not kept.

Reads, never writes. Nothing leaves the list but by a person's act, or because what it says is no longer so.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import Any

from django.db.models import DateTimeField, Max, Q, Value

from aftercare import facts, lotmarks
from aftercare.answers import OWN, WARNED
from aftercare.core.delivery import GONE, State
from aftercare.core.mornings import Waiting
from aftercare.core.occasions import Occasion
from aftercare.facts import responsible
from aftercare.models import HELD_BY, Flag, Heartbeat, Message, Reply
from aftercare.pages import promises, wishes
from aftercare.pages.files import brought, with_files
from aftercare.pages.matter import Matter, pages_about
from aftercare.pages.order import Group, grouped
from aftercare.pages.promises import Unkept
from aftercare.pages.wishes import Wished
from studio import covering
from studio.models import Adhesive, Staff, Studio

LEAVING = (State.PLANNED, State.CLAIMED, State.HANDING_OVER)  # of a person's answer: within seconds
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


@dataclass(frozen=True, slots=True)
class MorningList:
    """All that is open in a studio, before it is narrowed to one artist."""

    matters: Sequence[Matter]
    unkept: Sequence[Unkept]
    as_of: AsOf
    studio: Studio
    away: Mapping[int, int | None]  # who is away today, and her cover
    wishes: Sequence[Wished] = ()
    lots: Sequence[Adhesive] = ()  # marked, in use, and not looked at: to whoever treats

    def __len__(self) -> int:
        return len(self.matters) + len(self.unkept) + len(self.wishes) + len(self.lots)

    @property
    def groups(self) -> Sequence[Group]:
        """What stands on it, the most pressing first."""
        return grouped(self.matters, self.unkept, self.as_of.now.astimezone(self.studio.zone).date())

    def of(self, person: Staff, *, nobodys: bool) -> MorningList:
        """Narrow it to what is hers today, as an artist and as cover; ``nobodys``: and to what has no artist."""
        ids = {person.pk} | covering.covered_by(self.away, person)

        def hers(artist: Staff | None) -> bool:
            return nobodys if artist is None else artist.pk in ids

        def is_told(matter: Matter) -> bool:
            # What an artist was paged about is hers too, whoever's client it is; owners are told of what others have.
            return person.is_artist and not person.is_owner and person.pk in matter.paged

        return MorningList(
            [one for one in self.matters if any(hers(artist) for artist in _artists(one)) or is_told(one)],
            [line for line in self.unkept if hers(line.artist)],
            self.as_of,
            self.studio,
            self.away,
            self.wishes if nobodys else (),
            self.lots,
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
        .select_related("taken_by", "studio")
        .order_by("opened_at", "pk")
    )
    found = _open(flags, studio, now)
    concerned = found.concerned
    replies, wished = _replies(flags, studio)
    failed, told = _messages(studio, flags, concerned, replies, now)
    ids = {client for clients in concerned.values() for client in clients}
    ids |= {client for _visit, client in found.visits + found.early}
    ids |= {client for client, _at in found.no_address}
    ids |= {message.client_id for message in failed if message.client_id}
    ids |= {reply.client_id for reply in wished if reply.client_id}
    books = facts.load(ids, now)
    matters = [
        Matter(
            flag,
            [books[pk] for pk in concerned.get(flag.pk, []) if pk in books],
            replies.get(flag.pk, []),
            told.get(flag.pk, []),
            now,
            frozenset(found.paged.get(flag.pk, ())),
        )
        for flag in flags
    ]
    unkept = promises.unkept(found.visits, failed, found.early, found.no_address, books, studio, now)
    asked = [wishes.wished(reply, books.get(reply.client_id or 0), now) for reply in wished]
    lots = list(Adhesive.objects.filter(pk__in=found.lots)) if found.lots else []
    return MorningList(matters, unkept, found.as_of, studio, found.away, asked, lots)


def count(person: Staff, now: datetime) -> Waiting:
    """Count what waits for one person, as her own list opens: to an owner who treats nobody, all that is open."""
    everything = morning_list(person.studio, now)
    every = person.is_owner and not person.is_artist
    hers = everything if every else everything.of(person, nobodys=person.is_owner)
    urgent = [matter for matter in hers.matters if matter.flag.urgency in HELD_BY]
    seen = hers.as_of
    return Waiting(
        len(hers.matters),
        len(urgent),
        len(hers.unkept) + len(hers.wishes) + len(hers.lots),
        seen.now,
        seen.reply,
        seen.sweep,
    )


@dataclass(slots=True)
class _Open:
    """What the list is made from, by keys: pairs are of a visit and its client."""

    as_of: AsOf
    concerned: dict[int, list[int]] = field(default_factory=dict)  # by flag: its clients
    visits: list[tuple[int, int]] = field(default_factory=list)  # to look at
    early: list[tuple[int, int]] = field(default_factory=list)  # sets that may fail early
    no_address: list[tuple[int, datetime]] = field(default_factory=list)  # clients whose address is nobody's
    away: dict[int, int | None] = field(default_factory=dict)  # who is away today, and her cover
    paged: dict[int, list[int]] = field(default_factory=dict)  # by flag: who of the staff was told of it
    lots: list[int] = field(default_factory=list)  # to look at


def _open(flags: Iterable[Flag], studio: Studio, now: datetime) -> _Open:
    """Find what is open, when the newest reply came, and when the service last looked at what is due. One query."""
    through = Flag.clients.through.objects.filter(flag__in=[flag.pk for flag in flags])
    newest = Reply.objects.filter(studio=studio).order_by().values("studio").annotate(at=Max("received_at"))
    every = promises.booked_near(studio, now).values_list(Value("visit"), "pk", "client_id", "starts_at")
    paged = pages_about([flag.pk for flag in flags])
    away = covering.away_on(studio, now.astimezone(studio.zone).date())
    parts = (
        promises.left_unhappy(studio).values_list(Value("visit"), "pk", "client_id", "starts_at"),
        through.values_list(Value("flag"), "flag_id", "client_id", "flag__opened_at"),
        paged.order_by().values_list(Value("paged"), "flag_id", "staff_id", "handed_over_at"),
        promises.early_sets(studio, now).values_list(Value("early"), "visit_id", "client_id", "made_at"),
        promises.without_address(studio).values_list(Value("no address"), "pk", "pk", "since"),
        lotmarks.to_look_at(studio).order_by().values_list(Value("lot"), "pk", "studio", "marked_at"),
        newest.values_list(Value("reply"), "studio", "studio", "at"),
        away.order_by().values_list(Value("away"), "staff_id", "stand_in", Value(None, DateTimeField())),
        Heartbeat.objects.filter(name="sweep").order_by().values_list(Value("sweep"), Value(0), Value(0), "at"),
    )
    found = _Open(AsOf(now, None, None))
    for what, pk, client, at in every.union(*parts, all=True):
        if what == "flag":
            found.concerned.setdefault(pk, []).append(client)
        elif what == "paged":
            found.paged.setdefault(pk, []).append(client)
        elif what == "visit":
            found.visits.append((pk, client))
        elif what == "early":
            found.early.append((pk, client))
        elif what == "no address":
            found.no_address.append((client, at))
        elif what == "away":
            found.away[pk] = client
        elif what == "lot":
            found.lots.append(pk)
        else:
            found.as_of = replace(found.as_of, **{what: at})
    return found


def _replies(flags: Sequence[Flag], studio: Studio) -> tuple[dict[int, list[Reply]], list[Any]]:
    """Return the replies of each flag, and those with a standing wish. One query."""
    ids = {flag.pk for flag in flags}
    asked = wishes.standing(studio).values("reply")
    rows = Reply.objects.filter(Q(flag__in=ids) | Q(pk__in=asked)).defer("raw").select_related("line", "answers")
    found: dict[int, list[Reply]] = {}
    wished = []
    for reply in brought(with_files(wishes.with_wishes(rows)).order_by("received_at", "pk")):
        if reply.flag_id in ids:
            found.setdefault(reply.flag_id, []).append(reply)
        if reply.wish is not None:
            wished.append(reply)
    return found, wished


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
    own = Q(occasion=Occasion.ANSWER, kind__in=(OWN, WARNED), state__in=LEAVING, planned_from__gte=since)
    rows = Message.objects.filter(promises.failed() | hers & (Q(handed_over_at__gte=since) | own), studio=studio)
    messages = sorted(rows.select_related("visit"), key=lambda message: (_gone_at(message), message.pk))
    told = {
        flag.pk: [
            message
            for message in messages
            if message.state in (*GONE, *LEAVING)
            and _gone_at(message) >= flag.opened_at
            and _went_to(message, concerned.get(flag.pk, []), replies.get(flag.pk, []))
        ]
        for flag in flags
    }
    return [message for message in messages if promises.is_failed(message)], told


def _gone_at(message: Message) -> datetime:
    """When it went; of a person's answer that is still on its way, when she sent it."""
    return message.handed_over_at or message.planned_from


def _went_to(message: Message, clients: list[int], replies: list[Reply]) -> bool:
    if message.client_id is not None:
        return message.client_id in clients
    return any(message.address == reply.from_address for reply in replies)


def _artists(matter: Matter) -> list[Staff | None]:
    return [responsible(book) for book in matter.books] or [None]
