"""Telephone numbers as people write them, kept as E.164."""

from __future__ import annotations

import phonenumbers
from django.core.exceptions import ValidationError
from django.utils.translation import gettext as _


def number(text: str, *, region: str, field: str = "mobile") -> str:
    """Return the number as E.164 (``+15555550101``), read with the studio's ``region``; "" for a blank.

    Raises ValidationError on ``field`` for what no numbering plan has (phonenumbers, ``is_valid_number``).
    """
    text = " ".join(text.split())
    if not text:
        return ""
    try:
        parsed = phonenumbers.parse(text, region)
    except phonenumbers.NumberParseException:
        parsed = None
    if parsed is None or not phonenumbers.is_valid_number(parsed):
        raise ValidationError({field: _refusal(text, region)})
    return phonenumbers.format_number(parsed, phonenumbers.PhoneNumberFormat.E164)


def _refusal(text: str, region: str) -> str:
    code = phonenumbers.country_code_for_region(region)
    example = phonenumbers.example_number_for_type(region, phonenumbers.PhoneNumberType.MOBILE)
    if not code or example is None:
        cure = _("Write it with its country code, beginning with +.")
    else:
        shape = phonenumbers.format_number(example, phonenumbers.PhoneNumberFormat.INTERNATIONAL)
        cure = _("Write it in full, with its country code if it is from abroad: it has the shape of %(shape)s.") % {
            "shape": shape
        }
    return _("“%(text)s” is not a telephone number.") % {"text": text[:40]} + " " + cure
