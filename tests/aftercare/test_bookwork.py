"""The book's standing work: files that wait to be read or written."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from aftercare import bookwork, imports
from aftercare.models import Message
from studio import clock
from studio.models import BookFile, Studio, Visit
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

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

    BookFile.objects.update(state=BookFile.State.WRITING)
    assert bookwork.run_waiting(NOW) == 1
    file.refresh_from_db()
    assert (file.state, file.busy_until) == ("done", None)
    assert file.result["messages"]["planned"] == Message.objects.count() > 0


def test_a_bad_row_brings_the_file_back_to_its_preview() -> None:
    file = waiting(make_studio(), HEADER + "V1,C1,Mia,,brows,2027-03-16T14:30\n", state=BookFile.State.WRITING)

    bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert file.state == "preview"
    assert file.result["bad_rows"][0]["field"] == "service"
    assert file.result["unknown_services"] == ["brows"]
    assert not Visit.objects.exists()


def test_a_whole_book_cancels_what_it_lacks_once_it_is_confirmed() -> None:
    studio = make_studio()
    waiting(studio, state=BookFile.State.WRITING)
    bookwork.run_waiting(NOW)
    days = {"whole_from": date(2027, 3, 15), "whole_to": date(2027, 3, 20)}
    other = GOOD.replace("V1", "V2").replace("C1", "C2")
    file = waiting(studio, other, **days)

    bookwork.run_waiting(NOW)
    file.refresh_from_db()
    assert [one["visit"] for one in file.result["to_cancel"]] == ["V1"]
    assert Visit.objects.get().status == "booked"

    BookFile.objects.filter(pk=file.pk).update(state=BookFile.State.WRITING)
    bookwork.run_waiting(NOW)
    assert dict(Visit.objects.values_list("refs__reference", "status")) == {"V1": "cancelled", "V2": "booked"}


def test_a_file_that_another_worker_has_is_left_to_it_until_it_falls_silent() -> None:
    file = waiting(make_studio(), busy_until=clock.now() + timedelta(minutes=1))  # by the database's own clock
    assert bookwork.run_waiting(NOW) == 0

    BookFile.objects.update(busy_until=clock.now() - timedelta(seconds=1))
    assert bookwork.run_waiting(NOW) == 1
    file.refresh_from_db()
    assert file.state == "preview"


def test_a_fault_of_ours_is_kept_with_the_file_where_the_person_sees_it(monkeypatch: pytest.MonkeyPatch) -> None:
    file = waiting(make_studio())
    monkeypatch.setitem(imports.READERS, "csv", None)  # a fault to be had

    bookwork.run_waiting(NOW)

    file.refresh_from_db()
    assert file.state == "failed"
    assert "nothing of this file was written" in file.result["problem"]
