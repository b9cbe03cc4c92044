"""Pages of a long list."""

from __future__ import annotations

from typing import Any

import pytest

from aftercare.pages.paging import LAST, stretch
from studio.models import ClosingDay
from tests.cast import make


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("page", "number", "rows", "before", "after"),
    [
        ("", 1, 3, False, True),
        ("2", 2, 3, True, True),
        ("3", 3, 1, True, False),
        ("9", 9, 0, True, False),
        ("0", 1, 3, False, True),
        ("-1", 1, 3, False, True),
        ("²", 1, 3, False, True),
        ("1e3", 1, 3, False, True),
        ("99999", LAST, 0, True, False),
        ("9" * 30, 1, 3, False, True),
    ],
)
def test_whatever_page_is_asked_for_there_is_an_answer(
    page: str, number: int, rows: int, before: bool, after: bool, django_assert_num_queries: Any
) -> None:
    cast = make()
    days = [ClosingDay(studio=cast.studio, date=cast.at(0, day).date()) for day in range(7)]
    ClosingDay.objects.bulk_create(days)

    with django_assert_num_queries(1):
        found = stretch(ClosingDay.objects.order_by("date"), page, 3)

    assert (found.number, len(found.rows), found.has_previous, found.has_next) == (number, rows, before, after)
