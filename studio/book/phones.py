"""Telephone numbers in any usual way of writing, to E.164."""

import re
from functools import lru_cache

import phonenumbers
from django.utils.translation import gettext as _

from studio.book.text import Refused, shown

CACHED = 50_000
LONGEST = len("+") + 15  # ITU-T E.164, 6.2.1: no number has more digits, though some countries' plans could give more

_SCIENTIFIC = re.compile(r"\+?\d+(?:[.,]\d+)?e[+-]?\d+", re.ASCII | re.IGNORECASE)
_PHONE_WORDS = re.compile(r"\b(?:tel|telephone|phone|mobile|mob|cell|ph|m|t)\b\.?:?", re.IGNORECASE)
_BETWEEN_NUMBERS = re.compile(r"[/;,|&\n]|\bor\b|\band\b", re.IGNORECASE)


@lru_cache(CACHED)
def phone(text: str, region: str) -> tuple[str, bool]:
    """Return the number in E.164, and whether it is in a range that is in use. Raises :class:`Refused`."""
    if _SCIENTIFIC.fullmatch(text):
        raise Refused(
            _(
                '"{value}" is a number that a spreadsheet cut short: format the column as text, write the number '
                "in full and export again."
            ).format(value=shown(text))
        )
    parts = [part for part in _BETWEEN_NUMBERS.split(text) if part.strip()]
    if len(parts) > 1 and sum(_possible(part, region) for part in parts) > 1:
        raise Refused(
            _('"{value}" holds several numbers: write one, the mobile that she reads.').format(value=shown(text))
        )
    cure = _("write it with + and the country code, like +14155550123")
    bare = _PHONE_WORDS.sub("", text)
    if any(map(str.isalpha, bare)):
        raise Refused(_('"{value}" holds more than a number: write the number alone.').format(value=shown(text)))
    try:
        number = phonenumbers.parse(bare, region)
    except phonenumbers.NumberParseException:
        raise Refused(_('"{value}" is not a telephone number: {cure}.').format(value=shown(text), cure=cure)) from None
    written = phonenumbers.format_number(number, phonenumbers.PhoneNumberFormat.E164)
    if not phonenumbers.is_possible_number(number) or len(written) > LONGEST:
        raise Refused(
            _('"{value}" is too short or too long for a number in {region}: {cure}.').format(
                value=shown(text), region=region, cure=cure
            )
        )
    return written, phonenumbers.is_valid_number(number)


def _possible(text: str, region: str) -> bool:
    if sum(map(str.isdigit, text)) < 7:  # in some countries a slash parts the area from the number: 0171/1234567
        return False
    try:
        return phonenumbers.is_possible_number(phonenumbers.parse(text, region))
    except phonenumbers.NumberParseException:
        return False
