"""The appointment book as CSV: one row a visit, as the contract has it. Reads bytes, knows no database."""

import csv
import io
import re
from collections.abc import Callable, Iterator
from datetime import datetime

from studio.book.drafts import Draft, gather
from studio.book.rows import COLUMNS, NEEDED, Book, Context
from studio.book.text import Unreadable, clean, decode, shown

SEPARATORS = ",;\t"
_TELL_EVERY = 500
_BY_BARE_NAME = {name.replace("_", ""): name for name in COLUMNS}
_QUOTED = re.compile(r'"(?:[^"]|"")*"')
# A line that tells a spreadsheet the separator; the spreadsheet does not count it as a row.
_SEPARATOR_LINE = re.compile(r'"?sep=([,;\t])"?[,;\t]*\r?\n', re.IGNORECASE)


def read(data: bytes, context: Context, *, now: datetime, progress: Callable[[int, int], None] | None = None) -> Book:
    """Read a book from the bytes of a CSV file.

    ``now`` is only used for remarks on visits marked done that lie ahead; ``progress`` is told rows read and rows in
    all. Never raises for what is in ``data``: a file that cannot be read gives a book with one bad row.
    """
    try:
        text, note = decode(data)
        records = _records(text)
        header, columns, notes = _header(records)
    except Unreadable as error:
        return Book("csv", (), (error.bad,))
    drafts: list[Draft] = []
    skipped: dict[str, int] = {}
    for number, record in _rows(records, header, progress):
        draft = _draft(number, record, len(records[header]), columns, context)
        if draft.no_visit:
            name = str(draft.visit_says["service_name"])
            skipped[name] = skipped.get(name, 0) + 1
        else:
            drafts.append(draft)
    notes += [f'Rows left out because "{shown(name)}" is no visit: {count}.' for name, count in skipped.items()]
    if not drafts and not skipped:
        notes.append("The file has a header but no rows.")
    return gather("csv", drafts, now=now, notes=[note, *notes] if note else notes)


def _records(text: str) -> list[list[str]]:
    told = _SEPARATOR_LINE.match(text)
    body = text[told.end() :] if told else text
    lines = list(io.StringIO(body, newline=""))
    first = next((line for line in lines if clean(line)), "")
    if first.upper().startswith("BEGIN:VCALENDAR"):
        raise Unreadable("file", "BEGIN:VCALENDAR", "BEGIN:VCALENDAR starts a calendar: choose the format ics.")
    if re.match(r"\s*<(!doctype|html|\?xml)", first, re.IGNORECASE):
        raise Unreadable("file", first.strip(), f'"{shown(first.strip())}" starts a web page: export the book as CSV.')
    reader = csv.reader(lines, delimiter=told[1] if told else _separator(first), strict=True, skipinitialspace=True)
    records: list[list[str]] = []
    at = 0
    try:
        for record in reader:
            records.append(record)
            at = reader.line_num
    except csv.Error as error:
        raise _broken(error, lines[min(at, len(lines) - 1)], len(records) + 1) from None
    return records


def _separator(header: str) -> str:
    outside = _QUOTED.sub("", header)
    return max(SEPARATORS, key=outside.count)  # the comma, if there is none


def _broken(error: csv.Error, line: str, row: int) -> Unreadable:
    value = shown(line.strip())
    if "field larger" in str(error):
        wrong, cure = "has a cell of more than 131,072 characters", "check the quotes in it and shorten it"
    elif "unexpected end" in str(error):
        wrong, cure = "opens a quote that is never closed", "close it, or write a quote inside a cell twice"
    else:
        wrong, cure = "has a quote in the wrong place", "write a quote inside a cell twice and the cell between quotes"
    return Unreadable("file", line.strip(), f'The row that begins "{value}" {wrong}: {cure}.', row=row)


def _header(records: list[list[str]]) -> tuple[int, list[tuple[int, str]], list[str]]:
    """Return the index of the header's record, each known column with its place, and notes on the others."""
    at = next((index for index, record in enumerate(records) if any(map(clean, record))), None)
    if at is None:
        raise Unreadable("header", "", "The file holds only blank cells: export the book again, with its header.")
    columns: list[tuple[int, str]] = []
    unknown: list[str] = []
    for place, cell in enumerate(records[at]):
        name = _BY_BARE_NAME.get(re.sub(r"[\s_-]", "", clean(cell).casefold()))
        if name is None:
            unknown.append(clean(cell))
        elif any(name == known for _, known in columns):
            problem = f'The column "{name}" stands in the header twice: remove or rename one of the two.'
            raise Unreadable(name, name, problem, row=at + 1)
        else:
            columns.append((place, name))
    _check_needed([name for _, name in columns], unknown, at + 1)
    named = [f'"{shown(name)}"' for name in unknown if name]
    notes = [f"Columns that the book does not know were ignored: {', '.join(named)}."] if named else []
    if len(unknown) > len(named):
        notes.append(f"Columns without a name were ignored: {len(unknown) - len(named)}.")
    return at, columns, notes


def _check_needed(names: list[str], unknown: list[str], row: int) -> None:
    missing = [name for name in NEEDED if name not in names]
    if not missing:
        return
    there = ", ".join(f'"{shown(name)}"' for name in [*names, *unknown][:20])
    if len(missing) == len(NEEDED):
        problem = f"Row {row} is no header, it reads {there}: write the names of the columns, {', '.join(NEEDED)}."
        raise Unreadable("header", (unknown or [""])[0], problem, row=row)
    problem = f"The column {', '.join(missing)} is missing from the header ({there}): add it, or rename its column."
    raise Unreadable(missing[0], missing[0], problem, row=row)


def _rows(
    records: list[list[str]], header: int, progress: Callable[[int, int], None] | None
) -> Iterator[tuple[int, list[str]]]:
    total = len(records) - header - 1
    for done, record in enumerate(records[header + 1 :]):
        if progress and done % _TELL_EVERY == 0:
            progress(done, total)
        if any(record) and any(map(clean, record)):
            yield header + done + 2, record
    if progress:
        progress(total, total)


def _draft(number: int, record: list[str], width: int, columns: list[tuple[int, str]], context: Context) -> Draft:
    draft = Draft(number)
    if len(record) < width or any(map(clean, record[width:])):
        _refuse_shape(draft, record, width)
        visit = next((record[place] for place, column in columns if column == "visit" and place < len(record)), "")
        draft.say("visit", clean(visit), context)
        return draft
    for place, column in columns:
        if cell := record[place]:
            draft.say(column, clean(cell), context)
    for column in NEEDED:
        if draft.says_nothing_in(column):
            draft.refuse(column, "", f"{column} is blank: write it in each row.")
    draft.check_share_left()
    return draft


def _refuse_shape(draft: Draft, record: list[str], width: int) -> None:
    value = shown(record[width] if len(record) > width else record[-1])
    if len(record) > width:
        problem = (
            f'The row has {len(record)} cells under {width} columns, "{value}" is the first too many: '
            "write a cell that holds the separator between quotes."
        )
    else:
        problem = (
            f'The row has {len(record)} cells under {width} columns and ends with "{value}": '
            "fill it up to the last column, with blank cells where there is nothing to say."
        )
    draft.refuse("row", value, problem)
