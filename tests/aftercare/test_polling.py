"""Calendars that are polled."""

from __future__ import annotations

from datetime import timedelta
from hashlib import sha256

import pytest

from aftercare import polling
from studio.book.feeds import FeedError, Fetched
from studio.models import CalendarFeed, ServiceName, Studio, Visit
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

CALENDAR = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Birch//EN\r\n{events}END:VCALENDAR\r\n"
EVENT = (
    "BEGIN:VEVENT\r\nUID:{uid}\r\nDTSTAMP:20270301T120000Z\r\nDTSTART:20270316T183000Z\r\nDURATION:PT75M\r\n"
    "SUMMARY:{summary}\r\nATTENDEE;CN=Mia Ortega:mailto:mia@example.com\r\nEND:VEVENT\r\n"
)


def feed_of(studio: Studio) -> CalendarFeed:
    return CalendarFeed.objects.create(studio=studio, address="https://calendar.example/week.ics", every_minutes=15)


def calendar(*events: tuple[str, str]) -> Fetched:
    text = CALENDAR.format(events="".join(EVENT.format(uid=uid, summary=summary) for uid, summary in events))
    return Fetched(text.encode(), '"e1"', sha256(text.encode()).hexdigest())


def test_a_calendar_is_polled_when_its_time_has_come_and_once() -> None:
    feed_of(make_studio())
    asked: list[str] = []

    def fetch(address: str, etag: str) -> Fetched:
        asked.append(etag)
        return calendar(("one", "Fill - Mia Ortega"))

    assert polling.poll_due(NOW, fetch=fetch) == 1
    assert polling.poll_due(NOW + timedelta(minutes=14), fetch=fetch) == 0
    assert polling.poll_due(NOW + timedelta(minutes=15), fetch=fetch) == 1
    assert asked == ["", '"e1"']
    assert Visit.objects.count() == 1


def test_the_good_events_of_a_calendar_come_in_and_the_bad_are_said() -> None:
    feed = feed_of(make_studio())

    polling.poll_due(NOW, fetch=lambda *_: calendar(("one", "Fill - Mia Ortega"), ("two", "Brows - Mia Ortega")))

    feed.refresh_from_db()
    assert Visit.objects.get().service == "fill"
    assert feed.read_at == NOW
    assert "event 2, service" in feed.problem


def test_a_calendar_that_does_not_answer_keeps_its_problem_and_is_asked_again() -> None:
    feed = feed_of(make_studio())

    def fetch(address: str, etag: str) -> Fetched:
        raise FeedError("The calendar did not answer (ReadTimeout). It is asked again later.")

    polling.poll_due(NOW, fetch=fetch)
    feed.refresh_from_db()
    assert (feed.read_at, "did not answer" in feed.problem) == (None, True)

    polling.poll_due(NOW + timedelta(minutes=15), fetch=lambda *_: calendar(("one", "Fill - Mia Ortega")))
    feed.refresh_from_db()
    assert (feed.problem, Visit.objects.count()) == ("", 1)


def test_a_calendar_that_has_not_changed_is_read_and_changes_nothing() -> None:
    feed = feed_of(make_studio())
    polling.poll_due(NOW, fetch=lambda *_: calendar(("one", "Fill - Mia Ortega")))
    Visit.objects.update(minutes=90)

    later = NOW + timedelta(minutes=15)
    polling.poll_due(later, fetch=lambda *_: Fetched(None, '"e1"'))

    feed.refresh_from_db()
    assert (feed.read_at, Visit.objects.get().minutes) == (later, 90)


def poll(*events: tuple[str, str], at: timedelta = timedelta()) -> CalendarFeed:
    polling.poll_due(NOW + at, fetch=lambda *_: calendar(*events))
    return CalendarFeed.objects.get()


def not_there(address: str, etag: str) -> Fetched:
    raise FeedError("The calendar did not answer (ReadTimeout). It is asked again later.")


QUARTER = timedelta(minutes=15)


def test_the_trouble_of_an_outage_is_over_with_it_though_the_calendar_is_the_same() -> None:
    feed_of(make_studio())
    poll(("one", "Fill - Mia Ortega"))
    polling.poll_due(NOW + QUARTER, fetch=not_there)
    asked: list[str] = []

    def fetch(address: str, etag: str) -> Fetched:
        asked.append(etag)
        return calendar(("one", "Fill - Mia Ortega"))

    polling.poll_due(NOW + 2 * QUARTER, fetch=fetch)

    feed = CalendarFeed.objects.get()
    assert (feed.problem, feed.read_at) == ("", NOW + 2 * QUARTER)
    assert asked == [""], "it is read from its beginning"


def test_what_is_wrong_with_an_event_stays_said_while_the_calendar_stays_the_same() -> None:
    feed_of(make_studio())
    poll(("one", "Brows - Mia Ortega"), ("two", "Fill - Mia Ortega"))

    polling.poll_due(NOW + QUARTER, fetch=lambda *_: Fetched(None, '"e1"'))

    assert "event 1, service" in CalendarFeed.objects.get().problem


def test_a_name_that_the_owner_explained_is_read_at_the_next_look_though_the_calendar_is_the_same() -> None:
    studio = make_studio()
    feed_of(studio)
    events = (("one", "Wispy - Mia Ortega"), ("two", "Fill - Mia Ortega"))
    poll(*events)
    assert Visit.objects.count() == 1

    ServiceName.objects.create(studio=studio, name="wispy", kind="full set")
    feed = poll(*events, at=QUARTER)

    assert (feed.problem, Visit.objects.count()) == ("", 2)


def test_a_calendar_is_read_in_full_once_a_day_as_what_repeats_comes_within_reach() -> None:
    feed_of(make_studio())
    asked: list[str] = []

    def fetch(address: str, etag: str) -> Fetched:
        asked.append(etag)
        return calendar(("one", "Fill - Mia Ortega"))

    for hours in (0, 1, 24):
        polling.poll_due(NOW + timedelta(hours=hours), fetch=fetch)

    assert asked == ["", '"e1"', ""]


def test_a_visit_ahead_that_vanished_is_said_and_stays_as_it_is() -> None:
    feed_of(make_studio())
    poll(("one", "Fill - Mia Ortega"), ("two", "Lift - Mia Ortega"))

    feed = poll(("two", "Lift - Mia Ortega"), at=QUARTER)

    assert feed.problem == (
        "no longer in the calendar: Mia Ortega, 2027-03-16 14:30. Cancel the visit here if it is off."
    )
    assert set(Visit.objects.values_list("status", flat=True)) == {"booked"}


def test_a_visit_in_the_past_may_leave_the_calendar_without_a_word() -> None:
    feed_of(make_studio())
    poll(("one", "Fill - Mia Ortega"), ("two", "Lift - Mia Ortega"))
    Visit.objects.update(starts_at=NOW - timedelta(days=1))

    assert poll(("two", "Lift - Mia Ortega"), at=QUARTER).problem == ""


def test_a_calendar_that_is_none_keeps_what_stands() -> None:
    feed_of(make_studio())
    poll(("one", "Fill - Mia Ortega"))

    polling.poll_due(NOW + QUARTER, fetch=lambda *_: Fetched(b"<html>Sign in</html>", "", "0" * 64))

    feed = CalendarFeed.objects.get()
    assert "does not begin a calendar" in feed.problem
    assert feed.read_at == NOW
    assert Visit.objects.get().status == "booked"


def test_a_fault_with_one_calendar_keeps_no_other_from_being_asked() -> None:
    feed_of(make_studio())
    feed_of(make_studio("elm"))
    answers = iter([None, calendar(("one", "Fill - Mia Ortega"))])

    assert polling.poll_due(NOW, fetch=lambda *_: next(answers)) == 2  # type: ignore[arg-type]  # the fault

    problems = dict(CalendarFeed.objects.values_list("studio__slug", "problem"))
    assert problems == {"birch": "Something went wrong here; we have noted it. It is read again later.", "elm": ""}
    assert Visit.objects.get().studio.slug == "elm"


def test_of_two_workers_one_asks() -> None:
    feed_of(make_studio())
    asked: list[int] = []

    def fetch(address: str, etag: str) -> Fetched:
        asked.append(polling.poll_due(NOW, fetch=fetch))
        return calendar(("one", "Fill - Mia Ortega"))

    assert polling.poll_due(NOW, fetch=fetch) == 1
    assert asked == [0]
