"""By which channel a client can be told something, or why by none.

Asked when a message is planned and again when it is handed over. Numbers are judged with the general ``phonenumbers``
library (E.164, ITU-T): valid, and mobile or fixed-or-mobile.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from functools import lru_cache

import phonenumbers
from phonenumbers import PhoneNumberType, timezone

from aftercare.core.occasions import REMINDERS, Occasion, Reason

SMS, EMAIL = "sms", "email"
TEXTABLE = (PhoneNumberType.MOBILE, PhoneNumberType.FIXED_LINE_OR_MOBILE)


class Purpose(StrEnum):
    """What a message is for. Consent is given for each apart."""

    VISITS = "visits"
    REMINDERS = "reminders"

    @classmethod
    def of(cls, occasion: Occasion) -> Purpose:
        """Return what messages of ``occasion`` are for."""
        return cls.REMINDERS if occasion in REMINDERS else cls.VISITS


@dataclass(frozen=True, slots=True)
class Contact:
    """What is on record of how to reach a client.

    ``consents`` holds the newest answer for each (channel, purpose); none on record is no key. ``stopped`` names the
    channels whose number or address said stop to this studio's line; ``resting`` those whose number or address is
    somebody else's, or nobody's: as good as none.
    """

    mobile: str = ""  # E.164
    email: str = ""
    choice: str = ""  # her choice of channel
    consents: Mapping[tuple[str, str], bool] = field(default_factory=dict)
    stopped: frozenset[str] = frozenset()
    resting: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Reach:
    """The channel and the address, or the reason why there is none."""

    channel: str = ""
    address: str = ""
    reason: Reason | None = None


def reach(contact: Contact, purpose: Purpose, *, avoid: str = "") -> Reach:
    """Return how to reach her for ``purpose``; ``avoid`` is a channel that has failed already.

    Her own choice where it can be used; else SMS, which needs a consent on record; else e-mail, which for messages
    about her visits needs only an address that was not refused, for reminders a consent too.
    """
    usable = [channel for channel in (SMS, EMAIL) if channel != avoid and _may_use(contact, channel, purpose)]
    if usable:
        channel = contact.choice if contact.choice in usable else usable[0]
        return Reach(channel, contact.mobile if channel == SMS else contact.email)
    refused = any(_has(contact, channel) and _refused(contact, channel, purpose) for channel in (SMS, EMAIL))
    return Reach(reason=Reason.NO_CONSENT if refused else Reason.NO_WAY)


def _has(contact: Contact, channel: str) -> bool:
    if channel in contact.resting:
        return False
    return can_get_texts(contact.mobile) if channel == SMS else bool(contact.email)


def _refused(contact: Contact, channel: str, purpose: Purpose) -> bool:
    if channel in contact.stopped or contact.consents.get((channel, purpose)) is False:
        return True
    return purpose is Purpose.REMINDERS and not contact.consents.get((channel, purpose), False)


def _may_use(contact: Contact, channel: str, purpose: Purpose) -> bool:
    if not _has(contact, channel) or _refused(contact, channel, purpose):
        return False
    return channel == EMAIL or contact.consents.get((channel, purpose)) is True


@lru_cache(maxsize=50_000)
def _parsed(number: str) -> phonenumbers.PhoneNumber | None:
    try:
        return phonenumbers.parse(number)
    except phonenumbers.NumberParseException:
        return None


@lru_cache(maxsize=50_000)
def can_get_texts(number: str) -> bool:
    """Return whether an E.164 number is valid and of a kind that gets texts.

    >>> can_get_texts("+447700900123")  # a range kept for drama: possible, not valid
    False
    """
    parsed = _parsed(number) if number else None
    if parsed is None or not phonenumbers.is_valid_number(parsed):
        return False
    return phonenumbers.number_type(parsed) in TEXTABLE


@lru_cache(maxsize=50_000)
def only_zone(number: str) -> str:
    """Return the one IANA zone that an E.164 number can be in, or '' where there are several or none.

    >>> only_zone("+12125550123")
    'America/New_York'
    """
    parsed = _parsed(number) if number else None
    if parsed is None:
        return ""
    names = timezone.time_zones_for_number(parsed)
    return names[0] if len(names) == 1 and names[0] != timezone.UNKNOWN_TIMEZONE else ""
