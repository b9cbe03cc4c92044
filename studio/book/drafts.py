"""Rows while they are being read: each cell says something or is refused, then the rows are held against each other."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime

from django.utils.translation import gettext as _

from studio.book import cells, moments, phones
from studio.book.rows import CLIENT_COLUMNS, BadRow, Book, Context, Row, Value
from studio.book.text import Refused, fold, rows_named, shown

NOTES = 200  # a list that nobody could read helps nobody
_ABOUT_CLIENT = frozenset(CLIENT_COLUMNS)
_SETS = ("full set", "fill")


@dataclass(slots=True)
class Draft:
    """One row while it is being read: what it says so far, and what was refused."""

    number: int
    visit: str = ""
    client: str = ""
    visit_says: dict[str, Value] = field(default_factory=dict)
    client_says: dict[str, Value] = field(default_factory=dict)
    bad: list[BadRow] = field(default_factory=list)
    no_visit: bool = False  # the owner's table says that this is none
    unknown_service: str = ""
    unreachable: str = ""  # a number as written that no text can reach

    def refuse(self, column: str, value: str, problem: str) -> None:
        """Note one field that cannot be used."""
        bad = BadRow(self.number, column, shown(value), problem)
        if bad not in self.bad:
            self.bad.append(bad)

    def say(self, column: str, text: str, context: Context) -> None:
        """Take what one cleaned cell states; a blank cell states nothing."""
        if not text:
            return
        try:
            text = cells.without_marks(column, text)
            if text:
                self._take(column, text, cells.parse(column, text, context), context)
        except Refused as error:
            if isinstance(error, cells.UnknownService):
                self.unknown_service = text
            self.refuse(column, text, str(error))

    def _take(self, column: str, text: str, value: Value, context: Context) -> None:
        if column in _ABOUT_CLIENT:
            self.client_says[column] = value
            if column == "mobile" and not phones.phone(text, context.region)[1]:
                self.unreachable = text
        elif column == "visit":
            self.visit = str(value)
        elif column == "client":
            self.client = str(value)
        else:
            self.visit_says[column] = value
        if column == "service":
            self.visit_says["service_name"] = text
            self.no_visit = value == ""

    def says_nothing_in(self, column: str) -> bool:
        """Whether the column was blank (one that was refused was not)."""
        own = {"visit": self.visit, "client": self.client}
        said = column in self.visit_says or column in self.client_says or bool(own.get(column))
        return not said and all(bad.field != column for bad in self.bad)

    def check_share_left(self) -> None:
        """Refuse a share left that goes with no done set: that is where it is looked at."""
        says = self.visit_says
        if "share_left" not in says:
            return
        share = says["share_left"]
        if says.get("status", "done") != "done":
            self.refuse(
                "share_left",
                str(share),
                _(
                    '"{share}" is stated for a visit that is {status}: set its status to done, '
                    "or leave share_left blank."
                ).format(share=share, status=says["status"]),
            )
        elif says.get("service", "fill") not in _SETS:
            self.refuse(
                "share_left",
                str(share),
                _('"{share}" is stated for a {service}: write it on a full set or a fill, or leave it blank.').format(
                    share=share, service=says["service"]
                ),
            )


def gather(
    source: str,
    drafts: Iterable[Draft],
    *,
    now: datetime,
    bad: Iterable[BadRow] = (),
    notes: Iterable[str] = (),
) -> Book:
    """Hold the rows against each other and make the book of them.

    A second row with the same ``visit``, and every row of a client that states a field on which her rows disagree, is
    bad. ``bad`` and ``notes`` are what the reader found beside the rows.
    """
    drafts = list(drafts)
    _refuse_repeats(drafts)
    _refuse_disagreements(drafts)
    good = [draft for draft in drafts if not draft.bad]
    refused = dict.fromkeys([*bad, *(bad_row for draft in drafts for bad_row in draft.bad)])
    unknown: dict[str, str] = {}
    for draft in drafts:
        if draft.unknown_service:
            unknown.setdefault(fold(draft.unknown_service), draft.unknown_service)
    return Book(
        source=source,
        rows=tuple(Row(d.number, d.visit, d.client, d.visit_says, d.client_says) for d in good),
        bad=tuple(sorted(refused, key=lambda bad_row: bad_row.row)),
        notes=_few([*notes, *_unreachable(good), *_done_ahead(good, now)]),
        unknown_services=tuple(unknown.values()),
        seen=frozenset(draft.visit for draft in drafts if draft.visit),
    )


def _refuse_repeats(drafts: list[Draft]) -> None:
    first: dict[str, int] = {}
    for draft in drafts:
        if not draft.visit:
            continue
        before = first.setdefault(draft.visit, draft.number)
        if before != draft.number:
            draft.refuse(
                "visit",
                draft.visit,
                _(
                    '"{value}" is already the visit of row {before}: give each visit a reference of its own, '
                    "or remove one of the rows."
                ).format(value=shown(draft.visit), before=before),
            )


def _refuse_disagreements(drafts: list[Draft]) -> None:
    said: dict[tuple[str, str], dict[str, tuple[int, Value]]] = {}
    for draft in drafts:
        if draft.client:
            for column, value in draft.client_says.items():
                said.setdefault((draft.client, column), {}).setdefault(str(value).casefold(), (draft.number, value))
    for draft in drafts:
        if draft.client:
            for column, value in draft.client_says.items():
                _settle(draft, column, value, said[draft.client, column])


def _settle(draft: Draft, column: str, value: Value, all_said: dict[str, tuple[int, Value]]) -> None:
    mine = str(value).casefold()
    if len(all_said) == 1:
        # Capitals are no disagreement, but two spellings must not take turns: the first row's stands.
        draft.client_says[column] = all_said[mine][1]
        return
    row, other = next(said for key, said in all_said.items() if key != mine)
    here, there = _as_cell(value), _as_cell(other)
    draft.refuse(
        column,
        here,
        _(
            '"{value}" for client "{client}" is "{before}" in row {row}: '
            "write the same in all her rows, or give two clients a reference each."
        ).format(value=shown(here), client=shown(draft.client), before=shown(there), row=row),
    )


def _as_cell(value: Value) -> str:
    return {True: "yes", False: "no"}[value] if isinstance(value, bool) else str(value)


def _unreachable(drafts: list[Draft]) -> list[str]:
    rows: dict[str, list[int]] = {}
    for draft in drafts:
        if draft.unreachable:
            rows.setdefault(draft.unreachable, []).append(draft.number)
    return [
        _(
            '"{value}" ({rows}) has the length of a telephone number but is in no range in use, so no '
            "text will be sent to it: check it with her."
        ).format(value=shown(number), rows=rows_named(numbers))
        for number, numbers in rows.items()
    ]


def _done_ahead(drafts: list[Draft], now: datetime) -> list[str]:
    moment = moments.written(now)
    ahead = [
        draft.number
        for draft in drafts
        if draft.visit_says.get("status") == "done" and str(draft.visit_says.get("starts_at", "")) > moment
    ]
    return (
        [
            _("Marked as done although still ahead: {rows}; check the status and the date.").format(
                rows=rows_named(ahead)
            )
        ]
        if ahead
        else []
    )


def _few(notes: list[str]) -> tuple[str, ...]:
    more = len(notes) - NOTES
    return tuple(notes) if more <= 0 else (*notes[:NOTES], _("And {more} more remarks of this kind.").format(more=more))
