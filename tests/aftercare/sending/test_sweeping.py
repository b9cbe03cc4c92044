"""From what is due to what was handed over, on rows and on what the memory transport was given."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime, time, timedelta
from email import message_from_bytes
from pathlib import Path
from time import monotonic
from types import SimpleNamespace
from typing import Any

import pytest
from django.db import OperationalError, transaction
from django.test import Client as Browser

from aftercare import outbox, planning, sending, stops, unsubscribing
from aftercare.core.delivery import Event
from aftercare.models import Attempt, Line, Message, RoadHealth, Stop, Wording
from aftercare.outbox import limits
from aftercare.sending import absence, health, journaling, judging, sweeping, windows
from aftercare.sending.health import Health
from aftercare.sending.judging import Judge
from aftercare.transports import memory
from aftercare.transports.base import Outcome, Outgoing, TransportError
from studio import clock
from studio.models import Client, Consent, Staff, Studio, Visit
from tests import servers
from tests.letters import MEMORY, make_line, make_message
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db
SMTP = "django.core.mail.backends.smtp.EmailBackend"
FORM = "application/x-www-form-urlencoded"
MINUTE, HOUR = timedelta(minutes=1), timedelta(hours=1)


@pytest.fixture
def studio() -> Studio:
    """A live studio whose lines end in this process's memory."""
    studio = make_studio(live_since=NOW - timedelta(days=30))
    make_line(studio, "sms")
    make_line(studio, "email")
    return studio


def agreed(client: Client, channel: str = "sms", given: bool = True) -> Client:
    Consent.objects.create(client=client, channel=channel, purpose="visits", given=given, at=NOW, how="on paper")
    return client


@pytest.fixture
def mia(studio: Studio) -> Client:
    return agreed(make_client(studio, mobile="+12125550101", email="mia@mail.example"))


def cared_for(client: Client, end: datetime = NOW - 30 * MINUTE) -> Visit:
    """Plan a done fill whose aftercare is due half an hour after ``end``."""
    visit = make_visit(client, status="done", starts_at=end - 75 * MINUTE)
    planning.plan_studio(client.studio, NOW)
    return visit


def care(name: str = "Mia") -> Message:
    return Message.objects.get(occasion="care", client__first_name=name)


def test_what_is_due_reaches_her_in_the_studios_name(mia: Client) -> None:
    cared_for(mia)

    counts = sending.sweep(NOW)

    message = care()
    assert counts == {"handed_over": 2}  # the introduction goes ahead
    assert (message.state, message.handed_over_at, message.address) == ("handed_over", NOW, "+12125550101")
    assert memory.taken[-1].text == message.text
    assert memory.taken[-1].sender == "+12125550199"
    assert "Birch Lane" in message.text
    assert message.attempts.get().provider_ref == f"memory-{memory.taken[-1].reference}"


def test_nothing_is_sent_before_it_is_due(mia: Client) -> None:
    cared_for(mia)

    assert sending.sweep(NOW - timedelta(seconds=1)) == {}
    assert memory.taken == []


def test_a_second_sweep_sends_nothing_twice(mia: Client) -> None:
    cared_for(mia)

    sending.sweep(NOW)
    assert sending.sweep(NOW + MINUTE) == {}
    assert len(memory.taken) == 2


def test_an_email_carries_the_studios_name_and_a_subject(studio: Studio) -> None:
    cared_for(make_client(studio, email="mia@mail.example"))

    assert sending.sweep(NOW) == {"handed_over": 1}

    [outgoing] = memory.taken
    assert (outgoing.channel, outgoing.address) == ("email", "mia@mail.example")
    assert (outgoing.sender, outgoing.sender_name) == ("hello@birch.example", "Birch Lane")
    assert outgoing.subject == care().subject != ""


# The way out of e-mails (RFC 8058), and what is said to machines (RFC 3834)


def test_every_email_to_a_client_carries_her_own_way_out(studio: Studio, settings: Any) -> None:
    settings.PUBLIC_URL = "https://aftercare.example"
    cared_for(make_client(studio, email="Mia@mail.example"))

    sending.sweep(NOW)

    [outgoing] = memory.taken
    link = outgoing.headers["List-Unsubscribe"].strip("<>")
    assert outgoing.headers["List-Unsubscribe-Post"] == "List-Unsubscribe=One-Click"
    found = unsubscribing.read(link.removeprefix("https://aftercare.example/unsubscribe/"))
    assert found == (studio.lines.get(channel="email"), "mia@mail.example")


def test_a_text_carries_no_headers(mia: Client) -> None:
    cared_for(mia)

    sending.sweep(NOW)

    assert [dict(one.headers) for one in memory.taken] == [{}, {}]


def test_the_way_out_leads_out_over_the_wire(studio: Studio, settings: Any, tmp_path: Path) -> None:
    settings.PUBLIC_URL, settings.STATIC_ROOT = "https://aftercare.example", tmp_path
    settings.ALLOWED_HOSTS = ["aftercare.example"]
    cared_for(make_client(studio, email=f"{'mia.' * 15}lash@mail.example"))
    with servers.smtp(tmp_path) as server:
        smtp = {"backend": SMTP, "host": "127.0.0.1", "port": server.port, "timeout": 10}
        Line.objects.filter(channel="email").update(transport="aftercare.transports.email.Email", options=smtp)
        assert sending.sweep(NOW) == {"handed_over": 1}
        newest = server.newest

    arrived = message_from_bytes(newest)  # Python's parser, with folded lines as they came
    link = "".join(arrived["List-Unsubscribe"].split())
    Browser(SERVER_NAME="aftercare.example").post(
        link.strip("<>"), arrived["List-Unsubscribe-Post"], secure=True, content_type=FORM
    )

    assert max(map(len, newest.splitlines())) <= 998  # RFC 5322, 2.1.1
    assert arrived["Auto-Submitted"] == "auto-generated"
    assert Stop.objects.get().address == care().address


def test_her_click_while_others_are_in_flight_holds_what_is_claimed(studio: Studio) -> None:
    line = studio.lines.get(channel="email")
    two_windows(studio, lambda: stops.unsubscribe(line, "ZOE@mail.example", now=NOW))

    assert sending.sweep(NOW) == {"handed_over": 1}
    planning.catch_up(NOW)
    assert sending.sweep(NOW) == {}

    assert care("Zoe").state == "withheld"
    assert [one.address for one in memory.taken] == ["mia@mail.example"]


def test_an_answer_says_that_a_machine_replied_and_a_page_to_staff_has_no_way_out(studio: Studio) -> None:
    ada, line = make_staff(studio, email="ada@mail.example"), studio.lines.get(channel="email")
    answer = Message(studio=studio, key="reply:1:answer:help", occasion="answer", kind="help", line=line)
    page = Message(studio=studio, key="flag:1:alert:1", occasion="alert", staff=ada)
    for message, address in ((answer, "mia@mail.example"), (page, "ada@mail.example")):
        message.channel, message.address, message.due_at, message.planned_from = "email", address, NOW, NOW
    outbox.promise([answer, page])

    sending.sweep(NOW)

    found = {one.address: one.headers for one in memory.taken}
    assert found["mia@mail.example"]["Auto-Submitted"] == "auto-replied"
    assert "List-Unsubscribe" in found["mia@mail.example"]
    assert dict(found["ada@mail.example"]) == {}


# Judged anew


def test_one_that_was_overdue_through_the_night_waits_for_the_morning(mia: Client) -> None:
    cared_for(mia)
    night = datetime.fromisoformat("2027-03-10T03:00:00+00:00")  # 22:00 in New York

    assert sending.sweep(night) == {"planned": 1}

    assert care().due_at == datetime.fromisoformat("2027-03-10T13:00:00+00:00")  # 08:00
    assert memory.taken == []


def test_one_that_comes_too_late_is_withheld_and_says_so(mia: Client) -> None:
    cared_for(mia)

    sending.sweep(NOW + timedelta(days=2))

    assert (care().state, care().reason) == ("withheld", "too late")


def test_consent_that_was_withdrawn_is_seen_though_nobody_planned_anew(studio: Studio) -> None:
    zoe = agreed(make_client(studio, "Zoe", mobile="+12125550102"))
    cared_for(zoe)
    agreed(zoe, given=False)

    assert sending.sweep(NOW) == {"withheld": 1}
    assert care("Zoe").reason == "no consent"
    assert memory.taken == []


def test_a_visit_that_is_gone_takes_its_message_along(mia: Client) -> None:
    cared_for(mia)
    Visit.objects.update(status="cancelled")

    assert sending.sweep(NOW) == {"withdrawn": 1}
    assert memory.taken == []


def test_after_a_stop_nothing_goes_by_that_line(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    Stop.objects.create(line=studio.lines.get(channel="sms"), address="+12125550101", at=NOW)

    sending.sweep(NOW)

    assert [one.channel for one in memory.taken] == ["email"]
    assert memory.taken[0].address == "mia@mail.example"


class Interrupting(memory.Memory):
    """Lets something happen elsewhere while the first window is in flight."""

    happening: Any = None

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        if Interrupting.happening:
            Interrupting.happening()
            Interrupting.happening = None
        return super().send(batch)


def two_windows(studio: Studio, happening: Any) -> None:
    """Two clients whose e-mails go one after the other; ``happening`` is called while the first is in flight."""
    for number, name in enumerate(("Mia", "Zoe")):
        client = make_client(studio, name, email=f"{name.lower()}@mail.example")
        cared_for(client, NOW - (31 - number) * MINUTE)
    Line.objects.filter(channel="email").update(transport=f"{__name__}.Interrupting", options={"window": 1})
    Interrupting.happening = happening


def test_a_stop_while_others_are_in_flight_holds_what_is_claimed(studio: Studio) -> None:
    line = studio.lines.get(channel="email")
    stop = Stop(line=line, address="zoe@mail.example", at=NOW)
    two_windows(studio, stop.save)

    assert sending.sweep(NOW) == {"handed_over": 1, "withheld": 1}

    assert [one.address for one in memory.taken] == ["mia@mail.example"]


def test_what_would_leave_after_its_hours_have_closed_waits_for_the_morning(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    evening = datetime.fromisoformat("2027-03-10T01:59:30+00:00")  # 20:59:30 in New York
    gone_by = 0.0

    def slowly() -> None:
        nonlocal gone_by
        gone_by = 30.0

    two_windows(studio, slowly)
    monkeypatch.setattr(windows, "time", SimpleNamespace(monotonic=lambda: monotonic() + gone_by))

    assert sending.sweep(evening) == {"handed_over": 1, "planned": 1}
    assert sending.sweep(evening + timedelta(seconds=31)) == {"planned": 1}

    assert [one.address for one in memory.taken] == ["mia@mail.example"]
    assert care("Zoe").due_at == datetime.fromisoformat("2027-03-10T13:00:00+00:00")  # 08:00


def test_going_back_to_rehearsal_holds_what_is_claimed(studio: Studio) -> None:
    two_windows(studio, lambda: planning.go_back(studio))

    assert sending.sweep(NOW) == {"handed_over": 2}

    assert [one.address for one in memory.taken] == ["mia@mail.example"]
    assert [care("Mia").rehearsed, care("Zoe").rehearsed] == [False, True]


def test_a_record_that_changed_while_others_were_in_flight_is_planned_before_it_goes(studio: Studio) -> None:
    two_windows(studio, lambda: Client.objects.filter(first_name="Zoe").update(revision=99))

    assert sending.sweep(NOW) == {"handed_over": 1}
    assert care("Zoe").state == "planned"

    planning.catch_up(NOW)
    assert sending.sweep(NOW) == {"handed_over": 1}


def test_what_was_planned_anew_meanwhile_is_no_longer_the_senders(studio: Studio) -> None:
    def move() -> None:
        message = care("Zoe")
        message.state, message.due_at = "planned", NOW + HOUR
        outbox.replan([message])

    two_windows(studio, move)

    assert sending.sweep(NOW) == {"handed_over": 1}
    assert care("Zoe").due_at == NOW + HOUR


# Rehearsal


def test_a_studio_in_rehearsal_reaches_nobody_whatever_its_lines(studio: Studio, mia: Client) -> None:
    planning.go_back(studio)
    cared_for(mia)

    assert sending.sweep(NOW) == {"handed_over": 2}

    assert memory.taken == []
    assert care().rehearsed
    assert care().attempts.get().provider == "phone"


# Introductions


def test_the_first_text_to_a_number_is_introduced(mia: Client) -> None:
    cared_for(mia)

    sending.sweep(NOW)

    first, second = memory.taken
    assert "HELP" in first.text
    assert second.text == care().text
    introduction = Message.objects.get(occasion="opt_in")
    line = Line.objects.get(channel="sms")
    assert introduction.key == f"number:{line.pk}:+12125550101:opt_in:1"
    assert (introduction.state, introduction.text, introduction.client) == ("handed_over", first.text, mia)


def test_a_number_is_introduced_once(mia: Client) -> None:
    cared_for(mia)
    sending.sweep(NOW)

    planning.catch_up(NOW)
    Message.objects.filter(occasion="check").update(due_at=NOW + timedelta(days=2))
    sending.sweep(NOW + timedelta(days=1, hours=23))
    sending.sweep(NOW + timedelta(days=2))

    assert Message.objects.filter(occasion="opt_in").count() == 1
    assert Message.objects.get(occasion="check", step=1).state == "handed_over"


def test_clients_who_share_a_number_are_introduced_once(studio: Studio, mia: Client) -> None:
    sister = agreed(make_client(studio, "Ines", mobile="+12125550101"))
    for client in (mia, sister):
        cared_for(client)

    assert sending.sweep(NOW) == {"handed_over": 3}

    assert Message.objects.filter(occasion="opt_in").count() == 1
    assert [("HELP" in one.text) for one in memory.taken] == [True, False, False]


def test_an_email_needs_no_introduction(studio: Studio) -> None:
    cared_for(make_client(studio, email="mia@mail.example"))

    sending.sweep(NOW)

    assert not Message.objects.filter(occasion="opt_in").exists()


def test_a_rehearsed_introduction_does_not_count_once_live(studio: Studio, mia: Client) -> None:
    planning.go_back(studio)
    cared_for(mia)
    sending.sweep(NOW)
    planning.go_live(studio, NOW)
    later = NOW + timedelta(days=1)
    cared_for(mia, later - 30 * MINUTE)

    sending.sweep(later)

    assert list(Message.objects.filter(occasion="opt_in").order_by("edition").values_list("edition", "rehearsed")) == [
        (1, True),
        (2, False),
    ]
    assert len(memory.taken) == 2


def test_while_the_introduction_cannot_leave_nothing_goes_ahead_of_it(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    studio.lines.filter(channel="sms").update(options={"busy": ["+12125550101"]})

    sending.sweep(NOW)

    introduction = Message.objects.get(occasion="opt_in")
    assert (introduction.state, introduction.tries) == ("planned", 1)
    assert (care().state, care().tries, care().due_at) == ("planned", 0, introduction.due_at)
    studio.lines.filter(channel="sms").update(options={})
    assert introduction.due_at is not None
    assert sending.sweep(introduction.due_at) == {"handed_over": 2}
    assert ["HELP" in one.text for one in memory.taken] == [True, False]


def test_an_introduction_that_is_to_wait_does_so_though_another_text_to_its_number_is_due(
    studio: Studio, mia: Client
) -> None:
    cared_for(mia)
    studio.lines.filter(channel="sms").update(options={"busy": ["+12125550101"]})
    sending.sweep(NOW)
    introduction = Message.objects.get(occasion="opt_in")
    studio.lines.filter(channel="sms").update(options={})
    Message.objects.filter(occasion="care").update(due_at=NOW)  # as where another worker found it being handed over

    assert sending.sweep(NOW + timedelta(seconds=3)) == {"planned": 1}

    assert memory.taken == []
    assert Message.objects.get(occasion="opt_in").due_at == introduction.due_at == care().due_at


def test_while_another_sender_has_the_introduction_nothing_goes_ahead_of_it(mia: Client) -> None:
    cared_for(mia)
    sending.sweep(NOW)
    Message.objects.filter(occasion="opt_in").update(state="handing_over")
    Message.objects.filter(occasion="care").update(state="planned", lease_until=None)
    memory.taken.clear()

    sending.sweep(NOW)

    assert memory.taken == []
    assert care().due_at == NOW + timedelta(seconds=10)


def test_an_introduction_that_was_refused_does_not_hold_the_rest_for_ever(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    studio.lines.filter(channel="sms").update(options={"refuse": ["+12125550101"]})

    sending.sweep(NOW)

    assert Message.objects.get(occasion="opt_in").state == "undelivered"
    assert care().attempts.filter(outcome="undelivered").count() == 1
    assert [one.channel for one in memory.taken] == ["email"]  # her aftercare went by the other channel


# What can go wrong


def test_what_is_refused_falls_back_to_the_other_channel_and_goes_at_once(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    studio.lines.filter(channel="sms").update(options={"refuse": ["+12125550101"]})

    sending.sweep(NOW)

    message = care()
    assert (message.state, message.channel, message.fell_back) == ("handed_over", "email", True)
    assert [attempt.line.channel for attempt in message.attempts.order_by("number")] == ["sms", "email"]


def test_one_bad_address_does_not_hurt_the_others(studio: Studio) -> None:
    for name in ("Mia", "Zoe", "Ines"):
        cared_for(make_client(studio, name, email=f"{name.lower()}@mail.example"))
    studio.lines.filter(channel="email").update(options={"refuse": ["zoe@mail.example"]})

    assert sending.sweep(NOW) == {"handed_over": 2, "undelivered": 1}


def test_a_wording_that_cannot_be_filled_in_holds_no_aftercare_back(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    other = agreed(make_client(make_studio("alder", live_since=NOW), "Zoe", mobile="+12125550103"))
    make_line(other.studio)
    cared_for(other)
    broken = {"occasion": "care", "kind": "", "step": 0, "channel": "sms", "language": "en", "body": "{{ nonsense }}"}
    slots = [broken, {**broken, "kind": "fill"}]
    Wording.objects.bulk_create(Wording(studio=studio, version=1, at=NOW, **slot) for slot in slots)

    sending.sweep(NOW)

    hers = care()
    assert hers.state == care("Zoe").state == "handed_over"
    assert "rinse 20 min" in hers.text  # the first wording


def test_a_line_whose_transport_does_not_exist_holds_its_messages_and_says_so(studio: Studio, mia: Client) -> None:
    cared_for(mia)
    studio.lines.filter(channel="sms").update(transport="nowhere.Nothing")

    assert sending.sweep(NOW) == {"planned": 1}
    assert "nowhere" in care().reason


class Crashing(memory.Memory):
    """Takes the first, then fails as a defect would."""

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        yield from super().send(batch[:1])
        raise RuntimeError("a defect")


class Away(memory.Memory):
    """Says before the first byte that nothing can be sent."""

    tried = 0

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        Away.tried += 1
        raise TransportError("The provider cannot be reached.")
        yield


def many(studio: Studio, number: int, transport: str, **options: Any) -> None:
    for index in range(number):
        make_visit(
            make_client(studio, f"Mia {index}", email=f"mia{index}@mail.example"),
            status="done",
            starts_at=NOW - 105 * MINUTE,
        )
    planning.plan_studio(studio, NOW)
    studio.lines.filter(channel="email").update(transport=transport, options=options)


def test_a_transport_that_fails_in_the_middle_leaves_the_others_unsure(studio: Studio) -> None:
    many(studio, 3, f"{__name__}.Crashing")

    assert sending.sweep(NOW) == {"handed_over": 1, "unsure": 2}


def test_a_provider_that_is_away_is_not_asked_for_each_message(studio: Studio) -> None:
    Away.tried = 0
    many(studio, 20, f"{__name__}.Away", window=1)

    assert sending.sweep(NOW) == {"planned": 20}

    assert Away.tried == 5
    assert Message.objects.filter(tries=1).count() == 5
    assert set(Message.objects.filter(tries=0, occasion="care").values_list("due_at", flat=True)) == {
        NOW + health.SHORTEST_REST
    }
    assert Attempt.objects.filter(problem="The provider cannot be reached.").count() == 5


class Keyed(memory.Memory):
    """Loses whatever comes first, and knows a key for an hour."""

    key_lifetime = 3600
    keys: list[str] = []

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for one in batch:
            Keyed.keys.append(one.key)
            event = Event.LOST if len(Keyed.keys) == 1 else Event.TAKEN
            yield Outcome(reference=one.reference, event=event)


def test_instructions_whose_answer_was_lost_go_again_under_the_same_key(studio: Studio) -> None:
    Keyed.keys = []
    zoe = make_client(studio, "Zoe", email="zoe@mail.example")
    make_visit(zoe, service="removal", starts_at=NOW + timedelta(days=2))
    planning.plan_studio(studio, NOW)
    studio.lines.filter(channel="email").update(transport=f"{__name__}.Keyed", options={})
    assert sending.sweep(NOW) == {"unsure": 1}

    outbox.resolve_unsure(NOW)

    assert sending.sweep(NOW + MINUTE) == {"handed_over": 1}
    assert Keyed.keys[0] == Keyed.keys[1] != ""


class Nobody(memory.Memory):
    """Nobody has that address."""

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for one in batch:
            yield Outcome(reference=one.reference, event=Event.REFUSED, problem="550 5.1.1", bad_address=True)


def test_an_address_that_nobody_has_rests(studio: Studio) -> None:
    many(studio, 1, f"{__name__}.Nobody")

    assert sending.sweep(NOW) == {"undelivered": 1}

    stop = Stop.objects.get()
    assert (stop.why, stop.words) == (Stop.Why.BOUNCED, "550 5.1.1")


def test_what_was_heard_is_written_though_it_cannot_be_written_how_the_road_fares(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_args: Any, **_more: Any) -> None:
        raise OperationalError("database or disk is full")

    many(studio, 3, f"{__name__}.Away", window=1)
    monkeypatch.setattr(RoadHealth.objects, "update_or_create", fail)

    assert sending.sweep(NOW) == {"planned": 3}
    assert not Message.objects.filter(state="handing_over").exists()


def test_what_was_heard_is_written_before_the_rest_is_put_back(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(_judge: Judge, messages: Iterable[Message]) -> None:
        if list(messages):
            raise OperationalError("database or disk is full")

    many(studio, 8, f"{__name__}.Away", window=1)
    monkeypatch.setattr(Judge, "put_back", fail)

    with pytest.raises(OperationalError):
        sending.sweep(NOW)

    assert Message.objects.filter(tries=1, state="planned").count() == health.FAILING
    assert not Message.objects.filter(state="handing_over").exists()


@pytest.mark.django_db(transaction=True)  # after a failure a connection is looked at, and may end
def test_what_was_journaled_without_our_being_told_goes_again_as_it_has_not_left(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    failures = iter([True])

    @contextmanager
    def and_the_line_is_lost() -> Iterator[None]:
        with transaction.atomic():
            yield
        if next(failures, False):
            raise OperationalError("the line was lost after the commit")

    many(studio, 2, f"{__name__}.Away", window=2)
    monkeypatch.setattr(journaling, "transaction", SimpleNamespace(atomic=and_the_line_is_lost))

    with pytest.raises(OperationalError):
        sending.sweep(NOW)

    waiting = Message.objects.filter(occasion="care")
    assert list(waiting.values_list("state", "tries", "lease_until")) == [("planned", 1, None)] * 2


@pytest.mark.django_db(transaction=True)  # after a failure a connection is looked at, and may end
def test_what_was_heard_waits_for_a_database_that_is_away_for_half_a_minute(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    gone_by = 0.0

    def sleep(seconds: float) -> None:
        nonlocal gone_by
        gone_by += seconds

    settle = outbox.settle

    def fail(*given: Any) -> Any:
        if given[0] and gone_by < 29:
            raise OperationalError("away")
        return settle(*given)

    many(studio, 1, MEMORY)
    monkeypatch.setattr(absence, "time", SimpleNamespace(monotonic=lambda: gone_by + 1, sleep=sleep))
    monkeypatch.setattr(outbox, "settle", fail)

    with pytest.raises(OperationalError):
        sending.sweep(NOW)

    assert care("Mia 0").state == "handed_over"


def test_what_safety_hangs_on_takes_the_other_channel_where_a_carrier_is_away_for_long(mia: Client) -> None:
    cared_for(mia)
    mia.studio.lines.filter(channel="sms").update(transport=f"{__name__}.Away", options={"window": 1})
    RoadHealth.objects.create(
        account="memory", failed=9, failing_since=clock.now() - HOUR, rests_until=clock.now() + HOUR
    )
    Away.tried = 0

    sending.sweep(NOW)
    assert (care().state, care().channel, care().reason) == ("planned", "email", judging.DETOUR)
    RoadHealth.objects.all().delete()  # the mail's road has another account than the carrier's in earnest
    sending.sweep(NOW + MINUTE)

    assert (care().state, care().address) == ("handed_over", "mia@mail.example")
    assert Away.tried == 0


def test_a_road_that_rests_is_tried_with_what_cannot_wait(mia: Client) -> None:
    RoadHealth.objects.create(account="memory", failed=9, failing_since=clock.now(), rests_until=clock.now() + HOUR)
    make_message(mia, occasion="answer", kind="help", address="+12125550101", line=mia.studio.lines.get(channel="sms"))

    assert sending.sweep(NOW) == {"handed_over": 1}
    assert not Health.of("memory").rests


def test_the_owners_limit_a_day_holds_instructions_until_tomorrow(studio: Studio) -> None:
    studio.lines.filter(channel="sms").update(most_a_day=1)
    zoe = agreed(make_client(studio, "Zoe", mobile="+12125550103"))
    make_visit(zoe, service="removal", starts_at=NOW + timedelta(days=2))
    planning.plan_studio(studio, NOW)

    sending.sweep(NOW)

    prepare = Message.objects.get(occasion="prepare")
    assert (prepare.state, prepare.reason) == ("planned", journaling.DAY_LIMIT)
    assert prepare.due_at == datetime.combine(NOW.astimezone(studio.zone).date(), time(), studio.zone) + timedelta(
        days=1
    )


def test_so_many_a_second_leave_and_no_more(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    waits: list[float] = []
    monkeypatch.setattr("time.sleep", waits.append)
    monkeypatch.setattr("studio.clock.now", lambda: NOW)  # no second passes: the waits alone tell the turns
    studio.lines.filter(channel="sms").update(most_a_second=2)
    for index in range(8):
        client = agreed(make_client(studio, f"Mia {index}", mobile=f"+1212555010{index}"))
        make_visit(client, service="removal", starts_at=NOW + timedelta(days=2))
        make_message(client, occasion="opt_in", line=studio.lines.get(channel="sms"), address=client.mobile)
    Message.objects.update(state="delivered")  # all of them were introduced before
    planning.plan_studio(studio, NOW)

    counts = sending.sweep(NOW)

    # Two at once, two a second later, two more after another: then their turn is later than a sweep waits.
    assert [round(wait) for wait in waits] == [0, 1, 2]
    assert counts["handed_over"] == 6
    late = Message.objects.filter(occasion="prepare", state="planned")
    assert late.count() == counts["planned"] == 2
    assert RoadHealth.objects.filter(account__startswith="line:").count() == 1


def test_a_sweep_that_is_asked_to_stop_lets_go_of_what_it_had_claimed(studio: Studio) -> None:
    many(studio, 5, MEMORY, window=1)
    asked = iter([False, False, False, True, True, True])

    counts = sending.sweep(NOW, stop=lambda: next(asked))

    assert counts == {"handed_over": 2}
    assert Message.objects.filter(state="planned", occasion="care", lease_until=None).count() == 3


def test_more_than_one_batch_is_sent_in_one_sweep(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    many(studio, 7, MEMORY)
    monkeypatch.setattr(sweeping, "BATCH", 3)

    assert sending.sweep(NOW) == {"handed_over": 7}


def test_one_studio_can_be_swept_alone(studio: Studio, mia: Client) -> None:
    other = make_client(make_studio("alder", live_since=NOW), "Zoe", email="zoe@mail.example")
    cared_for(mia)
    cared_for(other)

    sending.sweep(NOW, studio_id=studio.pk)

    assert care("Zoe").state == "planned"


@pytest.mark.parametrize(
    ("kind", "goes"), [("stopped", True), ("stopped_with_sign", True), ("breathing", True), ("same_day", False)]
)
def test_after_a_stop_its_confirmation_and_emergency_answers_go_alone(studio: Studio, kind: str, goes: bool) -> None:
    line = studio.lines.get(channel="sms")
    Stop.objects.create(line=line, address="+12125550101", at=NOW)
    answer = Message(
        studio=studio, key=f"reply:1:answer:{kind}", occasion="answer", kind=kind, channel="sms", line=line
    )
    answer.address, answer.due_at, answer.planned_from = "+12125550101", NOW, NOW
    outbox.promise([answer])

    assert sending.sweep(NOW) == ({"handed_over": 1} if goes else {"withheld": 1})


def page_of(studio: Studio, staff: Staff, at: datetime) -> Message:
    page = Message(studio=studio, staff=staff, key="flag:1:alert:1", occasion="alert", channel="sms", due_at=at)
    page.address, page.planned_from = staff.mobile, at
    outbox.promise([page])
    return page


def test_a_page_to_staff_goes_at_any_hour(studio: Studio) -> None:
    ada = make_staff(studio, mobile="+12125550111")
    night = NOW + 12 * HOUR
    page_of(studio, ada, night)

    assert sending.sweep(night) == {"handed_over": 1}
    assert [one.address for one in memory.taken] == ["+12125550111"]


@pytest.mark.parametrize(("email", "goes"), [("ada@mail.example", ["ada@mail.example"]), ("", [])])
def test_a_page_never_goes_past_a_stop_but_takes_another_road(studio: Studio, email: str, goes: list[str]) -> None:
    ada = make_staff(studio, mobile="+12125550111", email=email)
    Stop.objects.create(line=studio.lines.get(channel="sms"), address="+12125550111", at=NOW)
    page_of(studio, ada, NOW)

    assert sending.sweep(NOW) == ({"handed_over": 1} if goes else {"withheld": 1})
    assert [one.address for one in memory.taken] == goes


def test_a_page_leaves_before_the_introductions_of_others(studio: Studio) -> None:
    for number in range(3):
        cared_for(agreed(make_client(studio, f"Mia {number}", mobile=f"+1212555011{number}")))
    ada = make_staff(studio, mobile="+12125550102")
    facts: dict[str, Any] = {"channel": "sms", "address": ada.mobile, "due_at": NOW, "planned_from": NOW}
    outbox.promise([Message(studio=studio, staff=ada, key="page", occasion="alert", kind="unmarked", **facts)])

    sending.sweep(NOW)

    assert [one.address for one in memory.taken][:1] == [ada.mobile]
    assert len(memory.taken) == 7


def test_what_was_not_taken_is_not_counted_on_the_days_limit(studio: Studio, mia: Client) -> None:
    """A carrier that is away for an hour would use the day up without one text having left."""
    make_visit(mia, service="removal", starts_at=NOW + timedelta(days=2))
    make_message(mia, occasion="opt_in", line=studio.lines.get(channel="sms"), address=mia.mobile)
    Message.objects.update(state="delivered")  # she was introduced before
    planning.plan_studio(studio, NOW)
    line = studio.lines.get(channel="sms")
    line.most_a_day, line.options = 3, {"busy": [mia.mobile]}
    line.save()

    for tried in range(4):
        Message.objects.filter(occasion="prepare", state="planned", step=0).update(due_at=NOW)
        sending.sweep(NOW + tried * MINUTE)

    assert Message.objects.get(occasion="prepare", step=0).tries == 4
    assert limits.spent_today(line, NOW) == 0
    line.options = {}
    line.save()
    Message.objects.filter(occasion="prepare", state="planned", step=0).update(due_at=NOW)
    sending.sweep(NOW + 5 * MINUTE)
    assert limits.spent_today(line, NOW) > 0


def test_an_answer_that_was_lost_waits_for_no_receipt_longer_than_a_minute(studio: Studio, mia: Client) -> None:
    """What to do at once is better heard twice than after ten minutes; what else is lost has the time."""
    line = studio.lines.get(channel="sms")
    line.options = {"lose": [mia.mobile], "receipt_wait": 600}
    line.save()
    make_message(mia, occasion="answer", kind="help", address=mia.mobile, line=line)
    cared_for(mia)
    began = clock.now()

    sending.sweep(NOW)

    waits = {
        message.occasion: message.lease_until - began
        for message in Message.objects.filter(state="unsure")
        if message.lease_until is not None
    }
    assert waits["answer"] <= MINUTE * 1.1
    assert waits["opt_in"] > 9 * MINUTE


@pytest.mark.parametrize(
    "wrong", [{"transport": "aftercare.transports.memory"}, {"transport": MEMORY, "options": ["lose"]}]
)
def test_a_line_that_is_written_wrongly_holds_up_no_other_studio(
    studio: Studio, mia: Client, wrong: dict[str, Any]
) -> None:
    other = make_studio("alder", live_since=NOW - timedelta(days=30))
    make_line(other)
    other.lines.update(**wrong)
    hers = agreed(make_client(other, "Zoe", mobile="+12125550103"))
    cared_for(hers)
    cared_for(mia)

    sending.sweep(NOW)

    assert care().state == "handed_over"
    assert care("Zoe").state == "planned"
    assert f"line {other.lines.get(channel='sms').pk} cannot be used" in care("Zoe").reason
