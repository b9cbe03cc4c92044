"""The appointment book as CSV: one row a visit, as the contract has it. Reads bytes, knows no database."""

from collections.abc import Callable, Iterator
from datetime import datetime

from django.utils.translation import gettext as _

from studio.book import table
from studio.book.drafts import Draft, gather
from studio.book.rows import COLUMNS, NEEDED, Book, Context
from studio.book.table import Table
from studio.book.text import Unreadable, clean, decode, shown

_TELL_EVERY = 500


def read(data: bytes, context: Context, *, now: datetime, progress: Callable[[int, int], None] | None = None) -> Book:
    """Read a book from the bytes of a CSV file.

    ``now`` is only used for remarks on visits marked done that lie ahead; ``progress`` is told rows read and rows in
    all. Never raises for what is in ``data``: a file that cannot be read gives a book with one bad row.
    """
    try:
        text, note = decode(data)
        _refuse_calendar(text)
        book = table.read(text, COLUMNS, NEEDED)
        rows = list(book.rows)
    except Unreadable as error:
        return Book("csv", (), (error.bad,))
    drafts: list[Draft] = []
    skipped: dict[str, int] = {}
    for number, record in _telling(rows, progress):
        draft = _draft(number, record, book, context)
        if draft.no_visit:
            name = str(draft.visit_says["service_name"])
            skipped[name] = skipped.get(name, 0) + 1
        else:
            drafts.append(draft)
    notes = book.note(_("the book"))
    notes += [
        _('Rows left out because "{value}" is no visit: {count}.').format(value=shown(name), count=count)
        for name, count in skipped.items()
    ]
    if not drafts and not skipped:
        notes.append(_("The file has a header but no rows."))
    return gather("csv", drafts, now=now, notes=[note, *notes] if note else notes)


def _refuse_calendar(text: str) -> None:
    if clean(text[:100]).upper().startswith("BEGIN:VCALENDAR"):
        raise Unreadable("file", "BEGIN:VCALENDAR", _("BEGIN:VCALENDAR starts a calendar: choose the format ics."))


def _telling(
    rows: list[tuple[int, list[str]]], progress: Callable[[int, int], None] | None
) -> Iterator[tuple[int, list[str]]]:
    for done, row in enumerate(rows):
        if progress and done % _TELL_EVERY == 0:
            progress(done, len(rows))
        yield row
    if progress:
        progress(len(rows), len(rows))


def _draft(number: int, record: list[str], book: Table, context: Context) -> Draft:
    draft = Draft(number)
    if misfit := table.shape(record, book.width):
        draft.refuse("row", *misfit)
        visit = next((record[place] for place, name in book.columns if name == "visit" and place < len(record)), "")
        draft.say("visit", clean(visit), context)
        return draft
    for place, column in book.columns:
        if cell := record[place]:
            draft.say(column, clean(cell), context)
    for column in NEEDED:
        if draft.says_nothing_in(column):
            draft.refuse(column, "", _("{column} is blank: write it in each row.").format(column=column))
    draft.check_share_left()
    return draft
