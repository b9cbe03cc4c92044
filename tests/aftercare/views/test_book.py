"""The book comes in by a page: nothing changes before the preview is confirmed."""

from __future__ import annotations

from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client as Browser
from django.urls import reverse

from aftercare import bookwork
from studio import clock
from studio.forms.book import LARGEST
from studio.models import BookFile, Client, ServiceName, Staff, Studio, Visit
from tests.people import make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db
HEAD = "visit,client,first_name,mobile,sensitive,service,starts_at\n"
TWO = HEAD + "V1,C1,Mia,212 555 0101,yes,fill,2031-07-01T10:00\nV2,C2,Zoe,212 555 0102,no,lift,2031-07-02T10:00\n"


@pytest.fixture
def desk() -> Browser:
    return sign_in(make_staff(make_studio(), "Dora", is_front_desk=True))


def upload(browser: Browser, text: str, name: str = "book.csv") -> BookFile:
    """Choose a file, and let the worker read it."""
    browser.post(reverse("book"), {"file": SimpleUploadedFile(name, text.encode())})
    bookwork.run_waiting(clock.now())
    return BookFile.objects.latest("pk")


def confirm(browser: Browser, file: BookFile, **fields: Any) -> BookFile:
    browser.post(reverse("book_file_confirm", args=[file.pk]), fields)
    bookwork.run_waiting(clock.now())
    return BookFile.objects.get(pk=file.pk)


def page(browser: Browser, file: BookFile) -> str:
    return browser.get(reverse("book_file", args=[file.pk])).content.decode()


def test_nothing_is_written_before_the_preview_is_confirmed(desk: Browser) -> None:
    file = upload(desk, TWO)
    before = Client.objects.count() + Visit.objects.count()
    shown = page(desk, file)

    done = confirm(desk, file)

    assert (file.state, before, done.state) == ("preview", 0, "done")
    assert "Nothing is written yet" in shown
    assert set(Visit.objects.values_list("client__first_name", "service")) == {("Mia", "fill"), ("Zoe", "lift")}
    assert "Written." in page(desk, done)


def test_a_file_that_is_worked_on_shows_how_far_it_is_and_looks_again(desk: Browser) -> None:
    desk.post(reverse("book"), {"file": SimpleUploadedFile("book.csv", TWO.encode())})
    BookFile.objects.update(done_rows=3, all_rows=10)

    answer = desk.get(reverse("book_file", args=[BookFile.objects.get().pk]))

    assert answer.headers["Refresh"] == "2"
    assert b"3 of 10" in answer.content


def test_a_second_tap_on_the_go_writes_once(desk: Browser) -> None:
    file = upload(desk, TWO)

    confirm(desk, file)
    again = confirm(desk, file)

    assert (again.state, Visit.objects.count()) == ("done", 2)


def test_bad_rows_are_listed_and_left_out_only_when_that_is_ticked(desk: Browser) -> None:
    file = upload(desk, TWO + "V3,C3,Ida,12,,fill,2031-07-03T10:00\n")
    shown = page(desk, file)

    refused = confirm(desk, file)
    none = Visit.objects.count()
    done = confirm(desk, file, skip_bad="on")

    assert "mobile" in shown
    assert (refused.state, none) == ("preview", 0)
    assert (done.state, Visit.objects.count()) == ("done", 2)


def test_an_unknown_service_name_is_asked_for_once(desk: Browser) -> None:
    file = upload(desk, HEAD + "V1,C1,Mia,,,Wispy Refresh,2031-07-01T10:00\n")
    assert file.result["unknown_services"] == ["Wispy Refresh"]

    desk.post(reverse("book_file_names", args=[file.pk]), {"kind_0": "fill"})
    bookwork.run_waiting(clock.now())
    file.refresh_from_db()
    confirm(desk, file)

    assert ServiceName.objects.get().kind == "fill"
    assert file.result["unknown_services"] == []
    assert Visit.objects.get().service == "fill"


def test_a_name_that_is_no_visit_at_all_is_kept_as_such(desk: Browser) -> None:
    file = upload(desk, HEAD + "V1,C1,Mia,,,Lunch,2031-07-01T10:00\n")

    desk.post(reverse("book_file_names", args=[file.pk]), {"kind_0": "-"})

    assert ServiceName.objects.get().kind == ""


def test_a_whole_book_shows_what_it_lacks_and_cancels_it_when_confirmed(desk: Browser) -> None:
    confirm(desk, upload(desk, TWO))
    file = upload(desk, TWO.rsplit("V2", 1)[0])
    days = {"whole_from": "2031-07-01", "whole_to": "2031-07-31"}

    desk.post(reverse("book_file_whole", args=[file.pk]), days)
    bookwork.run_waiting(clock.now())
    file.refresh_from_db()
    shown, still = page(desk, file), Visit.objects.filter(status="cancelled").count()
    confirm(desk, file)

    assert "Would be cancelled" in shown
    assert still == 0
    assert Visit.objects.get(status="cancelled").client.first_name == "Zoe"


def test_without_those_words_a_missing_visit_is_listed_and_stays(desk: Browser) -> None:
    confirm(desk, upload(desk, TWO))
    file = upload(desk, TWO.rsplit("V2", 1)[0])

    confirm(desk, file)

    assert [gone["client"] for gone in file.result["gone"]] == ["Zoe"]
    assert not Visit.objects.filter(status="cancelled").exists()


def test_days_that_run_backwards_are_refused(desk: Browser) -> None:
    file = upload(desk, TWO)

    answer = desk.post(
        reverse("book_file_whole", args=[file.pk]), {"whole_from": "2031-07-31", "whole_to": "2031-07-01"}
    )

    file.refresh_from_db()
    assert list(answer.context["whole"].errors) == ["whole_to"]
    assert (file.state, file.whole_from) == ("preview", None)


def test_the_preview_tells_the_front_desk_that_a_health_note_changes_but_not_how(desk: Browser) -> None:
    confirm(desk, upload(desk, TWO))
    file = upload(desk, TWO.replace(",yes,", ",no,"))

    answer = desk.get(reverse("book_file", args=[file.pk]))

    change = next(one for one in answer.context["result"]["changes"] if one["field"] == "sensitive")
    assert (change["before"], change["after"]) == ("…", "…")


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_health_note_that_cannot_be_used_is_told_to_the_front_desk_without_its_words(
    desk: Browser, language: str
) -> None:
    Staff.objects.update(language=language)
    text = TWO.replace(",yes,", ',"latex ""allergy"" since May",').replace("V2,C2,Zoe", "V2,C3,Zoe")
    file = upload(desk, text + "V3,C3,Zoe,212 555 0102,yes,lift,2031-07-03T10:00\n")
    assert any("latex" in bad["problem"] for bad in file.result["bad_rows"])

    rows = desk.get(reverse("book_file", args=[file.pk])).context["bad"]

    assert [(bad["row"], bad["field"], bad["value"]) for bad in rows] == [
        (number, "sensitive", "…") for number in (2, 3, 4)
    ]
    problems = [bad["problem"] for bad in rows]
    assert not [one for one in problems if "latex" in one or "allergy" in one or '"yes"' in one or '"no"' in one]
    assert ("leave the cell blank" in problems[0]) == (language == "en")
    assert "4" in problems[1]  # where to look stays


def test_the_preview_speaks_of_hours_on_the_studios_wall_clock_and_of_yes_and_no() -> None:
    owner = sign_in(make_staff(make_studio(), "Olive", is_owner=True))
    confirm(owner, upload(owner, TWO))
    file = upload(owner, TWO.replace(",yes,", ",no,").replace("2031-07-01T10:00", "2031-07-01T12:00"))

    answer = owner.get(reverse("book_file", args=[file.pk]))

    changes = {one["field"]: (one["before"], one["after"]) for one in answer.context["result"]["changes"]}
    assert changes == {"sensitive": ("yes", "no"), "starts_at": ("1 Jul 2031, 10:00 am", "1 Jul 2031, 12:00 pm")}


def test_a_file_of_nothing_but_bad_rows_is_shown_in_part_and_counted_in_full(desk: Browser) -> None:
    rows = "".join(f"V{number},C{number},Ida,12,,fill,2031-07-03T10:00\n" for number in range(103))

    shown = page(desk, upload(desk, HEAD + rows))

    assert "103 fields that cannot be used" in shown
    assert "And 3 more." in shown


def test_a_file_with_nothing_to_write_offers_no_writing_but_the_way_back(desk: Browser) -> None:
    shown = page(desk, upload(desk, HEAD + "V1,C1,Ida,12,,fill,2031-07-03T10:00\n"))

    assert "Mend what is listed above and bring the file in again." in shown
    assert "Write it" not in shown


def test_the_page_says_which_columns_a_file_needs_and_the_desk_reads_no_word_on_health(desk: Browser) -> None:
    owner = sign_in(make_staff(Studio.objects.get(), "Olive", is_owner=True))

    at_the_desk, to_the_owner = (browser.get(reverse("book")).content.decode() for browser in (desk, owner))

    assert "<code>starts_at</code>" in at_the_desk
    assert "sensitive" not in at_the_desk
    assert "<code>sensitive</code>" in to_the_owner


def test_a_file_over_20_mb_is_refused_with_the_cure(desk: Browser) -> None:
    answer = desk.post(reverse("book"), {"file": SimpleUploadedFile("book.csv", b"x" * (LARGEST + 1))})

    assert b"export fewer months" in answer.content
    assert not BookFile.objects.exists()


@pytest.mark.parametrize(
    ("name", "text", "format"),
    [
        ("book.csv", TWO, "csv"),
        ("book.txt", TWO, "csv"),
        ("calendar.ics", "BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n", "ics"),
        ("calendar", "\ufeffbegin:vcalendar\r\nEND:VCALENDAR\r\n", "ics"),
    ],
)
def test_a_calendar_is_told_from_a_spreadsheet(desk: Browser, name: str, text: str, format: str) -> None:
    desk.post(reverse("book"), {"file": SimpleUploadedFile(name, text.encode())})

    assert BookFile.objects.get().format == format


def test_a_forgotten_file_leaves_its_visits(desk: Browser) -> None:
    file = confirm(desk, upload(desk, TWO))

    desk.post(reverse("book_file_drop", args=[file.pk]))

    assert (BookFile.objects.count(), Visit.objects.count()) == (0, 2)


def test_a_file_that_is_worked_on_is_not_forgotten(desk: Browser) -> None:
    file = upload(desk, TWO)
    BookFile.objects.update(state="writing")

    desk.post(reverse("book_file_drop", args=[file.pk]))

    assert BookFile.objects.exists()


def test_the_book_shows_a_week_on_the_studios_wall_clock() -> None:
    studio = make_studio()
    mia = make_client(studio)
    # Sunday 23:00 and Monday 01:00 in New York are both Monday in UTC.
    sunday = make_visit(mia, starts_at="2031-07-07T03:00:00Z")
    monday = make_visit(mia, starts_at="2031-07-07T05:00:00Z")
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    week = browser.get(reverse("book"), {"week": "2031-07-09"}).context
    before = browser.get(reverse("book"), {"week": "2031-07-06"}).context

    assert [visit.pk for _day, visits in week["days"] for visit in visits] == [monday.pk]
    assert [visit.pk for _day, visits in before["days"] for visit in visits] == [sunday.pk]


@pytest.mark.parametrize("week", ["next", "2031-13-01", "0001-01-01"])
def test_a_week_that_cannot_be_read_is_this_week_and_says_so(desk: Browser, week: str) -> None:
    assert "no date" in desk.get(reverse("book"), {"week": week}).content.decode()
