"""When each message falls due: rules, one client's visits and the present moment in, planned messages out.

Pure: no database, no clock. Moments are aware datetimes in UTC; fractions of a second are dropped. Dates are those of
the client's zone. "h" and "min" are elapsed time, days are calendar days. Source: the project's own table of default
rules, every number of which the owner can change.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from enum import StrEnum
from zoneinfo import ZoneInfo

from aftercare.core.hours import Hours, moment, next_open


class Occasion(StrEnum):
    """Why a message exists."""

    PREPARE = "prepare"
    PATCH_TEST = "patch_test"
    CARE = "care"
    CHECK = "check"
    FILL_DUE = "fill_due"
    FULL_SET_DUE = "full_set_due"
    OPT_IN = "opt_in"
    ANSWER = "answer"
    ALERT = "alert"
    MORNING_LIST = "morning_list"


class Reason(StrEnum):
    """Why a message is withheld, in the order in which the reasons are asked."""

    TOO_LATE = "too late"
    ON_HOLD = "on hold"
    NO_WAY = "no way to reach her"
    NO_CONSENT = "no consent"
    PAUSED = "paused"
    ANOTHER_CHECK = "another check that day"


FULL_SET, FILL, REMOVAL, PATCH_TEST = "full set", "fill", "removal", "patch test"
TOUCH_UP, LIFT, CONSULTATION = "touch-up", "lift", "consultation"
BOOKED, DONE = "booked", "done"

SETS = frozenset({FULL_SET, FILL})
PREPARED = SETS | {REMOVAL, PATCH_TEST, TOUCH_UP, LIFT, CONSULTATION}
CARED_FOR = SETS | {REMOVAL, PATCH_TEST, TOUCH_UP, LIFT}
CHECKED = SETS | {REMOVAL, PATCH_TEST, LIFT}
MOVES_ANEW = frozenset(
    {Occasion.PREPARE, Occasion.PATCH_TEST}
)  # one more edition when the visit moves after it had gone
SAFETY = frozenset({Occasion.CARE, Occasion.CHECK, Occasion.PATCH_TEST, Occasion.ANSWER, Occasion.ALERT})
EVERYONE_TESTED_IN = frozenset({"GB", "IE"})  # regions where every first client is patch-tested by default


@dataclass(frozen=True, slots=True)
class Rules:
    """The owner's numbers, with their defaults. Clock times are minutes since local midnight."""

    at: int = 10 * 60
    evening_at: int = 17 * 60
    hours: Hours = Hours(9 * 60, 20 * 60)
    care_hours: Hours = Hours(8 * 60, 21 * 60)
    prepare_days: int = 3
    prepare_last_hours: int = 3
    evening_days: int = 1
    evening_last_hours: int = 1
    patch_test_days: int = 7
    patch_test_last_hours: int = 72
    test_everyone: bool = False
    test_valid_days: int = 180
    test_booked_hours: int = 48
    care_minutes: int = 30
    care_last_hours: int = 24
    check_days: tuple[int, int, int] = (2, 4, 7)
    check_last_hours: int = 24

    def hours_of(self, occasion: Occasion) -> Hours:
        """Return the sending hours of ``occasion``."""
        return self.care_hours if occasion is Occasion.CARE else self.hours


@dataclass(frozen=True, slots=True)
class Visit:
    """A visit as planning sees it. ``ref`` breaks ties, so that the order of imports cannot matter."""

    id: int
    ref: str
    service: str
    status: str
    start: datetime
    end: datetime  # booked end, or the later moment at which a visit known as booked was marked done
    heard_at: datetime
    adhesive: str = ""  # product; '' is unknown
    sign_on_test: bool = False  # a patch test with a sign on record

    def __post_init__(self) -> None:
        for name in ("start", "end", "heard_at"):
            at = getattr(self, name)
            if at.microsecond:  # rare, so only then is it worth a copy
                object.__setattr__(self, name, at.replace(microsecond=0))


@dataclass(frozen=True, slots=True)
class Client:
    """A client as planning sees her, at the present moment."""

    zone: ZoneInfo
    other_zone: ZoneInfo | None = None  # of her number, where she stated none and it differs
    sensitive: bool = False
    channel: str = ""  # how she is reached about her visits; '' for the reason beside it
    unreachable: Reason | None = Reason.NO_WAY
    on_hold: bool = False
    paused: bool = False  # a person wants nothing sent but care and checks
    held_visits: frozenset[int] = frozenset()  # visits whose checks stop: those a reaction followed
    reactions: tuple[datetime, ...] = ()
    test_first: bool = False  # released from hold with "test first"

    @property
    def zones(self) -> tuple[ZoneInfo, ...]:
        """The clocks within whose sending hours a message must fall."""
        return (self.zone,) if self.other_zone is None else (self.zone, self.other_zone)


@dataclass(frozen=True, slots=True)
class Standing:
    """What is already on record for one visit, occasion and step: the last that has gone, and the one still to go."""

    gone_edition: int = 0
    gone_start: datetime | None = None  # the visit's start that it spoke of
    gone_due: datetime | None = None
    gone_elsewhere: bool = False  # to another client, whose visit it was then: this one has heard nothing
    open_edition: int = 0  # 0: none
    open_planned: bool = False  # planned or claimed; False: withheld or withdrawn
    open_gave_way: bool = False  # withheld for another check that day
    open_aim: datetime | None = None
    open_from: datetime | None = None  # from which moment on it has been planned


NOTHING = Standing()
Slot = tuple[int, Occasion, int]  # visit, occasion, step


@dataclass(slots=True)
class Planned:
    """A message as it should stand: due, or withheld for ``reason`` (then ``due`` may be None)."""

    visit: Visit
    occasion: Occasion
    step: int
    edition: int
    aim: datetime
    no_later_than: datetime
    planned_from: datetime
    due: datetime | None = None
    reason: Reason | None = None

    @property
    def key(self) -> str:
        """Its one name within the studio."""
        return f"visit:{self.visit.id}:{self.occasion.value}:{self.step}:{self.edition}"

    @property
    def slot(self) -> Slot:
        return (self.visit.id, self.occasion, self.step)


@dataclass(slots=True)
class Calendar:
    """One client's visits, sorted, with what follows from them as things stand now."""

    client: Client
    rules: Rules
    now: datetime
    visits: list[Visit]
    dates: dict[int, date] = field(default_factory=dict)
    done_sets: list[Visit] = field(default_factory=list)
    tests: list[Visit] = field(default_factory=list)

    @classmethod
    def of(cls, client: Client, visits: Iterable[Visit], rules: Rules, now: datetime) -> Calendar:
        ordered = sorted(visits, key=lambda visit: (visit.start, visit.ref))
        calendar = cls(client, rules, now, ordered)
        for visit in ordered:
            calendar.dates[visit.id] = visit.start.astimezone(client.zone).date()
            if visit.service == PATCH_TEST:
                calendar.tests.append(visit)
            elif visit.status == DONE and visit.service in SETS:
                calendar.done_sets.append(visit)
        return calendar

    def is_booked(self, visit: Visit) -> bool:
        """Booked means: so marked, and its start still ahead."""
        return visit.status == BOOKED and visit.start > self.now

    @property
    def is_first_client(self) -> bool:
        """No set has been done here yet."""
        return not self.done_sets

    def watched(self) -> set[int]:
        """Return the visits that get the later checks too."""
        found = {visit.id for visit in self.visits if visit.service == PATCH_TEST and visit.status == DONE}
        found.update(visit.id for visit in self.done_sets[: 2 if self.client.sensitive else 1])
        for reaction in self.client.reactions:
            found.update([visit.id for visit in self.done_sets if visit.start > reaction][:1])
        return found


def test_due(visit: Visit, calendar: Calendar) -> str:
    """Return why a patch test is due for a booked set, as things stand now, or '' where none is."""
    if visit.service not in SETS or not calendar.is_booked(visit):
        return ""
    why = _calls_for_test(visit, calendar)
    return why if why and not _is_tested(visit, calendar) else ""


def _calls_for_test(visit: Visit, calendar: Calendar) -> str:
    client, rules = calendar.client, calendar.rules
    asked = client.sensitive or rules.test_everyone
    if calendar.is_first_client:
        if asked:
            return "sensitive, first visit" if client.sensitive else "first visit"
    elif asked:
        last = calendar.done_sets[-1]
        if (calendar.dates[visit.id] - calendar.dates[last.id]).days > rules.test_valid_days:
            return f"last set over {rules.test_valid_days} days before"
        if client.sensitive and visit.adhesive and last.adhesive and visit.adhesive != last.adhesive:
            return "another adhesive than last time"
    return "released with “test first”" if client.test_first else ""


def _is_tested(visit: Visit, calendar: Calendar) -> bool:
    """Whether a done test within the days that count, or one booked in good time, answers the need.

    A test that nobody read counts as done here; that it was not read is shown to the artist.
    """
    rules, day = calendar.rules, calendar.dates[visit.id]
    reaction = max(calendar.client.reactions, default=None)
    for test in calendar.tests:
        if test.status == DONE:
            age = (day - calendar.dates[test.id]).days
            since = reaction is None or test.start > reaction
            if 0 <= age <= rules.test_valid_days and test.start < visit.start and since and not test.sign_on_test:
                return True
        elif calendar.is_booked(test) and visit.start - test.start >= timedelta(hours=rules.test_booked_hours):
            return True
    return False


def plan(
    client: Client,
    visits: Iterable[Visit],
    rules: Rules,
    now: datetime,
    standing: Mapping[Slot, Standing] | None = None,
) -> list[Planned]:
    """Return every message that should stand for ``client`` at ``now`` and has not gone yet.

    What has gone is in ``standing`` and is not returned. A message of ``standing`` that is not returned and has not
    gone is no longer due: the caller withdraws it. The same arguments give the same answer; the order of ``visits``
    does not matter.
    """
    now = whole_seconds(now)
    calendar = Calendar.of(client, visits, rules, now)
    standing = standing or {}
    found: list[Planned] = []
    for visit, occasion, step, aim, last in _table(calendar):
        if last < visit.heard_at:
            continue  # its time had passed before the visit was first heard of: imported history stays quiet
        on_record = standing.get((visit.id, occasion, step), NOTHING)
        edition = _edition(visit, occasion, on_record)
        if edition:
            found.append(_planned(visit, occasion, step, edition, aim, last, on_record, calendar))
    sent_checks = list(_sent_checks(standing, calendar))
    # Those that gave way to another check are looked at last: only a day without its rival brings them back.
    for gave_way in (False, True):
        for message in found:
            on_record = standing.get(message.slot, NOTHING)
            if on_record.open_gave_way is gave_way:
                _revive(message, on_record, calendar)
        _one_check_a_day(found, sent_checks, client)
    return found


def _edition(visit: Visit, occasion: Occasion, on_record: Standing) -> int:
    """Return the edition still to go, or 0: it has gone, and speaks of where the visit stands."""
    if not on_record.gone_edition:
        return 1
    if on_record.gone_elsewhere:
        return on_record.gone_edition + 1
    if occasion in MOVES_ANEW and on_record.gone_start != visit.start:
        return on_record.gone_edition + 1
    return 0


def _planned(
    visit: Visit,
    occasion: Occasion,
    step: int,
    edition: int,
    aim: datetime,
    last: datetime,
    on_record: Standing,
    calendar: Calendar,
) -> Planned:
    same = on_record.open_edition == edition and on_record.open_aim == aim
    planned_from = on_record.open_from if same and on_record.open_from is not None else calendar.now
    message = Planned(visit, occasion, step, edition, aim, last, planned_from)
    _decide(message, calendar)
    return message


def _decide(message: Planned, calendar: Calendar) -> None:
    """Give the message its due moment or its reason, from the moment on from which it has been planned."""
    client, rules = calendar.client, calendar.rules
    start = max(message.aim, message.planned_from)
    message.due = next_open(start, rules.hours_of(message.occasion), client.zones, message.no_later_than)
    message.reason = None
    if message.due is None:
        message.reason = Reason.TOO_LATE
    elif _is_held(message, client):
        message.reason = Reason.ON_HOLD
    elif not client.channel:
        message.reason = client.unreachable
    elif client.paused and message.occasion in MOVES_ANEW:
        message.reason = Reason.PAUSED


def _is_held(message: Planned, client: Client) -> bool:
    if message.occasion is Occasion.CHECK:
        return message.visit.id in client.held_visits
    return client.on_hold and message.occasion in MOVES_ANEW


def _revive(message: Planned, on_record: Standing, calendar: Calendar) -> None:
    """A message that was withheld or withdrawn and may go now is planned from now, never in the past."""
    was_withheld = on_record.open_edition == message.edition and not on_record.open_planned
    if was_withheld and message.reason is None and message.planned_from != calendar.now:
        message.planned_from = calendar.now
        _decide(message, calendar)


Rank = tuple[datetime, str, int]  # start and ref of the visit, step: the highest of a day goes


def _sent_checks(standing: Mapping[Slot, Standing], calendar: Calendar) -> Iterator[tuple[date, Rank]]:
    """The checks that have gone, whatever has become of their visits since."""
    starts = {visit.id: (visit.start, visit.ref) for visit in calendar.visits}
    for (visit, occasion, step), on_record in standing.items():
        if occasion is Occasion.CHECK and on_record.gone_due is not None and visit in starts:
            yield on_record.gone_due.astimezone(calendar.client.zone).date(), (*starts[visit], step)


def _one_check_a_day(found: list[Planned], sent: list[tuple[date, Rank]], client: Client) -> None:
    """Of the checks that fall on one of her days, leave only that of the visit that starts latest, its last step."""
    days: dict[date, list[Planned]] = {}
    for message in found:
        if message.occasion is Occasion.CHECK and message.reason is None and message.due is not None:
            days.setdefault(message.due.astimezone(client.zone).date(), []).append(message)
    for day, messages in days.items():
        ranks = {message.slot: (message.visit.start, message.visit.ref, message.step) for message in messages}
        highest = max([*ranks.values(), *(rank for sent_day, rank in sent if sent_day == day)])
        for message in messages:
            if ranks[message.slot] != highest:
                message.reason = Reason.ANOTHER_CHECK


Row = tuple[Visit, Occasion, int, datetime, datetime]  # visit, occasion, step, aim, no later than


def _table(calendar: Calendar) -> Iterator[Row]:
    """The table of default rules, row by row."""
    yield from _prepare(calendar)
    yield from _patch_test(calendar)
    yield from _care(calendar)
    yield from _check(calendar)


def _prepare(calendar: Calendar) -> Iterator[Row]:
    booked = [visit for visit in calendar.visits if visit.service in PREPARED and calendar.is_booked(visit)]
    zone, rules = calendar.client.zone, calendar.rules
    for visit in _one_a_date(reversed(booked), calendar):
        day = calendar.dates[visit.id]
        aim = moment(day - timedelta(days=rules.prepare_days), rules.at, zone)
        evening = moment(day - timedelta(days=rules.evening_days), rules.evening_at, zone)
        if visit.service == FULL_SET or (visit.service == FILL and calendar.is_first_client):
            yield visit, Occasion.PREPARE, 0, aim, evening
            yield visit, Occasion.PREPARE, 1, evening, visit.start - timedelta(hours=rules.evening_last_hours)
        else:
            yield visit, Occasion.PREPARE, 0, aim, visit.start - timedelta(hours=rules.prepare_last_hours)


def _patch_test(calendar: Calendar) -> Iterator[Row]:
    rules = calendar.rules
    for visit in calendar.visits:
        if test_due(visit, calendar):
            day = calendar.dates[visit.id] - timedelta(days=rules.patch_test_days)
            last = visit.start - timedelta(hours=rules.patch_test_last_hours)
            yield visit, Occasion.PATCH_TEST, 0, moment(day, rules.at, calendar.client.zone), last


def _care(calendar: Calendar) -> Iterator[Row]:
    rules = calendar.rules
    done = [visit for visit in calendar.visits if visit.status == DONE and visit.service in CARED_FOR]
    for visit in _one_a_date(done, calendar):
        end = whole_seconds(visit.end)
        last = end + timedelta(hours=rules.care_last_hours)
        yield visit, Occasion.CARE, 0, end + timedelta(minutes=rules.care_minutes), last


def _check(calendar: Calendar) -> Iterator[Row]:
    rules = calendar.rules
    done = [visit for visit in calendar.visits if visit.status == DONE and visit.service in CHECKED]
    watched = calendar.watched()
    for visit in _one_a_date(done, calendar):
        for step, days in enumerate(rules.check_days, start=1):
            if step == 1 or visit.id in watched:
                day = calendar.dates[visit.id] + timedelta(days=days)
                aim = moment(day, rules.at, calendar.client.zone)
                yield visit, Occasion.CHECK, step, aim, aim + timedelta(hours=rules.check_last_hours)


def _one_a_date(visits: Iterable[Visit], calendar: Calendar) -> Iterable[Visit]:
    """Of the visits that share a local date leave the one that comes last in ``visits``."""
    return {calendar.dates[visit.id]: visit for visit in visits}.values()


def whole_seconds(at: datetime) -> datetime:
    """Return ``at`` in UTC without its fraction of a second."""
    return at.astimezone(UTC).replace(microsecond=0)


def may_go(message: Planned, client: Client, rules: Rules, now: datetime) -> datetime | Reason:
    """Judge a message anew at ``now``: the moment at which it may go (``now`` itself: at once), or why not at all."""
    now = whole_seconds(now)
    if message.reason is not None:
        return message.reason
    start = max(message.aim, now)
    found = next_open(start, rules.hours_of(message.occasion), client.zones, message.no_later_than)
    return Reason.TOO_LATE if found is None else found


def explain(occasion: Occasion, step: int, rules: Rules) -> str:
    """Return in words when a message of ``occasion`` falls due."""
    if occasion is Occasion.PREPARE:
        days, at = (rules.prepare_days, rules.at) if step == 0 else (rules.evening_days, rules.evening_at)
        return f"{clock(at)}, {_days(days)} before the visit"
    if occasion is Occasion.PATCH_TEST:
        return f"{clock(rules.at)}, {_days(rules.patch_test_days)} before the visit"
    if occasion is Occasion.CARE:
        return f"{rules.care_minutes} minutes after the visit's end"
    if occasion is Occasion.CHECK:
        return f"{clock(rules.at)}, {_days(rules.check_days[step - 1])} after the visit"
    return "at once"


def clock(minutes: int) -> str:
    """Return minutes since midnight as a clock shows them.

    >>> clock(605)
    '10:05'
    """
    return f"{minutes // 60:02}:{minutes % 60:02}"


def _days(days: int) -> str:
    return "1 day" if days == 1 else f"{days} days"
