from __future__ import annotations

import json
import signal
from datetime import timedelta

import pytest
from django.core.management import CommandError, call_command

from aftercare.models import Message
from studio.models import Client
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


@pytest.fixture
def mia() -> Client:
    mia = make_client(make_studio(), email="mia@mail.example")
    make_visit(mia, status="done", starts_at=NOW - timedelta(minutes=105))
    return mia


def send(*args: str) -> None:
    call_command("send_due", *args)


def test_it_prints_one_json_object_on_standard_output_and_progress_beside_it(
    mia: Client, capsys: pytest.CaptureFixture[str]
) -> None:
    send("--studio=birch", f"--now={NOW.isoformat()}")

    out, err = capsys.readouterr()
    assert json.loads(out) == {
        "handed_over": 1,
        "planned": 0,
        "withheld": 0,
        "withdrawn": 0,
        "undelivered": 0,
        "unsure": 0,
    }
    assert "in rehearsal" in err
    assert Message.objects.get(occasion="care").state == "handed_over"


def test_with_nothing_due_it_prints_zeros(mia: Client, capsys: pytest.CaptureFixture[str]) -> None:
    send("--studio=birch", "--now=2027-03-09T14:59:59Z")

    assert set(json.loads(capsys.readouterr().out).values()) == {0}


def test_the_same_moment_twice_sends_nothing_twice(mia: Client, capsys: pytest.CaptureFixture[str]) -> None:
    for _ in range(2):
        send("--studio=birch", f"--now={NOW.isoformat()}")

    first, second = (json.loads(line) for line in capsys.readouterr().out.splitlines())
    assert (first["handed_over"], second["handed_over"]) == (1, 0)


def test_an_unknown_studio_is_named_with_those_there_are(mia: Client, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(CommandError, match=r"--studio: there is no studio “elm”. Known here: birch."):
        send("--studio=elm")

    assert set(json.loads(capsys.readouterr().out).values()) == {0}  # the promised object is printed all the same


@pytest.mark.parametrize("now", ["soon", "2027-03-09T15:00:00", "09/03/2027"])
def test_what_is_no_moment_is_named_with_the_cure(mia: Client, now: str) -> None:
    with pytest.raises(CommandError, match="--now: .*Z"):
        send("--studio=birch", f"--now={now}")

    assert not Message.objects.exists()


def test_it_leaves_the_signals_as_they_were(mia: Client) -> None:
    before = signal.getsignal(signal.SIGTERM)

    send("--studio=birch")

    assert signal.getsignal(signal.SIGTERM) is before
