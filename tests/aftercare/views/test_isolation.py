"""No one reaches another studio's rows, whatever the route; and no one a page that is not part of her work."""

from __future__ import annotations

from typing import Any

import pytest
from django.urls import reverse

from studio import records
from studio.models import Adhesive, BookFile, CalendarFeed, ClosingDay, ServiceName, Staff, Studio
from tests.people import NOW, make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db

# Route, what it names, and the roles beside the owner that may open it.
ROUTES = [
    ("client_new", "", {"artist", "front desk"}),
    ("client_edit", "client", {"front desk"}),  # the artists who see her, too: tested with the forms
    ("client_consent", "client", {"front desk"}),
    ("client_merge", "client", {"front desk"}),
    ("merges", "", {"front desk"}),
    ("merge_undo", "merge", {"front desk"}),
    ("visit_edit", "visit", {"front desk"}),
    ("visit_cancel", "visit", {"front desk"}),
    ("test_result", "visit", set()),
    ("book", "", {"front desk"}),
    ("book_file", "file", {"front desk"}),
    ("book_file_names", "file", {"front desk"}),
    ("book_file_whole", "file", {"front desk"}),
    ("book_file_confirm", "file", {"front desk"}),
    ("book_file_drop", "file", {"front desk"}),
    ("lines", "", set()),
    ("forecasts", "", set()),
    ("figures", "", {"artist"}),
    ("lots", "", {"artist"}),
    ("lot_wearers", "adhesive", {"artist"}),
    ("lot_report", "adhesive", {"artist"}),
    ("lot_aside", "adhesive", {"artist"}),
    ("early_see_to", "visit", set()),  # an artist for her own visits alone: see test_morning
    ("unhappy_see_to", "visit", set()),
    ("reaction_new", "client", set()),
    ("reaction_release", "reaction", set()),
    ("client_answers", "client", set()),
    ("client_sensitive", "client", set()),
    ("questions", "", set()),
    ("client_pause", "client", {"front desk"}),
    ("client_stop", "client", {"front desk"}),
    ("client_links", "client", {"front desk"}),
    ("client_forget", "client", set()),
    ("settings", "", set()),
    ("studio_facts", "", set()),
    ("closing_days", "", set()),
    ("closing_day_remove", "day", set()),
    ("adhesives", "", {"artist"}),
    ("adhesive", "adhesive", {"artist"}),
    ("service_names", "", {"front desk"}),
    ("service_name_remove", "name", {"front desk"}),
    ("calendar", "", set()),
    ("staff", "", set()),
    ("staff_new", "", set()),
    ("staff_edit", "person", set()),
    ("staff_sign_in", "person", set()),
    ("staff_sign_out", "person", set()),
]


def rows(studio: Studio) -> dict[str, Any]:
    """One row of each kind that a route names."""
    mia, twin = make_client(studio, mobile="+12125550101"), make_client(studio)
    merge = records.merge(kept=mia, gone=twin, by=None, now=NOW)
    file = BookFile.objects.create(
        studio=studio, name="b.csv", format="csv", data=b"x", uploaded_at=NOW, state="preview"
    )
    CalendarFeed.objects.create(studio=studio, address="https://cal.example/a.ics")
    return {
        "client": mia,
        "merge": merge,
        "visit": make_visit(mia),
        "file": file,
        "reaction": records.record_reaction(client=mia, visit=None, words="itchy", by=None, now=NOW),
        "day": ClosingDay.objects.create(studio=studio, date="2027-12-25"),
        "adhesive": Adhesive.objects.create(studio=studio, product="Birch 4", lot="0226"),
        "name": ServiceName.objects.create(studio=studio, name="hybrid", kind="fill"),
        "person": make_staff(studio, "Ivy", signs_in=False),
    }


def address(route: str, kind: str, found: dict[str, Any]) -> str:
    return reverse(route, args=[found[kind].pk] if kind else [])


@pytest.mark.parametrize(("route", "kind"), [(route, kind) for route, kind, _roles in ROUTES if kind])
def test_another_studios_row_is_not_found(route: str, kind: str) -> None:
    browser = sign_in(make_staff(make_studio(), "Olive", is_owner=True))
    elsewhere = address(route, kind, rows(make_studio("elm")))

    answers = {browser.get(elsewhere).status_code, browser.post(elsewhere).status_code}

    assert answers <= {404, 405}
    assert 404 in answers


@pytest.mark.parametrize(("route", "kind", "roles"), ROUTES)
@pytest.mark.parametrize("role", ["owner", "artist", "front desk"])
def test_a_page_is_shown_to_the_roles_whose_work_it_is(route: str, kind: str, roles: set[str], role: str) -> None:
    studio = make_studio()
    browser = sign_in(make_staff(studio, "Olive", **{f"is_{role.replace(' ', '_')}": True}))
    here = address(route, kind, rows(studio))

    answer = browser.get(here)
    if answer.status_code == 405:
        answer = browser.post(here)

    assert (answer.status_code != 403) == (role == "owner" or role in roles)
    assert answer.status_code in (200, 302, 403)


@pytest.mark.parametrize("route", [route for route, kind, _roles in ROUTES if not kind])
def test_nobody_sees_a_page_without_signing_in(route: str, client: Any) -> None:
    assert client.get(reverse(route)).headers["Location"].startswith(reverse("sign_in"))


def test_someone_who_has_left_sees_nothing() -> None:
    studio = make_studio()
    staff = make_staff(studio, "Olive", is_owner=True)
    browser = sign_in(staff)
    Staff.objects.update(is_active=False)

    assert browser.get(reverse("settings")).status_code == 403
