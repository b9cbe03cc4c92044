"""A second reading of the table of default rules, by another hand: plain, slow and obvious.

Nothing here is shared with ``aftercare.core.timing`` but the shapes of what goes in. Wall clocks are never computed
with: each is found by walking through UTC minute by minute and looking at what the clock of the place shows, so that
gaps, folds and half-hour changes need no thought. Offsets of 2024 to 2030 are whole minutes (IANA tz database).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo

from aftercare.core.hours import Hours
from aftercare.core.timing import Client, Occasion, Rules, Standing, Visit

MINUTE, HOUR = timedelta(minutes=1), timedelta(hours=1)
FURTHEST = timedelta(hours=16)  # no place is further than this from UTC

SET = ("full set", "fill")
PREPARE = ("full set", "fill", "removal", "patch test", "touch-up", "lift", "consultation")
CARE = ("full set", "fill", "removal", "patch test", "touch-up", "lift")
CHECK = ("full set", "fill", "removal", "patch test", "lift")

Slot = tuple[int, str, int]
Record = Mapping[tuple[int, Occasion, int], Standing]


@dataclass
class Expected:
    """One message: planned for ``due``, or withheld for ``reason`` ('' is none)."""

    visit: Visit
    occasion: str
    step: int
    aim: datetime
    no_later_than: datetime
    edition: int = 1
    due: datetime | None = None
    reason: str = ""


@lru_cache(maxsize=100_000)
def when_shown(day: date, minutes: int, zone: ZoneInfo) -> datetime:
    """Walk to the first minute at which the clock shows the time or, where it is jumped over, a later one."""
    wanted = datetime.combine(day, time(minutes // 60, minutes % 60))
    at = wanted.replace(tzinfo=UTC) - FURTHEST
    while at.astimezone(zone).replace(tzinfo=None) < wanted:
        at += MINUTE
    return at


def is_open(at: datetime, hours: Hours, zone: ZoneInfo) -> bool:
    shown = at.astimezone(zone)
    if shown.weekday() in hours.weekdays_off or shown.date() in hours.days_off:
        return False
    return hours.opens <= shown.hour * 60 + shown.minute < hours.closes


def first_open(at: datetime, hours: Hours, zones: Sequence[ZoneInfo], last: datetime) -> datetime | None:
    """Walk to the first moment at which all the clocks are within the hours; None if ``last`` comes first."""
    while at <= last:
        if all(is_open(at, hours, zone) for zone in zones):
            return at
        at = at.replace(second=0) + MINUTE
    return None


def seconds(at: datetime) -> datetime:
    return at.astimezone(UTC).replace(microsecond=0)


def in_order(visits: Sequence[Visit]) -> list[Visit]:
    return sorted(visits, key=lambda visit: (seconds(visit.start), visit.ref))


class Book:
    """One client's visits with the questions that the table asks of them."""

    def __init__(self, client: Client, visits: Sequence[Visit], rules: Rules, now: datetime) -> None:
        self.client, self.rules, self.now = client, rules, seconds(now)
        self.visits = in_order(visits)
        self.done_sets = [visit for visit in self.visits if visit.status == "done" and visit.service in SET]

    def day(self, visit: Visit) -> date:
        return visit.start.astimezone(self.client.zone).date()

    def is_booked(self, visit: Visit) -> bool:
        return visit.status == "booked" and seconds(visit.start) > self.now

    def days_between(self, earlier: Visit, later: Visit) -> int:
        return (self.day(later) - self.day(earlier)).days

    def on_day(self, visit: Visit, days: int, minutes: int) -> datetime:
        """Return the moment the table names: ``minutes`` on her clock, ``days`` after (or before) the visit's date."""
        return when_shown(self.day(visit) + timedelta(days=days), minutes, self.client.zone)

    def wants_test(self, visit: Visit) -> bool:
        sensitive, everyone = self.client.sensitive, self.rules.test_everyone
        if self.client.test_first:
            return True
        if not self.done_sets:
            return sensitive or everyone
        last = self.done_sets[-1]
        if (sensitive or everyone) and self.days_between(last, visit) > self.rules.test_valid_days:
            return True
        both_known = last.adhesive != "" and visit.adhesive != ""
        return sensitive and both_known and last.adhesive != visit.adhesive

    def is_tested(self, visit: Visit) -> bool:
        for test in self.visits:
            if test.service != "patch test":
                continue
            gap = timedelta(hours=self.rules.test_booked_hours)
            if self.is_booked(test) and seconds(test.start) + gap <= seconds(visit.start):
                return True
            before = (
                seconds(test.start) < seconds(visit.start)
                and self.days_between(test, visit) <= self.rules.test_valid_days
            )
            since = all(seconds(test.start) > seconds(reaction) for reaction in self.client.reactions)
            if test.status == "done" and before and since and not test.sign_on_test:
                return True
        return False

    def is_checked_three_times(self, visit: Visit) -> bool:
        if visit.service == "patch test":
            return True
        if visit not in self.done_sets:
            return False
        place = self.done_sets.index(visit)
        if place == 0 or (place == 1 and self.client.sensitive):
            return True
        for reaction in self.client.reactions:
            after = [done for done in self.done_sets if seconds(done.start) > seconds(reaction)]
            if after and after[0] == visit:
                return True
        return False


def one_a_day(visits: Sequence[Visit], book: Book, *, latest: bool) -> list[Visit]:
    kept = {}
    for visit in visits:  # in order of their starts
        if latest or book.day(visit) not in kept:
            kept[book.day(visit)] = visit
    return list(kept.values())


def table(book: Book) -> Iterator[Expected]:
    rules = book.rules
    for visit in one_a_day([v for v in book.visits if book.is_booked(v) and v.service in PREPARE], book, latest=False):
        start = seconds(visit.start)
        first = book.on_day(visit, -rules.prepare_days, rules.at)
        evening = book.on_day(visit, -rules.evening_days, rules.evening_at)
        if visit.service == "full set" or (visit.service == "fill" and not book.done_sets):
            yield Expected(visit, "prepare", 0, first, evening)
            yield Expected(visit, "prepare", 1, evening, start - rules.evening_last_hours * HOUR)
        else:
            yield Expected(visit, "prepare", 0, first, start - rules.prepare_last_hours * HOUR)
    for visit in [v for v in book.visits if book.is_booked(v) and v.service in SET]:
        if book.wants_test(visit) and not book.is_tested(visit):
            aim = book.on_day(visit, -rules.patch_test_days, rules.at)
            yield Expected(visit, "patch_test", 0, aim, seconds(visit.start) - rules.patch_test_last_hours * HOUR)
    for visit in one_a_day([v for v in book.visits if v.status == "done" and v.service in CARE], book, latest=True):
        end = seconds(visit.end)
        yield Expected(visit, "care", 0, end + rules.care_minutes * MINUTE, end + rules.care_last_hours * HOUR)
    for visit in one_a_day([v for v in book.visits if v.status == "done" and v.service in CHECK], book, latest=True):
        steps = (1, 2, 3) if book.is_checked_three_times(visit) else (1,)
        for step in steps:
            aim = book.on_day(visit, rules.check_days[step - 1], rules.at)
            yield Expected(visit, "check", step, aim, aim + rules.check_last_hours * HOUR)


def decide(message: Expected, book: Book, planned_from: datetime) -> None:
    message.due, message.reason = None, ""
    client, rules = book.client, book.rules
    hours = rules.care_hours if message.occasion == "care" else rules.hours
    due = first_open(max(message.aim, planned_from), hours, client.zones, message.no_later_than)
    stops = message.occasion in ("prepare", "patch_test")
    if due is None:
        message.reason = "too late"
    elif (stops and client.on_hold) or (message.occasion == "check" and message.visit.id in client.held_visits):
        message.reason = "on hold"
    elif client.channel == "":
        message.reason = str(client.unreachable)
    elif stops and client.paused:
        message.reason = "paused"
    else:
        message.due = due


def let_one_check_a_day_go(messages: Sequence[Expected], book: Book, standing: Record) -> None:
    """Of the checks of one of her dates, sent ones too, only that of the latest visit goes, its last step."""
    days: dict[date, list[tuple[datetime, str, int]]] = {}
    visits = {visit.id: visit for visit in book.visits}

    def place(visit: Visit, step: int, due: datetime) -> tuple[date, tuple[datetime, str, int]]:
        return due.astimezone(book.client.zone).date(), (seconds(visit.start), visit.ref, step)

    for (visit_id, occasion, step), record in standing.items():
        if occasion == "check" and record.gone_due is not None and visit_id in visits:
            day, rank = place(visits[visit_id], step, record.gone_due)
            days.setdefault(day, []).append(rank)
    going = [message for message in messages if message.occasion == "check" and message.due is not None]
    for message in going:
        assert message.due is not None
        day, rank = place(message.visit, message.step, message.due)
        days.setdefault(day, []).append(rank)
    for message in going:
        assert message.due is not None
        day, rank = place(message.visit, message.step, message.due)
        if rank != max(days[day]):
            message.due, message.reason = None, "another check that day"


def plan(
    client: Client,
    visits: Sequence[Visit],
    rules: Rules,
    now: datetime,
    standing: Record | None = None,
) -> dict[Slot, Expected]:
    """Return what should stand and has not gone, by visit, occasion and step."""
    book, standing = Book(client, visits, rules, now), standing or {}
    known = {(visit, str(occasion), step): record for (visit, occasion, step), record in standing.items()}
    found: dict[Slot, Expected] = {}
    for message in table(book):
        slot = (message.visit.id, message.occasion, message.step)
        record = known.get(slot, Standing())
        if message.no_later_than < seconds(message.visit.heard_at):
            continue  # imported history stays quiet
        if record.gone_edition:
            if message.occasion not in ("prepare", "patch_test") or record.gone_start == seconds(message.visit.start):
                continue  # it has gone, and speaks of the visit as it stands
            message.edition = record.gone_edition + 1
        found[slot] = message

    # A due moment once planned stays while its aim does; what was withheld keeps its reason while that holds, and is
    # planned from now once it may go.
    again: list[Expected] = []
    for slot, message in found.items():
        record = known.get(slot, Standing())
        if record.open_edition == message.edition and record.open_aim == message.aim and record.open_from is not None:
            decide(message, book, record.open_from)
            if not record.open_planned and not record.open_gave_way and not message.reason:
                decide(message, book, book.now)
            if record.open_gave_way:
                again.append(message)
        else:
            decide(message, book, book.now)
    let_one_check_a_day_go(list(found.values()), book, standing)

    # A check that gave way to another comes back only on its own day freed, not because a day has gone by.
    for message in again:
        if not message.reason:
            decide(message, book, book.now)
    let_one_check_a_day_go(list(found.values()), book, standing)
    return found
