"""A claimed message is judged anew: everything that could hold it is asked again before it goes."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from aftercare import facts, planning
from aftercare.core.delivery import Event
from aftercare.core.timing import Reason
from aftercare.facts import Verdict
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Stop
from studio import records
from studio.models import CalendarFeed, Client, Consent, Visit
from tests.forecasts import forecast
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db

DUE = datetime(2027, 3, 15, 14, 0, tzinfo=UTC)  # 10:00 in New York, three days before the visit
CLOSES = datetime(2027, 3, 16, 0, 0, tzinfo=UTC)  # 20:00 in New York
START = datetime(2027, 3, 18, 15, 0, tzinfo=UTC)


@pytest.fixture
def mia() -> Client:
    her = make_client(make_studio(), mobile="+12125550101", email="mia@mail.example", time_zone="America/New_York")
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    make_visit(her, service="lift", starts_at=START, minutes=60)
    planning.catch_up(NOW)
    return her


def judge(her: Client, now: datetime = DUE, **which: Any) -> Verdict:
    message = Message.objects.get(client=her, **which)
    return facts.judge(message, facts.load([her.pk], now)[her.pk], now)


def promise(her: Client, occasion: str, **fields: Any) -> Message:
    facts_of = {"studio": her.studio, "client": her, "occasion": occasion, "planned_from": NOW, "channel": "sms"}
    return Message.objects.create(**{**facts_of, "key": occasion, "address": her.mobile, **fields})


def test_what_nothing_holds_goes_now_to_her_number(mia: Client) -> None:
    assert judge(mia) == Verdict(Event.JOURNAL, channel="sms", address="+12125550101", until=CLOSES)


def test_it_goes_to_the_number_she_has_now(mia: Client) -> None:
    Client.objects.update(mobile="+12125550102")

    assert judge(mia).address == "+12125550102"


def test_without_consent_by_now_it_goes_by_mail(mia: Client) -> None:
    Consent.objects.create(client=mia, channel="sms", purpose="visits", given=False, at=DUE, how="by telephone")

    assert judge(mia) == Verdict(Event.JOURNAL, channel="email", address="mia@mail.example", until=CLOSES)


def test_without_any_way_by_now_it_is_withheld_with_the_reason(mia: Client) -> None:
    Client.objects.update(mobile="", email="")

    assert judge(mia) == Verdict(Event.WITHHOLD, reason="no way to reach her")


def test_after_a_stop_it_does_not_go_there(mia: Client) -> None:
    Stop.objects.create(line=lines_of(mia.studio)["sms"], address=mia.mobile, at=NOW)
    Client.objects.update(email="")

    assert judge(mia) == Verdict(Event.WITHHOLD, reason="no consent")


def test_while_she_is_on_hold_it_does_not_go(mia: Client) -> None:
    Flag.objects.create(studio=mia.studio, urgency="same_day", opened_at=NOW, urgent_since=NOW).clients.add(mia)

    assert judge(mia) == Verdict(Event.WITHHOLD, reason="on hold")


def test_outside_its_hours_it_gets_a_later_moment(mia: Client) -> None:
    night = datetime(2027, 3, 16, 2, 0, tzinfo=UTC)  # 22:00 in New York

    assert judge(mia, night) == Verdict(Event.PLAN, due_at=datetime(2027, 3, 16, 13, 0, tzinfo=UTC), channel="sms")


def test_on_its_last_moment_it_goes_and_a_second_later_it_is_too_late(mia: Client) -> None:
    last = START - timedelta(hours=3)
    Client.objects.update(time_zone="Europe/London")  # where that is the afternoon
    planning.plan_studio(mia.studio, NOW)

    assert (judge(mia, last).event, judge(mia, last).until) == (Event.JOURNAL, last + timedelta(seconds=1))
    assert judge(mia, last + timedelta(seconds=1)) == Verdict(Event.WITHHOLD, reason="too late")


@pytest.mark.parametrize(
    ("end", "words"),
    [
        (records.cancel_visit, "the visit was cancelled"),
        (records.mark_missed, "the visit was missed"),
        (records.mark_done, "the visit is done"),
    ],
)
def test_of_a_visit_that_does_not_come_to_pass_nothing_goes(mia: Client, end: Any, words: str) -> None:
    end(visit=mia.visits.get(), by=None, now=START + timedelta(hours=1))

    assert judge(mia, occasion="prepare") == Verdict(Event.WITHDRAW, reason=words)


def test_of_a_visit_that_has_begun_nothing_goes(mia: Client) -> None:
    assert judge(mia, START) == Verdict(Event.WITHDRAW, reason="the visit has begun")


def test_of_a_visit_that_is_another_clients_by_now_nothing_goes_to_her(mia: Client) -> None:
    Visit.objects.update(client=make_client(mia.studio, "Zoe"))

    assert judge(mia) == Verdict(Event.WITHDRAW, reason="the visit is no longer hers")


def test_what_fell_back_to_the_other_channel_does_not_return_to_the_first(mia: Client) -> None:
    Message.objects.update(fell_back=True, channel="email")

    assert judge(mia) == Verdict(Event.JOURNAL, channel="email", address="mia@mail.example", until=CLOSES)


def test_an_answer_goes_to_where_she_wrote_from_at_any_hour(mia: Client) -> None:
    promise(mia, "answer", kind="help", address="+12125550177")

    night = datetime(2027, 3, 16, 2, 0, tzinfo=UTC)
    assert judge(mia, night, occasion="answer") == Verdict(Event.JOURNAL, channel="sms", address="+12125550177")


@pytest.mark.parametrize(("kind", "event"), [("stopped", Event.JOURNAL), ("help", Event.WITHHOLD)])
def test_after_a_stop_its_one_confirmation_goes_and_no_other_answer(mia: Client, kind: str, event: Event) -> None:
    Stop.objects.create(line=lines_of(mia.studio)["sms"], address=mia.mobile, at=NOW)
    promise(mia, "answer", kind=kind)

    assert judge(mia, occasion="answer").event is event


def test_an_introduction_goes_within_hours_and_only_to_where_she_is_texted(mia: Client) -> None:
    promise(mia, "opt_in", no_later_than=DUE + timedelta(days=1))

    assert judge(mia, occasion="opt_in").event is Event.JOURNAL
    assert judge(mia, datetime(2027, 3, 16, 2, 0, tzinfo=UTC), occasion="opt_in").event is Event.PLAN
    assert judge(mia, DUE + timedelta(days=1, hours=12), occasion="opt_in").reason == "too late"
    Client.objects.update(mobile="+12125550102")
    assert judge(mia, occasion="opt_in") == Verdict(Event.WITHHOLD, reason="no consent")


def page_about(mia: Client, **fields: object) -> Message:
    """Make a page to Ada about an open matter of Mia's."""
    ada = make_staff(mia.studio, mobile="+12125550111", email="ada@mail.example")
    flag = Flag.objects.create(studio=mia.studio, urgency="emergency", opened_at=NOW, urgent_since=NOW)
    return Message(studio=mia.studio, staff=ada, flag=flag, occasion="alert", channel="email", **fields)


def test_a_page_goes_by_the_road_that_is_open_to_her_now(mia: Client) -> None:
    page = page_about(mia, address="gone@mail.example")

    assert facts.judge(page, None, NOW) == Verdict(Event.JOURNAL, channel="sms", address="+12125550111")


@pytest.mark.parametrize(
    ("state", "kind", "goes"),
    [
        ("open", "", True),
        ("taken", "", False),
        ("closed", "", False),
        ("open", "try_again", False),
        ("taken", "try_again", True),
        ("closed", "try_again", False),
    ],
)
def test_a_page_is_withdrawn_once_somebody_has_the_client(mia: Client, state: str, kind: str, goes: bool) -> None:
    page = page_about(mia, kind=kind)
    assert page.flag is not None
    page.flag.state = state

    assert facts.judge(page, None, NOW).event is (Event.JOURNAL if goes else Event.WITHDRAW)


def test_a_page_is_no_longer_for_one_who_left_or_cannot_be_reached(mia: Client) -> None:
    page = page_about(mia)
    assert page.staff is not None
    page.staff.mobile = page.staff.email = ""
    assert facts.judge(page, None, NOW) == Verdict(Event.WITHHOLD, reason=Reason.NO_WAY)
    page.staff.is_active = False
    assert facts.judge(page, None, NOW).event is Event.WITHDRAW


def test_she_is_not_told_that_nobody_could_see_it_once_somebody_has_it(mia: Client) -> None:
    answer = page_about(mia)
    answer.staff, answer.occasion, answer.kind = None, "answer", "nobody_yet"
    assert answer.flag is not None
    assert facts.judge(answer, None, NOW).event is Event.JOURNAL
    answer.flag.state = "taken"

    assert facts.judge(answer, None, NOW).event is Event.WITHDRAW


@pytest.fixture
def zoe() -> Client:
    """She said yes to reminders by e-mail alone; hers is due on the day of DUE."""
    her = make_client(make_studio("elm"), "Zoe", mobile="+12125550102", email="zoe@mail.example")
    for channel, purpose in (("sms", "visits"), ("email", "reminders")):
        Consent.objects.create(client=her, channel=channel, purpose=purpose, given=True, at=NOW, how="on paper")
    for days in (60, 20):
        done = make_visit(her, status="done", starts_at=DUE - timedelta(days=days), heard_at=NOW - timedelta(days=90))
    forecast(done, NOW, fill_day=27, full_set_low=40, full_set_day=50)
    planning.catch_up(NOW)
    return her


def test_a_reminder_goes_by_its_own_consent(zoe: Client) -> None:
    until = CLOSES - timedelta(hours=1)  # reminders have hours of their own
    by_mail = Verdict(Event.JOURNAL, channel="email", address="zoe@mail.example", until=until)
    assert judge(zoe, occasion="fill_due") == by_mail


def test_a_reminder_never_falls_back_on_the_other_channel(zoe: Client) -> None:
    Consent.objects.create(client=zoe, channel="email", purpose="reminders", given=False, at=DUE, how="by e-mail")

    assert judge(zoe, occasion="fill_due") == Verdict(Event.WITHHOLD, reason="no consent")


def test_a_stop_since_it_was_planned_holds_a_reminder(zoe: Client) -> None:
    Stop.objects.create(line=lines_of(zoe.studio)["email"], address=zoe.email, at=NOW)

    assert judge(zoe, occasion="fill_due") == Verdict(Event.WITHHOLD, reason="no consent")


def test_a_visit_missed_since_it_was_planned_moves_a_reminder(zoe: Client) -> None:
    make_visit(zoe, service="lift", status="missed", starts_at=DUE - timedelta(hours=45))

    later = DUE + timedelta(hours=3)
    assert judge(zoe, occasion="fill_due") == Verdict(Event.PLAN, due_at=later, channel="email")
    assert judge(zoe, later, occasion="fill_due").event is Event.JOURNAL


def test_an_old_book_holds_reminders_and_instructions_but_nothing_about_her_eyes(mia: Client, zoe: Client) -> None:
    for her in (mia, zoe):
        CalendarFeed.objects.create(
            studio=her.studio, address="https://c.example/a.ics", read_at=DUE - timedelta(hours=48, seconds=1)
        )
    care = make_visit(zoe, service="lift", status="done", starts_at=DUE - timedelta(hours=2), minutes=60)
    planning.plan_clients([zoe.pk], DUE)

    looked_at_again = DUE + timedelta(hours=1)
    held = Verdict(Event.PLAN, "the book has not been read for two days", looked_at_again, "sms")
    assert judge(mia, occasion="prepare") == held
    assert judge(zoe, DUE - timedelta(minutes=30), occasion="care", visit=care).event is Event.JOURNAL
    Visit.objects.filter(pk=care.pk).delete()
    assert judge(zoe, occasion="fill_due").due_at == looked_at_again

    CalendarFeed.objects.update(read_at=DUE - timedelta(hours=48))
    assert judge(mia, occasion="prepare").event is Event.JOURNAL


def test_what_waits_for_the_book_is_too_late_in_the_end(mia: Client) -> None:
    CalendarFeed.objects.create(studio=mia.studio, address="https://c.example/a.ics", read_at=NOW)

    assert judge(mia, START - timedelta(hours=2)) == Verdict(Event.WITHHOLD, reason="too late")


def test_an_introduction_goes_ahead_of_a_reminder_by_text_too(zoe: Client) -> None:
    Consent.objects.create(client=zoe, channel="sms", purpose="visits", given=False, at=NOW, how="by telephone")
    Consent.objects.create(client=zoe, channel="sms", purpose="reminders", given=True, at=NOW, how="by telephone")
    promise(zoe, "opt_in", no_later_than=DUE + timedelta(days=1))

    assert judge(zoe, occasion="opt_in").event is Event.JOURNAL
