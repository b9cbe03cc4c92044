"""/healthz, for machines."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Any

import pytest
from django.db import OperationalError, connection
from django.test import Client as Browser

from aftercare.models import Heartbeat, Reply
from studio import clock
from tests.cast import Cast
from tests.letters import make_line


def test_it_answers_without_a_sign_in_and_says_how_the_engine_is(cast: Cast) -> None:
    Heartbeat.objects.create(name="sweep", at=clock.now() - timedelta(seconds=20))
    her = cast.client("Mia")
    cast.done(her, cast.at(5))
    cast.plan()
    her.messages.filter(occasion="care").update(due_at=cast.now - timedelta(minutes=5))

    response = Browser().get("/healthz")

    body = response.json()
    assert response.status_code == 200
    assert body["ok"] is True
    assert 20 <= body["sweep_age"] < 50
    assert 300 <= body["oldest_due"] < 360
    assert response.headers["Cache-Control"].startswith("max-age=0")


def test_work_that_nobody_looks_at_is_a_fault_and_says_why(cast: Cast) -> None:
    Heartbeat.objects.create(name="sweep", at=clock.now() - timedelta(seconds=61))
    assert Browser().get("/healthz").status_code == 200, "nothing is due, so nothing is missed"
    cast.done(cast.client("Mia"), cast.at(5))
    cast.plan()
    cast.studio.messages.filter(occasion="care").update(due_at=clock.now() - timedelta(seconds=3))

    response = Browser().get("/healthz")

    assert response.status_code == 503
    assert response.json()["ok"] is False
    [reason] = response.json()["reasons"]
    assert re.match(r"work is due and no sweep looks at it \(the last one ended 6\d s ago; the oldest has", reason)


def test_a_reply_that_nobody_reads_is_work_that_is_due(cast: Cast) -> None:
    her = cast.client("Mia", email="mia@mail.example")
    waits = {"from_address": her.email, "provider_ref": "1", "received_at": clock.now() - timedelta(seconds=30)}
    reply = Reply.objects.create(studio=cast.studio, line=make_line(cast.studio, "email"), **waits)

    before = Browser().get("/healthz")
    Reply.objects.filter(pk=reply.pk).update(received_at=clock.now() - timedelta(seconds=62))
    after = Browser().get("/healthz")

    assert (before.status_code, after.status_code) == (200, 503), "an engine that never swept gets its first minute"
    assert after.json()["reasons"][0].startswith("work is due and no sweep looks at it (none has ever ended;")


def test_before_the_first_sweep_there_is_no_age(cast: Cast) -> None:
    body = Browser().get("/healthz").json()

    assert (body["sweep_age"], body["oldest_due"]) == (None, None)


def test_it_changes_nothing(cast: Cast) -> None:
    assert Browser().post("/healthz").status_code == 405


@pytest.mark.django_db
def test_migrations_that_are_not_applied_are_named(settings: Any) -> None:
    others = dict.fromkeys(("auth", "contenttypes", "studio", "aftercare"))
    settings.MIGRATION_MODULES = {**others, "sessions": "tests.aftercare.views.more_migrations"}

    response = Browser().get("/healthz")

    assert response.status_code == 503
    assert response.json()["reasons"] == [
        "1 migrations are not applied (sessions.0001_never_applied): run manage.py migrate"
    ]


@pytest.mark.django_db
def test_a_database_that_does_not_answer_is_said() -> None:
    def refuse(*_args: object) -> None:
        raise OperationalError("unable to open database file")

    with connection.execute_wrapper(refuse):
        response = Browser().get("/healthz")

    assert response.status_code == 503
    assert response.json()["reasons"] == ["the database does not answer: check DATABASE_URL and whether it runs"]
