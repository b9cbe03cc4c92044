"""The time zones that a calendar names: IANA's, the file's own VTIMEZONE, or another common list's."""

import io
import re
from datetime import datetime, tzinfo
from zoneinfo import ZoneInfo

from dateutil.tz import tzical  # type: ignore[import-untyped]  # it has no types of its own
from icalendar.timezone.windows_to_olson import WINDOWS_TO_OLSON

from studio.zones import is_zone

# Zones change once or twice a year; a rule that comes true more often would be walked through for minutes.
_TOO_OFTEN = re.compile(
    r"^(?:RRULE|EXRULE)[^\n]*(?:FREQ=(?!YEARLY\b)|INTERVAL=0+\b|BY(?:HOUR|MINUTE|SECOND)=\d+,)",
    re.IGNORECASE | re.MULTILINE,
)
_EXTRA = re.compile(r"^X-[^\n]*\n", re.IGNORECASE | re.MULTILINE)


def zone_of(tzid: str, own: str) -> tzinfo | None:
    """Return the zone that a TZID means, or ``None`` if nobody knows; ``own`` is the file's VTIMEZONE of that name.

    An IANA name means that zone, whatever the file says of it: files often carry this year's rules only.
    """
    bare = tzid.strip("/")
    if is_zone(bare):
        return ZoneInfo(bare)
    if own and (zone := _zone_from(own)):
        return zone
    if bare in WINDOWS_TO_OLSON:
        return ZoneInfo(WINDOWS_TO_OLSON[bare])
    # /somebody.example/Europe/Berlin: a name that is unique in the world, around an IANA one (3.2.19).
    parts = bare.split("/") if tzid.startswith("/") else []
    names = ("/".join(parts[start:]) for start in range(1, len(parts)))
    return next((ZoneInfo(name) for name in names if is_zone(name)), None)


def _zone_from(vtimezone: str) -> tzinfo | None:
    if _TOO_OFTEN.search(vtimezone):
        return None
    try:
        zone: tzinfo | None = tzical(io.StringIO(_EXTRA.sub("", vtimezone))).get()
        if zone is not None:
            datetime(2026, 1, 1, tzinfo=zone).utcoffset()  # one that has no observance says so only when asked
    except Exception:  # whatever the file made the library trip over, the zone is not described
        return None
    return zone
