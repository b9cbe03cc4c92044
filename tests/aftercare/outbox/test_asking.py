"""PostgreSQL is asked and answers later, on a connection that is opened anew where it was lost."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

import pytest
from django.db import DataError, OperationalError, connection

from aftercare.outbox.asking import Asking
from tests.aftercare.outbox.test_rows import AWKWARD

pytestmark = [
    pytest.mark.django_db(transaction=True),
    pytest.mark.skipif(connection.vendor != "postgresql", reason="psycopg asks PostgreSQL"),
]


@pytest.fixture
def same() -> Iterator[Asking]:
    """Says at which places two arrays of texts hold the same, and gives the backend that was asked."""
    asking = Asking(
        "SELECT place FROM unnest(%s::text[], %s::text[]) WITH ORDINALITY AS t (one, other, place)"
        " WHERE one IS NOT DISTINCT FROM other UNION ALL SELECT -pg_backend_pid()"
    )
    yield asking
    asking.close()


def answer(asking: Asking, *given: Any) -> list[int]:
    asking.ask(given)
    return sorted(key for key in asking.answer() if key > 0)


def backend(asking: Asking) -> int:
    asking.ask([[""], [""]])
    return -min(asking.answer())


def test_texts_come_over_as_they_are(same: Asking) -> None:
    """Beside the same by psycopg, which writes arrays by itself."""
    with connection.cursor() as cursor:
        cursor.execute("CREATE TEMP TABLE kept (words text[])")
        cursor.execute("INSERT INTO kept VALUES (%s)", [[*AWKWARD, None]])
        cursor.execute("SELECT words::text FROM kept")
        [(by_psycopg,)] = cursor.fetchall()

    assert answer(same, [*AWKWARD, None], by_psycopg) == list(range(1, len(AWKWARD) + 2))
    assert answer(same, [None, None], ["", None]) == [2]


def test_numbers_moments_and_truths_do_too() -> None:
    moment = datetime(2026, 11, 29, 10, tzinfo=UTC)
    asking = Asking(
        "SELECT 1 WHERE %s::bigint[] = '{3,-4}' AND %s::timestamptz = '2026-11-29 10:00+00' AND %s::boolean"
    )

    assert answer(asking, [3, -4], moment, True) == [1]
    assert answer(asking, [3, -4], moment, False) == []
    assert answer(asking, [3, -4], None, True) == []
    asking.close()


def test_it_is_asked_again_and_again_on_one_connection(same: Asking) -> None:
    assert len({backend(same) for _ in range(3)}) == 1


def test_a_line_that_was_lost_is_an_error_once(same: Asking) -> None:
    with connection.cursor() as cursor:
        cursor.execute("SELECT pg_terminate_backend(%s, 5000)", [backend(same)])

    with pytest.raises(OperationalError):
        answer(same, ["a"], ["a"])

    assert answer(same, ["a"], ["a"]) == [1]


def test_what_the_database_refuses_is_an_error_and_the_next_question_is_answered() -> None:
    asking = Asking("SELECT 10 / %s::int")

    with pytest.raises(DataError, match="division by zero"):
        answer(asking, 0)

    assert answer(asking, 5) == [2]
    asking.close()


def test_what_cannot_be_written_is_not_asked(same: Asking) -> None:
    with pytest.raises(TypeError, match="object"):
        answer(same, [object()], ["a"])

    assert answer(same, ["a"], ["a"]) == [1]
