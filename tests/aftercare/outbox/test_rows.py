"""Many rows by one statement: what varies, what is the same in all of them, what is null, and what does not fit."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.db import DatabaseError, connection, transaction

from aftercare.models import Message
from aftercare.outbox import rows
from tests.letters import make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db

AWKWARD = ("", "NULL", 'a "b", {c}', "tab\tand\nline", "back\\slash 100 %s", "Zoë 👁")


@pytest.fixture
def messages() -> list[Message]:
    studio = make_studio()
    return [make_message(make_client(studio, f"Mia {place}")) for place in range(len(AWKWARD))]


def test_each_row_gets_its_own_values_and_all_get_what_they_share(messages: list[Message]) -> None:
    for place, (message, words) in enumerate(zip(messages, AWKWARD, strict=True)):
        message.text, message.reason, message.fell_back = words, "shared: %s", place % 2 == 0
        message.handed_over_at = NOW + timedelta(seconds=place) if place else None

    assert rows.update(messages, ("text", "reason", "fell_back", "handed_over_at", "line")) == len(messages)

    stored = Message.objects.order_by("pk").values_list("text", "reason", "fell_back", "handed_over_at", "line")
    assert list(stored) == [(one.text, one.reason, one.fell_back, one.handed_over_at, one.line_id) for one in messages]
    assert {one.line_id for one in messages} == {None}


def test_only_those_rows_change_whose_guard_and_lease_hold(messages: list[Message]) -> None:
    for place, message in enumerate(messages):
        Message.objects.filter(pk=message.pk).update(
            state="claimed" if place else "planned", lease_until=NOW + timedelta(seconds=place)
        )
        message.reason = "changed"
    asked = [NOW + timedelta(seconds=place if place != 2 else 99) for place in range(len(messages))]

    assert rows.update(messages, ("reason",), where="state = 'claimed'", leases=asked) == len(messages) - 2

    unchanged = set(Message.objects.filter(reason="").values_list("pk", flat=True))
    assert unchanged == {messages[0].pk, messages[2].pk}


@pytest.mark.skipif(connection.vendor != "postgresql", reason="SQLite knows no lengths")
def test_a_text_too_long_is_an_error_and_never_cut_off(messages: list[Message]) -> None:
    for place, message in enumerate(messages):
        message.reason = f"{place}" * 201

    with pytest.raises(DatabaseError), transaction.atomic():
        rows.update(messages, ("reason",))

    assert not Message.objects.exclude(reason="").exists()


def test_new_rows_are_counted_without_those_whose_key_is_taken(messages: list[Message]) -> None:
    def new(place: int, words: str) -> Message:
        first = messages[0]
        return Message(
            studio=first.studio, client=first.client, key=f"new:{place}", occasion="care", planned_from=NOW, text=words
        )

    assert rows.insert([new(place, words) for place, words in enumerate(AWKWARD)]) == len(AWKWARD)
    assert rows.insert([new(place, "again") for place in range(len(AWKWARD) + 1)]) == 1

    found = Message.objects.filter(key__startswith="new:").order_by("key").values_list("text", flat=True)
    assert list(found) == [*AWKWARD, "again"]


@pytest.mark.skipif(connection.vendor != "postgresql", reason="SQLite's own connection keeps what it has read")
def test_a_statement_is_read_and_planned_once(messages: list[Message]) -> None:
    def planned() -> dict[str, tuple[int, int]]:
        with connection.cursor() as cursor:
            cursor.execute("SELECT name, generic_plans, custom_plans FROM pg_prepared_statements")
            return {name: (kept, anew) for name, kept, anew in cursor.fetchall()}

    before = planned()
    for place in range(3):
        messages[0].reason = f"for the {place}th time"
        rows.update(messages[:1], ("reason",))

    assert [times for name, times in planned().items() if name not in before] == [(3, 0)]
