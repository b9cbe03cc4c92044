"""What a book writes of visits, field by field."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from typing import Any

import pytest

from studio import records
from studio.models import Adhesive, Client, Staff, Studio, Visit, VisitRef
from tests.books import WHOLE_WEEK, bring_in, row
from tests.people import NOW, make_staff, make_studio

pytestmark = pytest.mark.django_db

LATER = NOW + timedelta(hours=5)
MORNING = "2027-03-09T12:00:00Z"  # three hours before NOW

# Common practice, no source.
MINUTES = {
    "full set": 180,
    "fill": 75,
    "removal": 45,
    "patch test": 15,
    "touch-up": 30,
    "lift": 60,
    "consultation": 30,
    "other": 30,
}


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def visit(reference: str = "V1") -> Visit:
    return Visit.objects.select_related("adhesive", "artist").get(refs__reference=reference)


def used(reference: str = "V1") -> tuple[str, str] | None:
    adhesive = visit(reference).adhesive
    return (adhesive.product, adhesive.lot) if adhesive else None


def test_every_column_about_a_visit_is_kept(studio: Studio) -> None:
    says: dict[str, Any] = {
        "service": "fill",
        "service_name": "Two-week top-up",
        "artist": "Ada",
        "starts_at": "2027-03-01T19:30:00Z",
        "minutes": 80,
        "status": "done",
        "share_left": 62.5,
        "adhesive": "Birch 4",
        "adhesive_lot": "0226",
    }

    bring_in(studio, row(**says))

    found = visit()
    assert (found.service, found.service_name, found.minutes, found.status) == ("fill", "Two-week top-up", 80, "done")
    assert found.starts_at == datetime(2027, 3, 1, 19, 30, tzinfo=UTC)
    assert (found.share_left, found.share_seen) == (Decimal("62.5"), "seen")
    assert (found.artist and found.artist.name, used()) == ("Ada", ("Birch 4", "0226"))
    assert (found.heard_at, found.heard_as) == (NOW, "done")
    assert VisitRef.objects.get().said == {**says, "client": "C1"}


@pytest.mark.parametrize(("service", "minutes"), MINUTES.items())
def test_a_visit_takes_the_usual_minutes_of_its_service(studio: Studio, service: str, minutes: int) -> None:
    bring_in(studio, row(service=service))

    assert (visit().minutes, visit().status) == (minutes, "booked")


def test_another_service_takes_its_own_usual_minutes(studio: Studio) -> None:
    bring_in(studio, row(service="fill"))

    bring_in(studio, row(service="full set"))

    assert visit().minutes == 180


def test_minutes_that_the_book_or_a_person_stated_stay_with_another_service(studio: Studio) -> None:
    bring_in(studio, row(minutes=75), row("V2"))
    records.save_visit(studio=studio, visit=visit("V2"), by=None, now=NOW, minutes=100)

    bring_in(studio, row(service="full set"), row("V2", service="full set"))

    assert (visit().minutes, visit("V2").minutes) == (75, 100)


def test_three_changed_fields_change_three_fields_and_hand_edits_stay(studio: Studio) -> None:
    bring_in(studio, row(minutes=75, artist="Ada", service_name="fill"))
    by_hand = {"room": "2", "style": "hybrid", "note": "window seat"}
    records.save_visit(studio=studio, visit=visit(), by=None, now=NOW, service="lift", **by_hand)  # type: ignore[arg-type]  # three texts
    before: dict[str, Any] = dict(Visit.objects.values().get())

    bring_in(studio, row(minutes=90, artist="Noor", starts_at="2027-03-12T20:00:00Z", service_name="fill"))

    after: dict[str, Any] = dict(Visit.objects.values().get())
    changed = {name for name in after if after[name] != before[name]}
    assert changed == {"minutes", "artist_id", "starts_at", "revision", "changed_at"}


def test_an_unknown_artist_gets_a_record_without_sign_in_and_is_one_in_any_capitals(studio: Studio) -> None:
    bring_in(studio, row(artist="Zoë Ångström"), row("V2", artist="ZOË ÅNGSTRÖM"))

    staff = Staff.objects.get()
    assert (staff.name, staff.is_artist, staff.is_owner, staff.user) == ("Zoë Ångström", True, False, None)
    assert staff.visits.count() == 2


def test_a_known_artist_keeps_her_roles(studio: Studio) -> None:
    olga = make_staff(studio, "Olga", is_owner=True)

    bring_in(studio, row(artist="olga"))

    olga.refresh_from_db()
    assert (visit().artist, olga.is_owner, Staff.objects.count()) == (olga, True, 1)


@pytest.mark.parametrize(
    ("said", "found"),
    [
        ([{"adhesive": "Birch 4", "adhesive_lot": "0226"}], ("Birch 4", "0226")),
        ([{"adhesive": "Birch 4"}], ("Birch 4", "")),
        ([{"adhesive_lot": "0226"}], ("", "0226")),
        ([{}], None),
        ([{"adhesive": "Birch 4", "adhesive_lot": "0226"}, {}], ("Birch 4", "0226")),
        ([{"adhesive": "Birch 4"}, {"adhesive_lot": "0226"}], ("Birch 4", "0226")),
        ([{"adhesive_lot": "0226"}, {"adhesive": "Birch 4"}], ("Birch 4", "0226")),
        ([{"adhesive": "Birch 4", "adhesive_lot": "0226"}, {"adhesive_lot": "0419"}], ("Birch 4", "0419")),
        (
            [{"adhesive": "Birch 4", "adhesive_lot": "1"}, {"adhesive": "Alder", "adhesive_lot": "1"}],
            ("Alder", "1"),
        ),
        ([{}, {"adhesive": "Birch 4", "adhesive_lot": "0226"}], ("Birch 4", "0226")),
    ],
)
def test_product_and_lot_come_together_or_apart(
    studio: Studio, said: list[dict[str, Any]], found: tuple[str, str] | None
) -> None:
    for says in said:
        bring_in(studio, row(status="done", **says))

    assert used() == found


def test_one_product_is_one_in_any_capitals_and_spaces(studio: Studio) -> None:
    bring_in(studio, row(adhesive="Birch 4", adhesive_lot="a-1"), row("V2", adhesive="BIRCH  4", adhesive_lot="A-1"))

    assert Adhesive.objects.count() == 1


def test_a_product_is_never_guessed_from_its_lot_whatever_came_first(studio: Studio) -> None:
    rows = [row(adhesive="Birch 4", adhesive_lot="0226"), row("V2", adhesive_lot="0226")]
    bring_in(studio, *rows)
    elm = make_studio("elm")
    for one in reversed(rows):
        bring_in(elm, one)

    for place in (studio, elm):
        found = Visit.objects.filter(studio=place).values_list("refs__reference", "adhesive__product", "adhesive__lot")
        assert set(found) == {("V1", "Birch 4", "0226"), ("V2", "", "0226")}


def test_a_new_lot_keeps_the_dry_hours_of_its_product_and_a_lot_alone_those_of_the_lot(studio: Studio) -> None:
    Adhesive.objects.create(studio=studio, product="Birch 4", lot="0226", dry_hours=36)

    bring_in(studio, row(adhesive="birch 4", adhesive_lot="0419"), row("V2", adhesive_lot="0226"))

    assert set(Adhesive.objects.values_list("dry_hours", flat=True)) == {36}


@pytest.mark.parametrize("before", [["booked"], ["booked", "missed"], ["booked", "cancelled"], ["missed", "booked"]])
def test_a_visit_once_known_as_booked_ends_when_the_book_says_that_it_is_done(
    studio: Studio, before: list[str]
) -> None:
    for status in before:
        bring_in(studio, row(status=status, starts_at=MORNING))

    bring_in(studio, row(status="done", starts_at=MORNING), now=LATER)

    assert visit().end == LATER


def test_a_visit_heard_to_be_done_before_its_booked_end_ends_then(studio: Studio) -> None:
    bring_in(studio, row(starts_at="2027-03-09T14:30:00Z"))

    bring_in(studio, row(status="done", starts_at="2027-03-09T14:30:00Z"))

    assert visit().end == datetime(2027, 3, 9, 15, 45, tzinfo=UTC)


def test_a_visit_first_heard_of_as_done_ends_at_its_booked_end(studio: Studio) -> None:
    bring_in(studio, row(status="done", starts_at=MORNING))

    bring_in(studio, row(status="done", starts_at=MORNING, minutes=60), now=LATER)

    assert visit().end == datetime(2027, 3, 9, 13, tzinfo=UTC)


def test_a_visit_that_is_called_off_and_on_again_is_booked(studio: Studio) -> None:
    bring_in(studio, row())
    bring_in(studio, row(status="cancelled"))

    bring_in(studio, row(status="booked"))

    assert (visit().status, visit().marked_at) == ("booked", None)


def test_a_booked_visit_whose_status_a_person_changed_follows_the_book_once_it_changes(studio: Studio) -> None:
    bring_in(studio, row(status="booked"))
    records.cancel_visit(visit=visit(), by=None, now=NOW)

    bring_in(studio, row(status="booked"))
    assert visit().status == "cancelled"
    bring_in(studio, row(status="missed"))
    assert visit().status == "missed"


def test_a_visit_whose_client_the_book_corrects_goes_over_to_her(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))
    mia = Client.objects.get()
    Client.objects.update(planned_revision=mia.revision)

    bring_in(studio, row(client="C2", first_name="Zoe"), row("V2"))
    again = bring_in(studio, row(client="C2", first_name="Zoe"), row("V2"))

    assert (visit().client.first_name, visit("V2").client.first_name) == ("Zoe", "Mia")
    assert again.counts()["visits"] == {"new": 0, "changed": 0, "same": 2, "gone": 0}
    mia.refresh_from_db()
    assert mia.revision > mia.planned_revision, "she is planned anew, as a visit of hers is gone"


def test_a_newer_version_of_an_event_is_remembered_though_nothing_else_changed(studio: Studio) -> None:
    bring_in(studio, row(sequence=1), source="ics")

    bring_in(studio, row(sequence=5), source="ics")
    bring_in(studio, row(sequence=4, minutes=20), source="ics")

    assert visit().minutes == 75


def test_a_visit_marked_done_meanwhile_is_not_called_off(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))
    Visit.objects.filter(refs__reference="V2").update(status="done")

    bring_in(studio, row(), whole=WHOLE_WEEK)

    assert visit("V2").status == "done"


def test_a_visit_that_was_called_off_for_missing_is_booked_again_once_the_book_has_it(studio: Studio) -> None:
    bring_in(studio, row(status="booked"), row("V2", status="booked"))
    bring_in(studio, row(status="booked"), whole=WHOLE_WEEK)
    assert visit("V2").status == "cancelled"

    bring_in(studio, row(status="booked"), row("V2", status="booked"))

    assert visit("V2").status == "booked"


def test_a_visit_that_was_called_off_for_missing_stands_again_though_the_book_never_states_a_status(
    studio: Studio,
) -> None:
    bring_in(studio, row(), row("V2"))
    bring_in(studio, row(), whole=WHOLE_WEEK)

    bring_in(studio, row(), row("V2"))

    assert visit("V2").status == "booked"
