"""What a line of the day sheet holds: one visit, with all that its artist wants to know before it begins.

Reads, never writes. Whatever tells of health is marked as such, so that it is shown only to those who may read it and
never goes on paper.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from django.utils.translation import gettext as _

from aftercare.core.delivery import State
from aftercare.core.hours import DAY, moment
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Forecast, Message, Reply
from aftercare.pages.arrival import Arrival, arrival, forecasts
from aftercare.pages.consultation import State as Questions
from aftercare.pages.consultation import state_of as questions_of
from studio.access import May
from studio.models import SETS, Client, Service, Studio, Visit

LOOK_BACK = timedelta(days=120)  # what she wrote before that is on her card
NEW_CLIENT_LOOK_BACK = timedelta(days=30)


@dataclass(frozen=True, slots=True)
class Thing:
    """Something to set out. ``health``: it would give a health note away."""

    words: str
    health: bool = False


@dataclass(frozen=True, slots=True)
class Test:
    """The patch test that bears on a set: the one that is missing, or the last there was.

    ``state`` is ``missing``, ``booked``, ``not read`` (nobody wrote what it showed, or she did not answer), or the
    recorded result.
    """

    state: str
    at: datetime | None = None
    why: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """One visit of the day."""

    visit: Visit
    client: Client
    reads_health: bool
    is_new: bool
    on_hold: bool
    hold_why: str
    test: Test | None
    last_set: Visit | None
    days_since: int | None
    set_out: Sequence[Thing]
    left_unhappy: Visit | None
    unreachable: str
    prepare: Message | None
    prepare_due: Message | None
    arrival: Arrival | None
    questions: Questions | None
    wrote: Sequence[Reply] = field(default_factory=tuple)
    notice: Message | None = None  # the last word to those booked that day

    @property
    def things(self) -> str:
        """What to set out that anyone may know."""
        return ", ".join(thing.words for thing in self.set_out if not thing.health)

    @property
    def things_by_health(self) -> str:
        """What to set out that follows from a health note."""
        return ", ".join(thing.words for thing in self.set_out if thing.health)

    @property
    def waits(self) -> bool:
        """Whether it is still to be marked."""
        return self.visit.status == Visit.Status.BOOKED

    @property
    def lacks_guardian(self) -> bool:
        return bool(self.client.under_18) and self.client.guardian_agreed_on is None


def day_bounds(day: date, zone: ZoneInfo) -> tuple[datetime, datetime]:
    """Return the moments at which a day begins and the next one does, on the wall clock of ``zone``."""
    return moment(day, 0, zone), moment(day + DAY, 0, zone)


def visit_ids(studio: Studio, day: date) -> list[tuple[int, int]]:
    """Return the visits of a day that were not canceled, with their clients, in the order of the day."""
    begin, end = day_bounds(day, studio.zone)
    rows = Visit.objects.filter(studio=studio, starts_at__gte=begin, starts_at__lt=end)
    rows = rows.exclude(status=Visit.Status.CANCELLED).order_by("starts_at", "pk")
    return list(rows.values_list("pk", "client_id"))


def lines(ids: Iterable[tuple[int, int]], books: dict[int, ClientBook], may: May, now: datetime) -> list[Line]:
    """Build a line for each visit. Two queries: what the clients wrote, and what is forecast of their sets."""
    wrote = _wrote(list(books), now)
    forecast = forecasts(books.values())
    return [
        _line(books[client_id].visits[visit_id], books[client_id], wrote.get(client_id, []), forecast, may)
        for visit_id, client_id in ids
        if client_id in books and visit_id in books[client_id].visits
    ]


def _line(visit: Visit, book: ClientBook, wrote: list[Reply], forecast: dict[int, Forecast], may: May) -> Line:
    before = [other for other in book.visits.values() if other.starts_at < visit.starts_at and _is_done(other)]
    sets = [other for other in before if other.is_set]
    last_set = sets[-1] if sets else None
    zone = book.studio.zone
    own, due = _prepare(visit, book)
    return Line(
        visit=visit,
        client=book.client,
        reads_health=reads_health(may, book),
        is_new=not sets,
        on_hold=book.on_hold,
        hold_why=book.hold_why,
        test=test_of(visit, book),
        last_set=last_set,
        days_since=_days_between(last_set.starts_at, visit.starts_at, zone) if last_set else None,
        set_out=set_out(
            service=visit.service,
            new=not sets,
            sensitive=bool(book.client.sensitive),
            oily_lids=bool(book.client.oily_lids),
        ),
        left_unhappy=before[-1] if before and before[-1].mirror_check == Visit.MirrorCheck.UNHAPPY else None,
        unreachable=book.reach.reason or "",
        prepare=own,
        prepare_due=due,
        arrival=arrival(visit, book, forecast),
        questions=questions_of(visit, book),
        notice=_notice(visit, book),
        wrote=_since(wrote, before[-1].end if before else visit.starts_at - NEW_CLIENT_LOOK_BACK),
    )


def reads_health(may: May, book: ClientBook) -> bool:
    """Whether she may read this client's health notes: the rule of ``studio.access``, on rows that are at hand."""
    if may.own:
        return True
    treated = (Visit.Status.BOOKED, Visit.Status.DONE)
    return may.staff.is_artist and any(
        visit.artist_id in may.stands_for and visit.status in treated for visit in book.visits.values()
    )


def set_out(*, service: str, new: bool, sensitive: bool, oily_lids: bool) -> list[Thing]:
    """Return what to set out beside the usual. Common practice, no source."""
    things: list[Thing] = []
    if new and service in (*SETS, Service.CONSULTATION):
        things.append(Thing(_("a wide choice of lengths and curls")))
        things.append(Thing(_("time for the consultation")))
    if sensitive:
        things.append(Thing(_("cream remover"), health=True))
        things.append(Thing(_("sensitive tape"), health=True))
        if service in SETS:
            things.append(Thing(_("bonder"), health=True))
    if oily_lids and service in SETS:
        things.append(Thing(_("the stronger primer"), health=True))
    return things


def test_of(visit: Visit, book: ClientBook) -> Test | None:
    """Return the patch test that bears on a set, or None: none is due and none was done within the days that count."""
    if not visit.is_set:
        return None
    if why := book.tests_due.get(visit.pk):
        return Test("missing", why=why)
    every = [one for one in book.visits.values() if one.service == Service.PATCH_TEST]
    tests = [one for one in every if one.starts_at < visit.starts_at]
    done = [one for one in tests if _is_done(one)]
    if done and _days_between(done[-1].starts_at, visit.starts_at, book.studio.zone) <= book.rules.test_valid_days:
        return Test(read_as(done[-1]), done[-1].starts_at)
    booked = [one for one in tests if one.status == Visit.Status.BOOKED and one.starts_at > book.now]
    return Test("booked", booked[-1].starts_at) if booked else None


def read_as(test: Visit) -> str:
    """Return a done patch test's result; one that nobody read, or that she never answered, is ``not read``."""
    unread = test.test_result in ("", Visit.TestResult.NOT_ANSWERED)
    return "not read" if unread else test.test_result


def _prepare(visit: Visit, book: ClientBook) -> tuple[Message | None, Message | None]:
    """Return the instructions that have gone (the newest, one that arrived before others), and those still due."""
    hers = [m for m in book.messages.values() if m.visit_id == visit.pk and m.client_id == visit.client_id]
    own = [m for m in hers if m.occasion == Occasion.PREPARE]
    own.sort(key=lambda message: (message.state == State.DELIVERED, message.edition, message.step))
    gone = [m for m in own if m.state not in (State.PLANNED, State.CLAIMED, State.WITHHELD, State.WITHDRAWN)]
    due = [m for m in own if m.state in (State.PLANNED, State.CLAIMED, State.WITHHELD)]
    due.sort(key=lambda message: (message.state == State.WITHHELD, message.step))
    return (gone[-1] if gone else None, due[0] if due else None)


def _notice(visit: Visit, book: ClientBook) -> Message | None:
    """What she was told, or is about to be, by a person's act: the last of it."""
    told = [m for m in book.messages.values() if m.occasion == Occasion.NOTICE and m.visit_id == visit.pk]
    return max(told, key=lambda message: message.pk, default=None)


def _wrote(client_ids: list[int], now: datetime) -> dict[int, list[Reply]]:
    rows = Reply.objects.filter(client__in=client_ids, received_at__gte=now - LOOK_BACK, command="")
    found: dict[int, list[Reply]] = {}
    for reply in rows.defer("raw").order_by("received_at", "pk"):
        if reply.client_id is not None:
            found.setdefault(reply.client_id, []).append(reply)
    return found


def _since(wrote: list[Reply], begin: datetime) -> list[Reply]:
    return [reply for reply in wrote if reply.received_at >= begin]


def _is_done(visit: Visit) -> bool:
    return visit.status == Visit.Status.DONE


def _days_between(first: datetime, second: datetime, zone: ZoneInfo) -> int:
    return (second.astimezone(zone).date() - first.astimezone(zone).date()).days
