"""What any table as CSV has in common; test_csv.py goes through it with the appointment book's."""

from __future__ import annotations

import pytest

from studio.book import table
from studio.book.text import Unreadable

COLUMNS, NEEDED = ("client", "set_on", "lot"), ("client", "set_on")


def test_rows_have_the_spreadsheets_numbers_and_blank_ones_are_passed_over() -> None:
    found = table.read('\nclient;set_on\nmia;"2026\n01"\n;\nzoe;x\n', COLUMNS, NEEDED)

    assert found.columns == [(0, "client"), (1, "set_on")]
    assert list(found.rows) == [(3, ["mia", "2026\n01"]), (5, ["zoe", "x"])]


def test_rows_are_read_as_they_are_asked_for() -> None:
    found = table.read('client,set_on\nmia,x\n"zoe"y,x\n', COLUMNS, NEEDED)

    assert next(found.rows) == (2, ["mia", "x"])
    with pytest.raises(Unreadable) as caught:
        next(found.rows)
    assert (caught.value.bad.row, caught.value.bad.value) == (3, '"zoe"y,x')
    assert "a quote in the wrong place" in caught.value.bad.problem


def test_a_quote_that_is_never_closed_is_named_by_the_row_that_opens_it() -> None:
    found = table.read('client,set_on\nmia,x\n"zoe,x\nada,x\nbea,x\n', COLUMNS, NEEDED)

    with pytest.raises(Unreadable, match='The row that begins ""zoe,x" opens a quote that is never closed') as caught:
        list(found.rows)
    assert caught.value.bad.row == 3


def test_columns_are_known_however_they_are_spelled_and_the_others_are_noted() -> None:
    found = table.read("Set-on, CLIENT ,room,\n", COLUMNS, NEEDED)

    assert found.columns == [(0, "set_on"), (1, "client")]
    assert (found.width, found.ignored) == (4, ["room", ""])
    assert found.note("the list") == [
        'Columns that the list does not know were ignored: "room".',
        "Columns without a name were ignored: 1.",
    ]


@pytest.mark.parametrize(
    ("record", "problem"),
    [
        (["a", "b"], None),
        (["a", "b", "", " "], None),
        (["a"], "fill it up to the last column"),
        (["a", "b", "c"], '"c" is the first too many'),
    ],
)
def test_a_row_fits_under_its_header_or_says_how_not(record: list[str], problem: str | None) -> None:
    misfit = table.shape(record, 2)

    assert (misfit is None) if problem is None else (misfit is not None and problem in misfit[1])
