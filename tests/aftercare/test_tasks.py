from __future__ import annotations

import socket
import threading
import time
from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from types import SimpleNamespace
from typing import Any, ClassVar

import pytest
from celery import current_app

from aftercare import planning, receiving, tasks, upkeep
from aftercare.core.delivery import Event
from aftercare.models import Fit, Forecast, Heartbeat, Message, Reply
from aftercare.transports import memory
from aftercare.transports.base import Outcome, Outgoing
from studio import clock
from studio.models import Client
from tests.letters import begin, end, make_line, make_message
from tests.people import NOW, make_client, make_studio, make_visit
from tests.readings import make_worn

pytestmark = pytest.mark.django_db


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio(live_since=NOW), email="mia@mail.example")


def test_one_round_reads_plans_and_sends(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    make_visit(mia, status="done", starts_at=NOW - timedelta(minutes=105))
    receiving.receive(line, "mia@mail.example", "my eye is red", received_at=NOW)

    counts = tasks.send_due(now=NOW)

    assert counts == {"handed_over": 2}  # the answer, and her aftercare
    assert [one.address for one in memory.taken] == ["mia@mail.example"] * 2
    assert Reply.objects.get().flag is not None
    assert Heartbeat.objects.get(name="sweep").at <= clock.now()


def test_a_stop_that_came_in_is_read_before_anything_goes(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    make_visit(mia, status="done", starts_at=NOW - timedelta(minutes=105))
    receiving.receive(line, "mia@mail.example", "STOP", received_at=NOW)

    tasks.send_due(now=NOW)

    assert ["no more e-mails" in one.text for one in memory.taken] == [True]
    assert Message.objects.get(occasion="care").state == "withheld"


def test_hours_that_close_while_a_round_still_plans_are_closed(mia: Client, monkeypatch: pytest.MonkeyPatch) -> None:
    make_line(mia.studio, "email")
    moment = datetime.fromisoformat("2027-03-10T01:59:00+00:00")  # 20:59 in New York
    make_visit(mia, status="done", starts_at=moment - timedelta(minutes=110))
    catch_up = upkeep.catch_up

    def slowly(now: datetime, **more: Any) -> Counter[str]:
        nonlocal moment
        found = catch_up(now, **more)
        moment += timedelta(minutes=2)
        return found

    monkeypatch.setattr(upkeep, "catch_up", slowly)
    monkeypatch.setattr(clock, "now", lambda: moment)

    tasks.send_due()

    assert memory.taken == []
    assert Message.objects.get(occasion="care").due_at == datetime.fromisoformat("2027-03-10T13:00:00+00:00")


class Dawdling(memory.Memory):
    """Takes four seconds for each message."""

    gone_by: ClassVar[float] = 0.0

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        Dawdling.gone_by += 4.0 * len(batch)
        return super().send(batch)


def test_a_slow_road_does_not_keep_a_round_from_hearing_what_came_in_meanwhile(
    mia: Client, monkeypatch: pytest.MonkeyPatch
) -> None:
    line = make_line(mia.studio, "email")
    for number in range(6):
        client = make_client(mia.studio, f"Zoe {number}", email=f"zoe{number}@mail.example")
        make_visit(client, status="done", starts_at=NOW - timedelta(minutes=105))
    line.transport, line.options = f"{__name__}.Dawdling", {"window": 1}
    line.save()
    Dawdling.gone_by = 0.0
    monkeypatch.setattr(tasks, "time", SimpleNamespace(monotonic=lambda: Dawdling.gone_by))

    counts = tasks.send_due(now=NOW)

    assert counts["handed_over"] == 3
    assert Message.objects.filter(occasion="care", state="planned", lease_until=None).count() == 3


def test_what_a_dead_sender_left_is_taken_up(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    make_visit(mia, status="done", starts_at=NOW - timedelta(minutes=105))
    planning.catch_up(NOW)
    begin(line)
    Message.objects.filter(occasion="care").update(lease_until=clock.now() - timedelta(seconds=1))

    assert tasks.send_due(now=NOW) == {"handed_over": 1}
    assert Message.objects.get(occasion="care").attempts.count() == 2


def test_a_round_of_one_studio_leaves_the_others_alone(mia: Client) -> None:
    zoe = make_client(make_studio("alder"), "Zoe", email="zoe@mail.example")
    for client in (mia, zoe):
        make_visit(client, status="done", starts_at=NOW - timedelta(minutes=105))

    tasks.send_due(studio_id=zoe.studio_id, now=NOW)

    assert set(Message.objects.values_list("studio_id", flat=True)) == {zoe.studio_id}
    assert not Heartbeat.objects.exists()


def test_a_reminder_that_was_lost_rests_and_says_why(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    make_message(mia, occasion="fill_due", channel="email")
    end(begin(line), Event.LOST, problem="The line dropped.")

    tasks.send_due(now=NOW)

    message = Message.objects.get()
    assert message.state == "unsure"
    assert message.reason.endswith("so that it does not come twice.")


def test_a_round_forecasts_before_it_plans(mia: Client) -> None:
    make_visit(mia, status="done", starts_at=NOW - timedelta(days=1))

    tasks.send_due(now=NOW)

    assert Forecast.objects.get().client == mia
    assert Message.objects.filter(occasion="full_set_due").exists()


def test_by_night_each_studio_is_fitted_and_a_stop_is_heard(mia: Client) -> None:
    make_worn(mia.studio, "Zoe")

    assert tasks.refit(now=NOW, stop=lambda: True) == 0
    assert tasks.refit(now=NOW) == 1
    assert Fit.objects.get().readings == 4
    assert tasks.refit(now=NOW) == 0


def test_the_tasks_have_the_names_that_the_schedule_calls() -> None:
    scheduled = {entry["task"] for entry in current_app.conf.beat_schedule.values()}

    ours = (tasks.send_due_task, tasks.run_imports_task, tasks.poll_feeds_task, tasks.refit_task)
    assert scheduled == {task.name for task in ours}
    assert scheduled <= set(current_app.tasks)


def test_a_task_tolerates_what_a_newer_version_may_send_along() -> None:
    tasks.send_due_task(of_a_newer_version=1)
    tasks.run_imports_task(of_a_newer_version=1)
    tasks.poll_feeds_task(of_a_newer_version=1)
    tasks.refit_task(of_a_newer_version=1)

    assert Heartbeat.objects.filter(name="sweep").exists()


@pytest.fixture
def frozen_broker(settings: pytest.FixtureRequest) -> Iterator[str]:
    """A broker that takes connections and never says a word."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        url = f"redis://127.0.0.1:{server.getsockname()[1]}/0"
        settings.REDIS_URL = url  # type: ignore[attr-defined]  # pytest-django's settings
        before = current_app.conf.broker_write_url
        current_app.conf.broker_write_url = url
        current_app.amqp._producer_pool = None
        yield url
        current_app.conf.broker_write_url = before
        current_app.amqp._producer_pool = None


def test_a_nudge_never_holds_up_a_page(
    frozen_broker: str, django_capture_on_commit_callbacks: pytest.FixtureRequest
) -> None:
    began = time.monotonic()

    with django_capture_on_commit_callbacks(execute=True) as callbacks:  # type: ignore[operator]  # pytest-django's
        for _ in range(5):
            tasks.nudge()

    assert time.monotonic() - began < 0.2
    assert len(callbacks) == 5
    assert sum(thread.name == "nudge" for thread in threading.enumerate()) == 1
    for thread in threading.enumerate():
        if thread.name == "nudge":
            thread.join(10)
            assert not thread.is_alive()


def test_without_a_broker_there_is_nothing_to_nudge(
    django_capture_on_commit_callbacks: pytest.FixtureRequest,
) -> None:
    with django_capture_on_commit_callbacks() as callbacks:  # type: ignore[operator]  # pytest-django's
        tasks.nudge()

    assert callbacks == []
