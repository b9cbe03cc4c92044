"""When: from the text of a cell, or a calendar's local time, to UTC.

A local time is read by RFC 5545, 3.3.5: one that occurs twice means the first, one that does not exist is read with the
offset before the gap (02:30 becomes 03:30).
"""

import re
from datetime import UTC, datetime, timedelta, tzinfo

from django.utils.translation import gettext as _

from studio.book.rows import Context
from studio.book.text import shown

YEARS = range(2000, 2101)

_TIME = (
    r"(?P<hour>\d{1,2})(?::(?P<minute>\d{2})(?::(?P<second>\d{2})(?:[.,]\d+)?)?)?(?:\s?(?P<half>[ap])\.?\s?m\.?)?"
    r"(?:\s?(?P<offset>z|utc|[+-]\d{2}(?::?\d{2})?))?"
)
_FLAGS = re.ASCII | re.IGNORECASE
# 2026-03-12T14:30, 2026-03-12 2:30 PM, 2026/03/12 14:30: a year first can be read one way only.
_YEAR_FIRST = re.compile(rf"(?P<year>\d{{4}})([-/])(?P<month>\d{{1,2}})\2(?P<day>\d{{1,2}})(?:T|,?\s+){_TIME}", _FLAGS)
# ISO 8601's basic form, as calendars write it.
_BASIC = re.compile(
    r"(?P<year>\d{4})(?P<month>\d{2})(?P<day>\d{2})T(?P<hour>\d{2})(?P<minute>\d{2})(?P<second>\d{2})?"
    r"(?P<half>(?!))?(?P<offset>z|[+-]\d{2}(?::?\d{2})?)?",
    _FLAGS,
)
_YEAR_LAST = re.compile(rf"(?P<one>\d{{1,2}})([-/.])(?P<two>\d{{1,2}})\2(?P<year>\d{{4}})(?:T|,?\s+){_TIME}", _FLAGS)
_SHORT_YEAR = re.compile(r"\d{1,2}([-/.])\d{1,2}\1\d{2}(\s.*)?", re.ASCII)
_NO_HOUR = re.compile(r"\d{4}[-/]\d{1,2}[-/]\d{1,2}|\d{8}|\d{1,2}([-/.])\d{1,2}\1\d{4}", re.ASCII)
_SERIAL = re.compile(r"\d{5}([.,]\d+)?", re.ASCII)


class Unclear(ValueError):
    """A moment that cannot be told; the message is a sentence with the value and the cure."""


def to_utc(local: datetime, zone: tzinfo) -> datetime:
    """Return the moment at which the wall clock of ``zone`` shows the naive ``local``, by RFC 5545, 3.3.5."""
    there = local.replace(tzinfo=zone, fold=0)
    moment = there.astimezone(UTC)
    if moment.astimezone(zone).replace(tzinfo=None) != local:
        # In a gap. zoneinfo gives the offset before it, as asked; zones built from a VTIMEZONE give the one after.
        before = (there - timedelta(days=1)).utcoffset()
        moment = (local - (before or timedelta())).replace(tzinfo=UTC)
    return moment


def written(moment: datetime) -> str:
    """Return the moment as a row states it: UTC, whole seconds, ``2026-03-09T18:30:00Z``."""
    return moment.astimezone(UTC).replace(tzinfo=None, microsecond=0).isoformat() + "Z"


def starts_at(text: str, context: Context) -> str:
    """Return the start of a visit as :func:`written`, from ISO 8601 or, where the studio has said how it writes dates,
    from what its spreadsheet writes. Raises :class:`Unclear`."""
    plain = " ".join(text.split())  # spreadsheets put narrow no-break spaces before AM and PM
    found = _YEAR_FIRST.fullmatch(plain) or _BASIC.fullmatch(plain)
    if found:
        return written(_moment(found, int(found["month"]), int(found["day"]), text, context))
    found = _YEAR_LAST.fullmatch(plain)
    if not found:
        raise Unclear(_why_not(text))
    if context.date_order not in ("dmy", "mdy"):
        raise Unclear(
            _(
                '"{value}" can be read day first or month first: set the studio\'s date order in its settings, '
                "or write it like 2026-03-12T14:30."
            ).format(value=shown(text))
        )
    one, two = int(found["one"]), int(found["two"])
    day, month = (one, two) if context.date_order == "dmy" else (two, one)
    return written(_moment(found, month, day, text, context))


def _why_not(text: str) -> str:
    value = shown(text)
    if _SERIAL.fullmatch(text):
        return _(
            '"{value}" is a spreadsheet\'s own number for a date: format the column as yyyy-mm-dd hh:mm in the '
            "spreadsheet and save the file again."
        ).format(value=value)
    if _NO_HOUR.fullmatch(text):
        return _('"{value}" has a date but no hour: write both, like 2026-03-12T14:30.').format(value=value)
    if _SHORT_YEAR.fullmatch(text):
        return _('"{value}" has a year of two digits: write it with four, like 2026-03-12T14:30.').format(value=value)
    return _('"{value}" is not a date with its hour: write it like 2026-03-12T14:30.').format(value=value)


def _moment(found: re.Match[str], month: int, day: int, text: str, context: Context) -> datetime:
    year = int(found["year"])
    if year not in YEARS:
        raise Unclear(
            _('"{value}" is not between the years 2000 and 2100: check the year and write it in full.').format(
                value=shown(text)
            )
        )
    try:
        local = datetime(year, month, day, _hour(found, text), int(found["minute"] or 0), int(found["second"] or 0))  # noqa: DTZ001 a wall clock's
    except Unclear:
        raise
    except ValueError:
        raise Unclear(_no_such_day(found, context).format(value=shown(text))) from None
    offset = found["offset"]
    if offset is None:
        return to_utc(local, context.zone)
    return (local - _ahead(offset, text)).replace(tzinfo=UTC)


def _no_such_day(found: re.Match[str], context: Context) -> str:
    if "one" not in found.groupdict():
        return _('"{value}" is no day or hour that exists: write it like 2026-03-12T14:30.')
    if context.date_order == "dmy":
        return _('"{value}" is no day or hour that exists with the day first: write it like 2026-03-12T14:30.')
    return _('"{value}" is no day or hour that exists with the month first: write it like 2026-03-12T14:30.')


def _hour(found: re.Match[str], text: str) -> int:
    hour, half = int(found["hour"]), found["half"]
    if half is None:
        if found["minute"] is None and "T" not in text.upper():
            raise Unclear(
                _('"{value}" has an hour without minutes: write it like 2026-03-12T14:30.').format(value=shown(text))
            )
        return hour
    if not 1 <= hour <= 12:
        raise Unclear(
            _('"{value}" has an hour that does not go with AM or PM: write it like 2026-03-12T14:30.').format(
                value=shown(text)
            )
        )
    return hour % 12 + (12 if half in "pP" else 0)


def _ahead(offset: str, text: str) -> timedelta:
    if offset.lower() in ("z", "utc"):
        return timedelta()
    hours, minutes = int(offset[1:3]), int(offset[3:].lstrip(":") or 0)
    if hours > 14 or minutes > 59:
        raise Unclear(
            _('"{value}" is further from UTC than any place: write an offset between -12:00 and +14:00.').format(
                value=shown(text)
            )
        )
    ahead = timedelta(hours=hours, minutes=minutes)
    return -ahead if offset[0] == "-" else ahead
