"""/healthz, for machines."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.db import OperationalError, connection
from django.test import Client as Browser

from aftercare.models import Heartbeat
from tests.cast import Cast


def test_it_answers_without_a_sign_in_and_says_how_the_engine_is(cast: Cast) -> None:
    Heartbeat.objects.create(name="sweep", at=cast.now - timedelta(seconds=90))
    her = cast.client("Mia")
    cast.done(her, cast.at(5))
    cast.plan()
    her.messages.filter(occasion="care").update(due_at=cast.now - timedelta(minutes=5))

    response = Browser().get("/healthz")

    body = response.json()
    assert response.status_code == 200
    assert body["ok"] is True
    assert 90 <= body["sweep_age"] < 150
    assert 300 <= body["oldest_due"] < 360
    assert response.headers["Cache-Control"].startswith("max-age=0")


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
