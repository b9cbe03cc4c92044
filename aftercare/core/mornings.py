"""When the morning list goes out to each of those who work in a studio."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from aftercare.core.hours import DAY, moment

LAST = timedelta(hours=4)  # after her hour; what comes later is no morning list, and the next one is near


@dataclass(frozen=True, slots=True)
class Waiting:
    """What waits for one person: counts alone, as a locked screen is read by others, too."""

    open_flags: int = 0
    urgent_flags: int = 0  # of them
    promises: int = 0  # the other lines
    as_of: datetime | None = None  # when it was counted
    last_reply: datetime | None = None  # when the newest reply came in
    last_sweep: datetime | None = None  # when the service last looked at what is due


def due(at: time, zone: ZoneInfo, now: datetime) -> tuple[date, datetime] | None:
    """Return the day whose list is due at ``now``, and since when, by the wall clock of ``zone``; None: none is.

    >>> due(time(7, 30), ZoneInfo("America/New_York"), datetime.fromisoformat("2027-03-01T12:29:59Z"))
    >>> due(time(7, 30), ZoneInfo("America/New_York"), datetime.fromisoformat("2027-03-01T12:30:00Z"))[0]
    datetime.date(2027, 3, 1)
    """
    today = now.astimezone(zone).date()
    for day in (today, today - DAY):  # a list of late in the evening is still due after midnight
        since = moment(day, at.hour * 60 + at.minute, zone)
        if since <= now < since + LAST:
            return day, since
    return None


def key(staff: int, day: date) -> str:
    """Return the key of the promise.

    >>> key(4, date(2027, 3, 1))
    'artist:4:morning_list:2027-03-01'
    """
    return f"artist:{staff}:morning_list:{day.isoformat()}"
