from __future__ import annotations

import os
import subprocess
import sys
import threading
from collections import Counter
from datetime import timedelta

import pytest
from django.conf import settings

from aftercare import engine, heartbeats, standby
from aftercare.models import Heartbeat
from aftercare.transports import memory
from studio import clock
from tests.letters import make_line
from tests.people import make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


def test_a_worker_does_a_round_only_where_the_last_one_is_too_long_ago() -> None:
    done = Counter[str]()
    late = timedelta(seconds=20)

    heartbeats.finished("sweep", now=clock.now())
    assert not standby.stand_in("sweep", late, lambda: done.update(["sweep"]))

    Heartbeat.objects.update(at=clock.now() - timedelta(seconds=25))
    assert standby.stand_in("sweep", late, lambda: done.update(["sweep"]))
    assert done == {"sweep": 1}


def test_it_sends_until_nothing_is_left_and_notes_that_it_did() -> None:
    now = clock.now()
    mia = make_client(make_studio(live_since=now), email="mia@mail.example")
    make_line(mia.studio, "email")
    make_visit(mia, status="done", starts_at=now - timedelta(minutes=105))

    assert standby.stand_in("sweep", timedelta(seconds=20), lambda: standby.send_on(threading.Event()))

    assert mia.messages.filter(state="planned", due_at__lte=now).count() == 0
    assert not heartbeats.is_late("sweep", timedelta(seconds=20), now=clock.now())
    assert len(memory.taken) == mia.messages.filter(state="handed_over").count()


def test_what_the_embedded_loop_does_a_worker_looks_after() -> None:
    stop = threading.Event()
    names = {"sweep" if job.name == "send_due" else job.name for job in engine.jobs(stop)} - {"checkpoint"}

    assert {job.name for job in standby.jobs(stop)} == names


def test_what_takes_its_time_to_load_only_a_worker_loads_as_it_starts() -> None:
    said = subprocess.run(
        [
            sys.executable,
            "-c",
            "import sys, django; django.setup()\n"
            "from celery.signals import worker_init\n"
            "from aftercare.standby import USED_BY_ALL\n"
            "print(*(name in sys.modules for name in USED_BY_ALL))\n"
            "worker_init.send(sender=None)\n"
            "print(*(name in sys.modules for name in USED_BY_ALL))",
        ],
        cwd=settings.BASE_DIR,
        env={**os.environ, "DJANGO_SETTINGS_MODULE": "studio.settings"},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    ).stdout

    assert said.splitlines() == ["False False False", "True True True"]
