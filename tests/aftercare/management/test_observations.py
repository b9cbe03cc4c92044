from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from django.core.management import CommandError

from aftercare.core.shedding import History, LashSet, Seen
from aftercare.management import observations
from aftercare.management.observations import Observations

HEADER = "client,set_on,observed_on,fraction_left"
JANUARY = [date(2026, 1, day) for day in range(1, 32)]


def read(
    tmp_path: Path, content: str | bytes, today: date | None = None, said: list[str] | None = None
) -> Observations:
    file = tmp_path / "seen.csv"
    file.write_bytes(content.encode() if isinstance(content, str) else content)
    return observations.read(file, today, (said if said is not None else []).append)


def complaint(tmp_path: Path, *rows: str, header: str = HEADER, today: date | None = None) -> str:
    with pytest.raises(CommandError) as caught:
        read(tmp_path, "\n".join([header, *rows]), today)
    assert caught.value.returncode == 1
    return str(caught.value)


def test_rows_of_one_set_are_its_readings_and_a_blank_one_is_worn(tmp_path: Path) -> None:
    found = read(
        tmp_path,
        f"{HEADER},adhesive_lot\n"
        "mia,2026-01-15,2026-01-20,0.9,\n"
        "mia,2026-01-01,2026-01-15,0.6,A1\n"
        "zoe,2026-01-02,2026-01-30,0.35,\n"
        "mia,2026-01-15,,,B2\n"
        "mia,2026-01-01,2026-01-08,.85,\n",
    )

    assert found.histories == [
        History(
            "mia",
            (LashSet(JANUARY[0], "A1", (Seen(JANUARY[7], 0.85), Seen(JANUARY[14], 0.6))),),
            LashSet(JANUARY[14], "B2", (Seen(JANUARY[19], 0.9),)),
        ),
        History("zoe", (LashSet(JANUARY[1], "", (Seen(JANUARY[29], 0.35),)),)),
    ]
    assert found.readings == 4


@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_separator_and_mark_make_no_difference(tmp_path: Path, separator: str, mark: bytes) -> None:
    text = f"{HEADER}\nmia,2026-01-01,2026-01-15,0.6\n".replace(",", separator)

    found = read(tmp_path, mark + text.encode())

    assert found.histories == [History("mia", (LashSet(JANUARY[0], "", (Seen(JANUARY[14], 0.6),)),))]


def test_columns_stand_in_any_order_and_unknown_ones_are_reported(tmp_path: Path) -> None:
    found = read(tmp_path, "Fraction left,room,client,observed_on,set_on\n0.6,2,mia,2026-01-15,2026-01-01\n")

    assert found.histories[0].past[0].seen == (Seen(JANUARY[14], 0.6),)
    assert found.notes == ['Columns that this command does not know were ignored: "room".']


@pytest.mark.parametrize(
    ("text", "share"),
    [("0", 0), ("1", 1), ("1.0", 1), (".5", 0.5), ("0.625", 0.625), ("5e-05", 5e-05), ("6.25E-1", 0.625)],
)
def test_shares_are_read_from_nought_to_one(tmp_path: Path, text: str, share: float) -> None:
    found = read(tmp_path, f"{HEADER}\nmia,2026-01-01,2026-01-15,{text}\n")

    assert found.histories[0].past[0].seen[0].share == share


def test_a_decimal_comma_is_read_where_the_separator_is_another(tmp_path: Path) -> None:
    found = read(tmp_path, f"{HEADER}\nmia,2026-01-01,2026-01-15,0.6\n".replace(",", ";").replace(".", ","))

    assert found.histories[0].past[0].seen[0].share == 0.6


def test_a_row_that_is_there_twice_is_one_reading_and_two_looks_on_one_day_are_two(tmp_path: Path) -> None:
    rows = ["mia,2026-01-01,2026-01-15,0.6"] * 2 + ["mia,2026-01-01,2026-01-15,0.55"]

    found = read(tmp_path, "\n".join([HEADER, *rows]))

    assert [one.share for one in found.histories[0].past[0].seen] == [0.55, 0.6]


def test_what_was_seen_on_the_day_itself_says_nothing(tmp_path: Path) -> None:
    found = read(tmp_path, f"{HEADER}\nmia,2026-01-01,2026-01-01,1\n")

    assert found.histories == [History("mia", (LashSet(JANUARY[0]),))]


def test_a_header_alone_is_no_observation_and_no_fault(tmp_path: Path) -> None:
    assert read(tmp_path, HEADER) == Observations([], 0, [])


@pytest.mark.parametrize(
    ("row", "field", "value", "cure"),
    [
        (",2026-01-01,2026-01-15,0.6", "client", "blank", "write whose set it is"),
        ("mia,,2026-01-15,0.6", "set_on", "blank", "write the date like"),
        ("mia,01/02/2026,2026-01-15,0.6", "set_on", '"01/02/2026"', "write it like 2026-03-09"),
        ("mia,2026-02-30,2026-03-15,0.6", "set_on", '"2026-02-30"', "write it like 2026-03-09"),
        ("mia,20260101,2026-01-15,0.6", "set_on", '"20260101"', "write it like 2026-03-09"),
        ("mia,2026-01-01,2026-01-15T10:00,0.6", "observed_on", '"2026-01-15T10:00"', "write it like"),
        ("mia,2026-01-15,2026-01-01,0.6", "observed_on", "2026-01-01 lies before set_on, 2026-01-15", "swap"),
        ("mia,2026-01-01,2026-01-15,60", "fraction_left", '"60" is unclear', "from 0 to 1, such as 0.6"),
        ("mia,2026-01-01,2026-01-15,60%", "fraction_left", '"60%" is unclear', "from 0 to 1, such as 0.6"),
        ("mia,2026-01-01,2026-01-15,0.6 %", "fraction_left", '"0.6 %" is unclear', "from 0 to 1, such as 0.6"),
        ("mia,2026-01-01,2026-01-15,1.2", "fraction_left", '"1.2" is unclear', "from 0 to 1, such as 0.6"),
        ("mia,2026-01-01,2026-01-15,6e1", "fraction_left", '"6e1" is unclear', "from 0 to 1, such as 0.6"),
        ("mia,2026-01-01,2026-01-15,-0.2", "fraction_left", '"-0.2" is not a number', "write one such as 0.6"),
        ("mia,2026-01-01,2026-01-15,nan", "fraction_left", '"nan" is not a number', "write one such as 0.6"),
        ("mia,2026-01-01,2026-01-15,half", "fraction_left", '"half" is not a number', "write one such as 0.6"),
        ("mia,2026-01-01,2026-01-15,", "fraction_left", 'observed_on is "2026-01-15"', "write both, or leave both"),
        ("mia,2026-01-01,,0.6", "observed_on", 'fraction_left is "0.6"', "write both, or leave both"),
        ("mia,2026-01-01,2026-01-15", "row", '"2026-01-15"', "fill it up to the last column"),
        ("mia,2026-01-01,2026-01-15,0,6", "row", '"6" is the first too many', "between quotes"),
        ("mia,2026-06-01,,", "set_on", "2026-06-01 lies after today, 2026-02-01", "give a later --today"),
        ("mia,2026-01-01,2026-06-01,0.1", "observed_on", "2026-06-01 lies after today", "give a later --today"),
    ],
)
def test_a_bad_row_is_named_with_field_value_and_cure(
    tmp_path: Path, row: str, field: str, value: str, cure: str
) -> None:
    said = complaint(tmp_path, "zoe,2026-01-01,2026-01-15,0.6", row, today=date(2026, 2, 1))

    assert "1 bad rows, nothing was written" in said
    assert f"\nrow 3, {field}: " in said
    assert value in said
    assert cure in said


def test_every_bad_row_is_listed(tmp_path: Path) -> None:
    said = complaint(tmp_path, "mia,x,,", "", "zoe,2026-01-01,2026-01-15,60", "zoe,2026-01-01,2026-01-15,0.6")

    assert [line.split(":")[0] for line in said.splitlines()[1:]] == ["row 2, set_on", "row 4, fraction_left"]


def test_a_client_wears_one_set(tmp_path: Path) -> None:
    said = complaint(tmp_path, "mia,2026-01-01,,", "mia,2026-01-01,,", "mia,2026-01-20,,")

    assert 'row 3, observed_on: row 2 says already which set "mia" now wears: leave' in said
    assert "row 4, observed_on: row 2 says already" in said


def test_the_set_that_is_worn_is_the_last(tmp_path: Path) -> None:
    said = complaint(tmp_path, "mia,2026-01-01,,", "mia,2026-01-20,2026-01-30,0.7")

    assert 'row 2, set_on: 2026-01-01 is not the last set of "mia", another was put on on 2026-01-20: ' in said


def test_a_set_has_one_lot(tmp_path: Path) -> None:
    header = f"{HEADER},adhesive_lot"
    rows = ["mia,2026-01-01,2026-01-09,0.8,A1", "mia,2026-01-01,2026-01-15,0.7,B2", "mia,2026-01-15,,,B2"]

    said = complaint(tmp_path, *rows, header=header)

    assert said.splitlines()[1:] == [
        'row 3, adhesive_lot: "B2" is not the lot that an earlier row has for the same set, "A1": '
        "write one lot in all rows of a set."
    ]


@pytest.mark.parametrize(
    ("content", "where", "cure"),
    [
        (b"", "row 1, file", "export it again"),
        (b"PK\x03\x04more", "row 1, file", 'save it from the spreadsheet as "CSV UTF-8"'),
        (b"client,set_on,fraction_left\n", "row 1, observed_on", "add it, or rename its column"),
        (b"mia,2026-01-01,2026-01-15,0.6\n", "row 1, header", "write the names of the columns"),
        (f'{HEADER}\n"mia,2026-01-01,,\n'.encode(), "row 2, file", "close it"),
    ],
)
def test_a_file_that_is_no_table_is_named_with_the_cure(tmp_path: Path, content: bytes, where: str, cure: str) -> None:
    with pytest.raises(CommandError) as caught:
        read(tmp_path, content)

    assert f"seen.csv: nothing was written.\n{where}: " in str(caught.value)
    assert cure in str(caught.value)


def test_a_file_that_is_not_there_is_named_with_the_cure(tmp_path: Path) -> None:
    with pytest.raises(CommandError, match=r"none\.csv cannot be read .*: name a CSV file"):
        observations.read(tmp_path / "none.csv", None, lambda _text: None)


def test_it_says_how_far_it_is(tmp_path: Path) -> None:
    said: list[str] = []
    row = "mia,2026-01-01,2026-01-15,0.6\n"

    read(tmp_path, f"{HEADER}\n{row * observations.TELL_EVERY}", said=said)

    assert said == ["100,000 rows read"]
