"""Tables of figures, in words and for a spreadsheet."""

from __future__ import annotations

import csv
import io
from decimal import Decimal

import pytest

from aftercare.core.rates import Figure
from aftercare.core.waits import Wait
from aftercare.pages.report.table import (
    COUNT,
    DAYS,
    PER_HUNDRED,
    PERCENT,
    POINTS,
    WAIT,
    WORDS,
    Row,
    Table,
    as_csv,
    cost,
    harmless,
)

FIGURE = Figure(0.0234, 0.0151, 0.0351, 885, 60)


def read(table: Table) -> list[list[str]]:
    text = as_csv(table, [("Time zone", "America/New_York")])
    assert text.startswith("\ufeff")
    assert "\r\n" in text
    return list(csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline="")))


@pytest.mark.parametrize("begin", ["=", "+", "-", "@", "\t", "\r", "\n"])
def test_no_cell_is_one_that_a_spreadsheet_calculates(begin: str) -> None:
    """Source: OWASP, "CSV Injection": cells that begin with one of these are harmful."""
    name = f'{begin}HYPERLINK("https://evil.example";"x")'
    table = Table("t", "T", f"{begin}first", [(f"{begin}head", WORDS)], [Row(name, [f"{begin}cmd|' /C calc'!A0"])])

    rows = read(table)

    assert [cell for row in rows for cell in row if cell.startswith(begin)] == []
    assert rows[1][0] == f"'{name}"


def test_quotes_commas_and_lines_within_stay_in_their_cell() -> None:
    rows = read(Table("t", "T", "Artist", [("Sets", COUNT)], [Row('Ada "the" artist,\nof =1+1', [3])]))

    assert rows == [["Artist", "Sets", "Time zone"], ['Ada "the" artist,\nof =1+1', "3", "America/New_York"]]


def test_a_figure_is_three_plain_numbers_whatever_the_language() -> None:
    heads = [("Rate", PER_HUNDRED), ("Wait", WAIT), ("Days", DAYS)]
    rows = read(Table("t", "T", "Which", heads, [Row("all", [FIGURE, Wait(3.5, 1.25, None, 9, 2), 18.55])]))

    assert rows[0][1:7] == ["Rate", "Rate, low", "Rate, high", "Wait, hours", "Wait, low, hours", "Wait, high, hours"]
    assert rows[1][1:] == ["2.34", "1.51", "3.51", "3.5", "1.25", "", "18.6", "America/New_York"]


def test_a_range_is_the_same_on_the_page_and_in_the_spreadsheet() -> None:
    """Of a share no range reaches beyond none and all; a difference below 0 is a number that can be added up."""
    heads = [("a", PERCENT), ("b", POINTS)]
    table = Table(
        "t", "T", "Which", heads, [Row("all", [Figure(0.5, -0.1, 1.1, 2, 2), Figure(0.02, -0.015, 0.055, 2, 2)])]
    )

    assert [cell.sure for cell, _number in table.lines[0][1]] == ["0 to 100", "-1.5 to 5.5"]
    assert read(table)[1][1:7] == ["50", "0", "100", "2", "-1.5", "5.5"]


@pytest.mark.parametrize(("amount", "plain"), [("0.3000", "0.3"), ("1234567.50", "1234567.5"), ("2000000", "2000000")])
def test_sums_of_small_coins_are_exact(amount: str, plain: str) -> None:
    rows = read(Table("t", "T", "Which", [("Price", cost("COP"))], [Row("all", [Decimal(amount)])]))

    assert rows[1][1] == plain


def test_what_is_not_known_is_an_empty_cell_and_a_dash() -> None:
    table = Table("t", "T", "Which", [("Rate", PERCENT)], [Row("all", [None])])

    assert read(table)[1] == ["all", "", "", "", "America/New_York"]
    assert table.lines[0][1][0][0].words == "–"


@pytest.mark.parametrize(
    ("wait", "words", "sure"),
    [
        (Wait(0.2, 0.1, 0.75, 9, 0), "12 min", "6 min to 45 min"),
        (Wait(3.5, 1.0, 60.0, 9, 0), "3.5 h", "1.0 h to 2 days"),
        (Wait(30.0, 20.0, None, 9, 3), "30.0 h", "20.0 h or more"),
        (Wait(None, None, None, 1, 1), "not yet", ""),
    ],
)
def test_waits_are_said_as_people_do(wait: Wait, words: str, sure: str) -> None:
    [(_row, [(cell, is_number)])] = Table("t", "T", "Which", [("Wait", WAIT)], [Row("all", [wait])]).lines

    assert (cell.words, cell.sure, is_number) == (words, sure, True)


def test_rates_are_said_with_their_range() -> None:
    heads = [("a", PER_HUNDRED), ("b", PERCENT)]
    [(_row, cells)] = Table("t", "T", "Which", heads, [Row("all", [FIGURE, Figure(0.5, -0.1, 1.1, 2, 2)])]).lines

    assert [(cell.words, cell.sure) for cell, _number in cells] == [("2.3", "1.5 to 3.5"), ("50 %", "0 to 100")]


def test_words_that_nothing_calculates_stay_as_they_are() -> None:
    assert harmless("Ada = artist") == "Ada = artist"
