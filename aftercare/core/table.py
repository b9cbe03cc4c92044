"""The table of default rules, row by row: what is due for which visits, when, and until when. Reminders are apart."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import timedelta

from aftercare.core.hours import DAY, moment
from aftercare.core.occasions import CARED_FOR, CHECKED, DONE, FILL, FULL_SET, PREPARED, SETS, Occasion
from aftercare.core.patchtests import test_due
from aftercare.core.promises import ASKED, Row
from aftercare.core.visits import Calendar, Visit, whole_seconds


def rows(calendar: Calendar) -> Iterator[Row]:
    """Give every row but those of the reminders."""
    yield from _prepare(calendar)
    yield from _patch_test(calendar)
    yield from _care(calendar)
    yield from _check(calendar)
    yield from _asked(calendar)


def _prepare(calendar: Calendar) -> Iterator[Row]:
    booked = [visit for visit in calendar.visits if visit.service in PREPARED and calendar.is_booked(visit)]
    zone, rules = calendar.client.zone, calendar.rules
    # Of what a book has at one moment, the set: it asks for more.
    booked.sort(key=lambda visit: (visit.start, visit.service not in SETS, visit.ref))
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
        usual = rules.set_checks if visit.service in SETS else rules.other_checks
        asked = len(rules.check_days) if visit.id in watched else usual
        for step, days in enumerate(rules.check_days[:asked], start=1):
            day = calendar.dates[visit.id] + timedelta(days=days)
            aim = moment(day, rules.at, calendar.client.zone)
            yield visit, Occasion.CHECK, step, aim, aim + timedelta(hours=rules.check_last_hours)


def _asked(calendar: Calendar) -> Iterator[Row]:
    """One more check on the day after a matter of hers was closed while she wore the set; its step counts the days."""
    rules, zone = calendar.rules, calendar.client.zone
    asked = {at.astimezone(zone).date() + DAY: calendar.worn(at) for at in calendar.client.asked}
    for day, visit in sorted(asked.items()):
        if visit is not None:
            aim = moment(day, rules.at, zone)
            step = ASKED + (day - calendar.dates[visit.id]).days
            yield visit, Occasion.CHECK, step, aim, aim + timedelta(hours=rules.check_last_hours)


def _one_a_date(visits: Iterable[Visit], calendar: Calendar) -> Iterable[Visit]:
    """Of the visits that share a local date leave the one that comes last in ``visits``."""
    return {calendar.dates[visit.id]: visit for visit in visits}.values()
