"""The book's standing work: files that wait to be read or written."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from aftercare import bookwork
from aftercare.models import Message
from studio import clock
from studio.book.parts import PART
from studio.models import BookFile, Studio, Visit
from tests.books import bring_in, row
from tests.meanwhile import when
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

State = BookFile.State
HEADER = "visit,client,first_name,email,service,starts_at\n"
GOOD = HEADER + "V1,C1,Mia,mia@example.com,fill,2027-03-16T14:30\n"


def waiting(studio: Studio, text: str = GOOD, **fields: object) -> BookFile:
    return BookFile.objects.create(
        studio=studio, name="book.csv", format="csv", data=text.encode(), uploaded_at=NOW, **fields
    )


def test_a_file_is_read_shown_and_only_then_written() -> None:
    file = waiting(make_studio())

    assert bookwork.run_waiting(NOW) == 1
    file.refresh_from_db()
    assert (file.state, file.result["visits"]["new"]) == ("preview", 1)
    assert not Visit.objects.exists()
    assert bookwork.run_waiting(NOW) == 0, "a preview waits for a person"

    BookFile.objects.update(state=State.WRITING)
    assert bookwork.run_waiting(NOW) == 1
    file.refresh_from_db()
    assert (file.state, file.busy_until) == ("done", None)
    assert file.result["messages"]["planned"] == Message.objects.count() > 0


def test_a_bad_row_brings_the_file_back_to_its_preview() -> None:
    file = waiting(make_studio(), HEADER + "V1,C1,Mia,,brows,2027-03-16T14:30\n", state=State.WRITING)

    bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert file.state == "preview"
    assert file.result["bad_rows"][0]["field"] == "service"
    assert file.result["unknown_services"] == ["brows"]
    assert not Visit.objects.exists()


def test_a_whole_book_cancels_what_it_lacks_once_it_is_confirmed() -> None:
    studio = make_studio()
    waiting(studio, state=State.WRITING)
    bookwork.run_waiting(NOW)
    days = {"whole_from": date(2027, 3, 15), "whole_to": date(2027, 3, 20)}
    other = GOOD.replace("V1", "V2").replace("C1", "C2")
    file = waiting(studio, other, **days)

    bookwork.run_waiting(NOW)
    file.refresh_from_db()
    assert [one["visit"] for one in file.result["to_cancel"]] == ["V1"]
    assert Visit.objects.get().status == "booked"

    BookFile.objects.filter(pk=file.pk).update(state=State.WRITING)
    bookwork.run_waiting(NOW)
    assert dict(Visit.objects.values_list("refs__reference", "status")) == {"V1": "cancelled", "V2": "booked"}


def test_a_file_that_another_worker_has_is_left_to_it_until_it_falls_silent() -> None:
    file = waiting(make_studio(), busy_until=clock.now() + timedelta(minutes=1))  # by the database's own clock
    assert bookwork.run_waiting(NOW) == 0

    BookFile.objects.update(busy_until=clock.now() - timedelta(seconds=1))
    assert bookwork.run_waiting(NOW) == 1
    file.refresh_from_db()
    assert file.state == "preview"


def test_while_one_worker_reads_or_writes_a_file_no_other_takes_it_up() -> None:
    file = waiting(make_studio(), state=State.WRITING)
    others: list[int] = []

    with when('INSERT INTO "studio_visit"', lambda: others.append(bookwork.run_waiting(NOW))):
        assert bookwork.run_waiting(NOW) == 1

    file.refresh_from_db()
    assert (others, file.state) == ([0], "done")
    assert Visit.objects.count() == 1


def test_a_worker_is_believed_as_long_as_it_says_how_far_it_is() -> None:
    waiting(make_studio(), state=State.WRITING)
    until: list[Any] = []

    with when('INSERT INTO "studio_visit"', lambda: until.append(BookFile.objects.get())):
        bookwork.run_waiting(NOW)

    (file,) = until
    assert file.doing == "writing visits 1 to 1 of 1"
    assert clock.now() < file.busy_until <= clock.now() + bookwork.BUSY


def test_a_worker_that_was_given_up_stops_and_spoils_nothing() -> None:
    """It hung for minutes, another took the file over, and then it came to again."""
    file = waiting(make_studio(), state=State.WRITING)
    theirs = clock.now() + timedelta(minutes=9)

    with when("SELECT", lambda: BookFile.objects.update(busy_until=theirs), time=4):
        bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert (file.state, file.busy_until) == ("writing", theirs)
    assert not Visit.objects.exists()


def test_an_import_that_was_killed_in_the_middle_is_finished_by_the_next_worker() -> None:
    rows = [f"V{number},C{number},Mia,mia@example.com,lift,2027-03-16T14:30\n" for number in range(PART + 10)]
    file = waiting(make_studio(), HEADER + "".join(rows), state=State.WRITING)

    def die() -> None:
        raise SystemExit("killed")

    with pytest.raises(SystemExit), when('SELECT "studio_studio"', die, time=2):
        bookwork.run_waiting(NOW)
    assert Visit.objects.count() == PART, "the first part stands"
    assert bookwork.run_waiting(NOW) == 0, "it is not known yet that nobody is at work"

    BookFile.objects.update(busy_until=clock.now() - timedelta(seconds=1))
    assert bookwork.run_waiting(NOW) == 1

    file.refresh_from_db()
    assert (file.state, file.result["visits"]["same"], file.result["visits"]["new"]) == ("done", PART, 10)
    assert Visit.objects.count() == Message.objects.filter(state="planned").count() == PART + 10


def test_a_killed_planning_is_finished_though_every_visit_stands() -> None:
    waiting(make_studio(), state=State.WRITING)

    def die() -> None:
        raise SystemExit("killed")

    with pytest.raises(SystemExit), when('INSERT INTO "aftercare_message"', die):
        bookwork.run_waiting(NOW)
    assert (Visit.objects.count(), Message.objects.count()) == (1, 0)

    BookFile.objects.update(busy_until=None)
    bookwork.run_waiting(NOW)

    assert BookFile.objects.get().state == "done"
    assert Message.objects.exists()


def test_a_visit_that_came_to_be_missing_after_the_preview_is_not_cancelled() -> None:
    studio = make_studio()
    bring_in(studio, row("V1", starts_at="2027-03-16T18:30:00Z"))
    file = waiting(studio, GOOD.replace("V1", "V9"), whole_from=date(2027, 3, 15), whole_to=date(2027, 3, 20))
    bookwork.run_waiting(NOW)
    bring_in(studio, row("V2", starts_at="2027-03-17T18:30:00Z"))

    BookFile.objects.filter(pk=file.pk).update(state=State.WRITING)
    bookwork.run_waiting(NOW)

    statuses = dict(Visit.objects.values_list("refs__reference", "status"))
    assert statuses == {"V1": "cancelled", "V2": "booked", "V9": "booked"}


def test_a_damaged_file_is_never_taken_as_the_whole_book() -> None:
    studio = make_studio()
    bring_in(studio, row("V1", starts_at="2027-03-16T18:30:00Z"))
    damaged = GOOD.replace("V1", "4.1E+09")
    file = waiting(
        studio, damaged, skip_bad=True, state=State.WRITING, whole_from=date(2027, 3, 15), whole_to=date(2027, 3, 20)
    )

    bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert file.state == "done"
    assert any("No visit is cancelled" in note for note in file.result["notes"])
    assert Visit.objects.get().status == "booked"


def die_of_a_fault() -> None:
    raise ValueError("a fault of ours")


def test_a_fault_of_ours_is_kept_with_the_file_where_the_person_sees_it() -> None:
    file = waiting(make_studio())

    with when('SELECT "studio_visitref"', die_of_a_fault):
        bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert (file.state, file.busy_until) == ("failed", None)
    assert "nothing of this file was written" in file.result["problem"]


def test_a_fault_in_writing_does_not_claim_that_nothing_was_written_and_keeps_what_was_shown() -> None:
    file = waiting(make_studio())
    bookwork.run_waiting(NOW)
    BookFile.objects.update(state=State.WRITING)

    with when('INSERT INTO "studio_visitref"', die_of_a_fault):
        bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert file.state == "failed"
    assert "not written twice" in file.result["problem"]
    assert file.result["visits"]["new"] == 1


def test_one_file_with_a_fault_keeps_no_other_waiting() -> None:
    studio = make_studio()
    first, second = waiting(studio), waiting(studio, GOOD.replace("V1", "V2"))

    with when('SELECT "studio_visitref"', die_of_a_fault):
        assert bookwork.run_waiting(NOW) == 2

    first.refresh_from_db()
    second.refresh_from_db()
    assert (first.state, second.state) == ("failed", "preview")


def test_a_long_file_is_written_in_rounds_and_counted_as_one() -> None:
    """A worker's task has a time limit: what is left of a file is the next task's."""
    studio = make_studio()
    rows = "".join(f"V{n},C{n},Mia,mia{n}@example.com,fill,2027-03-16T14:30\n" for n in range(3 * PART))
    file = waiting(studio, HEADER + rows)
    bookwork.run_waiting(NOW)
    BookFile.objects.update(state=State.WRITING)

    bookwork.run_waiting(NOW, seconds=0.001)  # over as soon as it has begun
    file.refresh_from_db()
    assert (file.state, file.busy_until, file.result["rounds"]) == ("writing", None, 1)
    assert Visit.objects.count() == PART

    while file.state == "writing":
        assert bookwork.run_waiting(NOW, seconds=0.001) == 1
        file.refresh_from_db()
    assert Visit.objects.count() == 3 * PART
    assert (file.state, file.result["visits"]["new"]) == ("done", 3 * PART)
    assert Message.objects.exists()
