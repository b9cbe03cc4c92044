"""Promises: how a message should stand, what is on record of it, and the moment at which it may go."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import NamedTuple
from zoneinfo import ZoneInfo

from aftercare.core.hours import Hours, moment, next_open
from aftercare.core.occasions import LEADS_ON, MOVES_ANEW, REMINDERS, WISHED, Occasion, Reason
from aftercare.core.rules import Rules
from aftercare.core.visits import Calendar, Client, SetForecast, Visit

Slot = tuple[int, Occasion, int]  # visit, occasion, step
ASKED = 10  # steps of checks from here on are asked for by a person's act, not by the table, and go in spite of a hold
Row = tuple[Visit, Occasion, int, datetime, datetime]  # visit, occasion, step, aim, no later than


class Standing(NamedTuple):  # made by the thousand: a frozen dataclass takes four times as long
    """What is already on record for one visit, occasion and step: the last that has gone, and the one still to go."""

    gone_edition: int = 0
    gone_start: datetime | None = None  # the visit's start that it spoke of
    gone_due: datetime | None = None
    gone_at: datetime | None = None  # when it left, where that is known
    gone_elsewhere: bool = False  # to another client, whose visit it was then: this one has heard nothing
    open_edition: int = 0  # 0: none
    open_planned: bool = False  # planned or claimed; False: withheld or withdrawn
    open_gave_way: bool = False  # withheld for another check that day
    open_aim: datetime | None = None
    open_from: datetime | None = None  # from which moment on it has been planned
    open_forecast: SetForecast | None = None  # what a reminder was planned from
    go_from: datetime | None = None  # from when a reminder that waited for the owner's go may leave


NOTHING = Standing()


@dataclass(frozen=True, slots=True)
class Apart:
    """From what a reminder keeps away: moments by elapsed time, other reminders by the days of her calendar.

    Exactly ``clear`` away from a moment, or ``days`` after another reminder's date, is far enough.
    """

    zone: ZoneInfo
    clear: timedelta
    days: int
    moments: tuple[datetime, ...] = ()
    dates: tuple[date, ...] = ()

    def also_from(self, moments: Iterable[datetime] = (), reminders: Iterable[datetime] = ()) -> Apart:
        """Return the same that keeps away from these too."""
        dates = (at.astimezone(self.zone).date() for at in reminders)
        return replace(self, moments=(*self.moments, *moments), dates=(*self.dates, *dates))

    def after(self, at: datetime) -> datetime:
        """Return ``at`` where nothing is too near, else a later moment: the soonest that one of them allows."""
        for near in self.moments:
            if abs(at - near) < self.clear:
                return near + self.clear
        day = at.astimezone(self.zone).date()
        for other in self.dates:
            if abs((day - other).days) < self.days:
                return moment(other + timedelta(days=self.days), 0, self.zone)
        return at


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
    # Of reminders alone:
    own_reason: Reason | None = None  # what stands in its way as a reminder
    apart: Apart | None = None
    forecast: SetForecast | None = None  # what it was planned from
    go_from: datetime | None = None

    @property
    def key(self) -> str:
        """Its one name within the studio."""
        return f"visit:{self.visit.id}:{self.occasion.value}:{self.step}:{self.edition}"

    @property
    def slot(self) -> Slot:
        """Its place among the messages of her visits, whatever its edition."""
        return (self.visit.id, self.occasion, self.step)

    def soonest(self, now: datetime) -> datetime | None:
        """Return when it leaves as things stand: at its moment, or now if that is past; None: not at all."""
        if self.reason is not None or self.due is None:
            return None
        at = max(self.due, now)
        return at if at <= self.no_later_than else None


def edition(visit: Visit, occasion: Occasion, on_record: Standing) -> int:
    """Return the edition still to go, or 0: it has gone, and speaks of where the visit stands."""
    if not on_record.gone_edition:
        return 1
    if on_record.gone_elsewhere:
        return on_record.gone_edition + 1
    if occasion in MOVES_ANEW and on_record.gone_start != visit.start:
        return on_record.gone_edition + 1
    return 0


def was_over(row: Row, on_record: Standing, rules: Rules) -> bool:
    """Whether its time had passed before anything called for it, so that there is to be no message at all.

    Before the visit was first heard of: imported history stays quiet. Or, of a later check, before the rules in force
    held: one more check for everybody reaches back to nobody.
    """
    visit, occasion, step, _, last = row
    may_be_new = occasion is Occasion.CHECK and 1 < step < ASKED and on_record is NOTHING
    return last < visit.heard_at or (may_be_new and rules.since is not None and last < rules.since)


def promised(row: Row, edition: int, on_record: Standing, now: datetime) -> Planned:
    """Return the message of a row, not decided yet: planned from when it was, as long as its aim is the same."""
    visit, occasion, step, aim, last = row
    same = on_record.open_edition == edition and on_record.open_aim == aim
    planned_from = on_record.open_from if same and on_record.open_from is not None else now
    return Planned(visit, occasion, step, edition, aim, last, planned_from)


def decide(message: Planned, calendar: Calendar) -> None:
    """Give the message its due moment or its reason, from the moment on from which it has been planned."""
    message.due = first_moment(message, message.planned_from, calendar.client, calendar.rules)
    message.reason = Reason.TOO_LATE if message.due is None else _in_its_way(message, calendar.client)


def _in_its_way(message: Planned, client: Client) -> Reason | None:
    reminds = message.occasion in REMINDERS
    if _is_held(message, client):
        return Reason.ON_HOLD
    if not (client.reminder_channel if reminds else client.channel):
        return client.reminder_unreachable if reminds else client.unreachable
    if client.paused and message.occasion in LEADS_ON:
        return Reason.PAUSED
    return message.own_reason


def _is_held(message: Planned, client: Client) -> bool:
    if message.occasion is Occasion.CHECK:
        return message.visit.id in client.held_visits and message.step < ASKED
    return client.on_hold and message.occasion in LEADS_ON


def revive(message: Planned, on_record: Standing, calendar: Calendar) -> None:
    """A message that was withheld or withdrawn and may go now is planned from now, never in the past."""
    was_withheld = on_record.open_edition == message.edition and not on_record.open_planned
    if was_withheld and message.reason is None and message.planned_from != calendar.now:
        message.planned_from = calendar.now
        decide(message, calendar)


def first_moment(message: Planned, since: datetime, client: Client, rules: Rules) -> datetime | None:
    """Return the first moment from ``since`` on at which the message may leave; None: it is too late for one.

    It is one that she wishes, if there is one in time; else her wish gives way to the studio's own hours.
    """
    start = max(message.aim, since)
    if message.go_from is not None:
        start = max(start, message.go_from)
    hours = rules.hours_of(message.occasion)
    wished = hours.wished(client.wished) if message.occasion in WISHED else None
    if wished is not None and (found := _first(message, start, hours, client.zones, wished)) is not None:
        return found
    return _first(message, start, hours, client.zones, None)


def _first(
    message: Planned, at: datetime, hours: Hours, zones: Sequence[ZoneInfo], wished: Hours | None
) -> datetime | None:
    """Return the first moment from ``at`` on, in time, that is open on every clock and, of a reminder, near nothing."""
    while (found := next_open(at, hours, zones, message.no_later_than, wished)) is not None:
        at = message.apart.after(found) if message.apart is not None else found
        if at == found:
            return found
    return None
