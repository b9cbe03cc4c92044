"""Hypothesis strategies: any client, her visits and rules, anywhere from 2024 to 2030; and what changes later."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Mapping
from datetime import UTC, date, datetime, time, timedelta
from typing import Any, NamedTuple
from zoneinfo import ZoneInfo, available_timezones

from hypothesis import strategies as st

from aftercare.core import timing
from aftercare.core.hours import Hours
from aftercare.core.timing import Client, Planned, Reason, Rules, SetForecast, Slot, Standing, Visit

# "localtime" is this machine's own; all else is of the IANA tz database.
ZONES = [ZoneInfo(name) for name in sorted(available_timezones() - {"localtime"})]
SERVICES = ("full set", "fill", "removal", "patch test", "touch-up", "lift", "consultation", "other")
STATUSES = ("booked", "done", "cancelled", "missed")
DAYS_FROM_NOW = (-181, -180, -30, -9, -8, -7, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 7, 8, 14, 180, 181)
ANY_MINUTE = st.integers(0, 24 * 60 - 1)


class Case(NamedTuple):
    client: Client
    visits: list[Visit]
    rules: Rules
    now: datetime
    forecast: SetForecast | None = None

    def messages(self, standing: Mapping[Slot, Standing] | None = None) -> list[Planned]:
        return timing.plan(self.client, self.visits, self.rules, self.now, standing, self.forecast)

    def plan(self, standing: Mapping[Slot, Standing] | None = None) -> dict[Slot, Planned]:
        return by_slot(self.messages(standing))


def by_slot(messages: Iterable[Planned]) -> dict[Slot, Planned]:
    return {message.slot: message for message in messages}


def clocks_change(day: date, zone: ZoneInfo) -> bool:
    today, tomorrow = (datetime.combine(d, time(), zone).utcoffset() for d in (day, day + timedelta(days=1)))
    return today != tomorrow


@st.composite
def days(draw: st.DrawFn, zone: ZoneInfo) -> date:
    """Any day, as often as not the next one on which the clocks change."""
    day = draw(st.dates(date(2024, 1, 1), date(2030, 12, 31)))
    if draw(st.booleans()):
        for ahead in range(200):
            if clocks_change(day + timedelta(days=ahead), zone):
                return day + timedelta(days=ahead)
    return day


def hours_of_a_day(day: date) -> st.SearchStrategy[Hours]:
    near = st.integers(-10, 10).map(lambda ahead: day + timedelta(days=ahead))
    usual = st.tuples(st.integers(0, 12 * 60), st.integers(13 * 60, 24 * 60))
    short = st.tuples(st.integers(0, 240) | ANY_MINUTE, st.integers(1, 90))
    spans = usual | usual | short.map(lambda span: (span[0], min(sum(span), 24 * 60)))
    weekdays, dates = st.frozensets(st.integers(0, 6), max_size=3), st.frozensets(near, max_size=3)
    return st.builds(lambda span, off, free: Hours(span[0], span[1], off, free), spans, weekdays, dates)


def rules_of(day: date) -> st.SearchStrategy[Rules]:
    def whole(least: int, most: int) -> st.SearchStrategy[int]:
        return st.integers(least, most)

    varied = st.builds(
        Rules,
        at=st.sampled_from((0, 150, 599, 600)) | ANY_MINUTE,
        evening_at=st.sampled_from((1020, 1410)) | ANY_MINUTE,
        hours=hours_of_a_day(day),
        care_hours=hours_of_a_day(day),
        prepare_days=whole(0, 7),
        prepare_last_hours=whole(0, 24),
        evening_days=whole(0, 3),
        evening_last_hours=whole(0, 6),
        patch_test_days=whole(1, 21),
        patch_test_last_hours=whole(0, 120),
        test_everyone=st.booleans(),
        test_valid_days=whole(1, 200),
        test_booked_hours=whole(0, 96),
        care_minutes=whole(0, 600),
        care_last_hours=whole(1, 48),
        check_days=st.lists(whole(0, 14), min_size=3, max_size=3, unique=True).map(lambda d: tuple(sorted(d))),
        check_last_hours=whole(1, 72),
        set_checks=whole(1, 3),
        other_checks=whole(1, 3),
        sensitive_sets=whole(1, 4),
        since=st.none() | whole(0, 10).map(lambda ago: datetime.combine(day, time(), UTC) - timedelta(days=ago)),
        reminder_hours=hours_of_a_day(day),
        lead_days=whole(0, 14),
        reminder_after_days=whole(0, 14),
        early_days=whole(0, 14),
        full_set_last_days=whole(0, 21),
        reminder_gap_days=whole(0, 10),
        reminder_clear_hours=whole(0, 96),
        most_declined=whole(0, 3),
    )
    return st.booleans().map(lambda everyone: Rules(test_everyone=everyone)) | varied


@st.composite
def visits_of(draw: st.DrawFn, day: date, zone: ZoneInfo, now: datetime) -> list[Visit]:
    """Up to eight visits on few dates, so that several share one."""
    offsets = st.sampled_from(DAYS_FROM_NOW) | st.integers(-200, 200)
    dates = draw(st.lists(offsets.map(lambda ahead: day + timedelta(days=ahead)), min_size=1, max_size=5))
    found: list[Visit] = []
    for number in range(draw(st.integers(0, 8))):
        minute = draw(st.sampled_from((0, 90, 150, 540, 600, 600, 1020, 1410)) | ANY_MINUTE)
        fraction = timedelta(seconds=draw(st.sampled_from((0, 0, 0, 0.4, 59.9))))
        on = draw(st.sampled_from(dates))
        start = datetime.combine(on, time(minute // 60, minute % 60), zone).astimezone(UTC) + fraction
        if draw(st.integers(0, 9)) == 0:
            start = draw(st.sampled_from([now, *(visit.start for visit in found)]))
        end = start + timedelta(minutes=draw(st.sampled_from((15, 75, 180, 1500))))
        heard_days = draw(st.sampled_from((0, 0, 0, 0.5, 1, 2, 7, 30, 300)))
        found.append(
            Visit(
                id=number + 1,
                ref=f"{draw(st.integers(0, 99)):02}-{number}",
                service=draw(st.sampled_from(SERVICES)),
                status=draw(st.sampled_from(STATUSES[:2]) | st.sampled_from(STATUSES)),
                start=start,
                end=end,
                heard_at=min(now, start + timedelta(days=7)) - timedelta(days=heard_days),
                adhesive=draw(st.sampled_from(("", "Onyx", "Onyx", "Slate"))),
                sign_on_test=draw(st.sampled_from((False, False, True))),
            )
        )
    return found


@st.composite
def clients(draw: st.DrawFn, zone: ZoneInfo, visits: list[Visit], now: datetime) -> Client:
    starts = [visit.start for visit in visits if visit.start <= now]
    some_time = st.integers(0, 200 * 24 * 60).map(lambda minutes: now - timedelta(minutes=minutes))
    reacted = st.sampled_from(starts).flatmap(
        lambda at: st.integers(-60, 60).map(lambda minutes: at + timedelta(minutes=minutes))
    )
    reachable = draw(st.sampled_from(("sms", "sms", "sms", "email", "")))
    reminded = draw(st.sampled_from(("sms", "sms", "sms", "email", "")))
    return Client(
        zone=zone,
        other_zone=draw(st.none() | st.none() | st.sampled_from(ZONES)),
        sensitive=draw(st.booleans()),
        channel=reachable,
        unreachable=None if reachable else draw(st.sampled_from((Reason.NO_WAY, Reason.NO_CONSENT))),
        reminder_channel=reminded,
        reminder_unreachable=None if reminded else draw(st.sampled_from((Reason.NO_WAY, Reason.NO_CONSENT))),
        on_break=draw(st.sampled_from((False, False, False, False, True))),
        earlier_declined=draw(st.integers(0, 3)),
        first_import_at=draw(st.none() | st.sampled_from((0, 1, 7, 30)).map(lambda days: now - timedelta(days=days))),
        on_hold=draw(st.sampled_from((False, False, False, True))),
        paused=draw(st.sampled_from((False, False, False, False, True))),
        held_visits=draw(st.frozensets(st.integers(1, 8), max_size=2)),
        reactions=tuple(draw(st.lists((some_time | reacted) if starts else some_time, max_size=2))),
        test_first=draw(st.sampled_from((False, False, False, True))),
    )


@st.composite
def cases(draw: st.DrawFn) -> Case:
    zone = draw(st.sampled_from(ZONES))
    day = draw(days(zone))
    minute = draw(st.sampled_from((0, 150, 539, 540, 600, 1199, 1200)) | ANY_MINUTE)
    second = timedelta(seconds=draw(st.sampled_from((0, 0, 30, 59.5))))
    now = datetime.combine(day, time(minute // 60, minute % 60), zone).astimezone(UTC) + second
    visits = draw(visits_of(day, zone, now))
    return Case(draw(clients(zone, visits, now)), visits, draw(rules_of(day)), now, draw(forecasts(visits)))


@st.composite
def forecasts(draw: st.DrawFn, visits: list[Visit]) -> SetForecast | None:
    """Mostly of the last done set; the days anything that a set may do, as often as not near whole ones."""
    done = [visit for visit in visits if visit.status == "done" and visit.service in ("full set", "fill")]
    last = max(done, key=lambda visit: (visit.start, visit.ref)).id if done else 1
    which = draw(st.sampled_from((last, last, last, last, 1, 0)))
    near_whole = st.builds(lambda day, off: day + off, st.integers(3, 60), st.sampled_from((0.0, 0.01, 0.5, 0.99)))
    fill = draw(near_whole | st.floats(2, 70))
    low = fill + draw(st.floats(-4, 20))
    return SetForecast(which, fill, low, low + draw(st.floats(0, 25)), 1) if which else None


@st.composite
def wearing(draw: st.DrawFn) -> Case:
    """A client who wears a set and can be reminded; what stands in the way of it is near, and mostly small."""
    zone = draw(st.sampled_from(ZONES))
    day = draw(days(zone))
    now = datetime.combine(day, time(draw(st.integers(0, 23)), 0), zone).astimezone(UTC)
    worn = Visit(
        id=1,
        ref="01",
        service=draw(st.sampled_from(("full set", "fill"))),
        status="done",
        start=now - timedelta(days=draw(st.integers(0, 45)), hours=draw(st.integers(0, 23))),
        end=now,
        heard_at=now - timedelta(days=draw(st.sampled_from((0, 0, 100)))),
    )
    others = draw(visits_of(day, zone, now))[: draw(st.integers(0, 3))]
    visits = [worn, *(dataclasses.replace(visit, id=10 + visit.id) for visit in others)]
    client = Client(
        zone=zone,
        channel="sms",
        unreachable=None,
        reminder_channel="email",
        reminder_unreachable=None,
        earlier_declined=draw(st.integers(0, 3)),
        first_import_at=draw(st.none() | st.just(now)),
    )
    return Case(client, visits, draw(st.just(Rules()) | rules_of(day)), now, draw(forecasts(visits)))


def moved(forecast: SetForecast, days: float) -> SetForecast:
    """The next forecast of the same set: everything falls ``days`` later."""
    later = (forecast.fill_day + days, forecast.full_set_low + days, forecast.full_set_day + days)
    return SetForecast(forecast.visit, *later, forecast.id + 1)


def replaced(case: Case, visit: Visit, **changes: Any) -> Case:
    changed = dataclasses.replace(visit, **changes)
    return case._replace(visits=[changed if other is visit else other for other in case.visits])


@st.composite
def changes(draw: st.DrawFn, case: Case) -> Case:
    """The same client some time later: something about her, a visit or the rules may have changed."""
    now = case.now + draw(st.sampled_from((0, 1, 24, 72, 168)) | st.integers(0, 300)) * timedelta(minutes=30)
    case = case._replace(now=now)
    what = draw(st.sampled_from(("nothing", "move", "status", "client", "rules", "visit", "forecast")))
    if what == "forecast":
        if case.forecast is not None and draw(st.booleans()):
            step = st.sampled_from((-3.0, -1.0, -0.99, 0.99, 1.0, 3.0)) | st.floats(-2, 2)
            return case._replace(forecast=moved(case.forecast, draw(step)))
        return case._replace(forecast=draw(forecasts(case.visits)))
    if what in ("move", "status") and case.visits:
        visit = draw(st.sampled_from(case.visits))
        if what == "status":
            return replaced(case, visit, status=draw(st.sampled_from(STATUSES)))
        shift = timedelta(minutes=draw(st.sampled_from((-1440, -60, 60, 1440, 4320)) | st.integers(-10000, 10000)))
        return replaced(case, visit, start=visit.start + shift, end=visit.end + shift)
    if what == "client":
        return case._replace(client=draw(clients(case.client.zone, case.visits, now)))
    if what == "rules":
        return case._replace(rules=draw(rules_of(now.date())))
    if what == "visit":
        more = draw(visits_of(now.date(), case.client.zone, now))[:1]
        return case._replace(visits=case.visits + [dataclasses.replace(v, id=100 + len(case.visits)) for v in more])
    return case
