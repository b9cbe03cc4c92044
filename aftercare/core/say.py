"""Dates, hours and emergency numbers as people say them, in letters that cost nothing extra in an SMS.

Every pattern is written out here. CLDR's own short times carry U+202F and its Spanish "p. m." a no-break space, and
either one turns a whole SMS into UCS-2: 70 characters a segment, twice the price.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date, datetime, time
from decimal import Decimal
from functools import lru_cache

from babel import Locale, UnknownLocaleError
from babel.core import get_global
from babel.dates import format_date, format_interval
from babel.numbers import UnknownCurrencyError, format_currency

LANGUAGES = ("en", "es")
_TERRITORIES: Mapping[str, str] = get_global("zone_territories")
_ALIASES: Mapping[str, str] = get_global("zone_aliases")
_NO_COUNTRY = "ZZ"

# From memory: the emergency number of each country; 112 is the European Union's common one. In GB, 111 is not the
# emergency line. Elsewhere none is known here, and none is better than a wrong one.
_EUROPEAN_UNION = "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK"
EMERGENCY_NUMBERS = {
    **dict.fromkeys(("US", "CA", "MX", "PR", "VI", "GU", "AS", "MP"), "911"),
    **dict.fromkeys(_EUROPEAN_UNION.split(" "), "112"),
    **dict.fromkeys(("GB", "GG", "IM", "JE"), "999"),
    "AU": "000",
    "NZ": "111",
}
# The United States' poison line, as MedlinePlus prints it in its entry on cyanoacrylates.
POISON_LINES = {"US": "1-800-222-1222"}

_LOCAL_NUMBER = {"en": "your local emergency number", "es": "a emergencias de tu zona"}
_NUMBER_OR_LOCAL = {
    "en": "{number} or your local emergency number",
    "es": "al {number} o a emergencias de tu zona",
}
_EMERGENCY_CARE = {
    "en": {"": "emergency eye care", "US": "emergency eye care (ER)", "GB": "emergency eye care (A&E or eye casualty)"},
    "es": {"": "a urgencias", "US": "a urgencias (ER)", "GB": "a urgencias (A&E o eye casualty)"},
}
_DAY = {"en": "EEEE d MMMM", "es": "EEEE d 'de' MMMM"}
_SHORT_DAY = {"en": "EEE d", "es": "EEE d"}
_MONTH = {"en": "MMMM", "es": "MMMM"}
_ON = {"en": "on {day} {month}", "es": "el {day} de {month}"}
_BETWEEN = {
    "en": "between {first} and {last} {month}",
    "es": "entre el {first} y el {last} de {month}",
}
_BETWEEN_MONTHS = {
    "en": "between {first} {first_month} and {last} {month}",
    "es": "entre el {first} de {first_month} y el {last} de {month}",
}
_SOON = {"en": "in the next days", "es": "en los próximos días"}
_MOMENT = {"en": "{day}, {hour}", "es": "{day}, {hour}"}


def language_of(tag: str, other: str = "en") -> str:
    """Return the language of a BCP 47 ``tag`` if there are words in it, else ``other``."""
    language = tag.replace("_", "-").partition("-")[0].lower()
    return language if language in LANGUAGES else other


def subtag(tag: str) -> str:
    """Return the language of any BCP 47 ``tag`` in which dates can be said here ("pt-BR" is pt), else ''.

    The owner may write wordings in more languages than the first ones are written in.
    """
    language = tag.replace("_", "-").partition("-")[0].lower()
    return language if _locale(language) else ""


@lru_cache(maxsize=256)
def _locale(language: str) -> Locale | None:
    try:
        return Locale.parse(language)
    except (UnknownLocaleError, ValueError):
        return None


@lru_cache(maxsize=4096)
def day(when: date, language: str) -> str:
    """Say a date without its year: "Tuesday 9 March", "martes 9 de marzo"; in further languages as CLDR has it."""
    if language not in LANGUAGES:
        return _cheap(format_date(when, _pattern(language), locale=language))
    return format_date(when, _DAY[language], locale=language)


@lru_cache(maxsize=4096)
def hour(when: time, language: str, region: str) -> str:
    """Say a time of day, on the clock that the region's speakers of the language use: "2:30 pm", "14:30"."""
    if not _says_am_pm(language, region):
        return f"{when.hour:02}:{when.minute:02}" if language == "en" else f"{when.hour}:{when.minute:02}"
    return f"{when.hour % 12 or 12}:{when.minute:02} {'am' if when.hour < 12 else 'pm'}"


def moment(when: datetime, language: str, region: str) -> str:
    """Say a date and an hour: "Tuesday 9 March, 2:30 pm"."""
    return _MOMENT.get(language, "{day}, {hour}").format(
        day=day(when.date(), language), hour=hour(when.time(), language, region)
    )


def dated(when: date, language: str, region: str) -> str:
    """Say a date with its year, and the hour of a moment, in short: "9 Mar 2027, 2:30 pm"."""
    said = format_date(when, "d MMM y", locale=language)
    return f"{said}, {hour(when.time(), language, region)}" if isinstance(when, datetime) else said


@lru_cache(maxsize=4096)
def between(first: date, last: date, language: str) -> str:
    """Say a range of days, both included: "between Tue 9 and Mon 15 June", "on Tue 9 June" if it is one day.

    Raises ValueError if ``last`` lies before ``first``.
    """
    if last < first:
        raise ValueError(f"A range of days cannot end on {last} before it begins on {first}: exchange the two.")
    if language not in LANGUAGES:
        return day(first, language) if first == last else _cheap(format_interval(first, last, "MMMEd", locale=language))
    words = {
        "first": format_date(first, _SHORT_DAY[language], locale=language),
        "first_month": format_date(first, _MONTH[language], locale=language),
        "last": format_date(last, _SHORT_DAY[language], locale=language),
        "month": format_date(last, _MONTH[language], locale=language),
    }
    if first == last:
        return _ON[language].format(day=words["first"], month=words["month"])
    same_month = (first.year, first.month) == (last.year, last.month)
    return (_BETWEEN if same_month else _BETWEEN_MONTHS)[language].format(**words)


def soon(language: str) -> str:
    """Say that it should be soon, where there are no days to name."""
    return _SOON.get(language, _SOON["en"])


@lru_cache(maxsize=1024)
def country_of(zone: str) -> str:
    """Return the country that CLDR has a time zone in; '' where it is none's, or not known.

    >>> country_of("Europe/London"), country_of("US/Eastern"), country_of("UTC")
    ('GB', 'US', '')
    """
    found = _TERRITORIES.get(_ALIASES.get(zone, zone), "")
    return "" if found == _NO_COUNTRY else found


def emergency_number(region: str) -> str:
    """Return the region's emergency number, or an empty string where none is known here."""
    return EMERGENCY_NUMBERS.get(region.upper(), "")


def emergency_call(language: str, region: str) -> str:
    """Say whom to call, to stand after "call" or "llama": "911 or your local emergency number".

    In a language that these words are not written in, the number alone; where none is known, the English words.
    """
    number = emergency_number(region)
    if language not in LANGUAGES:
        return number or _LOCAL_NUMBER["en"]
    return _NUMBER_OR_LOCAL[language].format(number=number) if number else _LOCAL_NUMBER[language]


def emergency_care(language: str, region: str) -> str:
    """Say where to go, to stand after "get" or "ve": "emergency eye care (A&E or eye casualty)", "a urgencias"."""
    places = _EMERGENCY_CARE.get(language, _EMERGENCY_CARE["en"])
    return places.get(region.upper(), places[""])


def poison_line(region: str) -> str:
    """Return the region's poison line, or an empty string where none is known here."""
    return POISON_LINES.get(region.upper(), "")


@lru_cache(maxsize=256)
def _pattern(language: str) -> str:
    """Return CLDR's pattern of a day and its month, both written out: its own has them short in most languages."""
    known = Locale.parse(language).datetime_skeletons
    short = str(known["MMMMEd"].pattern if "MMMMEd" in known else known["MMMEd"].pattern)
    return "".join(
        part if part.startswith("'") else re.sub("M+", "MMMM", re.sub("[Ec]+", "EEEE", part))
        for part in re.split(r"('[^']*')", short)
    )


def _cheap(said: str) -> str:
    """Take out of CLDR's words what would make a whole SMS dear: its spaces of other widths, its dash."""
    return "-".join(part.strip() for part in " ".join(said.split()).split("\u2013"))


@lru_cache(maxsize=1024)
def _says_am_pm(language: str, region: str) -> bool:
    """Look up in CLDR whether the region's speakers of the language count twelve hours; else the language's own way."""
    try:
        locale = Locale.parse(f"{language}_{region.upper()}") if region else Locale.parse(language)
    except (UnknownLocaleError, ValueError):
        locale = Locale.parse(language)
    return "a" in locale.time_formats["short"].pattern


_PENNIES = Decimal("0.1")


def money(amount: Decimal, currency: str, language: str) -> str:
    """Say a sum for a page, with as many decimals as a price of pennies needs: "$0.0079", "$0.98", "$12.40".

    ``currency`` is its ISO 4217 code; one that is not known stands as it is.
    """
    digits = max(2, -int(amount.normalize().as_tuple().exponent)) if 0 < amount < _PENNIES else 2
    spoken = language_of(language)
    try:
        return format_currency(amount, currency, f"¤#,##0.{'0' * digits}", locale=spoken, currency_digits=False)
    except UnknownCurrencyError:
        return f"{amount:.{digits}f} {currency}".strip()
