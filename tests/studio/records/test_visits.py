from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from studio import records
from studio.models import Adhesive, Client, Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db
BEGAN = NOW - timedelta(hours=3)  # with 75 minutes, over for 105


def test_a_new_visit_remembers_when_and_as_what_it_was_first_heard_of() -> None:
    mia = make_client(make_studio())

    visit = records.save_visit(
        studio=mia.studio, visit=None, client=mia, by=None, now=NOW, service="full set", starts_at=NOW, status="done"
    )

    assert (visit.heard_at, visit.heard_as, visit.status, visit.marked_at) == (NOW, "done", "done", None)


@pytest.mark.parametrize(
    ("service", "minutes"),
    [
        ("full set", 180),
        ("fill", 75),
        ("removal", 45),
        ("patch test", 15),
        ("touch-up", 30),
        ("lift", 60),
        ("consultation", 30),
        ("other", 30),
    ],
)
def test_a_visit_takes_the_usual_length_of_its_service(service: str, minutes: int) -> None:
    """Lengths: the project's own contract for the appointment book."""
    mia = make_client(make_studio())

    visit = records.save_visit(
        studio=mia.studio, visit=None, client=mia, by=None, now=NOW, service=service, starts_at=NOW
    )

    assert visit.minutes == minutes


def test_a_moved_visit_raises_both_revisions_and_keeps_what_was_first_heard() -> None:
    mia = make_client(make_studio())
    visit = make_visit(mia)

    moved = records.save_visit(
        studio=mia.studio, visit=visit, by=None, now=NOW, starts_at=visit.starts_at + timedelta(days=1)
    )

    assert (moved.revision, moved.minutes, moved.heard_at) == (2, 75, visit.heard_at)
    assert Client.objects.get().revision == 2


@pytest.mark.parametrize(
    ("fields", "field"),
    [
        ({"service": "haircut"}, "service"),
        ({"minutes": 0}, "minutes"),
        ({"minutes": 721}, "minutes"),
        ({"share_left": Decimal(40), "share_seen": ""}, "share_seen"),
        ({"share_left": None, "share_seen": "seen"}, "share_left"),
        ({"share_left": Decimal(101), "share_seen": "seen"}, "share_left"),
        ({"remover": "soap"}, "remover"),
    ],
)
def test_bad_input_names_its_field_and_changes_nothing(fields: dict[str, Any], field: str) -> None:
    visit = make_visit(make_client(make_studio()))
    before = Visit.objects.values().get()

    with pytest.raises(ValidationError) as refused:
        records.save_visit(studio=visit.studio, visit=visit, by=None, now=NOW, **fields)

    assert list(refused.value.message_dict) == [field]
    assert Visit.objects.values().get() == before


def test_no_row_of_another_studio_is_let_in() -> None:
    studio, elsewhere = make_studio(), make_studio("elm")
    mia, ivy = make_client(studio), make_staff(elsewhere, "Ivy")
    glue = Adhesive.objects.create(studio=elsewhere, product="Birch 4")
    visit = make_visit(mia)

    for wrong in ({"artist": ivy}, {"adhesive": glue}, {"by": ivy}):
        with pytest.raises(ValidationError) as refused:
            records.save_visit(**{"studio": studio, "visit": visit, "by": None, "now": NOW, **wrong})  # type: ignore[arg-type]
        assert list(refused.value.message_dict) == list(wrong)
    with pytest.raises(ValidationError):
        records.save_visit(studio=elsewhere, visit=None, client=mia, by=None, now=NOW, service="fill", starts_at=NOW)

    assert Visit.objects.get().artist is None


def test_a_visit_known_as_booked_ends_when_it_was_marked_done_late() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN)

    done = records.mark_done(visit=visit, by=None, now=NOW)

    assert (done.status, done.marked_at, done.end) == ("done", NOW, NOW)


def test_a_visit_marked_done_early_ends_when_its_booked_minutes_are_over() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=NOW - timedelta(minutes=60))

    done = records.mark_done(visit=visit, by=None, now=NOW)

    assert (done.marked_at, done.end) == (None, NOW + timedelta(minutes=15))


def test_history_that_came_in_as_missed_and_is_corrected_keeps_its_booked_end() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN, status="missed", heard_as="missed")

    done = records.mark_done(visit=visit, by=None, now=NOW)

    assert (done.marked_at, done.end) == (None, visit.booked_end)


def test_a_correction_of_a_done_visit_does_not_move_its_end() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN)
    records.mark_done(visit=visit, by=None, now=NOW)

    again = records.mark_done(visit=visit, by=None, now=NOW + timedelta(days=2), style="hybrid")

    assert (again.style, again.end) == ("hybrid", NOW)


def test_a_person_takes_over_what_the_clock_had_counted() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN, status="done", counted_done=True)

    done = records.mark_done(visit=visit, by=None, now=NOW, mirror_check="happy")

    assert (done.counted_done, done.mirror_check) == (False, "happy")


def test_what_was_marked_can_be_corrected() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN)
    records.mark_done(visit=visit, by=None, now=NOW)

    missed = records.mark_missed(visit=visit, by=None, now=NOW)
    assert (missed.status, missed.marked_at) == ("missed", None)
    booked = records.unmark(visit=visit, by=None, now=NOW)
    assert booked.status == "booked"
    cancelled = records.cancel_visit(visit=visit, by=None, now=NOW)
    assert (cancelled.status, cancelled.revision) == ("cancelled", 5)


@pytest.mark.parametrize("mark", [records.mark_done, records.mark_missed])
def test_a_visit_of_a_later_day_is_neither_done_nor_missed(mark: Any) -> None:
    visit = make_visit(make_client(make_studio()), starts_at=NOW + timedelta(days=1))

    with pytest.raises(ValidationError, match="ahead"):
        mark(visit=visit, by=None, now=NOW)

    assert Visit.objects.get().status == "booked"


def test_not_looked_is_an_answer_and_nothing_is_preset() -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN)
    assert (visit.share_seen, visit.share_left) == ("", None)

    done = records.mark_done(visit=visit, by=None, now=NOW, share_seen="not looked", share_left=None)

    assert (done.share_seen, done.share_left) == ("not looked", None)


def test_a_share_from_the_book_does_not_stand_in_the_way_of_another_field() -> None:
    visit = make_visit(make_client(make_studio()), share_left=Decimal(40))

    assert records.save_visit(studio=visit.studio, visit=visit, by=None, now=NOW, room="2").room == "2"


def test_a_test_result_says_by_whom_and_when() -> None:
    ada = make_staff(make_studio())
    visit = make_visit(make_client(ada.studio), service="patch test", starts_at=BEGAN, status="done")

    known = records.record_test_result(visit=visit, result="no sign reported", by=ada, now=NOW)

    assert (known.test_result, known.test_result_by, known.test_result_at) == ("no sign reported", ada, NOW)
    assert Client.objects.get().revision == 2


def test_no_result_says_passed_or_safe() -> None:
    """A trade caution, common practice: a patch test lowers a risk and ends none."""
    words = " ".join(f"{value} {label}" for value, label in Visit.TestResult.choices).lower()

    assert "pass" not in words
    assert "safe" not in words


@pytest.mark.parametrize(
    ("fields", "result"),
    [
        ({"service": "fill", "status": "done"}, "sign"),
        ({"service": "patch test", "status": "booked"}, "sign"),
        ({"service": "patch test", "status": "done"}, "passed"),
    ],
)
def test_a_result_that_cannot_stand_is_refused(fields: dict[str, str], result: str) -> None:
    visit = make_visit(make_client(make_studio()), starts_at=BEGAN, **fields)

    with pytest.raises(ValidationError):
        records.record_test_result(visit=visit, result=result, by=None, now=NOW)

    assert Visit.objects.get().test_result == ""


@pytest.mark.parametrize(("hours", "counted"), [(None, 0), (24, 0), (23, 1)])
def test_an_unmarked_visit_counts_as_done_only_after_as_long_as_the_owner_says(hours: int | None, counted: int) -> None:
    studio = make_studio(done_after_hours=hours)
    visit = make_visit(make_client(studio), starts_at=NOW - timedelta(hours=24, minutes=15), minutes=75)

    before = visit.client.revision

    assert records.count_done(NOW) == counted
    assert records.count_done(NOW) == 0
    visit.refresh_from_db()
    assert (visit.status, visit.counted_done) == (("done", True) if counted else ("booked", False))
    if counted:
        assert visit.marked_at == NOW
        assert Client.objects.get().revision == before + 1


def test_what_somebody_marked_and_what_is_long_past_are_left_as_they_are() -> None:
    studio = make_studio(done_after_hours=2)
    for days, status in ((1, "missed"), (40, "booked")):
        make_visit(make_client(studio), starts_at=NOW - timedelta(days=days), status=status)

    assert records.count_done(NOW) == 0
