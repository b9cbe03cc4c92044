"""A provider's call, up to what is kept of it."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from django.db import OperationalError, connection
from django.test import Client as Browser
from pytest_django import DjangoAssertNumQueries, Settings

from aftercare import lines, webhooks
from aftercare.models import StoredCallback
from tests import hooks, servers
from tests.pages import quiet_static
from tests.people import make_studio

__all__ = ["quiet_static"]
pytestmark = pytest.mark.django_db
RECEIPT = {"id": "SM1", "state": "DELIVRD"}


@pytest.fixture(autouse=True)
def lines_anew() -> Iterator[None]:
    """A line of the test before may have had the same key."""
    webhooks.forget()
    yield
    webhooks.forget()


def test_a_call_is_kept_as_it_came() -> None:
    line = hooks.make_line(make_studio())

    assert hooks.call(line.pk, RECEIPT, query="?ref=ours-1") == 200

    [stored] = StoredCallback.objects.all()
    assert stored.line == line
    assert stored.url == f"{lines.callback_address(line.pk)}/?ref=ours-1"
    assert bytes(stored.body) == b'{"id": "SM1", "state": "DELIVRD"}'
    assert stored.headers["content-type"] == "application/json"
    assert stored.digest == hashlib.sha256(f"{stored.url}\n".encode() + bytes(stored.body)).hexdigest()
    assert (stored.tries, stored.waits, stored.problem, stored.again_at) == (0, True, "", None)


def test_a_repeated_call_is_kept_once_and_answered_with_yes() -> None:
    line = hooks.make_line(make_studio())

    assert [hooks.call(line.pk, RECEIPT) for _ in range(3)] == [200, 200, 200]

    assert StoredCallback.objects.count() == 1


def test_a_forged_call_is_refused_and_leaves_nothing() -> None:
    line = hooks.make_line(make_studio())

    assert hooks.call(line.pk, RECEIPT, **{"X-Signature": "0" * 64}) == 403
    assert hooks.call(line.pk, RECEIPT, Accept="*/*") == 403

    assert not StoredCallback.objects.exists()


def test_a_line_that_there_is_not_is_not_found() -> None:
    assert hooks.call(4711, RECEIPT) == 404


def test_what_is_too_large_is_refused_before_anything_is_looked_at(
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    with django_assert_num_queries(0):
        assert hooks.call(4711, b"x" * (webhooks.MOST_BYTES + 1)) == 413


def test_a_body_of_untold_length_is_refused() -> None:
    answer = Browser().post("/hooks/1/", b"", content_type="application/json", headers={"Transfer-Encoding": "chunked"})

    assert answer.status_code == 411


def test_a_call_costs_one_insert_once_its_line_is_known(django_assert_num_queries: DjangoAssertNumQueries) -> None:
    line = hooks.make_line(make_studio())
    hooks.call(line.pk, RECEIPT)

    with django_assert_num_queries(1):
        hooks.call(line.pk, {**RECEIPT, "id": "SM2"})


def test_where_the_database_is_away_the_provider_is_asked_to_come_again() -> None:
    line = hooks.make_line(make_studio())

    def away(*arguments: Any) -> Any:
        raise OperationalError("the server closed the connection unexpectedly")

    with connection.execute_wrapper(away):
        assert hooks.call(line.pk, RECEIPT) == 503

    assert hooks.call(line.pk, RECEIPT) == 200


def test_a_line_whose_transport_cannot_be_made_asks_the_provider_to_come_again() -> None:
    line = hooks.make_line(make_studio(), url="nowhere")

    assert hooks.call(line.pk, RECEIPT) == 503


def test_a_road_that_nobody_calls_back_believes_nobody() -> None:
    line = hooks.make_line(make_studio())
    line.transport, line.options = "aftercare.transports.phone.Phone", {}
    line.save()

    assert hooks.call(line.pk, RECEIPT) == 403


def test_a_gateway_that_cannot_sign_calls_by_get_with_a_secret_in_the_path() -> None:
    line = hooks.make_line(make_studio(), signature=None, callback_secret=hooks.SECRET)
    browser = Browser()

    good = browser.get(f"/hooks/{line.pk}/{hooks.SECRET}?ref=ours-1&state=DELIVRD&id=SM1")
    bad = browser.get(f"/hooks/{line.pk}/another-secret-of-two?ref=ours-1&state=DELIVRD&id=SM1")

    assert (good.status_code, good.content) == (200, b"")  # what it says would go to the client
    assert bad.status_code == 403
    assert StoredCallback.objects.count() == 1


def test_a_gateway_that_calls_without_tls_is_not_sent_elsewhere(settings: Settings) -> None:
    settings.SECURE_SSL_REDIRECT = True
    line = hooks.make_line(make_studio())

    assert hooks.call(line.pk, RECEIPT) == 200
    assert Browser().get("/today").status_code == 301


def test_who_the_provider_is_is_not_kept() -> None:
    line = hooks.make_line(make_studio())
    body = b'{"id": "SM1", "state": "DELIVRD"}'

    hooks.call(line.pk, body, Authorization="Bearer key", **hooks.signed(body))

    assert "authorization" not in StoredCallback.objects.get().headers


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed")
def test_the_same_call_a_hundred_times_at_once_changes_a_message_once(tmp_path: Path) -> None:
    """On PostgreSQL, from 20 threads, as tests/aftercare/hundred_calls.py does it."""
    with servers.postgres() as url:
        settings = {**os.environ, "DATABASE_URL": url, "DATA_DIR": str(tmp_path), "ALLOWED_HOSTS": "testserver"}
        command = [sys.executable, "-m", "tests.aftercare.hundred_calls"]
        done = subprocess.run(command, env=settings, capture_output=True, text=True, timeout=120, check=False)

    assert done.returncode == 0, done.stderr[-3000:]
    assert done.stdout.split() == ["200=100", "callbacks=1", "read=1", "receipts=1", "state=delivered"]
