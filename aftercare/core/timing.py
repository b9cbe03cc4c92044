"""When each message falls due: rules, one client's visits and the present moment in, planned messages out.

Pure: no database, no clock. Moments are aware datetimes in UTC; fractions of a second are dropped. Dates are those of
the client's zone. "h" and "min" are elapsed time, days are calendar days. Source: the project's own table of default
rules, every number of which the owner can change. The table is in ``table`` and ``reminders``, what goes in and comes
out in ``visits``, ``rules`` and ``promises``; all of it is to be had from here.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date, datetime

from aftercare.core import reminders, table
from aftercare.core.occasions import (
    BOOKED,
    DONE,
    EVERYONE_TESTED_IN,
    MOVES_ANEW,
    NEEDS_THE_BOOK,
    REMINDERS,
    SAFETY,
    UNPLANNED,
    Occasion,
    Reason,
)
from aftercare.core.patchtests import test_due
from aftercare.core.promises import (
    ASKED,
    NOTHING,
    Planned,
    Slot,
    Standing,
    decide,
    edition,
    first_moment,
    promised,
    revive,
    was_over,
)
from aftercare.core.rules import Rules
from aftercare.core.visits import Calendar, Client, SetForecast, Visit, whole_seconds

__all__ = [
    "EVERYONE_TESTED_IN",
    "MOVES_ANEW",
    "NEEDS_THE_BOOK",
    "NOTHING",
    "REMINDERS",
    "SAFETY",
    "UNPLANNED",
    "Calendar",
    "Client",
    "Occasion",
    "Planned",
    "Reason",
    "Rules",
    "SetForecast",
    "Slot",
    "Standing",
    "Visit",
    "clock",
    "explain",
    "may_go",
    "plan",
    "test_due",
    "whole_seconds",
]


def plan(
    client: Client,
    visits: Iterable[Visit],
    rules: Rules,
    now: datetime,
    standing: Mapping[Slot, Standing] | None = None,
    forecast: SetForecast | None = None,
) -> list[Planned]:
    """Return every message that should stand for ``client`` at ``now`` and has not gone yet.

    What has gone is in ``standing`` and is not returned. A message of ``standing`` that is not returned and has not
    gone is no longer due: the caller withdraws it. ``forecast`` is the one in force for the set that she wears; without
    it there are no reminders. The same arguments give the same answer; the order of ``visits`` does not matter.
    """
    now = whole_seconds(now)
    calendar = Calendar.of(client, visits, rules, now)
    standing = standing or {}
    found: list[Planned] = []
    came = _came_prepared(standing, calendar)
    for row in table.rows(calendar):
        visit, occasion, step, _, _ = row
        on_record = standing.get((visit.id, occasion, step), NOTHING)
        number = edition(visit, occasion, on_record)
        if number == 1 and occasion is Occasion.PREPARE and calendar.dates[visit.id] in came:
            continue
        if number and not was_over(row, on_record, rules):
            message = promised(row, number, on_record, now)
            decide(message, calendar)
            found.append(message)
    sent_checks = list(_sent_checks(standing, calendar))
    # Those that gave way to another check are looked at last: only a day without its rival brings them back.
    for gave_way in (False, True):
        for message in found:
            on_record = standing.get(message.slot, NOTHING)
            if on_record.open_gave_way is gave_way:
                revive(message, on_record, calendar)
        _one_check_a_day(found, sent_checks, client)
    if forecast is not None:
        checks = [message for message in found if message.occasion is Occasion.CHECK]
        found.extend(reminders.plan(calendar, forecast, standing, checks))
    return found


def _came_prepared(standing: Mapping[Slot, Standing], calendar: Calendar) -> set[date]:
    """The dates of visits that have begun, or are done, and of which she had been told how to come.

    A later visit of such a date is the earliest that is still ahead by then, and yet the same coming.
    """
    begun = {visit.id for visit in calendar.visits if visit.status in (BOOKED, DONE) and not calendar.is_booked(visit)}
    told = (slot for slot, on_record in standing.items() if on_record.gone_edition and not on_record.gone_elsewhere)
    return {calendar.dates[visit] for visit, occasion, _ in told if occasion is Occasion.PREPARE and visit in begun}


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


def may_go(message: Planned, client: Client, rules: Rules, now: datetime) -> datetime | Reason:
    """Judge a message anew at ``now``: the moment at which it may go (``now`` itself: at once), or why not at all."""
    if message.reason is not None:
        return message.reason
    found = first_moment(message, whole_seconds(now), client, rules)
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
    if occasion is Occasion.CHECK and step >= ASKED:
        return f"{clock(rules.at)}, the day after a matter of hers was closed"
    if occasion is Occasion.CHECK:
        return f"{clock(rules.at)}, {_days(rules.check_days[step - 1])} after the visit"
    if occasion is Occasion.FILL_DUE:
        return f"{clock(rules.at)}, {_days(rules.lead_days)} before her set is forecast to need a fill"
    if occasion is Occasion.FULL_SET_DUE:
        return f"{clock(rules.at)} on the day on which her set is forecast to be down to {rules.full_set_level:.0%}"
    return "at once"


def clock(minutes: int) -> str:
    """Return minutes since midnight as a clock shows them.

    >>> clock(605)
    '10:05'
    """
    return f"{minutes // 60:02}:{minutes % 60:02}"


def _days(days: int) -> str:
    return "1 day" if days == 1 else f"{days} days"
