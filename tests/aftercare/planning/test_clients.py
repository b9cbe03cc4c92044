"""Planning: idempotent, following what changed, the same in whatever order things were heard of."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from django.db import connection
from django.db.models import F
from django.test.utils import CaptureQueriesContext
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra.django import TestCase

from aftercare import facts, planning
from aftercare.core.delivery import State
from aftercare.models import Message, RuleSet
from studio import records
from studio.book.rows import Row
from studio.models import Client, Consent, Studio, Visit
from tests.books import bring_in, row
from tests.meanwhile import when
from tests.people import NOW, make_client, make_studio, make_visit

IN_NINE_DAYS = NOW + timedelta(days=9)


def reachable(studio: Studio, name: str = "Mia", **fields: Any) -> Client:
    client = make_client(studio, name, **{"mobile": "+12125550101", "time_zone": "America/New_York", **fields})
    Consent.objects.create(client=client, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    return client


def mia_with_a_lift() -> Client:
    mia = reachable(make_studio())
    make_visit(mia, service="lift", starts_at=IN_NINE_DAYS)
    return mia


def told_to_wait() -> tuple[Client, datetime, datetime]:
    """Return who has a message that was due, and is tried again later; and both moments."""
    mia = mia_with_a_lift()
    planning.catch_up(NOW)
    due = Message.objects.get().due_at
    assert due is not None
    later = due + timedelta(minutes=15)
    Message.objects.update(tries=1, due_at=later, not_before=later)
    return mia, due, later


def states() -> list[tuple[str, str]]:
    return list(Message.objects.order_by("pk").values_list("state", "reason"))


def agree(client: Client, given: bool, at: datetime) -> None:
    records.give_consent(
        client=client, channel="sms", purpose="visits", given=given, how="by telephone", by=None, now=at
    )


@pytest.mark.django_db
class TestOnce:
    def test_planning_twice_changes_nothing(self) -> None:
        studio = make_studio()
        make_visit(reachable(studio), service="full set", starts_at=IN_NINE_DAYS)
        assert planning.catch_up(NOW) == {"planned": 2}
        before = list(Message.objects.values())

        assert not planning.plan_studio(studio, NOW + timedelta(hours=7))

        assert list(Message.objects.values()) == before

    def test_a_client_who_was_planned_is_not_looked_at_again(self) -> None:
        mia_with_a_lift()
        planning.catch_up(NOW)

        with CaptureQueriesContext(connection) as queries:
            planning.catch_up(NOW)

        assert len(queries) == 1

    def test_another_studios_clients_wait(self) -> None:
        mia = mia_with_a_lift()

        assert not planning.catch_up(NOW, studio=make_studio("elm"))
        assert planning.catch_up(NOW, studio=mia.studio)

    @pytest.mark.skipif(connection.vendor != "sqlite", reason="the words are those of SQLite's planner")
    @pytest.mark.parametrize("of_one", [True, False])
    def test_who_is_behind_is_found_by_an_index_of_those_alone(self, of_one: bool) -> None:
        studio = make_studio()
        with CaptureQueriesContext(connection) as queries:
            planning.catch_up(NOW, studio=studio if of_one else None)

        with connection.cursor() as cursor:
            cursor.execute(f"EXPLAIN QUERY PLAN {queries[0]['sql']}")
            plan = " ".join(str(step[-1]) for step in cursor.fetchall())

        assert "client_to_plan" in plan
        assert "TEMP B-TREE" not in plan, "nobody needs them sorted"


@pytest.mark.django_db
class TestMeanwhile:
    def test_what_is_written_after_her_rows_were_read_leaves_her_ahead_and_is_planned_next(self) -> None:
        mia = mia_with_a_lift()

        def another_person_moves_the_visit() -> None:
            Visit.objects.update(starts_at=IN_NINE_DAYS + timedelta(days=1))
            Client.objects.update(revision=F("revision") + 1)

        with when('INSERT INTO "aftercare_message"', another_person_moves_the_visit):
            planning.plan_clients([mia.pk], NOW)

        mia.refresh_from_db()
        assert mia.revision > mia.planned_revision
        planning.catch_up(NOW)
        assert Message.objects.get().about_start == IN_NINE_DAYS + timedelta(days=1)

    def test_what_is_written_between_the_revision_and_her_rows_is_planned_once_more(self) -> None:
        mia = mia_with_a_lift()

        def raise_revision() -> None:
            Client.objects.update(revision=F("revision") + 1)

        with when('SELECT "studio_visit"', raise_revision):
            planning.plan_clients([mia.pk], NOW)

        mia.refresh_from_db()
        assert mia.revision > mia.planned_revision
        assert not planning.catch_up(NOW), "and changes nothing, as nothing did change"

    def test_it_goes_on_where_it_was_broken_off(self) -> None:
        studio = make_studio()
        clients = Client.objects.bulk_create(
            Client(studio=studio, first_name=f"Mia {number}", email="mia@mail.example")
            for number in range(planning.BATCH + 20)
        )
        Visit.objects.bulk_create(
            Visit(studio=studio, client=client, service="lift", starts_at=IN_NINE_DAYS, minutes=60, heard_at=NOW)
            for client in clients
        )

        def die(done: int) -> None:
            raise SystemExit(f"killed after {done}")

        with pytest.raises(SystemExit, match="killed after 500"):
            planning.catch_up(NOW, progress=die)
        assert Message.objects.count() == planning.BATCH

        assert planning.catch_up(NOW) == {"planned": 20}

    def test_a_batch_that_is_broken_off_leaves_nothing_of_itself(self) -> None:
        mia = mia_with_a_lift()

        def die() -> None:
            raise SystemExit("killed")

        with pytest.raises(SystemExit), when('UPDATE "studio_client"', die):
            planning.plan_clients([mia.pk], NOW)

        assert not Message.objects.exists()
        assert planning.catch_up(NOW) == {"planned": 1}


@pytest.mark.django_db
class TestFollowing:
    def test_a_visit_that_moves_is_planned_anew_in_place(self) -> None:
        mia_with_a_lift()
        planning.catch_up(NOW)
        before = Message.objects.get()

        records.save_visit(
            studio=before.studio, visit=before.visit, by=None, now=NOW, starts_at=IN_NINE_DAYS + timedelta(days=2)
        )
        assert planning.catch_up(NOW) == {"planned": 1}

        after = Message.objects.get()
        assert before.due_at is not None
        assert (after.pk, after.due_at) == (before.pk, before.due_at + timedelta(days=2))

    @pytest.mark.parametrize("end", [records.cancel_visit, records.mark_missed])
    def test_a_visit_that_does_not_come_to_pass_takes_its_messages_back(self, end: Any) -> None:
        mia = mia_with_a_lift()
        planning.catch_up(NOW)

        end(visit=mia.visits.get(), by=None, now=IN_NINE_DAYS + timedelta(hours=1))
        planning.catch_up(NOW)

        assert states() in ([("withdrawn", "the visit was cancelled")], [("withdrawn", "the visit was missed")])

    def test_a_visit_called_off_and_on_again_is_planned_from_that_moment_on(self) -> None:
        mia_with_a_lift()
        planning.catch_up(NOW)
        records.cancel_visit(visit=Visit.objects.get(), by=None, now=NOW)
        planning.catch_up(NOW)

        later = NOW + timedelta(days=7)
        records.unmark(visit=Visit.objects.get(), by=None, now=later)
        planning.catch_up(later)

        message = Message.objects.get()
        assert (message.state, message.due_at, message.ended_at) == ("planned", later, None)

    def test_a_consent_withdrawn_withholds_and_a_new_one_plans_again(self) -> None:
        mia = mia_with_a_lift()
        planning.catch_up(NOW)

        agree(mia, False, NOW + timedelta(hours=1))
        planning.catch_up(NOW + timedelta(hours=1))
        assert states() == [("withheld", "no consent")]

        agree(mia, True, NOW + timedelta(hours=2))
        planning.catch_up(NOW + timedelta(hours=2))
        assert states() == [("planned", "")]

    def test_a_merged_clients_messages_follow_her_visits(self) -> None:
        studio = make_studio()
        kept, gone = reachable(studio), reachable(studio)
        make_visit(gone, service="lift", starts_at=IN_NINE_DAYS)
        planning.catch_up(NOW)

        merge = records.merge(kept=kept, gone=gone, by=None, now=NOW)
        planning.catch_up(NOW)
        assert list(Message.objects.values_list("client", "state")) == [(kept.pk, "planned")]

        records.undo_merge(merge=merge, now=NOW)
        planning.catch_up(NOW)
        assert list(Message.objects.values_list("client", "state")) == [(gone.pk, "planned")]

    def test_a_message_made_after_a_merge_goes_back_with_its_visit_when_the_merge_is_undone(self) -> None:
        studio = make_studio()
        kept, gone = reachable(studio), reachable(studio)
        make_visit(gone, service="lift", starts_at=IN_NINE_DAYS)
        merge = records.merge(kept=kept, gone=gone, by=None, now=NOW)
        planning.catch_up(NOW)

        records.undo_merge(merge=merge, now=NOW)
        planning.catch_up(NOW)

        assert list(Message.objects.values_list("client", "state")) == [(gone.pk, "planned")]

    def test_the_owners_numbers_move_what_is_planned(self) -> None:
        mia = mia_with_a_lift()
        planning.catch_up(NOW)

        RuleSet.objects.create(studio=mia.studio, version=1, values={"prepare_days": 5, "at": 11 * 60}, at=NOW)
        planning.plan_studio(mia.studio, NOW)

        message = Message.objects.get()
        assert message.due_at == datetime(2027, 3, 13, 16, 0, tzinfo=UTC)  # 11:00 in New York, still five hours behind
        assert planning.explain(message, facts.rules_of(mia.studio)).startswith("11:00, 5 days before")

    def test_a_later_last_moment_is_kept_though_the_due_moment_stays(self) -> None:
        mia = mia_with_a_lift()
        planning.catch_up(NOW)

        RuleSet.objects.create(studio=mia.studio, version=1, values={"prepare_last_hours": 5}, at=NOW)
        planning.plan_studio(mia.studio, NOW)

        assert Message.objects.get().no_later_than == IN_NINE_DAYS - timedelta(hours=5)

    def test_what_a_provider_had_asked_to_wait_for_is_waited_for_whatever_is_planned_anew(self) -> None:
        mia, due, later = told_to_wait()

        planning.plan_studio(mia.studio, due)

        assert Message.objects.values_list("due_at", "not_before").get() == (later, later)

    def test_by_another_channel_nobody_has_asked_to_wait(self) -> None:
        mia, due, later = told_to_wait()
        Consent.objects.create(client=mia, channel="email", purpose="visits", given=True, at=NOW, how="on paper")
        Client.objects.update(email="mia@mail.example", channel="email")

        planning.plan_studio(mia.studio, due)

        assert Message.objects.values_list("channel", "due_at", "not_before").get() == ("email", due, None)

    def test_a_claimed_message_is_taken_from_its_sender_when_its_visit_is_called_off(self) -> None:
        mia = mia_with_a_lift()
        planning.catch_up(NOW)
        Message.objects.update(state=State.CLAIMED, lease_until=NOW)

        records.cancel_visit(visit=mia.visits.get(), by=None, now=NOW)
        planning.catch_up(NOW)

        assert Message.objects.values_list("state", "lease_until").get() == ("withdrawn", None)


@pytest.mark.django_db
class TestAnotherClientsVisit:
    """The book corrects whose visit it was."""

    def corrected(self, now: datetime = NOW, **says: Any) -> tuple[Client, Client]:
        studio = Studio.objects.get()
        zoe: dict[str, Any] = {"first_name": "Zoe", "email": "zoe@mail.example", "time_zone": "America/New_York"}
        bring_in(studio, row(client="C2", **zoe, **says), now=now)
        planning.catch_up(now)
        mia, zoe_now = Client.objects.order_by("pk")
        return mia, zoe_now

    def booked(self, **says: Any) -> None:
        bring_in(make_studio(), row(email="mia@mail.example", time_zone="America/New_York", **says))
        planning.catch_up(NOW)

    def test_what_has_not_gone_goes_to_her(self) -> None:
        self.booked(service="lift", starts_at="2027-03-18T15:00:00Z")

        _mia, zoe = self.corrected(service="lift", starts_at="2027-03-18T15:00:00Z")

        assert list(Message.objects.values_list("client", "state", "channel")) == [(zoe.pk, "planned", "email")]

    def test_what_has_gone_stays_with_who_got_it_and_she_is_told_herself(self) -> None:
        self.booked(service="lift", starts_at="2027-03-18T15:00:00Z")
        Message.objects.update(state=State.DELIVERED)

        mia, zoe = self.corrected(service="lift", starts_at="2027-03-18T15:00:00Z")

        rows = Message.objects.order_by("edition").values_list("client", "edition", "state")
        assert list(rows) == [(mia.pk, 1, "delivered"), (zoe.pk, 2, "planned")]
        assert not planning.plan_studio(mia.studio, NOW), "and that once"

    def test_aftercare_that_went_to_another_goes_to_her_too(self) -> None:
        done: dict[str, Any] = {"status": "done", "starts_at": "2027-03-09T13:00:00Z"}
        self.booked(**done)
        Message.objects.filter(occasion="care").update(state=State.DELIVERED)

        _mia, zoe = self.corrected(**done)

        care = Message.objects.filter(occasion="care", client=zoe).values_list("edition", "state")
        assert list(care) == [(2, "planned")]
        assert set(Message.objects.filter(occasion="check").values_list("client", flat=True)) == {zoe.pk}

    def test_a_visit_called_off_in_the_same_breath_takes_its_messages_back(self) -> None:
        self.booked(service="lift", starts_at="2027-03-18T15:00:00Z")

        self.corrected(service="lift", starts_at="2027-03-18T15:00:00Z", status="cancelled")

        assert states() == [("withdrawn", "the visit was cancelled")]


def standing() -> list[tuple[Any, ...]]:
    """What is planned or withheld, whatever the numbers of the rows."""
    rows = Message.objects.exclude(state=State.WITHDRAWN)
    columns = ("visit__refs__reference", "occasion", "step", "edition", "state", "reason", "due_at", "channel")
    return sorted(rows.values_list(*columns), key=str)


ADHESIVES: list[dict[str, Any]] = [
    *({}, {"adhesive": "Birch"}, {"adhesive": "Alder", "adhesive_lot": "1"}, {"adhesive_lot": "1"})
]


@st.composite
def small_books(draw: st.DrawFn) -> list[Row]:
    """A small book of two clients; visits share days, the first is sensitive, adhesives change or are half known."""
    rows = []
    for number in range(draw(st.integers(1, 7))):
        client = draw(st.integers(1, 2))
        days = draw(st.sampled_from([-8, -4, -2, -1, -1, 0, 2, 2, 3, 9, 9, 30]))
        start = NOW.replace(hour=draw(st.integers(13, 22))) + timedelta(days=days)
        rows.append(
            row(
                f"V{number}",
                f"C{client}",
                service=draw(st.sampled_from(["full set", "fill", "removal", "patch test", "lift", "other"])),
                starts_at=f"{start:%Y-%m-%dT%H:%M:%SZ}",
                status=draw(st.sampled_from(["booked", "done"] if days <= 0 else ["booked", "booked", "cancelled"])),
                email=f"mia{client}@example.com",
                sensitive=client == 1,
                **draw(st.sampled_from(ADHESIVES)),
            )
        )
    return rows


class TestOrderOfImports(TestCase):
    @settings(max_examples=60, deadline=None)
    @given(rows=small_books(), data=st.data())
    def test_in_whatever_order_and_files_a_book_comes_the_same_stands(
        self, rows: list[Row], data: st.DataObject
    ) -> None:
        one = make_studio("one")
        bring_in(one, *rows)
        planning.catch_up(NOW, studio=one)
        at_once = standing()
        Visit.objects.all().delete()

        other = make_studio("other")
        shuffled = data.draw(st.permutations(rows))
        while shuffled:
            size = data.draw(st.integers(1, len(shuffled)))
            bring_in(other, *shuffled[:size])
            planning.catch_up(NOW, studio=other)
            shuffled = shuffled[size:]

        assert standing() == at_once
