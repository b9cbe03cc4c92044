"""The appointment book as iCalendar (RFC 5545 and 5546): one event a visit. Reads bytes, knows no database.

A visit's reference is the event's UID; an occurrence of a series is ``UID/20260309T183000Z``, with its RECURRENCE-ID in
UTC. Days without hours (closing days, birthdays) are left out. Who comes and for what is read by the owner's pattern,
or in the usual way where there is none.
"""

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta

from django.utils.translation import gettext as _

from studio.book import pattern, series, usual, who
from studio.book.cells import REFERENCE_LENGTH, known_service
from studio.book.drafts import Draft, gather
from studio.book.events import Event, Odd, events, unfold
from studio.book.moments import written
from studio.book.pattern import Pattern, PatternError
from studio.book.rows import BadRow, Book, Context
from studio.book.series import Times
from studio.book.text import CONTROL, Unreadable, clean, decode, fold, shown

MOST = 50_000
_TELL_EVERY = 100


@dataclass(slots=True)
class _Entry:
    """One event while it is being read."""

    event: Event
    uid: str
    draft: Draft
    reading: usual.Reading = field(default_factory=usual.Reading)
    times: Times | None = None
    recurrence: datetime | None = None  # RECURRENCE-ID where it can be read, whatever else cannot
    left_out: bool = False  # a day without hours, or no visit


def read(data: bytes, context: Context, *, now: datetime, progress: Callable[[int, int], None] | None = None) -> Book:
    """Read a book from the bytes of an iCalendar stream.

    What repeats is written out from 400 days before ``now`` to 400 days after it; ``progress`` is told events read and
    events in all. Never raises for what is in ``data``: a stream that cannot be read gives a book with one bad row.
    """
    try:
        wanted = pattern.compile(context.pattern) if context.pattern.strip() else None
        text, note = _text(unfold(data))
        found, notes = events(text)
        entries = _newest(found, context)
        left_out = _read_all(entries, wanted, context, now, progress)
        drafts = list(_drafts(entries, now))
    except PatternError as error:
        value = shown(context.pattern)
        problem = _('The pattern for calendars, "{value}", cannot be used. {error}').format(value=value, error=error)
        return Book("ics", (), (BadRow(1, "pattern", value, problem),))
    except Unreadable as error:
        return Book("ics", (), (error.bad,))
    if not found:
        notes.append(_("The calendar holds no events."))
    book = gather("ics", drafts, now=now, notes=[*([note] if note else []), *notes, *left_out])
    margin = series.REACH - timedelta(days=1)  # at the very ends it may or may not be written out
    return replace(book, stated=_stated(entries), reach=(now - margin, now + margin))


def _stated(entries: list[_Entry]) -> dict[str, int]:
    """Return the UID of each event that is stated in full and without fault, with the SEQUENCE of the event itself."""
    found: dict[str, int] = {}
    for entry in entries:
        if entry.times and entry.times.recurrence is None:
            found[entry.uid] = int(entry.draft.visit_says.get("sequence", 0))
    unsure = {entry.uid for entry in entries if entry.left_out or entry.draft.bad or not entry.times}
    return {uid: sequence for uid, sequence in found.items() if uid not in unsure}


def _occurrence(uid: str, recurrence: datetime) -> str:
    return f"{uid}/{recurrence.astimezone(UTC):%Y%m%dT%H%M%SZ}"


def _text(data: bytes) -> tuple[str, str]:
    try:
        return decode(data)
    except Unreadable as error:
        before = data.split(b"\n")[: error.bad.row]
        row = sum(line.strip().upper() == b"BEGIN:VEVENT" for line in before)
        raise Unreadable(error.bad.field, error.bad.value, error.bad.problem, row=max(row, 1)) from None


def _newest(found: list[Event], context: Context) -> list[_Entry]:
    """Of events sent again (same UID, same occurrence) keep the one with the highest SEQUENCE, then the latest."""
    kept: dict[object, _Entry] = {}
    for event in found:
        entry = _Entry(event, event.text("UID").strip(), Draft(event.number))
        try:
            entry.recurrence = event.moment("RECURRENCE-ID", context.zone)
            occurrence = "" if entry.recurrence is None else written(series.utc(entry.recurrence))
        except Odd as odd:
            occurrence = odd.value
        key = (entry.uid, occurrence) if entry.uid else event.number
        if key not in kept or _age(event) >= _age(kept[key].event):
            kept[key] = entry
    return sorted(kept.values(), key=lambda entry: entry.event.number)


def _age(event: Event) -> tuple[int, str]:
    try:
        sequence = event.sequence()
    except Odd:
        sequence = 0
    return sequence, max(event.text("DTSTAMP"), event.text("LAST-MODIFIED"))


def _read_all(
    entries: list[_Entry],
    wanted: Pattern | None,
    context: Context,
    now: datetime,
    progress: Callable[[int, int], None] | None,
) -> list[str]:
    """Read who, what and when of each event; return notes on what was left out."""
    all_day: list[str] = []
    no_visit: Counter[str] = Counter()
    for entry in entries:
        entry.reading = who.reading(entry.event, wanted, context)
    unnamed = Counter(fold(part) for e in entries if "service" not in e.reading.fields for part in e.reading.parts)
    for done, entry in enumerate(entries):
        if progress and done % _TELL_EVERY == 0:
            progress(done, len(entries))
        title = entry.event.text("SUMMARY").strip()
        if entry.event.all_day():
            all_day.append(title)
            entry.left_out = True
        elif known_service(title, context) == "":
            no_visit[title] += 1
            entry.left_out = True
        else:
            _fill(entry, wanted, unnamed, context, now)
            if entry.draft.no_visit:
                no_visit[str(entry.draft.visit_says["service_name"])] += 1
                entry.left_out = True
    if progress:
        progress(len(entries), len(entries))
    notes = [
        _('Events left out because "{value}" is no visit: {count}.').format(value=shown(name), count=count)
        for name, count in no_visit.items()
    ]
    if all_day:
        such = ", ".join(f'"{shown(title)}"' for title in list(dict.fromkeys(all_day))[:5])
        notes.append(
            _("Events of whole days were left out, as closing days and birthdays are: {count} ({such}).").format(
                count=len(all_day), such=such
            )
        )
    return notes


def _fill(entry: _Entry, wanted: Pattern | None, unnamed: Counter[str], context: Context, now: datetime) -> None:
    """Put into the entry's draft what its event says."""
    draft, event, fields = entry.draft, entry.event, entry.reading.fields
    cancelled = event.cancelled()
    who.split_name(fields)
    if "service" not in fields and not cancelled:
        _refuse_service(entry, wanted, unnamed, context)
    for column, text in fields.items():
        if not (column == "service" and cancelled and known_service(clean(text), context) is None):
            draft.say(column, clean(text), context)
    if draft.no_visit:
        return
    who.identify(draft)
    if not cancelled and "service" in draft.visit_says and draft.says_nothing_in("first_name"):
        title = event.text("SUMMARY")
        problem = _(
            '"{value}" does not tell which part is the client\'s name: write it like "fill - Mia Lopez", or '
            "set the pattern for calendars."
        ).format(value=shown(title))
        draft.refuse("first_name", title, problem)
    _say_status(draft, event)
    try:
        draft.visit_says["sequence"] = event.sequence()
    except Odd as odd:
        draft.refuse(odd.field, odd.value, str(odd))
    _check_uid(entry)
    entry.times = series.times(event, context.zone, now, draft.refuse)


def _refuse_service(entry: _Entry, wanted: Pattern | None, unnamed: Counter[str], context: Context) -> None:
    draft, title = entry.draft, entry.event.text("SUMMARY").strip()
    if wanted:
        problem = _(
            '"{value}" does not fit the pattern for calendars: change the pattern, or name it in the table of '
            "service names as no visit."
        ).format(value=shown(title))
        draft.refuse("SUMMARY", title, problem)
        draft.unknown_service = title
        return
    client = f"{entry.reading.fields.get('first_name', '')} {entry.reading.fields.get('last_name', '')}"
    name = clean(usual.unknown_name(entry.reading.parts, client, unnamed))
    if name:
        draft.say("service", name, context)
    else:
        draft.refuse(
            "service",
            title,
            _('The title "{value}" names no service: write it like "fill - Mia Lopez".').format(value=shown(title)),
        )


def _say_status(draft: Draft, event: Event) -> None:
    says = draft.visit_says
    if event.cancelled():
        says.pop("share_left", None)
        says["status"] = "cancelled"
    draft.check_share_left()
    stands = event.text("STATUS").strip().upper() in ("CONFIRMED", "TENTATIVE")
    # A share left was looked at, so the visit has been; its STATUS in the calendar speaks of the time slot only.
    if stands and "status" not in says and "share_left" not in says:
        says["status"] = "booked"


def _check_uid(entry: _Entry) -> None:
    longest = REFERENCE_LENGTH - len("/20260309T183000Z")
    if not entry.uid:
        problem = _(
            "The event has no UID, so it could not be known again: export it from a calendar that gives each one."
        )
        entry.draft.refuse("UID", "", problem)
    elif len(entry.uid) > longest or CONTROL.search(entry.uid):
        problem = _('UID "{value}" is too long or holds a control character: give it {longest} plain ones.').format(
            value=shown(entry.uid), longest=longest
        )
        entry.draft.refuse("UID", entry.uid, problem)


def _drafts(entries: list[_Entry], now: datetime) -> Iterator[Draft]:
    """Give a draft for each visit: one for a single event, one for each time a series comes up."""
    groups: dict[object, list[_Entry]] = {}
    for entry in entries:
        groups.setdefault(entry.uid or entry.event.number, []).append(entry)
    made = 0
    for group in groups.values():
        for draft in _visits(group, now):
            made += 1
            if made > MOST:
                problem = _(
                    "The calendar holds more than {most} visits within 400 days: export a shorter stretch of it."
                ).format(most=MOST)
                raise Unreadable("file", str(MOST), problem, row=draft.number)
            yield draft


def _visits(group: list[_Entry], now: datetime) -> Iterator[Draft]:
    timed: list[tuple[_Entry, Times]] = []
    apart: list[datetime] = []  # occurrences left out or without a usable time: the series does not speak for them
    for entry in group:
        if entry.times and not entry.left_out:
            timed.append((entry, entry.times))
            continue
        if entry.recurrence:
            apart.append(entry.recurrence)
        if not entry.left_out:
            entry.draft.visit = entry.uid
            yield entry.draft
    first = next((entry for entry, times in timed if times.series), None)
    if first:
        try:
            for each in series.expand([times for _, times in timed], apart, now):
                yield _visit(timed[each.place][0], each.start, each.minutes, each.recurrence)
        except Odd as odd:
            first.draft.visit = first.uid
            first.draft.refuse(odd.field, odd.value, str(odd))
            yield first.draft
        return
    for entry, times in timed:
        recurrence = None if times.recurrence is None else series.utc(times.recurrence)
        yield _visit(entry, series.utc(times.start), times.minutes, recurrence)


def _visit(entry: _Entry, start: datetime, minutes: int | None, recurrence: datetime | None) -> Draft:
    of = entry.draft
    draft = Draft(of.number, entry.uid, of.client, dict(of.visit_says), dict(of.client_says), list(of.bad))
    draft.unreachable, draft.unknown_service = of.unreachable, of.unknown_service
    if recurrence is not None:
        draft.visit = _occurrence(entry.uid, recurrence)
    draft.visit_says["starts_at"] = written(start)
    if minutes is not None:
        draft.visit_says["minutes"] = minutes
    return draft
