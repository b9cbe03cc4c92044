"""One cell's text to one value, for each column of the book; whatever a spreadsheet did to it is met with a cure."""

import re
from collections.abc import Callable, Mapping
from difflib import get_close_matches
from functools import lru_cache

from babel import Locale
from django.core.exceptions import ValidationError
from django.core.validators import EmailValidator
from django.utils.translation import gettext as _

from studio import zones
from studio.book import moments
from studio.book.phones import phone
from studio.book.rows import SERVICES, Context, Value
from studio.book.text import CONTROL, Refused, fold, shown

NAME_LENGTH = 80
LOT_LENGTH = 40
SERVICE_LENGTH = 120
REFERENCE_LENGTH = 200
LONGEST = 320  # the longest that an e-mail address can be; nothing else comes near
CACHED = 50_000

_YES = frozenset({"yes", "y", "true", "1", "si", "sí"})
_NO = frozenset({"no", "n", "false", "0"})
_STATUSES = {
    "booked": "booked",
    "done": "done",
    "cancelled": "cancelled",
    "canceled": "cancelled",
    "missed": "missed",
    "noshow": "missed",
}
_KINDS = {re.sub(r"[\s-]", "", kind): kind for kind in SERVICES}

_FORMULA_ERROR = re.compile(r"#(REF!|N/A|VALUE!|NAME\?|DIV/0!|NUM!|NULL!|SPILL!|CALC!|FIELD!|#+)", re.IGNORECASE)
_LONG_NUMBER_LOST = re.compile(r"\d[.,]\d+E\+\d+|\dE\+\d+", re.ASCII)
_NUMBER = re.compile(r"(\d+)(?:[.,](\d+))?", re.ASCII)
_MINUTES = re.compile(r"(\d{1,6})(?:[.,]0+)?\s*(?:min(?:ute)?s?\.?)?", re.ASCII | re.IGNORECASE)
_TAG = re.compile(r"([a-z]{2,3})(?:[-_]([a-z]{4}))?(?:[-_]([a-z]{2}|\d{3}))?", re.ASCII | re.IGNORECASE)
# Without the list Django would take "mia@localhost", where no mail reaches a client.
_check_email = EmailValidator(allowlist=[])


class UnknownService(Refused):
    """A name of a service that is neither one of the kinds nor in the owner's own table."""


def parse(column: str, text: str, context: Context) -> Value:
    """Return what ``text``, cleaned, bare of marks and not blank, says in ``column``. Raises :class:`Refused`.

    ``service`` gives the kind, ``""`` for a name that the owner's table calls no visit.
    """
    if len(text) > LONGEST:
        raise Refused(
            _('"{value}" is {length} characters long: check the quotes around it and shorten it.').format(
                value=shown(text), length=len(text)
            )
        )
    return _PARSERS[column](text, context)


def without_marks(column: str, text: str) -> str:
    """Return the cell without what a spreadsheet adds to keep it text: a leading apostrophe, or ``="..."``.

    Raises :class:`Refused` for a formula or the error left of one.
    """
    if text.startswith("'") and column not in _FREE:  # some names begin with an apostrophe
        return text[1:].strip()
    if not text.startswith(("#", "=")):
        return text
    if _FORMULA_ERROR.match(text):
        raise Refused(
            _('"{value}" is what is left of a spreadsheet\'s formula: write the value itself.').format(
                value=shown(text)
            )
        )
    if text.startswith("="):
        if text.startswith('="') and text.endswith('"') and '"' not in text[2:-1]:
            return text[2:-1].strip()
        raise Refused(_('"{value}" is a formula: write the value itself.').format(value=shown(text)))
    return text


def reference(text: str, context: Context) -> str:
    """Return the book's own reference of a visit or client."""
    if _LONG_NUMBER_LOST.fullmatch(text):
        raise Refused(
            _(
                '"{value}" is a long number that a spreadsheet cut short: format the column as text, then export.'
            ).format(value=shown(text))
        )
    return _words(text, REFERENCE_LENGTH)


def service(text: str, context: Context) -> str:
    """Return the kind of service, ``""`` for what the owner's table calls no visit. Raises :class:`UnknownService`."""
    _words(text, SERVICE_LENGTH)
    kind = known_service(text, context)
    if kind is None:
        raise UnknownService(
            _(
                '"{value}" is in no table of services: name it in the studio\'s table of service names, '
                "or write one of {names}."
            ).format(value=shown(text), names=", ".join(SERVICES))
        )
    return kind


def known_service(text: str, context: Context) -> str | None:
    """Return the kind behind a name (``""``: not a visit), or ``None`` if no table has it."""
    name = fold(text)
    kind = _KINDS.get(name.replace(" ", "").replace("-", ""))
    return kind if kind is not None else context.service_names.get(name)


def mobile(text: str, context: Context) -> str:
    """Return the number in E.164."""
    return phone(text, context.region)[0]


@lru_cache(CACHED)
def _email(text: str) -> str:
    address = text.removeprefix("mailto:")
    if len(address) > REFERENCE_LENGTH:  # a calendar's client is known by it
        raise Refused(
            _('"{value}" is {length} characters long: check the address and write it again.').format(
                value=shown(text), length=len(text)
            )
        )
    try:
        _check_email(address)
    except ValidationError:
        raise Refused(
            _('"{value}" is not one e-mail address: write one, like mia@example.com.').format(value=shown(text))
        ) from None
    user, _at, domain = address.rpartition("@")
    return f"{user}@{domain.lower()}"


@lru_cache(CACHED)
def _time_zone(text: str) -> str:
    name = _zones().get(text.casefold().replace(" ", "_"))
    if name is None:
        near = get_close_matches(text.casefold().replace(" ", "_"), _zones(), n=1)
        like = _zones()[near[0]] if near else "America/New_York"
        raise Refused(
            _('"{value}" is not an IANA time zone: write its name, like {like}.').format(value=shown(text), like=like)
        )
    return name


@lru_cache(1)
def _zones() -> dict[str, str]:
    return {name.casefold(): name for name in zones.names()}


@lru_cache(CACHED)
def _language(text: str) -> str:
    found = _TAG.fullmatch(text)
    if not found or found[1].lower() not in Locale("en").languages:
        raise Refused(
            _('"{value}" is not a language tag (BCP 47): write it like en, es or en-US.').format(value=shown(text))
        )
    tags = (found[1].lower(), (found[2] or "").title(), (found[3] or "").upper())
    return "-".join(filter(None, tags))


@lru_cache(CACHED)
def _yes_no(text: str) -> bool:
    answer = fold(text)
    if answer in _YES:
        return True
    if answer in _NO:
        return False
    raise Refused(
        _('"{value}" is neither yes nor no: write yes or no, or leave the cell blank.').format(value=shown(text))
    )


@lru_cache(CACHED)
def _minutes(text: str) -> int:
    found = _MINUTES.fullmatch(text)
    if not found or not 1 <= int(found[1]) <= 720:
        raise Refused(
            _('"{value}" is not a length of 1 to 720 whole minutes: write the minutes alone, like 75.').format(
                value=shown(text)
            )
        )
    return int(found[1])


@lru_cache(CACHED)
def _status(text: str) -> str:
    status = _STATUSES.get(re.sub(r"[\s_-]", "", text.casefold()))
    if status is None:
        raise Refused(
            _('"{value}" is not a status: write booked, done, cancelled or missed.').format(value=shown(text))
        )
    return status


@lru_cache(CACHED)
def _share_left(text: str) -> int | float:
    found = _NUMBER.fullmatch(text.removesuffix("%").rstrip())
    share = float(f"{found[1]}.{found[2] or 0}") if found else -1.0
    if not 0 <= share <= 100:
        raise Refused(
            _('"{value}" is not a share from 0 to 100: write it in percent, like 60 or 60%.').format(value=shown(text))
        )
    if 0 < share < 1:
        raise Refused(
            _('"{value}" may mean a part of one or less than one percent: write it like 60 or 60%.').format(
                value=shown(text)
            )
        )
    return int(share) if share.is_integer() else share


def _words(text: str, length: int) -> str:
    if CONTROL.search(text):
        raise Refused(
            _('"{value}" holds a line break or another control character: write it on one line.').format(
                value=shown(text)
            )
        )
    if len(text) > length:
        raise Refused(
            _('"{value}" is {length} characters long: write it in at most {most}.').format(
                value=shown(text), length=len(text), most=length
            )
        )
    return text


def _name(text: str, context: Context) -> str:
    return " ".join(_words(text, NAME_LENGTH).split())


def _lot(text: str, context: Context) -> str:
    return " ".join(_words(text, LOT_LENGTH).split())


def _starts_at(text: str, context: Context) -> str:
    try:
        return moments.starts_at(text, context)
    except moments.Unclear as error:
        raise Refused(str(error)) from None


def _alone(parser: Callable[[str], Value]) -> Callable[[str, Context], Value]:
    return lambda text, context: parser(text)


_FREE = frozenset({"first_name", "last_name", "artist", "adhesive", "service"})
_PARSERS: Mapping[str, Callable[[str, Context], Value]] = {
    "visit": reference,
    "client": reference,
    "first_name": _name,
    "last_name": _name,
    "mobile": mobile,
    "email": _alone(_email),
    "time_zone": _alone(_time_zone),
    "language": _alone(_language),
    "sms_ok": _alone(_yes_no),
    "email_ok": _alone(_yes_no),
    "sms_reminders_ok": _alone(_yes_no),
    "email_reminders_ok": _alone(_yes_no),
    "sensitive": _alone(_yes_no),
    "under_18": _alone(_yes_no),
    "wears_lenses": _alone(_yes_no),
    "service": service,
    "artist": _name,
    "starts_at": _starts_at,
    "minutes": _alone(_minutes),
    "status": _alone(_status),
    "share_left": _alone(_share_left),
    "adhesive_lot": _lot,
    "adhesive": _name,
}
