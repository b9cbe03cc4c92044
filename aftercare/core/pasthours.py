"""Hours named in a person's own promise that are past already: "we call you by 10:30 am", said at four.

Read are the ways in which the wordings say a moment (see ``say.moment``) and in which people write an hour of the day.
An hour without a day is today's; one on a day of which only the name is said may be any week's, and is left alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date, datetime, time

from babel.dates import get_month_names

from aftercare.core.say import LANGUAGES

_MONTHS = {
    name.casefold().rstrip("."): number
    for language in LANGUAGES
    for names in (get_month_names("wide", locale=language), get_month_names("abbreviated", locale=language))
    for number, name in names.items()
}
_MONTH = "|".join(sorted(map(re.escape, _MONTHS), key=len, reverse=True))
_HOUR = re.compile(
    rf"(?:(?P<day>\d{{1,2}})(?:st|nd|rd|th)?(?: de| of)? (?P<month>{_MONTH})\b\.?,?(?: at| a las?)? )?"
    r"(?<![\d:.])(?P<hour>\d{1,2})(?:[:.](?P<minute>\d{2})(?P<half> ?[ap]\.?m\b)?|(?P<only> ?[ap]\.?m\b))",
    re.IGNORECASE,
)
# What makes an hour in a sentence one that we promise; all else ("you wrote at 9:00") is hers or the past.
_PROMISE = re.compile(
    r"\b(?:call|calls|calling|ring|rings|phone|see you|be seen|come in|llamo|llama|llamamos|llamaremos|llamaré|"
    r"llamará|hablamos|te vemos|ven|venga)\b",
    re.IGNORECASE,
)
_ANOTHER_DAY = re.compile(
    r"\b(?:tomorrow|mañana|pasado|monday|tuesday|wednesday|thursday|friday|saturday|sunday|"
    r"lunes|martes|miércoles|jueves|viernes|sábado|domingo)\b",
    re.IGNORECASE,
)
_SENTENCE = re.compile(r"(?<=[.!?])\s+|\n")


def find(text: str, now: datetime) -> Iterator[str]:
    """Give the words of each promised hour that is past at ``now``, which is on the studio's wall clock.

    >>> list(find("We call you by Tuesday 9 March, 10:30 am.", datetime.fromisoformat("2027-03-09T16:00")))
    ['9 March, 10:30 am']
    """
    for sentence in _SENTENCE.split(text):
        if not _PROMISE.search(sentence):
            continue
        for match in _HOUR.finditer(sentence):
            at = _moment(match, now)
            if at is None or (match["day"] is None and _ANOTHER_DAY.search(sentence)):
                continue
            if at < now.replace(tzinfo=None):
                yield match[0]


def _moment(match: re.Match[str], now: datetime) -> datetime | None:
    half = (match["half"] or match["only"] or "").strip().casefold()
    hour, minute = int(match["hour"]), int(match["minute"] or 0)
    if half:
        hour = hour % 12 + (12 if half.startswith("p") else 0)
    if hour > 23 or minute > 59:
        return None
    day = now.date()
    if match["day"]:
        nearest = _nearest(int(match["day"]), _MONTHS[match["month"].casefold().rstrip(".")], day)
        if nearest is None:
            return None
        day = nearest
    return datetime.combine(day, time(hour, minute))


def _nearest(day: int, month: int, today: date) -> date | None:
    """The date without its year that lies nearest to today: 2 January, said on 30 December, is next year's."""
    found = []
    for year in (today.year - 1, today.year, today.year + 1):
        try:
            found.append(date(year, month, day))
        except ValueError:  # 29 February, 31 June
            continue
    return min(found, key=lambda one: abs(one - today), default=None)
