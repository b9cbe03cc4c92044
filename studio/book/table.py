"""A table as CSV, whatever it is of: separator, header, rows. Reads text, knows no database."""

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from django.utils.translation import gettext as _

from studio.book.text import Unreadable, clean, shown

SEPARATORS = ",;\t"
_QUOTED = re.compile(r'"(?:[^"]|"")*"')
# A line that tells a spreadsheet the separator; the spreadsheet does not count it as a row.
_SEPARATOR_LINE = re.compile(r'"?sep=([,;\t])"?[,;\t]*\r?\n', re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Table:
    """A table whose header has been read. ``rows`` gives each row that is not blank with its number, once.

    A number is the spreadsheet's row: the first line is row 1, a line break inside quotes does not count. Going
    through ``rows`` raises :class:`studio.book.text.Unreadable` where the file is broken.
    """

    columns: list[tuple[int, str]]  # each known column with its place
    width: int
    ignored: list[str]  # the other columns' names
    rows: Iterator[tuple[int, list[str]]]

    def note(self, who: str) -> list[str]:
        """A remark on the columns that ``who`` does not know, if there are any."""
        named = [f'"{shown(name)}"' for name in self.ignored if name]
        notes = (
            [_("Columns that {who} does not know were ignored: {names}.").format(who=who, names=", ".join(named))]
            if named
            else []
        )
        if len(self.ignored) > len(named):
            notes.append(
                _("Columns without a name were ignored: {count}.").format(count=len(self.ignored) - len(named))
            )
        return notes


def read(text: str, columns: Sequence[str], needed: Sequence[str]) -> Table:
    """Read the header of a table with these ``columns``, in any order; the rows are read as they are asked for.

    Raises :class:`studio.book.text.Unreadable` where there is no header, or it lacks a column that is ``needed``.
    """
    numbered = enumerate(_records(text), start=1)
    at, header = next(((row, cells) for row, cells in numbered if any(map(clean, cells))), (0, []))
    if not at:
        raise Unreadable("header", "", _("The file holds only blank cells: export it again, with its header."))
    known, ignored = _header(at, header, {name.replace("_", ""): name for name in columns})
    _check_needed([name for _, name in known], ignored, at, needed)
    rows = ((row, cells) for row, cells in numbered if any(cells) and any(map(clean, cells)))
    return Table(known, len(header), ignored, rows)


def shape(record: list[str], width: int) -> tuple[str, str] | None:
    """Return the value and the problem of a row that does not fit under ``width`` columns; None where it does."""
    if len(record) == width or (len(record) > width and not any(map(clean, record[width:]))):
        return None
    value = shown(record[width] if len(record) > width else record[-1])
    if len(record) > width:
        return value, (
            _(
                'The row has {count} cells under {width} columns, "{value}" is the first too many: '
                "write a cell that holds the separator between quotes."
            ).format(count=len(record), width=width, value=value)
        )
    return value, (
        _(
            'The row has {count} cells under {width} columns and ends with "{value}": '
            "fill it up to the last column, with blank cells where there is nothing to say."
        ).format(count=len(record), width=width, value=value)
    )


def _records(text: str) -> Iterator[list[str]]:
    told = _SEPARATOR_LINE.match(text)
    lines = io.StringIO(text[told.end() :] if told else text, newline="")
    first = next((line for line in lines if clean(line)), "")
    if re.match(r"\s*<(!doctype|html|\?xml)", first, re.IGNORECASE):
        raise Unreadable(
            "file",
            first.strip(),
            _('"{value}" starts a web page: export the table as CSV.').format(value=shown(first.strip())),
        )
    lines.seek(0)
    of_record: list[str] = []
    kept = _keeping(lines, of_record)
    reader = csv.reader(kept, delimiter=told[1] if told else _separator(first), strict=True, skipinitialspace=True)
    number = 1
    try:
        for record in reader:
            yield record
            of_record.clear()
            number += 1
    except csv.Error as error:
        raise _broken(error, of_record[0] if of_record else "", number) from None


def _keeping(lines: Iterable[str], kept: list[str]) -> Iterator[str]:
    """Hand on the lines, and keep those of the record that is being read, for a complaint."""
    for line in lines:
        kept.append(line)
        yield line


def _separator(header: str) -> str:
    outside = _QUOTED.sub("", header)
    return max(SEPARATORS, key=outside.count)  # the comma, if there is none


def _broken(error: csv.Error, line: str, row: int) -> Unreadable:
    value = shown(line.strip())
    if "field larger" in str(error):
        wrong, cure = _("has a cell of more than 131,072 characters"), _("check the quotes in it and shorten it")
    elif "unexpected end" in str(error):
        wrong, cure = _("opens a quote that is never closed"), _("close it, or write a quote inside a cell twice")
    else:
        wrong, cure = (
            _("has a quote in the wrong place"),
            _("write a quote inside a cell twice and the cell between quotes"),
        )
    return Unreadable(
        "file",
        line.strip(),
        _('The row that begins "{value}" {wrong}: {cure}.').format(value=value, wrong=wrong, cure=cure),
        row=row,
    )


def _header(row: int, cells: list[str], by_bare_name: dict[str, str]) -> tuple[list[tuple[int, str]], list[str]]:
    """Return each known column with its place, and the names of the others."""
    known: list[tuple[int, str]] = []
    unknown: list[str] = []
    for place, cell in enumerate(cells):
        name = by_bare_name.get(re.sub(r"[\s_-]", "", clean(cell).casefold()))
        if name is None:
            unknown.append(clean(cell))
        elif any(name == before for _, before in known):
            problem = _('The column "{name}" stands in the header twice: remove or rename one of the two.').format(
                name=name
            )
            raise Unreadable(name, name, problem, row=row)
        else:
            known.append((place, name))
    return known, unknown


def _check_needed(names: list[str], unknown: list[str], row: int, needed: Sequence[str]) -> None:
    missing = [name for name in needed if name not in names]
    if not missing:
        return
    there = ", ".join(f'"{shown(name)}"' for name in [*names, *unknown][:20])
    if len(missing) == len(needed):
        problem = _("Row {row} is no header, it reads {there}: write the names of the columns, {names}.").format(
            row=row, there=there, names=", ".join(needed)
        )
        raise Unreadable("header", (unknown or [""])[0], problem, row=row)
    problem = _("The column {names} is missing from the header ({there}): add it, or rename its column.").format(
        names=", ".join(missing), there=there
    )
    raise Unreadable(missing[0], missing[0], problem, row=row)
