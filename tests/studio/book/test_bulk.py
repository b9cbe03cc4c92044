"""Changing many rows at once."""

from __future__ import annotations

from decimal import Decimal

import pytest

from studio.book import bulk
from studio.models import Visit, VisitRef
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


def test_the_fields_named_are_written_and_no_others() -> None:
    mia = make_client(make_studio())
    visits = [make_visit(mia, minutes=75 + number) for number in range(3)]
    for number, visit in enumerate(visits):
        visit.minutes, visit.room, visit.share_left, visit.starts_at = 30, "2", Decimal("62.5") + number, NOW
        visit.artist = None

    bulk.update(visits[:2], ["room", "share_left", "starts_at", "artist"])

    rows = Visit.objects.order_by("pk").values_list("minutes", "room", "share_left", "starts_at")
    assert list(rows)[:2] == [(75, "2", Decimal("62.5"), NOW), (76, "2", Decimal("63.5"), NOW)]
    assert list(rows)[2][:3] == (77, "", None)


def test_json_is_written_as_json() -> None:
    visit = make_visit(make_client(make_studio()))
    ref = VisitRef.objects.create(studio=visit.studio, source="csv", reference="V1", visit=visit)
    ref.said = {"minutes": 75, "artist": "Zoë", "share_left": 62.5, "missing": True}

    bulk.update([ref], ["said"])

    assert VisitRef.objects.get().said == ref.said


def test_no_rows_are_no_statement(django_assert_num_queries: pytest.FixtureRequest) -> None:
    with django_assert_num_queries(0):  # type: ignore[operator]  # pytest-django's
        bulk.update([], ["minutes"])
