"""Promises not kept: a patch test that is missing or was not read, a message that did not arrive, a visit left open.

And sets that are likely to fail early, which no reminder would be soon enough for.

Reads, never writes.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from django.db.models import Exists, F, FloatField, OuterRef, Q, QuerySet, Subquery, Value
from django.db.models.fields.json import KeyTextTransform
from django.db.models.functions import Cast, Coalesce, Lower

from aftercare.core.delivery import State
from aftercare.core.reminders import day_of, fails_early
from aftercare.core.timing import SAFETY, Occasion, Rules
from aftercare.facts import ClientBook, responsible
from aftercare.models import Forecast, Message, RuleSet, Stop
from aftercare.pages.herset import worn
from aftercare.pages.sheet import day_bounds, read_as
from aftercare.planning.staff import NUDGE_AFTER
from studio.models import Client, Service, Staff, Studio, Visit

EARLY = "early"
KINDS = ("no test", "not read", "not delivered", "unsure", "no address", "not marked", "unhappy", EARLY)  # worst first
FAILED = (State.UNDELIVERED, State.UNSURE)
OF_HERS = SAFETY - {Occasion.ALERT}  # an alert goes to staff
AHEAD = timedelta(hours=72)  # a patch test is missed from here on
BEHIND = timedelta(days=14)  # forecasts of sets put on before that are on the cards only, and history heard of later


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
    fill_on: date | None = None  # of an early set: when it is likely to need a fill
    days: int = 0  # the same, after it was put on

    @property
    def artist(self) -> Staff | None:
        """Whose line it is."""
        return self.visit.artist if self.visit else responsible(self.book)


def booked_near(studio: Studio, now: datetime) -> QuerySet[Visit]:
    """Return the booked visits of the next days, and those that are over and that nobody has marked.

    History that was heard of as booked, and that nobody will mark any more, is on the cards only.
    """
    known = Q(heard_at__lt=F("starts_at")) | Q(starts_at__gte=now - BEHIND)
    booked = Visit.objects.filter(studio=studio, status=Visit.Status.BOOKED, starts_at__lte=now + AHEAD)
    return booked.filter(known).order_by()


def left_unhappy(studio: Studio) -> QuerySet[Visit]:
    """Return the visits after which a client left unhappy, unless somebody has seen to it or she came again since."""
    since = Visit.objects.filter(
        client=OuterRef("client"), starts_at__gt=OuterRef("starts_at"), status=Visit.Status.DONE
    )
    unhappy = Visit.objects.filter(studio=studio, mirror_check=Visit.MirrorCheck.UNHAPPY, unhappy_seen_to_at=None)
    return unhappy.filter(~Exists(since), status=Visit.Status.DONE).order_by()


def without_address(studio: Studio) -> QuerySet[Client]:
    """Return when each client's address turned out to be nobody's, where nobody has seen to it; annotated ``since``.

    Another address on her card, or this one at work again, takes her off the list by itself.
    """
    bounced = Stop.objects.filter(
        line__studio=studio, line__channel="email", why=Stop.Why.BOUNCED, lifted_at=None, seen_to_at=None
    ).order_by("at")
    hers = studio.clients.annotate(address=Lower("email")).filter(address__in=bounced.order_by().values("address"))
    since = Subquery(bounced.filter(address=OuterRef("address")).values("at")[:1])
    return hers.filter(merged_into=None).annotate(since=since).order_by()


def early_sets(studio: Studio, now: datetime) -> QuerySet[Forecast]:
    """Return the forecasts in force of sets that will need a fill too soon, and that nobody has looked into."""
    own = (
        RuleSet.objects.filter(studio=studio)
        .order_by("-version")
        .annotate(days=Cast(KeyTextTransform("early_days", "values"), FloatField()))
    )
    soonest = Coalesce(Subquery(own.values("days")[:1]), Value(float(Rules().early_days)))
    of_visit = Forecast.objects.filter(visit=OuterRef("visit"), seen_to_at__isnull=False)
    sets = Forecast.objects.filter(
        visit__studio=studio, visit__status=Visit.Status.DONE, visit__starts_at__gte=now - BEHIND
    )
    return sets.filter(~Exists(of_visit), fill_day__lt=soonest).in_force().order_by()


def failed() -> Q:
    """Return what picks the messages that matter, did not arrive or may not have, and that nobody has seen to."""
    unseen = Q(seen_to_at=None) | Q(seen_to_at__lt=F("ended_at"))  # seen to, and then it failed anew
    return unseen & Q(state__in=FAILED, occasion__in=OF_HERS, client__isnull=False)


def is_failed(message: Message) -> bool:
    """Say the same of a message that has been read."""
    unseen = message.seen_to_at is None or (message.ended_at is not None and message.seen_to_at < message.ended_at)
    return unseen and message.state in FAILED and message.occasion in OF_HERS and message.client_id is not None


def unkept(
    visits: Iterable[tuple[int, int]],
    messages: Iterable[Message],
    early: Iterable[tuple[int, int]],
    no_address: Iterable[tuple[int, datetime]],
    books: dict[int, ClientBook],
    studio: Studio,
    now: datetime,
) -> list[Unkept]:
    """Return the lines of these visits and early sets, each with its client, and of failed messages, worst first."""
    today = now.astimezone(studio.zone).date()
    found: list[Unkept] = []
    for visit_id, client_id in visits:
        book = books.get(client_id)
        visit = book.visits.get(visit_id) if book else None
        if book is not None and visit is not None:
            found.extend(_unkept_visit(visit, book, today, now))
    found.extend(_unkept_messages(messages, books))
    found.extend(line for visit_id, client_id in early if (line := _early(visit_id, books.get(client_id))))
    found.extend(Unkept("no address", books[pk], None, at) for pk, at in no_address if pk in books)
    return sorted(found, key=lambda line: (KINDS.index(line.kind), line.at))


def _unkept_visit(visit: Visit, book: ClientBook, today: date, now: datetime) -> Iterable[Unkept]:
    if visit.status == Visit.Status.DONE:
        yield Unkept("unhappy", book, visit, visit.starts_at)
        return
    if visit.booked_end + NUDGE_AFTER <= now:
        yield Unkept("not marked", book, visit, visit.starts_at)
        return
    if visit.starts_at > now and (why := book.tests_due.get(visit.pk)):
        yield Unkept("no test", book, visit, visit.starts_at, why)
    begin, end = day_bounds(today, book.studio.zone)
    if visit.is_set and begin <= visit.starts_at < end and (test := _unread_test(visit, book)):
        yield Unkept("not read", book, visit, visit.starts_at, test=test)


def _early(visit_id: int, book: ClientBook | None) -> Unkept | None:
    """Return the line of a set that fails early, while it is on; by what is forecast of it now."""
    visit = worn(book) if book else None
    if book is None or visit is None or visit.pk != visit_id or book.forecast is None:
        return None
    if book.forecast.visit != visit_id or not fails_early(book.forecast, book.rules):
        return None
    start = visit.starts_at.astimezone(book.facts.zone).date()
    day = day_of(start, book.forecast.fill_day)
    return Unkept(EARLY, book, visit, visit.starts_at, fill_on=day, days=(day - start).days)


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
