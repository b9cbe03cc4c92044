"""A long file in parts."""

from __future__ import annotations

import pytest

from studio.book import compare
from studio.book.compare import Comparison
from studio.book.parts import PART, chunks, parts
from studio.book.rows import Row
from studio.models import Studio
from tests.books import WHOLE_WEEK, book_of, bring_in, row
from tests.people import make_studio

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def of(studio: Studio, *rows: Row) -> Comparison:
    return compare.compare(book_of(*rows), studio)


def test_a_client_stands_in_one_part_with_all_her_visits(studio: Studio) -> None:
    clients = PART * 2 // 5
    rows = [row(f"V{number}", f"C{number % clients}") for number in range(PART * 2 + 1)]

    made = list(parts(of(studio, *rows)))

    assert [len(part.visits) for part in made] == [PART + 1, PART]  # the first client has one visit more
    homes = [{visit.client for visit in part.visits} for part in made]
    assert all(set(part.clients) == home for part, home in zip(made, homes, strict=True))
    assert sum(map(len, homes)) == len(set.union(*homes)) == clients


def test_what_stands_already_is_in_no_part(studio: Studio) -> None:
    bring_in(studio, row(), row("V2", "C2"))

    made = list(parts(of(studio, row(), row("V2", "C2", minutes=90))))

    assert [[visit.row.visit for visit in part.visits] for part in made] == [["V2"]]


def test_a_client_who_changed_is_written_without_a_visit_that_did(studio: Studio) -> None:
    bring_in(studio, row())

    (part,) = parts(of(studio, row(email="mia@mail.example")))

    assert (part.visits, list(part.clients)) == ([], ["C1"])


def test_an_older_version_is_in_no_part(studio: Studio) -> None:
    bring_in(studio, row(sequence=2), source="ics")

    assert not list(parts(compare.compare(book_of(row(sequence=1, minutes=9), source="ics"), studio)))


def test_the_last_part_calls_off_what_is_off(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))

    (part,) = parts(compare.compare(book_of(row()), studio, whole=WHOLE_WEEK))

    assert [one.reference for one in part.to_cancel] == ["V2"]


def test_nothing_to_write_is_no_part(studio: Studio) -> None:
    assert not list(parts(of(studio)))


def test_chunks_are_short_enough_for_any_database() -> None:
    assert [len(some) for some in chunks(range(1001))] == [500, 500, 1]
