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
from aftercare.core.timing import Client, Occasion, Rules, SetForecast, Standing, Visit

MINUTE, HOUR, DAY = timedelta(minutes=1), timedelta(hours=1), timedelta(days=1)
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
    """By start; at one moment a set is the last, for it is what she leaves with."""
    return sorted(visits, key=lambda visit: (seconds(visit.start), visit.service in SET, visit.ref))


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

    def on_date(self, day: date, minutes: int) -> datetime:
        return when_shown(day, minutes, self.client.zone)

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

    def checks_of(self, visit: Visit) -> int:
        if visit.service == "patch test":
            return 3
        if visit not in self.done_sets:
            return self.rules.other_checks
        place = sum(seconds(other.start) < seconds(visit.start) for other in self.done_sets)
        if place == 0 or (self.client.sensitive and place + 1 <= self.rules.sensitive_sets):
            return 3
        for reaction in self.client.reactions:
            after = [done for done in self.done_sets if seconds(done.start) > seconds(reaction)]
            if after and visit in after and seconds(after[0].start) == seconds(visit.start):
                return 3
        return self.rules.set_checks

    def began_too_late(self, message: Expected, on_record: bool) -> bool:
        """Its time was over before the visit was heard of; a later check's before the rules that it is new by."""
        last, since = message.no_later_than, self.rules.since
        later_check = message.occasion == "check" and message.step in (2, 3)
        new_by_rule = later_check and since is not None and last < since and not on_record
        return last < seconds(message.visit.heard_at) or new_by_rule


def one_a_day(visits: Sequence[Visit], book: Book, *, latest: bool) -> list[Visit]:
    kept = {}
    for visit in visits:  # in order of their starts
        if latest or book.day(visit) not in kept:
            kept[book.day(visit)] = visit
    return list(kept.values())


def table(book: Book) -> Iterator[Expected]:
    rules = book.rules
    ahead = [v for v in book.visits if book.is_booked(v) and v.service in PREPARE]
    ahead.sort(key=lambda v: v.service not in SET)  # at one moment a set comes first here: it asks for more
    ahead.sort(key=lambda v: seconds(v.start))
    for visit in one_a_day(ahead, book, latest=False):
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
        for step in range(1, book.checks_of(visit) + 1):
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


def days_aimed_at(forecast: SetForecast, rules: Rules) -> dict[str, float]:
    """Days after the set: the earlier of two less the lead, but not sooner than some days; and the median day."""
    fill = min(forecast.fill_day - rules.lead_days, forecast.full_set_low - rules.lead_days)
    return {"fill_due": max(fill, rules.reminder_after_days), "full_set_due": forecast.full_set_day}


def remind(book: Book, forecast: SetForecast | None, standing: Record) -> Iterator[tuple[Expected, Standing, date]]:
    """Both reminders of the set that she wears, undecided, the fill's first; with its record, and the full-set day."""
    if not book.done_sets or forecast is None:
        return
    rules, worn = book.rules, book.done_sets[-1]
    if forecast.visit != worn.id or forecast.fill_day < rules.early_days:
        return
    days = {}
    for occasion in ("fill_due", "full_set_due"):
        days[occasion] = days_aimed_at(forecast, rules)[occasion]
        record = standing.get((worn.id, Occasion(occasion), 0), Standing())
        if record.open_forecast is not None and record.open_forecast.visit == worn.id:
            before = days_aimed_at(record.open_forecast, rules)[occasion]
            if abs(days[occasion] - before) < 1:  # a change under a day is ignored
                days[occasion] = before
    dates = {occasion: book.day(worn) + int(count) * DAY for occasion, count in days.items()}
    closes = rules.reminder_hours.closes
    eve = dates["full_set_due"] - DAY
    closing = book.on_date(eve, closes) if closes < 24 * 60 else book.on_date(dates["full_set_due"], 0)
    fill = Expected(
        worn,
        "fill_due",
        0,
        book.on_date(dates["fill_due"], rules.at),
        closing,
    )
    full_set = Expected(
        worn,
        "full_set_due",
        0,
        book.on_date(dates["full_set_due"], rules.at),
        book.on_date(dates["full_set_due"] + rules.full_set_last_days * DAY, rules.at),
    )
    for message in (fill, full_set):
        record = standing.get((worn.id, Occasion(message.occasion), 0), Standing())
        if message.no_later_than >= seconds(worn.heard_at) and not record.gone_edition:
            yield message, record, dates["full_set_due"]


def leaves(message: Expected, book: Book) -> datetime | None:
    """When it leaves as things stand: an overdue one now, as long as that is not too late for it."""
    if message.due is None or max(message.due, book.now) > message.no_later_than:
        return None
    return max(message.due, book.now)


def to_keep_clear_of(book: Book, standing: Record, checks: Sequence[Expected]) -> list[datetime]:
    """Checks sent and planned; visits missed or cancelled, or past and not marked, so that they may have been."""
    near = [at for check in checks if (at := leaves(check, book)) is not None]
    for (_, occasion, _), record in standing.items():
        if occasion == "check" and (at := record.gone_at or record.gone_due):
            near.append(seconds(at))
    for visit in book.visits:
        unmarked = visit.status == "booked" and not book.is_booked(visit)
        if visit.status in ("missed", "cancelled") or unmarked:
            near.append(seconds(visit.start))
    return near


def first_clear(
    start: datetime, message: Expected, book: Book, near: Sequence[datetime], reminded: Sequence[date]
) -> datetime | None:
    """Walk on minute by minute, and to each moment at which something is just far enough."""
    rules, client = book.rules, book.client
    clear = rules.reminder_clear_hours * HOUR
    jumps = sorted(thing + clear for thing in near)
    at = start
    while at <= message.no_later_than:
        day = at.astimezone(client.zone).date()
        if (
            all(is_open(at, rules.reminder_hours, zone) for zone in client.zones)
            and all(abs(at - thing) >= clear for thing in near)
            and all(abs((day - other).days) >= rules.reminder_gap_days for other in reminded)
        ):
            return at
        at = min([at.replace(second=0) + MINUTE, *(jump for jump in jumps if jump > at)])
    return None


def decide_reminder(
    message: Expected,
    record: Standing,
    book: Book,
    since: datetime,
    near: Sequence[datetime],
    reminded: Sequence[date],
    full_day: date,
) -> None:
    client = book.client
    sets_ahead = [visit for visit in book.visits if visit.service in SET and book.is_booked(visit)]
    if message.occasion == "fill_due":
        comes = any(book.day(visit) <= full_day for visit in sets_ahead)
        comes = comes or (bool(sets_ahead) and client.earlier_declined >= book.rules.most_declined)
    else:
        comes = any(seconds(visit.start) <= message.no_later_than for visit in sets_ahead)
    removed = any(
        visit.service == "removal" and visit.status == "done" and in_order([message.visit, visit])[1] is visit
        for visit in book.visits
    )
    imported = client.first_import_at
    waits = (
        imported is not None
        and seconds(message.visit.heard_at) <= imported
        and message.aim < imported
        and record.go_from is None
    )
    due = first_clear(max(message.aim, since, record.go_from or since), message, book, near, reminded)
    reasons = [
        ("too late", due is None),
        ("on hold", client.on_hold),
        (str(client.reminder_unreachable), client.reminder_channel == ""),
        ("paused", client.paused),
        ("already booked", comes),
        ("no set on", client.on_break or removed),
        ("waiting for the owner's go", waits),
    ]
    message.reason = next((reason for reason, holds in reasons if holds), "")
    message.due = None if message.reason else due


def plan_reminders(
    book: Book, forecast: SetForecast | None, standing: Record, checks: Sequence[Expected]
) -> Iterator[Expected]:
    near = to_keep_clear_of(book, standing, checks)
    reminded = [
        at.astimezone(book.client.zone).date()
        for (_, occasion, _), record in standing.items()
        if occasion in ("fill_due", "full_set_due") and (at := record.gone_at or record.gone_due)
    ]
    for message, record, full_day in remind(book, forecast, standing):
        same = record.open_edition == 1 and record.open_aim == message.aim and record.open_from is not None
        since = record.open_from if same and record.open_from is not None else book.now
        decide_reminder(message, record, book, since, near, reminded, full_day)
        if record.open_edition == 1 and not record.open_planned and not message.reason:
            decide_reminder(message, record, book, book.now, near, reminded, full_day)
        at = leaves(message, book)
        if at is not None:
            reminded.append(at.astimezone(book.client.zone).date())
        yield message


def plan(
    client: Client,
    visits: Sequence[Visit],
    rules: Rules,
    now: datetime,
    forecast: SetForecast | None = None,
    standing: Record | None = None,
) -> dict[Slot, Expected]:
    """Return what should stand and has not gone, by visit, occasion and step."""
    book, standing = Book(client, visits, rules, now), standing or {}
    known = {(visit, str(occasion), step): record for (visit, occasion, step), record in standing.items()}
    found: dict[Slot, Expected] = {}
    # She has come that day, and had been told how: the day's other visits are told of no more.
    told_to_come = {
        book.day(visit)
        for visit in book.visits
        for step in (0, 1)
        if visit.status == "done" or (visit.status == "booked" and seconds(visit.start) <= book.now)
        if known.get((visit.id, "prepare", step), Standing()).gone_edition
        and not known[visit.id, "prepare", step].gone_elsewhere
    }
    for message in table(book):
        slot = (message.visit.id, message.occasion, message.step)
        record = known.get(slot, Standing())
        if book.began_too_late(message, slot in known):
            continue
        if message.occasion == "prepare" and not record.gone_edition and book.day(message.visit) in told_to_come:
            continue
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
    checks = [message for message in found.values() if message.occasion == "check"]
    for message in plan_reminders(book, forecast, standing, checks):
        found[message.visit.id, message.occasion, message.step] = message
    return found
