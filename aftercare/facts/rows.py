"""Reading the rows that a client's book is made of: one query each, however many clients."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from functools import lru_cache
from typing import Any

from django.db.models import (
    Case,
    CharField,
    Exists,
    Func,
    IntegerField,
    OuterRef,
    Q,
    QuerySet,
    Subquery,
    Value,
    When,
)
from django.db.models.functions import Cast, Coalesce, Concat

from aftercare.core.consultation import Filled
from aftercare.core.delivery import State
from aftercare.core.occasions import LOT
from aftercare.core.outcomes import ASKS_NEXT_DAY
from aftercare.core.timing import REMINDERS, Occasion, Reason, SetForecast
from aftercare.facts.slim import slim
from aftercare.models import HELD_BY, Consultation, Flag, Forecast, Message, Revocation, RuleSet, Stop
from studio import covering
from studio.aggregates import Listed
from studio.covering import Span
from studio.models import SETS, Adhesive, Client, ClosingDay, Consent, Reaction, Studio, Visit, VisitRef

# At one moment sets come last: of a removal and a set, the set is what she leaves with.
BY_KIND = Case(When(service__in=SETS, then=1), default=0)

# The columns that a plan follows from.
OF_CLIENT = (
    *("id", "studio_id", "mobile", "email", "channel", "time_zone", "wished_hours", "sensitive", "paused_until"),
    *("on_break", "earlier_declined", "no_set_since", "first_name", "last_name", "merged_into_id"),
)
OF_VISIT = (
    *("id", "studio_id", "client_id", "artist_id", "service", "status", "starts_at", "minutes", "heard_at"),
    *("marked_at", "adhesive_id", "test_result"),
)
OF_MESSAGE = (
    *("id", "key", "client_id", "visit_id", "occasion", "step", "edition", "state", "reason", "channel", "due_at"),
    *("aim_at", "planned_from", "about_start", "fell_back", "not_before", "forecast_id", "go_from"),
    *("handing_over_at", "handed_over_at"),
)


@dataclass(frozen=True, slots=True)
class Person:
    """One client; with her the owner's own numbers, the studio's closing days, whether an open flag holds her, when
    matters of hers were closed so that she is asked once more the next day, each time that she answered the questions
    before a visit, how often her links were revoked, and who of the staff is or will be away."""

    client: Client
    own_rules: dict[str, object]
    rules_since: datetime | None
    closed: tuple[date, ...]
    flagged: bool
    asked: tuple[datetime, ...]
    filled: tuple[Filled, ...]
    revoked: int
    absences: tuple[Span, ...]


def clients_to_plan(ids: list[int], studio: Studio) -> list[Person]:
    """These clients of one studio with no more than a plan follows from, by rules that are at hand."""
    rows = Client.objects.filter(pk__in=ids).annotate(flagged=_is_held(), asked=Subquery(_asked()))
    found: list[Any] = slim(rows, OF_CLIENT, "flagged", "asked")
    for row in found:
        row.studio = studio
    return [Person(row, {}, None, (), row.flagged, _moments(row.asked), (), 0, ()) for row in found]


def clients(ids: list[int], now: datetime, studios: Mapping[int, Studio] | None = None) -> list[Person]:
    """These clients with their studios, which are read unless they are given, and what bears on them as a whole."""
    newest = RuleSet.objects.filter(studio=OuterRef("studio")).order_by("-version")
    of_studio = ClosingDay.objects.filter(studio=OuterRef("studio")).order_by().values("studio")
    closed = of_studio.annotate(dates=Listed("date")).values("dates")
    revoked = Revocation.objects.filter(Q(client=OuterRef("pk")) | Q(client__merged_into=OuterRef("pk")))
    # As a plain function it counts all of them; as an aggregate it would group them, which leaves out who has none.
    times = revoked.order_by().values(n=Func("pk", function="COUNT", output_field=IntegerField()))
    people: QuerySet[Client] = Client.objects.filter(pk__in=ids)
    rows = (people.select_related("studio__calendar_feed") if studios is None else people).annotate(
        own_rules=Subquery(newest.values("values")[:1]),
        rules_since=Subquery(newest.values("at")[:1]),
        closed=Subquery(closed),
        flagged=_is_held(),
        asked=Subquery(_asked()),
        filled=Subquery(_filled_in()),
        revoked=Subquery(times),
        absences=covering.ahead(now),
    )
    if studios is not None:
        for row in rows:
            row.studio = studios[row.studio_id]
    return [
        Person(
            row,
            row.own_rules or {},
            row.rules_since,
            _dates(row.closed),
            row.flagged,
            _moments(row.asked),
            _filled(row.filled),
            row.revoked,
            _spans(row.absences),
        )
        for row in rows
    ]


def _is_held() -> Exists:
    standing = Flag.clients.through.objects.filter(client=OuterRef("pk"), flag__urgency__in=HELD_BY)
    return Exists(standing.exclude(flag__state=Flag.State.CLOSED))


def _asked() -> QuerySet[Flag, dict[str, str]]:
    """When matters of hers were closed so that she is asked once more the next day, as one text."""
    over = Flag.objects.filter(clients=OuterRef("pk"), state=Flag.State.CLOSED, outcome__in=ASKS_NEXT_DAY)
    return over.order_by().values("clients").annotate(moments=Listed("closed_at")).values("moments")


def _filled_in() -> QuerySet[Consultation, dict[str, str]]:
    """Each time that she answered the questions before a visit, without what she answered, as one text."""
    agreed = Cast("agreed", IntegerField())  # PostgreSQL would write a boolean as a word
    columns: list[str | Cast] = ["pk", "visit_id", agreed, "to_look_at", "changes"]
    numbers = [part for column in columns for part in (Cast(column, CharField()), Value("|"))]
    at = Cast("at", CharField())
    withdrawn = Coalesce(Cast("withdrawn_at", CharField()), Value(""))
    hers = Consultation.objects.filter(client=OuterRef("pk")).order_by().values("client")
    return hers.annotate(rows=Listed(Concat(*numbers, at, Value("|"), withdrawn))).values("rows")


def _filled(text: str | None) -> tuple[Filled, ...]:
    found = sorted((one.split("|") for one in text.split(",")) if text else (), key=lambda one: int(one[0]))
    return tuple(
        Filled(
            visit=int(visit),
            at=_moments(at)[0],
            agreed=agreed == "1",
            withdrawn_at=_moments(withdrawn)[0] if withdrawn else None,
            to_look_at=int(look),
            changes=int(changes),
        )
        for _pk, visit, agreed, look, changes, at, withdrawn in found
    )


@lru_cache(maxsize=64)  # the same for all clients of a studio
def _dates(text: str | None) -> tuple[date, ...]:
    return tuple(date.fromisoformat(day) for day in text.split(",")) if text else ()


@lru_cache(maxsize=64)  # the same for all clients of a studio
def _spans(text: str | None) -> tuple[Span, ...]:
    return covering.spans(text)


def _moments(text: str | None) -> tuple[datetime, ...]:
    """PostgreSQL writes an offset behind each; SQLite keeps them in UTC without one."""
    found = (datetime.fromisoformat(one) for one in text.split(",")) if text else ()
    return tuple(sorted(at.astimezone(UTC) if at.tzinfo else at.replace(tzinfo=UTC) for at in found))


def visits(
    ids: list[int], *, plan_only: bool = False, many: bool = False
) -> tuple[dict[int, list[Visit]], dict[int, str]]:
    """Their visits in the order of time; and what breaks a tie between two at one moment: a book's reference.

    ``plan_only``: with no more than a plan follows from. ``many``: artists and adhesives, which hundreds of them share,
    are read once, by two queries more.
    """
    found: dict[int, list[Visit]] = defaultdict(list)
    refs: dict[int, str] = {}
    named = VisitRef.objects.filter(visit=OuterRef("pk")).order_by("-pk")
    ref = Subquery(named.values(tie_break=Concat("source", Value(" "), "reference"))[:1])
    rows = Visit.objects.filter(client__in=ids).annotate(tie_break=ref).order_by("starts_at", BY_KIND, "pk")
    used = ("artist", "adhesive")
    whole = rows.prefetch_related(*used) if many else rows.select_related(*used)
    every: Any = _slim_visits(rows) if plan_only else whole
    for visit in every:
        found[visit.client_id].append(visit)
        if visit.tie_break is not None:
            refs[visit.pk] = visit.tie_break
    return found, refs


def _slim_visits(rows: QuerySet[Any]) -> list[Any]:
    found = slim(rows, OF_VISIT, "tie_break")
    used = Adhesive.objects.in_bulk({visit.adhesive_id for visit in found} - {None})
    for visit in found:
        if visit.adhesive_id is not None:
            visit.adhesive = used[visit.adhesive_id]
    return found


def consents(ids: list[int]) -> dict[int, dict[tuple[str, str], bool]]:
    found: dict[int, dict[tuple[str, str], bool]] = defaultdict(dict)
    rows = Consent.objects.filter(client__in=ids).order_by("at", "pk")
    for client, channel, purpose, given in rows.values_list("client_id", "channel", "purpose", "given"):
        found[client][(channel, purpose)] = given  # the newest answer counts
    return found


def stops(clients: list[Client]) -> dict[tuple[int, str, str], str]:
    """The stops in force for their numbers and addresses: studio, channel and address, and why."""
    addresses = {client.mobile for client in clients} | {client.email.lower() for client in clients}
    rows = Stop.objects.filter(lifted_at=None, address__in=addresses - {""})
    found = rows.values_list("line__studio_id", "line__channel", "address", "why")
    return {(studio, channel, address): why for studio, channel, address, why in found}


def reactions(ids: list[int]) -> dict[int, list[Reaction]]:
    found: dict[int, list[Reaction]] = defaultdict(list)
    rows = Reaction.objects.filter(client__in=ids).select_related("by", "released_by")
    for reaction in rows.order_by("at", "pk"):
        found[reaction.client_id].append(reaction)
    return found


def forecasts(worn: Collection[int]) -> dict[int, list[SetForecast]]:
    """What was forecast of the sets of these visits, each time; the last is in force."""
    found: dict[int, list[SetForecast]] = defaultdict(list)
    rows = Forecast.objects.filter(visit__in=worn).order_by("made_at", "pk")
    for row in rows.values_list("visit_id", "fill_day", "full_set_low", "full_set_day", "pk"):
        found[row[0]].append(SetForecast(*row))
    return found


# Whatever number changes within its limits, a message about one visit whose time was over by so long stays over. A
# reminder's follows from the forecast.
OVER = timedelta(days=20)


def _can_matter(now: datetime) -> Q:
    """The messages that a plan at ``now`` can follow from, by whatever rules.

    One that was withheld as too late comes back as if it had never been, where rules give it more time; but for later
    checks, of which none is called for afresh once its time is over.
    """
    in_time = Q(no_later_than=None) | Q(no_later_than__gte=now - OVER)
    too_late = Q(state=State.WITHHELD, reason=Reason.TOO_LATE) & ~Q(occasion=Occasion.CHECK, step__gt=1)
    return (in_time & ~too_late) | Q(occasion__in=REMINDERS)


def messages(
    hers: dict[int, list[Visit]], plan_at: datetime | None = None, *, many: bool = False
) -> dict[int, list[Message]]:
    """The messages to these clients that are planned for their visits.

    A visit can have been another's: whose it is now counts. ``plan_at``: no more than a plan at that moment follows
    from. ``many``: with no more of each than a plan follows from.
    """
    found: dict[int, list[Message]] = defaultdict(list)
    whose = {visit.pk: client for client, visits in hers.items() for visit in visits}
    about = Message.objects.filter(visit__client__in=list(hers), staff=None).exclude(kind=LOT)
    rows = about.filter(_can_matter(plan_at)) if plan_at else about.defer("text", "subject")
    every = slim(rows, OF_MESSAGE) if plan_at or many else rows
    for message in every:
        if (client := whose.get(message.visit_id or 0)) is not None:
            found[client].append(message)
    return found
