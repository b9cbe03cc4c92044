"""What one message says: here what reminders say of the next visit."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from aftercare import facts, links, planning, texts, versions
from aftercare.core import say
from aftercare.models import Flag, Message, Wording
from studio.models import Absence, Client, ClosingDay, Consent, Visit
from tests.forecasts import forecast
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db

DONE = datetime(2027, 2, 24, 15, 0, tzinfo=UTC)  # a Wednesday in New York
DUE = datetime(2027, 3, 15, 14, 0, tzinfo=UTC)  # the Monday 19 days later, 10:00 there


@pytest.fixture
def mia() -> Client:
    her = make_client(make_studio(), mobile="+12125550101", time_zone="America/New_York")
    for purpose in ("reminders", "visits"):
        Consent.objects.create(client=her, channel="sms", purpose=purpose, given=True, at=NOW, how="on paper")
    for days in (30, 0):
        done = make_visit(her, status="done", starts_at=DONE - timedelta(days=days), heard_at=NOW - timedelta(days=40))
    forecast(done, NOW, fill_day=26.5, full_set_low=40, full_set_day=41.5)
    return her


def says(her: Client, now: datetime = NOW, occasion: str = "fill_due") -> str:
    planning.plan_clients([her.pk], NOW)
    message = Message.objects.get(client=her, occasion=occasion)
    return texts.for_message(message, facts.load([her.pk], now)[her.pk], now).body


def test_a_fills_reminder_names_the_days_that_would_be_best(mia: Client) -> None:
    # Day 26 is 22 March, three days before it is 19 March; ten days from there end on Sunday the 28th.
    assert "will be ready for a fill between Fri 19 and Sat 27 March. Later you may need" in says(mia)


def test_it_names_no_day_on_which_her_artist_is_away_or_the_studio_is_closed(mia: Client) -> None:
    ada, noor = make_staff(mia.studio), make_staff(mia.studio, "Noor")
    Visit.objects.filter(client=mia).update(artist=ada)
    Absence.objects.create(staff=noor, first_day=date(2027, 3, 1), last_day=date(2027, 4, 30))
    assert "between Fri 19 and Sat 27 March" in says(mia)

    Absence.objects.create(staff=ada, first_day=date(2027, 3, 15), last_day=date(2027, 3, 20))
    ClosingDay.objects.create(studio=mia.studio, date=date(2027, 3, 22))
    assert "between Tue 23 March and Thu 1 April" in says(mia)

    Absence.objects.filter(staff=ada).update(cover=noor, last_day=date(2027, 5, 1))
    assert "between Fri 19 and Sat 27 March" in says(mia)  # it is covered, and nothing else is left


def test_it_names_the_same_days_whenever_before_its_moment_it_is_looked_at(mia: Client) -> None:
    assert says(mia, DUE) == says(mia, NOW)


def test_it_names_no_day_that_has_passed_when_it_leaves_late(mia: Client) -> None:
    assert "between Mon 29 March and Mon 5 April" in says(mia, DUE + timedelta(days=12))


def test_where_the_days_are_over_it_says_soon(mia: Client) -> None:
    assert "ready for a fill in the next days." in says(mia, DUE + timedelta(days=40))
    assert "Best in the next days." in says(mia, DUE + timedelta(days=25), "full_set_due")


def test_who_comes_too_late_is_offered_an_earlier_visit(mia: Client) -> None:
    assert "Reply and we find a time." in says(mia)

    make_visit(mia, starts_at=DONE + timedelta(days=60))
    assert "You are booked Sunday 25 April: reply to come earlier." in says(mia)
    assert "You are booked" not in says(mia, occasion="full_set_due")


def test_it_is_said_in_her_language(mia: Client) -> None:
    Client.objects.update(language="es")
    make_visit(mia, starts_at=DONE + timedelta(days=60))

    text = says(mia)
    assert "entre el vie 19 y el sáb 27 de marzo" in text or "entre el vie 19 y el sab 27 de marzo" in text
    assert "Tu cita: domingo 25 de abril. ¿Antes? Responde." in text


def test_a_message_about_a_visit_carries_the_way_to_her_page(mia: Client) -> None:
    visit = make_visit(mia, service="full set", starts_at=NOW + timedelta(days=6))
    planning.plan_clients([mia.pk], NOW)
    message = Message.objects.get(visit=visit, occasion="prepare", step=1)
    book = facts.load([mia.pk], NOW)[mia.pk]

    said = texts.for_message(message, book, NOW).body

    token = said.rpartition("/v/")[2].split()[0]
    opened = links.opened(links.Purpose.VISIT, token)
    assert opened is not None
    assert opened.visit == visit


def test_after_her_links_were_ended_a_message_carries_one_that_opens(mia: Client) -> None:
    visit = make_visit(mia, service="full set", starts_at=NOW + timedelta(days=6))
    planning.plan_clients([mia.pk], NOW)
    links.revoke(mia, why="asked", now=NOW)
    book = facts.load([mia.pk], NOW)[mia.pk]

    said = texts.for_message(Message.objects.get(visit=visit, occasion="prepare", step=1), book, NOW).body

    assert links.opened(links.Purpose.VISIT, said.rpartition("/v/")[2].split()[0]) is not None


def test_many_messages_are_written_without_a_query_each(mia: Client, django_assert_num_queries: Any) -> None:
    for days in range(5, 25):
        make_visit(mia, service="lift", starts_at=NOW + timedelta(days=days))
    planning.plan_clients([mia.pk], NOW)
    messages = list(Message.objects.filter(client=mia, occasion="prepare"))
    find = versions.finder(mia.studio)
    book = facts.load([mia.pk], NOW)[mia.pk]

    with django_assert_num_queries(0):
        said = {texts.for_message(message, book, NOW, find).body for message in messages}

    assert len(said) == len(messages) >= 20


def test_the_way_to_her_record_stands_in_no_message_but_the_one_that_she_asked_for(mia: Client) -> None:
    book = facts.load([mia.pk], NOW)[mia.pk]
    kinds = ("your_record", "help", "started", "same_day", "chemical")
    answers = {
        kind: texts.for_message(
            Message(studio=mia.studio, client=mia, occasion="answer", kind=kind, channel="sms"), book, NOW
        ).body
        for kind in kinds
    }

    assert [kind for kind in kinds if "/d/" in answers[kind]] == ["your_record"]


def test_aftercare_goes_in_the_first_wording_where_the_one_in_force_cannot_be_filled_in(mia: Client) -> None:
    body = "{{ studio }} {{ caution }} {{ how_to_stop }} {% if artist > 3 %}!{% endif %}"  # kept by an earlier release
    Wording.objects.create(
        studio=mia.studio, occasion="care", kind="fill", channel="sms", language="en", version=1, body=body, at=NOW
    )
    visit = Visit.objects.filter(client=mia).order_by("starts_at").last()
    message = Message(studio=mia.studio, client=mia, visit=visit, occasion="care", channel="sms")
    Visit.objects.update(artist=make_staff(mia.studio))

    words = texts.for_message(message, facts.load([mia.pk], NOW)[mia.pk], NOW)

    assert "rinse 20 min" in words.body
    assert "!" not in words.body


def test_the_evening_step_says_that_a_visit_was_moved_where_she_was_told_of_another_hour_alone() -> None:
    her = make_client(make_studio(), email="mia@example.com", time_zone="America/New_York")
    visit = make_visit(her, service="full set", starts_at=DUE)
    planning.plan_clients([her.pk], NOW)
    prepare = Message.objects.filter(client=her, occasion="prepare")

    def evening(edition: int = 1) -> str:
        message = prepare.get(step=1, edition=edition)
        return texts.for_message(message, facts.load([her.pk], NOW)[her.pk], NOW).body

    assert "We look forward to seeing you Monday 15 March" in evening()

    prepare.filter(step=0).update(state="delivered")
    Visit.objects.update(starts_at=DUE + timedelta(hours=2))
    planning.plan_clients([her.pk], NOW)
    assert "Your visit is now Monday 15 March, 12:00 pm" in evening()

    prepare.filter(step=0, edition=2).update(state="delivered")
    assert "We look forward to seeing you Monday 15 March, 12:00 pm" in evening(), "she has been told"

    prepare.filter(step=1).update(state="delivered")
    Visit.objects.update(starts_at=visit.starts_at)
    planning.plan_clients([her.pk], NOW)
    assert "Your visit is now Monday 15 March, 10:00 am" in evening(2)


def test_a_visit_that_was_anothers_is_told_of_as_any_other() -> None:
    zoe = make_client(make_studio(), "Zoe", email="zoe@example.com")
    mia = make_client(zoe.studio, email="mia@example.com")
    visit = make_visit(zoe, service="lift", starts_at=DUE)
    planning.plan_clients([zoe.pk], NOW)
    Message.objects.update(state="delivered")

    Visit.objects.update(client=mia)
    planning.plan_clients([mia.pk], NOW)

    message = Message.objects.get(visit=visit, edition=2)
    assert (
        "Your lash lift is Monday 15 March" in texts.for_message(message, facts.load([mia.pk], NOW)[mia.pk], NOW).body
    )


@pytest.mark.parametrize(
    ("zone", "call", "care"),
    [
        ("Europe/London", "999 or your local emergency number", "(A&E or eye casualty)"),
        ("US/Eastern", "911 or your local emergency number", "(ER)"),
        ("Asia/Tokyo", "call your local emergency number", "emergency eye care"),
        ("", "911 or your local emergency number", "(ER)"),
    ],
)
def test_the_emergency_number_is_that_of_where_she_says_she_is_and_the_clock_the_studio_s(
    mia: Client, zone: str, call: str, care: str
) -> None:
    Client.objects.update(time_zone=zone)
    by = NOW + timedelta(hours=1)
    flag = Flag.objects.create(studio=mia.studio, opened_at=NOW, urgent_since=NOW, call_by=by)
    book = facts.load([mia.pk], NOW)[mia.pk]

    def answer(kind: str) -> str:
        message = Message(studio=mia.studio, client=mia, flag=flag, occasion="answer", kind=kind, channel="sms")
        return texts.for_message(message, book, NOW).body

    assert call in answer("sight")
    assert care in answer("sight")
    assert answer("same_day").endswith(say.moment(by.astimezone(mia.studio.zone), "en", "US") + ".")


@pytest.mark.parametrize("known", [True, False], ids=["hers", "a number that nobody has"])
def test_an_answer_that_leaves_late_promises_no_call_by_an_hour_that_is_past(mia: Client, known: bool) -> None:
    by = NOW + timedelta(hours=1)
    flag = Flag.objects.create(studio=mia.studio, urgency="same_day", opened_at=NOW, urgent_since=NOW, call_by=by)
    book = facts.load([mia.pk], NOW)[mia.pk] if known else None
    answer = Message(studio=mia.studio, flag=flag, occasion="answer", kind="same_day", channel="sms", language="en")

    in_time = texts.for_message(answer, book, NOW).body
    late = texts.for_message(answer, book, by).body

    assert "We call you by" in in_time
    assert "We call you as soon as we can" in late
