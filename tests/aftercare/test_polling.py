"""Calendars that are polled."""

from __future__ import annotations

from datetime import timedelta
from hashlib import sha256

import pytest

from aftercare import polling
from studio.book.feeds import FeedError, Fetched
from studio.models import CalendarFeed, Studio, Visit
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
