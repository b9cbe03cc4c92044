"""Settings that would hurt are named, each with the variable that mends it."""

from __future__ import annotations

from typing import Any

import pytest
from django.conf import settings
from django.core.checks import run_checks
from django.test import override_settings

from aftercare.models import Line
from tests.people import make_studio

pytestmark = pytest.mark.django_db  # Django's own checks ask the database

CONSOLE = "aftercare.transports.console.Console"
MEMORY = "aftercare.transports.memory.Memory"


def found(*, deploy: bool = False) -> dict[str, str]:
    messages = run_checks(include_deployment_checks=deploy, databases=["default"])
    return {str(one.id): str(one.hint) for one in messages if str(one.id).startswith("aftercare.")}


def sms(transport: str) -> dict[str, Any]:
    rest = {"TRANSPORT": MEMORY, "OPTIONS": {}}
    return {"SMS": {"TRANSPORT": transport, "OPTIONS": {}}, "EMAIL": rest, "REHEARSAL": rest}


def test_a_fresh_clone_has_nothing_that_would_hurt_it() -> None:
    assert found() == {}


def test_a_transport_that_is_not_there_is_an_error() -> None:
    with override_settings(AFTERCARE=sms("aftercare.transports.nowhere.Nowhere")):
        assert "SMS_TRANSPORT" in found()["aftercare.E001"]


def test_a_bind_that_is_not_there_is_an_error() -> None:
    chosen = sms("aftercare.transports.smpp.Smpp")
    chosen["SMS"]["OPTIONS"] = {"bind": "alpha"}

    with override_settings(AFTERCARE=chosen, AFTERCARE_BINDS={}):
        assert "aftercare.E001" in found()
    with override_settings(AFTERCARE=chosen, AFTERCARE_BINDS={"alpha": {"host": "h", "system_id": "u"}}):
        assert "aftercare.E001" not in found()


@pytest.mark.parametrize("options", [{}, {"timeout": 20, "transaction_mode": "IMMEDIATE"}])
def test_sqlite_without_its_options_is_an_error(options: dict[str, Any], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(settings.DATABASES["default"], "OPTIONS", options)

    assert "DATABASE_URL" in found()["aftercare.E002"]


def test_a_line_that_nobody_can_answer_is_an_error() -> None:
    line = Line.objects.create(studio=make_studio(), channel="sms", address="+15550109999")
    assert "aftercare.E003" not in found()

    line.address = "LashRoom"
    line.save()

    assert "address of the line" in found()["aftercare.E003"]
    line.is_active = False
    line.save()
    assert "aftercare.E003" not in found()


def test_workers_on_sqlite_are_warned_of() -> None:
    with override_settings(REDIS_URL="redis://127.0.0.1:6379/0"):
        assert "DATABASE_URL=postgres" in found()["aftercare.W001"]


@pytest.mark.parametrize(
    ("changed", "check", "variable"),
    [
        ({"AFTERCARE": sms(CONSOLE)}, "aftercare.W002", "SMS_TRANSPORT"),
        ({"EMAIL_BACKEND": "django.core.mail.backends.console.EmailBackend"}, "aftercare.W003", "EMAIL_URL"),
        ({"DEFAULT_FROM_EMAIL": "studio@localhost"}, "aftercare.W004", "DEFAULT_FROM_EMAIL"),
        ({"PUBLIC_URL": "http://127.0.0.1:8000"}, "aftercare.W005", "PUBLIC_URL"),
    ],
)
def test_a_service_on_the_air_is_warned_of_what_reaches_nobody(
    changed: dict[str, Any], check: str, variable: str
) -> None:
    with override_settings(**changed):
        assert variable in found(deploy=True)[check]
