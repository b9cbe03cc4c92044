from __future__ import annotations

from datetime import date, timedelta

import pytest
from django.core.exceptions import ValidationError

from studio import records
from studio.models import Client, Studio
from tests.people import NOW, make_client, make_staff, make_studio

pytestmark = pytest.mark.django_db


def test_a_new_clock_marks_every_client_as_changed() -> None:
    mia = make_client(make_studio())
    elsewhere = make_client(make_studio("elm"))

    records.save_studio(studio=mia.studio, by=None, now=NOW, time_zone="America/Chicago")

    assert list(Client.objects.order_by("pk").values_list("pk", "revision")) == [(mia.pk, 2), (elsewhere.pk, 1)]


def test_a_new_telephone_marks_no_client() -> None:
    mia = make_client(make_studio())

    records.save_studio(studio=mia.studio, by=None, now=NOW, phone="+1 212 555 0199")

    assert Client.objects.get().revision == 1


@pytest.mark.parametrize(
    ("fields", "field"),
    [
        ({"time_zone": "EST5"}, "time_zone"),
        ({"region": "ZZ"}, "region"),
        ({"language": "xx"}, "language"),
        ({"date_order": "ymd"}, "date_order"),
        ({"name": ""}, "name"),
    ],
)
def test_bad_facts_name_their_field_and_change_nothing(fields: dict[str, str], field: str) -> None:
    studio = make_studio()
    before = Studio.objects.values().get()

    with pytest.raises(ValidationError) as refused:
        records.save_studio(studio=studio, by=None, now=NOW, **fields)

    assert list(refused.value.message_dict) == [field]
    assert Studio.objects.values().get() == before


def test_a_region_is_kept_in_capitals() -> None:
    assert records.save_studio(studio=make_studio(), by=None, now=NOW, region="gb").region == "GB"


def test_a_closing_day_stands_once_and_bears_on_every_client() -> None:
    mia = make_client(make_studio())
    day = records.save_closing_day(studio=mia.studio, day=None, date=date(2027, 12, 25), by=None, now=NOW)

    with pytest.raises(ValidationError) as refused:
        records.save_closing_day(studio=mia.studio, day=None, date=date(2027, 12, 25), by=None, now=NOW)
    records.remove_closing_day(day=day, by=None, now=NOW)

    assert list(refused.value.message_dict) == ["date"]
    assert Client.objects.get().revision == 3
    assert not mia.studio.closing_days.exists()


def test_an_adhesive_stands_once_a_lot() -> None:
    studio = make_studio()
    records.save_adhesive(studio=studio, adhesive=None, product="Birch 4", lot="0226", by=None, now=NOW)

    with pytest.raises(ValidationError) as refused:
        records.save_adhesive(studio=studio, adhesive=None, product=" Birch 4 ", lot="0226", by=None, now=NOW)
    with pytest.raises(ValidationError) as hours:
        records.save_adhesive(studio=studio, adhesive=None, product="Birch 5", dry_hours=73, by=None, now=NOW)
    with pytest.raises(ValidationError):
        records.save_adhesive(studio=studio, adhesive=None, product=" ", lot="", by=None, now=NOW)

    assert (list(refused.value.message_dict), list(hours.value.message_dict)) == (["lot"], ["dry_hours"])
    assert studio.adhesives.count() == 1


def test_a_service_name_is_one_name_however_it_is_written() -> None:
    studio = make_studio()

    records.save_service_name(studio=studio, name="  Hybrid   FILL ", kind="fill", by=None, now=NOW)
    records.save_service_name(studio=studio, name="hybrid fill", kind="", by=None, now=NOW)

    assert list(studio.service_names.values_list("name", "kind")) == [("hybrid fill", "")]
    with pytest.raises(ValidationError):
        records.save_service_name(studio=studio, name="hybrid fill", kind="haircut", by=None, now=NOW)


def test_a_new_calendar_address_is_read_from_its_beginning() -> None:
    studio = make_studio()
    feed = records.save_feed(studio=studio, address="webcal://cal.example/a.ics", every_minutes=15, by=None, now=NOW)
    feed.etag, feed.read_at = "7", NOW
    feed.save()

    same = records.save_feed(studio=studio, address="https://cal.example/a.ics", every_minutes=30, by=None, now=NOW)
    other = records.save_feed(studio=studio, address="https://cal.example/b.ics", every_minutes=30, by=None, now=NOW)

    assert (feed.address, same.etag, same.every_minutes) == ("https://cal.example/a.ics", "7", 30)
    assert (other.pk, other.etag, other.read_at) == (feed.pk, "", None)


@pytest.mark.parametrize(
    ("address", "every", "field"),
    [
        ("file:///etc/passwd", 15, "address"),
        ("https://", 15, "address"),
        ("https://cal.example/a.ics", 1, "every_minutes"),
    ],
)
def test_a_calendar_that_cannot_be_polled_is_refused(address: str, every: int, field: str) -> None:
    with pytest.raises(ValidationError) as refused:
        records.save_feed(studio=make_studio(), address=address, every_minutes=every, by=None, now=NOW)

    assert list(refused.value.message_dict) == [field]


def test_a_lot_is_set_aside_once_and_taken_back() -> None:
    studio = make_studio()
    ada, noor = make_staff(studio), make_staff(studio, "Noor")
    glue = records.save_adhesive(studio=studio, adhesive=None, product="Birch 4", lot="0419", by=None, now=NOW)

    records.set_aside(adhesive=glue, aside=True, by=ada, now=NOW)
    again = records.set_aside(adhesive=glue, aside=True, by=noor, now=NOW + timedelta(days=1))
    assert (again.set_aside_at, again.set_aside_by) == (NOW, ada)

    back = records.set_aside(adhesive=glue, aside=False, by=noor, now=NOW + timedelta(days=2))
    assert (back.set_aside_at, back.set_aside_by) == (None, None)


def test_another_studios_staff_set_no_lot_aside() -> None:
    glue = records.save_adhesive(studio=make_studio(), adhesive=None, product="Birch 4", lot="1", by=None, now=NOW)

    with pytest.raises(ValidationError):
        records.set_aside(adhesive=glue, aside=True, by=make_staff(make_studio("elm")), now=NOW)

    glue.refresh_from_db()
    assert glue.set_aside_at is None
