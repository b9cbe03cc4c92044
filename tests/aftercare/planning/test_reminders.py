"""Planning reminders: from a kept forecast to a promise, and what becomes of it as forecasts and records change."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from aftercare import facts, planning
from aftercare.models import Message
from studio import records
from studio.models import Client, Consent, Visit
from tests.forecasts import forecast
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db

DONE = datetime(2027, 3, 8, 15, 0, tzinfo=UTC)  # a Monday, 10:00 in New York; half of America's clocks jump on the 14th
FILL = datetime(2027, 3, 20, 14, 0, tzinfo=UTC)  # the Saturday 12 days after it, 10:00 there by then


def consent(her: Client, channel: str, purpose: str, given: bool = True) -> None:
    Consent.objects.create(client=her, channel=channel, purpose=purpose, given=given, at=NOW, how="on paper")


@pytest.fixture
def mia() -> Client:
    her = make_client(make_studio(), mobile="+12125550101", email="mia@mail.example", time_zone="America/New_York")
    consent(her, "sms", "visits")
    consent(her, "email", "reminders")
    make_visit(her, status="done", starts_at=DONE - timedelta(days=25))
    made(make_visit(her, status="done", starts_at=DONE), fill_day=19.4)
    return her


def made(visit: Visit, **days: Any) -> Any:
    return forecast(visit, NOW, **{"full_set_low": 27.0, "full_set_day": 34.0, **days})


def reminder(occasion: str = "fill_due") -> Message:
    return Message.objects.get(occasion=occasion)


def again(her: Client, now: datetime = NOW) -> None:
    planning.plan_clients([her.pk], now)


def test_both_are_promised_by_the_channel_of_their_own_consent(mia: Client) -> None:
    planning.catch_up(NOW)

    found = Message.objects.filter(occasion__in=("fill_due", "full_set_due")).order_by("due_at")
    assert list(found.values_list("occasion", "state", "channel", "due_at")) == [
        ("fill_due", "planned", "email", FILL),
        ("full_set_due", "planned", "email", FILL + timedelta(days=23)),  # not on 11 April, a Sunday
    ]
    assert set(Message.objects.filter(occasion="check").values_list("channel", flat=True)) == {"sms"}


def test_without_a_consent_to_reminders_they_say_so(mia: Client) -> None:
    consent(mia, "email", "reminders", given=False)

    planning.catch_up(NOW)

    assert (reminder().state, reminder().reason) == ("withheld", "no consent")


def test_one_keeps_to_its_forecast_while_the_newest_says_the_same(mia: Client) -> None:
    planning.catch_up(NOW)
    first = reminder().forecast
    worn = Visit.objects.get(starts_at=DONE)

    made(worn, fill_day=20.3)
    again(mia)
    assert (reminder().due_at, reminder().forecast) == (FILL, first)

    newest = made(worn, fill_day=20.5)
    again(mia)
    assert (reminder().due_at, reminder().forecast) == (FILL + timedelta(days=2), newest)  # the 21st is a Sunday


def test_a_newer_set_takes_them_back(mia: Client) -> None:
    planning.catch_up(NOW)
    make_visit(mia, status="done", starts_at=NOW - timedelta(hours=3))

    again(mia)

    assert (reminder().state, reminder().reason) == ("withdrawn", "a newer set is on")


def test_a_set_that_turns_out_to_fail_early_takes_them_back(mia: Client) -> None:
    planning.catch_up(NOW)
    made(Visit.objects.get(starts_at=DONE), fill_day=8.0)

    again(mia)

    assert (reminder().state, reminder().reason) == ("withdrawn", "this set fails early: her artist is told")


@pytest.mark.parametrize(
    ("fields", "reason"),
    [({"on_break": True}, "no set on"), ({"paused_until": NOW.date() + timedelta(days=9)}, "paused")],
)
def test_what_stands_on_her_card_withholds_them(mia: Client, fields: dict[str, Any], reason: str) -> None:
    Client.objects.update(**fields)

    planning.catch_up(NOW)

    assert (reminder().state, reminder().reason) == ("withheld", reason)


def test_a_reaction_holds_them_until_it_is_released(mia: Client) -> None:
    reaction = records.record_reaction(client=mia, visit=None, words="red lids", by=None, now=NOW)
    planning.catch_up(NOW)
    assert reminder().reason == "on hold"

    records.release_reaction(reaction=reaction, clinician_consulted="yes", test_first=False, by=None, now=NOW)
    planning.catch_up(NOW)
    assert (reminder().state, reminder().due_at) == ("planned", FILL)


def test_a_booked_visit_withholds_it_and_calling_it_off_moves_it_away_from_there(mia: Client) -> None:
    booked = make_visit(mia, starts_at=FILL + timedelta(hours=30))
    planning.catch_up(NOW)
    assert reminder().reason == "already booked"

    records.cancel_visit(visit=booked, by=None, now=NOW)
    planning.catch_up(NOW)
    assert reminder().due_at == FILL + timedelta(hours=78)


def test_a_closing_day_moves_it(mia: Client) -> None:
    records.save_closing_day(studio=mia.studio, day=None, date=FILL.date(), by=None, now=NOW)

    planning.catch_up(NOW)

    assert reminder().due_at == FILL + timedelta(days=2)


def test_why_it_goes_when_it_goes_is_said(mia: Client) -> None:
    planning.catch_up(NOW)

    said = planning.explain(reminder(), facts.rules_of(mia.studio))
    assert said == "10:00, 7 days before her set is forecast to need a fill"


def test_planning_again_changes_nothing(mia: Client) -> None:
    planning.catch_up(NOW)
    before = list(Message.objects.values())

    assert not planning.plan_studio(mia.studio, NOW + timedelta(hours=5))

    assert list(Message.objects.values()) == before
