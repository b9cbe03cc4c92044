"""Pages of a long list."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from aftercare.pages.paging import Key, Stream, Stretch, stretch
from studio.models import Visit
from tests.cast import Cast, make

DAY = datetime(2027, 3, 9, 12, tzinfo=UTC)
SIZE = 3


@pytest.fixture
def cast(db: None) -> Cast:
    """Eight visits of two artists, two of each moment."""
    cast = make()
    her = cast.client("Mia")
    for number in range(8):
        cast.visit(her, DAY + timedelta(days=number // 2), artist=cast.noor if number % 2 else cast.ada)
    return cast


def key(visit: Visit) -> Key:
    return visit.starts_at, visit.pk


def read(cast: Cast, page: str, *, falling: bool = False) -> Stretch[Visit]:
    parts = [Stream(Visit.objects.filter(artist=artist), "starts_at") for artist in (cast.ada, cast.noor)]
    return stretch(parts, key, page, SIZE, falling=falling)


@pytest.mark.parametrize("falling", [False, True])
def test_one_goes_to_the_end_and_back_and_meets_each_row_once(falling: bool, cast: Cast) -> None:
    every = sorted(Visit.objects.all(), key=key, reverse=falling)

    there = [read(cast, "", falling=falling)]
    while there[-1].after:
        there.append(read(cast, there[-1].after, falling=falling))
    back = [there[-1]]
    while back[-1].before:
        back.append(read(cast, back[-1].before, falling=falling))

    assert [visit for page in there for visit in page.rows] == every
    assert [len(page.rows) for page in there] == [3, 3, 2]
    assert [page.rows for page in back] == [page.rows for page in reversed(there)]
    assert there[0].before == ""


def test_what_comes_in_meanwhile_moves_nothing_on_the_pages_behind(cast: Cast) -> None:
    second = read(cast, read(cast, "").after)

    cast.visit(cast.clients["Mia"], DAY - timedelta(days=1), artist=cast.ada)

    assert read(cast, read(cast, second.before).after).rows == second.rows


def test_back_past_the_beginning_is_the_first_page_whole(cast: Cast) -> None:
    first = read(cast, "")
    at, pk = key(first.rows[1])

    assert read(cast, f"b{int(at.timestamp()) * 1_000_000}-{pk}") == first


@pytest.mark.parametrize("page", ["2", "-1", "²", "a", "a1-", "a-1", "ax-1", "c1-1", "a²-1", "a1-1" + "9" * 60])
def test_what_names_no_place_is_the_first_page(page: str, cast: Cast) -> None:
    assert read(cast, page) == read(cast, "")


def test_a_place_past_every_date_is_the_first_page(cast: Cast) -> None:
    assert read(cast, "a" + "9" * 30 + "-1") == read(cast, "")


def test_a_page_is_a_query_a_part_of_the_list(cast: Cast, django_assert_num_queries: Any) -> None:
    with django_assert_num_queries(2):
        read(cast, "")


def test_an_empty_list_is_one_empty_page(cast: Cast) -> None:
    Visit.objects.all().delete()

    assert read(cast, "") == Stretch([], "", "")
