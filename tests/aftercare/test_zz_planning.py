"""Planning: idempotent, following what changed, the same in whatever order things were heard of."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from random import Random
from typing import Any

import pytest
from django.db import connection
from django.db.models import F
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from hypothesis.extra.django import TestCase

from aftercare import facts, planning
from aftercare.core.timing import Rules
from aftercare.models import Message, RuleSet
from studio import records
from studio.book import compare, importing
from studio.book.rows import Book, Row, Value
from studio.models import Client, Consent, Studio, Visit
from tests.people import NOW, make_client, make_studio, make_visit

SERVICES = ["full set", "fill", "removal", "patch test", "touch-up", "lift", "consultation", "other"]


def reachable(studio: Studio, name: str = "Mia", **fields: Any) -> Client:
    client = make_client(studio, name, mobile="+12125550101", time_zone="America/New_York", **fields)
    Consent.objects.create(client=client, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    return client


def standing() -> list[tuple[Any, ...]]:
    rows = Message.objects.order_by("visit__refs__reference", "occasion", "step", "edition")
    return list(rows.values_list("visit__refs__reference", "occasion", "step", "edition", "state", "reason", "due_at"))


@pytest.mark.django_db
class TestOneClient:
    def test_planning_twice_changes_nothing(self) -> None:
        studio = make_studio()
        make_visit(reachable(studio), service="full set", starts_at=NOW + timedelta(days=9))
        assert planning.catch_up(NOW)["planned"] == 2
        before = list(Message.objects.values())

        later = NOW + timedelta(hours=7)
        assert not planning.plan_studio(studio, later)
        assert list(Message.objects.values()) == before

    def test_a_client_who_was_planned_is_not_looked_at_again(self) -> None:
        studio = make_studio()
        make_visit(reachable(studio))
        planning.catch_up(NOW)

        assert not Client.objects.filter(revision__gt=F("planned_revision")).exists()

    def test_what_is_written_while_it_plans_leaves_her_ahead(self, monkeypatch: pytest.MonkeyPatch) -> None:
        studio = make_studio()
        client = reachable(studio)
        make_visit(client)
        load = facts.load

        def load_and_be_overtaken(*args: Any) -> Any:
            books = load(*args)
            Client.objects.filter(pk=client.pk).update(revision=F("revision") + 1)
            return books

        monkeypatch.setattr(facts, "load", load_and_be_overtaken)
        planning.plan_clients([client.pk], NOW)

        client.refresh_from_db()
        assert client.revision > client.planned_revision

    def test_a_consent_withdrawn_withholds_and_a_new_one_plans_again(self) -> None:
        studio = make_studio()
        client = reachable(studio)
        make_visit(client, service="lift", starts_at=NOW + timedelta(days=9))
        planning.catch_up(NOW)

        def answer(given: bool, at: datetime) -> None:
            records.give_consent(
                client=client,
                channel="sms",
                purpose="visits",
                given=given,
                how="by telephone",
                words_shown="",
                by=None,
                now=at,
            )
            planning.catch_up(at)

        answer(False, NOW + timedelta(hours=1))
        assert [(one.state, one.reason) for one in Message.objects.all()] == [("withheld", "no consent")]
        answer(True, NOW + timedelta(hours=2))
        assert [(one.state, one.reason) for one in Message.objects.all()] == [("planned", "")]

    def test_a_merged_clients_messages_follow_her_visits(self) -> None:
        studio = make_studio()
        kept, gone = reachable(studio, "Mia"), reachable(studio, "Mia")
        make_visit(gone, service="lift", starts_at=NOW + timedelta(days=9))
        planning.catch_up(NOW)

        records.merge(kept=kept, gone=gone, by=None, now=NOW)
        planning.catch_up(NOW)

        assert [(one.client_id, one.state) for one in Message.objects.all()] == [(kept.pk, "planned")]

    def test_the_owners_numbers_move_what_is_planned(self) -> None:
        studio = make_studio()
        make_visit(reachable(studio), service="lift", starts_at=NOW + timedelta(days=9))
        planning.catch_up(NOW)

        RuleSet.objects.create(studio=studio, version=1, values={"prepare_days": 5, "at": 11 * 60}, at=NOW)
        planning.plan_studio(studio, NOW)

        due = Message.objects.get().due_at
        assert due is not None
        assert due == datetime(2027, 3, 13, 16, 0, tzinfo=UTC)  # 11:00 in New York, the day before the clocks change
        assert planning.explain(Message.objects.get(), facts.rules_of(studio)).startswith("11:00, 5 days before")

    def test_it_resumes_where_it_was_broken_off(self, monkeypatch: pytest.MonkeyPatch) -> None:
        studio = make_studio()
        for number in range(5):
            make_visit(reachable(studio, f"Mia {number}"), service="lift", starts_at=NOW + timedelta(days=9))
        monkeypatch.setattr(planning, "BATCH", 2)
        batches = iter([planning._plan_batch])

        def break_off(ids: list[int], now: datetime) -> Any:
            return next(batches)(ids, now)  # the second batch finds nothing to go on with

        with monkeypatch.context() as patched:
            patched.setattr(planning, "_plan_batch", break_off)
            with pytest.raises(StopIteration):
                planning.catch_up(NOW)
        assert Message.objects.count() == 2

        planning.catch_up(NOW)
        assert Message.objects.count() == 5

    def test_it_finds_who_is_behind_by_an_index_of_those_alone(self) -> None:
        if connection.vendor != "sqlite":
            pytest.skip("the wording of the plan is SQLite's")
        behind = Client.objects.filter(revision__gt=F("planned_revision")).values_list("pk", flat=True)[:500]

        assert "client_to_plan" in behind.explain()


def test_rules_are_the_defaults_where_the_owner_set_none() -> None:
    assert facts.rules_from({}, "US") == Rules()
    assert facts.rules_from({}, "GB").test_everyone


def test_the_owners_hours_are_pairs_of_minutes_and_unknown_names_do_nothing() -> None:
    rules = facts.rules_from({"hours": [600, 1080], "check_days": [1, 3, 6], "colour": "red"}, "US")

    assert (rules.hours.opens, rules.hours.closes, rules.check_days) == (600, 1080, (1, 3, 6))


@st.composite
def books(draw: st.DrawFn) -> list[Row]:
    """A small book of two clients; visits share days, and some clients are sensitive."""
    rows = []
    for number in range(draw(st.integers(1, 7))):
        client = draw(st.integers(1, 2))
        days = draw(st.sampled_from([-8, -4, -2, -1, -1, 0, 2, 2, 3, 9, 9, 30]))
        start = NOW.replace(hour=draw(st.integers(13, 22))) + timedelta(days=days)
        status = draw(st.sampled_from(["booked", "done"] if days <= 0 else ["booked", "booked", "cancelled"]))
        says: dict[str, Value] = {
            "service": draw(st.sampled_from(SERVICES)),
            "starts_at": f"{start:%Y-%m-%dT%H:%M:%SZ}",
            "status": status,
        }
        her: dict[str, Value] = {
            "first_name": f"Mia {client}",
            "email": f"mia{client}@example.com",
            "sensitive": client == 1,
        }
        rows.append(Row(number + 2, f"V{number}", f"C{client}", says, her))
    return rows


class TestOrderOfImports(TestCase):
    @settings(max_examples=1500, deadline=None, suppress_health_check=list(HealthCheck))
    @given(rows=books(), seed=st.integers(0, 1000), cut=st.integers(0, 7))
    def test_the_order_of_imports_does_not_matter(self, rows: list[Row], seed: int, cut: int) -> None:
        studio = make_studio("first")
        bring_in(studio, rows)
        once = [row for row in standing() if row]
        Visit.objects.all().delete()
        Studio.objects.all().delete()

        shuffled = list(rows)
        Random(seed).shuffle(shuffled)
        again = make_studio("second")
        bring_in(again, shuffled[:cut])
        bring_in(again, shuffled[cut:])

        live = [row for row in standing() if row[4] != "withdrawn"]
        assert live == [row for row in once if row[4] != "withdrawn"]


def bring_in(studio: Studio, rows: list[Row]) -> None:
    book = Book("csv", tuple(rows), (), seen=frozenset(row.visit for row in rows))
    importing.write(compare.compare(book, studio), studio, NOW)
    planning.catch_up(NOW, studio=studio)
