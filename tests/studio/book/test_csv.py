import csv as standard
import io
import re
from datetime import UTC, datetime
from pathlib import Path
from time import perf_counter
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.book import csv
from studio.book.rows import COLUMNS, BadRow, Book, Context

FILES = Path(__file__).parent / "files"
NOW = datetime(2026, 3, 5, 12, tzinfo=UTC)
STUDIO = Context(ZoneInfo("America/New_York"), "US", service_names={"mega volume": "full set", "lunch": ""})
BRITISH = Context(ZoneInfo("Europe/London"), "GB", date_order="dmy")

HEADER = "visit,client,first_name,service,starts_at"
GOOD = "V1,C1,Mia,fill,2026-03-09T14:30"


def read(text: str, context: Context = STUDIO) -> Book:
    return csv.read(text.encode(), context, now=NOW)


def row_with(**cells: str) -> str:
    """A file of one good row, with these cells besides."""
    row = {"visit": "V1", "client": "C1", "first_name": "Mia", "service": "fill", "starts_at": "2026-03-09T14:30"}
    row |= cells
    out = io.StringIO()
    writer = standard.writer(out)
    writer.writerow(row)
    writer.writerow(row.values())
    return out.getvalue()


def test_a_whole_file_is_read_as_the_contract_has_it() -> None:
    book = csv.read((FILES / "book.csv").read_bytes(), STUDIO, now=NOW)

    assert book.bad == ()
    # The quoted line break of row 3 does not count, the blank row 4 does.
    assert [(row.number, row.visit, row.client) for row in book.rows] == [
        (2, "V1", "C1"),
        (3, "V2", "C2"),
        (5, "V3", "C1"),
        (6, "V4", "C3"),
    ]
    assert book.rows[0].visit_says == {
        "service": "full set",
        "service_name": "Full Set",
        "artist": "Ada",
        "starts_at": "2026-03-09T18:30:00Z",
        "status": "done",
        "adhesive_lot": "LOT-7",
        "adhesive": "Quick Bond",
    }
    assert book.rows[0].client_says == {
        "first_name": "Mia",
        "last_name": "Lopez",
        "mobile": "+12125550123",
        "email": "mia@example.com",
        "time_zone": "America/New_York",
        "language": "en-US",
        "sms_ok": True,
        "email_ok": True,
        "sms_reminders_ok": False,
        "email_reminders_ok": False,
        "sensitive": False,
        "under_18": False,
        "wears_lenses": True,
    }
    assert book.rows[1].client_says == {
        "first_name": "Zoe",
        "mobile": "+34612345678",
        "time_zone": "Europe/Madrid",
        "language": "es",
        "sms_ok": False,
        "sensitive": True,
    }
    assert book.rows[1].visit_says["starts_at"] == "2026-03-10T14:00:30Z"
    assert book.rows[1].visit_says["minutes"] == 75
    assert book.rows[2].visit_says["status"] == "cancelled"
    assert book.rows[2].client_says == {"first_name": "Mia", "mobile": "+12125550123"}
    assert book.rows[3].visit_says["share_left"] == 62
    assert 'Columns that the book does not know were ignored: "Remarks".' in book.notes
    assert book.seen == {"V1", "V2", "V3", "V4"}


def test_what_is_done_although_ahead_is_remarked_on() -> None:
    book = csv.read((FILES / "book.csv").read_bytes(), STUDIO, now=NOW)

    assert "Marked as done although still ahead: row 2; check the status and the date." in book.notes


@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
def test_separator_mark_and_line_ends_make_no_difference(separator: str, mark: bytes, line_end: str) -> None:
    text = f"{HEADER},share_left\n{GOOD},\n".replace(",", separator).replace("\n", line_end)

    book = csv.read(mark + text.encode(), STUDIO, now=NOW)

    assert book == read(f"{HEADER},share_left\n{GOOD},\n")
    assert len(book.rows) == 1


def test_the_separator_is_taken_from_the_header_alone() -> None:
    book = read(
        f"{HEADER.replace(',', ';')};adhesive\nV1;C1;Mia;fill;2026-03-09T14:30;one, two, three, four, five, six"
    )

    assert book.rows[0].visit_says["adhesive"] == "one, two, three, four, five, six"


def test_a_separator_between_quotes_in_the_header_does_not_count() -> None:
    book = read(f'"Remarks, notes, and, so, on, and, on";{HEADER.replace(",", ";")}\nx;{GOOD.replace(",", ";")}')

    assert len(book.rows) == 1


def test_the_line_that_tells_a_spreadsheet_the_separator_is_no_row() -> None:
    book = read(f"sep=;\r\n{HEADER.replace(',', ';')}\r\n{GOOD.replace(',', ';')}\r\n")

    assert [row.number for row in book.rows] == [2]


def test_blank_rows_are_passed_over_and_counted() -> None:
    book = read(f"{HEADER}\n\n,,,,\n   , ,\u00a0,,\n{GOOD}\n\n")

    assert [row.number for row in book.rows] == [5]
    assert book.bad == ()


def test_blank_cells_at_the_end_beyond_the_header_are_no_matter() -> None:
    assert len(read(f"{HEADER}\n{GOOD},,,\n").rows) == 1


def test_blank_cells_say_nothing() -> None:
    blank = dict.fromkeys(set(COLUMNS) - set(HEADER.split(",")), " ")

    book = read(row_with(**blank))

    assert book.rows[0].client_says == {"first_name": "Mia"}
    assert set(book.rows[0].visit_says) == {"service", "service_name", "starts_at"}


def test_a_table_of_services_makes_a_studios_own_name_a_kind_and_keeps_the_name() -> None:
    book = read(row_with(service="Mega  Volume"))

    assert book.rows[0].visit_says["service"] == "full set"
    assert book.rows[0].visit_says["service_name"] == "Mega  Volume"


def test_what_the_owner_calls_no_visit_is_left_out_with_a_remark() -> None:
    book = read(f"{HEADER}\n{GOOD}\nV2,x,,Lunch,whenever\n")

    assert [row.visit for row in book.rows] == ["V1"]
    assert book.bad == ()
    assert 'Rows left out because "Lunch" is no visit: 1.' in book.notes


def test_names_of_services_in_no_table_are_listed_once_each_as_written() -> None:
    rows = [
        f"V{number},C1,Mia,{name},2026-03-09T14:30" for number, name in enumerate(["Wispy", "Angel", "WISPY", "fill"])
    ]

    book = read("\n".join([HEADER, *rows]))

    assert book.unknown_services == ("Wispy", "Angel")
    assert [bad.row for bad in book.bad] == [2, 3, 4]


def test_a_number_that_no_text_reaches_is_kept_with_a_remark() -> None:
    # FACTS 4.2: Britain's range for drama is possible and not valid.
    book = read(row_with(mobile="07700 900123"), BRITISH)

    assert book.rows[0].client_says["mobile"] == "+447700900123"
    assert any("07700 900123" in note and "row 2" in note for note in book.notes)


def test_every_bad_field_of_a_row_is_reported_at_once() -> None:
    book = read(row_with(client="", starts_at="soon", mobile="x", status="maybe"))

    assert [(bad.row, bad.field) for bad in book.bad] == [(2, "starts_at"), (2, "mobile"), (2, "status"), (2, "client")]
    assert book.rows == ()
    assert book.seen == {"V1"}


def test_a_header_without_rows_is_no_fault_and_said() -> None:
    book = read(HEADER)

    assert (book.rows, book.bad) == ((), ())
    assert book.notes == ("The file has a header but no rows.",)


def test_progress_is_told_to_the_end() -> None:
    told: list[tuple[int, int]] = []
    rows = [f"V{number},C1,Mia,fill,2026-03-09T14:30" for number in range(1200)]

    csv.read(
        "\n".join([HEADER, *rows]).encode(), STUDIO, now=NOW, progress=lambda done, total: told.append((done, total))
    )

    assert told == [(0, 1200), (500, 1200), (1000, 1200), (1200, 1200)]


SHEET = b"PK\x03\x04" + b"\x00" * 40

BAD_FILES: list[tuple[str, bytes, int, str, str]] = [
    ("nothing", b"", 1, "file", ""),
    ("blank lines", b" \r\n\r\n", 1, "file", ""),
    ("blank cells", b",,,\n,,\n", 1, "header", ""),
    ("a new spreadsheet", SHEET, 1, "file", "zip"),
    ("an old spreadsheet", b"\xd0\xcf\x11\xe0\xa1\xb1", 1, "file", "xls"),
    ("a printed page", b"%PDF-1.7\n", 1, "file", "PDF"),
    ("a packed file", b"\x1f\x8b\x08\x00", 1, "file", "gzip"),
    ("UTF-16", f"{HEADER}\n{GOOD}".encode("utf-16"), 1, "file", "UTF-16"),
    ("UTF-16 without its mark", f"{HEADER}\n{GOOD}".encode("utf-16-le"), 1, "file", "NUL"),
    ("a NUL", f"{HEADER}\n{GOOD}\nV2\0".encode(), 3, "file", "NUL"),
    ("an old Mac's letters", f"{HEADER}\nV1,C1,José,fill,2026-03-09T14:30".encode("mac-roman"), 2, "file", "byte 0x8E"),
    ("two encodings", f"{HEADER}\nV1,C1,José,fill,x\nV2,C2,Zo".encode() + b"\xe9,fill,x", 3, "file", "byte 0xE9"),
    ("no text", bytes(range(1, 256)), 2, "file", "byte 0x80"),
    ("a calendar", b"BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n", 1, "file", "BEGIN:VCALENDAR"),
    ("a web page", b"<!DOCTYPE html><title>Sign in</title>", 1, "file", "<!DOCTYPE html><title>Sign in</title>"),
    ("no header", GOOD.encode(), 1, "header", "V1"),
    ("a column missing", b"visit,client,first_name,service\nV1,C1,Mia,fill", 1, "starts_at", "starts_at"),
    ("a column twice", f"{HEADER},First Name\n{GOOD},Mia".encode(), 1, "first_name", "first_name"),
    ("another separator", HEADER.replace(",", "|").encode(), 1, "header", HEADER.replace(",", "|")),
    (
        "an open quote",
        f'{HEADER}\n{GOOD}\nV2,C1,"Mia,fill,x\nV3,C1,Zoe,fill,x'.encode(),
        3,
        "file",
        'V2,C1,"Mia,fill,x',
    ),
    ("a stray quote", f'{HEADER}\n{GOOD}\nV2,C1,"Mia"s,fill,x'.encode(), 3, "file", 'V2,C1,"Mia"s,fill,x'),
    ("a huge cell", f"{HEADER}\nV1,C1,{'x' * 200_000},fill,x".encode(), 2, "file", f"V1,C1,{'x' * 53}…"),
]


@pytest.mark.parametrize(
    ("data", "row", "field", "value"), [bad[1:] for bad in BAD_FILES], ids=[b[0] for b in BAD_FILES]
)
def test_a_file_that_cannot_be_read_is_one_bad_row_with_its_cure(data: bytes, row: int, field: str, value: str) -> None:
    book = csv.read(data, STUDIO, now=NOW)

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(row, field, value)]
    _explains_itself(book.bad[0])
    assert book.rows == ()


BAD_CELLS: list[tuple[str, str, str]] = [
    ("visit", "", "write"),
    ("client", " ", "write"),
    ("first_name", "", "write"),
    ("service", "", "write"),
    ("starts_at", "", "write"),
    ("visit", "x" * 201, "shorten|at most 200"),
    ("visit", "6.14125E+10", "format the column as text"),
    ("visit", "V\n1", "one line"),
    ("client", "1.2E+12", "format the column as text"),
    ("first_name", "x" * 81, "at most 80"),
    ("first_name", "Mia\nLopez", "one line"),
    ("first_name", "Mia\x07", "one line"),
    ("last_name", "Lopez\u202egpj", "one line"),
    ("first_name", "#REF!", "write the value itself"),
    ("last_name", "#N/A", "write the value itself"),
    ("last_name", '=CONCAT("a")', "write the value itself"),
    ("mobile", "6.14125E+10", "format the column as text"),
    ("mobile", "6,14125e+10", "format the column as text"),
    ("mobile", "12345", "country code"),
    ("mobile", "2125550123456789", "country code"),
    ("mobile", "212-555-0123 / 212-555-0124", "write one"),
    ("mobile", "+1 212 555 0123, +1 212 555 0124", "write one"),
    ("mobile", "ask her sister", "write the number alone"),
    ("mobile", "##########", "write the value itself"),
    ("email", "mia@localhost", "write one"),
    ("email", "mia.example.com", "write one"),
    ("email", "mia@" + "x" * 60 + ".example" * 20, "check the address"),
    ("email", "mia@example.com; zoe@example.com", "write one"),
    ("time_zone", "New York", "write its name"),
    ("time_zone", "Europe/Paradise", "write its name"),
    ("time_zone", "localtime", "write its name"),
    ("language", "English", "write it like en"),
    ("language", "zz", "write it like en"),
    ("sms_ok", "maybe", "write yes or no"),
    ("email_ok", "x", "write yes or no"),
    ("sensitive", "2", "write yes or no"),
    ("service", "Wispy", "table of service names"),
    ("starts_at", "12/03/2026 2:30 PM", "date order"),
    ("starts_at", "2026-03-12", "write both"),
    ("starts_at", "45992.6", "format the column"),
    ("starts_at", "2026-13-12T10:00", "write it like"),
    ("starts_at", "1926-03-12T10:00", "check the year"),
    ("minutes", "0", "write the minutes alone"),
    ("minutes", "721", "write the minutes alone"),
    ("minutes", "1h15", "write the minutes alone"),
    ("minutes", "-75", "write the minutes alone"),
    ("status", "confirmed", "booked, done, cancelled or missed"),
    ("share_left", "0.6", "write it like 60"),
    ("share_left", "0,6%", "write it like 60"),
    ("share_left", "101", "from 0 to 100"),
    ("share_left", "-5", "from 0 to 100"),
    ("share_left", "most", "from 0 to 100"),
    ("adhesive_lot", "x" * 41, "at most 40"),
    ("adhesive", "x" * 400, "shorten"),
    ("artist", "x" * 81, "at most 80"),
]


@pytest.mark.parametrize(("field", "value", "cure"), BAD_CELLS)
def test_a_cell_that_cannot_be_used_names_row_field_value_and_cure(field: str, value: str, cure: str) -> None:
    book = read(row_with(**{field: value}))

    assert [(bad.row, bad.field) for bad in book.bad] == [(2, field)]
    bad = book.bad[0]
    assert (
        bad.value[:50] == value.strip().replace("\n", "\\n").replace("\x07", "\\x07").replace("\u202e", "\\u202e")[:50]
    )
    assert re.search(cure, bad.problem)
    _explains_itself(bad)
    assert book.rows == ()


@pytest.mark.parametrize(
    ("cells", "cure"),
    [
        ({"share_left": "60", "status": "booked"}, "set its status to done"),
        ({"share_left": "60", "status": "missed"}, "set its status to done"),
        ({"share_left": "60", "service": "removal"}, "full set or a fill"),
        ({"share_left": "60", "service": "lift", "status": "done"}, "full set or a fill"),
    ],
)
def test_a_share_left_is_refused_on_what_is_no_done_set(cells: dict[str, str], cure: str) -> None:
    book = read(row_with(**cells))

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(2, "share_left", "60")]
    assert cure in book.bad[0].problem
    _explains_itself(book.bad[0])


def test_a_share_left_is_taken_on_a_set_that_is_done_or_says_no_status() -> None:
    for status in ("done", ""):
        assert read(row_with(share_left="60%", status=status)).rows[0].visit_says["share_left"] == 60


@pytest.mark.parametrize(
    "row", ["V2,C1,Mia,fill", "V2,C1,Mia,fill,2026-03-09T14:30,more", "V2,C1,Mia,fill,March 9, 2026"]
)
def test_a_row_with_too_few_or_too_many_cells_is_bad_and_its_visit_seen(row: str) -> None:
    book = read(f"{HEADER}\n{GOOD}\n{row}\n")

    assert [(bad.row, bad.field) for bad in book.bad] == [(3, "row")]
    _explains_itself(book.bad[0])
    assert [good.visit for good in book.rows] == ["V1"]
    assert book.seen == {"V1", "V2"}


def test_a_visit_that_comes_twice_is_bad_the_second_time() -> None:
    book = read(f"{HEADER}\n{GOOD}\n{GOOD}\n")

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(3, "visit", "V1")]
    assert "row 2" in book.bad[0].problem
    _explains_itself(book.bad[0])


def test_rows_of_one_client_that_disagree_are_bad() -> None:
    rows = "V1,C1,Mia,fill,2026-03-09T14:30,yes\nV2,C1,Mia,fill,2026-03-10T14:30,no\nV3,C1,Mia,fill,2026-03-11T14:30,\n"

    book = read(f"{HEADER},sms_ok\n{rows}")

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(2, "sms_ok", "yes"), (3, "sms_ok", "no")]
    for bad in book.bad:
        _explains_itself(bad)
    assert [row.visit for row in book.rows] == ["V3"]


def test_one_client_may_share_a_number_with_another() -> None:
    rows = "V1,C1,Mia,fill,2026-03-09T14:30,2125550123\nV2,C2,Zoe,fill,2026-03-10T14:30,2125550123\n"

    assert len(read(f"{HEADER},mobile\n{rows}").rows) == 2


def test_ten_thousand_rows_take_no_more_than_forty_times_the_bare_reader() -> None:
    cells = "Mia,fill,{at},(212) 555-{n:04d},mia{c}@example.com,yes,no,America/New_York,75,Ada,done,60%"
    rows = [
        f"V{i},C{i % 4000},"
        + cells.format(at=f"2025-{i % 12 + 1:02d}-{i % 28 + 1:02d}T14:30", n=i % 4000 % 100 + 100, c=i % 4000)
        for i in range(10_000)
    ]
    columns = "mobile,email,sms_ok,email_ok,time_zone,minutes,artist,status,share_left"
    text = "\n".join([f"{HEADER},{columns}", *rows])

    start = perf_counter()
    bare = [dict(row) for row in standard.DictReader(io.StringIO(text))]
    middle = perf_counter()
    book = read(text)
    end = perf_counter()

    assert len(book.rows) == len(bare) == 10_000
    assert end - middle < 40 * (middle - start) + 0.5


@given(st.binary(max_size=300))
def test_no_bytes_make_the_reader_fail(data: bytes) -> None:
    _holds_together(csv.read(data, STUDIO, now=NOW))


CELL = st.one_of(
    st.text(max_size=40),
    st.sampled_from([cell for _, cell, _ in BAD_CELLS] + GOOD.split(",") + ["yes", "60%", "V2", "+12125550123"]),
)


@given(rows=st.lists(st.lists(CELL, min_size=5, max_size=len(COLUMNS)), max_size=5), order=st.permutations(COLUMNS))
def test_no_cells_make_the_reader_fail(rows: list[list[str]], order: list[str]) -> None:
    out = io.StringIO()
    writer = standard.writer(out)
    writer.writerow(order)
    writer.writerows(rows)

    _holds_together(csv.read(out.getvalue().encode("utf-8", "replace"), STUDIO, now=NOW))


def _holds_together(book: Book) -> None:
    bad = {row.row for row in book.bad}
    assert bad.isdisjoint(row.number for row in book.rows)
    assert len({row.visit for row in book.rows}) == len(book.rows)
    for row in book.rows:
        assert row.visit
        assert row.client
        assert row.client_says["first_name"]
        assert {"service", "service_name", "starts_at"} <= row.visit_says.keys()
    for problem in book.bad:
        _explains_itself(problem)


def _explains_itself(bad: BadRow) -> None:
    assert bad.row >= 1
    assert bad.field
    assert bad.value in bad.problem
    assert bad.problem.endswith(".")
    assert "\n" not in bad.problem
    assert re.search(
        r"\b(write|set|save|format|export|choose|unpack|check|add|give|close|fill|remove|shorten)\b", bad.problem
    )
