"""How old a book is that comes by feed."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from aftercare import facts
from studio.models import CalendarFeed, Studio
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

TWO_DAYS = timedelta(hours=48)


@pytest.mark.parametrize(
    ("read_at", "old"), [(NOW - TWO_DAYS, False), (NOW - TWO_DAYS - timedelta(seconds=1), True), (None, False)]
)
def test_a_book_by_feed_is_old_after_two_days_without_a_good_reading(read_at: datetime | None, old: bool) -> None:
    studio = make_studio()
    CalendarFeed.objects.create(studio=studio, address="https://c.example/a.ics", asked_at=NOW, read_at=read_at)

    assert facts.book_is_old(Studio.objects.get(), NOW) is old


def test_a_book_that_comes_by_file_is_never_old() -> None:
    assert not facts.book_is_old(make_studio(), NOW)
