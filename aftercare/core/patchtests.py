"""Whether a patch test is due for a booked set, and why; judged for each by itself, as things stand now."""

from __future__ import annotations

from datetime import timedelta

from aftercare.core.occasions import DONE, SETS
from aftercare.core.visits import Calendar, Visit


def test_due(visit: Visit, calendar: Calendar) -> str:
    """Return why a patch test is due for a booked set, or '' where none is."""
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
